import { unbroken } from '../../../../over-lines.ts';
import { refuse } from '../../../../refusal.ts';
import { LYE } from '../../amounts/words.ts';
import { itemsOf } from '../items/items.ts';
import { weighedOils } from '../items/weighed-oils.ts';
import { same } from '../state.ts';

declare module '../../../../refusal.ts' {
  interface Reasons {
    /** Two pots that are held against each other by the lye that they take. */
    'pots-compared': { text: string };
  }
}

/*
 * Two pots in one message that are held against each other: "if 500 g of coconut takes 91 g, does 500 g of olive take the same?". Merged to
 * one pot the answer calls too little what burns in either.
 */

/** Words by which one thing is held against another. */
const COMPARES = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:the )?same|as much|as many|equal(?:ly)?|identical|likewise|different|difference|(?:what|
    how) about|too(?= ?(?:[;,]|$|right|then|or|no(?!\p{L})))|also(?= (?:for|right|fine|ok|enough|takes?|
    needs?|wants?|\d|the))|as well|again|still|instead|igual(?:es)?|lo mismo|(?:el|la|l[oa]s) mism[oa]s?|
    mism[oa] (?:cantidad|peso)|tambien|tampoco|tant[oa] (?:sosa|soda|lye)|diferen\p{L}+|distint[oa]s?|
    (?:me |nos )?(?:sirven?|valen?)|alcanza|and (?:for|with)|y (?:para|con|si|l[oa]s? de|el de|la de|
    de))(?!\p{L})
  `,
  'u',
);
/** The same as ever, or of all alike: of no other pot. */
const OF_NONE = new RegExp(
  unbroken`
    (?<!\p{L})(?:same|igual|mism[oa]s?)(?: (?:as|que|de|than))?(?: (?:the |my |la |el )?(?:last|usual|
    always|before|ever|siempre|antes|anterior|ultima)(?!\p{L})| (?:pot|pan|bowl|batch|mou?ld|brand|kitchen|
    scale|day|olla|marca|cocina|balanza|molde|dia|receta|recipe|oils?|aceites?)(?!\p{L}))|(?:lo|
    de lo) mismo (?:de )?siempre|(?:the )?same (?:again )?please|again (?:and again|please)|too (?:much|
    little|many|few|strong|weak|hot|cold)|still (?:soft|wet|liquid|hot|warm)|(?:check|weigh\p{L}*|tell me|
    ask\p{L}*|try\p{L}*) (?:it |them |me )?again|(?:estoy|also|tambien) (?:want|need|quiero|necesito)
  `,
  'gu',
);
const WEIGHED_LYE = new RegExp(
  unbroken`
    \d[\d.,]* ?(?:g|gr|gramos|grams?|oz)?(?: of| de)?(?: the| la)? ${LYE}|${LYE}(?: (?:is|es|son|of|de|:|=|
    at))* ?:? ?\d[\d.,]* ?(?:g|gr|gramos|grams?|oz)(?!\p{L})
  `,
  'u',
);
/** "500 g of olive need the same lye as …": of lye, without its weight. */
const LYE_COMPARED = new RegExp(
  unbroken`
    (?<!\p{L})(?:same|as much|equal|igual|mism[oa]|tant[oa]|more|less|mas|menos|different)(?: (?:amount|
    quantity|weight|cantidad|peso|of|de|the|la))* ${LYE} (?:as|than|for|que|como|para|de|
    as much)(?! (?:last|usual|always|before|siempre|this|that|it|me|us)(?!\p{L}))|(?:llevan?|piden?|needs?|
    takes?|wants?) (?:the |la |el )?(?:same|mism[oa]|igual de|more|less|mas|menos) ${LYE}|
    ${LYE}(?: \p{L}+){0,3} (?:the same|as much|equal|igual|(?:el|la|lo) mism[oa])(?! (?:as (?:last|usual|
    always|before)|que siempre|de siempre))
  `,
  'u',
);
/** What a weight is for: each of two such is a pot. */
const FOR = new RegExp(
  unbroken`
    (?:^|[ ;,])(?:for|para|pa|needs?|takes?|wants?|lleva|llevan|llevo|pide|con|with|if|si|in)(?: (?:the|my|
    a|an|una?|el|la|l[oa]s|hago|uso|i (?:use|make|do)|i|is))* ?$
  `,
  'u',
);
const EACH_FOR = /(?:^|[ ;,])(?:for|para|pa)(?: (?:the|my|a|an|una?|el|la|l[oa]s))* ?$/u;
const LONGEST = 60;

/**
 * The words of a line that hold two pots of weighed oils against each other by what lye they take; undefined where one pot alone is told.
 * Takes what `plainWords` gives with its clauses. Pure.
 */
function potsCompared(plain: string): string | undefined {
  const items = itemsOf(plain);
  const oils = weighedOils(items);
  const [first] = oils;
  const other = oils.find(({ name }) => first && !same(name, first.name));
  if (!first || !other) return undefined;
  const isLyeWeighed = WEIGHED_LYE.test(plain);
  const heads = oils.filter(({ from }) => FOR.test(plain.slice(0, from)));
  const each = oils.filter(({ from }) => EACH_FOR.test(plain.slice(0, from)));
  const said = plain.replace(OF_NONE, ' ');
  const text = plain.slice(other.from).trim().slice(0, LONGEST);
  if (each.length > 1 && (isLyeWeighed || LYE_COMPARED.test(said))) return text;
  const compared = LYE_COMPARED.test(said) || (isLyeWeighed && COMPARES.test(said));
  // Beside a list of oils such a word is of something else as often, unless each has its own opening or the lye is held against it.
  return compared && (heads.length > 1 || oils.length === 2) ? text : undefined;
}

/** Throws the Refusal `pots-compared` where a line holds two pots against each other. Takes what `plainWords` gives with its clauses. Pure. */
export function refusePotsCompared(plain: string): void {
  const compared = potsCompared(plain);
  if (compared !== undefined) refuse('pots-compared', { text: compared });
}
