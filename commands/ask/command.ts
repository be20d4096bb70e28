import { action, command, type MenuEntry } from '../../src/conversation/command.ts';
import { picture, text } from '../../src/conversation/option.ts';
import { whichOneFollowUps } from '../../src/conversation/typed/asked-again.ts';
import { answerQuestion } from './answer.ts';
import { askFollowUps } from './follow-ups.ts';

const IMAGE = /\.(jpe?g|png|webp|hei[cf]|avif)$/i;

const menu: MenuEntry = {
  name: { en: 'Answer this', es: 'Responder a esto' },
  // It may be somebody else's question: the answer is for who asked for it.
  seenBy: 'asker',
  pace: 'slow',
  access: 'member',
  take({ text: words, attachments }, context) {
    const photo = attachments.find(({ name, mediaType }) =>
      mediaType === undefined ? IMAGE.test(name) : mediaType.startsWith('image/'),
    );
    return answerQuestion({ question: words, photo }, context);
  },
};

export default command(
  'ask',
  action({
    purpose: {
      en: 'Ask in your own words: “how much ultramarine for 2 cups?”',
      es: 'Pregunta con tus palabras: «¿cuánto ultramar para 2 tazas?»',
    },
    // What is asked may be about the asker's own shelf.
    seenBy: 'asker',
    pace: 'slow',
    options: {
      question: text(
        { en: 'Your question, as you would ask a friend', es: 'Tu pregunta, como se la harías a una amiga' },
        { most: 2000 },
      ),
      photo: picture({ en: 'A picture it is about', es: 'Una foto de lo que se trata' }).optional(),
    },
    answer: ({ question, photo }, context) => answerQuestion({ question, photo }, context),
  }),
  { followUps: { ...whichOneFollowUps, ...askFollowUps }, menu },
);
