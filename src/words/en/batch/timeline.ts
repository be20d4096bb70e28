import type { PrepSteps, StirredIn, Trace, Wetting } from '../../../engine/batch/planning/prep-step.ts';
import { spaced } from '../../../engine/over-lines.ts';
import { OUNCE_G } from '../../../engine/quantities/units.ts';
import { capital, midSentence } from '../../../engine/text/capital.ts';
import { numbersIn } from '../../numbers.ts';
import { degrees } from '../../temperatures.ts';
import { dispersion } from '../colourants/dispersion.ts';
import { quantities } from '../quantities.ts';
import { batch } from './batch.ts';

const { down, millilitres: ml, one } = numbersIn('en');
const COLOUR = 'its colour';
const COLOURS = 'its colours';
/** Ounces are rounded down: nobody weighs more lye than the grams say. */
const ounces = (grams: number) => down(grams / OUNCE_G, 2);
const weight = (grams: number) => `${one(grams)} g (${ounces(grams)} oz)`;
const spoons = quantities.measure;
const liquid = ({ carrier, carrierSpoons, oil, dipped }: Wetting) => {
  const measure = spoons(carrierSpoons);
  const named = (oil && midSentence(oil.en)) ?? (dipped ? 'oil' : dispersion.carriers[carrier]);
  return `${measure} ${named}${dipped ? ' dipped from the batch' : ''}`;
};
/** The colours of a cup; a cup that is called after them need not name them twice. */
const what = ({ name, colours, called }: StirredIn) => {
  const cup = 'told' in name ? name.told.toLowerCase() : '';
  const told = called.every(one => cup.includes(one.en.toLowerCase()));
  if (told) return colours.length === 1 ? COLOUR : COLOURS;
  return colours.map(one => midSentence(one.en)).join(', ');
};
const additive = (id: keyof typeof batch.additives) => batch.additives[id];

const portion = batch.portionName;

const traces: Readonly<Record<Trace, string>> = {
  emulsion: 'just emulsified',
  light: 'light trace',
  medium: 'medium trace',
};

type StepSentences = { readonly [Id in keyof PrepSteps]: (values: PrepSteps[Id]) => string };

const steps: StepSentences = {
  'gear-on': () => 'Goggles, gloves, long sleeves. Children and pets out.',
  'soak-colour': v =>
    `Soak ${spoons(v.spoons)} ${midSentence(v.colour.en)} in ${liquid(v)}. Stir each time you pass.`,
  ...batch.jug.steps,
  'weigh-oils': v => `Weigh the oils: ${weight(v.grams)} in all.`,
  'melt-oils': v => `Melt the hard oils, then bring all to about ${degrees(v.startC)}.`,
  'dip-oil': v => `Dip out ${weight(v.grams)} of oil for the colours, before any lye.`,
  'froth-colour': v =>
    `Stir ${spoons(v.spoons)} ${midSentence(v.colour.en)} under ${liquid(v)} by hand, then froth it smooth in the cup.`,
  'stir-colour': v => `Stir ${spoons(v.spoons)} ${midSentence(v.colour.en)} into ${liquid(v)}.`,
  'stir-in-passing': v =>
    v.count === 1 ? 'Stir the soaking colour again.' : 'Stir the soaking colours again.',
  'line-mould': () => 'Line the mould. Lay out cups, spoons, whisk and spatulas.',
  'warm-oven': v => `Warm the oven to ${degrees(v.ovenC)}.`,
  'check-temperatures': v =>
    v.coldLye
      ? `Check: oils near ${degrees(v.startC)}. The lye in its liquid stays cold, below 40 °C (104 °F): do not warm it. All weighed, all within reach.`
      : `Check: oils and lye water near ${degrees(v.startC)}. All weighed, all within reach.`,
  'lye-into-oils': v => `Lye water into the oils. Blend in short bursts to ${traces[v.trace]}.`,
  'add-additive': v => `Stir in ${weight(v.grams)} ${additive(v.additive)}.`,
  split: v =>
    `Split: ${v.portions.map(({ name, millilitres }) => `${portion(name)} ${ml(millilitres)}`).join(', ')}.`,
  'whisk-portion': v => `“${capital(portion(v.name))}”: whisk in ${what(v)}.`,
  'stick-blend-portion': v =>
    `“${capital(portion(v.name))}”: stick-blend ${what(v)} in, short bursts. It thickens: keep it for last.`,
  'scent-portion': v => `“${capital(portion(v.name))}”: stir in ${weight(v.grams)} fragrance by hand.`,
  'pour-in-the-pot': () =>
    'Pour the colours back into the pot at a few spots, one turn with the spatula, then into the mould.',
  'pour-drop': () => 'Base into the mould first; drop thin lines of colour into it from a height.',
  'pour-layered': v =>
    `Pour in layers: ${v.order.map(portion).join(', then ')}. Thickest first; each must carry the next: pour over a spatula.`,
  'pour-hanger': () => 'Pour the colours side by side or in turns, then draw the hanger through in loops.',
  'into-tub': () => 'Scrape it into the tub and smooth the top.',
  'pour-single': () => 'Pour into the mould and tap out the air.',
  'leave-open': () => 'Leave it on the bench, lightly covered.',
  'keep-cool': () =>
    'Keep it cool: uncovered, air all round, a fan if you have one. White crackles when it overheats.',
  wrap: () => 'Cover and wrap it in towels.',
  'too-hot-to-wrap': v => spaced`
    Do not wrap it or put it in the oven: the core would reach about ${degrees(v.peakC)}. Leave it
    uncovered, air all round, a tray under it; look every quarter of an hour.
  `,
  'into-oven': v => `Oven off (it was at ${degrees(v.ovenC)}), mould in, door shut. Leave it overnight.`,
  'into-fridge': () => 'Into the fridge, away from food, labelled.',
  'watch-heat': v =>
    `Hottest about now (core near ${degrees(v.peakC)}): look for bulges and cracks; cool it if it heaves.`,
  'clean-up': () =>
    'Gloves stay on: batter on tools still burns. Wipe, then wash tomorrow or wash now with gloves.',
  unmould: v => `When firm (${v.hours} h or more): unmould with gloves. Cut; cure four to six weeks.`,
};

export const timeline = {
  steps,
  traces,
  /** Minutes before the pour; negative is after. */
  when: (minutes: number) => {
    if (minutes === 0) return 'Pour';
    const size = Math.round(Math.abs(minutes));
    const [hours, rest] = [Math.floor(size / 60), size % 60];
    const time = [...(hours > 0 ? [`${hours} h`] : []), ...(rest > 0 ? [`${rest} min`] : [])].join(' ');
    return minutes > 0 ? `${time} before` : `${time} after`;
  },
};
