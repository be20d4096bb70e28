import { unbroken } from '../../../over-lines.ts';
import type { NamedThing } from '../names/named-thing.ts';
import type { Words } from '../words-of.ts';
import { CLIPPED, DEEP, PARTS, PERCENT, STRENGTHS } from './strength-words.ts';

/** What was not wished: "too strong", "demasiado oscuro", "it came out dark". */
const UNWISHED = new RegExp(
  unbroken`
    \b(?:(?<!not )too|demasiado|tan|nada|none of (?:that|this|the|your)|nada de(?: es[oa]s?)?|(?:no|not)(?: (?:a|an|un|una|muy|very|so|all that|quede|
    sea|salga|
    quiero))?|less|menos|wasn'?t|isn'?t|(?:was|were|came out|turned out|salio|quedo|me quedo) (?:too |so |
    very |muy |tan |bien )?)\s*(?:${DEEP}|pale|light|faint|clarit[oa]|clar[oa]|palid[oa]|palidit[oa]|
    bajit[oa]|pastel|suave|suavecit[oa]|soft|baby|powder|minty|milky|washed out|deslavad[oa])(?: (?:blue|
    pink|green|yellow|azul|rosa|verde))?\b
  `,
  'gu',
);

function percentIn(text: string): string | undefined {
  const percent = PERCENT.exec(text)?.[1];
  return percent === '50' ? 'half' : percent && `${percent}%`;
}

/** The colourant stands as `;` here. */
const GREY_WISHED = new RegExp(
  unbroken`
    \b(?:gr[ea]ys?|gris(?:es)?),? (?:how (?:much|many)|cuant[oa])(?: of| de)? ;|(?:how much|
    cuant[oa])(?: of| de)? ; (?:(?:do i (?:need|use) |hace falta |pongo )?(?:for|to get|to make|para|
    pa)(?: sacar| hacer| un[oa]?| an?| nice| soft| light| pale| bonito)* )(?:gr[ea]y|gris)\b
  `,
  'u',
);
/** Grey is what a little black makes: "and the gray, how much charcoal", "cuánto carbón para un gris". */
const isGreyOfBlack = (said: string, things: readonly NamedThing[]): boolean =>
  GREY_WISHED.test(said) && things.some(({ text }) => /charcoal|black|carbon|negr/u.test(text));

const BLACK = /charcoal|black|carbon|negr/u;
const WHITE = /titan|zinc|white|blanc/u;
/** "Light grey", "gris oscuro": the degree of a grey, before or behind it. */
const GREY = new RegExp(
  unbroken`
    (?<degree>(?:(?:really|very|nice|soft|muy|bien|dove|pearl|silver|mid|medium|middle|light|pale|dark|deep|slate|steel|charcoal|
    storm\p{L}*) ){0,2})(?:gr[ea]y(?:ish)?|
    gris(?:es|ace[oa])?)(?<behind> (?:muy |bien )?(?:clar[oa]|clarit[oa]|palid[oa]|perla|medio|oscur[oa]|oscurit[oa]))?(?!\p{L})
  `,
  'u',
);
/** What a grey is told not to be, or an outcome that nobody wished: "not grey", "quedó gris". */
const NO_GREY = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:not|no|never|without|isn'?t|instead of|rather than|sin|ni|queda|quedara|sale|saldra|quedo|salio|came out|turned|gone|went|
    won'?t give me|will it be|is it)(?: [\p{L}-]+){0,3} (?:gr[ea]y|gris)|(?:gr[ea]y|gris) (?:lather|suds|espuma|foam)|
    (?:lather|suds|foam|espuma) (?:\p{L}+ )?(?:gr[ea]y|gris)|(?:gr[ea]y|gris)(?: \p{L}+){0,2} (?:or|o)|(?:or|o)(?: \p{L}+){0,2} (?:gr[ea]y|gris))(?!\p{L})
  `,
  'u',
);
/** "Not black", "overcast, not midnight", "que no llegue a negro": the end that a black is not to reach. */
const NO_BLACK = new RegExp(
  unbroken`
    (?<!\p{L})(?:not|no|never|rather than|instead of|en vez de|en lugar de|sin)(?: (?:so|too|quite|all the way|to|go|going|be|a|an|full|jet|pitch|
    dead|el|la|un|una|que|sea|
    quede|llegue|llegar|tan|muy|al?))* (?:black|midnight|night|coal|ink|negr[oa]|noche|azabache|carbon)(?!\p{L})
  `,
  'u',
);
/** Less of the yellow of the base is all that a white is to do: "knock the yellow back a little", "bajarle lo amarillo". */
const LESS_YELLOW = new RegExp(
  unbroken`
    (?<!\p{L})(?:knock|take|tone|cut|bring|tame|soften|calm|baj\p{L}*|quit\p{L}*|apag\p{L}*|cort\p{L}*|suaviz\p{L}*)(?: \p{L}+){0,3} (?:yellow\p{L}*|
    amarill\p{L}*)(?!\p{L})
  `,
  'u',
);
const ALL_OF_IT = /(?<!\p{L})(?:all|completely|entirely|totally|tod[oa]|por completo|del todo)(?!\p{L})/u;
/** As white or black as a thing is: "white as a lighthouse", "negro como la noche". */
const AS_A_THING =
  /(?<!\p{L})(?:white|black|blanc[oa]|negr[oa]) (?:as|como) (?!(?:possible|posible|you|it)(?!\p{L}))\p{L}/u;

/**
 * What a black or a white is wanted for tells how much of it: grey is what a little black makes, a light one the least (common
 * practice). Undefined of other colourants.
 */
function byItsEnd(said: string, things: readonly NamedThing[]): string | undefined {
  const named = things.filter(({ colourants }) => colourants.length > 0);
  const isAll = (kind: RegExp) => named.length === 1 && kind.test(named[0]!.text);
  if ((isAll(BLACK) || isAll(WHITE)) && AS_A_THING.test(said)) return 'full';
  if (!isAll(BLACK)) return undefined;
  const grey = NO_GREY.test(said) ? undefined : GREY.exec(said)?.groups;
  if (grey === undefined) return NO_BLACK.test(said) ? 'pastel' : undefined;
  const degree = `${grey.degree ?? ''}${grey.behind ?? ''}`;
  if (/light|pale|soft|dove|pearl|silver|clar|palid|perla/u.test(degree)) return 'tint';
  return /dark|deep|slate|charcoal|storm|oscur/u.test(degree) ? 'medium' : 'pastel';
}

/** A white that is only to take the yellow off is a little white (common practice). */
const takesYellowOff = (said: string, things: readonly NamedThing[]): boolean => {
  const named = things.filter(({ colourants }) => colourants.length > 0);
  const isWhite = named.length === 1 && WHITE.test(named[0]!.text);
  return isWhite && LESS_YELLOW.test(said) && !ALL_OF_IT.test(said);
};

/** The strength a question wishes, looked for outside the colourants' names. */
export function strengthIn({ words }: Words, things: readonly NamedThing[]): string | undefined {
  const typed = words
    .map((word, at) => (things.some(({ from, to }) => at >= from && at < to) ? ';' : word))
    .join(' ')
    .replaceAll('colour', 'color');
  const said = typed.replace(UNWISHED, ';');
  // What it would be at full strength is asked, whatever it is now: "barely lilac".
  if (/\bwhat would (?:be )?full (?:strength|colou?r)\b/u.test(said)) return 'full';
  const share = PARTS.find(([, pattern]) => pattern.test(said))?.[0] ?? percentIn(said);
  if (share !== undefined) return share;
  if (isGreyOfBlack(said, things)) return 'tint';
  const rest = CLIPPED.reduce((text, [pattern, meant]) => text.replace(pattern, meant), said);
  const told = STRENGTHS.find(([, pattern]) => pattern.test(rest))?.[0];
  // "Apenas un toquecito para gris" says how much; "dark grey" says of a grey what of a black is less.
  if (told !== undefined && told !== 'full') return told;
  return byItsEnd(typed, things) ?? told ?? (takesYellowOff(typed, things) ? 'pastel' : undefined);
}
