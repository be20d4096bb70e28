import { ideaCounts, wordCounts } from '../../../text/learned/hashes.ts';
import type { Features } from '../../../text/learned/model.ts';
import { plainlyElsewhere, withoutLikenesses } from '../../fields/elsewhere.ts';
import { outsideField } from '../../fields/scope.ts';
import { OUR_WORDS } from '../../fields/soap-words.ts';
import { isSurelyOurs } from '../../fields/surely-ours.ts';
import type { Words } from '../../found/words-of.ts';
import { type Found, featuresOf } from '../features.ts';
import { topicOf } from '../topics.ts';

const counted = (name: string, count: number, most: number) => `${name} ${Math.min(count, most)}`;

/** Which matters that are none of ours are spoken of, how much of ours stands beside them, and what plain rules say of it. */
function matters(words: Words, found: Found): readonly string[] {
  const foreign = words.words.flatMap(word => {
    const topics = topicOf(word);
    return topics.length > 0 ? [{ word, topics }] : [];
  });
  const topics = new Set(foreign.flatMap(one => one.topics));
  const ours = words.words.filter(word => OUR_WORDS.test(word)).length;
  const isNamed = found.things.length > 0;
  const isOurs = ours > 0 || isNamed || found.facts.oils !== undefined;
  return [
    counted('foreign words', new Set(foreign.map(({ word }) => word)).size, 3),
    counted('topics', topics.size, 3),
    counted('ours', ours, 2),
    `${foreign.length > 0 ? 'foreign' : 'none foreign'}, ${isOurs ? 'ours' : 'none of ours'}, ${isNamed ? 'named' : 'none named'}`,
    `plainly ${plainlyElsewhere(words.text)}`,
    `by name ${outsideField(withoutLikenesses(words.text))}`,
    ...(isSurelyOurs(words, found) ? ['surely ours'] : []),
    ...[...topics].map(topic => `of ${topic}`),
  ];
}

/** Chosen, with the ridge's strength, by leaving out one writer at a time. */
const LENGTHS = { whole: 1, matters: 1.2 } as const;

/** What tells a job (`ofJob`), the words as they stand (a thing's name too), and the matters that they speak of. */
export const fieldFeaturesOf = (
  words: Words,
  found: Found,
  known: ReadonlySet<number>,
  ofJob = featuresOf(words, found, known),
): Features => [
  ...ofJob,
  { counts: wordCounts(words.words), length: LENGTHS.whole },
  { counts: ideaCounts(matters(words, found)), length: LENGTHS.matters },
];
