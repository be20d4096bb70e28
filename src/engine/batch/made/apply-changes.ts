import type { HeatProcess } from '../../heat/setting.ts';
import type { Amount } from '../../quantities/amount.ts';
import type { Measures } from '../../quantities/units.ts';
import { refuse } from '../../refusal.ts';
import { excerpt } from '../../text/excerpt.ts';
import { fold } from '../../text/fold.ts';
import type { Change } from './changes.ts';
import type { MadeColour, MadePortion } from './made.ts';

declare module '../../refusal.ts' {
  interface Reasons {
    'batch-amount-absurd': { readonly text: string; readonly name: string };
  }
}

/** A batch as it was planned, then as it was made. */
export type Changed<Colour extends MadeColour> = {
  readonly portions: readonly MadePortion<Colour>[];
  /** Said, not foretold; undefined where nothing was said. */
  readonly gelled: boolean | undefined;
  readonly process: HeatProcess | undefined;
  /** What could not be counted, in its maker's words. */
  readonly notes: readonly string[];
};

/** Doses as near as this are the one that was meant: a level spoon repeats to about a tenth. */
const SAME_DOSE = 0.1;
/** More pigment than this per 100 g of batter is a slip of the pen: no soap holds it together. */
const MOST_PIGMENT = 30;

/**
 * The portions as they were made. An amount goes to the colour that is named, else to the one planned at the amount it
 * stands instead of, else to the only colour there is. Throws a Refusal: `batch-change-unclear` where that is none or
 * several unlike ones, `batch-amount-absurd`.
 */
export function applyChanges<Colour extends MadeColour>(
  planned: readonly MadePortion<Colour>[],
  changes: readonly Change[],
  measures: Pick<Measures, 'teaspoon'>,
): Changed<Colour> {
  let portions = planned;
  let gelled: boolean | undefined;
  let process: HeatProcess | undefined;
  const notes: string[] = [];
  for (const change of changes) {
    if (change.kind === 'gel') gelled = change.gelled;
    else if (change.kind === 'process') process = change.process;
    else if (change.kind === 'note') notes.push(change.text);
    else if (change.kind === 'without') {
      const gone = named(planned, change.name);
      if (gone.length === 0) notes.push(change.text);
      portions = portions.map(one => ({
        ...one,
        colours: one.colours.filter(({ name }) => !gone.includes(name)),
      }));
    } else portions = dosed(portions, planned, change, measures);
  }
  return { portions, gelled, process, notes };
}

type Dosing = Extract<Change, { kind: 'amount' }>;

function dosed<Colour extends MadeColour>(
  portions: readonly MadePortion<Colour>[],
  planned: readonly MadePortion<Colour>[],
  change: Dosing,
  measures: Pick<Measures, 'teaspoon'>,
): readonly MadePortion<Colour>[] {
  const meant = meantBy(planned, change, measures);
  return portions.map((portion, at) => ({
    ...portion,
    colours: portion.colours.map(colour =>
      meant.some(one => one.portion === at && one.name === colour.name)
        ? scaledTo(colour, change, measures)
        : colour,
    ),
  }));
}

/** Where a colour lies, as it was planned. */
type Placed = { readonly portion: number; readonly name: string };

function meantBy(
  planned: readonly MadePortion[],
  change: Dosing,
  measures: Pick<Measures, 'teaspoon'>,
): readonly Placed[] {
  const all = planned.flatMap(({ colours }, portion) => colours.map(colour => ({ portion, colour })));
  const names = change.name === '' ? undefined : named(planned, change.name);
  const fitting = all
    .filter(({ colour }) => names === undefined || names.includes(colour.name))
    .filter(({ colour }) => change.before === undefined || isThatMuch(colour, change.before, measures));
  const different = new Set(fitting.map(({ colour }) => colour.name));
  if (different.size !== 1) {
    const colours = [...new Set(all.map(({ colour }) => colour.name))];
    return refuse('batch-change-unclear', { text: excerpt(change.text), colours });
  }
  // The same colour planned alike in two portions was changed in both; unlike, which of them must be said.
  return fitting.map(({ portion, colour }) => ({ portion, name: colour.name }));
}

/** Names of the colours that a text means: the exact one, else those that begin with it or hold it. */
function named(planned: readonly MadePortion[], text: string): readonly string[] {
  const names = [...new Set(planned.flatMap(({ colours }) => colours.map(({ name }) => name)))];
  const wanted = fold(text);
  const exact = names.filter(name => fold(name) === wanted);
  if (exact.length > 0) return exact;
  return wanted.length < 3 ? [] : names.filter(name => fold(name).includes(wanted));
}

const isThatMuch = (colour: MadeColour, amount: Amount, measures: Pick<Measures, 'teaspoon'>): boolean => {
  const share = shareOf(colour, amount, measures);
  return Math.abs(share - 1) <= SAME_DOSE;
};

/** An amount over what the colour was planned at. */
const shareOf = (
  { teaspoons, grams }: MadeColour,
  amount: Amount,
  { teaspoon }: Pick<Measures, 'teaspoon'>,
): number => (amount.measure === 'mass' ? amount.grams / grams : amount.millilitres / teaspoon / teaspoons);

function scaledTo<Colour extends MadeColour>(
  colour: Colour,
  { now, text }: Dosing,
  measures: Pick<Measures, 'teaspoon'>,
): Colour {
  const share = shareOf(colour, now, measures);
  const pigment = colour.pigment * share;
  if (!(pigment <= MOST_PIGMENT)) refuse('batch-amount-absurd', { text: excerpt(text), name: colour.name });
  return { ...colour, teaspoons: colour.teaspoons * share, grams: colour.grams * share, pigment };
}
