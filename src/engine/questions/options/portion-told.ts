import { parseSize } from '../../batch/batch-size.ts';
import { unbroken } from '../../over-lines.ts';
import { parsePortionRange } from '../../quantities/told/portion.ts';
import { withHundreds } from '../../text/amounts/told-beside.ts';
import { amountsIn } from '../found/amounts.ts';
import { thingsIn } from '../found/names/entities.ts';
import { wordsOf } from '../found/words-of.ts';
import type { Telling } from '../portion-line/loose.ts';
import { type PortionLine, readPortions } from '../portion-line/portion-line.ts';
import { settled } from '../settled.ts';
import { countedOils, numberWordIn } from './counted-oils.ts';
import { isRead, type OptionTold } from './told.ts';

/** "Half. There's 1.2 kg in the bucket": in an option a part is one of the batter. */
const PART_FIRST =
  /^\s*((?:an? |one |la |una? )?(?:half|third|quarter|mitad|tercio|cuarto|tercera parte|cuarta parte))\s*[.,:;]\s+(?=.*\d)/iu;

/** The portion line of an option alone, with how its words were read. */
function lineOf(text: string): { readonly line: PortionLine; readonly isWhole: boolean } {
  const typed = wordsOf(countedOils(withHundreds(text)).replace(PART_FIRST, '$1 of it gets it, '));
  const things = thingsIn(typed);
  const words = settled(typed, things);
  const amounts = amountsIn(words, things);
  const line = readPortions(words, things, amounts);
  const isTaken = (at: number) => amounts.some(({ from, to }) => at >= from && at < to);
  const left = words.words.filter((_, at) => !isTaken(at));
  return { line, isWhole: line.reckoned?.by === 'share' || numberWordIn(left) === undefined };
}

/** Another figure in the place of an amount's own is at most so many times it. */
const LIKE = 20;

/** The amounts that are meant if a loose figure is. */
function withFigure(part: string, one: Telling): readonly string[] {
  if (one.is === 'amount') return [one.text];
  const [, figure, unit] = /^(\d+(?:[.,]\d+)?)( [^\dx]+)$/u.exec(part) ?? [];
  if (one.is !== 'figure' || figure === undefined) return [];
  const own = Number(figure.replace(',', '.'));
  return Math.max(own / one.value, one.value / own) <= LIKE ? [`${one.value}${unit}`] : [];
}

const OILS = /(?<!\p{L})(?:oils?|fats?|aceites?|grasas?)(?!\p{L})/iu;
const BATTER = /(?<!\p{L})(?:batter|soap|masa|mezcla|jab[oó]n|raw)(?!\p{L})/iu;
/** What a size is told of that is filled, or holds water and lye too. */
const FILLED = new RegExp(
  unbroken`
    (?<!\p{L})(?:mou?lds?|moldes?|loaf|loaves|tins?|pans?|box|tray|dish|caja|bandeja|barra|full|llen[oa]|
    fills?|filled|holds?|takes?|caben?|entran?|altogether|total|everything|all in|todo|tod[oa]|water|agua|
    lye|sosa)(?!\p{L})
  `,
  'iu',
);
const MASS = /^[\d.,/ ]+(?:k?gs?|grs?|gms?|grams?|gramos?|kilos?|oz|ounces?|onzas?|lbs?|pounds?|libras?)$/iu;

/** A weight of which the words around it tell what it is of; both where they tell neither or two things. */
function withKind(weight: string, text: string, isBatter: boolean): readonly string[] {
  if (!MASS.test(weight)) return [weight];
  const isOils = OILS.test(text);
  if (isOils === isBatter) return isOils ? [`${weight} oils`, `${weight} batter`] : [weight];
  return [`${weight} ${isOils ? 'oils' : 'batter'}`];
}

/** What a portion option says where only the grammar of questions reads it; figures that it does not take are asked about. */
export function portionTold(text: string): OptionTold | undefined {
  const { line, isWhole } = lineOf(text);
  const { unclear, loose, amounts } = line;
  const [spoons, ...more] = amounts;
  // A line is drawn with spoons of batter; beside a question's colour they are its powder.
  const part = line.part ?? (spoons?.measure === 'volume' && more.length === 0 ? spoons.text : undefined);
  // Oils are told by weight.
  if (part === undefined || !isWhole || (OILS.test(text) && parsePortionRange(part).low.measure === 'volume'))
    return undefined;
  const meant = [
    ...(unclear.length === 0 ? [part] : unclear),
    ...loose.flatMap(one => withFigure(part, one)),
  ];
  return asked(
    meant.flatMap(one => withKind(one, text, BATTER.test(text))),
    { isWhole: loose.every(one => one.is === 'amount' && one.text === part), read: parsePortionRange },
  );
}

/** The one thing that is meant, or all that may be; undefined where one of them is not read, or a figure has no place. */
function asked(
  meant: readonly string[],
  { isWhole, read }: { readonly isWhole: boolean; readonly read: (text: string) => object },
): OptionTold | undefined {
  const all = [...new Set(meant)];
  if (!all.every(one => isRead(read, one))) return undefined;
  if (all.length > 1) return { unclear: all };
  return isWhole ? { text: all[0]! } : undefined;
}

/** So many pieces of so much weight each, as the grammar of sizes writes them. */
const asSize = (whole: string): string =>
  whole.replace(/^(\d+) x (.+?)(?: batter| oils)?$/u, (all, count: string, each: string) =>
    /(?:ml|l|cc|cups?|tazas?|litros?|lit(?:er|re)s?)$/u.test(each) ? all : `${count} bars of ${each}`,
  );

/** {@link portionTold} of an option for the size of a batch: what is told of its whole, which is oils where nothing tells. */
export function sizeTold(text: string): OptionTold | undefined {
  const { line, isWhole } = lineOf(text);
  const { whole, unclear, loose } = line;
  if (whole === undefined || !isWhole) return undefined;
  const isBatter = BATTER.test(text) || FILLED.test(text);
  const meant = [whole, ...unclear, ...loose.flatMap(one => withFigure(whole, one))];
  return asked(
    meant.flatMap(one => withKind(asSize(one), text, isBatter)),
    { isWhole: loose.length === 0, read: parseSize },
  );
}
