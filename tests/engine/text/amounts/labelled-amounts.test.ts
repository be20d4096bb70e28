import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { apart, colourNamed } from '../../../../src/engine/text/colours/colour-name.ts';
import { MISSED } from '../../../sets/missed.ts';
import { NEAR } from '../../../sets/same-thing.ts';
import type { TextSet } from '../../../sets/text-set.ts';
import { wrongAmount } from '../../../sets/wrong-amount.ts';

/*
 * What makers wrote and how they labelled it (`tests/sets`): amounts, shares, layers, sizes and colours, read by the readers themselves,
 * without a conversation. Always the same lines, so that what any of them minds is minded by every run.
 */

const folder = new URL('../../../sets/', import.meta.url);
const sets = readdirSync(folder)
  .filter(file => MISSED[file] !== undefined)
  .map(file => ({ file, ...(JSON.parse(readFileSync(new URL(file, folder), 'utf8')) as TextSet) }));

/** One of so many of the lines that are understood, each text once. */
function oneIn<Item extends { readonly text: string }>(
  every: number,
  part: 'amounts' | 'colours',
  of: (set: TextSet) => readonly Item[],
): readonly Item[] {
  const understood = sets.flatMap(set => of(set).filter((_, at) => !MISSED[set.file]![part].includes(at)));
  const texts = new Map(understood.map(item => [item.text, item]));
  return [...texts.values()].filter((_, at) => at % every === 0);
}

/** A few lines are one test: to begin one takes longer than to read a line. */
const FEW = 5;
const inFews = <Item>(items: readonly Item[]): readonly (readonly Item[])[] =>
  items.flatMap((_, at) => (at % FEW === 0 ? [items.slice(at, at + FEW)] : []));

const amounts = oneIn(2, 'amounts', set => set.amounts);
const kinds = [...new Set(amounts.map(({ kind }) => kind))];
const colours = oneIn(6, 'colours', set => set.colours);

describe('what makers wrote is read as they labelled it', () => {
  test.each(
    kinds.flatMap(kind =>
      inFews(amounts.filter(one => one.kind === kind)).map(items => [kind, items[0]!.text, items] as const),
    ),
  )('%s: %s and a few more', (_, __, items) => {
    const wrong = items.flatMap(({ text, kind, expect: label, ask }) => {
      const why = wrongAmount({ text, kind, expect: label, ...(ask && { ask }) });
      return why === undefined ? [] : [{ text, why }];
    });
    expect(wrong).toEqual([]);
  });

  test.each(inFews(colours).map(items => [items[0]!.text, items] as const))(
    'colour: %s and a few more',
    (_, items) => {
      const far = items.filter(({ text, hex }) => !(apart(colourNamed(text)!.hex, hex) <= NEAR));
      expect(far).toEqual([]);
    },
  );
});
