/** Grams between two ends, with the language's word between them: `2.8 to 5.2`. */
export type GramsBetween = { readonly low: number; readonly joint: string; readonly high: number };

/** A mass in grams as a sentence has it; `written` is it to the letter. Ends and figures in grams. */
export type MassSaid =
  | { readonly is: 'mass'; readonly grams: number; readonly written: string }
  | ({ readonly is: 'range'; readonly written: string } & GramsBetween)
  /** `figure` is its figure to the letter, `lead` what opens its range (`de `). */
  | {
      readonly is: 'estimate';
      readonly grams: number;
      readonly figure: string;
      readonly lead: string;
      readonly range: GramsBetween;
      readonly written: string;
    };

/** What somebody wrote themselves is no mass of ours. */
const QUOTED = /(“[^”]*”|«[^»]*»|"[^"]*")/u;
const FIGURE = String.raw`(?<![\d.,(/])(\d+(?:[.,]\d+)?)`;
const G = String.raw`[ \u00a0]g(?![\p{L}/])`;
/** `2.8 to 5.2 g`, `de 2,8 a 5,2 g`. */
const RANGE = String.raw`(\d+(?:[.,]\d+)?) (to|a) (\d+(?:[.,]\d+)?)${G}`;
/**
 * An estimate with its range (`4 g (2.8 to 5.2 g)`), a range, and a mass in grams alone: not in brackets behind its ounces, not
 * before a range or ounces of its own, no density.
 */
const GRAMS = new RegExp(
  String.raw`${FIGURE}${G} \((de )?${RANGE}\)|(?<![\d.,(/])${RANGE}|${FIGURE}${G}(?! \()`,
  'gu',
);

const gramsIn = (figure: string): number => Number(figure.replace(',', '.'));
const between = (low: string, joint: string, high: string): GramsBetween => ({
  low: gramsIn(low),
  joint,
  high: gramsIn(high),
});

/**
 * A sentence in pieces: text that stays, and each mass that stands in grams alone. Pure.
 * @example massesIn('left: 37,5 g') // ['left: ', { is: 'mass', grams: 37.5, written: '37,5 g' }]
 */
export const massesIn = (sentence: string): readonly (string | MassSaid)[] =>
  sentence.split(QUOTED).flatMap((piece, at) => (at % 2 === 1 ? [piece] : massesOf(piece)));

function massesOf(piece: string): readonly (string | MassSaid)[] {
  const pieces: (string | MassSaid)[] = [];
  let end = 0;
  for (const match of piece.matchAll(GRAMS)) {
    if (match.index > end) pieces.push(piece.slice(end, match.index));
    pieces.push(massOf(match));
    end = match.index + match[0].length;
  }
  if (end < piece.length) pieces.push(piece.slice(end));
  return pieces;
}

function massOf([written, ...found]: RegExpExecArray): MassSaid {
  const [about, lead = '', low, to, high, least, joint, most, alone] = found as readonly (
    | string
    | undefined
  )[];
  if (about !== undefined)
    return {
      is: 'estimate',
      grams: gramsIn(about),
      figure: about,
      lead,
      range: between(low!, to!, high!),
      written,
    };
  if (most !== undefined) return { is: 'range', ...between(least!, joint!, most), written };
  return { is: 'mass', grams: gramsIn(alone!), written };
}
