/*
 * Weighs both judges of the field together, by chances of writers that neither learned from: `node tests/engine/questions/write-together.ts`;
 * a quarter of an hour on one core. Prints how many lines of each writer are then judged wrongly.
 */
import { writeFileSync } from 'node:fs';
import { signsOf } from '../../../src/engine/questions/fields/field-of.ts';
import { wordsOf } from '../../../src/engine/questions/found/words-of.ts';
import { CLASSES } from '../../../src/engine/questions/learned/classes.ts';
import { FIELDS } from '../../../src/engine/questions/learned/field/read.ts';
import { type Signs, termsOf } from '../../../src/engine/questions/learned/field/together.ts';
import { logChances } from '../../../src/engine/text/learned/model.ts';
import { chatSpelt } from '../../../src/engine/text/spelling/chat-spelling.ts';
import { minimise } from '../hazards/emergencies/minimise.ts';
import { fitModel } from '../text/learned/fit.ts';
import { FIELD_FIT, FIT } from './fit-jobs.ts';
import { type JobText, jobTexts, lessonsOf } from './job-texts.ts';

const FOLDS = 6;
/** What is asked of our jobs is plainer than lines that were written to be hard to tell. */
const OF_JOBS = 0.35;
const ROUNDS = 100;

const texts = jobTexts();
const { lessonOf, fieldLessonOf } = lessonsOf(texts);
const writers = [...new Set(texts.map(({ writer }) => writer))].filter(writer => writer !== 'own').toSorted();

function signsIn({ text }: JobText, elsewhere: number, jobs: readonly number[]): Signs {
  const outside = CLASSES.indexOf('outside');
  const job = Math.max(...jobs.filter((_, at) => at !== outside));
  return signsOf(wordsOf(chatSpelt(text)), { elsewhere, noJob: jobs[outside]!, job });
}

type Judged = { readonly text: JobText; readonly terms: readonly number[] };

function judgedIn(fold: number): readonly Judged[] {
  const left = new Set(writers.filter((_, at) => at % FOLDS === fold));
  const taught = texts.filter(({ writer }) => !left.has(writer));
  const ofFields = fitModel(taught.map(fieldLessonOf), FIELD_FIT);
  const ofJobs = fitModel(taught.map(lessonOf), FIT);
  return texts
    .filter(({ writer, part }) => left.has(writer) && part !== 'flaw')
    .map(text => {
      const elsewhere = Math.exp(
        logChances(fieldLessonOf(text).features, ofFields)[FIELDS.indexOf('elsewhere')]!,
      );
      const jobs = logChances(lessonOf(text).features, ofJobs).map(Math.exp);
      return { text, terms: [1, ...termsOf(signsIn(text, elsewhere, jobs))] };
    });
}

const judged = Array.from({ length: FOLDS }, (_, fold) => judgedIn(fold)).flat();
const sumOf = (weights: ArrayLike<number>, { terms }: Judged): number =>
  terms.reduce((sum, term, at) => sum + term * weights[at]!, 0);

const weights = minimise(new Float64Array(judged[0]!.terms.length), ROUNDS, (at, slope) => {
  slope.fill(0);
  let loss = 0;
  for (const one of judged) {
    const [is, weight] = [one.text.label === 'outside' ? 1 : 0, one.text.part === 'scope' ? 1 : OF_JOBS];
    const chance = 1 / (1 + Math.exp(-sumOf(at, one)));
    loss -= weight * Math.log(is === 1 ? chance : 1 - chance);
    for (const [term, value] of one.terms.entries()) slope[term]! += weight * (chance - is) * value;
  }
  return loss;
});

for (const writer of writers) {
  const own = judged.filter(({ text }) => text.writer === writer && text.part === 'scope');
  const wrong = own.filter(one => sumOf(weights, one) > 0 !== (one.text.label === 'outside'));
  if (own.length > 0) console.info(`${writer}: ${wrong.length} of ${own.length} wrong`);
}
const [intercept, elsewhere, noJob, job, craft, named] = [...weights].map(one => Number(one.toFixed(4)));
const origin = 'write-together.ts: chances of six folds of writers, each judged by what the others taught';
writeFileSync(
  new URL('../../../src/engine/questions/learned/field/together.json', import.meta.url),
  `${JSON.stringify({ origin, intercept, elsewhere, noJob, job, craft, named }, undefined, 2)}\n`,
);
