import type { AdditiveId } from '../../../engine/batch/additives/additive.ts';
import { numbersIn } from '../../numbers.ts';
import type { RefusalSentences } from '../../sentence.ts';
import { scents } from '../hazards/scents.ts';
import { jug } from './liquids.ts';

const { millilitres: ml, one, two } = numbersIn('en');
/** A tenth is what most scales show; less than that still says that it is something. */
const g = (grams: number) => `${(Math.abs(grams) < 0.1 ? two : one)(grams)} g`;
const pc = (percent: number) => `${one(percent)} %`;

const { additives } = jug;
const additive = (id: AdditiveId) => additives[id];

export const batchRefusals: Pick<
  RefusalSentences,
  | keyof typeof jug.refusals
  | keyof typeof scents.refusals
  | 'oil-not-clarified'
  | 'oil-unknown'
  | 'oils-empty'
  | 'oil-without-amount'
  | 'oil-by-volume'
  | 'oils-mixed-units'
  | 'oils-percent-sum'
  | 'size-unreadable'
  | 'size-missing'
  | 'size-oils-by-volume'
  | 'size-out-of-range'
  | 'mould-without-unit'
  | 'mould-sides'
  | 'cavity-by-mass'
  | 'water-bare-percent'
  | 'water-unreadable'
  | 'carrier-by-mass'
  | 'portion-without-amount'
  | 'portions-many'
  | 'portions-two-rests'
  | 'portion-colours-many'
  | 'portions-exceed-batter'
  | 'portions-parts-and-rest'
  | 'reserve-out-of-range'
  | 'additive-unknown'
  | 'additive-without-amount'
  | 'additive-too-much'
  | 'superfat-negative'
  | 'superfat-absurd'
  | 'purity-out-of-range'
  | 'koh-share-out-of-range'
  | 'lye-unreadable'
  | 'lye-shares-sum'
  | 'percent-unreadable'
  | 'scale-too-coarse'
  | 'water-turned-round'
  | 'lye-too-strong'
  | 'lye-too-weak'
  | 'milk-more-than-water'
  | 'dip-too-deep'
  | 'dipped-oil-missing'
  | 'rescale-out-of-range'
  | 'class-out-of-range'
> = {
  ...jug.refusals,
  ...scents.refusals,
  'oil-not-clarified': ({ text }) =>
    `“${text}” is about 82 % fat, the rest water and milk, and would get too much lye. Clarify it and write “ghee”, or take another fat.`,
  'oil-unknown': ({ text, nearest }) =>
    // So many words, or a figure, are no name that is only misspelt.
    text.split(' ').length > 3 || /^\d/u.test(text)
      ? `I cannot read “${text}” as an oil with its weight. Write each such as “500 g olive, 200 g coconut”.`
      : `I don’t know the oil “${text}”. Did you mean ${nearest.map(({ en }) => en).join(', ')}?`,
  'oils-empty': () => 'Please name your oils, such as “coconut 30%, olive 50%, palm 20%”.',
  'oil-without-amount': ({ text }) =>
    `“${text}” needs a percent or a weight, such as “olive 50%” or “olive 500 g”.`,
  'oil-by-volume': ({ text }) =>
    `“${text}”: oils go by weight or percent here, not by volume. Lye depends on it.`,
  'oils-mixed-units': ({ share, weight, isBare }) =>
    isBare
      ? `“${share}” has no unit beside “${weight}”: write it with one, such as “500 g olive”, and every oil by weight.`
      : `Some oils are in percent and some in weight (“${share}”, “${weight}”): use one kind for all.`,
  'oils-percent-sum': ({ sum }) => `The oils add up to ${pc(sum)}; they should make 100 %.`,
  'size-unreadable': ({ text }) =>
    `I can’t read the size “${text}”. Try “1000 g oils”, “1.2 l batter”, “mould 25x9x7 cm” or “12 cavities x 100 ml”.`,
  'size-missing': () =>
    'How big? Add a size such as “1000 g oils”, “1.2 l batter” or “mould 25x9x7 cm”, or give the oils by weight.',
  'size-oils-by-volume': () =>
    'Oils go by weight: write “1000 g oils”. A volume is of batter: “1.2 l batter”.',
  'size-out-of-range': ({ text }) => `“${text}” is outside 20 g to 200 kg (20 ml to 200 l).`,
  'mould-without-unit': ({ text }) => `“${text}”: centimetres or inches? Add “cm” or “in”.`,
  'mould-sides': ({ text, shape }) =>
    shape === 'loaf'
      ? `“${text}”: a loaf mould needs length x width x height, such as “mould 25x9x7 cm”.`
      : `“${text}”: a cylinder needs diameter x length, such as “cylinder 8x25 cm”.`,
  'cavity-by-mass': ({ text }) =>
    `“${text}” is a weight: a cavity needs its volume, such as “12 cavities x 100 ml”.`,
  'water-bare-percent': ({ percent }) =>
    `${percent}% of what? Write “${percent}% lye” (lye strength) or “${percent}% of oils”: they are different soaps.`,
  'water-unreadable': ({ text }) =>
    `I can’t read the water “${text}”. Write “33% lye”, “2:1” (water to lye) or “38% of oils”.`,
  'carrier-by-mass': ({ text }) =>
    `“${text}”: measure a colour’s liquid by spoon or millilitre, such as “1 Tbsp olive”.`,
  'portion-without-amount': ({ text }) =>
    `How much is “${text}”? Start with an amount: “2 cups ...”, “500 ml ...”, “2 parts ...”, “25% ...” or “rest ...”.`,
  'portions-many': ({ count, most }) => `${count} portions are more than I plan; ${most} at most.`,
  'portions-two-rests': () => 'Only one portion can be the rest. Give the other an amount, or use parts.',
  'portion-colours-many': ({ text, most }) => `“${text}”: ${most} colours in one portion at most.`,
  'portions-exceed-batter': ({ askedMillilitres, batterMillilitres }) =>
    `The portions need ${ml(askedMillilitres)} but the batch makes ${ml(batterMillilitres)}: make them smaller, use parts, or make the batch bigger.`,
  'portions-parts-and-rest': () =>
    'Parts share out everything that is left: drop “rest”, or give it parts too.',
  'reserve-out-of-range': ({ percent, most }) =>
    `A reserve of ${pc(percent)} is outside 0 to ${most} % of the batter.`,
  'additive-unknown': ({ text, known }) =>
    `I don’t know the additive “${text}”. I know ${known.slice(-7).map(additive).join(', ')}, and liquids such as milk, beer or tea.`,
  'additive-without-amount': ({ text }) =>
    `“${text}” needs an amount, such as “honey 10 g” or “salt 5%” of the oils.`,
  'additive-too-much': ({ text, most }) => `“${text}” is more than ${most} % of the oils.`,
  'superfat-negative': ({ percent }) =>
    `Superfat ${pc(percent)} would leave free lye in the bar. Use 0 % or more; 5 % is usual.`,
  'superfat-absurd': ({ percent, most }) =>
    `Superfat ${pc(percent)} is no soap any more; ${most} % at most, 5 % is usual.`,
  'purity-out-of-range': ({ percent, alkali, least }) =>
    `${pc(percent)} is no purity of dry ${alkali} (${least} to 100 %, see the label). Lye dissolved at that strength? Write “${one(percent)}% lye solution”.`,
  'koh-share-out-of-range': ({ percent }) =>
    `KOH’s share is ${pc(percent)}; with both lyes it lies between 0 and 100 %.`,
  'lye-unreadable': ({ text }) => `Which lye is “${text}”? Write NaOH, KOH, or both (“NaOH 95% + KOH 5%”).`,
  'lye-shares-sum': ({ sum }) => `The two lyes’ shares add up to ${pc(sum)}; they should make 100 %.`,
  'percent-unreadable': ({ text }) =>
    `I can’t read “${text}” as a fragrance. Write “3%” of the oils (6 % at most), with “vanillin 8%” if the label says.`,
  'scale-too-coarse': ({ stepGrams, points, leastOilGrams }) =>
    `One step of your ${stepGrams} g scale moves superfat by ${one(points)} points in this batch. Use a finer scale, or at least ${leastOilGrams} g of oils.`,
  'water-turned-round': ({ text, water, lye }) =>
    `I read “${text}” as ${water} water to ${lye} lye, which is too strong to dissolve safely. Did you mean ${lye}:${water} (water to lye)? Then write that.`,
  'lye-too-strong': ({ percent, most }) =>
    `${pc(percent)} lye is too strong to dissolve safely: use at least as much water as lye (${most} %); 33 % is usual.`,
  'lye-too-weak': ({ percent, least }) =>
    `${pc(percent)} lye is too weak to make a bar: ${least} % at least, 33 % is usual.`,
  'milk-more-than-water': ({ additiveGrams, waterGrams }) =>
    `Milk and the like bring ${g(additiveGrams)} of water, but the recipe has ${g(waterGrams)}: use less of them or more water.`,
  'dip-too-deep': ({ dippedGrams, potSuperfat }) =>
    `Dipping ${g(dippedGrams)} of oil leaves the pot at ${pc(potSuperfat)} superfat: too much lye there. Dip less, raise the superfat, or use extra oil.`,
  'dipped-oil-missing': ({ oil, wantedGrams, recipeGrams }) =>
    `${g(wantedGrams)} of ${oil.en} can’t be dipped: the recipe has ${g(recipeGrams)}.`,
  'rescale-out-of-range': ({ factor }) => `A factor of ${one(factor)} is outside 0.01 to 100.`,
  'class-out-of-range': ({ mostPeople }) =>
    `A class has 1 to ${mostPeople} people and no more stations than people, all whole numbers.`,
};
