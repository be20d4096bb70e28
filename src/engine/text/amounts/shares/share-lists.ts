import { unbroken } from '../../../over-lines.ts';
import { knowsColour } from '../../colours/known-colours.ts';
import { namesIn } from '../../names/listed-names.ts';
import { bare } from './share-at.ts';

const AND = String.raw`(?:\s*,\s*(?:and |y |n )?|\s+(?:and|y|n|&|to|por|con|with|a)\s+)`;
/** Before a figure the next part needs no word: "2 parts green 1 yellow". */
const NEXT = String.raw`(?:${AND}|\s+(?=\d))`;
const COUNT = String.raw`(?:\d{1,2}|an?|one|una?|uno)`;
/** "Dos partes de azul, una de blanco y una de rojo", "4 de verde por 1 de amarillo". */
const PARTS_LIST = new RegExp(
  String.raw`^${COUNT} (?:parts? |partes? )?(?:of |de )?\p{L}[\p{L} ]*?(?:${NEXT}${COUNT} (?:parts? |partes? )?(?:of |de )?\p{L}[\p{L} ]*?)+$`,
  'iu',
);
const PIECE = new RegExp(String.raw`(?:^|${NEXT})(${COUNT}) (parts? |partes? )?(of |de )?(?=\p{L})`, 'giu');

/** Counts of parts, each with its colour; the word stands at the first at least, or "de" at each. */
function partsList(text: string): string | undefined {
  if (!PARTS_LIST.test(text)) return undefined;
  const heads = [...text.matchAll(PIECE)];
  if (heads[0]?.[2] === undefined && !heads.every(head => head[3] !== undefined)) return undefined;
  const pieces = heads.map((head, at) => ({
    count: /^\d/u.test(head[1]!) ? Number(head[1]) : 1,
    name: bare(text.slice(head.index + head[0].length, heads[at + 1]?.index)),
  }));
  if (pieces.length < 2 || !pieces.every(({ count, name }) => count > 0 && knowsColour(name)))
    return undefined;
  return pieces.map(({ count, name }) => `${count} parts ${name}`).join('; ');
}

/** "60 40 pink to white": two figures that make a hundred, then two colours. */
const HUNDRED =
  /^(\d{1,2})%?[ -](\d{1,2})%? (?:split )?(?:of |de )?(\p{L}[\p{L} ]*?) (?:to|and|y|a|con|n|&) (\p{L}[\p{L} ]*)$/iu;
const WHOLE = 100;

function ofHundred(text: string): string | undefined {
  const [, one, other, first, second] = HUNDRED.exec(text) ?? [];
  if (first === undefined || second === undefined || Number(one) + Number(other) !== WHOLE) return undefined;
  const names = [bare(first), bare(second)];
  return names.every(name => knowsColour(name)) ? `${one}% ${names[0]}; ${other}% ${names[1]}` : undefined;
}

/** "Like a quarter each.. purple teal yellow white": as many colours as such parts make a whole. */
const EACH = new RegExp(
  unbroken`
    ^(?:like |about |maybe |como )?(?:an? |1 |one |una? |un )?(half|third|quarter|fourth|fifth|sixth|mitad|
    tercio|cuarto|quinto|sexto)(?: of it)?(?: for| para| de)? (?:each|cada un[oa]|
    cada color)[\s.,:-]+(\p{L}.*)$
  `,
  'iu',
);
const PARTS: readonly (readonly [RegExp, number])[] = [
  [/half|mitad/iu, 2],
  [/third|tercio/iu, 3],
  [/quarter|fourth|cuarto/iu, 4],
  [/fifth|quinto/iu, 5],
  [/sixth|sexto/iu, 6],
];

function eachAlike(text: string): string | undefined {
  const [, part = '', list] = EACH.exec(text) ?? [];
  const count = PARTS.find(([said]) => said.test(part))?.[1];
  if (list === undefined || count === undefined) return undefined;
  const names = namesIn(list, knowsColour, count);
  return names.length === count && names.every(name => knowsColour(name))
    ? names.map(name => `1 parts ${name}`).join('; ')
    : undefined;
}

const POURED =
  /(?:^|[\s,]+(?:and |y )?)(\d[\d.,]*) ?(ml|g|gr|grams?|gramos?|cups?|tazas?|oz|l|litros?)?(?: (?:of|de))? (?=\p{L})/giu;

/** "400 ml red 400 ml white 200 green": the first one's unit goes for who has none. */
/** "500 g amarillo 300 blanco 200 verde, de un kilo": what they come to is told once more. */
const IN_ALL = new RegExp(
  unbroken`
    [\s,]+(?:de|of|out of|para|for|total(?: de| of)?|en total|in all|makes?|son)(?: (?:an?|un|una|1|el|
    the))? (?:\d[\d.,]* ?)?(?:kilos?|kg|g|gr|grams?|gramos|litros?|lit(?:er|re)s?|l|ml)(?: (?:in all|
    en total|total))?[\s.]*$
  `,
  'iu',
);

function unitOfFirst(typed: string): string | undefined {
  const text = typed.replace(IN_ALL, '');
  const heads = [...text.matchAll(POURED)];
  const unit = heads[0]?.[2]?.toLowerCase();
  if (heads.length < 2 || unit === undefined || heads[0]!.index !== 0) return undefined;
  if (
    heads.every(head => head[2] !== undefined) ||
    heads.some(head => (head[2]?.toLowerCase() ?? unit) !== unit)
  )
    return undefined;
  const names = heads.map((head, at) => bare(text.slice(head.index + head[0].length, heads[at + 1]?.index)));
  if (!names.every(name => knowsColour(name))) return undefined;
  return names.map((name, at) => `${heads[at]![1]} ${unit} ${name}`).join('; ');
}

/** "Green 2 parts, gold 1, black 1": the word stands at the first and goes for all. */
const COUNTS_BEHIND =
  /^\p{L}[\p{L} ]*? \d{1,2} (?:parts?|partes?)(?:(?:\s*,\s*(?:and |y )?|\s+(?:and|y|n|&)\s+)\p{L}[\p{L} ]*? \d{1,2}(?: (?:parts?|partes?))?)+$/iu;
const COUNT_BEHIND =
  /(?:^|\s*,\s*(?:and |y )?|\s+(?:and|y|n|&)\s+)(\p{L}[\p{L} ]*?) (\d{1,2})(?: (?:parts?|partes?))?(?=$|\s*,|\s+(?:and|y|n|&)\s)/giu;

function countsBehind(text: string): string | undefined {
  if (!COUNTS_BEHIND.test(text)) return undefined;
  const pieces = [...text.matchAll(COUNT_BEHIND)].map(([, name = '', count = '']) => ({
    name: bare(name),
    count: Number(count),
  }));
  return pieces.every(({ name, count }) => count > 0 && knowsColour(name))
    ? pieces.map(({ name, count }) => `${count} parts ${name}`).join('; ')
    : undefined;
}

/** "Rosa 40, verde 40 y lo que queda (20) blanco": what the rest comes to is told beside it, and has to be what is left. */
const REST_TOLD = new RegExp(
  unbroken`
    ^(.+?)[\s,]+(?:and |y )?(?:the |el |lo )?(?:rest|remainder|resto|dem[aá]s|(?:whatever|
    what)(?:['’]?s| is) left|que (?:queda|sobra|quede))[\s,]*\(?\s*(?:the |
    el )?(?:other )?(\d{1,2}) ?%?\s*\)?[\s,]*(?:(?:is|goes|in|for|of|de|en|es|para|va) )*(\p{L}[\p{L} ]*)$
  `,
  'iu',
);
const NAME_AND_FIGURE = /^(?:(\p{L}[\p{L} ]*?) (\d{1,2}) ?%?|(\d{1,2}) ?%? (?:of |de )?(\p{L}[\p{L} ]*))$/iu;

function restTold(text: string): string | undefined {
  const [, list, rest, last] = REST_TOLD.exec(text) ?? [];
  if (list === undefined || rest === undefined || last === undefined) return undefined;
  const pieces = list.split(/\s*,\s*(?:and |y )?|\s+(?:and|y|n|&)\s+/iu).map(piece => {
    const [, name, figure, first, behind] = NAME_AND_FIGURE.exec(piece.trim()) ?? [];
    return { name: bare(name ?? behind ?? ''), figure: Number(figure ?? first) };
  });
  const all = [...pieces, { name: bare(last), figure: Number(rest) }];
  const isWhole = all.reduce((sum, { figure }) => sum + figure, 0) === WHOLE;
  return isWhole && all.every(({ name }) => knowsColour(name))
    ? all.map(({ name, figure }) => `${figure}% ${name}`).join('; ')
    : undefined;
}

/**
 * A division that is told as a list of counts with a word that goes for all of them, in the portions' own grammar; undefined where it is
 * none of these.
 * @example listedShares('60 40 pink to white') // '60% pink; 40% white'
 */
export const listedShares = (text: string): string | undefined =>
  ofHundred(text) ??
  partsList(text) ??
  countsBehind(text) ??
  restTold(text) ??
  eachAlike(text) ??
  unitOfFirst(text);
