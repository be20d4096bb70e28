import { parseAmount } from '../../quantities/amount.ts';
import { hasFigure, plainText } from '../../quantities/number.ts';
import { parseStrength, type Strength, splitStrength, type ToldStrength } from '../../quantities/strength.ts';
import type { Measures } from '../../quantities/units.ts';
import { Refusal, refuse } from '../../refusal.ts';
import { leadingAmount, tailNamed } from '../../text/amounts/leading-amount.ts';
import { excerpt } from '../../text/excerpt.ts';

declare module '../../refusal.ts' {
  interface Reasons {
    'mix-empty': Record<never, never>;
    'mix-too-many': { most: number };
    'mix-part-without-name': { text: string };
  }
}

/** One colourant of a mix as it is written: an amount is in the whole portion, a strength is whatever the portion. */
export type WrittenPart = {
  readonly name: string;
  readonly dose: ToldStrength;
};

/** More colourants than this in one portion are mud. */
const MOST_PARTS = 5;
/** A longer text is no mix; cut, so that work stays bounded. */
const LONGEST = 400;
const FULL: Strength = { by: 'name', name: 'full' };

const SPLIT = /\s*(?:[+;\n]|\s&\s|,(?!\d))\s*/u;
/** "and" parts names too, unless the name itself has one. */
const AND = /\s+(?:and|with|y|con)\s+/iu;
/** `1/4 tsp per cup of gold mica`; without "per cup" an amount in the portion. */
const STRENGTH_FIRST =
  /^([\d.,½¼¾⅛⅓⅔][^\p{L}%]*(?:%|\p{L}+\s*(?:\/|per|por)\s*(?:(?:us|each|la|cada)\s+)?\p{L}+))\s+(?:(?:of|de)\s+)?(.+)$/iu;

/**
 * Reads a mix: colourants apart by `+`, `,`, `;`, `&` or "and", each with a strength (`pastel`, `25%`, `1/4 tsp per cup`) or an
 * amount in the portion (`1/4 tsp`, `2 g`) before or after its name; full colour where neither is said.
 * `isName` tells whether a text with an "and" in it is one name. English and Spanish.
 * Throws a Refusal: `mix-empty`, `mix-too-many`, `mix-part-without-name`, or one of the strengths' and amounts' own.
 */
export function parseMix(
  text: string,
  measures: Measures,
  isName: (text: string) => boolean = () => false,
): readonly WrittenPart[] {
  const pieces = text
    .slice(0, LONGEST)
    .split(SPLIT)
    .flatMap(piece => (isName(piece) ? [piece] : piece.split(AND)))
    .map(piece => piece.trim())
    .filter(piece => piece !== '');
  const parts = joined(pieces, measures);
  if (parts.length === 0) refuse('mix-empty', {});
  if (parts.length > MOST_PARTS) refuse('mix-too-many', { most: MOST_PARTS });
  return parts.map(piece => {
    const { name, dose = FULL } = readPart(piece, measures, isName);
    return { name, dose };
  });
}

/** `1 Tbsp + 1/4 tsp gold mica` is one colourant: an amount alone goes with what follows it. */
function joined(pieces: readonly string[], measures: Measures): readonly string[] {
  const parts: string[] = [];
  let before = '';
  for (const piece of pieces) {
    const whole = before === '' ? piece : `${before} ${piece}`;
    const alone = /^[\d½¼¾⅛]/u.test(piece) && leadingAmount(piece, measures)?.rest === '';
    before = alone ? whole : '';
    if (before === '') parts.push(whole);
  }
  return before === '' ? parts : [...parts, before];
}

/** One colourant of a mix, as in {@link parseMix}, without a dose where none is said. Throws its Refusals. */
export function readPart(
  piece: string,
  measures: Measures,
  isName: (text: string) => boolean = () => false,
): Partial<WrittenPart> & Pick<WrittenPart, 'name'> {
  const last = doseLast(piece, measures);
  if (last) return last;
  const first = STRENGTH_FIRST.exec(piece);
  const strength = first && readDose(first[1]!, measures);
  if (first && strength) return { name: named(first[2]!, piece), dose: strength };
  const head = leadingAmount(piece, measures);
  if (head) {
    const name = tailNamed(piece, head.rest, isName) ?? head.rest.replace(/^(?:of|de)\s+/iu, '');
    return { name: named(name, piece), dose: { by: 'amount', amount: head.amount } };
  }
  const split = splitStrength(piece);
  return { name: named(split.rest, piece), ...(split.strength && { dose: split.strength }) };
}

/** `red 40 lake at 1 1/2 tsp`: the longest tail that is a dose; names may hold numbers too. */
function doseLast(piece: string, measures: Measures): WrittenPart | undefined {
  let refused: unknown;
  for (const { index } of piece.matchAll(/(?<=[\s:=])[\d.,½¼¾⅛⅓⅔]/gu)) {
    const name = piece.slice(0, index).replace(/(?:[\s:=,]|\s(?:at|a)(?=\s*$)|@)+$/iu, '');
    // "1/4 tsp in 2 cups": what it is in is no dose.
    if (!/\p{L}/u.test(name) || /\s(?:in|en|per|por)$/iu.test(name)) continue;
    try {
      const dose = readDose(piece.slice(index), measures);
      if (dose) return { name: named(name, piece), dose };
    } catch (refusal) {
      if (!(refusal instanceof Refusal)) throw refusal;
      refused ??= refusal;
    }
  }
  if (refused !== undefined) throw refused;
  return undefined;
}

function named(name: string, piece: string): string {
  if (!/[\p{L}\p{N}]/u.test(name)) refuse('mix-part-without-name', { text: excerpt(piece) });
  return name.trim();
}

/** A spoonful or a weight is that much in the portion; "per cup" and the like are strengths. Undefined when it is no dose. */
export function readDose(text: string, measures: Measures): WrittenPart['dose'] | undefined {
  const plain = plainText(text);
  if (/%|\/\s*\p{L}|\bper\b|\bpor\b|\ba (?:cup|la taza|taza)\b|\b(?:ppo|tpo)\b/iu.test(plain))
    return orNothing(() => parseStrength(text), 'strength-unreadable');
  const amount = orNothing(
    () => parseAmount(text, measures),
    'amount-unit-unknown',
    'amount-unreadable',
    'amount-without-unit',
  );
  return amount && { by: 'amount', amount };
}

function orNothing<Read>(read: () => Read, ...unread: readonly Refusal['id'][]): Read | undefined {
  try {
    return read();
  } catch (refusal) {
    if (refusal instanceof Refusal && unread.includes(refusal.id)) return undefined;
    throw refusal;
  }
}

/** The names of a mix in which no figure stands, as {@link parseMix} takes them, apart by `+` and commas; none where one does. */
export const namesOfMix = (text: string): readonly string[] =>
  hasFigure(text) ? [] : text.split(/[+,]/u).map(part => part.trim());
