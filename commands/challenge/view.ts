import type { Block, Reply } from '../../src/conversation/reply.ts';
import { type Challenge, standing } from '../../src/engine/challenges/challenge.ts';
import type { Measured, Result } from '../../src/engine/challenges/result.ts';
import { closingGrace } from '../../src/records/challenges/due.ts';
import type { Notice } from '../../src/records/challenges/outcome.ts';
import { barOf, type StoredChallenge } from '../../src/records/challenges/queries.ts';
import type { Words } from '../../src/words/index.ts';
import { type NumberedBar, nameOfBar, numberedBars, tenth } from './bars.ts';
import { invitations } from './invitations.ts';
import { placedBy } from './placing.ts';
import { rulesOf } from './rules.ts';

/** Closing takes a check or two; only what is later than this was late, ms. */
const late = 120_000;

const reply = (headline: string, data: object, blocks: readonly Block[]): Reply => ({
  kind: 'reply',
  headline,
  data,
  blocks,
  cautions: [],
});

/** A challenge as members must know it: what, until when, by which rules. */
export function announcementReply({ id }: StoredChallenge, { terms, phase }: Challenge, say: Words): Reply {
  const words = say.challenges;
  const told = reply(
    words.announced({ title: terms.title, phase: words.phases[phase] }),
    { id, phase, terms },
    [
      ...(terms.brief === '' ? [] : [{ kind: 'text', text: terms.brief } as const]),
      {
        kind: 'measures',
        measures: [
          { label: words.entriesUntil, value: words.moment(terms.entriesUntil, terms.zone) },
          ...(terms.decides === 'colour'
            ? []
            : [{ label: words.votesUntil, value: words.moment(terms.votesUntil, terms.zone) }]),
        ],
      },
      { kind: 'rows', title: words.rules, rows: rulesOf(terms, say) },
      ...tieSeed({ terms }, say),
      ...(terms.paletteSeed === undefined
        ? []
        : [
            {
              kind: 'text',
              text: say.challengeSteps.drawnWith({ seed: terms.paletteSeed }),
              folds: true,
              fold: 'more',
            } as const,
          ]),
    ],
  );
  return { ...told, ...invitations(id, phase, say) };
}

/** One line that something begins or ends soon. */
export function noticeReply(
  { id }: StoredChallenge,
  challenge: Challenge,
  { what, say }: { what: Notice; say: Words },
): Reply {
  const words = say.challenges;
  const { title, zone } = challenge.terms;
  const entriesEnd = words.moment(challenge.terms.entriesUntil, zone);
  const votesEnd = words.moment(challenge.terms.votesUntil, zone);
  const headlines: Readonly<Record<Notice, string>> = {
    open: words.nowOpen({ title, until: entriesEnd }),
    'entries-soon': words.entriesSoon({ title, until: entriesEnd }),
    vote: words.nowVote({ title, until: votesEnd, entries: standing(challenge).length }),
    'votes-soon': words.votesSoon({ title, until: votesEnd }),
  };
  return {
    ...reply(headlines[what], { id, phase: challenge.phase, what }, []),
    ...invitations(id, challenge.phase, say),
  };
}

/** That a challenge was called off, by reason. */
export function cancelledReply({ id }: StoredChallenge, { terms, cancelled }: Challenge, say: Words): Reply {
  const reason = cancelled?.reason ?? '';
  return reply(
    say.challenges.cancelled({ title: terms.title, reason }),
    { id, phase: 'cancelled', reason },
    [],
  );
}

/** How a challenge came out: places, what decided, and whatever a reader needs to believe it. */
export function resultsReply(
  challenge: StoredChallenge,
  { now, result, say }: { now: Challenge; result: Result; say: Words },
): Reply {
  const words = say.challenges;
  const bars = new Map(numberedBars(challenge, now).map(bar => [bar.entry, bar]));
  const first = (result.ranking[0] ?? []).flatMap(entry => bars.get(entry) ?? []);
  const headline =
    first.length === 0
      ? words.nobodyPlaced({ title: now.terms.title })
      : words.winner({ title: now.terms.title, bars: first.map(bar => nameOfBar(bar, now, say)) });
  return reply(headline, resultData(challenge, result), [
    { kind: 'rows', title: words.places, rows: placeRows(result, { bars, now, say }) },
    { kind: 'text', text: whyOf(now, result, say) },
    ...takenOut(challenge, now, say),
    ...exactColours(result, bars, say),
    ...tieSeed(now, say),
  ]);
}

function placeRows(
  result: Result,
  { bars, now, say }: { bars: ReadonlyMap<string, NumberedBar>; now: Challenge; say: Words },
): readonly string[] {
  const words = say.challenges;
  const rows: string[] = [];
  let place = 1;
  for (const tied of result.ranking) {
    for (const entry of tied) {
      const bar = bars.get(entry);
      if (!bar) continue;
      const shared = tied.length > 1 ? `${place}=` : String(place);
      const why = placedBy(result, entry, bars, say);
      rows.push(words.placed({ place: shared, bar: nameOfBar(bar, now, say), number: bar.number, why }));
    }
    place += tied.length;
  }
  for (const { entry, why } of result.unplaced) {
    const bar = bars.get(entry);
    if (bar) rows.push(words.unplaced({ bar: nameOfBar(bar, now, say), why: words.unscored[why] }));
  }
  return rows;
}

/** How far each bar measures from the palette: numbers for whoever wants them. */
function exactColours(result: Result, bars: ReadonlyMap<string, NumberedBar>, say: Words): readonly Block[] {
  const words = say.challenges;
  const rows = [...result.colour].flatMap(([entry, measured]) => {
    const [bar, score] = [bars.get(entry), scoreText(measured, say)];
    return bar && score !== undefined ? [words.colourNumber({ number: bar.number, score })] : [];
  });
  return rows.length === 0 ? [] : [{ kind: 'rows', title: words.colourNumbers, rows, fold: 'numbers' }];
}

const tieSeed = (
  { terms: { ties } }: Pick<Challenge, 'terms'>,
  { challenges: words }: Words,
): readonly Block[] =>
  ties === 'shared'
    ? []
    : [{ kind: 'text', text: words.tieSeed({ seed: ties.brokenBySeed }), folds: true, fold: 'more' }];

function scoreText(measured: Measured | undefined, say: Words): string | undefined {
  if (!measured || !('score' in measured)) return undefined;
  const { score, plusMinus } = measured.score;
  return say.challenges.score({ score: tenth(score), plusMinus: tenth(plusMinus) });
}

function whyOf({ terms, closedAt = 0 }: Challenge, { decidedBy, quorum, tally }: Result, say: Words): string {
  const words = say.challenges;
  return [
    words.deciders[decidedBy],
    ...(tally ? [words.ballotsCounted({ ballots: tally.ballots })] : []),
    ...(quorum.met ? [] : [words.quorumMissed(quorum)]),
    terms.ties === 'shared' ? words.sharedTies : words.brokenTies,
    ...(closedAt > terms.votesUntil + closingGrace + late
      ? [words.closedLate({ due: terms.votesUntil, closed: closedAt, zone: terms.zone })]
      : []),
  ].join(' ');
}

/** Who was taken out, and why: everybody may know. */
function takenOut(challenge: StoredChallenge, now: Challenge, say: Words): readonly Block[] {
  const words = say.challenges;
  const rows = [...now.entries.values()].flatMap(entry => {
    if (entry.state !== 'disqualified') return [];
    return [words.disqualified({ bar: nameOfBar(barOf(challenge, entry), now, say), reason: entry.reason })];
  });
  return rows.length === 0 ? [] : [{ kind: 'rows', title: words.takenOut, rows }];
}

/** A result for programs. */
export const resultData = ({ id }: StoredChallenge, result: Result): object => ({
  id,
  ...result,
  colour: Object.fromEntries(result.colour),
});
