import { askedTopicIn } from '../../../../../src/engine/questions/lye/topics/asked/read.ts';
import { givesWay } from '../../../../../src/engine/questions/lye/topics/gives-way.ts';
import { generalMatter } from '../../../../../src/engine/questions/lye/topics/nearest/general.ts';
import type { LyeTopic } from '../../../../../src/engine/questions/lye/topics/topic.ts';
import { lyeTopicIn } from '../../../../../src/engine/questions/lye/topics/topics.ts';
import { readQuestion } from '../../../../../src/engine/questions/read.ts';

/** The matter of lye that a question is about, as the engine alone reads it; undefined where it is about none, or gives way to what else is asked. */
export async function matterOf(question: string): Promise<LyeTopic | undefined> {
  const read = readQuestion(question);
  const found = lyeTopicIn(question) ?? askedTopicIn(question);
  const general = await generalMatter(question, { found, read });
  const matter = general?.topic ?? found;
  return matter === undefined || givesWay(question, { read, matter }) !== undefined ? undefined : matter;
}
