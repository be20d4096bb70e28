import { unbroken } from '../../over-lines.ts';
import { plainText } from '../number.ts';
import { tidied } from './tidied.ts';

/** So many bars or cavities of so much each. */
const PIECES = unbroken`
  bars?|barras?|pucks?|patties|pots?|mugs?|glasses|beakers?|ollas?|barritas?|pastillas?|jabones|jaboncitos|
  soaps?|jugs?|jarras?|vas(?:o|ito)s?|pot(?:e|ecito)s?|containers?|recipientes?|tazones|bowls?|slots?|
  squares?|cavit\w*|cavidad\w*|huecos?|holes?|moulds?|molds?|moldes?|pieces?|piezas?|cubes?|rounds?|hearts?|
  unidades|cupcakes?|loaf|loaves|logs?|panes?|hogazas?|slabs?|blocks?|bloques?|tandas?|batches|lotes?
`;
const COUNT_OF_EACH = new RegExp(
  unbroken`
    ^(?:(?:enough |oil |batter )?(?:for|para|makes?|salen|fills?|llena) |(?:an? |un |my |mi |the |
    el )?(?:\p{L}+ ){0,2}(?:moulds?|molds?|moldes?|trays?|bandeja)[,:]? (?:(?:de|of) \p{L}+ )?(?:de |of |
    with |con )?)?(\d{1,3}|an?|one|una?)[ -]*(?:(?:silicone|silicona|wee|small|little|tiny|mini|guest|hand|
    travel|round|square) ){0,2}(?:${PIECES})\b[^\d]*?(?:(?:x|at|of|de|,|:)\s*)*(\d.*)$
  `,
  'iu',
);
/** "12 100 g bars", "2x 500 g loaves": figures that a space or a times sign parts, so that "125 ml" stays one. */
const COUNT_EACH_OF = new RegExp(
  String.raw`^(?:(?:enough )?(?:for|para) )?(\d{1,3})(?:\s*[x×*]\s*|\s+)(\d[\d.,/ ]*[\s-]*\p{L}+)\.?[\s-]*(?:each\s*)?(?:de\s+)?(?:${PIECES})\b[^\d]*$`,
  'iu',
);
/** "2 tazas (de las de 250 ml)": cups of a stated size. */
const CUPS_OF =
  /^(\d{1,2}) (?:cups?|tazas?) \(?(?:of |at |de )+(?:las de |each )?(\d[\d.,]* ?(?:ml|cc))\b[^\d]*$/iu;
/** "2 cups (250 ml each)"; "2 cups (480 ml)" is what both come to. */
const CUPS_EACH =
  /^(\d{1,2}) (?:cups?|tazas?) \((\d[\d.,]* ?(?:ml|cc)),? (?:each|ea|apiece|cada una|c\/u)(?!\p{L})[^\d]*$/iu;
/** "6x110g": the pieces go without saying. */
const COUNT_TIMES = new RegExp(
  unbroken`
    ^(\d{1,3})\s*[x×*]\s*(\d[\d.,/ ]*\s*(?:g|gr|grs|grams?|gramos?|kg|kilos?|oz|ounces?|onzas?|lbs?|pounds?|
    libras?|ml|cc|cl|dl|l|mililitros?|millilit(?:er|re)s?|litros?|lit(?:er|re)s?|fl ?oz|quarts?|
    gallons?)\b.*)$
  `,
  'iu',
);
/** "1 200 g loaf" may be 1,200 g: one piece is no count of pieces. */
const ONE_GROUPED = /^1 \d{3}(?!\d)/u;
/** "2 1/2 litre mould" is one of two and a half; "2 1/2 litre moulds" are two. */
const ONE_AND_PART =
  /^\d{1,3} \d\/\d [\p{L}-]+ (?:\p{L}+ ){0,2}?(?:mou?ld|loaf|slab|log|block|tray|box|pan|molde|barra|bloque|caja|bandeja)(?!\p{L})/iu;
const EACH = /[\s,]*\b(?:each|ea|apiece|per \w+|cada (?:una|uno|hueco|molde|barra|pastilla)|c\/u)\b.*$/iu;

/** Pieces of so much each; `named` where the text says what they are ("bars"), so that a mould's own ounces stay apart. */
export type Pieces = { readonly count: number; readonly each: string; readonly named: boolean };

/** "10 bars of 4 oz" as how many and how much each; undefined where the text counts no pieces. */
export const piecesOf = (text: string): Pieces | undefined => piecesIn(tidied(text).text, text);

/** {@link piecesOf} a text that is tidied already. */
export function piecesIn(plain: string, text: string): Pieces | undefined {
  const named =
    COUNT_OF_EACH.exec(plain) ??
    COUNT_EACH_OF.exec(plain) ??
    CUPS_OF.exec(plain) ??
    CUPS_EACH.exec(plainText(text));
  const match = named ?? COUNT_TIMES.exec(plain);
  if (!match || ONE_GROUPED.test(plain) || ONE_AND_PART.test(plain)) return undefined;
  const count = /^\p{L}/u.test(match[1]!) ? 1 : Number(match[1]);
  const each = match[2]!
    .replace(EACH, '')
    .replace(/(?<=\d)-(?=\p{L})/u, ' ')
    .trim();
  return Number.isInteger(count) && count > 0 && /\p{L}/u.test(each)
    ? { count, each, named: named !== null }
    : undefined;
}
