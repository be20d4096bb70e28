import type { AdditiveId } from '../../../engine/batch/additives/additive.ts';
import type { JugMethod } from '../../../engine/batch/liquids/jug.ts';
import type { PrepSteps } from '../../../engine/batch/planning/prep-step.ts';
import { spaced } from '../../../engine/over-lines.ts';
import { OUNCE_G } from '../../../engine/quantities/units.ts';
import { capital, midSentence } from '../../../engine/text/capital.ts';
import { numbersIn } from '../../numbers.ts';
import type { RefusalSentences } from '../../sentence.ts';
import { degrees } from '../../temperatures.ts';
import { additives, bareLiquids, liquids } from './liquid-names.ts';
import { liquidWarnings } from './liquid-warnings.ts';

const { down, one, whole } = numbersIn('en');
const g = (grams: number) => `${one(grams)} g`;
const pc = (percent: number) => `${one(percent)} %`;
/** Ounces are rounded down: nobody weighs more lye than the grams say. */
const weight = (grams: number) => `${one(grams)} g (${down(grams / OUNCE_G, 2)} oz)`;

const name = (id: AdditiveId) => additives[id];
/** Without the state that it is in by then. */
const bare = (id: AdditiveId) => ({ ...additives, ...bareLiquids })[id];

const refusals: Pick<
  RefusalSentences,
  | 'additive-eats-lye-by-spoon'
  | 'blend-sets-before-pour'
  | 'wax-too-much'
  | 'oil-never-soap'
  | 'fragrance-dose-high'
  | 'fragrance-dose-unclear'
  | 'jug-too-little-water'
  | 'liquid-never-in-jug'
  | 'liquid-is-spirit'
  | 'liquid-is-bleach'
  | 'liquid-water-weight'
  | 'liquid-unknown'
  | 'liquids-over-all'
  | 'lye-shares-unclear'
  | 'lye-solution-of-both'
  | 'solution-too-weak'
  | 'water-or-masterbatch'
> = {
  'additive-eats-lye-by-spoon': ({ additive }) =>
    `${capital(name(additive))} uses up lye, so a spoon of it is too rough: give its weight, such as “${bare(additive)} 10 g”.`,
  'blend-sets-before-pour': ({ oil, percent, meltsC, startC }) => spaced`
    ${pc(percent)} of the blend (${midSentence(oil.en)}) is solid at ${degrees(startC)}: it can’t be
    poured. Pour above ${degrees(meltsC)} (start:“${whole(Math.ceil(meltsC))} C”), or use less of it.
  `,
  'wax-too-much': ({ percent, most }) =>
    `${pc(percent)} wax makes no soap: about half of a wax never reacts with lye. ${most} % of the oils at most; 1 to 3 % is usual.`,
  'oil-never-soap': ({ text }) =>
    `“${text}” never turns into soap: the lye meant for it would stay in the bar. Use an oil, a fat or a butter.`,
  'fragrance-dose-high': ({ percent, most }) => spaced`
    ${pc(percent)} of the oils is more fragrance than soap takes (${most} % at most; 3 % is usual). If it
    is the vanillin content, write “3% of oils, vanillin ${one(percent)}%”.
  `,
  'fragrance-dose-unclear': ({ text }) =>
    `“${text}”: which percent is the dose, which the vanillin in it? Write “3% of oils, vanillin 8%”.`,
  'jug-too-little-water': ({ liquid, lyeGrams, jugWaterGrams, mostGrams }) => spaced`
    ${g(jugWaterGrams)} of water is left for ${g(lyeGrams)} of lye: it needs its own weight. Use
    ${g(mostGrams)} of ${bare(liquid)} at most, or more water (“2.5:1”).
  `,
  'liquid-never-in-jug': ({ liquid }) =>
    `${capital(name(liquid))} is too thick or fat for the lye jug: lye pockets, foaming. Write “${bare(liquid)} in the oils”.`,
  'liquid-is-spirit': ({ text }) => spaced`
    “${text.trim()}” is strong alcohol: it burns near heat, makes lye boil up and seizes the batter. Use
    water; for beer or wine the alcohol is boiled off first.
  `,
  'liquid-is-bleach': ({ text }) => spaced`
    “${text.trim()}” never goes into soap: bleach and peroxide foam up with lye and oils, burn skin,
    destroy colour, and bleach gives poisonous gas with acids. Use water.
  `,
  'liquid-water-weight': ({ text }) =>
    `“${text.trim()}”: here goes what stands in for water. How much plain water there is, write with water: “33% lye”, “2:1” (water to lye) or “38% of oils”.`,
  'liquid-unknown': ({ text, known }) =>
    `I don’t know the liquid “${text}”. Try ${known.slice(0, 3).map(bare).join(', ')}, beer, tea or aloe juice; what reacts with lye should never be guessed.`,
  'liquids-over-all': ({ sum }) => `The liquids make ${pc(sum)} of the water; 100 % is all of it.`,
  'lye-shares-unclear': ({ text }) =>
    `“${text}”: which share is which lye? Write “NaOH 95% + KOH 5%”. They are different soaps.`,
  'lye-solution-of-both': () =>
    'A ready lye solution works here for one lye only. Write “50% NaOH solution”, or weigh both dry: “NaOH 95% + KOH 5%”.',
  'solution-too-weak': ({ percent, solutionWaterGrams, leftGrams }) => spaced`
    A ${pc(percent)} solution brings ${g(solutionWaterGrams)} of water, but ${g(leftGrams)} is all the
    batch leaves it. Use more water, fewer other liquids, or
    ${percent < 50 ? 'a stronger solution (50 %)' : 'dry lye, weighed in flakes'}.
  `,
  'water-or-masterbatch': ({ percent }) => spaced`
    ${percent}% solution: is your lye kept dissolved? Then write lye:“${percent}% lye solution” and the
    batch’s water, such as “33% lye”. For a strong batch write “1:1”.
  `,
};

type Weighed = { readonly mass: string; readonly id: AdditiveId };
const joined = (parts: readonly string[]) => parts.join(' + ');
/** Ice is cold and frozen without saying so. */
const inKind = (id: AdditiveId, kind: string) => `${id === 'ice' ? '' : kind}${name(id)}`;
const named = (list: readonly Weighed[], before = '') =>
  list.map(({ mass, id }) => `${mass} ${inKind(id, before)}`);

type Stepped =
  | 'boil-off'
  | 'freeze-liquid'
  | 'mix-lye'
  | 'mix-lye-frozen'
  | 'pour-solution'
  | 'dissolve-acid'
  | 'acid-into-oils'
  | 'liquid-into-oils'
  | 'ready-tub'
  | 'stays-cool'
  | 'cut-salt-bar'
  | 'keep-paste';

const held = (grams: number) => (grams > 0.05 ? ` (${g(grams)} held back for colours)` : '');
const lyes = (list: PrepSteps['mix-lye']['lye']) =>
  list.map(({ alkali, grams }) => `${weight(grams)} ${alkali}`).join(' and ');
const inJug = (water: number, list: PrepSteps['mix-lye']['liquids'], kind: string) =>
  joined([
    ...list.map(({ additive, grams }) => `${weight(grams)} ${inKind(additive, kind)}`),
    ...(water > 0.05 || list.length === 0 ? [`${weight(water)} cold water`] : []),
  ]);

/** What boils gets little hotter, but spits. */
const hottest = (celsius: number) =>
  celsius < 100 ? `It may reach ${degrees(celsius)}.` : 'It may boil and spit: chill the liquid first.';

const steps: { readonly [Id in Stepped]: (values: PrepSteps[Id]) => string } = {
  'boil-off': v =>
    `Simmer the ${bare(v.additive)} uncovered until the alcohol (about ${pc(v.percent)}) and gas are gone, 20 minutes or more. Cool it, then weigh.`,
  'freeze-liquid': v => `Freeze ${weight(v.grams)} ${name(v.additive)} in small cubes.`,
  'mix-lye': v => spaced`
    Weigh ${lyes(v.lye)}; add ${v.sour ? 'very slowly, by the spoonful,' : 'slowly'} to
    ${inJug(v.waterGrams, v.liquids, v.sour ? 'ice-cold ' : 'cold ')}${v.sour ? ', jug in an ice bath' : ''}${held(v.holdBackGrams)},
    never the other way round.${v.sour ? ' Acid and lye heat and spit.' : ''} ${hottest(v.hottestC)} Let it
    cool.
  `,
  'mix-lye-frozen': v => spaced`
    Weigh ${lyes(v.lye)}. Jug in an ice bath with
    ${inJug(v.waterGrams, v.liquids, 'frozen ')}${held(v.holdBackGrams)}: a spoonful of lye at a time, stir
    until it melts in, wait while it is above 40 °C (104 °F). Takes 15 to 30 minutes. Never liquid onto
    lye.${v.liquids.every(({ additive }) => additive === 'ice') ? '' : ' It may smell and turn yellow.'}
  `,
  'pour-solution': v => spaced`
    Weigh ${weight(v.grams)} of the ${pc(v.percent)} ${v.alkali}
    solution${v.waterGrams > 0.05 ? `; pour it slowly into ${weight(v.waterGrams)} cold water${held(v.holdBackGrams)}` : ''}.
    Gloves and goggles: it burns as it is.
  `,
  'dissolve-acid': v =>
    `Dissolve ${weight(v.grams)} ${name(v.additive)} in the cold water or liquid, before any lye.`,
  'acid-into-oils': v => spaced`
    Dissolve ${weight(v.grams)} ${name(v.additive)} in a little of the batch’s water and stir it into the
    oils; never into the lye solution: it would boil up.
  `,
  'liquid-into-oils': v => `Blend ${weight(v.grams)} ${name(v.additive)} into the oils, just before the lye.`,
  'ready-tub': () =>
    'Have a wide heatproof polypropylene tub ready: this soap stays a paste. Lay out cups and spatulas.',
  'stays-cool': v =>
    `Small bars lose heat as fast as they make it (about ${degrees(v.peakC)} at most): no hot moment to watch. Cover them.`,
  'cut-salt-bar': v => spaced`
    ${pc(v.percent)} salt: cut as soon as it is firm, ${v.fromHours} to ${v.toHours} h, gloves on (raw soap
    burns). Cavities need no cutting. Cure four to six weeks.
  `,
  'keep-paste': () =>
    'A paste: no unmoulding, no cutting. Keep it covered, gloves on, two weeks or more before it is thinned; check its pH is about 9 to 10.',
};

export const jug = {
  liquids,
  additives,
  /** `143.1 g NaOH in 290.5 g water`, however the lye is dissolved. */
  headline: (v: {
    method: JugMethod;
    lye: string;
    alkali: string;
    /** Undefined where there is none to weigh. */
    water: string | undefined;
    inJug: readonly Weighed[];
    inOils: readonly Weighed[];
    solution: { mass: string; percent: number } | undefined;
    oils: string;
  }) => {
    const aside = v.inOils.length > 0 ? `, ${joined(named(v.inOils))} into the oils,` : '';
    const water = v.water === undefined ? [] : [`${v.water} water`];
    if (v.solution) {
      return `${joined([`${v.solution.mass} ${v.alkali} solution (${pc(v.solution.percent)})`, ...water])}${aside} for ${v.oils} oils`;
    }
    const lye = `${v.lye} ${v.alkali}`;
    return v.method === 'frozen'
      ? `${lye} into ${joined([...named(v.inJug, 'frozen '), ...water])}, in small steps${aside || ','} for ${v.oils} oils`
      : `${lye} in ${joined([...water, ...named(v.inJug)])}${aside} for ${v.oils} oils`;
  },
  solution: (v: { alkali: string; percent: number }) => `${v.alkali} solution (${pc(v.percent)})`,
  solutionNote: (v: { lye: string; water: string }) => `It holds ${v.lye} lye and ${v.water} water.`,
  furtherWater: 'Water to add',
  /** Where no plain water is weighed at all. */
  noWater: (v: { inJug: readonly Weighed[]; frozen: boolean }) =>
    v.inJug.length === 0
      ? 'none to add'
      : `none to add: the lye goes into the ${joined(named(v.inJug))}${v.frozen ? ', frozen' : ''}`,
  strength: (v: { percent: number }) => `In the jug: ${pc(v.percent)} lye, all its water counted.`,
  placed: (v: { into: 'jug' | 'oils'; frozen: boolean; water: string }) =>
    `${v.into === 'oils' ? 'Into the oils' : v.frozen ? 'Into the jug, frozen' : 'Into the jug'}; ${v.water} of it is water.`,
  warnings: liquidWarnings,
  refusals,
  steps,
};
