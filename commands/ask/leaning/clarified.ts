import { unbroken } from '../../../src/engine/over-lines.ts';
import { z } from 'zod';
import type { Context } from '../../../src/conversation/context.ts';
import type { Reply } from '../../../src/conversation/reply.ts';
import { colourantsMeant } from '../../../src/engine/colourants/find.ts';
import { asOneText, isOfLye, type Talk } from '../../../src/engine/questions/leaning/before.ts';
import { isStillHurt } from '../../../src/engine/questions/leaning/points-back.ts';
import { thingOf } from '../../../src/engine/questions/leaning/things.ts';
import { lyeAskedIn } from '../../../src/engine/questions/lye/question.ts';
import { unaccented } from '../../../src/engine/text/unaccented.ts';
import { wordCount } from '../../../src/engine/text/word-count.ts';
import { isNothing } from './leaned-back.ts';
import { partReply } from './leaned-part.ts';
import { leanedRun } from './leaned-run.ts';
import { leansOnTalk } from './leans-on-talk.ts';

/** Longer turns tell what they are about, words. */
const MOST_WORDS = 6;
const ASKS = new RegExp(
  unbroken`
    [?¿]|^\W*(?:and |y |ok |so )*(?:how|what|why|which|when|where|who|can|could|do|does|did|is|are|will|
    would|should|como|que|cual\p{L}*|cuant\p{L}*|cuando|donde|por ?que|puedo|puede|se puede|es|son|hay|add|
    undo|show|make)(?!\p{L})
  `,
  'iu',
);

/**
 * The question before once more, with what was told since: "bars feel scratchy, why" that nobody understood, and "paprika" behind it. Undefined
 * where the turn asks for something, or both together are no better understood. Lye is never reckoned from two halves.
 */
export async function clarifiedReply(
  question: string,
  context: Context,
  readAnew: (both: string) => Promise<Reply>,
): Promise<Reply | undefined> {
  const talk = context.lately?.before(context);
  if (!talk?.words || question.startsWith('/') || wordCount(question) > MOST_WORDS) return undefined;
  // What stings is somebody's skin, and no sign of a bar.
  if (ASKS.test(unaccented(question)) || isStillHurt(question)) return undefined;
  const became = await whatBecame(question, talk, context);
  if (became) return became;
  const both = asOneText(talk.words, question);
  if (talk.last.kind === 'command' && talk.last.command === 'diagnose')
    return await diagnosedWith(question, talk, context);
  if (talk.last.kind !== 'open' || talk.subject?.isFresh) return undefined;
  const { amount, weighed } = lyeAskedIn(both);
  if (amount || weighed) return undefined;
  const reply = await readAnew(both);
  const { understood = {} } = reply.data as {
    readonly understood?: { readonly command?: string; readonly lye?: string };
  };
  const isOfRecipe =
    understood.command === 'plan' || understood.lye === 'unsure' || understood.lye === 'stopped';
  if (isOfRecipe || 'problem' in reply.data || isNothing(reply, both, context)) return undefined;
  return leansOnTalk(reply);
}

const BECAME = new RegExp(
  unbroken`
    ^\W*(?:(?:it|its|mine|mi|me|se|has|ha|all|pero|but|y|and|uy|ay|oh|che|hey) )*(?:went|gone|turned|
    came out|looks?|salio|ha salido|quedo|se puso|puso|volvio) (?:\p{L}+ ?){1,4}(?:(?:as soon as|when|once|
    apenas|cuando|al|en cuanto)(?: \p{L}+){1,4})?\W*$
  `,
  'iu',
);
/** "Went blue grey", after how alkanet is wetted: what becomes of it in soap. */
async function whatBecame(question: string, { last }: Talk, context: Context): Promise<Reply | undefined> {
  if (last.kind !== 'command' || isOfLye(last) || !BECAME.test(unaccented(question))) return undefined;
  const item = thingOf(last);
  const isOfColour = item !== undefined && (last.command === 'dose' || last.command === 'colourant check');
  if (!isOfColour || colourantsMeant(item).length !== 1) return undefined;
  return await leanedRun([{ job: 'survives-lye', command: 'colourant check', given: { item } }], { context });
}

const told = z.object({ causes: z.tuple([z.object({ probability: z.number() })], z.unknown()) });
/** From here on one cause is likelier than all the others. */
const HALF = 0.5;
const likeliest = ({ data }: Reply): number => told.safeParse(data).data?.causes[0].probability ?? 0;

/** A flaw of which nothing was decided, with one more thing that is known of it; undefined where that decides nothing. */
async function diagnosedWith(question: string, { last }: Talk, context: Context): Promise<Reply | undefined> {
  // An amount is no sign of a flaw, and a colourant that is named alone is asked of for itself.
  if (/\d|(?<!\p{L})(?:cu[aá]nt[oa]s?|how (?:much|many))(?!\p{L})/iu.test(question)) return undefined;
  if (last.kind !== 'command' || colourantsMeant(question).length > 0) return undefined;
  const before = await context.run('diagnose', { words: last.given.words ?? '' });
  if (before.kind !== 'reply' || likeliest(before) >= HALF) return undefined;
  const part = await partReply('points', last, { question, context });
  return part && likeliest(part) >= HALF ? part : undefined;
}
