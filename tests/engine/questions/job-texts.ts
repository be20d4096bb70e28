import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { amountsIn } from '../../../src/engine/questions/amounts.ts';
import { thingsIn } from '../../../src/engine/questions/entities.ts';
import { factsOf } from '../../../src/engine/questions/facts.ts';
import { CLASSES, type Class } from '../../../src/engine/questions/learned/classes.ts';
import { featuresOf } from '../../../src/engine/questions/learned/features.ts';
import { settled } from '../../../src/engine/questions/settled.ts';
import { wordsOf } from '../../../src/engine/questions/words-of.ts';
import { chatSpelt } from '../../../src/engine/text/spelling/chat-spelling.ts';
import { EXAMPLES } from '../flaws/examples.ts';
import type { Lesson } from '../text/learned/fit.ts';
import { phrasings } from './phrasings.ts';

/** A text with what it asks for. `writer`: whose words they are; one writer is left out at a time. */
export type JobText = {
  readonly text: string;
  readonly label: Class;
  readonly writer: string;
  readonly part: 'question' | 'scope' | 'flaw' | 'own';
};

type TextSet = {
  readonly questions: readonly { readonly text: string; readonly job: string }[];
  readonly scope: readonly { readonly text: string; readonly outside: boolean }[];
  readonly flaws?: readonly { readonly text: string }[];
};

const SETS = [
  'beginner-in-a-hurry',
  'market-seller',
  'three-generations',
  'four-of-one-group',
  'club-of-five',
  'six-voices',
  'station-and-stall',
  'tablet-and-hall',
  'bakery-and-balcony',
  'cab-and-quay',
] as const;

/** Which of the three things one does with a shelf; the sets tell only that it is one. */
const ofShelf = (text: string): Class =>
  /\b(?:used|gast\w+|us[eé]|take|quita\w*|resta\w*|off)\b/iu.test(text)
    ? 'shelf-use'
    : /\b(?:left|queda\w*|have i|do i|tengo|still)\b/iu.test(text)
      ? 'shelf-show'
      : 'shelf-add';

/** Some sets call it a challenge where an earlier answer is called into question. */
const ofChallenge = (text: string): Class =>
  /\b(?:told|wrong|answer|figure|numbers?|dijiste|dices|segur[oa])\b/iu.test(text) ? 'doubt' : 'challenge';

function ofSet(writer: string): readonly JobText[] {
  const file = join(import.meta.dirname, `../../sets/${writer}.json`);
  const set = JSON.parse(readFileSync(file, 'utf8')) as TextSet;
  return [
    ...set.questions.map(
      ({ text, job }): JobText => ({
        text,
        label: job === 'shelf' ? ofShelf(text) : job === 'challenge' ? ofChallenge(text) : (job as Class),
        writer,
        part: 'question',
      }),
    ),
    ...set.scope
      .filter(({ outside }) => outside)
      .map(({ text }): JobText => ({ text, label: 'outside', writer, part: 'scope' })),
    ...(set.flaws ?? []).map(({ text }): JobText => ({ text, label: 'diagnose', writer, part: 'flaw' })),
  ];
}

/** Every text that is learned from. */
export const jobTexts = (): readonly JobText[] => [
  ...SETS.flatMap(ofSet),
  ...phrasings(3).map(({ text, label }): JobText => ({ text, label, writer: 'own', part: 'own' })),
  ...EXAMPLES.filter((_, at) => at % 3 === 0).map(
    ({ text }): JobText => ({ text, label: 'diagnose', writer: 'own', part: 'own' }),
  ),
];

/** How much a text counts: flaws are many and alike. */
const WEIGHTS = { question: 3, scope: 2, flaw: 0.3, own: 1 } as const;

export function lessonOf({ text, label, part }: JobText): Lesson {
  const typed = wordsOf(chatSpelt(text));
  const things = thingsIn(typed);
  const words = settled(typed, things);
  const amounts = amountsIn(words, things);
  const facts = factsOf(text, words, { things, amounts });
  return {
    features: featuresOf(words, { things, amounts, facts }),
    label: CLASSES.indexOf(label),
    weight: WEIGHTS[part],
  };
}
