import type { AskedRow } from './row.ts';

const BARS = ['bar', 'them'] as const;
/** These make another matter of what is said of bars. */
const NO_BARS = [
  'fluid',
  'fridge',
  'food',
  'lye',
  'colour',
  'dryPowder',
  'scent',
  'batter',
  'fat',
  'water',
  'mould',
  'tools',
] as const;

/** The loaf in its mould, the bars and their cure. The first that fits counts. */
export const OF_BARS: readonly AskedRow[] = [
  // The loaf.
  {
    technique: 'cover-mould',
    to: { named: 'fridge-mould' },
    said: ['fridge', 'puts'],
    none: ['food', 'lye', 'colour', 'fat', 'store', 'scent'],
  },
  {
    technique: 'make-it-gel',
    to: { named: 'cold-room' },
    said: ['cold', 'setsOrNot'],
    none: ['colour', 'lye', 'melts'],
  },
  {
    technique: 'demould-cut',
    to: { named: 'cut-with' },
    said: ['cut', 'knife'],
    none: ['lines', 'layer', 'apart', 'whenOrHow'],
  },
  {
    technique: 'demould-cut',
    to: { named: 'cut-with' },
    said: ['cut', 'knife', 'which'],
    none: ['lines', 'layer', 'apart'],
  },
  { technique: 'cure-time', to: { named: 'stamp-when' }, said: ['stamp', 'whenOrHow'], none: ['scent'] },
  {
    technique: 'ash-avoid',
    to: { named: 'plane-bars' },
    said: ['shaves', ['bar', 'them', 'ash'], 'whenOrHow'],
    none: ['scraps', 'lye', 'layer'],
  },
  {
    technique: 'gel-and-colour',
    to: { technique: 'gel-and-colour' },
    said: ['gel', 'meansOrWhy'],
    none: ['glycerin', 'avoid', 'dryPowder', 'fridge'],
  },
  {
    technique: 'rebatch-colour',
    to: { named: 'scraps' },
    said: ['scraps', 'usesUp'],
    none: ['lye', 'colour'],
  },
  {
    technique: 'botanicals',
    to: { named: 'scrub' },
    said: ['grit', 'fineEnough'],
    none: ['apart', 'scraps'],
  },
  // The cure.
  {
    technique: 'cure-time',
    to: { named: 'olive-soft' },
    said: ['olive', 'onlyOf', 'softness'],
    none: ['melts', 'lye'],
    overFlaw: true,
  },
  {
    technique: 'demould-cut',
    to: { lye: 'after-pour' },
    said: ['softness', 'fewDays', ['bar', 'them']],
    none: ['lye', 'olive', 'dryPowder', 'salt', 'water'],
    overFlaw: true,
  },
  {
    technique: 'demould-cut',
    to: { named: 'salt-hardens' },
    said: ['salt', 'harder'],
    none: ['colour', 'scent'],
  },
  {
    technique: 'cure-time',
    to: { named: 'cure-outside' },
    said: ['sun', 'cures'],
    none: ['lye', 'dryPowder'],
  },
  {
    technique: 'cure-time',
    to: { named: 'damp-room' },
    said: ['damp', ['store', 'cures', 'puts'], ['bar', 'them', 'cures', 'store']],
    none: ['lye', 'colour'],
  },
  {
    technique: 'cure-time',
    to: { named: 'cured-when' },
    said: ['knowsWhen', 'cured'],
    none: ['lye', 'colour', 'dryPowder'],
  },
  {
    technique: 'cure-time',
    to: { named: 'start-when' },
    said: ['occasion', 'start'],
    none: ['lye', 'howMuch'],
  },
  {
    technique: 'children-colours',
    to: { named: 'sensitive-skin' },
    said: ['sensitive', 'suits'],
    none: ['lye'],
  },
  {
    technique: 'cure-time',
    to: { named: 'give-when' },
    said: ['gives', 'when', BARS],
    none: ['lye', 'recipe', 'start'],
  },
  {
    technique: 'cure-time',
    to: { technique: 'cure-time' },
    said: ['curesHowLong'],
    none: [
      'lye',
      'colour',
      'dryPowder',
      'scent',
      'fat',
      'tools',
      'batter',
      'mould',
      'water',
      'swirl',
      'layer',
    ],
  },
  {
    technique: 'cure-time',
    to: { named: 'store-bars' },
    said: ['store', 'inWhat', BARS],
    none: NO_BARS,
  },
  { technique: 'cure-time', to: { named: 'store-bars' }, said: ['howLongKeeps', 'bar'], none: NO_BARS },
];
