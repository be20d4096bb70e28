import type { Carrier } from '../../../engine/colourants/colourant.ts';
import type { DoseCautions } from '../../../engine/dosing/cautions.ts';
import { spaced } from '../../../engine/over-lines.ts';
import { practicalSpoons } from '../../../engine/quantities/spoons.ts';
import type { StrengthName } from '../../../engine/quantities/strength.ts';
import type { HarmfulLiquid } from '../../../engine/text/names/carrier-name.ts';
import { numbersIn } from '../../numbers.ts';
import type { RefusalSentences } from '../../sentence.ts';
import { quantities, strengths } from '../quantities.ts';
import { dispersion } from './dispersion.ts';

const { teaspoons, measure } = quantities;
/** The most, in spoons that there are, and none of it more. */
const inSpoons = (most: number): string => measure(practicalSpoons(most, most));
/** A need that nobody spoons out, to a quarter of a teaspoon where it is one or more. */
const about = (needed: number): string =>
  needed < 1 ? measure(practicalSpoons(needed)) : teaspoons(Math.ceil(needed * 4) / 4);
const { millilitres: ml, plain } = numbersIn('en');

type CautionSentences = { readonly [Id in keyof DoseCautions]: (values: DoseCautions[Id]) => string };

const inCarrier = (carrier: Carrier) => dispersion.carriers[carrier];

const lyeChanges: Record<DoseCautions['lye-changes']['behaviour'], string> = {
  conditional: 'holds in some batches and not in others: pour a small test bar first',
  shifts: 'changes colour in lye: pour a small test bar first',
  destroyed: 'loses its colour in lye: expect little or none of it in the bar',
  bleeds: 'bleeds into its neighbours and may stain: not for sharp swirls',
  unknown: 'is untested in lye as far as I know: pour a small test bar first',
};

const cautions: CautionSentences = {
  'raw-batter': () =>
    'Gloves and goggles: raw batter burns skin and eyes for a day or two, washing-up included.',
  dust: () =>
    'Don’t breathe the powder: no draught, dust mask on, and powder under the liquid before any power.',
  'capped-at-ceiling': ({ colourant, said, askedTeaspoons, ceilingTeaspoons }) => {
    const most = `${inSpoons(ceilingTeaspoons)} is the most this portion takes, so that is what I give.`;
    if (said === 'amount') return `You asked for ${teaspoons(askedTeaspoons)} of ${colourant.en}; ${most}`;
    const needed = `would need about ${about(askedTeaspoons)} of ${colourant.en}`;
    return said === 'depth-of-weak-jar'
      ? `Your jar is weak: so deep a colour ${needed}; ${most}`
      : `So deep a colour ${needed}; ${most}`;
  },
  'capped-by-law': ({ colourant, law, percent }) =>
    `${law === 'us' ? 'US' : 'EU'} law allows at most ${plain(percent)} % of the finished bar of ${colourant.en}: the dose is held under that.`,
  'percent-of-oils': ({ colourant, percent, oilsGrams }) =>
    `${plain(percent)} % of ${colourant.en} counts of the oils in this portion (${oilsGrams} g), by weight.`,
  'mix-scaled': ({ percent }) =>
    `Together these colours are too much for one portion: each is cut to ${percent} % of what you asked.`,
  'whites-scaled': ({ percent }) =>
    `All white pigments count together and these are too much: each colour is cut to ${percent} % of what you asked.`,
  'coloured-lather': ({ colourant, ceilingTeaspoons }) =>
    `${colourant.en} above full colour can tint the lather. Never more than ${inSpoons(ceilingTeaspoons)} in this portion.`,
  staining: ({ colourant }) => `${colourant.en} stains hands, cloths and counters, wet or dry.`,
  brittle: ({ ceilingTeaspoons }) =>
    `As little white as does it, never more than ${inSpoons(ceilingTeaspoons)} in this portion: more makes a brittle bar, and heat makes it crackle.`,
  'stick-blend-thickens': () => 'A stick-blended portion thickens: do it last, or pour it first.',
  'froth-cup-only': () => 'The frother is for the cup. Never put it in batter.',
  'dish-test-first': ({ colourant, carrier }) => spaced`
    ${colourant.en} differs from lot to lot: stir a pinch into a dish of water first. Swirls in: water.
    Sits on the bottom: oil, or glycerin. Until then, ${inCarrier(carrier)}.
  `,
  'dish-test-disagrees': ({ colourant, tested, asked }) =>
    `Your dish test of ${colourant.en} pointed to ${inCarrier(tested)}; in ${inCarrier(asked)} expect specks.`,
  'fades-in-light': ({ colourant }) =>
    `${colourant.en} may fade in light: cure and keep the bars in the dark.`,
  'lye-changes': ({ colourant, behaviour }) => `${colourant.en} ${lyeChanges[behaviour]}.`,
  'superfat-rises': ({ from, to }) =>
    `The carrier oil lifts superfat in this portion from about ${plain(from)} % to ${plain(to)} %: a little softer there.`,
  'lye-thins': ({ from, to }) => spaced`
    The carrier water thins the lye in this portion from about ${plain(from)} % to ${plain(to)} %: more
    risk of glycerin rivers if it heats up. Hold that water back from the lye water, but keep at least as
    much water as lye.
  `,
  'portion-small': ({ millilitres }) =>
    `${ml(millilitres)} is too little for spoons: take what clings to the tip of a toothpick, wet in a few drops, or colour 50 ml or more.`,
  'typical-batter': () => 'Converted with a typical batter. Your own recipe gives a closer answer.',
  'premix-strength-unknown': ({ colourant }) =>
    `Nobody says how strong this ${colourant.en} is: start at a quarter, compare, step up, and note what worked.`,
};

const harms: Readonly<Record<HarmfulLiquid, string>> = {
  acid: 'is sour: acid uses up lye, and frees poisonous hydrogen sulfide from ultramarine.',
  bleach: 'destroys colour, and with acids and ammonia gives poisonous gas.',
  lye: 'is caustic: more lye than the recipe counts, and burns.',
  petroleum: 'is no soap oil: lye turns none of it into soap, so it stays in the bar and on the skin.',
};

export const dosing = {
  cautions,
  /** The dish test in a line. */
  dishTest: 'Lots differ: stir a pinch into water first. Sits on the bottom? Take oil or glycerin.',
  /** Standing cautions for whoever has met them in full. */
  brief: {
    'raw-batter': 'Gloves and goggles on.',
    dust: 'No dust.',
  },
  /** The number first: what to spoon, of what, into how much. */
  headline: (v: { spoons: string; colourant: string; portion: string }) =>
    `${v.spoons} ${v.colourant} for ${v.portion}`,
  /** Behind the headline: its grams, the usual strength that was taken, and full colour. */
  usually: (v: { grams: number; strength: StrengthName; full: string }) =>
    `, about ${plain(v.grams)} g: ${strengths[v.strength]}, as most begin; full colour ${v.full}`,
  /** Behind it, of a weight that may be of oils. */
  takenAsBatter: (v: { portion: string; spoons: string }) =>
    `. Taken as batter; ${v.portion} of oils: ${v.spoons}`,
  /** What the spoons of a premix hold, in place of the powder's name. */
  pasteOf: (v: { colourant: string }) => `of your ${v.colourant} paste`,
  grams: (v: { low: number; typical: number; high: number }) =>
    `about ${plain(v.typical)} g (${plain(v.low)} to ${plain(v.high)} g)`,
  weighYourSpoon: (v: { colourant: string }) =>
    `Grams are a wide guess: weigh one level teaspoon of your ${v.colourant} and I can narrow them.`,
  /** How near the ceiling. */
  ceiling: (v: { spoons: string; percent: number }) =>
    `${v.percent} % of the most this portion takes (${v.spoons}).`,
  learnt: (v: { name: string; times: number; usual: string | undefined }) =>
    `“${v.name}” is ${plain(v.times)} times as strong as usual by your own bars${v.usual === undefined ? ': counted in.' : `: a usual jar takes ${v.usual}.`}`,
  /** That the spoons of an answer go by what bars taught of some jars. */
  learntIn: (v: { jars: readonly { name: string; times: number }[] }) =>
    `Counted in, by your own bars: ${v.jars.map(({ name, times }) => `“${name}” is ${plain(times)} times as strong as usual`).join(', ')}.`,
  perMeasure: (v: { perCup: number; perPound: number }) =>
    `That is ${plain(v.perCup)} tsp per cup of batter, or ${plain(v.perPound)} tsp per pound of oils.`,
  shareOfPaste: (v: { percent: number; grams: number; spoons: string }) =>
    `Use ${plain(v.percent)} % of your paste: ${plain(v.grams)} g, or ${v.spoons} of it.`,
  pastes: (v: { count: number; grams: number; spoons: string }) =>
    `Make ${plain(v.count)} times that paste and use all of it: ${plain(v.grams)} g, or ${v.spoons}.`,
  ofPremix: (v: { grams: number; spoons: string }) =>
    `Use ${v.spoons} of the premix, about ${plain(v.grams)} g.`,
};

export const dosingRefusals: Pick<
  RefusalSentences,
  | 'never-meets-lye'
  | 'spoon-weight-out-of-range'
  | 'premix-unreadable'
  | 'premix-out-of-range'
  | 'carrier-unknown'
  | 'carrier-is-fragrance'
  | 'carrier-is-alcohol'
  | 'carrier-harms'
  | 'premix-carrier-twice'
> = {
  'never-meets-lye': ({ colourant }) =>
    `${colourant.en} must never meet lye. Leave it out; take a mica or an oxide of that colour.`,
  'spoon-weight-out-of-range': ({ grams, low, high }) =>
    `A level teaspoon can't weigh ${plain(grams)} g. Weigh one again: ${plain(low)} to ${plain(high)} g is possible.`,
  'premix-unreadable': ({ text }) =>
    `I can't read “${text}” as a premix. Write “30%”, “1 tsp in 1 Tbsp oil”, or “unknown”.`,
  'premix-out-of-range': ({ text }) =>
    `“${text}” is no paste: pigment must be 0.1 to 95 % by weight, or up to 2 parts of powder to 1 of liquid.`,
  'carrier-is-fragrance': ({ text }) => spaced`
    “${text}” is a scent, not a wetting liquid: many scents thicken the batter or turn it brown, and its
    share is limited by law. Wet the colour in a light oil, water or glycerin, and add the scent for itself.
  `,
  'carrier-is-alcohol': ({ text }) =>
    `“${text}” burns and heats the batter: it is no wetting liquid here. Use water, a light oil or glycerin.`,
  'carrier-harms': ({ text, why }) =>
    `“${text}” ${harms[why]} Wet the colour in water, a light oil or glycerin.`,
  'premix-carrier-twice': ({ premix, carrier }) =>
    `Premix “${premix}” and carrier “${carrier}” name different liquids: keep one of them.`,
  'carrier-unknown': ({ text }) => `I don't know “${text}” as a carrier. Use water, oil or glycerin.`,
};
