import { z } from 'zod';
import { followUp } from '../../../src/conversation/command.ts';
import type { Context } from '../../../src/conversation/context.ts';
import type { Reply } from '../../../src/conversation/reply.ts';
import type { Challenge } from '../../../src/engine/challenges/challenge.ts';
import { type Chosen, requireVoter } from '../../../src/engine/challenges/voting/voting.ts';
import { readRanking } from '../../../src/engine/challenges/voting/written-ballot.ts';
import { refuse } from '../../../src/engine/refusal.ts';
import {
  asOf,
  castBallot,
  choiceOf,
  requireChallenge,
  type StoredChallenge,
  undoBallot,
} from '../../../src/records/challenges/index.ts';
import { inTheRunning, numberedBars } from '../bars.ts';
import { chooseChallenge, madeBy, scopeOf } from '../lookup.ts';
import {
  type Ballot,
  type BallotLeads,
  ballotReply,
  onPage,
  type Step,
  stillStanding,
  withoutOwn,
} from './ballot.ts';

const leads: BallotLeads = {
  pick: to => pick.with(to),
  turn: to => turn.with(to),
  back: to => back.with(to),
};

const shown = (ballot: Ballot, context: Context): Promise<Reply> => ballotReply(ballot, leads, context);

/** The first page of the first rank. */
const beginning: Step = { depth: 0, tie: false, page: 0 };

/** Casts a written ballot, or shows the one that is to be filled in. */
export async function vote(
  {
    challenge: asked,
    ranking,
  }: { readonly challenge?: string | undefined; readonly ranking?: string | undefined },
  context: Context,
): Promise<Reply> {
  const challenge = await chooseChallenge(context, asked, ['voting']);
  if (ranking === undefined) return openBallot(challenge, context);
  const now = voting(challenge, context);
  const entries = new Map(
    inTheRunning(numberedBars(challenge, now)).map(({ number, entry }) => [number, entry]),
  );
  return cast(challenge, readRanking(ranking, entries), context, { written: true });
}

/** The ballot of a member as it stands, ready to be filled in. */
export async function openBallot(challenge: StoredChallenge, context: Context): Promise<Reply> {
  const now = voting(challenge, context);
  requireVoter(now, { member: context.asker.id, joinedAt: context.asker.joinedAt });
  const chosen = await choiceNow(challenge, now, context);
  return shown(
    { challenge, now, chosen, step: { ...beginning, depth: chosen.length }, saved: 'before' },
    context,
  );
}

/** What a member has cast, without bars taken out since. */
async function choiceNow(challenge: StoredChallenge, now: Challenge, context: Context): Promise<Chosen> {
  const chosen = (await choiceOf(scopeOf(context), challenge.id, context.asker.id)) ?? [];
  return stillStanding(chosen, numberedBars(challenge, now));
}

/** What a member has cast, whatever the phase. */
export async function ownBallot(asked: string | undefined, context: Context): Promise<Reply> {
  const challenge = await chooseChallenge(context, asked, ['voting', 'counting', 'closed']);
  const now = asOf(challenge, context.at);
  if (now.phase === 'voting') return openBallot(challenge, context);
  const chosen = await choiceNow(challenge, now, context);
  return shown({ challenge, now, chosen, step: undefined, saved: 'before' }, context);
}

function voting(challenge: StoredChallenge, { at }: Context): Challenge {
  const now = asOf(challenge, at);
  if (now.phase !== 'voting') refuse('challenge-not-now', { phase: now.phase, needs: 'voting' });
  return now;
}

async function cast(
  challenge: StoredChallenge,
  chosen: Chosen,
  context: Context,
  how: Pick<Ballot, 'written'> = {},
): Promise<Reply> {
  const done = await castBallot(
    scopeOf(context),
    challenge.id,
    { chosen, joinedAt: context.asker.joinedAt },
    madeBy(context),
  );
  return shown(
    {
      challenge,
      now: voting(challenge, context),
      chosen: done.chosen,
      step: { ...beginning, depth: done.chosen.length },
      saved: done.superseded ? 'superseded' : 'now',
      ownLeftOut: chosen.flat().length > done.chosen.flat().length,
      ...(!done.superseded && { cause: madeBy(context).id }),
      ...how,
    },
    context,
  );
}

/** Anybody opens their own ballot with the button under the announcement. */
export const ballot = followUp({
  for: 'group',
  hours: 24 * 370,
  seenBy: 'asker',
  args: { challenge: z.string() },
  answer: async ({ challenge }, context) =>
    openBallot(await requireChallenge(scopeOf(context), challenge), context),
});

const stepArgs = { challenge: z.string(), depth: z.string(), tie: z.string(), page: z.string() };
const stepOf = ({ depth, tie, page }: { depth: string; tie: string; page: string }): Step => ({
  depth: Number(depth),
  tie: tie === '1',
  page: Number(page),
});

/** What was picked joins the ranks above it, and is cast at once: nothing is left to confirm. */
export const pick = followUp({
  seenBy: 'asker',
  replaces: true,
  args: stepArgs,
  async answer({ challenge: id, ...rest }, context, { values }) {
    const challenge = await requireChallenge(scopeOf(context), id);
    const now = voting(challenge, context);
    const byNumber = new Map(numberedBars(challenge, now).map(bar => [String(bar.number), bar.entry]));
    const picked = values.map(value => byNumber.get(value) ?? refuse('follow-up-invalid', {}));
    const before = await choiceNow(challenge, now, context);
    const others = withoutOwn(challenge, now, context);
    return cast(challenge, joined(before, picked, { now, step: stepOf(rest), others }), context);
  },
});

/** The ballot with what was picked on one page of it. */
function joined(
  before: Chosen,
  picked: readonly string[],
  { now, step, others }: { now: Challenge; step: Step; others: readonly { readonly entry: string }[] },
): Chosen {
  const { method } = now.terms;
  if (method === 'single') return [picked];
  if (method === 'approval') {
    const onThisPage = new Set(onPage(others, step.page).map(({ entry }) => entry));
    return [[...before.flat().filter(entry => !onThisPage.has(entry)), ...picked]];
  }
  const kept = before
    .slice(0, step.depth)
    .map(tied => tied.filter(entry => !picked.includes(entry)))
    .filter(tied => tied.length > 0);
  const last = kept.at(-1);
  return step.tie && last ? [...kept.slice(0, -1), [...last, ...picked]] : [...kept, picked];
}

/** Takes the ballot back that was just cast: the one before it counts again, or none. */
export const back = followUp({
  seenBy: 'asker',
  replaces: true,
  hours: 1,
  args: { challenge: z.string(), cause: z.string() },
  async answer({ challenge: id, cause }, context) {
    const made = madeBy(context);
    const { repeated, name } = await undoBallot(scopeOf(context), id, { cause, made });
    const challenge = await requireChallenge(scopeOf(context), id);
    const now = voting(challenge, context);
    const chosen = await choiceNow(challenge, now, context);
    const { undo } = context.say;
    const said = repeated ? undo.already : undo.done.ballot({ name });
    const step = { ...beginning, depth: chosen.length };
    return shown({ challenge, now, chosen, step, saved: 'before', said }, context);
  },
});

/** Another page, another rank, or the first rank anew: shows, casts nothing. */
export const turn = followUp({
  seenBy: 'asker',
  replaces: true,
  args: stepArgs,
  async answer({ challenge: id, ...rest }, context) {
    const challenge = await requireChallenge(scopeOf(context), id);
    const now = voting(challenge, context);
    const chosen = await choiceNow(challenge, now, context);
    return shown({ challenge, now, chosen, step: stepOf(rest), saved: 'before' }, context);
  },
});
