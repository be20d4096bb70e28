import type { Context } from '../../../src/conversation/context.ts';
import type { Follow } from '../../../src/conversation/follow-ups/follow.ts';
import type { Block, Choice, Reply } from '../../../src/conversation/reply.ts';
import type { Challenge } from '../../../src/engine/challenges/challenge.ts';
import type { Chosen } from '../../../src/engine/challenges/voting/voting.ts';
import type { StoredChallenge } from '../../../src/records/challenges/index.ts';
import {
  colourantsOfBar,
  inTheRunning,
  type NumberedBar,
  nameOfBar,
  numberedBars,
  numberedName,
} from '../bars.ts';
import { scopeOf } from '../lookup.ts';
import { barsPicture } from '../pictures.ts';

/** Where on the ballot the next pick goes: after so many ranks, or into the last of them; and which page is shown. */
export type Step = { readonly depth: number; readonly tie: boolean; readonly page: number };

type BallotArgs = {
  readonly challenge: string;
  readonly depth: number;
  readonly tie: 0 | 1;
  readonly page: number;
};

/** Where the menu and the buttons of a ballot lead. */
export type BallotLeads = {
  readonly pick: (to: BallotArgs) => Follow;
  readonly turn: (to: BallotArgs) => Follow;
  readonly back: (cast: { readonly challenge: string; readonly cause: string }) => Follow;
};

export type Ballot = {
  readonly challenge: StoredChallenge;
  readonly now: Challenge;
  readonly chosen: Chosen;
  /** Undefined when nothing can be changed any more. */
  readonly step: Step | undefined;
  /** Whether the ballot was cast just now, before, or has been overtaken by a later one of the same member. */
  readonly saved: 'now' | 'before' | 'superseded';
  readonly ownLeftOut?: boolean;
  /** The interaction that cast it just now. */
  readonly cause?: string;
  /** Said before the ballot itself. */
  readonly said?: string;
  /** Cast in one line by somebody who knows the numbers: no picture of the bars. */
  readonly written?: boolean;
};

/** The platform shows so many items in a menu. */
const pageSize = 25;

/** What one page of a longer list shows. */
export const onPage = <Thing>(list: readonly Thing[], page: number): readonly Thing[] =>
  list.slice(page * pageSize, (page + 1) * pageSize);

/** The bars a member may vote for. */
export const withoutOwn = (
  challenge: StoredChallenge,
  now: Challenge,
  { asker }: Pick<Context, 'asker'>,
): readonly NumberedBar[] => inTheRunning(numberedBars(challenge, now)).filter(({ by }) => by !== asker.id);

/** A choice without the bars that have been taken out since. */
export function stillStanding(chosen: Chosen, bars: readonly NumberedBar[]): Chosen {
  const running = new Set(inTheRunning(bars).map(({ entry }) => entry));
  return chosen.map(tied => tied.filter(entry => running.has(entry))).filter(tied => tied.length > 0);
}

/** A member's ballot: what is on it, what may go on it next, and the bars to look at while choosing. */
export async function ballotReply(
  { challenge, now, chosen, step, saved, ownLeftOut = false, cause, said, written = false }: Ballot,
  leads: BallotLeads,
  context: Context,
): Promise<Reply> {
  const { say } = context;
  const steps = say.challengeSteps;
  const { terms } = now;
  const others = withoutOwn(challenge, now, context);
  const bars = numberedBars(challenge, now);
  const known = new Map(bars.map(bar => [bar.entry, bar]));
  const ranks = stillStanding(chosen, bars);
  const nameOf = (entry: string) => {
    const bar = known.get(entry)!;
    return steps.barNamed({ number: bar.number, name: nameOfBar(bar, now, say) });
  };
  const count = ranks.flat().length;
  const notes = [
    ...(ownLeftOut || bars.some(({ by }) => by === context.asker.id) ? [steps.ownLeftOut] : []),
    ...(terms.method === 'schulze' && count > 0 && count < others.length ? [steps.restShare] : []),
    ...(step && terms.method === 'schulze' && step.depth < ranks.length ? [steps.countsUntilChosen] : []),
    ...(step ? [steps.changeUntil({ until: say.challenges.moment(terms.votesUntil, terms.zone) })] : []),
  ];
  const blocks: Block[] = [];
  if (count > 0)
    blocks.push({
      kind: 'rows',
      rows:
        terms.method === 'schulze'
          ? ranks.map((tied, at) => `${placeOf(ranks, at)}. ${tied.map(nameOf).join(' = ')}`)
          : ranks.flat().map(nameOf),
    });
  blocks.push({ kind: 'text', text: notes.join('\n') });
  if (step && !written) {
    const marks = marksOf(ranks, terms.method, steps);
    const ballot = { voter: context.asker.id, marks };
    const drawing = barsPicture(context.workers, scopeOf(context), { challenge, now, say }, ballot);
    // What was cast is cast: a group that crowds the drawing of pictures votes all the same.
    blocks.push(...(await drawing.catch(() => [])));
  }
  const headline = said ?? steps.ballot[count === 0 ? 'empty' : saved]({ title: terms.title, bars: count });
  return {
    kind: 'reply',
    headline,
    data: {
      challenge: challenge.id,
      method: terms.method,
      ranking: ranks.map(tied => tied.map(entry => known.get(entry)!.number)),
      entries: ranks,
      open: others.map(({ number, entry, bar }) => ({ number, entry, title: bar.title })),
    },
    blocks: blocks.filter(block => block.kind !== 'text' || block.text !== ''),
    cautions: [],
    choices: [
      ...(step ? ballotChoices({ challenge, now, others, ranks, step }, leads, context) : []),
      ...(cause === undefined
        ? []
        : [
            {
              kind: 'button',
              label: say.undo.button,
              follow: leads.back({ challenge: challenge.id, cause }),
            } as const,
          ]),
    ],
  };
}

/** The place of a rank: those tied share one, and as many after it stay free. */
const placeOf = (ranks: Chosen, rank: number): number =>
  1 + ranks.slice(0, rank).reduce((above, tied) => above + tied.length, 0);

/** What a voter gave each bar: its rank, or that it was chosen. */
function marksOf(
  ranks: Chosen,
  method: Challenge['terms']['method'],
  steps: Context['say']['challengeSteps'],
): ReadonlyMap<string, string> {
  return new Map(
    ranks.flatMap((tied, at) =>
      tied.map(
        entry =>
          [entry, method === 'schulze' ? steps.ranks({ place: placeOf(ranks, at) }) : steps.chosen] as const,
      ),
    ),
  );
}

type Filling = {
  readonly challenge: StoredChallenge;
  readonly now: Challenge;
  readonly others: readonly NumberedBar[];
  readonly ranks: Chosen;
  readonly step: Step;
};

function ballotChoices(
  { challenge, now, others, ranks, step }: Filling,
  leads: BallotLeads,
  { say }: Context,
): readonly Choice[] {
  const steps = say.challengeSteps;
  const { method } = now.terms;
  const ranked = method === 'schulze';
  const above = new Set(ranked ? ranks.slice(0, step.depth).flat() : []);
  const left = others.filter(({ entry }) => !above.has(entry));
  const items = onPage(left, step.page);
  const to = (next: Partial<Step>): BallotArgs => {
    const { depth, tie, page } = { ...step, ...next };
    return { challenge: challenge.id, depth, tie: tie ? 1 : 0, page };
  };
  const choices: Choice[] = [];
  if (items.length > 0)
    choices.push({
      kind: 'menu',
      label: step.tie
        ? steps.sharePlace({ place: placeOf(ranks, step.depth - 1) })
        : steps.choose[method]({ place: placeOf(ranks, step.depth) }),
      items: items.map(bar => ({
        label: numberedName(bar, now, say),
        value: String(bar.number),
        note: colourantsOfBar(bar, now, say).join(', '),
      })),
      least: 1,
      most: method === 'approval' ? items.length : 1,
      follow: leads.pick(to({})),
    });
  const button = (label: string, next: Partial<Step>) =>
    choices.push({ kind: 'button', label, follow: leads.turn(to(next)) });
  const pages = Math.ceil(left.length / pageSize);
  if (pages > 1) button(steps.moreBars, { page: (step.page + 1) % pages });
  if (ranked && step.depth > 0) {
    if (items.length > 0 && !step.tie)
      button(steps.tieNext({ place: placeOf(ranks, step.depth - 1) }), { tie: true, page: 0 });
    button(steps.startAgain, { depth: 0, tie: false, page: 0 });
  }
  return choices;
}
