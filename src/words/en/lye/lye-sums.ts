import { spaced } from '../../../engine/over-lines.ts';
import type { LyeAmiss } from '../../../engine/questions/lye/slips/reckoned.ts';
import type { AcidTakes } from '../../../engine/questions/lye/sums/acid-takes.ts';
import type { ImpureLye, ReadyLye, WaterForLye } from '../../../engine/questions/lye/sums/ready-lye.ts';
import type { Scaled } from '../../../engine/questions/lye/sums/scaled.ts';
import type { LyeSpilled } from '../../../engine/questions/lye/sums/spilled.ts';
import { numbersIn } from '../../numbers.ts';

const { figure, down, one, two } = numbersIn('en');

const ACIDS: Readonly<Record<AcidTakes['acid'], string>> = {
  citric: 'citric acid',
  'citric-monohydrate': 'citric acid monohydrate',
  vinegar: 'vinegar',
  lactic: 'lactic acid',
};
const share = (percent: number) => `${figure(Math.abs(percent), Math.abs(percent) < 10 ? 1 : 0)} %`;
const weights = ({ putGrams, meantGrams }: LyeAmiss) =>
  putGrams === undefined || meantGrams === undefined
    ? undefined
    : `${figure(putGrams, 1)} g lye went in where ${figure(meantGrams, 1)} g were meant`;
const moreOil = ({ moreOilGrams }: LyeAmiss) =>
  moreOilGrams === undefined ? '' : `, ${figure(Math.ceil(moreOilGrams), 0)} g in all`;

/** How much lye an acid takes, by which masses. */
const acidMasses = {
  citric: spaced`
    By molar masses: 3 × 40.0 / 192.1. The monohydrate takes 0.57 g a gram: if the label does not say
    anhydrous, count that, or the rest of the lye is too much.
  `,
  vinegar: 'By molar masses: 40.0 / 60.05 for a gram of acetic acid; look at the label for its share.',
};
const acidKept = spaced`
  Weighed beforehand, that much more lye keeps the superfat: /plan additives:“citric acid 10 g” or
  liquid:“vinegar” does it. Left out, so much lye is missing and the bar is softer, never harsher. The acid
  goes into the cold water before the lye; never onto dry lye or strong lye water, never with ultramarine.
  It mends no lye-heavy bar.
`;

/** What is said of weights of lye that went wrong or are to be turned into others. */
export const lyeSums = {
  /** `isOil`: oil was missing, not lye too much. */
  amiss: (v: LyeAmiss, isOil: boolean): string => {
    const what = isOil ? 'with that oil missing' : `${share(v.percentOver)} too much lye`;
    const left = `superfat about ${one(v.superfat.typical)} %`;
    if (v.verdict === 'lye-heavy') return `Do not use it, gloves on, set it aside: ${what}, ${left}.`;
    if (v.verdict === 'may-be-heavy')
      return `Too near the edge, gloves on, do not use it yet: ${what}, ${left}.`;
    if (v.percentOver < 0)
      return `Too little lye does not burn: ${share(v.percentOver)} short leaves ${left}${v.verdict === 'soft' ? ', soft and soon rancid' : ', a mild bar'}.`;
    return `Not lye-heavy: ${what} still leaves ${left}.`;
  },
  amissWhy: (v: LyeAmiss, isOil: boolean): string => {
    const from = v.isTold
      ? `Reckoned from ${one(v.meantSuperfat)} % superfat`
      : `Reckoned as if ${one(v.meantSuperfat)} % superfat was meant: tell me if it was another`;
    const between = `oils differ, so it lies between ${one(v.superfat.low)} and ${one(v.superfat.high)} %.`;
    return spaced`
      ${[weights(v), `${from}; ${between}`].filter(Boolean).join('. ')}
      ${v.percentOver < 0 || isOil ? '' : 'I take every weight as you told it.'}
    `.trim();
  },
  amissRemedy: (v: LyeAmiss, isOil: boolean): string => {
    if (v.percentOver < 0)
      return spaced`
        Add no lye by guess. Far short, and the batter still liquid: weigh out the lye that is missing,
        dissolve it in at least its own weight of cold water, let it cool and blend it in, goggles and
        gloves on. Never dry, never tomorrow; a set soft bar is for laundry, or rebatched.
      `;
    if (v.verdict === 'usual')
      return 'Test the cured bar all the same: pH paper in its lather, never the tongue.';
    const oil = isOil
      ? `weigh the oil that is missing (${figure(v.moreOilGrams ?? 0, 0)} g), warm, and blend it in`
      : `weigh ${share(v.percentOver)} more of every oil${moreOil(v)}, warm, and blend it in`;
    return spaced`
      Goggles and gloves; labelled, out of reach of children and animals, nothing of it on skin. It can be
      saved only if every weight is certain: ${oil} now while the batter is liquid, or rebatch the set loaf
      with it, then cure four weeks. If one weight is not certain: caustic waste by your local rules.
      Waiting does not cure it, vinegar does not mend it, pH paper does not clear it.
    `;
  },
  /** Lye so little that a figure seems to have slipped by tens. */
  slippedDecimal: (v: { readonly told: number; readonly likely: number }): string =>
    `Is it ${figure(v.likely, 1)} g? ${figure(v.told, 2)} g lye is far too little, as if the decimal point had slipped.`,
  slippedDecimalWhy:
    'Look at the scale and the recipe before anything is poured: I do not guess which it was. Nothing is added later by guess.',
  tooMuchWhy: spaced`
    Whatever the oils are. Not mixed yet: do not mix it. Mixed: gloves and goggles, nothing of it on skin,
    set it aside labelled; rebatch only if every weight is certain, else caustic waste by your local rules.
  `,
  acid: (v: AcidTakes): string => {
    const name = v.acid === 'vinegar' ? `vinegar of ${one(100 * v.strength)} %` : ACIDS[v.acid];
    const anhydrous = v.acid === 'citric' ? ' (anhydrous)' : '';
    const { told, perGram } = v;
    return told
      ? `${figure(told.grams, 1)} g ${name}${anhydrous} takes ${down(told.naoh, 1)} g NaOH (or ${down(told.koh, 1)} g pure KOH) for itself.`
      : `Each gram of ${name}${anhydrous} takes ${two(perGram.naoh * v.strength)} g NaOH (or ${two(perGram.koh * v.strength)} g pure KOH) for itself.`;
  },
  acidWhy: (v: AcidTakes): string =>
    [v.acid in acidMasses ? acidMasses[v.acid as keyof typeof acidMasses] : [], acidKept].flat().join(' '),
  ready: (v: ReadyLye): string => spaced`
    ${figure(v.solutionGrams, 1)} g of the ${one(v.strength)} % lye
    water${v.waterGrams !== undefined && v.waterGrams > 0 ? ` and ${figure(v.waterGrams, 1)} g more water` : ''}:
    that holds ${figure(v.lyeGrams, 1)} g lye.
  `,
  readyWhy: (v: ReadyLye): string => spaced`
    Lye × 100 / ${one(v.strength)}; the rest of it, ${figure(v.solutionGrams - v.lyeGrams, 1)} g, is water
    already${v.waterGrams !== undefined && v.waterGrams < 0 ? ', which is more than your recipe wants: it only dries longer' : ''}.
    Only if its strength was weighed, it stayed closed, and it is clear: what stood open or shows crystals
    is of no known strength. The further water goes into the oils or into the cold lye water, goggles and
    gloves on.
  `,
  impure: (v: ImpureLye): string =>
    `${figure(v.pureGrams, 1)} g of pure lye are ${down(v.grams, 1)} g at ${one(v.percent)} %: ${down(v.grams - v.pureGrams, 1)} g more.`,
  impureWhy: (v: ImpureLye): string => spaced`
    Weight × 100 / ${one(v.percent)}. Left as it was, the bar only keeps about
    ${figure(100 - v.percent, 0)} points more superfat: that does not burn. Correct it beforehand, never
    afterwards by guess: /plan lye:“NaOH ${one(v.percent)}%”. If the label gives a range, count with the
    higher figure.
  `,
  waterFor: (v: WaterForLye): string =>
    `${figure(v.waterGrams, 0)} g water for ${figure(v.lyeGrams, 1)} g lye.`,
  scaled: (v: Scaled): string => spaced`
    ${figure(v.lyeGrams, 1)} g
    lye${v.waterGrams === undefined ? '' : ` and ${figure(v.waterGrams, 0)} g water`} for
    ${figure(v.oilGrams, 0)} g of the same oils: everything times ${two(v.factor)}.
  `,
  scaledWhy: spaced`
    Only if the first recipe is right, and with the same oils in the same shares. I have not checked its
    lye, since I do not know the oils: name them (“500 g olive, 200 g coconut”) and I do. Round lye down,
    never up. A larger batch gets hotter.
  `,
  spilled: (v: LyeSpilled): string =>
    `${figure(v.percent, 1)} % of the lye is gone: go on, superfat rises from ${one(v.meantSuperfat)} to about ${one(v.superfat)} %.`,
  spilledWhy: (v: LyeSpilled): string => spaced`
    ${figure(v.grams, 0)} g of ${figure(v.ofGrams, 0)} g, lye and water alike; less lye leaves more oil, it
    does not burn. Add none by
    guess.${v.superfat > 12 ? ' That is a soft bar: better weigh lye and water anew.' : ''} First the
    place: goggles and gloves, soak it up with paper or cloths, then much cold water several times, no
    vinegar; children and animals away. On skin or in an eye: running water now, /first-aid.
  `,
};
