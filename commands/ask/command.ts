import { action, command, type MenuEntry } from '../../src/conversation/command.ts';
import { picture, text } from '../../src/conversation/option.ts';
import { isPicture } from '../../src/conversation/question.ts';
import { whichOneFollowUps } from '../../src/conversation/typed/asked-again.ts';
import { phrases } from '../../src/words/declared.ts';
import { answerQuestion } from './answer.ts';
import { askFollowUps } from './follow-ups.ts';

const says = phrases('ask');

const menu: MenuEntry = {
  name: says.menu,
  // It may be somebody else's question: the answer is for who asked for it.
  seenBy: 'asker',
  pace: 'slow',
  access: 'member',
  take({ text: words, attachments }, context) {
    const photo = attachments.find(isPicture);
    return answerQuestion({ question: words, photo }, context);
  },
};

export default command(
  'ask',
  action({
    purpose: says.purpose,
    // What is asked may be about the asker's own shelf.
    seenBy: 'asker',
    pace: 'slow',
    options: {
      question: text(says.question, { most: 2000 }),
      photo: picture(says.photo).optional(),
    },
    answer: ({ question, photo }, context) => answerQuestion({ question, photo }, context),
  }),
  { followUps: { ...whichOneFollowUps, ...askFollowUps }, menu },
);
