import type { AdditiveId } from '../../../engine/batch/additives/additive.ts';
import type { ClassStep } from '../../../engine/batch/planning/class-kits.ts';
import type { PlanWarnings } from '../../../engine/batch/planning/plan-warning.ts';
import type { PortionName } from '../../../engine/batch/portions/portion-name.ts';
import { spaced } from '../../../engine/over-lines.ts';
import { capital } from '../../../engine/text/capital.ts';
import { numbersIn } from '../../numbers.ts';
import { degrees } from '../../temperatures.ts';
import { scents } from '../hazards/scents.ts';
import { limits, portionSuperfat } from './limits.ts';
import { jug } from './liquids.ts';
import { lyeCautions } from './lye-cautions.ts';

const { one, two } = numbersIn('en');
/** A tenth is what most scales show; less than that still says that it is something. */
const g = (grams: number) => `${(Math.abs(grams) < 0.1 ? two : one)(grams)} g`;
const pc = (percent: number) => `${one(percent)} %`;

const { additives } = jug;
const additive = (id: AdditiveId) => additives[id];

/** A portion as the member named it, or in their own language where it has no name. */
const UNNAMED: Readonly<Record<'plain' | 'rest', string>> = { plain: 'plain', rest: 'the rest' };
const portionName = (name: PortionName) =>
  'told' in name ? name.told : `${UNNAMED[name.is]}${name.nth === undefined ? '' : ` ${name.nth}`}`;

const browning: Readonly<Record<PlanWarnings['fragrance-browns']['level'], string>> = {
  slight: 'slightly, and late',
  tan: 'tan to caramel',
  brown: 'brown',
  dark: 'dark brown',
};

type WarningSentences = { readonly [Id in keyof PlanWarnings]: (values: PlanWarnings[Id]) => string };

const warnings: WarningSentences = {
  'start-hot': ({ startC }) =>
    `${degrees(startC)} is only for the wax: hotter than cold process is poured. It can foam up and burns skin; deep pot, gloves, mould at hand, no cover.`,
  'superfat-high': ({ percent }) =>
    percent > 30
      ? `${pc(percent)} superfat: so much of the oil stays loose that it is hardly soap: soft, greasy, soon rancid. Is it meant? 5 % is usual.`
      : `${pc(percent)} superfat is a lot: a soft bar that may go rancid early.`,
  'superfat-may-go-negative': ({ lowest, oil, low, high }) => spaced`
    If your oils sit at the low end of their ranges, superfat could be ${pc(lowest)}: too much lye.
    ${oil.en} is the least certain (${low} to ${high} mg KOH/g). Raise the superfat, or use the value on
    your supplier’s certificate.
  `,
  'lye-strong': ({ percent }) =>
    `${pc(percent)} lye is for the experienced: it traces fast and leaves little time for colour.`,
  'lye-weak': ({ percent }) =>
    `${pc(percent)} lye is a lot of water: slow to set, and more risk of glycerin rivers and warping.`,
  'lye-rounded-down': ({ grams, points }) =>
    `Lye is rounded down by ${g(grams)} for your scale: superfat rises by ${one(points)} points.`,
  'purity-assumed': ({ alkali, percent }) =>
    percent === 100
      ? `${alkali} is taken as pure. If the label says less, tell me: superfat is a little higher than shown.`
      : `${alkali} is taken as ${pc(percent)} pure. Check the label: a purer one lowers superfat.`,
  'hold-back-short': ({ carrierWaterGrams, heldBackGrams }) =>
    `The colours bring ${g(carrierWaterGrams)} of water but only ${g(heldBackGrams)} can be held back: lye needs at least its own weight of water.`,
  'dip-lowers-pot': ({ percent }) =>
    `Oil dipped for colour leaves the pot at ${pc(percent)} superfat until the cups go back in. Uncoloured portions keep that figure.`,
  'portion-superfat-high': ({ name, percent }) =>
    `${capital(portionName(name))} ends at ${pc(percent)} superfat: softer there. Use less carrier oil, or dip it from the batch.`,
  'portion-lye-weak': ({ name, percent }) =>
    `${capital(portionName(name))} ends at ${pc(percent)} lye: use less water for its colour.`,
  'fragrance-browns': ({ level }) =>
    `Vanillin turns scented portions ${browning[level]}: leave the one whose colour matters unscented.`,
  'fragrance-speeds': ({ name, drawn }) => spaced`
    ${name === undefined ? 'Your scent speeds up the batter' : `Scents such as “${name}” often speed up the batter: try it in a cup first`}.
    Mix by hand and a little cooler, colours first, scent last, mould at
    hand${drawn ? '; a simple pour instead of a swirl that takes time' : ''}.
  `,
  'fragrance-unknown': ({ text }) =>
    `Of “${text}” I know nothing: ask whoever sells the scent whether it speeds up the batter or browns it.`,
  'superfat-shifted': ({ asked, comes }) =>
    `Superfat comes to ${pc(comes)}, not ${pc(asked)}: fat that wets colours or is in a liquid adds to it. A little softer; the lye is as you asked.`,
  'fragrance-limit': ({ percentOfOils }) =>
    `${pc(percentOfOils)} fragrance is much: check the maximum on its IFRA certificate (rinse-off soap, category 9).`,
  'additive-heats': ({ additive: id, wrapped }) => spaced`
    ${capital(additive(id))} makes the batch run hotter and faster: soap cooler,
    ${wrapped ? 'look at it every half hour, and unwrap it if it bulges' : 'do not insulate'}.
  `,
  'additive-browns': ({ additive: id }) => `${capital(additive(id))} browns with lye: expect a tan base.`,
  'additive-drinks-water': ({ additive: id }) =>
    `${capital(additive(id))} drinks water: wet it in one to three times its weight of water first.`,
  'additive-hardens': ({ additive: id }) =>
    `${capital(additive(id))} hardens the bar: cut it early, it can crumble later.`,
  ...jug.warnings,
  ...scents.warnings,
  ...limits.warnings,
  'portion-superfat-negative': ({ name, percent, lowest }) =>
    portionSuperfat({ portion: capital(portionName(name)), percent, lowest }),
  'citric-eats-lye': ({ grams, lyeGrams, points, form }) =>
    form === 'monohydrate'
      ? spaced`
        ${g(grams)} of citric acid eats ${g(lyeGrams)} of lye, counted as the monohydrate, the weaker of
        the two sold; that much is added. Does the label say anhydrous? Write “anhydrous citric acid”; else
        superfat is ${one(points)} points higher.
      `
      : spaced`
        ${g(grams)} of anhydrous citric acid eats ${g(lyeGrams)} of lye; that much is added. If the label
        says monohydrate, write “citric acid”: superfat would be ${one(points)} points lower than shown.
      `,
};

const classSteps: Readonly<Record<ClassStep['id'], string>> = {
  'gear-for-all': 'Goggles and gloves for everyone, the leader too, before anything is opened.',
  'lye-weighed-by-leader':
    'The leader weighs the lye for each station on a scale. Lye is never handed out unweighed or divided by eye.',
  'lye-label-each-jug': 'Label each jug with its station and “LYE, caustic”.',
  'oils-into-station-pots': 'Weigh each station’s oils into its own pot.',
  'colours-into-cups': 'Measure colours into cups before people arrive, to keep powder out of the air.',
  'one-at-the-lye': 'One person a station handles lye, with the leader beside them.',
};

export const batch = {
  additives,
  portionName,
  warnings,
  ...lyeCautions,
  classSteps,
  headline: jug.headline,
  scaled: limits.scaled,
  jug,
  waterWays: (v: { strength: string; ratio: string; ofOils: string }) =>
    `The same water: ${v.strength} % lye = ${v.ratio}:1 water to lye = ${v.ofOils} % of oils.`,
  kit: (v: { stations: number; people: string; station: string }) =>
    `${v.stations} stations (${v.people} people), at each: ${v.station}.`,
};
