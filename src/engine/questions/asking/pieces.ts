import { unbroken } from '../../over-lines.ts';

/** So much of a text is cut into sentences, in UTF-16 units; what stands behind it is one piece with the last. */
const LONGEST = 2000;

/** A point behind one of these ends no sentence: "1 lb. of lard", "aprox. 3 tazas", "Dr. Ruiz". */
const SHORT_FORM = new RegExp(
  unbroken`
    (?<!\p{L})(?:oz|lbs?|grs?|gms?|kgs?|mls?|tsps?|tbsps?|cdt?as?|approx|aprox|vs|etc|eg|e\.g|i\.e|p\. ?ej|
    ej|no|num|temp|st|mr|mrs|ms|dr|dra|sra?|srta|d[aã])\.$
  `,
  'iu',
);

/** Marks that end a sentence, where white space, a bracket or the end of the text follows, and the end of a line. */
const ENDS = /[.!?…]+["'”’»)]*(?=\s|$)|[;\n]+/gu;

/**
 * Words with which a sentence that has run on turns to its matter or away from it: "…, so", "anyway", "…, bueno", "total". A bare "so" or
 * "pues" joins words too: it begins a clause only behind a comma.
 */
const TURNS = new RegExp(
  unbroken`
    (?:,|\s[-–—])\s*(?=(?:(?:and |but |y |pero )?(?:so|any ?ways?|any ?how|bueno|pues|total|en fin|
    as[ií] que|el caso es|la cosa es|lo que|al grano|long story short|right)(?!\p{L})))|
    \s(?=(?:but )?(?:any ?ways?|any ?how) (?:i|how|what|can|do|my|the|is|will)(?!\p{L}))
  `,
  'giu',
);

/** Where the pieces of a text end, ascending; the last is its length. */
function endsOf(text: string): readonly number[] {
  const head = text.slice(0, LONGEST);
  const ends = [...head.matchAll(ENDS)]
    .filter(({ 0: mark, index }) => mark !== '.' || !SHORT_FORM.test(head.slice(0, index + 1)))
    .map(({ 0: mark, index }) => index + mark.length);
  const turns = [...head.matchAll(TURNS)].map(({ 0: mark, index }) => index + mark.length);
  return [...new Set([...ends, ...turns, text.length])].toSorted((a, b) => a - b);
}

/**
 * A text's sentences, and its clauses where a word turns to another matter, with the marks and the white space around them: joined they are
 * the text again. Pure.
 * @example piecesOf('Rained all day. How much mica?') // ['Rained all day.', ' How much mica?']
 */
export function piecesOf(text: string): readonly string[] {
  const pieces: string[] = [];
  let from = 0;
  for (const to of endsOf(text)) {
    const piece = text.slice(from, to);
    // Marks alone go with what they stand behind.
    if (pieces.length > 0 && !/[\p{L}\p{N}]/u.test(piece)) pieces[pieces.length - 1] += piece;
    else if (piece !== '') pieces.push(piece);
    from = to;
  }
  return pieces;
}
