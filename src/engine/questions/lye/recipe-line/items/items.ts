import { unbroken } from '../../../../over-lines.ts';
import { readOnce } from '../../../../remembered.ts';
import { TextToFit } from '../../../../text/patterns/fitting.ts';
import { COUNT, LYE, UNIT } from '../../amounts/words.ts';
import type { Word } from './grammar-word.ts';
import { GRAMMAR } from './grammar-words.ts';
import type { Item, Name, Unit } from './item.ts';
import { withNames } from './names-in-line.ts';

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

/** `1/2`, `1 1/2`, `2.5`, `0,5`. */
function figureOf(text: string): number {
  const [whole = '', part] = /^\d+\//u.test(text) ? ['0', text] : text.split(' ');
  const [over = 0, under = 1] = (part ?? '0/1').split('/').map(Number);
  return Number(whole.replace(',', '.')) + over / under;
}

/** The pieces of a line in their order. Takes what `plainWords` gives with its clauses. */
export const itemsOf = readOnce((plain): readonly Item[] => {
  const tokens: Item[] = [];
  const asked = new TextToFit(plain);
  const grammar = GRAMMAR.filter(({ pattern }) => asked.mayFit(pattern));
  let at = 0;
  while (at < plain.length) {
    const turn = turnAt(grammar, plain, at);
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
function turnAt(grammar: readonly Word[], plain: string, at: number): Item | undefined {
  for (const { pattern, of } of grammar) {
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
