import { knownOil } from '../../../batch/oils/find-oil.ts';
import { readOils } from '../../../batch/oils/lists/oil-list.ts';
import { unbroken } from '../../../over-lines.ts';
import { figureText } from '../../../quantities/for-readers.ts';
import { unlessRefused } from '../../../refusal.ts';
import { unaccented } from '../../../text/unaccented.ts';
import { amountOf } from '../../portion-line/amount-at.ts';
import { type Before, isOfLye, type Laid } from '../before.ts';

/* What is changed in a recipe before its lye is reckoned anew: the whole of it, an oil for another, the superfat. */

const WEIGHED = /^(\d+(?:[.,]\d+)?) ?(g|kg|oz|lbs?|grams?|gramos?|kilos?|onzas?|libras?) (?:of |de )?(.+)$/iu;

type Piece = { readonly figure: number; readonly unit: string; readonly name: string };

/** The oils of a recipe that tells each by weight, in its own words; undefined where it is told in another way. */
function piecesOf(oils: string): readonly Piece[] | undefined {
  const pieces = oils.split(/,(?!\d)|;/u).map(one => WEIGHED.exec(one.trim()));
  return pieces.every(one => one !== null)
    ? pieces.map(([, figure = '', unit = '', name = '']) => ({
        figure: Number(figure.replace(',', '.')),
        unit,
        name,
      }))
    : undefined;
}

const listed = (pieces: readonly Piece[]): string =>
  pieces
    .map(({ figure, unit, name }) => `${figureText(figure, unit === 'g' ? 1 : 4)} ${unit} ${name}`)
    .join(', ');

/** Grams of all oils of a list; undefined where it is read in another way than by weights. */
export const gramsOf = (oils: string): number | undefined =>
  unlessRefused(() => readOils(oils).blend.totalGrams);

/** Nothing is said of a recipe that does not come out as what was asked, grams. */
const NEAR_G = 1;

/** Options that stay right whatever the size: any other may be an amount that would have to be scaled too. */
export const OF_ANY_SIZE: ReadonlySet<string> = new Set(['oils', 'superfat', 'lye', 'purity', 'water']);
const isOfAnySize = ({ given }: Laid): boolean =>
  Object.keys(given).every(name => OF_ANY_SIZE.has(name)) &&
  (given.water === undefined || given.water.includes('%'));

/** The same recipe with every oil so many times: undefined where its weights are not all told, or more than them would change. */
export function timesRecipe(laid: Laid, times: number): Laid | undefined {
  const { oils = '' } = laid.given;
  if (!isOfAnySize(laid)) return undefined;
  const [pieces, whole] = [piecesOf(oils), gramsOf(oils)];
  if (!pieces || whole === undefined) return undefined;
  const scaled = listed(pieces.map(piece => ({ ...piece, figure: piece.figure * times })));
  const comes = gramsOf(scaled);
  return comes !== undefined && Math.abs(comes - whole * times) <= NEAR_G
    ? { ...laid, given: { ...laid.given, oils: scaled } }
    : undefined;
}

/** The same recipe for so much oil altogether, such as “800 g”; undefined for volumes and what is no weight. */
export function recipeFor(laid: Laid, amount: string): Laid | undefined {
  const wanted = amountOf(amount);
  const whole = gramsOf(laid.given.oils ?? '');
  return wanted?.measure === 'mass' && whole !== undefined
    ? timesRecipe(laid, wanted.grams / whole)
    : undefined;
}

/** The same recipe with one oil in another's place, weight for weight; undefined unless both are known and the first is in it once. */
export function swappedOil(laid: Laid, out: string, into: string): Laid | undefined {
  const pieces = piecesOf(laid.given.oils ?? '');
  const [gone, comes] = [knownOil(out), knownOil(into)];
  if (!pieces || !gone || !comes) return undefined;
  const [at, ...others] = pieces.flatMap(({ name }, place) =>
    knownOil(name)?.id === gone.id ? [place] : [],
  );
  const isIn = pieces.some(({ name }) => knownOil(name)?.id === comes.id);
  if (at === undefined || others.length > 0 || isIn) return undefined;
  const oils = listed(pieces.map((piece, place) => (place === at ? { ...piece, name: into } : piece)));
  return gramsOf(oils) === undefined ? undefined : { ...laid, given: { ...laid.given, oils } };
}

/**
 * The same recipe with so much of one oil as another: of the oil that is named, or of the only one. Undefined unless both are known, the
 * other is not in it, the amount is in the unit of the recipe and something of the first is left.
 */
export function partSwapped(
  laid: Laid,
  { amount, out, into }: { readonly amount: string; readonly out: string | undefined; readonly into: string },
): Laid | undefined {
  const pieces = piecesOf(laid.given.oils ?? '');
  const moved = WEIGHED.exec(`${amount} ${into}`);
  const comes = knownOil(into);
  if (!pieces || !moved || !comes || !isOfAnySize(laid)) return undefined;
  const [at, ...others] = pieces.flatMap(({ name }, place) =>
    out === undefined || knownOil(name)?.id === knownOil(out)?.id ? [place] : [],
  );
  if (at === undefined || others.length > 0 || pieces.some(({ name }) => knownOil(name)?.id === comes.id))
    return undefined;
  const figure = pieces[at]!.figure - Number(moved[1]!.replace(',', '.'));
  if (pieces[at]!.unit.toLowerCase() !== moved[2]!.toLowerCase() || figure <= 0) return undefined;
  const left = pieces.map((piece, place) => (place === at ? { ...piece, figure } : piece));
  const oils = `${listed(left)}, ${amount} ${into}`;
  return gramsOf(oils) === undefined ? undefined : { ...laid, given: { ...laid.given, oils } };
}

/** The same recipe with one oil more; undefined unless it is known and not in it. */
export function addedOil(laid: Laid, amount: string, name: string): Laid | undefined {
  const { oils = '' } = laid.given;
  if (!piecesOf(oils) || knownOil(name) === undefined || namesOilOf(laid, name) || !isOfAnySize(laid))
    return undefined;
  const all = `${oils}, ${amount} ${name}`;
  return gramsOf(all) === undefined ? undefined : { ...laid, given: { ...laid.given, oils: all } };
}

/**
 * The same recipe with other weights of some of its oils, by their names; undefined unless each is in it once, in the one unit that it tells,
 * and some of it stays as it was.
 */
export function reweighed(laid: Laid, weights: ReadonlyMap<string, number>): Laid | undefined {
  const pieces = piecesOf(laid.given.oils ?? '');
  if (!pieces || unitOf(laid) === undefined || !isOfAnySize(laid)) return undefined;
  const changed = new Map<number, number>();
  for (const [name, figure] of weights) {
    const oil = knownOil(name)?.id;
    const places = pieces.flatMap((piece, at) =>
      oil !== undefined && knownOil(piece.name)?.id === oil ? [at] : [],
    );
    if (places.length !== 1 || changed.has(places[0]!)) return undefined;
    changed.set(places[0]!, figure);
  }
  const oils = listed(pieces.map((piece, at) => ({ ...piece, figure: changed.get(at) ?? piece.figure })));
  return gramsOf(oils) === undefined ? undefined : { ...laid, given: { ...laid.given, oils } };
}

/** The unit that a recipe tells every oil in; undefined where it has several. */
export function unitOf({ given }: Laid): string | undefined {
  const [first, ...others] = piecesOf(given.oils ?? '') ?? [];
  return first && others.every(({ unit }) => unit === first.unit) ? first.unit : undefined;
}

/** An amount of an oil in the unit of the recipe where it tells none itself; undefined where the recipe has several. */
export function inUnitOf(laid: Laid, amount: string): string | undefined {
  if (/\p{L}/u.test(amount)) return amount;
  const unit = unitOf(laid);
  return unit === undefined ? undefined : `${amount} ${unit}`;
}

/** A recipe of one oil with another weight of it, in its own unit: "no, 600"; undefined where several may be meant. */
export function onlyOilAt(laid: Laid, figure: number): Laid | undefined {
  const [only, ...others] = piecesOf(laid.given.oils ?? '') ?? [];
  if (!only || others.length > 0 || !isOfAnySize(laid) || figure <= MOST_SUPERFAT) return undefined;
  return { ...laid, given: { ...laid.given, oils: listed([{ ...only, figure }]) } };
}

/** Says in so many words that it is the only oil. */
const ALONE =
  /(?:^| )(?:only|just|thats all|nothing else|that is all|solo|solamente|nada mas|y ya|y nada mas)(?: (?:that|it|eso|esa?))?(?= |$)/u;
const ALONE_ANYWHERE = new RegExp(ALONE, 'gu');
const PIECE =
  /^(\d+(?:[.,]\d+)?) ?(g|kg|oz|lbs?|grams?|gramos?|kilos?|onzas?|libras?)? ?(?:of |de )?(?:aceite de )?(.+)$/u;

/**
 * The oils of a turn that holds nothing but weights and oils that are known, as the options read them; undefined for anything else, and for
 * one oil that is not said to be the only one unless it `mayBeOne`. Bare figures are grams. Pure.
 * @example oilsAlone('500 de oliva solo eso') // '500 g oliva'
 */
export function oilsAlone(typed: string, mayBeOne = false): string | undefined {
  const plain = unaccented(typed)
    .replace(/['’]/gu, '')
    .replace(/[.!?]+\s*$/u, '');
  const text = plain.replace(/[,;] *(?=solo|just|only|thats|nothing|nada|y ya)/gu, ' ').trim();
  const isAlone = ALONE.test(text);
  const parts = text
    .replace(ALONE_ANYWHERE, ' ')
    .split(/,(?!\d)|;| and | y |\+/u)
    .map(one => PIECE.exec(one.trim()));
  const pieces = parts.map(found => found && `${found[1]} ${found[2] ?? 'g'} ${found[3]!.trim()}`);
  const isKnown = parts.every(found => found && knownOil(found[3]!.trim()) !== undefined);
  if (!isKnown || (parts.length === 1 && !isAlone && !mayBeOne)) return undefined;
  const oils = pieces.join(', ');
  return gramsOf(oils) === undefined ? undefined : oils;
}

/** Puts something right, or tells an amount. */
const CHANGES = new RegExp(
  unbroken`
    \d|(?<!\p{L})(?:no|not|nope|wrong|sorry|instead|swap\p{L}*|less|more|half|halve|double|without|rest|
    en vez|sin|menos|mas|mitad|doble|resto|cambi\p{L}*|perdon|equivo\p{L}*)(?!\p{L})
  `,
  'u',
);
/** Whether a turn after a recipe may have changed it, though nobody understood how: it is not told again then. Pure. */
export const mayChangeRecipe = (before: Before, typed: string): boolean =>
  before.kind === 'command' &&
  isOfLye(before) &&
  (CHANGES.test(unaccented(typed)) || namesOilOf(before, typed));

/** More is hardly a superfat, percent. */
const MOST_SUPERFAT = 30;

/** The same recipe at another superfat. */
export const atSuperfat = (laid: Laid, percent: number): Laid | undefined =>
  Number.isInteger(percent) && percent >= 0 && percent <= MOST_SUPERFAT
    ? { ...laid, given: { ...laid.given, superfat: String(percent) } }
    : undefined;

/** Whether a text names an oil that is in the recipe: what it says of it may change the lye. */
export function namesOilOf({ given }: Laid, text: string): boolean {
  const pieces = piecesOf(given.oils ?? '') ?? [];
  const words = unaccented(text).match(/\p{L}+/gu) ?? [];
  const isIn = (name: string) => pieces.some(piece => knownOil(piece.name)?.id === knownOil(name)?.id);
  return words.some((word, at) =>
    [word, `${word} ${words[at + 1] ?? ''}`].some(name => knownOil(name) !== undefined && isIn(name)),
  );
}
