import { unbroken } from '../../../over-lines.ts';
import { plainText } from '../../../quantities/number.ts';
import { knowsColour } from '../../colours/known-colours.ts';
import { bare } from '../shares/share-at.ts';

const LONGEST = 200;
/** Where the first of several layers lies. */
const FIRST = new RegExp(
  unbroken`
    ^(?:(?:en el|al) fondo|abajo(?: del todo)?|primero|de base|(?:at )?the (?:very )?bottom|first|
    to start(?: with)?)(?:,|:)?\s+|,?\s+(?:de base|abajo|primero|at the (?:very )?bottom|for (?:the|a) base|
    first)$
  `,
  'iu',
);
/** On what the next one lies, or behind what it comes. */
const NEXT = new RegExp(
  unbroken`
    ^(?:sobre (?:[eé]st[ea]|es[ea]|eso|[eé]l|ella)|encima(?: de (?:eso|[eé]l|ella|[eé]st[ea]))?|luego|
    despu[eé]s|then|next|on top(?: of (?:that|it))?|(?:over|above) (?:that|it))(?:,|:)?\s+
  `,
  'iu',
);
/** What closes the pour. */
const LAST = new RegExp(
  unbroken`
    ^(?:por [uú]ltimo|finalmente|al final|(?:cierro|termino|remato|acabo) con|finally|last(?:ly)?|
    (?:i )?(?:finish|end|close|top)(?:ing)? (?:it )?(?:off )?with)(?:,|:)?\s+
  `,
  'iu',
);
/** What one of them is to look like: "a modo de espuma". */
const LIKE = /,?\s+(?:a modo de|a manera de|como|like|as)\s+(?:an? |una? |the |el |la )?[\p{L} ]+$/iu;
const JOINTS = new RegExp(
  unbroken`
    \s*[;.]\s*|\s*,\s*(?=(?:sobre|encima|luego|despu|then|next|on top|over|above|por [uú]lt|final|al final|
    last)(?:\p{L}*)(?!\p{L}))|,?\s+(?:y|and)\s+(?=(?:cierro|termino|remato|acabo|por [uú]lt|final|last|
    (?:i )?(?:finish|end|close|top)))
  `,
  'iu',
);

/**
 * Layers that are told in the order in which they are poured, each by a word for its place: "en el fondo, azul; sobre éste, turquesa; por
 * último, blanco". In the portions' own grammar; undefined where a clause has no such word, or is no colour. Pure.
 */
export function layersInOrder(typed: string): string | undefined {
  if (typed.length > LONGEST) return undefined;
  const clauses = plainText(typed)
    .replace(/[.!\s]+$/u, '')
    .split(JOINTS)
    .filter(clause => clause !== '');
  const places = clauses.map((_, at) => (at === 0 ? FIRST : at === clauses.length - 1 ? LAST : NEXT));
  if (
    clauses.length < 2 ||
    !clauses.every((clause, at) => places[at]!.test(clause) || (at > 0 && NEXT.test(clause)))
  )
    return undefined;
  const names = clauses.map((clause, at) =>
    bare(clause.replace(places[at]!, '').replace(NEXT, '').replace(LIKE, '')),
  );
  return names.every(knowsColour) ? names.map(name => `1 parts ${name}`).join('; ') : undefined;
}

const PARALLEL =
  /^([\p{L} ]+(?:[:,/] ?[\p{L} ]+)+?)\s*(?:=|are|is|son|a raz[oó]n de|en proporci[oó]n)\s*(\d[\d.,]*(?:\s*[:/]\s*\d[\d.,]*)+)[\s.]*$/iu;

/** "Amarillo : naranja : marrón = 1 : 1 : 2": names and as many figures, each for its own; undefined for every other text. Pure. */
export function ratioOfNames(typed: string): string | undefined {
  const [, left, right] = PARALLEL.exec(plainText(typed)) ?? [];
  const names = left?.split(/[:,/]/u).map(bare) ?? [];
  const parts = right?.split(/[:/]/u).map(part => part.trim()) ?? [];
  if (names.length < 2 || names.length !== parts.length || !names.every(knowsColour)) return undefined;
  return names.map((name, at) => `${parts[at]} parts ${name}`).join('; ');
}
