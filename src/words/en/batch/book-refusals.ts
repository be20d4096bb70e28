import { spaced } from '../../../engine/over-lines.ts';
import type { RefusalSentences } from '../../sentence.ts';

const orList = new Intl.ListFormat('en', { type: 'disjunction' });
const andList = new Intl.ListFormat('en', { type: 'conjunction' });
const quoted = (names: readonly string[]) => names.map(name => `“${name}”`);

type BookRefusal =
  | 'batch-change-unclear'
  | 'batch-changes-many'
  | 'batch-amount-absurd'
  | 'batch-weights-unreadable'
  | 'batch-weights-many'
  | 'batch-unknown'
  | 'batch-gone'
  | 'batches-full'
  | 'batch-events-full'
  | 'batch-day-unfit'
  | 'batch-day-before-pour'
  | 'batch-portion-unsized'
  | 'batch-portions-many'
  | 'batch-nothing-said'
  | 'batch-two-sources'
  | 'batch-colours-unreadable'
  | 'batch-not-here';

export const bookRefusals: Pick<RefusalSentences, BookRefusal> = {
  'batch-change-unclear': ({ text, colours }) =>
    colours.length === 0
      ? `I can’t read “${text}” as a change: write “2 tsp instead of 1” or “1/2 tsp violet”.`
      : `Which colour is “${text}”? This batch has ${andList.format(quoted(colours))}: name it, such as “2 tsp ${colours[0]}”.`,
  'batch-changes-many': ({ most }) => `At most ${most} changes, apart by commas.`,
  'batch-amount-absurd': ({ text, name }) =>
    `“${text}” is more “${name}” than soap holds together: check the spoons.`,
  'batch-weights-unreadable': ({ text }) =>
    `I can’t read “${text}” as weights: write each bar in grams, such as “112 g, 108 g”.`,
  'batch-weights-many': ({ most }) => `At most ${most} bars at a time.`,
  'batch-unknown': ({ asked, nearest }) => {
    if (asked === '') return 'Your book is empty: keep a pour first with /batch poured.';
    return nearest.length === 0
      ? `There is no batch “${asked}”, and no other yet: keep one with /batch poured.`
      : `There is no batch “${asked}”. Nearest: ${orList.format(quoted(nearest))}.`;
  },
  'batch-gone': () => 'That batch is no longer in your book.',
  'batches-full': ({ most }) => `${most} batches are the most I keep: remove one first.`,
  'batch-events-full': ({ most }) => `${most} notes are the most I keep beside one batch.`,
  'batch-day-unfit': ({ text }) =>
    `“${text}” is no day that has been: write it as 2026-11-03, or “yesterday”.`,
  'batch-day-before-pour': ({ name, date }) =>
    `“${name}” was poured on ${date}: nothing happened to it before that.`,
  'batch-portion-unsized': ({ text }) =>
    `How much batter is “${text}”? Put it first: “2 cups violet 1/2 tsp; 1 cup plain”.`,
  'batch-portions-many': ({ most }) => `At most ${most} portions.`,
  'batch-nothing-said': () =>
    'What did you pour? Plan it with /plan first, name a recipe:, or say it: made:“2 cups violet 1/2 tsp; 1 cup plain”.',
  'batch-two-sources': () => 'Either a recipe:, or what you made in words: not both.',
  'batch-colours-unreadable': ({ text, portions }) => spaced`
    I can’t read “${text}” as a portion and its colour: write
    ${portions.length > 1 ? `“${portions[0]} #6b5aa8”` : '“#6b5aa8”'}. Portions:
    ${andList.format(quoted(portions))}.
  `,
  'batch-not-here': ({ name }) =>
    `“${name}” was poured in another place: it can be shown only in the group where you noted it.`,
};
