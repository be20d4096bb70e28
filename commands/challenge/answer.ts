import type { Context } from '../../src/conversation/context.ts';
import type { Named } from '../../src/conversation/question.ts';
import type { Block, Reply } from '../../src/conversation/reply.ts';
import type { Challenge } from '../../src/engine/challenges/challenge.ts';
import type { Phase } from '../../src/engine/challenges/events.ts';
import type { Result } from '../../src/engine/challenges/result.ts';
import { refuse } from '../../src/engine/refusal.ts';
import {
  asOf,
  listChallenges,
  placingsOf,
  resultAt,
  type StoredChallenge,
} from '../../src/records/challenges/index.ts';
import { inTheRunning, numberedBars, numberedName, takenOutOf } from './bars.ts';
import { chooseToLookAt, scopeOf, settled, zoneOfGroup } from './lookup.ts';
import { announcementPicture, barsPicture, resultsPicture } from './pictures.ts';
import { announcementReply, resultsReply } from './view.ts';

type Which = { readonly challenge?: string | undefined };

/** What is looked at first: what members can act on, then what is to come, then what is over. */
const running: readonly Phase[] = ['voting', 'entering', 'counting', 'announced', 'closed', 'cancelled'];
const rank = (phase: Phase) => running.indexOf(phase);

/** A challenge with its rules and its bars. */
export async function show(asked: Which, context: Context): Promise<Reply> {
  const { say, at, workers, asker } = context;
  const challenge = await settled(context, await chooseToLookAt(context, asked.challenge, rank));
  const now = asOf(challenge, at);
  const telling = { challenge, now, say };
  const all = numberedBars(challenge, now);
  const bars = inTheRunning(all);
  const gone = takenOutOf(all, asker.id);
  const announcement = announcementReply(challenge, now, say);
  const isRules = (block: Block) => block.kind === 'rows' && block.title === say.challenges.rules;
  const list: Block[] =
    bars.length === 0
      ? []
      : [
          {
            kind: 'rows',
            title: say.challengeSteps.bars({ bars: bars.length }),
            rows: bars.map(bar => {
              const name = numberedName(bar, now, say);
              return bar.by === asker.id ? say.challengeSteps.yours({ bar: name }) : name;
            }),
          },
        ];
  return {
    ...announcement,
    data: {
      ...announcement.data,
      entries: bars.map(({ number, entry, bar, by }) => ({
        number,
        entry,
        title: bar.title,
        ...(by === asker.id && { yours: true }),
      })),
    },
    blocks: [
      ...gone.map(bar => ({ kind: 'text' as const, text: say.challengeSteps.takenOutOfYours(bar) })),
      ...(await announcementPicture(workers, telling)),
      // Where not all fits, the rules fold, not the bars.
      ...announcement.blocks.filter(block => !isRules(block)),
      ...list,
      ...announcement.blocks.filter(isRules),
      ...(await barsPicture(workers, scopeOf(context), telling)),
    ],
  };
}

/** The challenges of the group, the newest first. */
export async function list(context: Context): Promise<Reply> {
  const { say, at } = context;
  const all = await Promise.all((await listChallenges(scopeOf(context))).map(one => settled(context, one)));
  const rows = all.map(one => {
    const { terms, phase, entries } = asOf(one, at);
    const next =
      phase === 'entering' ? terms.entriesUntil : phase === 'voting' ? terms.votesUntil : undefined;
    return {
      id: one.id,
      title: terms.title,
      phase,
      entries: entries.size,
      until: next === undefined ? undefined : say.challenges.moment(next, terms.zone),
    };
  });
  return {
    kind: 'reply',
    headline: say.challengeSteps.listed({ challenges: rows.length }),
    data: { challenges: rows },
    blocks:
      rows.length === 0
        ? []
        : [
            {
              kind: 'rows',
              rows: rows.map(row =>
                say.challengeSteps.listRow({ ...row, phase: say.challenges.phases[row.phase] }),
              ),
            },
          ],
    cautions: [],
  };
}

/** How a challenge came out; the count so far where its terms allow that. */
export async function results(asked: Which, context: Context): Promise<Reply> {
  const { say, at, workers } = context;
  const last: readonly Phase[] = ['counting', 'closed', 'voting', 'entering', 'announced', 'cancelled'];
  const challenge = await settled(
    context,
    await chooseToLookAt(context, asked.challenge, phase => last.indexOf(phase)),
  );
  const now = asOf(challenge, at);
  requireCountable(now);
  const scope = scopeOf(context);
  const result = await resultAt(scope, challenge, at);
  const told = resultsReply(challenge, { now, result, say });
  const { phase, terms } = now;
  return {
    ...told,
    headline: phase === 'closed' ? told.headline : say.challengeSteps.soFar({ title: terms.title }),
    blocks: [
      ...(await resultsPicture(workers, scope, { challenge, now, say, result })),
      ...told.blocks,
      ...pairwiseText(challenge, now, { result, context }),
    ],
  };
}

/** Nobody is told how a vote stands before it is over, unless its terms say so. */
export function requireCountable({ phase, terms }: Challenge): void {
  if (phase === 'closed') return;
  if (phase === 'voting' && terms.runningTotals) return;
  refuse('challenge-not-now', { phase, needs: 'closed' });
}

/** The pairwise table in words; in full, however many bars there are. */
function pairwiseText(
  challenge: StoredChallenge,
  now: Challenge,
  { result, context: { say } }: { result: Result; context: Context },
): readonly Block[] {
  const { tally } = result;
  if (!tally || tally.ranking.flat().length < 2) return [];
  const numbers = new Map(numberedBars(challenge, now).map(({ entry, number }) => [entry, number]));
  const order = tally.ranking.flat();
  const votes = (one: string, other: string) => tally.pairwise[one]?.[other] ?? 0;
  const lines = order.flatMap((one, index) =>
    order
      .slice(index + 1)
      .map(other => `${numbers.get(one)}–${numbers.get(other)} ${votes(one, other)}:${votes(other, one)}`),
  );
  return [{ kind: 'text', text: say.challengeSteps.pairs({ pairs: lines.join(', ') }), folds: true }];
}

/** What became of a member's bars in this group. */
export async function history(
  { member }: { readonly member?: Named | undefined },
  context: Context,
): Promise<Reply> {
  const { say, asker } = context;
  const whose = member?.id ?? asker.id;
  // Whatever is over by now counts, even where nobody was told yet.
  for (const one of await listChallenges(scopeOf(context))) await settled(context, one);
  const placings = await placingsOf(scopeOf(context), whose);
  const zone = await zoneOfGroup(context);
  const wins = placings.filter(({ place }) => place === 1).length;
  return {
    kind: 'reply',
    headline: say.challengeSteps.history({ bars: placings.length, wins }),
    data: { member: whose, placings, wins },
    blocks:
      placings.length === 0
        ? []
        : [
            {
              kind: 'rows',
              rows: placings.map(one =>
                say.challengeSteps.historyRow({ ...one, on: say.challenges.moment(one.closedAt, zone) }),
              ),
            },
          ],
    cautions: [],
  };
}
