import type { AnswerTo } from '../answer-to.ts';
import type { Technique } from '../topic.ts';
import type { Aspect } from './aspects.ts';
import type { Thing } from './things.ts';

type Name = Thing | Aspect;
type OneOf = Name | readonly Name[];
/** An answer with what it is asked of and what is asked: of each list one has to be said, of `none` nothing. */
export type AskedRow = {
  readonly technique: Technique;
  readonly to: AnswerTo;
  readonly said: readonly OneOf[];
  readonly none?: readonly Name[];
  /** It says more of a flaw than the causes of it would. */
  readonly overFlaw?: true;
};

const BARS = ['bar', 'them'] as const;
/** These make another matter of what is said of bars. */
const NO_BARS = [
  'fluid',
  'lye', 'colour', 'dryPowder', 'scent', 'batter', 'fat', 'water', 'mould', 'tools'] as const;

/** The first that fits counts: what says more stands before what says less. */
export const ASKED_ROWS: readonly AskedRow[] = [
  // What a colour is wetted in.
  {
    technique: 'no-lumps',
    to: { named: 'wet-in-scent' },
    said: ['wetsInScent'],
    none: ['bar', 'alcohol', 'layer'],
  },
  { technique: 'no-lumps', to: { named: 'wet-in-alcohol' }, said: ['wetsInAlcohol'], none: ['scent'] },
  {
    technique: 'no-lumps',
    to: { named: 'wet-in-glycerin' },
    said: ['wetsInGlycerin', ['them', 'colour', 'dryPowder', 'matters']],
    none: ['scent', 'lye', 'bar'],
  },
  {
    technique: 'carrier-counts',
    to: { named: 'water-held-back' },
    said: ['lyeWater', 'heldBack', ['dryPowder', 'colour', 'wetsInGlycerin', 'them', 'water']],
    none: ['scent', 'bar', 'weighs', 'sun', 'fridge'],
  },
  // How much of it.
  {
    technique: 'of-oils-or-soap',
    to: { named: 'colour-scales' },
    said: ['scales', 'colour', 'alike'],
    none: ['without', 'scent', 'lessColour', 'lye'],
  },
  { technique: 'darker-lighter', to: { named: 'without-white' }, said: ['lessColour', 'without'] },
  { technique: 'spoon-or-grams', to: { named: 'pinch' }, said: ['pinch', 'howMuch'], none: ['lye', 'scent'] },
  {
    technique: 'too-much-colour',
    to: { named: 'use-up-strong' },
    said: [['thins', 'saves'], 'tooStrong'],
    none: ['lye', 'batter', 'recipe'],
    overFlaw: true,
  },
  {
    technique: 'whiter-soap',
    to: { named: 'zinc-or-titanium' },
    said: ['zinc', 'white', 'which'],
    none: ['howMuch', 'tools', 'metalCup'],
  },
  {
    technique: 'darker-lighter',
    to: { named: 'salt-and-colour' },
    said: ['salt', ['changesColour', 'colour']],
    none: ['lye', 'scent'],
  },
  {
    technique: 'darker-lighter',
    to: { named: 'batter-or-bar' },
    said: ['batter', 'looksAlike', 'colour'],
    none: ['lye', 'scales', 'howMuch'],
  },
  {
    technique: 'test-colour',
    to: { named: 'repeat-colour' },
    said: ['again', ['colour', 'bar'], 'howDo'],
    none: ['lye', 'gives', 'cleaner', 'tools', 'avoid', 'scent', 'mould'],
  },
  {
    technique: 'store-colours',
    to: { named: 'old-powder' },
    said: ['old', ['dryPowder', 'colour']],
    none: ['bar', 'lye', 'scent', 'batter', 'tooStrong', 'weighs'],
  },
  {
    technique: 'cosmetic-grade',
    to: { named: 'are-natural' },
    said: ['natural', 'dryPowder'],
    none: ['lye', 'which', 'howMuch'],
  },
  // Oils, tools and what is bought.
  {
    technique: 'swirl-temperature',
    to: { named: 'melt-fats' },
    said: ['fat', 'meltsOrNot'],
    none: ['bar', 'howMuch', 'colour', 'scent'],
  },
  { technique: 'slow-oils', to: { named: 'pomace' }, said: ['pomace', 'matters'], none: ['howMuch'] },
  {
    technique: 'kitchen-tools',
    to: { named: 'blender-stuff' },
    said: ['blender', 'blenderStuff'],
    none: ['washes', 'swirl'],
  },
  {
    technique: 'clean-tools',
    to: { named: 'rinse-tools' },
    said: ['cleaner', 'washes', 'tools'],
    none: ['bar'],
  },
  {
    technique: 'clean-tools',
    to: { named: 'rinse-tools' },
    said: ['cleaner', 'tools'],
    none: ['bar', 'lye'],
  },
  { technique: 'buy-where', to: { named: 'buy-lye' }, said: ['lye', 'buysLye'], none: ['howMuch'] },
  {
    technique: 'spoon-or-grams',
    to: { named: 'recipe-in-cups' },
    said: ['recipe', 'cups', 'weighs'],
    none: ['dryPowder'],
  },
  {
    technique: 'water-amount',
    to: { named: 'less-water' },
    said: ['halves', 'water', 'harder'],
    none: ['colour', 'scent'],
  },
  // Pouring.
  {
    technique: 'pot-swirl',
    to: { named: 'how-many-strokes' },
    said: ['swirl', 'strokes'],
    none: ['apart'],
    overFlaw: true,
  },
  {
    technique: 'which-trace',
    to: { technique: 'which-trace' },
    said: ['trace', 'thick', ['swirl', 'layer']],
    none: ['fell', 'apart', 'namedSwirl'],
  },
  {
    technique: 'layers-how',
    to: { named: 'layer-fell' },
    said: ['layer', 'fell'],
    none: ['apart', 'cut'],
    overFlaw: true,
  },
  {
    technique: 'layers-how',
    to: { named: 'layers-apart' },
    said: ['layer', 'apart'],
    none: ['lye'],
  },
  { technique: 'layers-how', to: { named: 'embeds' }, said: ['embed', 'howDo'], none: ['fell', 'fridge'] },
  {
    technique: 'blend-or-stir',
    to: { named: 'air-out' },
    said: ['airBubbles', 'avoid'],
    none: ['lathers', 'lye', 'lyeWater'],
  },
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
    said: ['olive', 'onlyOf', 'soft'],
    none: ['melts', 'lye'],
    overFlaw: true,
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
