import { readDecimal } from '../../../quantities/number.ts';

const REST =
  /^(?:(?:the |el |la )?(?:rest|remainder|balance|resto|demas|demás))(?:\s+(?:is|of|de|es|in|en|con))?\s+(.+)$/iu;
/** A figure and a name, and no unit between them. */
const BARE =
  /^\d[\d.,]*\s+(?!(?:kgs?|kilos?|oz|ounces?|onzas?|lbs?|pounds?|libras?)\b)(?:de |of )?\p{L}[\p{L} ]*$|^\p{L}[\p{L} ]*\s\d[\d.,]*$/iu;
const PERCENT = /([\d.,]+)\s*(?:%|percent|por ciento)/iu;

/** Entries of a list of oils; "rest olive" is what the other percents leave of a hundred. */
export function withRest(pieces: readonly string[]): readonly string[] {
  const [first = '', ...more] = pieces;
  const grams = /\d\s*(?:g|gr|grams?|gramos?)\b/iu;
  // "300 g coconut and 700 olive": what was said once goes for the bare figures after it.
  if (grams.test(first) && more.length > 0 && more.every(piece => grams.test(piece) || BARE.test(piece)))
    return [first, ...more.map(piece => (grams.test(piece) ? piece : piece.replace(/(\d[\d.,]*)/u, '$1 g')))];
  const rest = pieces.map(piece => REST.exec(piece)?.[1]);
  if (rest.filter(name => name !== undefined).length !== 1) return pieces;
  const others = pieces.filter((_, at) => rest[at] === undefined);
  const percents = others.map(
    piece =>
      readDecimal(
        (PERCENT.exec(piece) ?? /([\d.,]+)$|^([\d.,]+)/u.exec(piece))?.find(
          (part, at) => at > 0 && part !== undefined,
        ) ?? '',
      )[0],
  );
  const left = percents.reduce<number>((sum, percent) => sum - (percent ?? Number.NaN), 100);
  return left > 0
    ? pieces.map((piece, at) => (rest[at] === undefined ? piece : `${left}% ${rest[at]}`))
    : pieces;
}
