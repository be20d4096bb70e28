import { describe, expect, test } from 'vitest';
import { opensWithPlan } from '../../../../src/engine/questions/lye/asked-plainly.ts';
import { readPlanQuestion } from '../../../../src/engine/questions/lye/plan-question.ts';
import { isBleachOrLye } from '../../../../src/engine/questions/lye/question.ts';
import { lyeAmissIn } from '../../../../src/engine/questions/lye/slips/amiss.ts';
import {
  asksWhetherTooMuch,
  tellsDifference,
} from '../../../../src/engine/questions/lye/slips/lye-difference.ts';
import {
  lyeAndOilsAlone,
  toldAmounts,
  wordsOfBatch,
} from '../../../../src/engine/questions/lye/slips/told-amounts.ts';
import { putInAmiss, spoonedOnTop } from '../../../../src/engine/questions/lye/slips/weighed-amiss.ts';
import { acidTakesIn } from '../../../../src/engine/questions/lye/sums/acid-takes.ts';
import { oilsForLye } from '../../../../src/engine/questions/lye/sums/inverse.ts';
import {
  impureLyeIn,
  readyLyeIn,
  waterForLyeIn,
} from '../../../../src/engine/questions/lye/sums/ready-lye.ts';
import { scaledIn } from '../../../../src/engine/questions/lye/sums/scaled.ts';
import { lyeSpilledIn } from '../../../../src/engine/questions/lye/sums/spilled.ts';
import { askedTopicIn } from '../../../../src/engine/questions/lye/topics/asked/read.ts';
import { asksForOrder } from '../../../../src/engine/questions/lye/topics/asked-generally.ts';
import { isCurious } from '../../../../src/engine/questions/lye/topics/curious.ts';
import { asksAmountOfLye } from '../../../../src/engine/questions/lye/topics/nearest/general.ts';
import { tellsOfHurt } from '../../../../src/engine/questions/lye/topics/nearest/hurt.ts';
import { lyeBeyondAllOils } from '../../../../src/engine/questions/lye/topics/too-much-at-once.ts';
import {
  careTopicIn,
  isCalmMatter,
  isHarmMatter,
  lyeTopicIn,
} from '../../../../src/engine/questions/lye/topics/topics.ts';
import { isWeighedRecipe } from '../../../../src/engine/questions/lye/weighed-recipe.ts';

/*
 * What makers ask and tell of lye (from memory of how they write), and what every reader makes of it: whose each weight is, what is
 * reckoned from them, which matter it is. Weights by hand: an acid takes lye mole for mole (citric acid 192.12 and its hydrate 210.14 by
 * threes, lactic 90.08, acetic 60.05 g/mol; NaOH 40.00, KOH 56.11: CRC handbook, from memory), a solution of p percent holds p of 100
 * (arithmetic), saponification values as in Codex CXS 33 and 210.
 */

const tenths = <Value>(value: Value): Value =>
  JSON.parse(JSON.stringify(value ?? null), (_, one: unknown) =>
    typeof one === 'number' ? Math.round(10 * one) / 10 : one,
  ) ?? undefined;

const SIGNS: Readonly<Record<string, (question: string) => boolean>> = {
  calm: isCalmMatter,
  harm: isHarmMatter,
  order: asksForOrder,
  curious: isCurious,
  hurt: tellsOfHurt,
  amount: asksAmountOfLye,
  bleach: isBleachOrLye,
  spooned: spoonedOnTop,
  planFirst: opensWithPlan,
  weighed: isWeighedRecipe,
  difference: tellsDifference,
  whether: question => asksWhetherTooMuch(wordsOfBatch(question)),
};

const matterOf = (question: string) => ({
  topic: lyeTopicIn(question),
  care: careTopicIn(question),
  asked: askedTopicIn(question),
  putIn: putInAmiss(question),
  is:
    Object.entries(SIGNS)
      .flatMap(([sign, shows]) => (shows(question) ? [sign] : []))
      .join(' ') || undefined,
});

function sumsOf(question: string) {
  const amounts = toldAmounts(wordsOfBatch(question)).map(({ role, grams, oil, isBatch }) =>
    [role, oil?.id, isBatch ? 'batch' : undefined, Math.round(10 * grams) / 10].filter(Boolean).join(' '),
  );
  const { isTold: _, ...amiss } = { isTold: false, ...lyeAmissIn(question) };
  const acid = acidTakesIn(question);
  const oils = oilsForLye(question);
  return {
    amounts: amounts.join(', '),
    alone: lyeAndOilsAlone(question),
    amiss: 'verdict' in amiss ? amiss : undefined,
    acid: acid && { acid: acid.acid, strength: 100 * acid.strength, ...acid.told },
    ready: readyLyeIn(question),
    impure: impureLyeIn(question),
    water: waterForLyeIn(question),
    scaled: scaledIn(question),
    spilled: lyeSpilledIn(question),
    oils: oils && {
      superfat: oils.superfat,
      grams: oils.grams.typical,
      oils: oils.oils.map(({ names, grams }) => `${names.en} ${Math.round(grams)}`),
    },
    beyond: lyeBeyondAllOils(question),
  };
}

/** A matter, and by which reader; nothing where none of them knows it. */
const MATTERS: readonly (readonly [question: string, read: object])[] = [
  ['how do I store sodium hydroxide', { topic: 'storing', is: 'calm' }],
  ['can I use a glass jug for lye', { topic: 'glass-jug' }],
  ['puedo usar un recipiente de vidrio para la sosa', { topic: 'glass-jug' }],
  [
    'do I add lye to water or water to lye',
    { topic: 'lye-into-water', asked: 'lye-into-water', is: 'order' },
  ],
  [
    'se echa la sosa al agua o el agua a la sosa?',
    { topic: 'lye-into-water', asked: 'lye-into-water', is: 'order' },
  ],
  ['my lye has clumps, can I still use it', { topic: 'clumped', asked: 'clumped', is: 'calm' }],
  ['is lye gone in the finished soap', { topic: 'lye-gone' }],
  ['when is cold process soap safe to use', { topic: 'when-safe' }],
  ['my soap zaps after 3 weeks', {}],
  ['mi jabón pica la lengua a las 4 semanas', {}],
  ['lye splashed in my eye', { is: 'hurt' }],
  ['me salpicó sosa en la piel', { is: 'hurt' }],
  ['the cat licked raw soap', {}],
  ['mi hijo tragó sosa', { topic: 'swallowed', is: 'harm hurt' }],
  ['lye water boiled over when I added the ice', {}],
  ['what temperature should lye be', { topic: 'mixing-temperature' }],
  ['a qué temperatura mezclo la sosa y los aceites', { topic: 'mixing-temperature' }],
  ['how long does lye solution keep', { topic: 'storing', asked: 'lye-water-keeps', is: 'curious' }],
  ['can I pour leftover lye down the drain', { topic: 'disposal', care: 'disposal' }],
  ['can I use drain cleaner as lye', { topic: 'drain-cleaner', asked: 'drain-cleaner' }],
  ['sirve la sosa de ferretería', {}],
  ['what is superfat', { asked: 'superfat-meaning', is: 'curious' }],
  ['qué es el sobreengrasado', { asked: 'superfat-meaning', is: 'curious' }],
  ['what does lye discount mean', { asked: 'superfat-meaning', is: 'curious' }],
  ['can my kids help', {}],
  ['puedo hacer jabón con la ventana cerrada', {}],
  ['my lye water is cloudy', { topic: 'cloudy-lye', care: 'cloudy-lye' }],
  ['el agua con sosa quedó turbia', { topic: 'cloudy-lye', care: 'cloudy-lye' }],
  ["forgot to add the lye, batter won't trace", { topic: 'lye-forgotten' }],
  ['can I melt lye crystals that went hard', { topic: 'clumped' }],
  ['is aluminium pot ok for lye', { topic: 'aluminium', care: 'aluminium' }],
  ['puedo usar olla de aluminio', { topic: 'aluminium', care: 'aluminium' }],
  ['do you need lye to make soap at all', {}],
  ['se puede hacer jabón sin sosa', { topic: 'no-lye' }],
  ['what happens if I use too much lye', { topic: 'too-much-in', care: 'too-much-in' }],
  ['qué pasa si me paso de sosa', { topic: 'too-much-in', care: 'too-much-in' }],
  ['my dog ate a bar of soap', {}],
  ['raw soap on my hands, it itches', {}],
  ['lye in fridge next to food', { topic: 'lye-by-food' }],
  ['dejé la sosa en la heladera', {}],
  ['can lye burn through wood', {}],
  ['potasa o sosa para jabón líquido', {}],
  ['koh for bar soap?', {}],
  ['is naoh the same as caustic soda', {}],
  ['la lejía es lo mismo que la sosa', {}],
  ['bleach or lye?', { topic: 'bleach' }],
  ['what ph should soap be', { topic: 'soap-ph' }],
  ['do I need a stick blender', {}],
  ['should lye be weighed or measured in spoons', {}],
  ['is it safe to breathe lye fumes', { topic: 'lye-fumes' }],
  ['olí el vapor de la sosa y toso', {}],
  ['I inhaled lye fumes and my throat hurts', { is: 'hurt' }],
  ['vinegar for lye burns?', {}],
  ['who can tell me how soap becomes soap', {}],
  ['why does lye get hot in water', {}],
  ['por qué se calienta la sosa en el agua', {}],
  ['can I reuse the lye jug for juice', {}],
  ['lye heavy soap, can I fix it', {}],
  ['cómo arreglo un jabón con exceso de sosa', {}],
  ['what if I mix up koh and naoh', { asked: 'koh-and-naoh' }],
  ['I measured lye in ml', {}],
  ['my scale was in ounces instead of grams', { topic: 'wrong-unit' }],
  ['I put in 1 tsp too much lye', { topic: 'too-much-in', care: 'too-much-in' }],
  ['le eché una cucharada de más de sosa', { topic: 'too-much-in', care: 'too-much-in' }],
  ['I put vinegar in my lye by mistake', {}],
  ['I put salt instead of lye', { topic: 'no-lye-in-it', care: 'no-lye-in-it' }],
  ['eché la sosa en la leche caliente', { topic: 'hot-liquid' }],
  ['I poured water on the lye', {}],
  ['does vinegar fix lye heavy soap, how much?', { topic: 'acid-on-soap', care: 'acid-on-soap' }],
  ['spilled half of the lye solution', { topic: 'clean-up' }],
  ['plan with gold mica', { is: 'planFirst' }],
];

/** Weights, and what is reckoned from them. Grams and percent, to a tenth. */
const WEIGHED: readonly (readonly [question: string, read: object])[] = [
  [
    'I doubled the lye by mistake, 128 g instead of 64, for 500 g olive. what now?',
    {
      amounts: 'unknown 128, meant 64, oil olive 500',
      topic: 'too-much-in',
      care: 'too-much-in',
      putIn: 'too-much-in',
    },
  ],
  [
    'I put 20 g too much lye in a 1 kg batch',
    {
      amounts: 'more 20, whole batch 1000',
      amiss: {
        percentOver: 15.5,
        superfat: { low: -21.5, typical: -9.8, high: -2.6 },
        verdict: 'lye-heavy',
        putGrams: 148.7,
        meantGrams: 128.7,
        meantSuperfat: 5,
        isOilShort: false,
      },
      topic: 'too-much-in',
      care: 'too-much-in',
      is: 'difference',
    },
  ],
  [
    'put 10% too much lye in 800 g olive, superfat was 5%',
    {
      amounts: 'oil olive 800',
      amiss: {
        percentOver: 10,
        superfat: { low: -7.8, typical: -4.5, high: -1.2 },
        verdict: 'lye-heavy',
        meantSuperfat: 5,
        moreOilGrams: 80,
        isOilShort: false,
      },
    },
  ],
  [
    'le puse 15 g de sosa de más a 700 g de aceites',
    {
      amounts: 'more 15, whole 700',
      amiss: {
        percentOver: 16.6,
        superfat: { low: -14.4, typical: -10.8, high: -3.3 },
        verdict: 'lye-heavy',
        putGrams: 105.1,
        meantGrams: 90.1,
        meantSuperfat: 5,
        moreOilGrams: 116.5,
        isOilShort: false,
      },
      topic: 'too-much-in',
      care: 'too-much-in',
      is: 'difference',
    },
  ],
  [
    'me faltaron 12 g de sosa en una tanda de 1 kg',
    {
      amounts: 'less 12, whole batch 1000',
      amiss: {
        percentOver: -9.3,
        superfat: { low: 8.3, typical: 13.9, high: 22.1 },
        verdict: 'usual',
        putGrams: 116.7,
        meantGrams: 128.7,
        meantSuperfat: 5,
        isOilShort: false,
      },
    },
  ],
  [
    'recipe said 110 g lye, I weighed 120 g, 800 g olive',
    {
      amounts: 'meant 110, put 120, oil olive 800',
      amiss: {
        percentOver: 9.1,
        superfat: { low: -14.4, typical: -10.6, high: -7.4 },
        verdict: 'lye-heavy',
        putGrams: 120,
        meantGrams: 110,
        meantSuperfat: 5,
        moreOilGrams: 72.7,
        isOilShort: false,
      },
    },
  ],
  [
    'the scale was 5 g over, 110 g lye, 800 g olive',
    { amounts: 'unknown 5, lye 110, oil olive 800', topic: 'scale' },
  ],
  [
    'forgot the 50 g castor in a 1 kg batch, lye is in',
    {
      amounts: 'oil castor 50, whole batch 1000',
      amiss: {
        percentOver: 5,
        superfat: { low: -5.8, typical: 0.3, high: 4.7 },
        verdict: 'may-be-heavy',
        meantSuperfat: 5,
        moreOilGrams: 50,
        isOilShort: true,
      },
      topic: 'oil-forgotten',
    },
  ],
  [
    'can I put 10 g more lye in 800 g olive?',
    { amounts: 'more 10, oil olive 800', topic: 'more-lye', is: 'difference' },
  ],
  [
    'is 150 g lye too much for 1 kg olive?',
    { amounts: 'more 150, oil olive 1000', beyond: 150, is: 'weighed whether' },
  ],
  [
    'I added 2 tbsp extra lye to 500 g oils',
    { amounts: 'whole 500', topic: 'too-much-in', care: 'too-much-in' },
  ],
  [
    'is 120 g lye right for 800 g olive and 100 g castor?',
    { amounts: 'lye 120, oil olive 800, oil castor 100', is: 'weighed' },
  ],
  ['200 g of water instead of 300 with 120 g lye', { amounts: 'water 200, water 300, lye 120' }],
  [
    'I spilt 50 g of 360 g lye solution',
    {
      amounts: 'unknown 50, lye 360',
      spilled: { grams: 50, ofGrams: 360, percent: 13.9, superfat: 18.2, meantSuperfat: 5 },
      topic: 'clean-up',
    },
  ],
  [
    'se me derramaron 40 g de la lejía, llevaba 100 g de sosa y 200 de agua',
    { amounts: 'unknown 40, lye 100, water 200', topic: 'clean-up' },
  ],
  [
    'how much more lye for 10 g citric acid?',
    {
      amounts: 'unknown 10',
      acid: { acid: 'citric', strength: 100, grams: 10, naoh: 6.2, koh: 8.8 },
      is: 'amount',
    },
  ],
  [
    'cuánta sosa más por 15 g de ácido cítrico?',
    {
      amounts: 'unknown 15',
      acid: { acid: 'citric', strength: 100, grams: 15, naoh: 9.4, koh: 13.1 },
      is: 'amount',
    },
  ],
  [
    'how much extra lye does 100 g of 5% vinegar take?',
    {
      amounts: 'unknown 100',
      acid: { acid: 'vinegar', strength: 5, grams: 100, naoh: 3.3, koh: 4.7 },
      is: 'amount',
    },
  ],
  [
    'how much lye does 20 g lactic acid use up?',
    {
      amounts: 'unknown 20',
      acid: { acid: 'lactic', strength: 100, grams: 20, naoh: 8.9, koh: 12.5 },
      is: 'amount',
    },
  ],
  [
    'cuánta sosa gasta 200 ml de vinagre?',
    {
      amounts: 'unknown 200',
      acid: { acid: 'vinegar', strength: 5, grams: 200, naoh: 6.7, koh: 9.3 },
      is: 'amount',
    },
  ],
  [
    'my recipe calls for 100 g lye and 250 g water, I have 50% lye solution, how much do I need?',
    {
      amounts: 'meant 100, water 250',
      ready: { strength: 50, lyeGrams: 100, solutionGrams: 200, waterGrams: 150 },
    },
  ],
  [
    'la receta pide 120 g de sosa y tengo solución al 40%, cuánto necesito',
    { amounts: 'meant 120', ready: { strength: 40, lyeGrams: 120, solutionGrams: 300 } },
  ],
  [
    'my recipe needs 90 g NaOH, my premix is half and half, how much?',
    { amounts: 'lye 90', ready: { strength: 50, lyeGrams: 90, solutionGrams: 180 } },
  ],
  [
    'my lye is 95% pure and the recipe needs 100 g pure, how much more?',
    { amounts: 'unknown 100', impure: { percent: 95, pureGrams: 100, grams: 105.3 } },
  ],
  [
    'la sosa es 90% de pureza, me falta para 150 g?',
    { amounts: 'unknown 150', impure: { percent: 90, pureGrams: 150, grams: 166.7 } },
  ],
  [
    'how much water for 100 g lye at 33%',
    { amounts: 'lye 100', water: { lyeGrams: 100, waterGrams: 203, percent: 33 } },
  ],
  [
    'water for 120 g lye at 2:1',
    { amounts: 'lye 120, unknown 1', water: { lyeGrams: 120, waterGrams: 240, percent: 33.3 } },
  ],
  [
    'how much water for 90 g lye?',
    { amounts: 'lye 90', water: { lyeGrams: 90, waterGrams: 182.7, percent: 33 } },
  ],
  [
    'agua para 100 g de sosa al 30%',
    { amounts: 'lye 100', water: { lyeGrams: 100, waterGrams: 233.3, percent: 30 } },
  ],
  [
    'I have 100 g lye, how much olive oil does it take?',
    { amounts: 'lye 100', oils: { superfat: 5, grams: 776, oils: ['Olive oil 776'] } },
  ],
  [
    'tengo 142 g de sosa, cuánto aceite de coco puedo usar?',
    { amounts: 'lye 142', oils: { superfat: 5, grams: 820, oils: ['Coconut oil 820'] } },
  ],
  [
    '110 g lye for 1 kg of oils, I want to make 2.5 kg of oils',
    { amounts: 'lye 110, whole 1000, whole 2500', scaled: { factor: 2.5, oilGrams: 2500, lyeGrams: 275 } },
  ],
  ['95 g de sosa para 700 g de aceites, quiero hacer 1,4 kg', { amounts: 'lye 95, whole 700, unknown 1400' }],
  [
    "300 g lye for 500 g olive and I don't know how much coconut",
    { amounts: 'lye 300, oil olive 500', topic: 'lye-guessed', care: 'lye-guessed' },
  ],
  [
    'plan a batch with 700 g olive, 300 g coconut, 20 g honey, gold mica',
    { amounts: 'oil olive 700, oil coconut 300, unknown 20', is: 'planFirst' },
  ],
  [
    'planifica una tanda con 600 g de oliva y 200 g de coco, sobreengrasado 6%, miel',
    { amounts: 'oil olive 600, oil coconut 200', is: 'planFirst' },
  ],
  ['how much lye is in 100 g of batter', { amounts: 'unknown 100', is: 'amount' }],
  ['cuánta lejía para 500 g de oliva', { amounts: 'oil olive 500', is: 'bleach' }],
  ['how much lye for 500 g olive', { amounts: 'oil olive 500', is: 'amount' }],
  ['cuánta sosa para un kilo de coco', { amounts: 'oil coconut 1000', is: 'amount' }],
  [
    'I weighed 95 g of caustic soda but the recipe wanted 120 g, 900 g lard',
    {
      amounts: 'put 95, meant 120, oil lard 900',
      amiss: {
        percentOver: -20.8,
        superfat: { low: 22.9, typical: 24, high: 27.1 },
        verdict: 'soft',
        putGrams: 95,
        meantGrams: 120,
        meantSuperfat: 5,
        isOilShort: false,
      },
    },
  ],
  [
    'the recipe says 4 oz lye, I used 5 oz, 2 lb oils',
    {
      amounts: 'meant 113.4, put 141.7, whole 907.2',
      amiss: {
        percentOver: 25,
        superfat: { low: -22.5, typical: -18.7, high: -15 },
        verdict: 'lye-heavy',
        putGrams: 141.7,
        meantGrams: 113.4,
        meantSuperfat: 5,
        moreOilGrams: 226.8,
        isOilShort: false,
      },
    },
  ],
  [
    'me pasé por 20 g de sosa en 900 g de aceites',
    {
      amounts: 'more 20, whole 900',
      amiss: {
        percentOver: 17.3,
        superfat: { low: -15, typical: -11.4, high: -3.8 },
        verdict: 'lye-heavy',
        putGrams: 135.9,
        meantGrams: 115.9,
        meantSuperfat: 5,
        moreOilGrams: 155.4,
        isOilShort: false,
      },
      topic: 'too-much-in',
      care: 'too-much-in',
    },
  ],
  [
    'quedé corto de 10 g de sosa para 800 g de oliva',
    {
      amounts: 'less 10, oil olive 800',
      amiss: {
        percentOver: -9.7,
        superfat: { low: 11.3, typical: 14.2, high: 16.7 },
        verdict: 'usual',
        putGrams: 93.1,
        meantGrams: 103.1,
        meantSuperfat: 5,
        isOilShort: false,
      },
      is: 'weighed',
    },
  ],
  [
    'sobraron 15 g de sosa, la receta pedía 120 g, 900 g de oliva',
    {
      amounts: 'more 15, meant 120, oil olive 900',
      amiss: {
        percentOver: 12.5,
        superfat: { low: -14.4, typical: -10.6, high: -7.4 },
        verdict: 'lye-heavy',
        putGrams: 135,
        meantGrams: 120,
        meantSuperfat: 5,
        moreOilGrams: 112.5,
        isOilShort: false,
      },
    },
  ],
  [
    'aceite 1 kilo sosa 200 g agua 350',
    { amounts: 'whole 1000, lye 200, water 350', alone: { lye: 200, oils: 1000 } },
  ],
  ['olive 700 coconut 300 lye 140', { amounts: 'oil olive 700, oil coconut 300, lye 140' }],
  [
    'the olive bottle was 100 g short, 700 g olive, 95 g lye',
    { amounts: 'unknown 100, oil olive 700, lye 95', topic: 'drink-bottle' },
  ],
  [
    '160 g de sosa para 600 g de oliva, dupliqué la sosa',
    {
      amounts: 'lye 160, oil olive 600',
      amiss: {
        percentOver: 100,
        superfat: { low: -103.3, typical: -96.6, high: -90.8 },
        verdict: 'lye-heavy',
        putGrams: 160,
        meantGrams: 80,
        meantSuperfat: 5,
        moreOilGrams: 600,
        isOilShort: false,
      },
      is: 'weighed',
    },
  ],
  ["didn't double the lye, 64 g for 500 g olive", { amounts: 'lye 64, oil olive 500' }],
  [
    'lye over by 8 percent, 1 kg of oils',
    {
      amounts: 'whole 1000',
      amiss: {
        percentOver: 8,
        superfat: { low: -5.8, typical: -2.6, high: 0.6 },
        verdict: 'lye-heavy',
        meantSuperfat: 5,
        moreOilGrams: 80,
        isOilShort: false,
      },
    },
  ],
  ['tripliqué la potasa, 300 g, para 500 g de coco', { amounts: 'unknown 300, oil coconut 500' }],
  [
    '¿150 g de sosa es mucho para 1 kg de oliva?',
    { amounts: 'lye 150, oil olive 1000', beyond: 150, is: 'weighed' },
  ],
  ['is 100 g lye too little for 1 kg olive?', { amounts: 'less 100, oil olive 1000', is: 'weighed whether' }],
  [
    '50 g less lye, 1 kg oils',
    {
      amounts: 'less 50, whole 1000',
      amiss: {
        percentOver: -38.8,
        superfat: { low: 28.5, typical: 41.9, high: 46.2 },
        verdict: 'soft',
        putGrams: 78.7,
        meantGrams: 128.7,
        meantSuperfat: 5,
        isOilShort: false,
      },
      is: 'difference',
    },
  ],
  ['I added the water twice, 240 g', { amounts: 'put 240' }],
  ['how much lye for 60 g stearic acid?', { amounts: 'oil stearic-acid 60', is: 'amount' }],
  ['cuánta potasa come 25 g de ácido láctico?', { amounts: 'unknown 25', is: 'amount' }],
  [
    'how much lye does 30 g citric acid monohydrate take',
    {
      amounts: 'unknown 30',
      acid: { acid: 'citric-monohydrate', strength: 100, grams: 30, naoh: 17.1, koh: 24 },
      is: 'amount',
    },
  ],
  [
    'how much lye for 10 g citric acid in 500 g olive?',
    { amounts: 'unknown 10, oil olive 500', is: 'amount' },
  ],
  [
    'how much more NaOH for 250 ml vinegar of 8%?',
    {
      amounts: 'unknown 250',
      acid: { acid: 'vinegar', strength: 8, grams: 250, naoh: 13.3, koh: 18.7 },
      is: 'amount',
    },
  ],
  [
    'recipe needs 80 g KOH, my solution is 45%, how much',
    { amounts: 'lye 80', ready: { strength: 45, lyeGrams: 80, solutionGrams: 177.8 } },
  ],
  [
    'receta lleva 100 g de sosa, 200 g de agua, tengo disolución ya preparada al 50%',
    {
      amounts: 'meant 100, water 200',
      ready: { strength: 50, lyeGrams: 100, solutionGrams: 200, waterGrams: 100 },
    },
  ],
  ['recipe wants 100 g lye, my lye solution is 70%', { amounts: 'meant 100' }],
  ['my lye is 100% pure, need 100 g, how much extra', { amounts: 'unknown 100' }],
  [
    'naoh 98% purity, need 140 g, adjust?',
    { amounts: 'unknown 140', impure: { percent: 98, pureGrams: 140, grams: 142.9 } },
  ],
  ['cuánta agua para 100 g de potasa', { amounts: 'unknown 100' }],
  [
    'how much water for 100 g lye at 1:1',
    { amounts: 'lye 100, unknown 1', water: { lyeGrams: 100, waterGrams: 100, percent: 50 } },
  ],
  ['how much water for 100 g lye at 10%', { amounts: 'lye 100' }],
  ['water for 3 oz lye, 38%', { amounts: 'lye 85', water: { lyeGrams: 85, waterGrams: 138.8, percent: 38 } }],
  [
    'agua para 90 g sosa 2 a 1',
    { amounts: 'lye 90, unknown 1', water: { lyeGrams: 90, waterGrams: 180, percent: 33.3 } },
  ],
  ['how much water instead of milk for 100 g lye', { amounts: 'meant 100' }],
  [
    'I have 200 g KOH, how much coconut oil',
    { amounts: 'lye 200', oils: { superfat: 5, grams: 741, oils: ['Coconut oil 741'] } },
  ],
  [
    'I have 100 g lye, how much olive oil for 10% superfat',
    { amounts: 'lye 100', oils: { superfat: 10, grams: 819.1, oils: ['Olive oil 819'] } },
  ],
  [
    'tengo 100 g de sosa, cuánta manteca de cerdo',
    { amounts: 'lye 100', oils: { superfat: 5, grams: 757.7, oils: ['Lard 758'] } },
  ],
  ['I have 100 g lye and 300 g olive, how much coconut?', { amounts: 'lye 100, oil olive 300' }],
  ['I have 100 g lye, how much margarine', { amounts: 'lye 100' }],
  [
    '120 g lye for 900 g oils, make it 3 kg oils',
    { amounts: 'lye 120, whole 900, whole 3000', scaled: { factor: 3.3, oilGrams: 3000, lyeGrams: 400 } },
  ],
  [
    '76 g lye for 500 g oils, halve it',
    {
      amounts: 'lye 76, whole 500',
      alone: { lye: 76, oils: 500 },
      scaled: { factor: 0.5, oilGrams: 250, lyeGrams: 38 },
    },
  ],
  [
    'recipe is 1 kg oils with 140 g lye, I want 500 g of oils',
    { amounts: 'whole 1000, lye 140, whole 500', scaled: { factor: 0.5, oilGrams: 500, lyeGrams: 70 } },
  ],
  [
    'receta de 1 kg de aceites con 140 g de sosa, quiero 3 kg de aceites',
    { amounts: 'whole 1000, lye 140, whole 3000', scaled: { factor: 3, oilGrams: 3000, lyeGrams: 420 } },
  ],
  [
    'lost 20 g out of 300 g lye water, superfat 8%',
    {
      amounts: 'unknown 20, lye 300',
      spilled: { grams: 20, ofGrams: 300, percent: 6.7, superfat: 14.1, meantSuperfat: 8 },
    },
  ],
  [
    'derramé 25 g de 300 g de lejía, sobreengrasado 10%',
    {
      amounts: 'unknown 25, whole 300',
      spilled: { grams: 25, ofGrams: 300, percent: 8.3, superfat: 17.5, meantSuperfat: 10 },
      topic: 'clean-up',
      is: 'bleach',
    },
  ],
  [
    '900 g lye, 500 g olive, 300 coconut',
    { amounts: 'lye 900, oil olive 500, oil coconut 300', beyond: 900, is: 'weighed' },
  ],
  ['1 kg lye for half a kilo of olive and some coconut', { amounts: 'lye 1000, oil olive 500' }],
  [
    'plan 1 kg batch, 70% olive 30% coconut, 5% superfat, lye 33%, rose clay',
    { amounts: 'whole batch 1000', is: 'planFirst' },
  ],
  ['make me a soap of 500 g lard and oat milk, KOH', { amounts: 'oil lard 500' }],
  [
    'step by step please: 400 g olive, 200 g coconut, and sugar',
    { amounts: 'oil olive 400, oil coconut 200' },
  ],
];

const PLANS: readonly (readonly [question: string, plan: object])[] = [
  [
    'plan a batch with 700 g olive, 300 g coconut, 20 g honey, gold mica',
    { given: { oils: '700 g olive, 300 g coconut', additives: 'honey 20 g' }, left: ['gold mica'] },
  ],
  [
    'planifica una tanda con 600 g de oliva y 200 g de coco, sobreengrasado 6%, miel',
    { given: { oils: '600 g de oliva, 200 g de coco', superfat: 6, additives: 'miel' }, left: [] },
  ],
  [
    'plan 1 kg batch, 70% olive 30% coconut, 5% superfat, lye 33%, rose clay',
    {
      given: { oils: '70% olive 30% coconut', superfat: 5, additives: 'clay' },
      left: ['1 kg', '33%', 'rose'],
    },
  ],
  [
    'make me a soap of 500 g lard and oat milk, KOH',
    { given: { oils: '500 g lard', lye: 'KOH', liquid: 'oat milk' }, left: [] },
  ],
  [
    'step by step please: 400 g olive, 200 g coconut, and sugar',
    { given: { oils: '400 g olive, 200 g coconut', additives: 'sugar' }, left: [] },
  ],
];

describe('what of lye is asked', () => {
  test.each(MATTERS)('%s', (question, read) => {
    expect(tenths(matterOf(question))).toEqual(read);
  });

  test.each(WEIGHED)('with its weights: %s', (question, read) => {
    expect(tenths({ ...sumsOf(question), ...matterOf(question) })).toEqual(read);
  });

  test.each(PLANS)('as a plan: %s', (question, plan) => {
    expect(readPlanQuestion(question)).toEqual(plan);
  });
});
