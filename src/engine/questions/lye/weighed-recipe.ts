import { unlessRefused } from '../../refusal.ts';
import { lyeAskedIn, readLyeQuestion } from './question.ts';

/** Whether lye and its oils are weighed in a question, so that it can be checked. Pure. */
export function isWeighedRecipe(question: string): boolean {
  if (!lyeAskedIn(question).weighed) return false;
  const told = unlessRefused(() => readLyeQuestion(question));
  return told?.weighed !== undefined && told.given.oils !== undefined;
}
