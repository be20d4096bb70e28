import { ideaCounts, pieceCounts, wordCounts } from '../../../text/learned/hashes.ts';
import type { Features } from '../../../text/learned/model.ts';
import type { Grounds } from '../grounds.ts';

type GroundsRead = Pick<Grounds, 'tokens' | 'mentions' | 'reading' | 'isPast'>;

/** Ideas count less, since a lexicon knows its own texts better than the next. */
const LENGTHS = { words: 1, pieces: 1, ideas: 0.5 } as const;

/** The ideas of the lexicon, meant or denied. */
const ideasIn = ({ mentions, reading, isPast }: GroundsRead): readonly string[] =>
  mentions
    .filter(({ from }) => !isPast[from])
    .map(({ concept, to }) => (reading.standing[to - 1] === 'yes' ? concept : `not ${concept}`));

/** The features of what a text tells, but for what is long past; marks say nothing. */
export function featuresOf(told: GroundsRead): Features {
  const words = told.tokens
    .filter(({ kind }, at) => kind !== 'mark' && !told.isPast[at])
    .map(({ text }) => text);
  return [
    { counts: wordCounts(words), length: LENGTHS.words },
    { counts: pieceCounts(words), length: LENGTHS.pieces },
    { counts: ideaCounts(ideasIn(told)), length: LENGTHS.ideas },
  ];
}
