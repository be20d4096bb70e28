import { knownOil } from '../../batch/oils/find-oil.ts';
import { Refusal, refuse } from '../../refusal.ts';
import { asTyped, withOneMore } from './as-typed.ts';
import { isEveryday, isNearOil, TURNS } from './chat-words.ts';
import { type LyeQuestion, readLyeQuestion } from './question.ts';
import { readyLyeNamed, strengthOfReady, withSolution } from './ready-solution.ts';
import { beyondIn } from './recipe-line/beyond.ts';
import { BOTH, type RecipeLine, recipeLine } from './recipe-line/recipe-line.ts';
import { COUNT, FAT, LYE, POTASSIUM, plainWords, UNIT } from './words.ts';

declare module '../../refusal.ts' {
  interface Reasons {
    /** A recipe that is put right in the middle of its line. */
    'recipe-corrected': { text: string };
    /** A recipe that is to be multiplied. */
    'recipe-scaled': { text: string };
    /** An oil with two amounts, of which one is in the pot. */
    'oil-told-twice': { name: string; one: string; other: string };
    /** What was to go in, beside what did. */
    'recipe-planned': { text: string };
    /** An oil beside words that may keep it, or some of it, out of the pot. */
    'oil-in-pot': { name: string; text: string };
    /** Lye that comes dissolved, and how strong it is is not told. */
    'lye-ready-strength': { text: string };
    /** Words beside a recipe that may be a part of it. */
    'recipe-words': { text: string };
  }
}

/** Courtesies in which a word stands that elsewhere turns the sense. */
const COURTESIES =
  /(?<!\p{L})(?:if (?:it s|it'?s|its|thats|that s|that'?s) (?:no|not too much) (?:bother|trouble)|if you (?:please|can|could|would|don t mind|dont mind|don'?t mind|have (?:a|the) (?:minute|moment|second|sec|time))(?: please)?|no (?:rush|hurry|worries|pressure|bother)(?: on you| at all)?|nothin['’]?g? else(?: in it| at all)?|nowt else|nothing more|and nothing else|sin (?:prisas?|apuros?)|no hay (?:prisa|apuro)|si (?:me )?(?:puede[ns]?|pueden|podria[ns]?|puedes|hace(?:n|s)? el favor|es (?:tan )?amable)|sin otra cosa|sin nada mas|y nada mas|sin decir mas|(?:would|could|can|will) you (?:please |kindly |possibly )?(?:work|figure|sort) (?:it |that )?out|(?:do|can|could|should) (?:i|we) (?:work|figure) (?:it |that )?out|digo mal|no (?:confio|se|entiendo|me fio|estoy segur[oa])|(?:i am |i'?m )?not (?:so |very |too )?sure|(?:i )?(?:don'?t|do not|can'?t|cannot|couldn'?t) (?:know|trust|remember|read)|(?:and )?i do mean|(?:it (?:is|was) )?meant to be|more or less|mas o menos|o sea|por favor)(?!\p{L})/gu;
/** Who puts right what was just said. */
const CORRECTS =
  /(?<!\p{L})(?:oops|i (?:meant|mean)|no wait|wait no|scratch (?:the|that)|correction|actually|sorry,? (?:make|not|no|its|it s|i meant)|make (?:it|that) \d|quise decir|quiero decir|mejor dicho|digo|ay no|no mejor|perdon,? (?:de|es|son|eran?|no|\d))(?!\p{L})/u;
const SCALES =
  /(?<!\p{L})(?:doubl(?:e|ed|ing)(?! ?check)|tripl(?:e|ed|ing)|halve|half of this|scal(?:e|ed|ing) (?:it|this|them|everything|all|to|up|down|the (?:recipe|batch))|times (?:two|three|\d)|multipl\p{L}+|duplic\p{L}+|triplic\p{L}+|la mitad de|al doble|el doble|(?:la )?quiero a \d)(?!\p{L})/u;
/** "sosa al 5", "lye at 5%": no lye water is so weak, so that it is the superfat. */
const AT_LYE = new RegExp(
  String.raw`(?<=(?<!\p{L})${LYE}(?: (?:and|y|n) (?:water|agua))?) (?:(?:at|al|a|for|con|del|de) )?(\d{1,2}(?:[.,]\d)?)(?: ?(%|percent|por ciento))?(?= ?(?:;|,|$|superfat))(?!,\d)`,
  'u',
);
const WEAKEST = 12;
const NOUGHT = new RegExp(`(${FAT}) (?:cero|zero|nil|nought)(?!\\p{L})`, 'u');

/** Kinds of soap, named before or behind their recipe. */
const KINDS =
  /(?<!\d ?(?:\p{L}+ )?(?:of |de )?)(?<!\p{L})(?:(?:castile|salt|hemp|beer|shampoo|(?:goats? ?)?milk|bar|hand|face|dish|laundry|cold process|bastille) (?:soaps?|bars?)|barras? de sal|jabon(?:es)? (?:de )?(?:castilla|sal|leche(?: de cabra)?|cerveza|lavar|ropa|cocina|platos|tocador))(?!\p{L})/gu;
/** Kinds that only potassium hydroxide makes. */
const SOFT_KINDS =
  /(?<!\d ?(?:\p{L}+ )?(?:of |de )?)(?<!\p{L})(?:(?:liquid|soft|shaving|cream) soaps?|shaving cream|crema de afeitar|jabon(?:es)? (?:de )?(?:liquido|blando|blanco|pasta|afeitar))(?!\p{L})/gu;
/** Figures of times, people and pieces. */
const COUNTED =
  /(?<![\d.,])\d{1,3} (?:below|degrees|grados|bars|pastillas|barras|people|personas|of us|years?|anos|days?|dias|weeks?|semanas|minutes?|minutos|hours?|horas|months?|meses|am|pm|o ?clock)(?!\p{L})|(?<!\p{L})(?:at \d{1,2} ?(?:am|pm|o ?clock)|(?:by|until|till|a las) \d{1,2}(?: ?(?:am|pm|o ?clock))?|at \d{1,2} (?:tonight|today|this (?:morning|evening|afternoon))|(?<=(?:start|meet|pour|party|class|dinner|tea|home|back|leave|open|clos|pick|tonight|today|tomorrow|morning|afternoon|evening)\p{L}*(?: \p{L}+){0,3} )at \d{1,2})(?= ?(?:;|,|$)|(?<=tonight|today|morning|evening|afternoon) )/gu;

/** "No son 800 sino 600", "not 1 kg but 800 g". */
const NOT_BUT = new RegExp(
  `(?<!\\p{L})(?:no (?:son|eran?|es|fueron)|not) ${COUNT} ?(?:${UNIT})?(?: (?:of |de )\\p{L}+)? (?:sino|but)(?= \\d)`,
  'gu',
);
const LYE_FORM = new RegExp(
  `(?<!\\p{L})(${LYE}) (?:pellets?|flakes?|beads?|crystals?|granules?|pearls?|en (?:perlas|escamas|polvo|lentejas|granos))(?!\\p{L})`,
  'gu',
);
/** How a soap feels: "still soft as butter", "quedó como mantequilla". */
const SIMILE =
  /(?<!\p{L})(?:soft|hard|white|smooth|thick|greasy|yellow|feels|looks|quedo|queda|esta|parece|blando|suave)(?: \p{L}+)?(?: (?:as|like|como)(?: (?:a|the|la|el|una))?) (?:butter|lard|wax|candle wax|cheese|mantequilla|manteca|cera|queso)(?= ?(?:;|,|$|and |y ))/gu;

const EQUAL_PARTS =
  /(?<!\p{L})(?:equal parts|partes iguales)(?: of| de)? ((?:\p{L}+ ?){1,3}(?:, (?:\p{L}+ ?){1,3})*(?: (?:and|y|e) (?:\p{L}+ ?){1,3}))(?=[,;]|$)/u;
/** "equal parts olive, coconut and rice bran" as percents, where each is an oil. */
function inEqualParts(said: string, list: string): string {
  const oils = list.split(/, ?| (?:and|y|e) /u).map(one => one.trim());
  if (oils.length < 2 || oils.some(oil => knownOil(oil) === undefined)) return said;
  return oils.map(oil => `${Number((100 / oils.length).toFixed(2))}% ${oil}`).join(', ');
}

/** "Soda 136", "140 soda": in much of America soda alone is the caustic one. */
const SODA_WEIGHED =
  /((?<![\d.,])\d+(?:[.,]\d+)? ?(?:(?:g|gr|gramos|oz|onzas)? ?(?:de )?))soda(?! (?:caustica|ash|crystals|water|bicarb))(?!\p{L})|(?<!\p{L})soda(?! (?:caustica|ash|crystals|water|bicarb))(?=[ :=]*\d)/gu;

/** A line as {@link recipeLine} takes it: courtesies away, shares beside lye told as the superfat that they are. */
export function prepared(question: string): string {
  const isPotash = POTASSIUM.test(plainWords(question));
  const plain = withSolution(withOneMore(plainWords(asTyped(question), { clauses: true })))
    .replace(/(?<!\p{L})double[ -]?check(?:ed|ing)?(?!\p{L})/gu, 'check')
    .replace(/(?<=100 ?% )(?:castill?e|castill?a)(?: soap)?(?!\p{L})/u, 'olive')
    .replace(
      /(?:instead|in place) of (?:all )?(?:of )?(?:the |my )?water(?!\p{L})|en (?:vez|lugar) de(?:l)? (?:el )?agua(?!\p{L})/gu,
      ' ; ',
    )
    .replace(/(?<!\p{L})(?:por|for) (?:cada|every|each) (?=\d+ part)/gu, '')
    .replace(EQUAL_PARTS, inEqualParts)
    .replace(NOT_BUT, '')
    .replace(LYE_FORM, '$1')
    .replace(SIMILE, ' ')
    .replace(COURTESIES, ' ; ')
    .replace(NOUGHT, '$1 0%')
    .replace(KINDS, ' ; ')
    .replace(SOFT_KINDS, isPotash ? ' ; ' : '$&')
    .replace(
      new RegExp(String.raw`(?<=\d ?(?:${UNIT})? ?de )soda(?! caustica)|(?<=\bla )soda(?! caustica)`, 'gu'),
      'soda caustica',
    )
    .replace(SODA_WEIGHED, '$1soda caustica')
    .replace(new RegExp(`(${LYE}) instead(?! of)`, 'u'), '$1');
  const hasSuperfat = new RegExp(`(?<!\\p{L})${FAT}(?!\\p{L})`, 'u').test(plain);
  const told = hasSuperfat
    ? plain
    : plain
        .replace(/(?<!\p{L})(?:sg (\d{1,2})(?: ?%)?|se (\d{1,2}) ?%)(?![\d.,]\d)/u, 'superfat $1$2%')
        .replace(AT_LYE, (whole, figure: string) =>
          Number.parseFloat(figure.replace(',', '.')) <= WEAKEST ? ` ; superfat ${figure}%` : whole,
        );
  return told.replace(COUNTED, ' ; ');
}

/** Refusals of a line in which only its words stand in the way. */
const OF_WORDS: ReadonlySet<string> = new Set([
  'oil-unknown',
  'oil-without-amount',
  'amounts-whose',
  'oils-mixed-units',
  'oils-without-unit',
  'amount-unreadable',
  'amount-unit-unknown',
  'oils-empty',
  'oils-percent-sum',
]);

/**
 * {@link readLyeQuestion}, also where courtesies, dialect and what else is chatted stand beside the recipe: those words are passed
 * by and told. `unordered` as `inOrder` found it. Pure. Throws the Refusals of `readLyeQuestion`, and `recipe-corrected`,
 * `recipe-scaled`, `oil-told-twice`, `recipe-planned` and `recipe-words`.
 */
export function readLyeInChat(
  question: string,
  { ordered, unordered }: { readonly ordered: string; readonly unordered?: Refusal },
): LyeQuestion {
  const beyond = beyondIn(plainWords(question, { clauses: true }));
  if (beyond !== undefined && /\d/u.test(question)) refuse('recipe-words', { text: beyond.slice(0, 60) });
  const line = prepared(question);
  const read = recipeLine(line);
  const clear = 'line' in read ? strictly(read.line) : undefined;
  if (clear && 'line' in read) return dissolved(withBeside(clear, read, line), question);
  if ('unclear' in read && read.twice) refuse('oil-told-twice', read.twice);
  if ('unclear' in read && read.doubt)
    refuse('oil-in-pot', { name: read.doubt.name, text: read.doubt.text.slice(0, 60) });
  if ('unclear' in read && read.isPlanned) refuse('recipe-planned', { text: read.unclear });
  // What is changed as it is told is for no reader that takes every word as it stands.
  if (read.isTurned) return refuseTurned(line, read);
  const unclear = 'unclear' in read ? read.unclear : '';
  try {
    if (unordered) throw unordered;
    const strict = readLyeQuestion(ordered);
    // Oils whose place is not clear are counted by no other reader: what was planned and what was poured would both be in the pot.
    if (strict.given.oils === undefined || (unclear === BOTH && strict.given.lye?.includes('+')))
      return dissolved(strict, question);
  } catch (refusal) {
    if (!(refusal instanceof Refusal) || !OF_WORDS.has(refusal.id)) throw refusal;
    return refuseUnclear(line, unclear, refusal);
  }
  return refuse('recipe-words', { text: unclear.slice(0, 60) });
}

/** What is asked of ready-made lye is told as grams of that lye, or it is asked how strong it is: by the figure of dry lye it is too little. */
function dissolved(told: LyeQuestion, question: string): LyeQuestion {
  const plain = plainWords(asTyped(question), { clauses: true });
  const named = readyLyeNamed(plain);
  if (named === undefined || told.given.oils === undefined || told.given.lye?.includes('solution'))
    return told;
  const strength = strengthOfReady(plain);
  if (strength === undefined || told.weighed || POTASSIUM.test(plain))
    return refuse('lye-ready-strength', { text: named });
  const { water: _, ...given } = told.given;
  return { ...told, given: { ...given, lye: `${strength}% lye solution` } };
}

const ASKS_WATER = /\b(?:how much|cuanta) (?:water|agua)\b/u;
const withBeside = (told: LyeQuestion, { left, respelt }: RecipeLine, line: string): LyeQuestion => ({
  ...told,
  left,
  respelt,
  asksWater: ASKS_WATER.test(line),
});

/** Throws `recipe-scaled` or `recipe-corrected`, as what is unclear in a recipe that was changed. */
function refuseTurned(line: string, read: ReturnType<typeof recipeLine>): never {
  const [scaled] = SCALES.exec(line) ?? [];
  if (scaled !== undefined) refuse('recipe-scaled', { text: scaled });
  const [corrected] = CORRECTS.exec(line) ?? [];
  return refuse('recipe-corrected', {
    text: corrected ?? ('unclear' in read ? read.unclear : line.slice(0, 60)),
  });
}

/** Throws what stands in the way of a recipe told in chat: a correction, a multiple, words, or else the refusal of the strict reader. */
function refuseUnclear(line: string, unclear: string, refusal: Refusal): never {
  const [corrected] = CORRECTS.exec(line) ?? [];
  if (corrected !== undefined && /\d/u.test(line)) refuse('recipe-corrected', { text: corrected });
  const [scaled] = SCALES.exec(line) ?? [];
  if (scaled !== undefined && /\d/u.test(line)) refuse('recipe-scaled', { text: scaled });
  const text = 'text' in refusal.values && typeof refusal.values.text === 'string' ? refusal.values.text : '';
  if (refusal.id === 'oil-unknown' && !namesFat(text) && !text.split(' ').some(isStrangeOil)) {
    const words = unclear.split(' ');
    const mayBeOil = words.some(word => isNearOil(word) || /^\d/u.test(word) || knownOil(word) !== undefined);
    if (unclear !== '' && !mayBeOil) refuse('recipe-words', { text: unclear.slice(0, 60) });
    // "Between", "later another": no name of an oil, so that none is offered for it.
    const strange = text.split(' ').filter(word => !/^\d/u.test(word) && knownOil(word) === undefined);
    if (strange.length > 0 && strange.every(word => TURNS.has(word) || isEveryday(word)))
      refuse('recipe-words', { text: strange.join(' ').slice(0, 60) });
  }
  throw refusal;
}

const namesFat = (words: string): boolean =>
  /\b(?:oils?|butters?|fats?|wax|aceites?|mantecas?|mantequillas?|grasas?|ceras?)\b/u.test(words);

function strictly(line: string): LyeQuestion | undefined {
  try {
    return readLyeQuestion(line);
  } catch (refusal) {
    if (refusal instanceof Refusal) return undefined;
    throw refusal;
  }
}

const isStrangeOil = (word: string): boolean =>
  !TURNS.has(word) && isNearOil(word) && knownOil(word) === undefined;
