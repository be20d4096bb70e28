import { unbroken } from '../../../../over-lines.ts';
import type { Amount, Item, Name } from '../items/item.ts';
import { type State, same } from '../state.ts';
import { isMeasure, isOil, type Pair } from './parts.ts';
import { timesOf } from './times.ts';

type Weighed = { readonly name: Name; readonly measure: Amount };

/** The oils told so far, each with its weight. */
function before({ pairs, each, unpaired }: State): readonly Weighed[] {
  const told = pairs.flatMap(({ name, measure }) =>
    isOil(name) && measure.is === 'amount' ? [{ name, measure }] : [],
  );
  return each ? [...told, ...unpaired.filter(isOil).map(name => ({ name, measure: each }))] : told;
}

/** "Those two together", "los dos juntos": so many of them, where a number is told. */
const TOGETHER = new RegExp(
  unbroken`
    (?<![\p{L}\d])(?:together|combined|juntos|juntas|(?:all|both|those|these|the|los|las|esos|
    esas) (?:of )?(?:two|three|2|3|both|dos|tres|others?|otr[oa]s)|both|amb[oa]s)(?![\p{L}\d])
  `,
  'u',
);
const COUNTS: readonly (readonly [RegExp, number])[] = [
  [/(?<![\p{L}\d])(?:two|2|dos|both|amb[oa]s)(?![\p{L}\d])/u, 2],
  [/(?<![\p{L}\d])(?:three|3|tres)(?![\p{L}\d])/u, 3],
];

const TURNS: ReadonlySet<Item['is']> = new Set([
  'without',
  'not',
  'instead',
  'corrects',
  'swaps',
  'planned',
  'times',
]);

const textOf = (items: readonly Item[]): string => items.map(({ text }) => text).join(' ');

/** Of which weight it is as much: one that is named, the sum of those before, or the one that all before have. */
function measureMeant(told: readonly Weighed[], after: readonly Item[], times: number): Amount | undefined {
  const said = textOf(after);
  const [, other, more] = after.filter(isOil);
  const figures = new Set(told.map(({ measure }) => `${measure.figure} ${measure.unit}`));
  const units = new Set(told.map(({ measure }) => measure.unit));
  if (more || told.length === 0) return undefined;
  if (other) return told.find(({ name }) => same(name, other))?.measure;
  if (TOGETHER.test(said)) {
    const count = COUNTS.find(([pattern]) => pattern.test(said))?.[1];
    if (units.size !== 1 || (count !== undefined && count !== told.length)) return undefined;
    const figure = told.reduce((sum, { measure }) => sum + measure.figure, 0);
    return { ...told[0]!.measure, figure };
  }
  // "As much lard as you like".
  if (/(?<!\p{L})(?:as|que|como)(?!\p{L})/u.test(said)) return undefined;
  // "Half that of coconut" behind two oils: of one of them, or of both.
  const isPlain = figures.size === 1 && (times === 1 || told.length === 1);
  return isPlain ? told[0]!.measure : undefined;
}

/**
 * The oil of a part that is told by another's weight, "half as much coconut as lard", "otro tanto de palma"; a text where it is not
 * plain of whose; undefined where the part tells none so. Pure.
 */
export function alike(state: State, part: readonly Item[]): Pair | string | undefined {
  const at = part.findIndex(({ is }) => is === 'alike');
  const word = part[at];
  if (!word) return undefined;
  const after = part.slice(at + 1);
  const name = after.find(isOil);
  const isLoose = state.unpaired.some(isOil);
  // "As much as I can carry": of no oil, unless one waits for its weight.
  if (!name) return part.some(isMeasure) || part.some(isOil) || isLoose ? word.text : undefined;
  const times = timesOf(word.text) ?? 1;
  // "No palm, so the same weight of lard instead": what is swapped has the weight of what it stands for.
  const isSwap = part.some(({ is }) => is === 'instead') || state.removed.length > 0;
  if (isSwap && times === 1 && after.filter(isOil).length === 1 && !TOGETHER.test(textOf(after)))
    return undefined;
  const isTurned = part.some(({ is }) => TURNS.has(is));
  const measure = isTurned || part.some(isMeasure) ? undefined : measureMeant(before(state), after, times);
  if (!measure) return word.text;
  const { from, to } = word;
  return { name, measure: { ...measure, figure: measure.figure * times, from, to } };
}
