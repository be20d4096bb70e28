import type { LyeTopic } from '../topic.ts';
import type { Aspect } from './aspects.ts';
import type { Thing } from './things.ts';

/** A matter with what it is asked of and what is asked: of each list one has to be named, of `none` nothing. */
export type AskedRow = {
  readonly topic: LyeTopic;
  readonly of: readonly (Thing | readonly Thing[])[];
  readonly asked: readonly (Aspect | readonly Aspect[])[];
  readonly none?: readonly (Thing | Aspect)[];
};

/** The first that fits counts: what names two things stands before what names one of them. */
export const ASKED_ROWS: readonly AskedRow[] = [
  { topic: 'lye-into-water', of: ['lye', 'water'], asked: ['order'], none: ['oil', 'liquid', 'done'] },
  { topic: 'water-forgotten', of: ['lye', 'noWater', 'oil'], asked: ['done'], none: ['may'] },
  { topic: 'rest-of-lye', of: ['restOfLye'], asked: ['addRest'], none: ['mass', 'later'] },
  { topic: 'spooned-lye', of: ['lye', 'spoon'], asked: ['howMuch'], none: ['uncounted', 'done'] },
  {
    topic: 'clumped',
    of: ['clumpedLye'],
    asked: [],
    none: ['masa', 'lyeWater', 'trace', 'lyeHeavy', 'liquid', 'stored', 'inJug'],
  },
  { topic: 'purity-unknown', of: ['lye', 'unlabelled'], asked: ['may'], none: ['oil'] },
  // Which of two names is which.
  { topic: 'drain-cleaner', of: ['drain'], asked: [['same', 'may']], none: ['sodaAsh'] },
  { topic: 'baking-soda', of: ['bleachSoda'], asked: ['insteadOfLye'], none: ['sodaAsh'] },
  {
    topic: 'caustic-for-soda',
    of: ['bleachSoda', 'lye'],
    asked: [['same', 'swapped', 'may']],
    none: ['sodaAsh', 'trace'],
  },
  {
    topic: 'flakes-or-pearls',
    of: ['lye', 'shape'],
    asked: [['same', 'changesLye']],
    none: ['oil', 'keeps', 'clumpedLye'],
  },
  {
    topic: 'names-of-lye',
    of: ['lye', 'fullNames'],
    asked: ['same'],
    none: ['koh', 'drain', 'oil', 'shape', 'bleachSoda', 'table', 'child', 'changesLye', 'water', 'mass'],
  },
  // How it is reckoned.
  { topic: 'sap-to-naoh', of: ['table'], asked: [['convert', 'changesLye', 'same']] },
  { topic: 'koh-for-naoh', of: ['koh', 'naoh'], asked: ['convert'], none: ['table', 'mass'] },
  { topic: 'soda-or-potash', of: ['koh', 'naoh'], asked: ['which'], none: ['table'] },
  {
    topic: 'soda-or-potash',
    of: ['koh', 'naoh'],
    asked: ['insteadOfOther', 'may'],
    none: ['table', 'mass', 'done', 'bleachSoda', 'sameAmount'],
  },
  { topic: 'koh-and-naoh', of: ['koh', 'naoh'], asked: ['together'], none: ['table', 'mass', 'same'] },
  { topic: 'purity-ignored', of: ['lye', 'purity'], asked: ['nobody'], none: ['mass', 'clumpedLye', 'koh'] },
  { topic: 'strength-and-ratio', of: ['strength', 'ratio', 'lye'], asked: ['same'], none: ['mass'] },
  {
    topic: 'strength-and-ratio',
    of: ['strength', 'lye', 'water'],
    asked: ['convert'],
    none: ['mass', 'table'],
  },
  { topic: 'superfat-from-lye', of: ['superfat', 'lye'], asked: ['old'], none: ['what', 'onWhich', 'mass'] },
  {
    topic: 'superfat-on-which',
    of: [['superfat', 'percent'], 'lye'],
    asked: ['onWhich'],
    none: ['trace', 'lyeWater', 'strength', 'water'],
  },
  { topic: 'superfat-at-trace', of: ['superfat', 'trace'], asked: [['may', 'what', 'same']] },
  {
    topic: 'no-superfat',
    of: ['superfat'],
    asked: ['zero', ['whatHappens', 'may']],
    none: ['howMuch', 'mass'],
  },
  {
    topic: 'superfat-meaning',
    of: ['superfat'],
    asked: [['meaning', 'same']],
    none: ['skin', 'low', 'high', 'whatHappens', 'mass'],
  },
  { topic: 'superfat-high', of: [['superfat', 'percent'], 'skin'], asked: ['tooMuch'], none: ['mass'] },
  { topic: 'superfat-high', of: ['superfat'], asked: ['high', 'tooMuch'], none: ['mass', 'howMuch', 'low'] },
  {
    topic: 'superfat-low',
    of: ['superfat'],
    asked: ['low'],
    none: ['mass', 'howMuch', 'whatHappens', 'zero'],
  },
  { topic: 'lye-roughly', of: ['lye', 'oil'], asked: ['which'], none: ['table', 'superfat', 'koh', 'mass'] },
  {
    topic: 'lye-roughly',
    of: ['lye', 'oil'],
    asked: ['howMuch', 'inGeneral'],
    none: ['table', 'superfat', 'koh'],
  },
  { topic: 'free-alkali-test', of: ['titration', ['bars', 'oil']], asked: [['may', 'signs']] },
  { topic: 'animal-fat', of: ['animalFat', 'lye'], asked: [], none: ['mass', 'noWater'] },
  { topic: 'scale-by-grams', of: ['scale'], asked: ['offByGrams'] },
  // What changes the lye.
  { topic: 'wax-counted', of: ['wax'], asked: ['changesLye'] },
  { topic: 'liquid-lye', of: ['liquid'], asked: ['changesLye'], none: ['lyeHeavy', 'sour'] },
  { topic: 'acid-lye', of: ['acid', 'lye'], asked: ['changesLye'], none: ['superfat', 'lyeHeavy'] },
  {
    topic: 'takes-no-lye',
    of: ['uncounted'],
    asked: ['changesLye'],
    none: ['liquid', 'acid', 'inOil', 'water', 'ofColour'],
  },
  { topic: 'old-oil', of: ['usedOil', 'oil'], asked: ['changesLye'] },
  { topic: 'oil-swapped', of: ['oil'], asked: ['changesLye', 'swapped'], none: ['mass', 'bites'] },
  { topic: 'scale-batch', of: ['recipe', 'water'], asked: ['scaled'], none: ['mass'] },
  { topic: 'lather-without-coconut', of: ['noCoconut'], asked: ['bubbles'] },
  { topic: 'liquid-instead', of: ['otherLiquid'], asked: ['replacesWater'], none: ['mass'] },
  // Lye water and water.
  {
    topic: 'cooling-time',
    of: [['lye', 'lyeWater']],
    asked: ['howLong', 'cools'],
    none: ['oil', 'bars', 'masa'],
  },
  {
    topic: 'lye-water-in-cold',
    of: [['lye', 'lyeWater']],
    asked: ['freezes'],
    none: ['bars', 'milk', 'done'],
  },
  {
    topic: 'lye-water-keeps',
    of: ['lyeWater'],
    asked: ['keeps'],
    none: ['drinkBottle', 'milk', 'done', 'overnight'],
  },
  {
    topic: 'cooling-lye',
    of: ['lye', 'ice', 'water'],
    asked: ['may'],
    none: ['milk', 'done', 'oil', 'bars', 'masa', 'sea', 'smell'],
  },
  {
    topic: 'tap-water',
    of: ['tap'],
    asked: [['may', 'what', 'same', 'whatHappens']],
    none: ['sea', 'clean', 'strength', 'hot'],
  },
  {
    topic: 'water-amount',
    of: ['water'],
    asked: ['waterEffect'],
    none: ['mass', 'uncounted', 'oil', 'percent'],
  },
  { topic: 'water-amount', of: ['strength'], asked: ['waterEffect'], none: ['mass'] },
  { topic: 'vessel', of: ['plastic', 'lye'], asked: ['holds'], none: ['drinkBottle', 'gloves'] },
  // Made soap.
  { topic: 'zap-young', of: ['zap', 'earlyDay'], asked: [], none: ['child', 'sold', 'oil'] },
  { topic: 'lye-heavy-laundry', of: ['lyeHeavy', 'laundry'], asked: [] },
  { topic: 'rebatch-lye-heavy', of: ['lye', 'bars'], asked: ['lowered', 'afterwards'] },
  { topic: 'why-cure', of: ['lye', 'bars'], asked: ['gone', 'howLong'], none: ['lyeHeavy'] },
  {
    topic: 'lye-gone',
    of: ['lye', 'bars', 'cured'],
    asked: ['hold'],
    none: ['wrap', 'lyeHeavy', 'oil', 'child', 'zap'],
  },
  {
    topic: 'lye-on-label',
    of: ['lye', 'label'],
    asked: ['may'],
    none: ['withoutLye', 'unlabelled', 'drain', 'purity', 'keeps', 'same', 'shape'],
  },
  { topic: 'children-cured', of: ['child', 'cured', 'bars'], asked: ['decorate'] },
  { topic: 'when-safe', of: ['bars'], asked: ['whenUse'], none: ['baby'] },
  { topic: 'bars-per-kilo', of: ['bars', 'kilo'], asked: ['howManyBars', 'comeOut'], none: ['colouring'] },
  { topic: 'soda-ash-avoided', of: ['sodaAsh'], asked: ['avoid'], none: ['zap'] },
  { topic: 'mould-stuff', of: ['mould', 'liner'], asked: ['what'], none: ['shape'] },
  { topic: 'sugars', of: ['sugar'], asked: ['bubbles'], none: ['liquid', 'mass'] },
  { topic: 'trace-signs', of: ['trace'], asked: ['signs'], none: ['superfat', 'uncounted'] },
  { topic: 'wrapping', of: ['bars', 'cured'], asked: ['wrap'], none: ['raw'] },
  {
    topic: 'selling',
    of: ['bars'],
    asked: ['sold', 'may', 'atMarket'],
    none: ['named', 'colouring', 'baby', 'raw', 'zap', 'lyeHeavy', 'whenUse', 'uncounted', 'earlyDay'],
  },
  // Out of interest.
  {
    topic: 'lye-smell',
    of: ['lye'],
    asked: ['smell', 'what'],
    none: ['unlabelled', 'bars', 'oil', 'liquid', 'masa'],
  },
  { topic: 'ash-lye-once', of: ['ash'], asked: ['history'], none: ['sodaAsh', 'may'] },
  { topic: 'less-lye-went-in', of: ['lye'], asked: ['less', 'whatHappens'], none: ['oil', 'mass'] },
];
