import { spaced } from '../../../engine/over-lines.ts';
import type { LengthUnit } from '../../../engine/pouring/pour-mould.ts';
import { lengthsIn } from '../../lengths.ts';
import { numbersIn } from '../../numbers.ts';
import type { RefusalSentences } from '../../sentence.ts';

const { one, plain } = numbersIn('en');
const length = lengthsIn('en', 'in');

export const pouring = {
  spooned: (v: { millilitres: number; spoons: string }) => `${plain(v.millilitres)} ml (${v.spoons})`,
  layers: (v: { count: number; volume: string }) => `${v.count} layers of ${v.volume} each`,
  layer: (v: {
    number: number;
    volume: string;
    grams: number;
    each: string | undefined;
    topCm: number | undefined;
    unit: LengthUnit;
  }) =>
    [
      `Layer ${v.number}: ${v.volume}, ${v.grams} g`,
      v.each === undefined ? '' : `${v.each} into each cavity`,
      v.topCm === undefined ? '' : `up to ${length(v.topCm, v.unit)}`,
    ]
      .filter(Boolean)
      .join(', '),
  wedgeLayer: (v: {
    number: number;
    volume: string;
    grams: number;
    low: number;
    high: number;
    unit: LengthUnit;
  }) =>
    `Layer ${v.number}, the wedge: ${v.volume}, ${v.grams} g, from ${length(v.low, v.unit)} to ${length(v.high, v.unit)} high`,
  wedge: (v: { raised: number }) =>
    `Set one long side on a block of ${length(v.raised)} for the first layer; stand it level once that holds.`,
  layerSteps:
    'Let each layer reach a firm trace before the next, and pour over a spoon. Weigh each: 1 ml of batter is about 1 g.',
  wedgeSteps:
    'Wedge the mould so that it cannot slide or tip: raw batter burns. Measure the block at the outer edge.',
  line: (v: { spoons: string; grams: number; name: string }) =>
    `${v.spoons} ${v.name}, about ${plain(v.grams)} g`,
  lineEach: (v: { lines: number; spoons: string }) => `${v.spoons} for each of ${v.lines} lines.`,
  lineArea: (v: { area: number }) => `For ${v.area} cm² through a fine sieve: it should just cover.`,
  lineParts: 'A thick line lets the layers part when the bar is cut. Thinner holds.',
  lineOrigin:
    'By area, from memory: 0.003 g of mica to the square centimetre just covers. Your sieve decides.',
  swirl: (v: { list: string; depth: number; unit: LengthUnit }) =>
    `${v.list}, for the top ${length(v.depth, v.unit)}`,
  swirlWhole: (v: { list: string }) => `${v.list}, swirled right through`,
  swirlShare: (v: { name: string; volume: string; percent: number }) =>
    `${v.name} ${v.volume} (${v.percent} %)`,
  swirlRest: (v: { volume: string; percent: number }) =>
    `The base keeps ${v.volume} of the top (${v.percent} %).`,
  swirlNote:
    'Colours of one thickness share the top as they share its volume; a thicker one stays where it is poured, a thinner one spreads.',
  gradient: (v: { steps: number; deltaE: number }) =>
    `${v.steps} steps that look even, ${one(v.deltaE)} apart`,
  step: (v: { number: number; first: string; second: string; hex: string }) =>
    `${v.number}: ${v.first} of A + ${v.second} of B, ${v.hex}`,
  stepOne: (v: { number: number; pot: 'A' | 'B'; volume: string; hex: string }) =>
    `${v.number}: ${v.volume} of ${v.pot}, ${v.hex}`,
  pots: (v: { a: string; b: string }) => `Pot A: ${v.a}. Pot B: ${v.b}.`,
  potNeeds: (v: { a: string; b: string }) => `You need ${v.a} of A and ${v.b} of B in all.`,
  byParts: (v: { most: number; least: number }) =>
    `Equal parts would jump by ${one(v.most)} at one end and ${one(v.least)} at the other.`,
  gradientAlike: 'The two pots look alike: there is nothing to step between.',
  gradientTitle: 'Even steps',
  plainPot: 'plain batter',
  infusion: (v: { percent: number; hex: string; deltaE: number }) =>
    `Infuse ${v.percent} % of your oils: about ${v.hex}, off by ${one(v.deltaE)}`,
  infusionGrams: (v: { oil: number; plantLow: number; plantHigh: number }) =>
    `That is ${v.oil} g of infused oil, from ${v.plantLow} to ${v.plantHigh} g of dried plant.`,
  infusionHow: spaced`
    Dried plant in a closed jar of oil, 1 part to 5 to 10 by weight: four to six weeks in the dark, or two
    to four hours at 60 °C (140 °F) in a water bath, then strain (common practice).
  `,
  infusionOtherColour:
    'This plant does not lead to that colour, whatever the share: that is as near as it comes.',
  infusionTooWeak:
    'Even all of your oils infused would not be deep enough: more plant to the oil, or a pigment.',
  infusionFirst: 'Pour a test bar first: 20 % of the oils infused',
  infusionFirstWhy:
    'Cured, give me its share and colour, “20% #d9b86a”, and the colour you want: I then say what share it takes. No two plants are alike.',
  infusionCaution:
    'Warm oil over water, never over a flame, and never leave it: hot oil burns, and it catches fire. Fresh plants rot in oil; use dry ones.',
  picture: (v: { list: string }) => `Strip of colours: ${v.list}.`,
};

export const pouringRefusals: Pick<
  RefusalSentences,
  | 'layers-tilt-too-steep'
  | 'swirl-shares-unreadable'
  | 'swirl-shares-over'
  | 'pour-not-a-mould'
  | 'pour-cavity-depth'
  | 'pour-tilt-round'
  | 'swirl-too-deep'
  | 'infusion-bar-unreadable'
  | 'infusion-without-target'
> = {
  'layers-tilt-too-steep': ({ most }) =>
    `That block is too high for these layers: at most ${length(Math.floor(most * 10) / 10)}, or the wedge stands out of the second layer.`,
  'swirl-shares-unreadable': ({ text }) =>
    `I can’t read “${text}” as shares. Write percents, “blue 50%, white 30%”, or parts, “blue 2, white 1”; at most 8 colours.`,
  'swirl-shares-over': ({ percent }) => `Those shares make ${percent} %: a top has 100.`,
  'pour-not-a-mould': ({ text }) =>
    `“${text}” is no mould: give its inside, “25x9x7 cm”, “cylinder 8x25 cm” or “12 cavities x 100 ml”.`,
  'pour-cavity-depth': () => 'How deep is one cavity? Add it: “12 cavities x 100 ml, 3 cm deep”.',
  'pour-tilt-round': ({ shape }) => spaced`
    ${shape === 'cylinder' ? 'A round mould' : 'A tray of cavities'} sets no even wedge when tilted: pour
    level layers there, or take a loaf or slab mould for the wedge.
  `,
  'swirl-too-deep': ({ most }) => `That is deeper than the mould: at most ${length(most)}.`,
  'infusion-bar-unreadable': ({ text }) =>
    `I can’t read “${text}” as a bar. Give the share of infused oil, then its colour: “20% #d9b86a”.`,
  'infusion-without-target': () => 'Say the colour you want too, target: “#c79a3c” or “mustard”.',
};
