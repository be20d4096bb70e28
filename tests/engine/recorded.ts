import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { asData } from './as-data.ts';

type Rows = Readonly<Record<string, readonly (readonly [input: never, told: unknown])[]>>;

/** Holds that each step makes of every input what is written down beside it, in `steps.json` of that folder; `what` the steps are. */
export function holdRecorded(
  what: string,
  {
    steps,
    folder,
  }: { readonly steps: Readonly<Record<string, (input: never) => unknown>>; readonly folder: string },
): void {
  const rows = JSON.parse(readFileSync(`${folder}/steps.json`, 'utf8')) as Rows;
  test.each(Object.entries(steps))(`${what}: %s`, (name, step) => {
    const told = rows[name]!.map(([input]) => ({ input, told: asData(() => step(input)) }));
    expect(told).toEqual(rows[name]!.map(([input, one]) => ({ input, told: one })));
  });
}
