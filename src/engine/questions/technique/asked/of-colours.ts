import type { AskedRow } from './row.ts';

/** What a colour is wetted in, how much of it goes in, what comes of it. The first that fits counts. */
export const OF_COLOURS: readonly AskedRow[] = [
  // Near lye: led to what is said there.
  {
    technique: 'kitchen-tools',
    to: { lye: 'back-to-food' },
    said: [['tools', 'syringe'], 'otherUse', 'uses'],
    none: ['bar', 'colour', 'batter', 'cleaner', 'white'],
  },
  {
    technique: 'kitchen-tools',
    to: { lye: 'lye-fumes' },
    said: ['fan', 'needs', 'lye'],
    none: ['cures', 'bar'],
  },
  {
    technique: 'lye-nerves',
    to: { lye: 'cooling-lye' },
    said: ['warmWater', 'dissolves', 'lye'],
    none: ['dryPowder', 'colour', 'washes'],
  },
  // What a colour is wetted in.
  {
    technique: 'no-lumps',
    to: { named: 'titanium-water-kind' },
    said: ['titanium', 'smoothInWater'],
    none: ['smoothInOil', 'bar', 'batter'],
  },
  {
    technique: 'no-lumps',
    to: { named: 'titanium-oil-kind' },
    said: ['titanium', 'smoothInOil'],
    none: ['smoothInWater', 'bar', 'batter'],
  },
  {
    technique: 'no-lumps',
    to: { named: 'titanium-which' },
    said: ['titanium', 'notSaid'],
    none: ['lye', 'bar', 'changesColour', 'howMuch'],
  },
  {
    technique: 'mica-settles',
    to: { technique: 'mica-settles' },
    said: ['holder', 'settles', ['dryPowder', 'colour']],
    none: ['lye', 'batter', 'bar', 'mould', 'layer', 'swirl'],
    overFlaw: true,
  },
  {
    technique: 'thick-now',
    to: { named: 'fast-now' },
    said: ['goesHard', 'beforePour'],
    none: ['fat', 'lye'],
    overFlaw: true,
  },
  {
    technique: 'yellow-base',
    to: { technique: 'yellow-base' },
    said: ['yellowed', ['howDo', 'avoid', 'bar', 'them']],
    none: ['dryPowder', 'scent', 'howMuch'],
  },
  {
    technique: 'ash-avoid',
    to: { technique: 'ash-avoid' },
    said: ['ash', 'recurs'],
    none: ['lye', 'shaves', 'washes'],
  },
  {
    technique: 'gel-and-colour',
    to: { technique: 'gel-and-colour' },
    said: [['gel', 'fridge'], 'changesColour'],
    none: ['dryPowder', 'salt', 'batter', 'lye'],
  },
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
    none: ['lye', 'batter', 'recipe', 'rancid'],
    overFlaw: true,
  },
  {
    technique: 'too-much-colour',
    to: { named: 'use-up-strong' },
    said: ['thins', ['dryPowder', 'colour']],
    none: ['lye', 'recipe', 'swirl', 'white'],
  },
  {
    technique: 'whiter-soap',
    to: { named: 'zinc-or-titanium' },
    said: ['zinc', 'white', 'which'],
    none: ['howMuch', 'tools'],
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
    said: ['again', ['colour', 'bar', 'shade'], 'howDo'],
    none: ['lye', 'gives', 'cleaner', 'tools', 'scent', 'mould'],
  },
  {
    technique: 'store-colours',
    to: { named: 'old-powder' },
    said: ['old', ['dryPowder', 'colour']],
    none: ['wetted', 'bar', 'lye', 'scent', 'batter', 'tooStrong', 'weighs'],
  },
  {
    technique: 'cosmetic-grade',
    to: { named: 'are-natural' },
    said: ['natural', 'dryPowder'],
    none: ['lye', 'which', 'howMuch'],
  },
];
