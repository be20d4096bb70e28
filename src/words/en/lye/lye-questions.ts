import { spaced } from '../../../engine/over-lines.ts';
import type { MatterTold } from '../../../engine/questions/leaning/parts/part-of.ts';
import type { LyeCheck } from '../../../engine/questions/lye/sums/check.ts';
import type { OilsForLye } from '../../../engine/questions/lye/sums/inverse.ts';
import type { LyeMissing } from '../../../engine/questions/lye/sums/missing.ts';
import type { LyeTopic } from '../../../engine/questions/lye/topics/topic.ts';
import { midSentence } from '../../../engine/text/capital.ts';
import { numbersIn } from '../../numbers.ts';
import { degrees } from '../../temperatures.ts';
import { lyeAsked } from './lye-asked.ts';
import { lyeBasics } from './lye-basics.ts';
import { lyeBench } from './lye-bench.ts';
import { lyeByLitre } from './lye-by-litre.ts';
import { lyeCare } from './lye-care.ts';
import { lyeClass } from './lye-class.ts';
import { lyeFinished } from './lye-finished.ts';
import { lyeFire } from './lye-fire.ts';
import { lyeGeneral } from './lye-general.ts';
import { lyeHarm } from './lye-harm.ts';
import { lyeHeat } from './lye-heat.ts';
import { lyeHouse } from './lye-house.ts';
import { lyeIngredients } from './lye-ingredients.ts';
import { lyeJug } from './lye-jug.ts';
import { lyeMatters } from './lye-matters.ts';
import { lyeMisweighed } from './lye-misweighed.ts';
import { lyeMixing } from './lye-mixing.ts';
import { lyePowders } from './lye-powders.ts';
import { lyeProportions } from './lye-proportions.ts';
import { lyeSafety } from './lye-safety.ts';
import { lyeSums } from './lye-sums.ts';

const { figure, one } = numbersIn('en');

/** What is said to questions about lye: amounts that were weighed already, and its handling. */
export const lyeQuestions = {
  /** Each matter as a short question, to choose from. */
  matters: lyeMatters,
  byLitre: lyeByLitre,
  sums: lyeSums,
  topics: {
    ...lyeHarm,
    ...lyePowders,
    ...lyeFire,
    ...lyeMisweighed,
    ...lyeJug,
    ...lyeCare,
    ...lyeProportions,
    ...lyeGeneral,
    ...lyeFinished,
    ...lyeAsked,
    ...lyeBench,
    ...lyeHeat,
    ...lyeHouse,
    ...lyeMixing,
    ...lyeClass,
    ...lyeIngredients,
    ...lyeSafety,
    ...lyeBasics,
    // Asked the one way and the other, these are one matter.
    'water-onto-lye': lyeHarm['lye-into-water'],
    'lye-and-water-swapped': lyeHarm['amounts-swapped'],
  } satisfies Record<LyeTopic, MatterTold>,
  water: (v: { water: number; lye: number; percent: number }) =>
    `${figure(v.water, 0)} g water for ${figure(v.lye, 1)} g lye`,
  waterWhy: (v: { percent: number }) => spaced`
    That is lye of ${one(v.percent)} %: water = lye × (100 − ${one(v.percent)}) / ${one(v.percent)}. Never
    less water than lye. Tell me the oils and I check the lye too.
  `,
  /** Rounded up: less oil is more lye. */
  oilsFor: (v: OilsForLye) => spaced`
    ${v.oils.map(({ names, grams }) => `${figure(Math.ceil(grams), 0)} g ${midSentence(names.en)}`).join(' + ')}
    for ${figure(v.lye.grams, 1)} g ${v.lye.alkali}, at ${one(v.superfat)} % superfat
  `,
  oilsForWhy: (v: OilsForLye) => spaced`
    Never less oil than that: it would be lye-heavy. Oils differ, so between ${figure(v.grams.low, 0)} and
    ${figure(v.grams.high, 0)} g would do in all. ${v.lye.alkali} counted at ${one(v.lye.purity * 100)} %
    purity. Weigh your oils, then ask the other way round, such as “how much lye for 800 g olive oil”, or
    use /plan for the water.
  `,
  checked: (v: LyeCheck) => {
    const what = `${figure(v.lye.grams, 1)} g ${v.lye.alkali} for ${figure(v.oilGrams, 0)} g oils`;
    const superfat = `superfat ${one(v.superfat.typical)} %`;
    switch (v.verdict) {
      case 'lye-heavy':
        return `Do not use it: ${what} is lye-heavy, ${superfat}`;
      case 'may-be-heavy':
        return `Too near the edge: ${what} may be lye-heavy, ${superfat}`;
      case 'soft':
        return `Little lye: ${what} leaves ${superfat}`;
      case 'usual':
        return `${what} leaves ${superfat}: no excess of lye`;
    }
  },
  checkedWhy: (v: LyeCheck) => spaced`
    Oils differ: the superfat lies between ${one(v.superfat.low)} and ${one(v.superfat.high)} %.
    ${v.lye.alkali} counted at ${one(v.lye.purity * 100)} % purity. At ${one(v.usualPercent)} % superfat it
    would be ${figure(Math.floor(v.usualGrams * 10) / 10, 1)} g.
  `,
  remedy: {
    'lye-heavy': spaced`
      Keep it off skin. Batter or bar, gloves and goggles on. It may be rebatched with the oils that are
      missing, only if every weight is certain; then reckon it anew. Otherwise discard it as caustic waste
      by your local rules. Waiting does not cure it, pH paper does not clear it, and no tongue on it.
    `,
    'may-be-heavy': spaced`
      If not yet mixed, use the lye of the 5 % line. If it is made: gloves, let it cure four weeks, then pH
      paper on a wet bar, never the tongue: 11 or more, or it stings, do not use it: rebatch with more oil,
      or discard it.
    `,
    soft: spaced`
      It will be no caustic bar, but soft, and soon rancid. If no lye is in yet, weigh that of the 5 % line
      instead. If it is in already, never put that figure on top: it is all the lye, not what is missing.
    `,
    usual: 'Still test the cured bar before it is used.',
  } satisfies Record<LyeCheck['verdict'], string>,
  /** What is missing of lye that is in already. */
  missing: (v: LyeMissing) => spaced`
    ${figure(v.missing, 1)} g ${v.check.lye.alkali} are missing: ${figure(v.check.lye.grams, 1)} g are in, and
    ${figure(v.check.oilGrams, 0)} g oils take ${figure(v.all, 1)} g in all at ${one(v.check.usualPercent)} % superfat
  `,
  missingWhy: (v: LyeMissing) => spaced`
    That holds only if ${figure(v.check.lye.grams, 1)} g went in, all of it, and nothing was lost since; if
    you are not sure of it, add none. In the jug: stir it in slowly, it heats up again; never more lye than
    water. In batter that is still liquid: dissolve it in its own weight of water first, then blend it in.
    Set soap takes none up evenly: leave it as it is, soft.
  `,
  keptAway:
    'Keep every animal and child out until the place is rinsed and dry. If one stepped in it, licked it or got it on them: /first-aid at once.',
  rateComesTo: (v: { lye: number; per: number; grams: number }) =>
    `${figure(v.lye, 1)} g lye per ${figure(v.per, 0)} g oil come to ${figure(v.grams, 1)} g in yours. No one rate fits every oil.`,
  noRate: 'No one rate fits every oil: coconut takes about a third more lye than olive.',
  tooMuchForAll: (v: { lye: number; oils: number }) =>
    `No: ${figure(v.lye, 1)} g lye is more than ${figure(v.oils, 0)} g of any oil I know takes`,
  hangsOnOils: (v: { lye: number; oils: number }) =>
    `I can't say yet whether ${figure(v.lye, 1)} g lye suits ${figure(v.oils, 0)} g oils: every oil takes its own. Which oils?`,
  nameOils:
    'Tell me the oils and grams of each, such as “200 g lye in 700 g olive and 300 g coconut”. Until then: do not use it.',
  noNumber:
    'So I give no amount of lye: with one thing misread it would be lye for another recipe. Put it right with the button, or use /plan.',
  weighedButUnread: 'Until its lye is worked out, treat it as lye-heavy: gloves and goggles, not on skin.',
  readyHoldsWater: spaced`
    Ready-made lye already holds water: 100 g of 50 % solution are 50 g of dry lye. Never weigh one by the
    figure of the other: too little lye, or twice too much.
  `,
  bleachOrLye: spaced`
    “Lejía”: caustic soda (NaOH), or the bleach for cleaning? Bleach (hypochlorite) makes no soap and must
    never go in. If the label says sodium hydroxide, ask again with “sosa”.
  `,
  /** Parts of a question that the plan has not taken in. */
  passedBy: ({ left }: { readonly left: readonly string[] }) =>
    `Passed by: ${left
      .slice(0, 5)
      .map(one => `“${one}”`)
      .join(', ')}. If one of them is an oil, give its weight and ask again.`,
  /** What was told beside a recipe, and may change what of it is in the pot. */
  saidBeside: ({ beside }: { readonly beside: readonly string[] }) => spaced`
    You also say ${beside.map(one => `“${one}”`).join(' and ')}. If that changes what is in the pot, a
    weight, the superfat or the lye, do not use this figure: ask again with only what goes in.
  `,
  /** Oils spelt amiss, with the names they were read as. */
  respelt: ({
    respelt,
  }: {
    readonly respelt: readonly { readonly typed: string; readonly read: string }[];
  }) => spaced`
    ${respelt.map(({ typed, read }) => `“${typed.slice(0, 40)}” read as “${read}”`).join(', ')}. Another
    oil? Then this lye is wrong: ask again with its name.
  `,
  /** Buttons under the question whether oils are in the pot. */
  /** The one reading of a recipe without the words that are not understood. */
  readWithout: ({ line }: { readonly line: string }) => `Without those words I read: ${line}.`,
  asRead: 'Yes, just that',
  allIn: 'Yes, all of it',
  leftOutOfPot: ({ names }: { readonly names: readonly string[] }) => `No, leave out ${names.join(', ')}`,
  /** What a press on them asks. */
  lyeFor: ({ line }: { readonly line: string }) => `How much lye for ${line}?`,
  isItRight: ({ line }: { readonly line: string }) => `Is this lye right: ${line}?`,
  waterBeside: ({ water, lye }: { readonly water: number; readonly lye: number }) =>
    water < lye
      ? `Too little water: ${figure(water, 0)} g for ${figure(lye, 1)} g lye. Never less water than lye, or it stays undissolved and burns.`
      : `Lye water of ${figure((100 * lye) / (lye + water), 0)} %${lye / (lye + water) < 0.22 ? ': very thin, it thickens late and dries slowly' : ''}.`,
  leftOut: ({ left }: { readonly left: readonly string[] }) =>
    `Not taken into this plan: ${left
      .slice(0, 5)
      .map(one => `“${one.slice(0, 40)}”`)
      .join(
        ', ',
      )}. Press Change and add it, such as portions:“1 cup gold mica”, fragrance:“3%” or additives:“salt 20 g”.`,
  beyondAllOils: ({ lye }: { readonly lye: number }) =>
    `${figure(lye, 1)} g lye is more than even all of these oils take: do not use it.`,
  usualSuperfat: ({ percent }: { readonly percent: number }) =>
    `Superfat ${one(percent)} %, the usual: you told none.`,
  purityTold: ({ alkali, percent }: { readonly alkali: 'NaOH' | 'KOH'; readonly percent: number }) =>
    `${alkali} of ${one(percent)} %, as you say: at another purity the amount is another.`,
  /** Hard fats that are solid where soap is usually poured. */
  poursHot: ({ startC }: { readonly startC: number }) =>
    `So much of it is hard that it pours only above ${degrees(startC)}: its heat is counted from there, the lye is the same.`,
  usualKoh:
    'You named no purity, so KOH is counted at 90 %. Look at the label: at another purity the amount is another.',
};
