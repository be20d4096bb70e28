import type { Suggestion } from '../../src/conversation/command.ts';
import type { Context } from '../../src/conversation/context.ts';
import type { Phase } from '../../src/engine/challenges/events.ts';
import { refuse } from '../../src/engine/refusal.ts';
import { unaccented } from '../../src/engine/text/unaccented.ts';
import {
  asOf,
  type ChallengeScope,
  listChallenges,
  type Made,
  readChallenge,
  type StoredChallenge,
  settleChallenge,
} from '../../src/records/challenges/index.ts';
import { groupSettings } from '../../src/records/group.ts';

declare module '../../src/engine/refusal.ts' {
  interface Reasons {
    'challenge-none-such': { readonly needs: readonly Phase[] };
    'challenge-which': { readonly titles: readonly string[] };
    'challenge-bar-taken-out': { readonly title: string; readonly reason: string };
    'challenge-title-taken': { readonly title: string };
  }
}

/** The challenges of the group in which is asked. */
export const scopeOf = ({ store, group }: Context): ChallengeScope => ({ store, group });

/** The interaction as what brings a change about. */
export const madeBy = ({ id, at, asker }: Context): Made => ({ id, at, by: asker.id });

/** The same with the steward's name, which the list of what stewards did shows. */
export const madeBySteward = (context: Context): Made => ({ ...madeBy(context), name: context.asker.name });

/** The zone in which a group writes its times. */
export const zoneOfGroup = async ({ store, group }: Context): Promise<string> =>
  (await groupSettings(store, group)).zone ?? 'UTC';

/** Capitals and accents do not tell titles apart. */
const fold = (text: string) => unaccented(text).trim();

const titleOf = (challenge: StoredChallenge, { at }: Context) => asOf(challenge, at).terms.title;

const OVER: ReadonlySet<Phase> = new Set(['closed', 'cancelled']);

/** Refuses a title under which another challenge is still running: nobody could tell the two apart. */
export async function requireOtherTitle(title: string, id: string, context: Context): Promise<void> {
  const all = await listChallenges(scopeOf(context));
  const taken = all.some(one => {
    const now = asOf(one, context.at);
    return one.id !== id && !OVER.has(now.phase) && fold(now.terms.title) === fold(title);
  });
  if (taken) refuse('challenge-title-taken', { title });
}

/**
 * The challenge that is meant: by its id or its title; without either the one that is in one of these phases. Of one
 * title, the one that can be acted on comes before one that only runs, and that before what is over. Refuses when
 * there is none, or more than one.
 */
export async function chooseChallenge(
  context: Context,
  asked: string | undefined,
  phases: readonly Phase[],
): Promise<StoredChallenge> {
  if (asked !== undefined)
    return named(context, asked, phase => (phases.includes(phase) ? 0 : OVER.has(phase) ? 2 : 1));
  const all = await listChallenges(scopeOf(context));
  const fitting = all.filter(one => phases.includes(asOf(one, context.at).phase));
  const [only] = fitting;
  if (fitting.length > 1)
    refuse('challenge-which', { titles: fitting.map(one => titleOf(one, context)).slice(0, 5) });
  return only ?? refuse('challenge-none-such', { needs: phases });
}

/** The same for a look: whatever runs before what is over; the newest of them when there are several. */
export async function chooseToLookAt(
  context: Context,
  asked: string | undefined,
  rank: (phase: Phase) => number,
): Promise<StoredChallenge> {
  if (asked !== undefined) return named(context, asked, rank);
  const [best] = await ranked(context, rank);
  return best ?? refuse('challenge-none-such', { needs: ['entering'] });
}

/** The challenges of the group by the rank of their phases, the newest first among equals. */
async function ranked(context: Context, rank: (phase: Phase) => number): Promise<readonly StoredChallenge[]> {
  const all = await listChallenges(scopeOf(context));
  return [...all].sort((a, b) => rank(asOf(a, context.at).phase) - rank(asOf(b, context.at).phase));
}

/** By its id or its title. Throws a Refusal `challenge-unknown`. */
async function named(
  context: Context,
  asked: string,
  rank: (phase: Phase) => number,
): Promise<StoredChallenge> {
  const byId = /^\d+$/.test(asked) ? await readChallenge(scopeOf(context), asked) : undefined;
  if (byId) return byId;
  const all = await ranked(context, rank);
  const wanted = fold(asked);
  const found =
    all.find(one => fold(titleOf(one, context)) === wanted) ??
    all.find(one => fold(titleOf(one, context)).includes(wanted));
  return found ?? refuse('challenge-unknown', { id: asked });
}

/** Closes a challenge whose time was over when this was asked, where nobody else has; and reads it as it is now. */
export async function settled(context: Context, challenge: StoredChallenge): Promise<StoredChallenge> {
  if (asOf(challenge, context.at).phase !== 'counting') return challenge;
  return (await settleChallenge(scopeOf(context), challenge, context.at)) ?? challenge;
}

/** Challenges of the group whose title fits what was typed, the newest first. */
export async function suggestChallenges(typed: string, context: Context): Promise<readonly Suggestion[]> {
  const wanted = fold(typed);
  return (await listChallenges(scopeOf(context)))
    .map(one => ({ name: titleOf(one, context), value: one.id }))
    .filter(({ name }) => fold(name).includes(wanted));
}
