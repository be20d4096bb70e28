import { action, command } from '../../src/conversation/command.ts';
import { text } from '../../src/conversation/option.ts';
import { fold } from '../../src/engine/text/fold.ts';
import { phrases } from '../../src/words/declared.ts';
import { overview, topicReply } from './answer.ts';
import { topicNames } from './topics.ts';

const says = phrases('help');

export default command(
  'help',
  action({
    purpose: says.purpose,
    seenBy: 'asker',
    options: {
      topic: text(says.topic, { most: 100 }).optional(),
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
