import { action } from '../../src/conversation/command.ts';
import { choice, text } from '../../src/conversation/option.ts';
import { parseStock } from '../../src/engine/quantities/stock.ts';
import { refuse } from '../../src/engine/refusal.ts';
import * as shelf from '../../src/records/shelf/index.ts';
import { whatItIs } from '../../src/records/shelf/jars/what-it-is.ts';
import { compareReply } from './compare.ts';
import { undoChoice } from './follow-ups.ts';
import {
  amount,
  colourant,
  gramsAsked,
  ingredients,
  item,
  lot,
  measuresOf,
  pigment,
  price,
  size,
  suggestColourants,
  suggestItems,
  told,
} from './options.ts';
import { priceAsked } from './price.ts';
import { describedReply } from './view.ts';

declare module '../../src/engine/refusal.ts' {
  interface Reasons {
    'spoon-weight-unreadable': { text: string };
  }
}

/** Grams of a level teaspoon as they were told. Throws a Refusal `spoon-weight-unreadable` where it is no weight. */
function spoonGrams(text: string): number {
  const weight = parseStock(text);
  return weight.measure === 'mass'
    ? weight.grams
    : refuse('spoon-weight-unreadable', { text: text.slice(0, 60) });
}

/** What a jar and its lot are like: tests, weights, what it is, when it runs low. */
export const lotActions = {
  'dish-test': action({
    purpose: {
      en: 'Where a pinch of this lot went in a dish of water',
      es: 'Adónde fue una pizca de este lote en un plato de agua',
    },
    anywhere: true,
    seenBy: 'asker',
    options: {
      item,
      result: choice(
        { en: 'What the pinch did', es: 'Qué hizo la pizca' },
        {
          water: { en: 'It swirled into the water', es: 'Se mezcló con el agua' },
          oil: {
            en: 'It floated or sat there; oil took it',
            es: 'Flotó o se quedó quieta; entró en aceite',
          },
          neither: { en: 'Neither water nor oil took it', es: 'No entró ni en agua ni en aceite' },
        },
      ),
    },
    completes: { item: suggestItems },
    async answer({ item: name, result }, context) {
      const outcome = await shelf.dishTest(context.shelf, name, result, context.change);
      return told(context.say.shelf.dishTested({ name: outcome.name, result }), outcome, context);
    },
  }),
  weigh: action({
    purpose: {
      en: 'What one level teaspoon of yours weighs',
      es: 'Cuánto pesa una cucharadita rasa del tuyo',
    },
    anywhere: true,
    seenBy: 'asker',
    options: {
      item,
      amount: text({
        en: 'What one level teaspoon weighs: “2.4 g”. A bare number is grams',
        es: 'Lo que pesa una cucharadita rasa: «2,4 g». Un número solo son gramos',
      }),
    },
    formerly: { grams: 'amount' },
    completes: { item: suggestItems },
    async answer({ item: name, amount: weight }, context) {
      const grams = spoonGrams(weight);
      const spoon = { grams, spoonMillilitres: (await measuresOf(context)).teaspoon };
      const outcome = await shelf.weighSpoon(context.shelf, name, spoon, context.change);
      return told(context.say.shelf.weighed({ name: outcome.name, grams }), outcome, context);
    },
  }),
  'new-lot': action({
    purpose: {
      en: 'A new lot: its tests and weights start anew',
      es: 'Un lote nuevo: sus pruebas y pesos empiezan de cero',
    },
    anywhere: true,
    seenBy: 'asker',
    options: {
      item,
      amount: amount.optional(),
      lot: lot.optional(),
    },
    completes: { item: suggestItems },
    async answer(asked, context) {
      const lot = {
        label: asked.lot,
        ...(asked.amount !== undefined && {
          grams: await gramsAsked({ item: asked.item, amount: asked.amount }, context),
        }),
      };
      const outcome = await shelf.startLot(context.shelf, asked.item, lot, context.change);
      return {
        ...told(context.say.shelf.lotStarted(outcome), outcome, context),
        choices: undoChoice(outcome, context.change.cause, context),
      };
    },
  }),
  describe: action({
    purpose: {
      en: 'Say what an item is, so that I can dose it',
      es: 'Di qué es un producto, para que pueda dosificarlo',
    },
    anywhere: true,
    seenBy: 'asker',
    options: {
      item,
      colourant: colourant.optional(),
      ingredients: ingredients.optional(),
      pigment: pigment.optional(),
      price: price.optional(),
      size: size.optional(),
    },
    completes: { item: suggestItems, colourant: suggestColourants },
    async answer(asked, context) {
      const { id, name, colourant: known, lot } = await shelf.findItem(context.shelf, asked.item);
      const found = whatItIs(name, { ...asked, known });
      const spooned = { name, colourant: found.colourant, lot };
      const cost = priceAsked(asked, { spooned, measures: await measuresOf(context) });
      const what = {
        colourant: found.colourant?.id,
        ingredients: found.ingredients,
        pigmentFraction: asked.pigment === undefined ? undefined : asked.pigment / 100,
        price: cost,
      };
      const outcome = await shelf.describeItem(context.shelf, id, what, context.change);
      return describedReply(found, outcome, { price: cost, say: context.say });
    },
  }),
  compare: action({
    purpose: {
      en: 'Two jars for the same depth of colour: strength, hue, cost',
      es: 'Dos botes para la misma intensidad: fuerza, tono, coste',
    },
    anywhere: true,
    seenBy: 'asker',
    options: {
      one: text({ en: 'A jar of yours, or any colourant', es: 'Un bote tuyo, o cualquier colorante' }),
      other: text({ en: 'And the other', es: 'Y el otro' }),
    },
    completes: { one: suggestItems, other: suggestItems },
    answer: compareReply,
  }),
  'low-mark': action({
    purpose: { en: 'At how much left I should warn you', es: 'Con cuánto restante debo avisarte' },
    anywhere: true,
    seenBy: 'asker',
    options: {
      item,
      amount: text({
        en: 'How much is left then: “10 g”, “1 tsp”; 0 for only when empty',
        es: 'Cuánto queda entonces: «10 g», «1 cdta»; 0 solo cuando se acabe',
      }),
    },
    formerly: { grams: 'amount' },
    completes: { item: suggestItems },
    async answer({ item: name, amount: left }, context) {
      const isEmpty = Number(left.replace(',', '.')) === 0;
      const grams = isEmpty ? 0 : await gramsAsked({ item: name, amount: left }, context);
      const outcome = await shelf.setLowMark(context.shelf, name, grams, context.change);
      return told(context.say.shelf.lowMarkSet({ name: outcome.name, grams }), outcome, context);
    },
  }),
};
