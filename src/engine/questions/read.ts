import { amountsIn, type ToldAmount } from './amounts.ts';
import { CUES, type Job } from './cues.ts';
import { type Correction, type NamedThing, settled, thingsIn, type Words, wordsOf } from './entities.ts';
import { type Facts, factsOf } from './facts.ts';
import { isHotProcess, type Outside, outsideField } from './scope.ts';

/** One way to read a question: the job, how much speaks for it, and the command that does it. */
export type Reading = {
  readonly job: Job;
  readonly score: number;
  /** The command and its options as they would be typed. */
  readonly command: string;
  readonly given: Readonly<Record<string, string>>;
  /** Options that the question does not tell and the command cannot do without. */
  readonly missing: readonly string[];
};

export type QuestionRead = {
  /** Likeliest first; empty where nothing is understood. */
  readonly readings: readonly Reading[];
  readonly facts: Facts;
  readonly corrections: readonly Correction[];
  readonly outside: Outside | undefined;
  readonly hotProcess: boolean;
};

/** What is under this is no reading: a lone "in" or "for". */
const LEAST = 2;
/** A second reading this near to the first is offered beside it. */
const NEAR = 1.5;

/**
 * Reads a plain question: which command it asks for, with which options, as far as its own words tell. Nothing is added that
 * the words do not say. Pure; a few milliseconds; only the first 2,000 letters count.
 * @example readQuestion('how much ultramarine for 2 cups?').readings[0].given // { colourant: 'ultramarine', portion: '2 cups' }
 */
export function readQuestion(question: string): QuestionRead {
  const typed = wordsOf(question);
  const things = thingsIn(typed);
  const words = settled(typed, things);
  const amounts = amountsIn(words, things);
  const facts = factsOf(question, words, { things, amounts });
  const scores = scoresOf(words, { things, amounts, facts });
  const ranked = [...scores].filter(([, score]) => score >= LEAST).sort((a, b) => b[1] - a[1]);
  const best = ranked[0]?.[1] ?? 0;
  const outside = outsideField(words.text);
  const isOurs =
    things.length > 0 ||
    facts.target !== undefined ||
    facts.findings > 0 ||
    facts.oils !== undefined ||
    OUR_WORDS.test(words.text);
  const fallback = ranked.length === 0 && isOurs ? fallbackJob({ things, amounts, facts }, words) : undefined;
  if (fallback) ranked.push([fallback, 1]);
  const readings = ranked
    .filter(([, score], at) => at === 0 || (at === 1 && best - score <= NEAR))
    .map(([job, score]) => ({ job, score, ...commandFor(job, question, facts) }));
  return {
    readings,
    facts,
    corrections: words.corrections,
    // What speaks of nothing of ours and asks for nothing we do is somebody else's field.
    outside: outside ?? (ranked.length === 0 && !isOurs && words.words.length > 2 ? 'other' : undefined),
    hotProcess: isHotProcess(words.text),
  };
}

/** Words that only soap makers' questions have. */
const OUR_WORDS =
  /\b(?:soaps?|jabon\w*|jaboncit\w*|batter|masa|mezcla|lye|sosa|soda|lejia|naoh|saponif\w*|bars?|barras?|pastillas?|micas?|pigment\w*|colou?rante?s?|colou?r\w*|oxid\w*|clay|arcilla|trace|traza|swirl|mould|mold|molde|loaf|superfat|curado|cure)\b/u;

/** What is likeliest asked where no turn of phrase tells: a flaw that was told, a colour wished, whether a thing will do. */
function fallbackJob({ things, facts }: Seen, { text }: Words): Job | undefined {
  if (facts.findings > 0 && things.length === 0) return 'diagnose';
  if (
    things.length > 0 ||
    facts.subject !== undefined ||
    /\?|\b(?:can|does|will|puedo|sirve|con|in the batter)\b/u.test(text)
  )
    return 'survives-lye';
  return facts.target !== undefined || /\bsoap for\b|\bjabon (?:para|como|color)\b/u.test(text)
    ? 'mix'
    : undefined;
}

type Seen = {
  readonly things: readonly NamedThing[];
  readonly amounts: readonly ToldAmount[];
  readonly facts: Facts;
};

const SELLING =
  /\b(?:sell|sells|selling|sold|ship|shipping|export\w*|vend\w+|mand(?:o|ar|e|arle)|enviar|envio)\b/u;
const MAY = /\b(?:can i|can we|may i|am i|puedo|podemos|se puede|me dejan|let me)\b/u;
const CAME_OUT =
  /\b(?:salio|salieron|me quedo|me quedaron|quedaron|amanecio|amanecieron|came out|turned out|has gone|have gone|went)\b/u;
const HOW_MANY_NEEDED =
  /\bhow (?:many|much)\b[^?.]*\b(?:do|should|would|must|will) (?:i|we|you)\b|\bcuant[oa]s?\b[^?.]*\b(?:le pongo|le echo|necesito|uso|ocupo|lleva)\b/u;

/** The cues' sums, and what the things and amounts that are named add to them or take away. */
function scoresOf({ text, words }: Words, { things, amounts, facts }: Seen): ReadonlyMap<Job, number> {
  const scores = new Map<Job, number>();
  const add = (job: Job, weight: number) => scores.set(job, (scores.get(job) ?? 0) + weight);
  for (const [job, weight, pattern] of CUES) if (pattern.test(text)) add(job, weight);
  const portioned = amounts.some(({ of }) => of === 'batter' || of === 'oils' || of === 'unsaid');
  const spooned = amounts.some(({ of }) => of === 'powder');
  const named = things.length > 0;
  const oily = facts.oils !== undefined;
  if (named && portioned) add('dose', 2);
  if (named && !portioned && !spooned && /\bhow (?:much|many)\b|\bcuant/u.test(text)) add('dose', 1);
  if (!named) add('dose', -1);
  if (named && spooned && portioned) add('preview', 0.5);
  if (!named && !spooned) add('preview', -1);
  if (oily) add('lye', 1.5);
  else add('lye', -2);
  if (named) add('survives-lye', 0.5);
  if (things.length > 1 && /,/u.test(text)) add('survives-lye', 1);
  if (things.length > 1) add('compare', 0.5);
  if (facts.target !== undefined) add('mix', 1);
  else add('mix', -1);
  if (portioned && !/\?|\bhow much\b|\bcuant/u.test(text)) add('plan', 1);
  if (!portioned) add('plan', -0.5);
  if (facts.findings > 0) add('diagnose', Math.min(1.5, facts.findings * 0.75));
  if (facts.region !== undefined) add('law', SELLING.test(text) ? 3 : MAY.test(text) ? 1.5 : 0.5);
  // What came out wrong is told, not asked about: "salió con venas, lleva dióxido".
  if (facts.findings > 0 && !portioned && CAME_OUT.test(text)) add('diagnose', 3);
  // "How many tsp do I need" of the one thing that is named: the colour wished is known to come of it.
  if (things.length === 1 && portioned && HOW_MANY_NEEDED.test(text)) add('dose', 2.5);
  // "dose ultramarine blue 2 cups" and "turmeric for 1 lb of oils": a colourant and an amount are a dose.
  if (named && portioned && words.length <= 12) add('dose', 0.5);
  return scores;
}

/** Strengths that are shares of full colour in the strengths' own grammar. */
const STRENGTH_TEXT: ReadonlyMap<string, string> = new Map([
  ['double', '200%'],
  ['half', '50%'],
]);

type Command = Pick<Reading, 'command' | 'given' | 'missing'>;

function commandFor(job: Job, question: string, facts: Facts): Command {
  const [thing] = facts.named;
  const wanted = (given: Readonly<Record<string, string | undefined>>, needed: readonly string[] = []) => ({
    given: Object.fromEntries(
      Object.entries(given).filter((entry): entry is [string, string] => entry[1] !== undefined),
    ),
    missing: needed.filter(name => given[name] === undefined),
  });
  switch (job) {
    case 'dose':
      return {
        command: 'dose',
        ...wanted(
          {
            colourant: thing,
            portion: facts.portion,
            carrier: facts.carrier,
            strength: STRENGTH_TEXT.get(facts.strength ?? '') ?? facts.strength,
          },
          ['colourant', 'portion'],
        ),
      };
    case 'wet':
      return { command: 'dose', ...wanted({ colourant: thing, portion: facts.portion }, ['colourant']) };
    case 'survives-lye':
    case 'law':
      return facts.named.length > 1
        ? { command: 'colourant check', ...wanted({ ingredients: facts.named.join(', ') }) }
        : { command: 'colourant check', ...wanted({ item: thing ?? facts.subject }, ['item']) };
    case 'diagnose':
      return { command: 'diagnose', ...wanted({ words: question.slice(0, 5000).trim() }) };
    case 'mix':
      return {
        command: 'match',
        ...wanted(
          { target: facts.target?.text, portion: facts.portion, from: facts.fromShelf ? 'shelf' : undefined },
          ['target'],
        ),
      };
    case 'preview':
      return { command: 'preview', ...wanted({ mix: facts.mix, portion: facts.portion }, ['mix']) };
    case 'lye':
      return {
        command: 'plan',
        ...wanted(
          {
            oils: facts.oils,
            superfat: facts.superfat === undefined ? undefined : String(facts.superfat),
            water: facts.concentration === undefined ? undefined : `${facts.concentration}% lye`,
          },
          ['oils'],
        ),
      };
    case 'plan':
      return {
        command: 'plan',
        ...wanted({ oils: facts.oils, size: facts.size, portions: facts.portions }, ['oils']),
      };
    case 'compare':
      return {
        command: 'compare',
        ...wanted({ first: facts.named[0], second: facts.named[1] }, ['first', 'second']),
      };
    case 'shelf-add':
      return { command: 'shelf add', ...wanted({ item: thing, amount: facts.powder }, ['item']) };
    case 'shelf-use':
      return { command: 'shelf use', ...wanted({ item: thing, amount: facts.powder }, ['item', 'amount']) };
    case 'shelf-show':
      return thing === undefined
        ? { command: 'shelf list', given: {}, missing: [] }
        : { command: 'shelf show', ...wanted({ item: thing }) };
    case 'challenge':
      return { command: 'challenge list', given: {}, missing: [] };
    case 'help':
      return { command: 'help', given: {}, missing: [] };
  }
}
