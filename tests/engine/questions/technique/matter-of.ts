import { readQuestion } from '../../../../src/engine/questions/read.ts';
import { benchAsked } from '../../../../src/engine/questions/technique/bench-asked.ts';
import { likeliestIn } from '../../../../src/engine/questions/technique/likely.ts';
import { outrightIn } from '../../../../src/engine/questions/technique/outright/read.ts';

/**
 * What a question is about, as the engine alone reads it: a matter of working with colour in so many words, of a thing of the bench, or
 * the likeliest one, else `job:` with what is asked of a command; undefined where nothing is. The labels of `ordinary/` are the same.
 */
export async function matterOf(question: string): Promise<string | undefined> {
  const read = readQuestion(question);
  const [likeliest] = await likeliestIn(question, read);
  const matter =
    outrightIn(question)?.technique ?? benchAsked(question, read)?.technique ?? likeliest?.matter;
  const job = read.readings[0]?.job;
  return matter ?? (job && `job:${OF_JOB[job] ?? job}`);
}

/** Jobs that the labels name by another word. */
const OF_JOB: Readonly<Record<string, string>> = {
  'survives-lye': 'survives',
  'shelf-add': 'shelf',
  'shelf-use': 'shelf',
  'shelf-show': 'shelf',
};
