import type { Services } from '../../src/conversation/context.ts';
import type { Block } from '../../src/conversation/reply.ts';
import type { Challenge } from '../../src/engine/challenges/challenge.ts';
import type { Measured, Result } from '../../src/engine/challenges/result.ts';
import { hexOfLab } from '../../src/engine/colour/spectra/cielab.ts';
import { photosOf } from '../../src/records/challenges/entries.ts';
import type { ChallengeScope, StoredChallenge } from '../../src/records/challenges/queries.ts';
import type { Words } from '../../src/words/index.ts';
import { withoutMarks } from '../../src/words/marks.ts';
import {
  colourantsOfBar,
  inTheRunning,
  makersAreKnown,
  type NumberedBar,
  nameOfBar,
  numberedBars,
} from './bars.ts';
import { placedBy, votedFor } from './placing.ts';
import { rulesOf } from './rules.ts';

type Workers = Services['workers'];

/** What a picture of a challenge is drawn from. */
export type Telling = { readonly challenge: StoredChallenge; readonly now: Challenge; readonly say: Words };

const picture = (name: string, png: Uint8Array, alt: string): readonly Block[] => [
  { kind: 'picture', name, png, alt },
];

const percent = (share: number) => `${Math.round(share * 100)} %`;

/** The card of a challenge: palette, dates, rules. */
export async function announcementPicture(
  workers: Workers,
  { challenge, now: { terms }, say }: Telling,
): Promise<readonly Block[]> {
  const { challenges: words, challengeSteps: steps } = say;
  const parts = terms.palette.reduce((sum, { share = 1 }) => sum + share, 0);
  const uneven = terms.palette.some(({ share }) => share !== undefined);
  // The card shows the palette itself; the row that lists it would say it twice.
  const rules = rulesOf(terms, say).slice(terms.palette.length > 0 ? 1 : 0);
  const png = await workers.run(
    'challengeCard',
    {
      kicker: steps.kicker,
      title: terms.title,
      brief: terms.brief,
      palette: terms.palette.map(({ hex, share = 1 }) => ({
        hex,
        ...(uneven && { part: percent(share / parts) }),
      })),
      paletteNote: terms.paletteSeed === undefined ? undefined : steps.drawnForShelves,
      dates: [
        { label: words.entriesUntil, value: withoutMarks(words.moment(terms.entriesUntil, terms.zone)) },
        ...(terms.decides === 'colour'
          ? []
          : [{ label: words.votesUntil, value: withoutMarks(words.moment(terms.votesUntil, terms.zone)) }]),
      ],
      rulesTitle: words.rules,
      rules,
    },
    { owner: challenge.group },
  );
  return picture('challenge.png', png, steps.cardAlt({ title: terms.title }));
}

/** The most bars one picture shows: more would be too small to tell apart. */
const mostShown = 40;

/** On a ballot: the bars that may be voted for, and the mark of each that has been. */
export type Marked = { readonly voter: string; readonly marks: ReadonlyMap<string, string> };

/** The bars in the running by their numbers, for a voter without their own; nothing when there are none. */
export async function barsPicture(
  workers: Workers,
  scope: ChallengeScope,
  { challenge, now, say }: Telling,
  ballot?: Marked,
): Promise<readonly Block[]> {
  const bars = inTheRunning(numberedBars(challenge, now))
    .filter(({ by }) => by !== ballot?.voter)
    .slice(0, mostShown);
  if (bars.length === 0) return [];
  const photos = await photosOf(scope, challenge.id, bars);
  const png = await workers.run(
    'challengeBars',
    {
      kicker: say.challengeSteps.kicker,
      title: now.terms.title,
      bars: bars.map(({ number, entry, bar }, index) => ({
        number,
        mark: ballot?.marks.get(entry),
        name: bar.title,
        below: makersAreKnown(now) ? bar.maker : colourantsOfBar({ bar }, now, say).join(', '),
        photo: photos[index],
      })),
    },
    { owner: challenge.group },
  );
  return picture('bars.png', png, say.challengeSteps.barsAlt({ bars: bars.length }));
}

/** Who is placed where, with photos, swatches and the pairwise table. */
export async function resultsPicture(
  workers: Workers,
  scope: ChallengeScope,
  { challenge, now, say, result }: Telling & { readonly result: Result },
): Promise<readonly Block[]> {
  const steps = say.challengeSteps;
  const known = new Map(numberedBars(challenge, now).map(bar => [bar.entry, bar]));
  const placed = placesOf(result).flatMap(({ entry, place }) => {
    const bar = known.get(entry);
    return bar ? [{ bar, place }] : [];
  });
  const shown = placed.slice(0, mostShown);
  const photos = await photosOf(
    scope,
    challenge.id,
    shown.map(({ bar }) => bar),
  );
  const png = await workers.run(
    'challengeResults',
    {
      kicker: steps.resultsKicker,
      title: now.terms.title,
      rows: shown.map(({ bar, place }, index) => ({
        place,
        name: nameOfBar(bar, now, say),
        lines: [...linesOf(result, bar, known, say), colourantsOfBar(bar, now, say).join(', ')].filter(
          Boolean,
        ),
        photo: photos[index],
        pairs: pairsOf(now, bar, result.colour.get(bar.entry)),
      })),
      swatchNote: steps.swatchNote,
      why: [say.challenges.deciders[result.decidedBy]],
      pairwise: pairTable(result, known, say),
    },
    { owner: challenge.group },
  );
  return picture('results.png', png, steps.resultsAlt({ title: now.terms.title }));
}

/** Every entry with its place as text: `1`, `2=` where it is shared, `–` where there is none. */
export function placesOf({ ranking, unplaced }: Result): readonly { entry: string; place: string }[] {
  let next = 1;
  const placed = ranking.flatMap(tied => {
    const place = tied.length > 1 ? `${next}=` : String(next);
    next += tied.length;
    return tied.map(entry => ({ entry, place }));
  });
  return [...placed, ...unplaced.map(({ entry }) => ({ entry, place: '–' }))];
}

/** Palette colours beside what the bar has for them; nothing where it was not scored. */
export function pairsOf(
  { terms }: Challenge,
  { bar }: { bar: NumberedBar['bar'] },
  measured: Measured | undefined,
) {
  if (!measured || !('score' in measured) || !('colours' in bar.colour)) return [];
  const { colours } = bar.colour;
  return measured.score.matches.map(({ target, bar: number }) => {
    const found = number === undefined ? undefined : colours[number];
    return { target: terms.palette[target]!.hex, bar: found && hexOfLab(found.lab) };
  });
}

/** What put a bar in its place; where vote and colour both did, what each of them says of it. */
function linesOf(
  result: Result,
  { entry }: NumberedBar,
  numbers: ReadonlyMap<string, NumberedBar>,
  say: Words,
): readonly string[] {
  const placed = placedBy(result, entry, numbers, say);
  if (result.decidedBy !== 'both') return [placed];
  const measured = result.colour.get(entry);
  const near =
    measured && 'score' in measured ? [say.challengeSteps.nearPalette({ score: measured.score.score })] : [];
  return [placed, [votedFor(result, entry, numbers, say), ...near].filter(Boolean).join('; ')];
}

/** A table of more bars than this is unreadable on a phone; the whole of it is in the answer's text or the export. */
const mostPaired = 14;

function pairTable({ tally }: Result, bars: ReadonlyMap<string, NumberedBar>, say: Words) {
  if (!tally) return undefined;
  const order = tally.ranking.flat();
  if (order.length < 2 || order.length > mostPaired) return undefined;
  const votes = (one: string, other: string) => tally.pairwise[one]?.[other] ?? 0;
  return {
    title: say.challengeSteps.pairwise,
    numbers: order.map(entry => String(bars.get(entry)?.number ?? '?')),
    cells: order.map(row =>
      order.map(column =>
        row === column
          ? undefined
          : { votes: votes(row, column), wins: votes(row, column) > votes(column, row) },
      ),
    ),
  };
}
