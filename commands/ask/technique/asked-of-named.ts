import { unbroken } from '../../../src/engine/over-lines.ts';
import type { Context } from '../../../src/conversation/context.ts';
import type { Reply } from '../../../src/conversation/reply.ts';
import { askedIn } from '../../../src/engine/questions/leaning/before.ts';
import type { QuestionRead } from '../../../src/engine/questions/read.ts';
import { unaccented } from '../../../src/engine/text/unaccented.ts';
import { wordCount } from '../../../src/engine/text/word-count.ts';
import { leanedRun } from '../leaning/leaned-run.ts';

/** Longer questions tell of more than that, words. */
const MOST_WORDS = 9;
/** Asks whether, and not how it is got out again. */
const ASKS_WHETHER = new RegExp(
  unbroken`
    ^\W*(?:and |but |y |pero |con )*(?:do|does|will|would|can|could|is|are|(?:con |el |la |los |
    las )?\p{L}+ (?:se )?(?:me )?(?:mancha|sangra|destin|despint|aguanta))
  `,
  'iu',
);
const IS_CLEANED =
  /(?<!\p{L})(?:out|off|remove|clean|wash|rid|quit\p{L}*|sac\p{L}*|limpi\p{L}*|lav\p{L}*)(?!\p{L})/iu;

/** "Do red oxides stain a bath": what is asked of one colourant by its name, though the words beside it are those of a house. */
export async function askedOfNamedReply(
  question: string,
  { facts }: QuestionRead,
  context: Context,
): Promise<Reply | undefined> {
  const [item, ...others] = facts.named;
  const asked = askedIn(question);
  const text = unaccented(question);
  if (item === undefined || others.length > 0 || asked === undefined || wordCount(question) > MOST_WORDS)
    return undefined;
  if (!ASKS_WHETHER.test(text) || IS_CLEANED.test(text)) return undefined;
  const laid = { job: 'survives-lye', command: 'colourant check', given: { item }, asked } as const;
  const reply = await leanedRun([laid], { context });
  return reply && !('problem' in reply.data) ? reply : undefined;
}
