import { parseSize } from '../../batch/batch-size.ts';
import { parsePortionRange } from '../../quantities/portion.ts';
import { withHundreds } from '../../text/amounts/told-beside.ts';
import { amountsIn } from '../amounts.ts';
import { thingsIn } from '../entities.ts';
import type { Telling } from '../portion-line/loose.ts';
import { type PortionLine, readPortions } from '../portion-line/portion-line.ts';
import { settled } from '../settled.ts';
import { wordsOf } from '../words-of.ts';
import { countedOils, numberWordIn } from './counted-oils.ts';
import { isRead, type Told } from './told.ts';

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

/** What a portion option says where only the grammar of questions reads it; figures that it does not take are asked about. */
export function portionTold(text: string): Told | undefined {
  const { line, isWhole } = lineOf(text);
  const { unclear, loose, amounts } = line;
  const [spoons, ...more] = amounts;
  // A line is drawn with spoons of batter; beside a question's colour they are its powder.
  const part = line.part ?? (spoons?.measure === 'volume' && more.length === 0 ? spoons.text : undefined);
  if (part === undefined || !isWhole) return undefined;
  const meant = [...unclear, ...(unclear.length === 0 ? [part] : [])];
  const all = [...new Set([...meant, ...loose.flatMap(one => withFigure(part, one))])];
  if (!all.every(one => isRead(parsePortionRange, one))) return undefined;
  if (all.length > 1) return { unclear: all };
  const isAlone = loose.every(one => one.is === 'amount' && one.text === part);
  return isAlone ? { text: part } : undefined;
}

/** So many pieces of so much weight each, as the grammar of sizes writes them. */
const asSize = (whole: string): string =>
  whole.replace(/^(\d+) x (.+?)(?: batter| oils)?$/u, (all, count: string, each: string) =>
    /(?:ml|l|cc|cups?|tazas?|litros?|lit(?:er|re)s?)$/u.test(each) ? all : `${count} bars of ${each}`,
  );

/** {@link portionTold} of an option for the size of a batch: what is told of its whole. */
export function sizeTold(text: string): Told | undefined {
  const { line, isWhole } = lineOf(text);
  const { whole, unclear, loose } = line;
  if (whole === undefined || !isWhole) return undefined;
  const all = [...new Set([whole, ...unclear, ...loose.flatMap(one => withFigure(whole, one))])].map(asSize);
  if (!all.every(one => isRead(parseSize, one))) return undefined;
  if (all.length > 1) return { unclear: all };
  return loose.length === 0 ? { text: all[0]! } : undefined;
}
