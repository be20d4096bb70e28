import type { Context } from '../../src/conversation/context.ts';
import type { Block, Reply } from '../../src/conversation/reply.ts';
import type { StageDate } from '../../src/engine/batch/curing/stages.ts';
import { dryingOf } from '../../src/engine/batch/curing/weight-loss.ts';
import type { Change } from '../../src/engine/batch/made/changes.ts';
import { portionCalled } from '../../src/engine/batch/portions/portion-name.ts';
import { dateAt } from '../../src/engine/challenges/wall-time.ts';
import { nearestWord } from '../../src/engine/colour/reading/plain-words.ts';
import { hexOfLab } from '../../src/engine/colour/spectra/cielab.ts';
import { practicalSpoons } from '../../src/engine/quantities/spoons.ts';
import { whole } from '../../src/presenting/colour/view.ts';
import { rough } from '../../src/presenting/dose.ts';
import {
  type Batch,
  isStopped,
  newest,
  type PouredColour,
  type PouredPortion,
  type PourOutcome,
  stateOf,
  weighingsOf,
} from '../../src/records/batches/index.ts';
import { clockOf, type Preferences, preferencesOf } from '../../src/records/preferences.ts';
import type { Taking } from '../../src/records/shelf/index.ts';
import type { Words } from '../../src/words/index.ts';
import { type Clock, nextDates } from './dates.ts';
import { batchFollowUps } from './follow-ups.ts';

const DAY = 86_400_000;

/** What a spoon of a colour was, in the reader's words. */
const spoonsView = ({ teaspoons, milligrams }: PouredColour, say: Words): string =>
  teaspoons > 0
    ? say.quantities.measure(practicalSpoons(teaspoons))
    : say.batches.grams({ grams: rough(milligrams / 1000) });

const colourView = (colour: PouredColour, say: Words): string =>
  say.batches.colour({
    name: colour.name,
    spoons: spoonsView(colour, say),
    grams: rough(colour.milligrams / 1000),
    lot: colour.lot === undefined ? undefined : say.shelf.lot({ number: colour.lot, label: colour.label }),
  });

/** A portion in one line: what went in, what colour was foretold, and what it became. */
export function portionView(batch: Batch, at: number, say: Words): string {
  const portion = batch.portions[at]!;
  const seen = newest(batch, 'cured')?.did.measured.findLast(one => one.portion === at);
  return say.batches.portion({
    name: nameOf(portion, say),
    colours: portion.colours.map(colour => colourView(colour, say)),
    expected: portion.predicted && {
      word: say.colour.names[nearestWord(portion.predicted.lab)],
      hex: hexOfLab(portion.predicted.lab),
      plusMinus: whole(portion.predicted.plusMinus),
    },
    became: seen && { word: say.colour.names[nearestWord(seen.lab)], hex: hexOfLab(seen.lab) },
  });
}

/** A name that only repeats the colours is left out. */
export const nameOf = ({ name, colours }: PouredPortion, say: Words): string | undefined =>
  colours.length > 0 && colours.map(one => one.name).join(' + ') === name
    ? undefined
    : say.batch.portionName(portionCalled(name));

/** The reply to a pour: what left the shelf first, then what is kept and what comes next. */
export function pouredView(
  outcome: PourOutcome,
  {
    changes,
    takings,
    photo,
    wishes,
    wantedName,
  }: {
    readonly changes: readonly Change[];
    readonly takings: readonly Taking[];
    readonly photo: boolean;
    readonly wishes: Preferences;
    /** What it was to be called. */
    readonly wantedName: string;
  },
  context: Context,
): Reply {
  const { say } = context;
  const { batch, outcomes, repeated } = outcome;
  const words = say.batches;
  const short = takings.flatMap(({ item, grams }) => {
    const taken = outcomes.find(({ id }) => id === item);
    const out = -(taken?.change ?? 0);
    return taken && out < grams - 0.0015 ? [words.notAll({ name: taken.name, grams, taken: out })] : [];
  });
  const low = outcomes.flatMap(({ name, left, low: isLow }) =>
    isLow && left !== undefined ? [say.shelf.low({ name, left })] : [],
  );
  const notes = [
    ...(repeated ? [say.shelf.repeated] : []),
    ...(batch.name === wantedName ? [] : [words.renamed({ wanted: wantedName, name: batch.name })]),
    ...short,
    ...low,
    ...(changes.length > batch.asides.length ? [words.changed] : []),
    ...batch.asides.map(text => words.aside({ text })),
    ...(photo ? [words.photoKept] : []),
  ];
  return {
    kind: 'reply',
    headline: words.poured({
      name: batch.name,
      date: dateAt(batch.at.getTime(), clockOf(wishes).zone),
      taken: outcomes.flatMap(({ name, change = 0 }) => (change < 0 ? [{ name, grams: -change }] : [])),
    }),
    data: { batch: dataOf(batch), taken: outcomes, repeated },
    blocks: [
      { kind: 'rows', rows: batch.portions.map((_, at) => portionView(batch, at, say)) },
      ...textBlock(notes),
      ...nextBlock(batch, clockOf(wishes), context),
    ],
    cautions: [{ id: 'raw-soap', text: words.rawCaution, firm: true, brief: say.dosing.brief['raw-batter'] }],
    choices: [
      {
        kind: 'button',
        label: words.undo,
        weight: 'plain',
        follow: batchFollowUps.undo.with({ batch: batch.id }),
      },
    ],
  };
}

const textBlock = (lines: readonly string[]): readonly Block[] =>
  lines.length > 0 ? [{ kind: 'text', text: lines.join('\n') }] : [];

/** What comes next, and when, by the member's own clock. */
export function nextBlock(
  batch: Batch,
  clock: Clock,
  { say, at: now }: Pick<Context, 'say' | 'at'>,
): readonly Block[] {
  const dates = nextDates(batch, { clock, now }).slice(0, 5);
  if (dates.length === 0) return [];
  return [
    {
      kind: 'rows',
      title: isStopped(batch) ? say.batches.nextSilent : say.batches.next,
      rows: dates.map(date => dateView(date, { zone: clock.zone, now }, say)),
    },
  ];
}

/** One date in a line; bars that are cured already are so since it. */
export const dateView = (
  { stage, at, exact }: StageDate,
  { zone, now }: { readonly zone: string; readonly now: number },
  say: Words,
): string =>
  stage === 'cured' && at < now
    ? say.batches.curedSince({ at, zone })
    : say.batches.date({ what: say.batches.stages[stage], at, zone, exact });

/** The batch as programs have it. */
export const dataOf = (batch: Batch): object => ({
  ...batch,
  state: stateOf(batch),
  drying: dryingOf(weighingsOf(batch)),
});

/** One batch in a line: how old it is, how far it has come, what is in it. */
export function batchRow(batch: Batch, { say, at }: Pick<Context, 'say' | 'at'>, zone: string): string {
  return say.batches.row({
    name: batch.name,
    date: dateAt(batch.at.getTime(), zone),
    days: Math.floor((at - batch.at.getTime()) / DAY),
    state: stateOf(batch),
    colours: [...new Set(batch.portions.flatMap(({ colours }) => colours.map(({ name }) => name)))],
  });
}

/** How far it has dried, in a line; nothing where weights do not tell. */
export function dryingView(batch: Batch, say: Words): readonly string[] {
  const drying = dryingOf(weighingsOf(batch));
  return drying
    ? [
        say.batches.drying({
          percent: 100 * drying.weeklyLoss,
          inAll: 100 * drying.lostInAll,
          cured: drying.cured,
          weeks: drying.weeksLeft,
        }),
      ]
    : [];
}

/** Everything about one batch. */
export async function batchView(
  batch: Batch,
  context: Context,
  extra: readonly Block[] = [],
): Promise<Reply> {
  const { say, store, asker, at } = context;
  const clock = clockOf(await preferencesOf(store, asker.id));
  const words = say.batches;
  const notes = batch.events.flatMap(({ at: when, did }) =>
    did.kind === 'noted' ? [words.noted({ date: dateAt(when.getTime(), clock.zone), text: did.text })] : [],
  );
  return {
    kind: 'reply',
    headline: batchRow(batch, { say, at }, clock.zone),
    data: { batch: dataOf(batch) },
    blocks: [
      { kind: 'rows', rows: batch.portions.map((_, which) => portionView(batch, which, say)) },
      ...textBlock([
        words.bed({
          gelled: batch.gelled,
          said: batch.gelSaid,
          lye: batch.lyeConcentration,
          plan: batch.plan !== undefined,
        }),
        ...(batch.changes === undefined ? [] : [words.otherwise({ text: batch.changes })]),
        ...dryingView(batch, say),
        ...notes,
      ]),
      ...extra,
      ...nextBlock(batch, clock, context),
    ],
    cautions: [],
  };
}
