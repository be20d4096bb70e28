import { knownOil } from '../../../../../batch/oils/find-oil.ts';
import { unbroken } from '../../../../../over-lines.ts';
import { MASS } from '../../../amounts/words.ts';

const PIECE = unbroken`
  (?:bars?|soaps?|cakes?|pieces?|loaf|loaves|mou?lds?|cavity|cavities|jabon(?:es)?|jaboncitos?|pastillas?|pastillitas?|barras?|piezas?|moldes?|
  moldecitos?|unidad(?:es)?)
`;
const EACH = `(?:(?:in |for |per |en |por |para )?(?:each|every|per|cada|por)(?: (?:single|of (?:the|them)|un[oa]|one))*(?: ${PIECE})?|a ${PIECE})`;
/** What stands between: "each bar is", "por barra van". */
const TAKES = unbroken`
    (?:(?:'s|there's|there|it's|it|is|are|has|have|takes?|gets?|holds?|contains?|needs?|i|we|use|put|lleva|llevan|van?|
    tiene|es|son|pongo|hay|entra|entran|:|,) ?)*
  `;
const BEHIND = new RegExp(
  `(?<!\\p{L})(${EACH}) ?${TAKES} ?${MASS}(?: (?:of|de|del))?(?: (?:the|el|la))? (\\p{L}+(?: \\p{L}+)?)`,
  'gu',
);
const BEFORE = new RegExp(
  unbroken`
    ${MASS}(?: (?:of|de))? (\p{L}+)[^;]*? ((?:per|each|every|por|cada|in each|en cada|for each|para cada|(?<!(?:for|as|of|
    make|making|making of|like) )a) ${PIECE})(?= ?(?:[,;.:]|$))
  `,
  'gu',
);
const isOil = (words: string): boolean =>
  knownOil(words) !== undefined || knownOil(words.split(' ')[0]!) !== undefined;
/** A count of pieces: with none, or one, what is told of each is told of all. */
const PIECES = new RegExp(
  unbroken`
    (?<![\d.,])(?:[2-9]|[1-9]\d{1,2}|a dozen|(?:a|the) (?:couple|few|batch|lot)|many|several|media docena|una docena|varios|
    varias)(?: (?:of|de))?(?: \p{L}+)? ${PIECE}(?!\p{L})
  `,
  'u',
);

/**
 * The words by which oils are told for one bar or mould of several; undefined where they are not. Takes what `plainWords` gives with its
 * clauses. Pure.
 * @example eachPieceIn('12 bars ; each bar is 70 g olive, 25 g coconut') // 'each bar'
 */
export function eachPieceIn(plain: string): string | undefined {
  if (!PIECES.test(plain)) return undefined;
  for (const [, each = '', oil = ''] of plain.matchAll(BEHIND)) if (isOil(oil)) return each;
  for (const [, oil = '', each = ''] of plain.matchAll(BEFORE)) if (isOil(oil)) return each;
  return undefined;
}
