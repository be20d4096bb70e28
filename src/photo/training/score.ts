/**
 * Scores the reader on a labelled set of pictures:  npm run score-photos -- FOLDER [answers.json]
 * A set that members of a group gave (`/flaws pictures`) holds pictures and lines of JSON with their causes; see
 * score-causes.ts. One that was drawn:
 * The folder holds pictures and labels.json, a list of { file, present: finding ids, tricky?, soap? (false: none in
 * view), poor? (too poor to read), bar? (the file of its mask), share? (of the bar, by finding id) }. Prints counts with
 * 95 % intervals.
 */

import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';
import { z } from 'zod';
import { spaced } from '../../engine/over-lines.ts';
import { decodePhoto } from '../decode.ts';
import { TAUGHT_IDS } from '../findings/ids.ts';
import { look } from '../network/passes.ts';
import { readingOf } from '../read.ts';
import type { PhotoReading } from '../reading.ts';
import { answers, shareOf } from './counting.ts';
import { readTold, tableOf } from './score-causes.ts';

const labels = z.array(
  z.object({
    file: z.string(),
    present: z.array(z.string()),
    tricky: z.boolean().optional(),
    soap: z.boolean().optional(),
    poor: z.boolean().optional(),
    bar: z.string().optional(),
    share: z.record(z.string(), z.number()).optional(),
  }),
);
type Label = z.output<typeof labels>[number];
type Scored = Label & { readonly reading: PhotoReading; readonly overlap: number | undefined };

async function scored(folder: string, label: Label): Promise<Scored> {
  const photo = await decodePhoto(readFileSync(join(folder, label.file)));
  const seen = await look(photo);
  const reading = readingOf(photo, seen);
  if (label.bar === undefined) return { ...label, reading, overlap: undefined };
  const side = { width: photo.width, height: photo.height };
  const mask = await sharp(readFileSync(join(folder, label.bar)))
    .resize({ ...side, fit: 'fill' })
    .greyscale()
    .raw()
    .toBuffer();
  if (!seen || reading.bars.length === 0) return { ...label, reading, overlap: 0 };
  const { square, bar } = seen;
  const unit = bar.width / (2 * square.half);
  let [both, either] = [0, 0];
  for (let i = 0; i < mask.length; i++) {
    const x = Math.floor(((i % side.width) + 0.5 - square.x + square.half) * unit);
    const y = Math.floor((Math.floor(i / side.width) + 0.5 - square.y + square.half) * unit);
    const said = x >= 0 && y >= 0 && x < bar.width && y < bar.height && bar.data[y * bar.width + x]! > 0.5;
    const is = mask[i]! > 127;
    if (said && is) both++;
    if (said || is) either++;
  }
  return { ...label, reading, overlap: both / Math.max(1, either) };
}

function report(all: readonly Scored[]): string {
  const poor = all.filter(one => one.poor === true);
  const soap = all.filter(one => one.soap !== false && one.poor !== true);
  const nothing = all.filter(one => one.soap === false);
  const masked = soap.filter(({ overlap }) => overlap !== undefined);
  const clean = soap.filter(({ present }) => present.length === 0);
  const alarmed = (some: readonly Scored[], kinds: readonly ('seen' | 'possibly')[]) =>
    shareOf(
      some.filter(({ reading }) => reading.findings.some(one => kinds.includes(one.answer))).length,
      some.length,
    );
  const sure = ['seen'] as const;
  const any = ['seen', 'possibly'] as const;
  const rows = TAUGHT_IDS.map(id => {
    const there = soap.filter(({ present, share }) => present.includes(id) && (share?.[id] ?? 1) >= 0.003);
    const not = soap.filter(({ present }) => !present.includes(id));
    const count = (some: readonly Scored[], kinds: readonly ('seen' | 'possibly')[]) =>
      shareOf(some.filter(({ reading }) => answers(reading, id, kinds)).length, some.length);
    const all = soap.filter(({ present }) => present.includes(id));
    return [
      id,
      `of any size, seen or possibly ${count(all, any)}`,
      `seen ${count(there, sure)}`,
      `seen or possibly ${count(there, any)}`,
      `falsely seen ${count(not, sure)}`,
    ].join('\n  ');
  });
  return [
    `pictures: ${all.length}, with soap ${soap.length}`,
    `bar found: ${shareOf(soap.filter(({ reading }) => reading.bars.length > 0).length, soap.length)}`,
    `outline overlaps the mask by over 0.7: ${shareOf(masked.filter(({ overlap = 0 }) => overlap > 0.7).length, masked.length)}`,
    `no soap, and said so: ${shareOf(nothing.filter(({ reading }) => reading.bars.length === 0).length, nothing.length)}`,
    spaced`
      good pictures not read for blur or dark:
      ${shareOf(soap.filter(({ reading }) => reading.unread === 'blur' || reading.unread === 'dark').length, soap.length)}
    `,
    `poor pictures not read: ${shareOf(poor.filter(({ reading }) => reading.unread !== undefined).length, poor.length)}`,
    ...['plain', 'tricky'].flatMap(which => {
      const some = clean.filter(({ tricky = false }) => tricky === (which === 'tricky'));
      return [
        `false alarms on clean ${which} bars, seen: ${alarmed(some, sure)}`,
        `  seen or possibly: ${alarmed(some, any)}`,
      ];
    }),
    ...rows,
  ].join('\n');
}

async function scoreDrawn(folder: string, target: string | undefined): Promise<string> {
  const list = labels.parse(JSON.parse(readFileSync(join(folder, 'labels.json'), 'utf8')));
  const all: Scored[] = [];
  for (const label of list) all.push(await scored(folder, label));
  if (target !== undefined)
    writeFileSync(
      target,
      JSON.stringify(
        all.map(({ reading, ...one }) => ({
          ...one,
          bars: reading.bars.length,
          unread: reading.unread,
          findings: reading.findings.map(({ id, answer, confidence }) => ({ id, answer, confidence })),
        })),
      ),
    );
  return report(all);
}

if (process.argv[1] === import.meta.filename) {
  const [, , folder, target] = process.argv;
  if (folder === undefined) throw new Error('Name the folder with the pictures and their labels.');
  const told = await readTold(folder);
  console.log(told ? tableOf(told) : await scoreDrawn(folder, target));
}
