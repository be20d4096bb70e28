import { parseOils } from '../../batch/oils/lists/oil-list.ts';
import type { WrittenPlan } from '../../batch/planning/written-plan.ts';
import { unbroken } from '../../over-lines.ts';
import { figureText } from '../../quantities/for-readers.ts';
import { Refusal, refuse } from '../../refusal.ts';
import { addedIn } from './amounts/added.ts';
import { alkaliIn, type LyeTold } from './amounts/alkali.ts';
import { superfatIn, waterIn, weighedIn } from './amounts/amounts.ts';
import { oilsIn } from './amounts/oils.ts';
import { clausesOfOils, oilsAmongWords } from './amounts/oils-among-words.ts';
import { COUNT, FAT, gramsOf, LYE, MASS, plainWords, Remaining, told } from './amounts/words.ts';
import type { WeighedLye } from './sums/check.ts';

/** What of a lye question `/plan` takes, in its own words, and lye or water that the question itself weighs. */
export type LyeQuestion = {
  readonly given: Partial<
    Pick<WrittenPlan, 'oils' | 'size' | 'superfat' | 'lye' | 'water' | 'purity' | 'additives' | 'liquid'>
  >;
  /** Which lye it is. */
  readonly lye: LyeTold;
  /** Lye that somebody weighed already. */
  readonly weighed: WeighedLye | undefined;
  /** Grams of oils where they are told for the whole, and not oil by oil. */
  readonly oilGrams: number | undefined;
  /** Grams of water that the question weighs. */
  readonly waterGrams: number | undefined;
  readonly asksWater: boolean;
  /** Words that were passed by. */
  readonly left: readonly string[];
  /** Oils whose names are spelt amiss, and as what they were read. */
  readonly respelt?: readonly { readonly typed: string; readonly read: string }[];
  /** Sentences that stand beside the recipe and speak of something in it. */
  readonly beside?: readonly string[];
  /** True where the alkali is KOH and its purity is not told. */
  readonly usualKoh: boolean;
};

/** The unit of every bare figure, told once. */
const ALL_IN_GRAMS =
  '(?:all|everything|todo|todos|todas|weights|pesos) (?:is |are |va |van |esta |estan )?(?:in|en) (?:grams?|gramos|gr|g)';
/** What is asked, and what is said beside it that changes nothing of the lye, wherever it stands. */
const ASIDES = [
  `(?:how (?:much|many)|cuant[oa]s?) (?:gram(?:o)?s (?:of |de )?)?(?:the |la )?${LYE}(?: (?:and|n|y|or|&) (?:how much |cuanta )?(?:the |el )?(?:water|agua))?`,
  `(?:instead of|in place of|rather than|not|en (?:vez|lugar) de)(?: the| los)? (?:${MASS}|\\d{2,4})(?: (?:of )?${LYE})?`,
  unbroken`
    (?:please |por favor |prefiero que |i(?: would)? prefer (?:that )?(?:you )?)?(?:me )?(?:show(?: me)?|
    muestr\w+(?:me)?|ensen\w+(?:me)?)(?: (?:me|the|your|all|la|las|el|los|toda))* (?:workings?|sums?|maths?|
    calculations?|cuentas?|calculos?|operacion(?:es)?)
  `,
  'for comparison(?: only)?',
  `(?:with |at |con |and |y )?(?:the |my |a |el |un )?(?:usual|normal|standard|default|regular) ${FAT}`,
  `(?:con |with |y )?(?:el |un )?${FAT} (?:normal|habitual|de siempre|usual|estandar)`,
  '(?:a |the |this |my )?recipe (?:that )?(?:i |we )?(?:found|saw|got)(?: (?:online|on the (?:internet|web)|on a blog|in a book|somewhere))? ?:?',
  '(?:una |la |esta )?receta (?:que )?(?:encontre|vi|halle|me dieron)(?: (?:en (?:internet|la red|un (?:libro|blog))|por ahi))? ?:?',
  '(?:i|we) (?:shall|will|am|are) not (?:be )?(?:making|using|going to make) (?:it|any|this)',
  '(?:and |y |with |con )?(?:nothing (?:more|else)|nada mas)',
  '(?:that s|thats|eso es) (?:all|it|todo)',
  '(?:castile|castilla)(?: soap)?',
  unbroken`
    (?:it s |its |it is |this is |es |para )?(?:just |only |solo |nomas )?(?:as )?(?:an? |un |
    una )?(?:small |little |tiny |first |pequen[oa] )?(?:trial|tester|test batch|try ?out|experiment|
    prueba)(?: run| batch)?
  `,
  '(?:the )?first time|(?:mi )?primera vez',
];

/** One weight for several oils: "700 g olive and coconut oils". */
const OILS_TOGETHER = unbroken`
  (${MASS})(?: of| de)? [a-z]+(?: [a-z]+)?(?: (?:and|y|e|,) [a-z]+(?: [a-z]+)?)+ (?:oils|aceites)|
  (${MASS})(?: de) aceites? de [a-z]+(?:,? (?:y|e)(?: de)? [a-z]+)+
`;

/** "lye 4 500g lard": five hundred, "4" for "for", or four and a half thousand. */
const FIGURE_OR_WORD = new RegExp(`\\b${LYE} ([24]) (\\d{3}) ?(?:g|gr|grams?|gramos?)\\b`, 'iu');

/** Throws the Refusal `amount-ambiguous` where a figure as it was typed may be a word or the thousands of the next one. */
export function refuseFigureOrWord(typed: string): void {
  const [, figure, hundreds] = FIGURE_OR_WORD.exec(typed) ?? [];
  if (figure !== undefined && hundreds !== undefined)
    refuse('amount-ambiguous', {
      text: `${figure} ${hundreds} g`,
      small: hundreds,
      large: figure + hundreds,
    });
}

/**
 * Takes a question about lye apart: what `/plan` has an option for, lye weighed already, and all the rest, which must read
 * as a list of oils. Nothing is passed by: what is neither understood nor a word that changes nothing is refused, as
 * `/plan` would. Pure. Throws the Refusals of `parseOils`.
 * @example readLyeQuestion('how much KOH 90% for 500 g olive').given // { lye: 'KOH 90%', oils: '500 g olive' }
 */
export function readLyeQuestion(question: string): LyeQuestion {
  const rest = new Remaining(plainWords(question, { clauses: true }));
  const superfat = superfatIn(rest);
  const alkali = alkaliIn(rest);
  const water = waterIn(rest);
  const weighed = weighedIn(rest, alkali);
  const added = addedIn(rest);
  const weighedWater = told(
    rest.take(
      `(?:in |en |with |con )?(${MASS}|${MILLILITRES}|\\d{2,4})(?: (?:of|de))?(?: (?:the|el|distilled|cold))? (?:water|agua)(?: destilada| fria)?`,
    ),
  );
  const inGrams = rest.take(ALL_IN_GRAMS) !== undefined;
  for (const aside of ASIDES) rest.take(aside);
  const size = rest.take(
    `(${MASS})(?: total| of| de| in)* (?:total )?(?:oils|oil|fats|aceites|aceite|grasas)(?: in all| in total| en total)?(?! de | [a-z]+ oil)`,
  )?.[1];
  const lone = size === undefined && !weighed ? massBesideShares(rest) : undefined;
  const together = size === undefined && weighed ? rest.take(OILS_TOGETHER)?.[1] : undefined;
  const { oils, left } = listedOils(rest.text, { inGrams, isChecked: weighed !== undefined });
  const whole = size ?? lone ?? together;
  const waterGrams = weighedWater === undefined ? undefined : gramsOfWater(weighedWater);
  return {
    given: {
      ...(oils !== undefined && { oils }),
      ...(whole !== undefined && { size: `${whole} oils` }),
      ...superfat,
      ...alkali.given,
      ...water,
      ...(weighed === undefined && water.water === undefined && waterOfOils(waterGrams, oils, whole)),
      ...added,
    },
    weighed,
    oilGrams: whole === undefined ? undefined : gramsOf(whole),
    waterGrams,
    left,
    asksWater: /\b(?:how much|cuanta) (?:water|agua)\b/u.test(plainWords(question)),
    lye: alkali.lye,
    usualKoh: alkali.lye.alkali === 'KOH' && !alkali.purityTold,
  };
}

const MILLILITRES = `${COUNT} ?(?:ml|cc|l|lit(?:er|re)s?|litros?)`;

/** Grams of water by its weight, its volume (a millilitre weighs a gram) or a bare figure, which is in grams. */
function gramsOfWater(told: string): number {
  if (/^\d+$/u.test(told)) return Number(told);
  const litres = told.replace(/(?<!m) ?(?:l|lit(?:er|re)s?|litros?)$/u, ' kg');
  return gramsOf(litres.replace(/ ?(?:ml|cc)$/u, ' g'));
}

/** Water that the question weighs as `/plan` takes it; nothing where the weight of the oils is not told. */
function waterOfOils(
  waterGrams: number | undefined,
  oils: string | undefined,
  whole: string | undefined,
): { water?: string } {
  if (waterGrams === undefined || oils === undefined) return {};
  const oilGrams = whole === undefined ? parseOils(oils).totalGrams : gramsOf(whole);
  if (oilGrams === undefined) return {};
  return { water: `${figureText((100 * waterGrams) / oilGrams)}% of oils` };
}

/**
 * What is left as a list of oils. Where lye was weighed and is only to be checked, strange words may stand beside oils that
 * have weights: an oil missed shows too much lye, never too little. Lye that is yet to be weighed wants every word understood
 * that stands with the oils; only clauses of their own, which name no fat and count nothing, are passed by and told.
 */
function listedOils(
  text: string,
  { inGrams, isChecked }: { readonly inGrams: boolean; readonly isChecked: boolean },
): { readonly oils: string | undefined; readonly left: readonly string[] } {
  try {
    return { oils: oilsIn(text, { inGrams }), left: [] };
  } catch (refusal) {
    const isStrange =
      refusal instanceof Refusal && (refusal.id === 'oil-unknown' || refusal.id === 'oil-without-amount');
    const among = isStrange && isChecked ? oilsAmongWords(text) : undefined;
    const apart = isStrange ? oilsApart(text, inGrams) : undefined;
    const found = among ?? apart;
    if (!found) throw refusal;
    return found;
  }
}

/** {@link clausesOfOils} as a list, the clauses beside them passed by. */
function oilsApart(text: string, inGrams: boolean) {
  const clauses = clausesOfOils(text);
  if (!clauses) return undefined;
  try {
    const oils = oilsIn(clauses.list, { inGrams });
    return oils === undefined ? undefined : { oils, left: clauses.left };
  } catch (refusal) {
    if (refusal instanceof Refusal) return undefined;
    throw refusal;
  }
}

/** The one mass that stands by itself where every oil has a share: the weight of all of them. */
function massBesideShares(rest: Remaining): string | undefined {
  const masses = rest.text.match(new RegExp(MASS, 'gu')) ?? [];
  const [mass] = masses;
  if (mass === undefined || masses.length > 1 || !rest.text.includes('%')) return undefined;
  const others = rest.text.replace(mass, ' ; ');
  try {
    return oilsIn(others, { inGrams: false }) === undefined
      ? undefined
      : rest.take(mass.replaceAll('.', String.raw`\.`))?.[0];
  } catch (refusal) {
    if (refusal instanceof Refusal) return undefined;
    throw refusal;
  }
}

const ASKED = new RegExp(
  String.raw`\b(?:how (?:much|many)|cuant[oa]s?|calcul\w*|que cantidad de|amount of)\b.{0,16}\b${LYE}\b|^${LYE}\b.*\d`,
  'u',
);
const TOLD = new RegExp(String.raw`\b${MASS}(?: of| de)?(?: the| my| la)? ${LYE}\b`, 'u');

/** True where the one word for lye is "lejía": caustic in some countries, household bleach in others. */
export function isBleachOrLye(question: string): boolean {
  const plain = plainWords(question).replace(/\blejia de (?:sosa|potasa)\b/gu, 'sosa');
  return (
    /\blejia\b/u.test(plain) &&
    !/\b(?:sosa|potasa|naoh|koh|lye|hidroxido|soda caustica|caustica)\b/u.test(plain)
  );
}

/** What of lye a question is about, as far as its turns of phrase tell. */
export function lyeAskedIn(question: string): { readonly amount: boolean; readonly weighed: boolean } {
  const plain = plainWords(question);
  const figured = /\d/u.test(plain);
  return { amount: figured && ASKED.test(plain), weighed: TOLD.test(plain) };
}
