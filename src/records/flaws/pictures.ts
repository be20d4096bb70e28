import { createHash } from 'node:crypto';
import { refuse } from '../../engine/refusal.ts';
import { excerpt } from '../../engine/text/excerpt.ts';
import { flawPicture, flawPictures, flawPicturesOf, leftOf, part, under } from '../keys.ts';
import { sweepDue } from '../privacy/retention.ts';
import { type RecordOf, read, readable, written } from '../record.ts';
import { drop, everything, pages, put } from '../store.ts';
import type { FlawScope } from './case.ts';
import type { Outcome } from './outcome.ts';
import { pictureKind } from './schema.ts';

declare module '../../engine/refusal.ts' {
  interface Reasons {
    /** `of` whom: the member's own, or the whole group's. */
    'flaw-pictures-full': { readonly most: number; readonly of: 'member' | 'group' };
    'flaw-picture-unknown': { readonly name: string };
  }
}

/** Most pictures that a member may give a group, and that a group holds: some 100 MB of records. */
export const MOST_PICTURES = { member: 20, group: 400 } as const;

/** A picture that a member agreed to give, and what the bar turned out to have. */
export type GivenPicture = Readonly<RecordOf<typeof pictureKind>>;

/** One picture of the set, without a word of whose it is; `name` is the same in every export. */
export type LabelledPicture = Pick<GivenPicture, 'cause' | 'width' | 'height'> & {
  readonly name: string;
  readonly jpeg: Uint8Array;
};

/**
 * Keeps a picture that `member` agreed to give, once for a case, in place of what was given for it before.
 * Throws a Refusal `flaw-pictures-full`.
 */
export async function givePicture(
  { store, group }: FlawScope,
  id: string,
  {
    member,
    jpeg,
    ...about
  }: Omit<GivenPicture, 'base64'> & { readonly member: string; readonly jpeg: Uint8Array },
): Promise<void> {
  const key = flawPicture(group, member, id);
  const all = await keysUnder(store, flawPictures(group));
  if (!all.includes(key)) {
    const own = all.filter(one => one.startsWith(`${flawPicturesOf(group, member)}/`));
    if (own.length >= MOST_PICTURES.member)
      refuse('flaw-pictures-full', { most: MOST_PICTURES.member, of: 'member' });
    if (all.length >= MOST_PICTURES.group)
      refuse('flaw-pictures-full', { most: MOST_PICTURES.group, of: 'group' });
  }
  const base64 = Buffer.from(jpeg).toString('base64');
  // Who leaves the group takes their pictures along: the sweep must come by.
  await store.commit([put(key, written(pictureKind, { ...about, base64 })), sweepDue(group, about.at)]);
}

/** Gives a picture that was given before another label, where there is one. Returns whether there was. */
export async function relabelPicture(
  { store, group }: FlawScope,
  id: string,
  { member, cause }: { readonly member: string; readonly cause: Outcome },
): Promise<boolean> {
  const key = flawPicture(group, member, id);
  const [before] = await store.get([key]);
  if (before === undefined) return false;
  await store.commit([put(key, written(pictureKind, { ...read(pictureKind, key, before), cause }))]);
  return true;
}

/** Takes the pictures of a member back, or that of one case. Returns how many there were. */
export async function takePicturesBack(
  { store, group }: FlawScope,
  member: string,
  id?: string,
): Promise<number> {
  const keys = await keysUnder(store, flawPicturesOf(group, member));
  const gone = id === undefined ? keys : keys.filter(key => key === flawPicture(group, member, id));
  await store.commit(gone.map(key => drop(key)));
  return gone.length;
}

/**
 * Takes one picture out of a group's set, by the name that it has in every export, with or without `.jpg`.
 * Returns its label. Throws a Refusal `flaw-picture-unknown`.
 */
export async function dropPicture({ store, group }: FlawScope, name: string): Promise<Outcome> {
  const meant = name
    .trim()
    .toLowerCase()
    .replace(/\.jpe?g$/u, '');
  for await (const page of pages(store, under(flawPictures(group)), 10)) {
    const entry = page.find(({ key }) => nameOf(key) === meant);
    if (entry === undefined) continue;
    await store.commit([drop(entry.key)]);
    const [picture] = readable(pictureKind, [entry]);
    return picture?.fields.cause ?? 'something-else';
  }
  return refuse('flaw-picture-unknown', { name: excerpt(name) });
}

/** What the pictures of a member are labelled with, the oldest first. */
export async function picturesOf({ store, group }: FlawScope, member: string): Promise<readonly Outcome[]> {
  const entries = await everything(store, under(flawPicturesOf(group, member)), 10);
  return readable(pictureKind, entries).map(({ fields }) => fields.cause);
}

/**
 * The pictures of a group's set from the one at `from` (0 the first) on, as many as fit into `most` bytes, at least one;
 * `next` is where the following part begins. Those of members who were found to have left are not among them.
 */
export async function labelledSet(
  { store, group }: FlawScope,
  { from, most }: { readonly from: number; readonly most: number },
): Promise<{ readonly pictures: readonly LabelledPicture[]; readonly next: number | undefined }> {
  const left = new Set((await keysUnder(store, leftOf(group))).map(key => key.split('/')[2]));
  const pictures: LabelledPicture[] = [];
  let bytes = 0;
  let at = -1;
  for await (const page of pages(store, under(flawPictures(group)), 10))
    for (const { key, fields } of readable(pictureKind, page)) {
      if (left.has(key.split('/')[2])) continue;
      at += 1;
      if (at < from) continue;
      const jpeg = new Uint8Array(Buffer.from(fields.base64, 'base64'));
      if (pictures.length > 0 && bytes + jpeg.length > most) return { pictures, next: at };
      bytes += jpeg.length;
      const { cause, width, height } = fields;
      pictures.push({ cause, width, height, name: nameOf(key), jpeg });
    }
  return { pictures, next: undefined };
}

/** Tells pictures apart and leads back to nobody: the key holds a random-looking id that no export shows. */
const nameOf = (key: string): string => createHash('sha256').update(part(key)).digest('hex').slice(0, 12);

async function keysUnder(store: FlawScope['store'], parent: string): Promise<readonly string[]> {
  const keys: string[] = [];
  for await (const page of pages(store, under(parent), 50)) keys.push(...page.map(({ key }) => key));
  return keys;
}
