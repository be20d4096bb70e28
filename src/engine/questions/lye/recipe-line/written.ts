import { additiveById, knownAdditive } from '../../../batch/additives/additives.ts';
import { alkaliNamed } from './items/alkali-named.ts';
import { besideOils, oilsOf } from './items/amounts.ts';
import type { Name } from './items/item.ts';
import { type Fixed, MOST_SUPERFAT } from './settling/fixed-figures.ts';
import type { IngredientsTold } from './settling/ingredients-told.ts';
import type { Unclear } from './unclear.ts';

const BOTH = 'NaOH, KOH';

/**
 * What a line tells, in the words that the strict reader of lye questions takes: oils, lye and water with their amounts, the superfat,
 * the alkali; unclear where one of them has no amount or two. Pure.
 */
export function written(told: IngredientsTold, fixed: Fixed): string | Unclear {
  const oils = oilsOf(told);
  if ('unclear' in oils) return oils;
  const beside = told.pairs.filter(({ name }) => name.known !== 'oil' && name.known !== 'any-oil');
  const said = beside.map(pair => besideOils({ ...pair, name: renamed(pair.name) }, oils.unit, told));
  if (said.some(one => one === undefined))
    return { why: 'place', unclear: beside.map(({ measure }) => measure.text).join(', ') };
  if (told.times !== undefined && beside.length > 0) return { why: 'place', unclear: told.times };
  const { percent } = told;
  const isAgain = percent !== undefined && percent.figure === Number(fixed.superfat);
  if (percent && !isAgain && (fixed.superfat !== undefined || percent.figure > MOST_SUPERFAT))
    return { why: 'place', unclear: percent.text };
  const superfat = fixed.superfat ?? (percent && String(percent.figure));
  const alkali = alkaliNamed(told.items, told.notMeant);
  if (alkali === 'both') return { why: 'alkalis', unclear: BOTH };
  const counted = new Set(beside.map(({ name }) => renamed(name).text));
  return [
    [...oils.list, ...said.filter(one => one !== '')].join(', '),
    ...new Set(told.liquids.map(name => renamed(name).text).filter(text => !isCounted(text, counted))),
    ...fixed.kept,
    ...(oils.size === undefined ? [] : [oils.size]),
    ...(superfat === undefined ? [] : [`superfat ${superfat}%`]),
    ...(alkali === 'potassium' && !/koh|potas/u.test([...said, ...fixed.kept].join(' ')) ? ['koh'] : []),
  ].join(' ; ');
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
