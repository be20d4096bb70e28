import { action, command } from '../../src/conversation/command.ts';
import { text } from '../../src/conversation/option.ts';
import { fold } from '../../src/engine/text/fold.ts';
import { overview, topicReply } from './answer.ts';
import { topicNames } from './topics.ts';

export default command(
  'help',
  action({
    purpose: { en: 'What I can do, and how to ask', es: 'Qué sé hacer y cómo preguntarme' },
    seenBy: 'asker',
    options: {
      topic: text(
        {
          en: 'A command, an option, a word of the trade or a caution: “plan”, “trace”, “lye”',
          es: 'Una orden, una opción, una palabra del oficio o un aviso: «plan», «traza», «sosa»',
        },
        { most: 100 },
      ).optional(),
    },
    completes: {
      topic: (typed, context) =>
        topicNames(context)
          .filter(name => fold(name).includes(fold(typed)))
          .slice(0, 25)
          .map(name => ({ name, value: name })),
    },
    answer: ({ topic }, context) =>
      topic === undefined || topic.trim() === '' ? overview(context) : topicReply(topic, context),
  }),
  { listsCommands: true },
);
