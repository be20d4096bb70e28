import type { ReasonId } from '../../../engine/refusal.ts';
import type { RefusalSentences } from '../../sentence.ts';

/** The folds of an answer, by name. */
const names = {
  steps: 'Steps',
  numbers: 'All numbers',
  portions: 'Portions',
  others: 'Other ways',
  why: 'Why',
  colours: 'Colours',
  shelf: 'Shelf',
  safety: 'Safety',
  heat: 'Heat',
  timeline: 'Timeline',
  law: 'Law and sources',
  more: 'More',
};

export const folds = {
  names,
  /** What is commonly asked next. */
  next: {
    preview: 'See the colour',
    otherStrength: 'Another strength',
    dose: 'Dose it',
    plan: 'Plan a batch with it',
    buy: 'What should I buy?',
    open: 'Open a recipe',
    copy: 'Copy it',
  },
  /** The heading of a fold that was opened. */
  opened: (v: { fold: string; answer: string }) => `${v.fold}: ${v.answer}`,
  /** The last line of an answer in the terminal. */
  named: (v: { folds: readonly string[] }) => `Folded: ${v.folds.join(', ')}. Add --all to read it whole.`,
  /** The same where an answer may be opened by its name. */
  openBy: (v: { folds: readonly string[] }) =>
    `Folded: ${v.folds.join(', ')}. Type the name of one to open it, or “all”.`,
  all: 'all',
};

export type FoldReason = Extract<ReasonId, `fold-${string}`>;

export const foldRefusals: Pick<RefusalSentences, FoldReason> = {
  'fold-forgotten': () => 'That answer is too old to open. Ask the question again.',
};
