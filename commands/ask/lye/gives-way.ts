import type { Context } from '../../../src/conversation/context.ts';
import type { Block } from '../../../src/conversation/reply.ts';
import { givesWay } from '../../../src/engine/questions/lye/topics/gives-way.ts';
import { isLyeMatter } from '../../../src/engine/questions/lye/topics/lye-matter.ts';
import type { QuestionRead } from '../../../src/engine/questions/read.ts';
import { saidNearLye } from '../understood.ts';
import type { LyeFound } from './lye-found.ts';

/**
 * Where a question is surely of a colour that it names, the matter of handling that its words were taken for stands behind the answer
 * instead of in its place, whole where it is acted on; undefined where the matter stays first. `found`: what was read near lye.
 */
export function behindTheAnswer(
  question: string,
  { read, found }: { readonly read: QuestionRead; readonly found: LyeFound },
  { say }: Context,
): readonly Block[] | undefined {
  if (found?.kind !== 'reply') return undefined;
  const matter = saidNearLye(found.understood);
  const way = matter === undefined ? undefined : givesWay(question, { read, matter });
  if (matter === undefined || way !== 'behind') return way && [];
  const asked = isLyeMatter(matter) ? `${say.lyeQuestions.matters[matter]} ` : '';
  return [{ kind: 'text', text: `${asked}${found.headline}`, firm: true }];
}
