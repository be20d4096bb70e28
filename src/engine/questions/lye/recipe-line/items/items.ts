import { knownOil, namesOf } from '../../../../batch/oils/find-oil.ts';
import { unbroken } from '../../../../over-lines.ts';
import { readOnce } from '../../../../remembered.ts';
import { unaccented } from '../../../../text/unaccented.ts';
import { oilWordsMeant } from '../../amounts/chat-words.ts';
import { knownAs } from '../../amounts/recipe-tokens.ts';
import { COUNT, LYE, UNIT } from '../../amounts/words.ts';
import { GRAMMAR } from './grammar-words.ts';
import type { Item, Name, Unit } from './item.ts';
import { nutOil } from './nut-oil.ts';

const UNITS: readonly (readonly [RegExp, Unit])[] = [
  [/^(?:kgs?|kilos?|kilograms?|kilogramos?)$/u, 'kg'],
  [/^(?:g|gr|grs|gms?|grams?|gramos?)$/u, 'g'],
  [/^(?:oz|ozs|ounces?|onzas?)$/u, 'oz'],
  [/^(?:lbs?|pounds?|libras?)$/u, 'lb'],
  [/^(?:%|percents?|per cents?|por ?cientos?|pct)$/u, '%'],
  [/^(?:parts?|partes?)$/u, 'part'],
  [/^(?:ml|cc|cl|l|lit(?:er|re)s?|litros?)$/u, 'ml'],
];
const unitOf = (word: string): Unit => UNITS.find(([pattern]) => pattern.test(word))?.[1] ?? 'other';

const MASSES = UNIT.replace(String.raw`\b`, '');
const SHARE_UNITS = '%|percents?|per cents?|por ?cientos?|pct|parts?|partes?';
const VOLUMES = 'ml|cc|cl|l|lit(?:er|re)s?|litros?';
/** Units of what is no weight of anything in the recipe. */
const OTHERS = unbroken`
  cups?|tazas?|spoons?|spoonfuls?|drops?|gotas?|pinch(?:es)?|pizcas?|handfuls?|punados?|tbsps?|tsps?|
  tablespoons?|teaspoons?|cdt?as?|cucharad(?:it)?as?|fl oz|pints?|quarts?|gallons?|in(?= ?(?:x|by|mou?ld|
  wide|long|deep|high|loaf|[;,]|$))|inch(?:es)?|cm|mm|centimetros?|pulgadas?|bars?|pastillas?|barras?|
  jabones|moldes?|people|personas|years?|anos|days?|dias|weeks?|semanas|months?|meses|minutes?|mins?|
  minutos|hours?|hrs?|horas|degrees?|grados|celsius|fahrenheit|am|pm|o ?clock|euros?|pesos|dollars?|quid
`;
const ASKS = [
  unbroken`
    (?:how (?:much|many)|what|cuant[oa]s?|calcul\w*|que cantidad(?: de)?|amount of|need(?: the)?|
    necesito(?: la)?)(?: (?:ounces|oz|grams?|gramos|is|es|the|la|el|of|de|debe ser)){0,3} ${LYE}(?: (?:and|
    n|y|e|or|&) (?:how much |what |cuanta )?(?:the |el |su )?(?:water|agua))?
  `,
  String.raw`(?:the |la )?${LYE}(?: (?:and|y|&) (?:water|agua))? ?(?:for|para|pa|needed for)(?= ?:|\b)`,
];
const TOKENS = new RegExp(
  unbroken`
    (?<asks>(?<![\p{L}\d])(?:${ASKS.join('|')})(?![\p{L}\d]))|
    (?<![\p{L}\d.,])(?<figure>${COUNT}) ?(?<unit>(?:${MASSES}|${SHARE_UNITS}|${VOLUMES}|
    ${OTHERS})(?![\p{L}\d]))?(?![\p{L}\d/]|[.,]\d)|(?<word>[\p{L}\d][\p{L}\p{M}\d'’-]*)|(?<mark>[^\s])
  `,
  'gu',
);
const JOINT = /^(?:and|y|e|n|an|plus|mas|con|with|wid|wi|w|[+&])$/u;
const LINK = new RegExp(
  unbroken`
    ^(?:of|de|del|d|a|the|el|la|los|las|my|mi|mis|our|own|is|are|was|were|es|son|era|eran|at|about|like|
    some|roughly|exactly|just|only|puro|pura|puros|puras|pure|solid|good|worth|lahat|ng|po|to|it|as|in|con|
    [:=~>→-])$
  `,
  'u',
);
const OF = /^(?:of|de|del|d|a|al|the|el|la|los|las|to|in|for|at|is|as)$/u;
const LONGEST_NAME = 5;

/** `1/2`, `1 1/2`, `2.5`, `0,5`. */
function figureOf(text: string): number {
  const [whole = '', part] = /^\d+\//u.test(text) ? ['0', text] : text.split(' ');
  const [over = 0, under = 1] = (part ?? '0/1').split('/').map(Number);
  return Number(whole.replace(',', '.')) + over / under;
}

/** The pieces of a line in their order. Takes what `plainWords` gives with its clauses. */
export const itemsOf = readOnce((plain): readonly Item[] => {
  const tokens: Item[] = [];
  let at = 0;
  while (at < plain.length) {
    const turn = turnAt(plain, at);
    if (turn) {
      tokens.push(turn);
      at = turn.to;
      continue;
    }
    TOKENS.lastIndex = at;
    const match = TOKENS.exec(plain);
    if (!match) break;
    const token = tokenOf(match);
    tokens.push(isWeighed(token, tokens) ? lyeOf(token) : token);
    at = match.index + match[0].length;
  }
  return withNames(tokens, plain);
});

const LYE_FIRST = new RegExp(`^(?:the |la )?(${LYE})`, 'u');
/** "128 lye for 800 tallow": lye that has an amount is not asked for. */
const isWeighed = (token: Item, before: readonly Item[]): boolean =>
  token.is === 'asks' &&
  LYE_FIRST.test(token.text) &&
  before.findLast(({ is }) => is !== 'link')?.is === 'amount';
const lyeOf = ({ from, to, text }: Item): Name => ({
  is: 'name',
  known: 'lye',
  from,
  to,
  text: LYE_FIRST.exec(text)![1]!,
});

/** What of the grammar stands next. */
function turnAt(plain: string, at: number): Item | undefined {
  for (const { pattern, of } of GRAMMAR) {
    pattern.lastIndex = at;
    const match = pattern.exec(plain);
    if (match) return of({ from: at, to: at + match[0].length, text: match[0].trim() });
  }
  return undefined;
}

function tokenOf(match: RegExpExecArray): Item {
  const { asks, figure, unit, word, mark } = match.groups!;
  const span = { from: match.index, to: match.index + match[0].length, text: match[0].trim() };
  if (asks !== undefined) return { ...span, is: 'asks' };
  if (figure !== undefined)
    return {
      ...span,
      is: 'amount',
      figure: figureOf(figure),
      unit: unit === undefined ? undefined : unitOf(unit),
      ...(unit === undefined && /^ (?:of|de) /u.test(match.input.slice(span.to)) && { isOf: true }),
    };
  const text = word ?? mark!;
  if (JOINT.test(text)) return { ...span, is: 'joint' };
  if (LINK.test(text)) return { ...span, is: 'link' };
  if (mark !== undefined) return { ...span, is: 'mark' };
  const units = unitOf(text);
  return units === 'other' || units === 'ml'
    ? { ...span, is: 'word' }
    : { ...span, is: 'units', unit: units };
}

/** Words that make up the name of an ingredient as one piece. */
function withNames(tokens: readonly Item[], plain: string): readonly Item[] {
  const named: Item[] = [];
  for (let at = 0; at < tokens.length; ) {
    const found = nameAt(tokens, at, plain);
    named.push(found?.name ?? tokens[at]!);
    at += found?.length ?? 1;
  }
  return named;
}

/** Bare milk is the drink; a courtesy is also how some write an oil. */
const OTHER = /^(?:milk|leche)$/u;
const I_AM = new RegExp(
  unbroken`
    ^(?:nuev[oa]s?|profes?|profesora?|maestr[oa]|quimic[oa]|estudiante|mama|mexican[oa]|colombian[oa]|de|
    una?|el|la|muy|yo|principiantes?|novat[oa]s?|primeriz[oa]s?|alergic[oa]|mal[oa]|[^\p{L}]*|)$
  `,
  'u',
);
const COURTESY = /^(?:po|co|oo|sb|cb)$/u;
const OF_FRUIT = /(?:^| )(?:pure|pulpa|jugo|zumo|polvo|harina|semillas?|trozos?|rodajas?|cascara) del?$/u;
/** "Aceite de oliva 500, de almendras 100". */
const FOOD = /^(?:almendras|nueces|avellanas|aguacates?|cacahuetes?|cacahuates?|mani)$/u;
const PIG = /^(?:cerdo|puerco|chancho)$/u;
const FAT_WORD = /^(?:aceite|manteca|mantequilla|grasa|cera)$/u;
const LYE_ALONE = new RegExp(`^${LYE}$`, 'u');

const KIND = /^(?:butters?|fat|wax|manteca|mantequilla|grasa|cera|sebo)$/u;
/** "Manteca coco": a word for a fat that none of the oil's own names has is a fat of its own. */
function isTwoFats(text: string): boolean {
  const words = text.split(' ');
  const kind = words.find(word => KIND.test(word));
  const oil = knownOil(text);
  if (words.length < 2 || kind === undefined || !oil) return false;
  return !namesOf(oil).some(name =>
    unaccented(name)
      .split(/[^\p{L}]+/u)
      .includes(kind),
  );
}

/** "Hola, soy Lupita": at the head of a clause, before a name that is no oil's. */
const isWhoIAm = (tokens: readonly Item[], at: number): boolean =>
  (at === 0 || tokens[at - 1]!.is === 'mark') &&
  tokens[at + 1]?.is === 'word' &&
  !/^(?:oil|wax|beans?|butter)$/u.test(tokens[at + 1]!.text);

function nameAt(
  tokens: readonly Item[],
  at: number,
  plain: string,
): { readonly name: Name; readonly length: number } | undefined {
  const isPart = (token: Item | undefined) =>
    token?.is === 'word' || (token?.is === 'link' && /^\p{L}/u.test(token.text));
  let most = 0;
  while (most < LONGEST_NAME && isPart(tokens[at + most])) most += 1;
  for (let length = most; length > 0; length -= 1) {
    const [first, last] = [tokens[at]!, tokens[at + length - 1]!];
    if (OF.test(first.text) || OF.test(last.text)) continue;
    // "Other oils coconut 250 g": the first word is of all.
    if (length > 1 && /^(?:oils|fats|aceites|grasas)$/u.test(first.text)) continue;
    // "Coco manteca de cerdo" is two fats.
    if (length > 1 && FAT_WORD.test(last.text) && /^del?$/u.test(tokens[at + length]?.text ?? '')) continue;
    const text = plain.slice(first.from, last.to);
    // "Puré de calabaza", "pulpa de palta": of a fruit, and no oil.
    if (
      OF_FRUIT.test(
        tokens
          .slice(Math.max(0, at - 2), at)
          .map(one => one.text)
          .join(' '),
      )
    )
      continue;
    const isCounted = tokens[at - 1]?.is === 'amount' || tokens[at + length]?.is === 'amount';
    // "Soy nueva": in Spanish nobody weighs it so.
    if (text === 'soy' && !isCounted && I_AM.test(tokens[at + 1]?.text ?? '')) continue;
    if (text === 'soy' && !isCounted && isWhoIAm(tokens, at)) continue;
    const known =
      COURTESY.test(text) && !isCounted
        ? undefined
        : OTHER.test(text)
          ? 'other'
          : LYE_ALONE.test(text)
            ? 'lye'
            : knownAs(text);
    if (known === 'oil' && isTwoFats(text)) continue;
    // Among weighed oils nobody means the meat.
    if (known === 'oil' && PIG.test(text))
      return {
        name: {
          is: 'name',
          known: 'oil',
          from: first.from,
          to: last.to,
          text: `manteca de ${text}`,
          typed: text,
        },
        length,
      };
    const isEllipsis = FOOD.test(text) && tokens[at - 1]?.text === 'de' && /aceite de /u.test(plain);
    const nut = nutOil(text, plain, first);
    if (nut !== undefined)
      return {
        name: { is: 'name', known: 'oil', from: first.from, to: last.to, text: nut, typed: text },
        length,
      };
    if (known === 'oil' || isEllipsis) {
      const said = isEllipsis ? `aceite de ${text}` : text;
      return { name: { is: 'name', known: 'oil', from: first.from, to: last.to, text: said }, length };
    }
    if (known) return { name: { is: 'name', known, from: first.from, to: last.to, text }, length };
    const respelt = respeltOil(text);
    if (respelt !== undefined)
      return {
        name: { is: 'name', known: 'oil', from: first.from, to: last.to, text: respelt, typed: text },
        length,
      };
  }
  return undefined;
}

/** An oil with one word of its name spelt amiss, where all that the word may have been meant for give the same oil. */
function respeltOil(text: string): string | undefined {
  const words = text.split(' ');
  const meant = words.map(word => (word.length < 4 || /\d/u.test(word) ? [] : oilWordsMeant(word)));
  const at = meant.findIndex(some => some.length > 0);
  if (at === -1 || meant.some((some, other) => other !== at && some.length > 0)) return undefined;
  const read = meant[at]!.map(word => words.with(at, word).join(' '));
  const oils = new Set(read.map(name => knownOil(name)).filter(oil => oil !== undefined));
  return oils.size === 1 && knownOil(read[0]!) !== undefined ? read[0] : undefined;
}
