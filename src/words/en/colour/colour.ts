import type { Miss } from '../../../engine/colour/matching/match-miss.ts';
import type { BaseShade } from '../../../engine/colour/mixing/base-soap.ts';
import type { ColourWord } from '../../../engine/colour/reading/plain-words.ts';
import { numbersIn } from '../../numbers.ts';
import type { RefusalSentences } from '../../sentence.ts';

const { plain } = numbersIn('en');
const names: Record<ColourWord, string> = {
  white: 'white',
  cream: 'cream',
  ivory: 'ivory',
  beige: 'beige',
  tan: 'tan',
  brown: 'brown',
  'dark-brown': 'dark brown',
  'reddish-brown': 'reddish brown',
  black: 'black',
  charcoal: 'charcoal',
  grey: 'grey',
  'light-grey': 'light grey',
  'pale-pink': 'pale pink',
  pink: 'pink',
  'hot-pink': 'hot pink',
  'dusty-rose': 'dusty rose',
  rose: 'rose',
  red: 'red',
  'dark-red': 'dark red',
  maroon: 'maroon',
  brick: 'brick red',
  coral: 'coral',
  peach: 'peach',
  orange: 'orange',
  'burnt-orange': 'burnt orange',
  gold: 'gold',
  mustard: 'mustard',
  yellow: 'yellow',
  'pale-yellow': 'pale yellow',
  olive: 'olive',
  'olive-green': 'olive green',
  lime: 'lime',
  'bright-green': 'bright green',
  green: 'green',
  'dark-green': 'dark green',
  sage: 'sage',
  mint: 'mint',
  teal: 'teal',
  turquoise: 'turquoise',
  'pale-blue': 'pale blue',
  'sky-blue': 'sky blue',
  blue: 'blue',
  'dusty-blue': 'dusty blue',
  'deep-blue': 'deep blue',
  navy: 'navy',
  periwinkle: 'periwinkle',
  lavender: 'lavender',
  lilac: 'lilac',
  violet: 'violet',
  'deep-violet': 'deep violet',
  purple: 'purple',
  plum: 'plum',
  mauve: 'mauve',
  magenta: 'magenta',
};

const bases: Record<BaseShade, string> = {
  white: 'white base',
  cream: 'cream base',
  yellow: 'yellow base',
  green: 'green base (olive)',
  deep: 'deep yellow base',
};

const misses: Record<Miss['why'], string> = {
  'not-vivid-enough': 'Nothing in this choice is that vivid; this is as near as spoons get.',
  'not-light-enough': 'Nothing in this choice gets that light; this is as near as spoons get.',
  'not-dark-enough': 'Nothing in this choice gets that dark; this is as near as spoons get.',
  'other-hue': 'Nothing in this choice has that hue; this is the nearest one.',
  'too-vivid': 'This choice has nothing dull enough for it.',
};

export const colour = {
  names,
  bases,
  misses,
  dullIt: 'A touch of brown or black would help.',
  gelled: 'gelled',
  notGelled: 'not gelled',
  plusMinus: (v: { units: string }) =>
    `Give or take ${v.units} colour units (2 is just visible, 10 is another shade).`,
  pearl: 'Pearl: the look changes with the angle, and soap hides most of the shine.',
  fluorescent: 'Glows in daylight: brighter in the hand than on this screen.',
  offScreen: 'More vivid than a screen can show; this is the nearest it can.',
  estimate: 'Estimated from the kind of colourant: one test bar of yours narrows it.',
  measured: 'From published spectra; its strength in your soap is still estimated.',
  calibrated: 'From your own test bars.',
  translucent: 'Soap is translucent: thin slices look lighter than the bar.',
  changedByLye: 'Lye changes this colour: shown is what is left in the cured bar.',
  short: (v: { amount: string }) => `${v.amount} more than is on your shelf.`,
  atBound: 'These bars say the jar is over six times off its kind: check the doses and the readings.',
  poorFit: 'No strength of this colourant explains these bars: check which jar, the doses and the light.',
};

export const colourRefusals: Pick<
  RefusalSentences,
  | 'match-without-colourants'
  | 'match-too-many-colourants'
  | 'calibration-without-bars'
  | 'calibration-dose-unusable'
> = {
  'match-without-colourants': () =>
    'There is nothing to choose from: add a colourant to your shelf, or ask from the catalogue.',
  'match-too-many-colourants': ({ most }) =>
    `I mix 1 to ${most} colourants beside a white: ask for a number in that range.`,
  'calibration-without-bars': () =>
    'I need at least one bar with colour in it: give its dose and its colour, such as “1/4 tsp per cup, #8a6fb0”.',
  'calibration-dose-unusable': ({ grams }) =>
    `${plain(grams)} g in 100 g of batter is not a dose: give each bar's real dose, 0 for a plain bar.`,
};
