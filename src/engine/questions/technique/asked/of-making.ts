import type { AskedRow } from './row.ts';

/** Oils, tools, what is bought, and how batter is poured. The first that fits counts. */
export const OF_MAKING: readonly AskedRow[] = [
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
  {
    technique: 'kitchen-tools',
    to: { lye: 'mould-stuff' },
    said: ['container', 'poursInto'],
    none: ['store', 'cures'],
  },
  // Pouring.
  { technique: 'pot-time', to: { technique: 'pot-time' }, said: ['batter', 'staysFluid'], none: ['lye'] },
  {
    technique: 'pot-swirl',
    to: { named: 'how-many-strokes' },
    said: ['swirl', 'strokes'],
    none: ['apart'],
    overFlaw: true,
  },
  {
    technique: 'what-is-trace',
    to: { technique: 'what-is-trace' },
    said: ['trace', 'asksWhat'],
    none: ['swirl', 'layer', 'colour', 'lye', 'bar', 'falsely'],
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
    to: { named: 'layer-fell' },
    said: ['layer', 'mixes'],
    none: ['apart', 'cut', 'dryPowder'],
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
];
