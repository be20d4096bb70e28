import { knownOil } from '../../batch/oils/find-oil.ts';
import { strengthOfHue } from '../../colourants/holding-hues.ts';
import { isPoison } from '../../hazards/index.ts';
import { unbroken } from '../../over-lines.ts';
import { apart } from '../../text/colours/colour-name.ts';
import { amountsIn, type ToldAmount } from '../found/amounts.ts';
import { thingsIn } from '../found/names/entities.ts';
import type { NamedThing } from '../found/names/named-thing.ts';
import { type Words, wordsOf } from '../found/words-of.ts';
import { holderNamed } from '../leaning/subject/subject.ts';
import { amountOf } from '../portion-line/amount-at.ts';
import { readPortions } from '../portion-line/portion-line.ts';
import { isTheme, type PlanColour, planColours, SAME_HUE } from './plan-colours.ts';
import { planParts } from './plan-parts.ts';

/** What gives a hue at full colour: navy is mixed, and sage is a pale green. */
const holderAtFull = (hue: string): string | undefined =>
  strengthOfHue(hue) === undefined ? holderNamed(hue) : undefined;

/** So many equal parts of a portion, each with a colour where it is named. */
export type SharesAsked = {
  /** Grams of the whole, and of what. */
  readonly grams: number;
  readonly of: 'oils' | 'batter';
  readonly parts: number;
  /** By name, one a part; empty where none is named. */
  readonly colours: readonly string[];
  /** What of the whole each colour takes, 0 to 1, in the order of the colours, where that is told and they are not alike. */
  readonly shares?: readonly number[];
  /** How many bars the whole was taken for, where only they are told. */
  readonly bars?: number;
};

const EACH = new RegExp(
  unbroken`
    (?<!\p{L})(?:each|per colou?r|cada|(?:cuant[oa]|how much) (?:de|of) cada|apiece|equal(?:ly)? (?:parts?|
    shared?|split|divided)|(?:split|shared?|divided) (?:even|equal)ly|in equal parts|colou?rs? even(?:ly)?|
    (?:a|en) partes iguales|(?:tres|dos|cuatro) colores iguales)(?!\p{L})
  `,
  'u',
);
const PARTS = new RegExp(
  unbroken`
    (?<!\p{L})(\d|two|three|four|five|dos|tres|cuatro|cinco) (?:(?:\p{L}+ )?colou?rs?|colores|layers?|capas|
    parts?|partes|jugs?|jarras|pots?|cups of colou?r|ways)(?!\p{L})
  `,
  'u',
);
const NUMBERS: Readonly<Record<string, number>> = {
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  dos: 2,
  tres: 3,
  cuatro: 4,
  cinco: 5,
};
export const OIL = /(?<!\p{L})(?:oils?|aceites?)(?!\p{L})/u;
const MOST_PARTS = 6;
/** A share that is told is no equal one. */
const UNEQUAL = new RegExp(
  unbroken`
    (?<!\p{L})(?:half|halves|rest|thin|lines?|stripe|hint|touch|splash|bit of|un poco|fin[oa]|linea|raya|
    mostly|mainly|third|quarter|mitad|resto|tercio|cuarto|\d+ ?%|lye|naoh|sosa|superfat)(?!\p{L})
  `,
  'u',
);

/** Both in the whole of it, or so much for each: "same pot", "300 g batter each". */
const UNDIVIDED = new RegExp(
  unbroken`
    (?<!\p{L})(?:same (?:pot|batter|batch|jug)|together|mixed|mism[oa] (?:olla|masa|jarra|lote)|junt[oa]s|
    mezclad[oa]s)(?!\p{L})|\d ?(?:g|kg|grams?|gramos|kilos?|oz|lbs?)(?: (?:of |de )?(?:oils?|batter|
    aceites?|masa))? (?:each|apiece|cada un[oa]|cada(?= ?[,.?!]|$))
  `,
  'u',
);

/** What each of several equal parts takes: "650 g oils 3 colours how much each", "3 kg de aceite, blanco con azul, cuánto de cada". Pure. */
export function sharesAsked(read: Words): SharesAsked | undefined {
  const text = read.text.toLowerCase();
  if (!EACH.test(text) || UNDIVIDED.test(text)) return undefined;
  if (UNEQUAL.test(text)) return toldShares(read);
  const things = thingsIn(read);
  const all = amountsIn(read, things);
  const [amount, ...others] = all.filter(({ measure }) => measure === 'mass');
  const bars = all.length === 0 ? Number(BARS.exec(text)?.[1] ?? 0) : 0;
  const ofBars = bars > 0 ? bars * BAR_G : undefined;
  const grams = amount && others.length === 0 ? gramsOf(amount) : ofBars;
  // So much of one oil is a recipe.
  if (grams === undefined || amount?.of === 'oil') return undefined;
  const colours = coloursNamed(read, things);
  // A hue that nothing alone holds is mixed, and is a part as well.
  if (
    colours.length > 0 &&
    planColours(read).some(one => !isTheme(one, read.words) && isHeldByNone(one, things))
  )
    return undefined;
  const told = PARTS.exec(text)?.[1];
  const count = told === undefined ? colours.length : (NUMBERS[told] ?? Number(told));
  const parts = told === undefined && colours.length === 1 ? 0 : count;
  if (parts < 2 || parts > MOST_PARTS || (colours.length > 1 && colours.length !== parts)) return undefined;
  const shared = { grams, parts, colours };
  return bars > 0 ? { ...shared, of: 'batter', bars } : { ...shared, of: OIL.test(text) ? 'oils' : 'batter' };
}

/** Lye is reckoned for a recipe, whatever its colours are. */
const OF_LYE =
  /(?<!\p{L})(?:lye|naoh|koh|sosa|soda|caustic\p{L}?|lejia|superfat|sobreengrasad\p{L})(?!\p{L})/u;

/** "70% blanco y 30% azul, 600 de aceites, cuánto de cada uno": parts whose shares are all told, each of a colour that something holds. */
function toldShares(read: Words): SharesAsked | undefined {
  if (OF_LYE.test(read.text)) return undefined;
  const things = thingsIn(read);
  const told = amountsIn(read, things);
  const [amount, ...others] = told.filter(({ measure }) => measure === 'mass');
  // "600 de aceites": grams go without saying.
  const bare = amount ? undefined : readPortions(read, things, told).whole;
  const text = amount?.text ?? bare;
  const grams = text !== undefined && others.length === 0 ? gramsOf({ text }) : undefined;
  const { colours, shares, oils, touches } = planParts(read);
  if (grams === undefined || amount?.of === 'oil' || !shares || touches || oils.length > 0) return undefined;
  if (shares.length > MOST_PARTS) return undefined;
  const owned = things.filter(
    one => one.colourants.length > 0 && !colours.some(({ text }) => text === one.text),
  );
  const held = colours.map(colour =>
    colour.isThing ? colour.text : (ownedFor(colour, owned) ?? holderAtFull(colour.text)),
  );
  const named = held.filter(one => one !== undefined);
  if (named.length < held.length || new Set(named).size < named.length) return undefined;
  // What is owned and gives none of the colours is for something that is not told.
  if (owned.some(({ text }) => !named.includes(text))) return undefined;
  return { grams, of: OIL.test(read.text) ? 'oils' : 'batter', parts: shares.length, colours: named, shares };
}

const PARTS_OF =
  /(?<!\p{L})(?:equal (?:parts?|shares?|amounts?)|partes iguales|a partes iguales)(?: (?:of|de))? ?:? ?(.+?)(?= (?:for|in|into|to|para|en|por|con) |[.;?!]|$)/u;

/** A scent or a fat may bear the name of a hue: "lavender oil". */
const OF_SCENT =
  /(?<!\p{L})(?:oils?|fragrances?|essential|eo|fo|butter|aceites?|fragancias?|esencias?|esencial|manteca)(?!\p{L})/u;

/**
 * Things that equal parts are asked of and that are no colour: "equal parts: peppermint oil, cinnamon and charcoal". Only beside a colourant;
 * none where all are colours. `whole`: what the colour is for, as told. Pure.
 */
export function amongNoColours(
  read: Words,
):
  | { readonly colourants: readonly string[]; readonly others: readonly string[]; readonly whole?: string }
  | undefined {
  const text = read.text.toLowerCase();
  const list = PARTS_OF.exec(text)?.[1];
  if (list === undefined || OF_LYE.test(text)) return undefined;
  const names = list
    .split(/ ?, ?| (?:and|y|e|&|n) /u)
    .map(name => name.trim())
    .filter(name => /^\p{L}[\p{L} ]*$/u.test(name));
  const isColour = (name: string) =>
    !OF_SCENT.test(name) && coloursNamed(wordsOf(name), thingsIn(wordsOf(name))).length > 0;
  const [colourants, others] = [names.filter(isColour), names.filter(name => !isColour(name))];
  if (colourants.length === 0 || others.length === 0) return undefined;
  // Beside plain hues a word that is not known may be a hue as well: "blanco, verde y albero".
  if (colourants.some(name => thingsIn(wordsOf(name)).every(one => one.colourants.length === 0)))
    return undefined;
  // Fats in equal parts are a recipe, and what stays out of soap is told as that.
  if (others.some(name => knownOil(name) !== undefined || isPoison(name))) return undefined;
  const things = thingsIn(read);
  const { whole } = readPortions(read, things, amountsIn(read, things));
  return { colourants, others, ...(whole !== undefined && { whole }) };
}

/** A hue that no colourant holds and none that is named gives. */
const isHeldByNone = ({ text, hex, isThing }: PlanColour, things: readonly NamedThing[]): boolean =>
  !isThing &&
  hex !== undefined &&
  holderAtFull(text) === undefined &&
  ownedFor({ hex }, things) === undefined;

/** What of the powders that are told gives a hue: "70% blanco y 30% azul, uso titanio y ultramar". Pure. */
export const ownedFor = (
  { hex }: Pick<PlanColour, 'hex'>,
  owned: readonly NamedThing[],
): string | undefined =>
  hex === undefined
    ? undefined
    : owned.find(({ colourants: [one] }) => one && apart(hex, one.hex) <= SAME_HUE)?.text;

/** The colourants and the plain hues of a question, in its order; a hue is given by what holds it. */
function coloursNamed({ words }: Words, things: readonly NamedThing[]): readonly string[] {
  const named = things.filter(one => one.colourants.length > 0);
  const ids = new Set(named.flatMap(one => one.colourants.map(({ id }) => id)));
  const hues = words.flatMap((word, at) => {
    const holder = named.some(({ from, to }) => at >= from && at < to) ? undefined : holderAtFull(word);
    // "White and red. Got titanium dioxide and red oxide in": two colours.
    const isNamed =
      named.some(({ text }) => text.includes(word)) ||
      (holder !== undefined && idsOf(holder).some(id => ids.has(id)));
    return holder === undefined || isNamed ? [] : [{ at, colour: holder }];
  });
  const all = [...named.map(({ from, text }) => ({ at: from, colour: text })), ...hues];
  return [...new Set(all.toSorted((a, b) => a.at - b.at).map(({ colour }) => colour))];
}

const idsOf = (name: string): readonly string[] =>
  thingsIn(wordsOf(name)).flatMap(one => one.colourants.map(({ id }) => id));

/** Lighter than a pot of soap is powder, grams. */
export const LEAST_G = 100;
const gramsOf = ({ text }: Pick<ToldAmount, 'text'>): number | undefined => {
  const amount = amountOf(text.replace(/ ?(?:of |de )?(?:oils?|aceites?|batter|masa)$/u, ''));
  return amount?.measure === 'mass' && amount.grams >= LEAST_G ? amount.grams : undefined;
};

/** A usual bar is taken for so many grams of batter; common practice is 100 to 120 g (no source). */
export const BAR_G = 110;
/** So many bars. */
export const BARS =
  /(?<!\p{L})(\d{1,3}) (?:(?:normal|usual|small|regular|hand) )?(?:bars?|pastillas?|jabones|soaps)(?!\p{L})/u;
