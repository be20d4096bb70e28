import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import sharp from 'sharp';
import { demoClock, furnishDemo, playDemo } from '../../src/demo/load.ts';
import type { MessageView } from '../../src/loopback/index.ts';
import { openRoom } from '../loopback/room.ts';

/** Where the README's pictures lie. */
export const PICTURES = new URL('../../src/demo/pictures/', import.meta.url);
const SOURCE = new URL('../../', import.meta.url);

/** A moment for the demo to be played at: its pictures do not change by the day. */
const PLAYED = Date.UTC(2026, 1, 14, 12);
const WIDTH = 640;

/** The pictures that the demo's commands give, by name, as PNG. */
export async function demoPictures(): Promise<ReadonlyMap<string, Uint8Array>> {
  const clock = demoClock(7, () => PLAYED);
  await using room = await openRoom({ draws: true, host: { now: clock.now } });
  furnishDemo(room.host);
  await playDemo({ host: room.host, keepTime: () => room.watch.check(), onAsked: () => {} }, clock);
  const members = room.host.guilds.flatMap(guild => guild.members);
  const by = (name: string) => members.find(one => one.name === name && one.guild.name === 'Harbour suds')!;
  const [odile, bram, tomas] = [by('Odile'), by('Bram'), by('Tomás')];
  const pictures = new Map<string, Uint8Array>();
  const keep = (name: string, message: MessageView | undefined, file: string) => {
    const found = message?.files.find(one => one.name === file);
    if (!found) throw new Error(`no ${file} for ${name}: ${message?.text}`);
    pictures.set(name, found.bytes());
  };
  keep('swatch-card', await odile.run('/preview', { mix: 'Deep blue pastel + Snow' }), 'swatches.png');
  keep('batch-card', await odile.run('/recipe show', { recipe: 'Harbour loaf' }), 'batch-card.png');
  const marked = bram.sees().findLast(({ files }) => files.some(({ name }) => name.startsWith('marked')));
  keep('marked-photo', marked, marked?.files.find(({ name }) => name.startsWith('marked'))?.name ?? '');
  await bram.run('/challenge vote', { ranking: '3,2' });
  await tomas.run('/challenge vote', { ranking: '1,2' });
  clock.setDaysAgo(-9);
  await room.watch.check();
  keep('board', await odile.run('/challenge results'), 'results.png');
  return pictures;
}

/** A picture as the README shows it: small, and good to look at on a phone. */
export const small = async (png: Uint8Array): Promise<Uint8Array> =>
  await sharp(png).resize({ width: WIDTH, withoutEnlargement: true }).webp({ quality: 82 }).toBuffer();

/** How far two pictures are apart: the mean difference of a channel, 0 to 255, once both are shrunk; 255 for another shape. */
export async function apart(one: Uint8Array, other: Uint8Array): Promise<number> {
  const shrunk = async (bytes: Uint8Array) =>
    await sharp(bytes).removeAlpha().resize({ width: 160 }).raw().toBuffer({ resolveWithObject: true });
  const [a, b] = [await shrunk(one), await shrunk(other)];
  if (Math.abs(a.info.height - b.info.height) > 1) return 255;
  const length = Math.min(a.data.length, b.data.length);
  let sum = 0;
  for (let at = 0; at < length; at += 1) sum += Math.abs(a.data[at]! - b.data[at]!);
  return sum / length;
}

/** What the picture of the page is made from: fonts and browsers differ between machines, so its inputs are compared. */
export function pageInputs(): string {
  const folder = (path: string): string[] =>
    readdirSync(new URL(path, SOURCE), { recursive: true, withFileTypes: true })
      .filter(one => one.isFile() && /\.(ts|css|svg|html)$/.test(one.name))
      .map(one => `${one.parentPath}/${one.name}`)
      .sort();
  const files = [
    ...folder('src/page/browser/'),
    ...['src/words/en/fronts/page.ts', 'src/presenting/dose.ts', 'src/demo/scenario.ts'].map(
      path => new URL(path, SOURCE).pathname,
    ),
  ];
  const hash = createHash('sha256');
  for (const file of files) hash.update(readFileSync(file)).update('\0');
  return hash.digest('hex');
}
