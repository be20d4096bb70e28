import { additiveById, knownAdditive } from '../../../batch/additives/additives.ts';
import { besideOils, oilsOf } from './amounts.ts';
import { fixedIn, MOST_SUPERFAT, secondFat } from './fixed.ts';
import { doubtOfOil } from './in-the-pot.ts';
import type { Name } from './item.ts';
import { alkaliNamed } from './items.ts';
import { toldIn, type Unclear } from './told.ts';
import { wordsBeside } from './words.ts';

/** Unclear is only which alkali is meant, or that both are. */
export const BOTH = 'NaOH, KOH';

/** What was typed, and as which name it was read. */
export type Respelt = { readonly typed: string; readonly read: string };
/** A recipe in the words that the strict reader of lye questions takes, and what was passed by. */
export type RecipeLine = {
  readonly line: string;
  readonly left: readonly string[];
  /** Oils whose names are spelt amiss, and as what they were read. */
  readonly respelt: readonly Respelt[];
  /** Whether the recipe was changed as it was told. */
  readonly isTurned: boolean;
};

/**
 * The recipe that a line tells, whatever stands around it: whose each amount is, what was put right or left away on the way, what is
 * the rest, the half, the whole. Every amount has to have its place and every oil its amount, and no word beside them may be a fat or
 * change one; else what is unclear. Takes what `plainWords` gives with its clauses. Pure.
 * @example recipeLine('half tallow half lard, 2 lb altogether') // { line: '50% tallow, 50% lard ; 2 lb oils', … }
 */
export function recipeLine(plain: string): RecipeLine | Unclear {
  const fixed = fixedIn(plain);
  const second = secondFat(fixed.rest, fixed.superfat);
  if (second !== undefined)
    return { unclear: second, fats: { one: `${fixed.superfat}%`, other: second } };
  const told = toldIn(fixed.rest);
  if ('unclear' in told) return told;
  const { isTurned } = told;
  const oils = oilsOf(told);
  if ('unclear' in oils) return { ...oils, isTurned };
  if (told.count !== undefined && told.count.figure !== oils.list.length)
    return { unclear: told.count.text, isTurned };
  const words = wordsBeside(told.items);
  if ('unclear' in words) return { ...words, isTurned };
  const doubt = doubtOfOil(
    told.items.filter(({ from }) => from >= told.begins),
    [...told.pairs.map(({ name }) => name), ...told.even],
  );
  if (doubt) return { unclear: doubt.text, doubt, isTurned };
  const beside = told.pairs.filter(({ name }) => name.known !== 'oil' && name.known !== 'any-oil');
  const said = beside.map(pair => besideOils({ ...pair, name: renamed(pair.name) }, oils.unit, told));
  if (said.some(one => one === undefined))
    return { unclear: beside.map(({ measure }) => measure.text).join(', '), isTurned };
  if (told.times !== undefined && beside.length > 0)
    return { unclear: told.times, isTurned };
  const { percent } = told;
  const isAgain = percent !== undefined && percent.figure === Number(fixed.superfat);
  if (percent && !isAgain && (fixed.superfat !== undefined || percent.figure > MOST_SUPERFAT))
    return { unclear: percent.text, isTurned };
  const superfat = fixed.superfat ?? (percent && String(percent.figure));
  const alkali = alkaliNamed(told.items, told.notMeant);
  if (alkali === 'both') return { unclear: BOTH, isTurned };
  const counted = new Set(beside.map(({ name }) => renamed(name).text));
  const line = [
    [...oils.list, ...said.filter(one => one !== '')].join(', '),
    ...new Set(told.liquids.map(name => renamed(name).text).filter(text => !isCounted(text, counted))),
    ...fixed.kept,
    ...(oils.size === undefined ? [] : [oils.size]),
    ...(superfat === undefined ? [] : [`superfat ${superfat}%`]),
    ...(alkali === 'potassium' && !/koh|potas/u.test([...said, ...fixed.kept].join(' ')) ? ['koh'] : []),
  ].join(' ; ');
  const respelt = told.items.flatMap(item =>
    item.is === 'name' && item.known === 'oil' ? (readAs(item) ?? []) : [],
  );
  return { line, left: words.left, respelt, isTurned };
}

/** What an oil was read as, where that is not what was typed: bare "manteca" is lard, and to others cocoa or shea butter. */
function readAs({ typed, text }: Name): Respelt | undefined {
  if (typed !== undefined) return { typed, read: text };
  return text === 'manteca' ? { typed: text, read: 'manteca de cerdo' } : undefined;
}

/** "400 g almond milk … the milk goes in instead of water": one milk. */
const isCounted = (liquid: string, counted: ReadonlySet<string>): boolean =>
  counted.has(liquid) ||
  (/^(?:milk|leche)$/u.test(liquid) && [...counted].some(name => /milk|leche/u.test(name)));

/** A liquid or an additive by its plainest name: "vino tinto" is wine. */
function renamed(name: Name): Name {
  const id = name.known === 'other' ? knownAdditive(name.text) : undefined;
  return id === undefined ? name : { ...name, text: additiveById(id).synonyms[0]! };
}
