import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { z } from 'zod';
import { CAUSE_IDS, type CauseId } from '../../engine/flaws/cause.ts';
import { LIKELIHOODS } from '../../engine/flaws/likelihoods.ts';
import { TAUGHT, TAUGHT_IDS, type TaughtId } from '../findings/ids.ts';
import { readPhoto } from '../read.ts';
import type { PhotoReading } from '../reading.ts';
import { answers, shareOf } from './counting.ts';

/** A line of a set that members gave: a picture, and what the bar in it turned out to have. */
const line = z.object({
  file: z.string().regex(/^\w[\w.-]*$/),
  cause: z.enum([...CAUSE_IDS, 'something-else']),
});
export type CauseTold = z.output<typeof line>;
export type Read = CauseTold & { readonly reading: PhotoReading };

/** The lines of every `.jsonl` file in a folder; undefined where there is none. Throws where one does not read. */
export function toldIn(folder: string): readonly CauseTold[] | undefined {
  const files = readdirSync(folder)
    .filter(name => name.endsWith('.jsonl'))
    .sort();
  if (files.length === 0) return undefined;
  return files.flatMap(name =>
    readFileSync(join(folder, name), 'utf8')
      .split('\n')
      .filter(text => text.trim() !== '')
      .map(text => line.parse(JSON.parse(text))),
  );
}

/** What a picture of a bar with this cause should show: the taught findings that it brings often or nearly always. */
export function shownBy(cause: CauseId): readonly TaughtId[] {
  const { often = [], 'nearly always': always = [] } = LIKELIHOODS[cause];
  const brings = new Set<string>([...often, ...always]);
  return TAUGHT_IDS.filter(id => {
    const finding = TAUGHT[id];
    return finding !== undefined && brings.has(finding);
  });
}

/**
 * The table of a set by cause. Such a label says what was there, not what was not: false alarms cannot be counted on it.
 * A cause that shows nothing the reader was taught is listed with its number of pictures alone.
 */
export function tableOf(all: readonly Read[]): string {
  const found = all.filter(({ reading }) => reading.bars.length > 0).length;
  const causes = [...new Set(all.map(({ cause }) => cause))].sort();
  const rows = causes.map(cause => {
    const some = all.filter(one => one.cause === cause);
    const shown = cause === 'something-else' ? [] : shownBy(cause);
    if (shown.length === 0) return `| ${cause} | ${some.length} | nothing taught | | |`;
    const hit = (kinds: readonly ('seen' | 'possibly')[]) =>
      some.filter(({ reading }) => shown.some(id => answers(reading, id, kinds))).length;
    const counts = [hit(['seen']), hit(['seen', 'possibly'])].map(hits => shareOf(hits, some.length));
    return `| ${cause} | ${some.length} | ${shown.join(', ')} | ${counts.join(' | ')} |`;
  });
  return [
    `pictures: ${all.length}`,
    `bar found: ${shareOf(found, all.length)}`,
    `not read for blur or dark: ${shareOf(all.filter(({ reading: { unread } }) => unread === 'blur' || unread === 'dark').length, all.length)}`,
    '',
    '| turned out to be | pictures | should show | any of it seen | seen or possibly |',
    '| --- | --- | --- | --- | --- |',
    ...rows,
  ].join('\n');
}

/** The pictures of a set that members gave, read by `reads`; undefined where the folder holds no such set. */
export async function readTold(folder: string, reads = readPhoto): Promise<readonly Read[] | undefined> {
  const told = toldIn(folder);
  if (!told) return undefined;
  const all: Read[] = [];
  for (const one of told) all.push({ ...one, reading: await reads(readFileSync(join(folder, one.file))) });
  return all;
}
