import { unbroken } from '../../../../over-lines.ts';
import { LYE } from '../../amounts/words.ts';

/** A carbonate, by the names it is sold under (general knowledge; from memory): it makes no soap of a fat. */
const CARBONATE = new RegExp(
  unbroken`
    (?<!\p{L})(?:washing soda|(?:washing|soda) crystals|sodium carbonate|natron|carbonato (?:de )?sodi(?:o|
    co)|carbonato sodico|carbonato de (?:sosa|soda)|(?:sosa|soda) (?:de|para|del?) (?:lavar|lavado)|soda solvay)(?!\p{L})
  `,
  'u',
);
/** Salts of the same acid that a recipe may hold for other ends, or that stand on a bar as a film: none of them the lye. */
const OTHER_CARBONATE = unbroken`
  (?:soda ash|carbonatos?|carbonates?|bicarbonat\p{L}*(?: (?:de|of) (?:sodio|soda|sosa))?|baking soda|bicarb)
`;
const SAME = unbroken`
  (?:(?:the |is )?same(?: thing| stuff)?|lo mismo|mism[oa]|igual|instead of (?:the |my |caustic |proper )*LYE|in place of (?:the |my )?LYE|en (?:vez|
  lugar) de (?:la |mi )?LYE|works (?:as well|just as well|the same|too|like)|(?:me |te |nos )?(?:sirve|vale|funciona)|will do|does the (?:same|
  job)|would do)
`.replaceAll('LYE', LYE);
/** What somebody gave, sold or swears by: "me ha dado carbonato, que dice que es lo mismo", "the shop only had soda ash". */
const OFFERED: readonly RegExp[] = [
  new RegExp(
    `(?<!\\p{L})(?<salt>SALT)(?!\\p{L})[^;]{0,40}?(?<!\\p{L}|(?:not|n['’]?t|no|no es|no me|nunca) (?:the |lo |la )?)${SAME}(?!\\p{L})`,
    'u',
  ),
  new RegExp(
    unbroken`
      (?<!\p{L})(?:only|just|solo|solamente|nomas)(?: (?:had|have|has|got|sold|sells?|find|hay|habia|tengo|tenia|tenian|vend\p{L}+|
      encontre|consegui))+ (?<salt>SALT)(?!\p{L})
    `,
    'u',
  ),
].map(
  ({ source }) => new RegExp(source.replaceAll('SALT', `(?:${CARBONATE.source}|${OTHER_CARBONATE})`), 'u'),
);
const offeredIn = (plain: string): string | undefined =>
  OFFERED.map(pattern => pattern.exec(plain)?.groups?.salt).find(salt => salt !== undefined);

const PROPER = new RegExp(`(?<!\\p{L})${LYE}(?!\\p{L})`, 'u');
/** Named as what the soap is made with, whatever else is called lye beside it. */
const AS_THE_LYE = new RegExp(
  unbroken`
    (?<!\p{L})(?:mak(?:e|ing)|made|doing|hago|hacemos|hacer) (?:it|mine|my soap|this|soap|them|el jabon|
    mi jabon|jabon|lo)?(?: \p{L}+)? ?(?:with|out of|using|con) (?:the |my |la |mi )?$|(?:my|the|our|mi|
    la) (?:lye|alkali|sosa|alcali) (?:is|es) (?:a |the |la )?$
  `,
  'u',
);
const AS_LYE = /^(?: (?:as|for|como|de|por))(?: (?:the|my|la|mi|a))* (?:lye|alkali|sosa|alcali)(?!\p{L})/u;

/**
 * The carbonate that a message names as its alkali, or that somebody offers in the lye's place; undefined where it names none, or a hydroxide
 * for it. Takes what `plainWords` gives. Pure.
 */
export function carbonateAsLye(plain: string): string | undefined {
  const offered = offeredIn(plain);
  if (offered !== undefined) return offered;
  const found = CARBONATE.exec(plain);
  if (!found) return undefined;
  const [before, behind] = [plain.slice(0, found.index), plain.slice(found.index + found[0].length)];
  const isNamed = AS_THE_LYE.test(before) || AS_LYE.test(behind);
  return isNamed || !PROPER.test(plain.replace(found[0], ' ')) ? found[0] : undefined;
}

const HYDROXIDE =
  /(?<!\p{L})(?:hydroxides?|hidroxidos?|lye|caustic\p{L}*|alkali|alcali|sosa|potasa|potash|naoh|koh)(?!\p{L})/u;
const SODIUM = '(?:sodium|sodic[oa]|sodio|naoh|caustic soda|sosa|soda)';
const POTASSIUM = '(?:potassium|potasic[oa]|potasio|koh|potash|potasa)';
const EITHER = unbroken`
  (?:${SODIUM}(?: hydroxide)? (?:or|o|u) (?:de )?${POTASSIUM}|${POTASSIUM}(?: hydroxide)? (?:or|o|
  u) (?:de )?${SODIUM}|which (?:hydroxide|one|of the two|lye|kind|it is)|cual(?: de los dos| es)?|
  de que (?:tipo|clase))
`;
const NOT_TOLD = unbroken`
  (?:(?:but |just )?not (?=(?:if|whether|which)(?!\p{L}))|no (?:me |se |te )?(?:dice|pone|aclara|especifica|
  indica|trae|se|sabe|sabemos|recuerdo)|ni (?:dice|pone|idea)|sin (?:saber|decir)|(?:does ?n['’]?t|doesnt|
  does not|did ?n['’]?t|not|never|no longer|without) (?:\p{L}+ )?(?:say(?:ing)?|tell|state|read|specify|
  know|sure|label(?:led|ed)?)|(?:don'?t|dont|do not|can'?t|cant|cannot) (?:know|tell|remember|read))
`;
const UNKNOWN: readonly RegExp[] = [
  new RegExp(
    `(?<!\\p{L})${NOT_TOLD}(?: (?:if|whether|which|si|it'?s|it is|es|sea|is|de|the))*[^;\\d]{0,20}?${EITHER}(?!\\p{L})`,
    'u',
  ),
  // "It says hydroxide and nothing else", "dice hidroxido y nada mas".
  new RegExp(
    unbroken`
      (?<!\p{L})(?:hydroxide|hidroxido)(?:,? (?:and|y))? (?:nothing (?:else|more)|that'?s (?:it|all)|only|
      no more|nada mas|nomas|solamente|a secas|ya|punto)(?!\p{L})|(?<!\p{L})(?:just|only|solo|solamente|
      nada mas(?: que)?) (?:(?:says?|reads?|dice|pone) )?(?:hydroxide|hidroxido)(?! (?:de|sodic|potasic|
      of))(?!\p{L})
    `,
    'u',
  ),
  // "An unlabelled tub of hydroxide", "un bote de sosa sin etiqueta".
  /(?<!\p{L})(?:un-?labell?ed|unmarked|label-?less|nameless) (?:\p{L}+ ){0,3}?(?:hydroxide|lye|caustic\p{L}*|flakes|pearls|alkali)(?!\p{L})/u,
  // "Sosa a granel de una droguería, en bolsa sin etiqueta": what it lies in, further on in its sentence.
  new RegExp(
    unbroken`
      (?<!\p{L})(?:hidroxido|sosa|soda|potasa|escamas|perlas|caustica|hydroxide|lye|caustic\p{L}*|flakes|pearls)(?!\p{L})[^;]{0,90}?
      (?<!\p{L})(?:(?:bolsa|bote|frasco|tarro|lata|saco|bolsita) sin (?:etiqueta|etiquetar|nombre|marcar|marca)|
      (?:un-?labell?ed|unmarked) (?:bag|tub|jar|tin|bottle|sack)|(?:bag|tub|jar|tin|bottle|
      sack) (?:that )?(?:(?:with|has|had|got) no|without (?:any|a)) labels?)(?!\p{L})
    `,
    'u',
  ),
  /(?<!\p{L})(?:hidroxido|sosa|soda|potasa|escamas|perlas|caustica)(?: \p{L}+){0,4}? sin (?:etiqueta|etiquetar|nombre|marcar)(?!\p{L})/u,
  new RegExp(
    unbroken`
      (?<!\p{L})(?:hydroxide|lye|caustic\p{L}*|flakes|pearls|alkali)(?: \p{L}+){0,5}? (?:has |with |
      have )?(?:no|lost its|without (?:a|its|any)) label(?!\p{L})|(?<!\p{L})label(?: on (?:it|
      the \p{L}+))? (?:has |is |had )?(?:come off|fallen off|fell off|gone|washed off|peeled off|
      missing)(?!\p{L})|(?<!\p{L})se (?:le )?(?:borro|despego|cayo|perdio) la etiqueta(?!\p{L})
    `,
    'u',
  ),
];
const KEPT_IN = new RegExp(
  unbroken`
    (?<!\p{L})(?:says?|dice|pone|labels?|tubs?|jars?|bags?|tins?|bottles?|packets?|flakes|pearls|etiqueta|
    botes?|frascos?|bolsas?|tarros?|envases?|latas?|escamas|perlas)(?!\p{L})
  `,
  'u',
);
const LONGEST = 60;

/**
 * The words of a message that leave open which hydroxide stands there, so that none of it may be weighed; undefined where none do. Takes what
 * `plainWords` gives. Pure.
 */
export function hydroxideUnknown(plain: string): string | undefined {
  if (!HYDROXIDE.test(plain)) return undefined;
  return UNKNOWN.map(pattern => pattern.exec(plain))
    .find(found => found !== null && isOfHydroxide(plain, found.index))?.[0]
    .slice(0, LONGEST);
}

/** Whether the clause in which something is unknown speaks of a hydroxide or of what it is kept in. */
function isOfHydroxide(plain: string, at: number): boolean {
  const begins = Math.max(plain.lastIndexOf(';', at), plain.lastIndexOf('.', at)) + 1;
  const [clause = ''] = plain.slice(begins).split(/[;.]/u);
  return HYDROXIDE.test(clause) || KEPT_IN.test(clause);
}
