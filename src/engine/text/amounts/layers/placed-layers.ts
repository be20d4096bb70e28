import { unbroken } from '../../../over-lines.ts';
import { knowsColour } from '../../colours/known-colours.ts';
import { bare } from '../shares/share-at.ts';

const ARTICLE = "(?:the |t['’] ?|la |el |lo (?:de )?|de )*";
const BOTTOM = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:at|on|in|for|en|al|a) )?${ARTICLE}(?:very )?(?:bott?[oau]m(?:most)?|botton|base|foot|
    pie(?=[\s,;.]|$)|abajo(?: del todo)?|fondo|primero|
    first(?: in(?:to)?(?: the mou?ld)?)?)(?: layer| capa)?(?: (?:is|es|de|goes|va))*(?!\p{L})
  `,
  'iu',
);
const MIDDLE = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:at|on|in|for|en|al|a) )?${ARTICLE}(?:middle|cent(?:er|re)|(?:in )?between|
    entre medi[oa]s?|medio|centro)(?: layer| capa)?(?: (?:is|es|de|goes|va))*(?!\p{L})
  `,
  'iu',
);
const TOP = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:goes|go|va|van) (?:on )?)?(?:(?:at|on|in|for|en|al|
    a) )?${ARTICLE}(?:very )?(?:top(?:most)?|head(?: on it)?|crown|(?:lo )?alto(?: del todo)?|last|arriba|
    encima(?! de)|[uú]ltimo)(?: layer| capa)?(?: (?:is|es|de|goes|va))*(?!\p{L})
  `,
  'iu',
);
const UNDER =
  /(?<!\p{L})(?:and )?(?:under(?:neath)?|below|beneath|debajo(?: de)?|abajo de)(?: (?:it|that|this|eso|ese|esa))?(?!\p{L})/iu;
const THEN =
  /(?<!\p{L})(?:and )?(?:then|luego|despu[eé]s|y luego|sobre eso|on (?:that|it)|over (?:that|it))(?!\p{L})/iu;
const LIKENESS =
  /(?:^(?:like|como) (?:an? |una? )?\p{L}+:|\s(?:like|como) (?:an? |the |una? |la |el )?\p{L}+$)/giu;
/** What ends a clause and names no colour: "cream again", "y ya", "blue for sky". */
const SAID_BEHIND = /[\s,]+(?:again|otra vez|de nuevo|y ya|and (?:that['’]?s|thats) it)[\s.!]*$/iu;
const STANDS_FOR = /[\s,]+(?:for|para) (?:the |el |la |los |las )?\p{L}+$/iu;
const STEP = 0.01;

type Placed = { readonly name: string; readonly height: number };

/** "White at the bottom and top": one colour in two places. */
const TWICE = new RegExp(
  String.raw`^(.*?)(?:${BOTTOM.source}|${TOP.source})\s*(?:and|y|&|n|as well as)\s*(?:${BOTTOM.source}|${TOP.source})(.*?)$`,
  'iu',
);

/** The colour that a clause puts at the bottom and on top. */
function twiceIn(clause: string): readonly Placed[] {
  const [, before = '', behind = ''] = TWICE.exec(clause) ?? [];
  if (!TOP.test(clause) || !BOTTOM.test(clause)) return [];
  const name = bare(`${before} ${behind}`.replace(/\s+/gu, ' ').trim());
  return knowsColour(name)
    ? [
        { name, height: 0 },
        { name, height: 1 },
      ]
    : [];
}

/** One colour with its height: 0 at the bottom, 1 on top, or a step from the one told before. */
function placedIn(clause: string, before: Placed | undefined, isDown: boolean): Placed | undefined {
  const [of, height] = UNDER.test(clause)
    ? [UNDER, before && before.height - STEP]
    : TOP.test(clause)
      ? [TOP, 1]
      : MIDDLE.test(clause)
        ? [MIDDLE, 1 / 2]
        : BOTTOM.test(clause)
          ? [BOTTOM, 0]
          : [THEN, before && before.height + (isDown ? -STEP : STEP)];
  const said = bare(clause.replace(of, ' ').replace(THEN, ' ').replace(/\s+/gu, ' ').trim()).replace(
    /^(?:(?:and|y|an?|una?|the|el|la) )+/iu,
    '',
  );
  const name = knowsColour(said) ? said : bare(said.replace(STANDS_FOR, ''));
  return height === undefined || !knowsColour(name) ? undefined : { name, height };
}

/**
 * Layers that are told each with its place, in whatever order, from the bottom up: "yellow in the middle, grey at the bottom, white goes
 * on last", "topmost lilac, under it white". Undefined where any clause names no colour that is known, or no place is told. Pure.
 */
export function placedLayers(text: string): readonly string[] | undefined {
  if (/\d/u.test(text) || ![TOP, MIDDLE, BOTTOM].some(place => place.test(text))) return undefined;
  const said = text.replace(SAID_BEHIND, '').replace(LIKENESS, ' ');
  return inClauses(said, /[,;.]+/u) ?? inClauses(said, /[,;.]+|\s+(?:and|y)\s+/iu);
}

/** The layers of a text whose clauses are parted so. */
function inClauses(text: string, stop: RegExp): readonly string[] | undefined {
  const clauses = text
    .split(stop)
    .map(clause => clause.replace(LIKENESS, ' ').trim())
    .filter(clause => clause !== '');
  if (clauses.length < 2) return undefined;
  const isDown = TOP.test(clauses[0]!);
  const placed: Placed[] = [];
  for (const clause of clauses) {
    const twice = twiceIn(clause);
    const one = twice.length > 0 ? undefined : placedIn(clause, placed.at(-1), isDown);
    if (!one && twice.length === 0) return undefined;
    placed.push(...(one ? [one] : twice));
  }
  const heights = new Set(placed.map(({ height }) => height));
  if (heights.size < placed.length) return undefined;
  return placed.toSorted((a, b) => a.height - b.height).map(({ name }) => name);
}
