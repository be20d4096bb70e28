import { z } from 'zod';
import { followUp } from '../../../src/conversation/command.ts';
import type { Context } from '../../../src/conversation/context.ts';
import type { Attachment } from '../../../src/conversation/question.ts';
import type { Reply } from '../../../src/conversation/reply.ts';
import type { Challenge } from '../../../src/engine/challenges/challenge.ts';
import { refuse } from '../../../src/engine/refusal.ts';
import {
  asOf,
  type Bar,
  enterBar,
  photosOf,
  replaceBar,
  requireChallenge,
  type StoredChallenge,
  withdrawBar,
} from '../../../src/records/challenges/index.ts';
import { noteShelf } from '../../../src/records/group-shelves.ts';
import { inTheRunning, type NumberedBar, numberedBars, takenOutOf } from '../bars.ts';
import { chooseChallenge, madeBy, scopeOf } from '../lookup.ts';
import { readUsed, type Used } from './colourants-used.ts';
import { type Described, describe } from './described.ts';
import { type EntryDone, type EntryLeads, enteredReply } from './entered.ts';
import { measure, type PhotoPart, type PhotoPartName, photoParts, unscoredKind } from './measure.ts';

declare module '../../../src/engine/refusal.ts' {
  interface Reasons {
    'challenge-entry-which': { readonly entries: readonly string[] };
    'challenge-entry-none': Record<never, never>;
  }
}

/** What a member says of a bar. */
export type EnterAsked = {
  readonly challenge?: string | undefined;
  readonly title: string;
  readonly photo: Attachment;
  readonly colourants: string;
  readonly note?: string | undefined;
  readonly made?: string | undefined;
};

const leads: EntryLeads = { part: to => part.with(to), takeBack: to => takeBack.with(to) };

const shown = (done: EntryDone, context: Context): Promise<Reply> => enteredReply(done, leads, context);

/** Enters a bar: its photo is measured, and what breaks the terms is told at once. */
export async function enter(asked: EnterAsked, context: Context): Promise<Reply> {
  const challenge = await chooseChallenge(context, asked.challenge, ['entering']);
  const now = entering(challenge, context);
  requireRoom(challenge, now, context);
  const used = await readUsed(asked.colourants, now.terms, context);
  const described = await describe({ ...asked, used }, now, context);
  const photo = await keptPhoto(asked.photo, context);
  const bar = await measured(described, { photo: photo.bytes, used }, context);
  const scope = scopeOf(context);
  const { entry } = await enterBar(scope, challenge.id, { bar, photo: photo.bytes }, madeBy(context));
  await context.store.commit(noteShelf(context.group, context.asker.id, new Date(context.at)));
  return shown({ challenge: challenge.id, entry, done: 'entered' }, context);
}

/** What a member says of a bar they hand in anew; what is left out stays as it was. */
export type ReplaceAsked = { readonly entry?: number | undefined } & {
  readonly [Name in keyof EnterAsked]?: EnterAsked[Name] | undefined;
};

/** Hands an entry in anew. */
export async function replace(asked: ReplaceAsked, context: Context): Promise<Reply> {
  const challenge = await chooseChallenge(context, asked.challenge, ['entering']);
  const now = entering(challenge, context);
  const old = ownEntry(challenge, now, asked.entry, context);
  const used = await readUsed(asked.colourants ?? old.bar.colourants.join(', '), now.terms, context);
  const said = {
    title: asked.title ?? old.bar.title,
    note: asked.note ?? old.bar.note,
    made: asked.made ?? old.bar.madeOn,
    used,
    replaces: old.entry,
  };
  const described = await describe(said, now, context);
  const photo = asked.photo
    ? (await keptPhoto(asked.photo, context)).bytes
    : await photoOf(challenge, old, context);
  const region = asked.photo ? undefined : old.bar.region;
  const bar = await measured(described, { photo, used, part: region }, context);
  await replaceBar(scopeOf(context), challenge.id, { entry: old.entry, bar, photo }, madeBy(context));
  return shown({ challenge: challenge.id, entry: old.entry, done: 'replaced' }, context);
}

/** Measures another part of an entry's photo. */
export async function measureAgain(
  { challenge: id, entry, part }: { challenge: string; entry: string; part: PhotoPart | undefined },
  context: Context,
): Promise<Reply> {
  const challenge = await requireChallenge(scopeOf(context), id);
  const now = entering(challenge, context);
  const old = numberedBars(challenge, now).find(bar => bar.entry === entry && bar.by === context.asker.id);
  if (!old) return refuse('challenge-entry-unknown', { entry });
  const photo = await photoOf(challenge, old, context);
  const used = await readUsed(old.bar.colourants.join(', '), now.terms, context);
  const { region: _before, ...described } = old.bar;
  const bar = await measured(described, { photo, used, part }, context);
  await replaceBar(scopeOf(context), id, { entry, bar, photo }, madeBy(context));
  return shown({ challenge: id, entry, done: 'measured' }, context);
}

/** Takes an entry back. */
export async function withdraw(
  asked: { readonly challenge?: string | undefined; readonly entry?: number | undefined },
  context: Context,
): Promise<Reply> {
  const challenge = await chooseChallenge(context, asked.challenge, ['entering']);
  const old = ownEntry(challenge, entering(challenge, context), asked.entry, context);
  return withdrawEntry(challenge.id, old.entry, context);
}

/** The same for an entry that is known already. */
export async function withdrawEntry(id: string, entry: string, context: Context): Promise<Reply> {
  await withdrawBar(scopeOf(context), id, entry, madeBy(context));
  const challenge = await requireChallenge(scopeOf(context), id);
  const bar = numberedBars(challenge, asOf(challenge, context.at)).find(one => one.entry === entry);
  return {
    kind: 'reply',
    headline: context.say.challengeSteps.withdrawn({ title: bar?.bar.title ?? '' }),
    data: { challenge: id, entry },
    blocks: [],
    cautions: [],
  };
}

function entering(challenge: StoredChallenge, { at }: Context): Challenge {
  const now = asOf(challenge, at);
  if (now.phase !== 'entering') refuse('challenge-not-now', { phase: now.phase, needs: 'entering' });
  return now;
}

/** The member's entry that is meant: by its number, or the only one. */
function ownEntry(
  challenge: StoredChallenge,
  now: Challenge,
  number: number | undefined,
  { asker }: Context,
): NumberedBar {
  const mine = inTheRunning(numberedBars(challenge, now)).filter(({ by }) => by === asker.id);
  const found = number === undefined ? mine : mine.filter(bar => bar.number === number);
  if (number !== undefined && found.length === 0)
    refuse('challenge-entry-unknown', { entry: String(number) });
  if (found.length > 1)
    refuse('challenge-entry-which', { entries: found.map(bar => `${bar.number}: ${bar.bar.title}`) });
  const [gone] = takenOutOf(numberedBars(challenge, now), asker.id);
  return found[0] ?? (gone ? refuse('challenge-bar-taken-out', gone) : refuse('challenge-entry-none', {}));
}

/** Refuses another bar of a member whose last place is that of a bar that was taken out. */
function requireRoom(challenge: StoredChallenge, now: Challenge, { asker }: Context): void {
  const bars = numberedBars(challenge, now);
  const gone = takenOutOf(bars, asker.id);
  const mine = inTheRunning(bars).filter(({ by }) => by === asker.id).length;
  const [first] = gone;
  if (first && mine < now.terms.entriesPerMember && mine + gone.length >= now.terms.entriesPerMember)
    refuse('challenge-bar-taken-out', first);
}

const keptPhoto = async (photo: Attachment, { workers, asker }: Context) =>
  workers.run('keepEntryPhoto', { bytes: await photo.read() }, { owner: asker.id });

async function photoOf(challenge: StoredChallenge, bar: NumberedBar, context: Context): Promise<Uint8Array> {
  const [photo] = await photosOf(scopeOf(context), challenge.id, [bar]);
  if (!photo) throw new Error(`entry ${bar.entry} has lost its photo`);
  return photo;
}

async function measured(
  described: Described,
  { photo, used, part }: { photo: Uint8Array; used: readonly Used[]; part?: PhotoPart | undefined },
  context: Context,
): Promise<Bar> {
  const kind = unscoredKind(used.map(({ colourant }) => colourant));
  const colour = kind ? { unscored: kind } : await measure(photo, part, context);
  return { ...described, ...(part && { region: part }), colour };
}

const ids = { challenge: z.string(), entry: z.string() };

/** Another part of the photo is measured. */
export const part = followUp({
  seenBy: 'asker',
  pace: 'slow',
  replaces: true,
  args: ids,
  answer({ challenge, entry }, context, { values: [name = ''] }) {
    if (!(name in photoParts)) return refuse('follow-up-invalid', {});
    return measureAgain({ challenge, entry, part: photoParts[name as PhotoPartName] }, context);
  },
});

/** The entry is taken back. */
export const takeBack = followUp({
  seenBy: 'asker',
  replaces: true,
  args: ids,
  answer: ({ challenge, entry }, context) => withdrawEntry(challenge, entry, context),
});
