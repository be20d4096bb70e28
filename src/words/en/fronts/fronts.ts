import { spaced } from '../../../engine/over-lines.ts';
import { numbersIn } from '../../numbers.ts';
import type { RefusalSentences } from '../../sentence.ts';

const { down } = numbersIn('en');

/** What the fronts say themselves: the terminal, and the chat platform's files. */
export const fronts = {
  welcome: (v: { store: string }) => spaced`
    Tintmoot, the local room: no chat server is set, answers come from here, and ${v.store} remembers. Try
    /help, or /dose colourant:"ultramarine blue" portion:"2 cups". Leave with Ctrl-D.
  `,
  pickOne: (v: { most: number }) => `Type a number from 1 to ${v.most} to choose.`,
  nothingAsked: "Ask something: npm run -s ask -- 'how much blue for 2 cups?', or '/help'.",
  leaveAgain: 'Press Ctrl-C once more to leave.',
  goodbye: 'Goodbye.',
};

export type FrontReason =
  | 'line-not-a-command'
  | 'line-quote-open'
  | 'line-not-understood'
  | 'file-not-found'
  | 'line-option-twice'
  | 'file-not-fetched'
  | 'file-too-large';

export const frontsRefusals: Pick<RefusalSentences, FrontReason> = {
  'line-not-a-command': () => 'A command starts with a slash, such as /help.',
  'line-quote-open': ({ option }) => `The quote after “${option}:” never closes: end the value with a ".`,
  'line-not-understood': ({ text }) =>
    `I can't place “${text}”. Write options as name:value, with quotes around values that have spaces.`,
  'file-not-found': ({ path }) =>
    `There is no file at “${path}”. Give the path of a picture on this machine.`,
  'line-option-twice': ({ option }) => `“${option}” is there twice: give it once.`,
  'file-not-fetched': () =>
    'I could not fetch that file: links run out after a while. Please attach it again.',
  'file-too-large': ({ most }) =>
    `That file is too large: at most ${down(most / 1024 / 1024, 0)} MB. A smaller picture is fine.`,
};
