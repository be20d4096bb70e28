import { unaccented } from '../../text/unaccented.ts';
import { LYE_WORDS } from '../fields/soap-words.ts';
import { staysOut } from '../found/asked/stays-out.ts';
import { lyeTopicIn } from '../lye/topics/topics.ts';
import type { QuestionRead } from '../read.ts';
import { askedOfBench } from './asked/read.ts';
import { asksCause } from './cause-asked.ts';

/** The judge of jobs is so sure of a flaw that its causes are told. */
const SURE_FLAW = 0.9;
/** From here on a command that was asked for is run. */
const SURE_JOB = 0.9;

/** What is asked of a thing of the bench, where neither a dose, a flaw nor a matter of lye is told; undefined elsewhere. Pure. */
export function benchAsked(question: string, read: QuestionRead): ReturnType<typeof askedOfBench> {
  const [reading] = read.readings;
  const asked = askedOfBench(question);
  if (!asked) return undefined;
  const isFlaw = reading?.job === 'diagnose' && reading.score >= SURE_FLAW && read.facts.findings > 0;
  const isDose = reading?.job === 'dose' && read.facts.named.length > 0 && read.facts.portion !== undefined;
  // Of a named colourant a sure command tells more, and another field is no bench of ours.
  const isJob =
    reading !== undefined &&
    reading.job !== 'diagnose' &&
    reading.score >= SURE_JOB &&
    (read.facts.named.length > 0 || read.facts.target !== undefined);
  // Layers and stripes of a size that is told are to be planned.
  const isPlan =
    reading?.job === 'plan' &&
    reading.score >= SURE_JOB &&
    (read.facts.size ?? read.facts.portion) !== undefined;
  // A recipe is told with figures, and says "in that order" of its weights.
  const isRecipe = /\d/u.test(question) && LYE_WORDS.test(unaccented(question));
  if (
    isDose ||
    isJob ||
    isPlan ||
    isRecipe ||
    read.outside !== undefined ||
    (isFlaw && !asked.overFlaw) ||
    asksCause(question, read)
  )
    return undefined;
  return staysOut(question, read) === undefined && lyeTopicIn(question) === undefined ? asked : undefined;
}
