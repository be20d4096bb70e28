import { z } from 'zod';
import { followUp } from '../../src/conversation/command.ts';
import type { Context } from '../../src/conversation/context.ts';
import { readCommandLine } from '../../src/conversation/typed/command-line.ts';
import { isLyeMatter } from '../../src/engine/questions/lye/topics/lye-matter.ts';
import { isTechnique } from '../../src/engine/questions/technique/topic.ts';
import { cut } from '../../src/engine/text/excerpt.ts';
import { askedLineOf } from '../../src/records/asked/index.ts';
import { topicReply } from './lye/matter.ts';
import { techniqueAnswer } from './technique/technique-answer.ts';
import { shown } from './understood.ts';

const line = { line: z.string() };

/** Answers a line as it would be typed, or a question in plain words. */
async function answerLine(typed: string, context: Context) {
  if (!typed.trim().startsWith('/')) return context.run('ask', { question: typed });
  const { path, options } = readCommandLine(typed, () => undefined);
  const command = path.join(' ');
  const given = Object.fromEntries(options.map(({ name, text }) => [name, text]));
  const answer = await context.run(command, given);
  // What was meant after all is what the next turn leans on.
  return answer.kind === 'reply'
    ? { ...answer, data: { understood: { command, given }, ...answer.data } }
    : answer;
}

/** Runs one of the lines that a question was read as. */
const run = followUp({
  seenBy: 'asker',
  pace: 'slow',
  args: { ...line, at: z.string().transform(Number) },
  async answer({ line: id, at }, context) {
    const { candidates } = await askedLineOf(context.shelf, id);
    return answerLine(candidates[at] ?? '/help', context);
  },
});

/** What came back from the form: a command, or the question in other words. */
const changed = followUp({
  seenBy: 'asker',
  pace: 'slow',
  args: line,
  answer: (_args, context, { fields }) =>
    answerLine(typeof fields.line === 'string' ? fields.line : '', context),
});

/** The line that a question was read as, in a form to change it. */
const change = followUp({
  seenBy: 'asker',
  opensForm: true,
  args: line,
  async answer({ line: id }, context) {
    const { candidates } = await askedLineOf(context.shelf, id);
    const { ask } = context.say;
    return {
      kind: 'form',
      title: ask.change,
      fields: [
        {
          kind: 'paragraph',
          name: 'line',
          label: ask.changeLabel,
          required: true,
          most: 3000,
          value: cut(candidates[0] ?? '', 3000),
        },
      ],
      follow: changed.with({ line: id }),
    };
  },
});

/** Answers the matter of lye that somebody says they meant; a button may be older than its matter. */
const matter = followUp({
  seenBy: 'asker',
  args: { topic: z.string() },
  answer: ({ topic }, context) => shown(topicReply(isLyeMatter(topic) ? topic : 'unsure', context)),
});

/** Answers the technique that somebody says they meant. */
const technique = followUp({
  seenBy: 'asker',
  args: { technique: z.string() },
  answer: ({ technique: id }, context) =>
    shown(isTechnique(id) ? techniqueAnswer(id, '', context) : topicReply('unsure', context)),
});

export const askFollowUps = { run, change, changed, matter, technique };
