import { action } from '../../src/conversation/command.ts';
import { choice, text } from '../../src/conversation/option.ts';
import { readDecimal } from '../../src/engine/quantities/number.ts';
import { parseStock } from '../../src/engine/quantities/told/stock.ts';
import { refuse } from '../../src/engine/refusal.ts';
import * as shelf from '../../src/records/shelf/index.ts';
import { whatItIs } from '../../src/records/shelf/jars/what-it-is.ts';
import { phrases } from '../../src/words/declared.ts';
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

const says = phrases('shelf');

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
    purpose: says['dish-test'].purpose,
    anywhere: true,
    seenBy: 'asker',
    options: {
      item,
      result: choice(says['dish-test'].result),
    },
    completes: { item: suggestItems },
    async answer({ item: name, result }, context) {
      const outcome = await shelf.dishTest(context.shelf, name, result, context.change);
      return told(context.say.shelf.dishTested({ name: outcome.name, result }), outcome, context);
    },
  }),
  weigh: action({
    purpose: says.weigh.purpose,
    anywhere: true,
    seenBy: 'asker',
    options: {
      item,
      amount: text(says.weigh.amount),
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
    purpose: says['new-lot'].purpose,
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
    purpose: says.describe.purpose,
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
    purpose: says.compare.purpose,
    anywhere: true,
    seenBy: 'asker',
    options: {
      one: text(says.compare.one),
      other: text(says.compare.other),
    },
    completes: { one: suggestItems, other: suggestItems },
    answer: compareReply,
  }),
  'low-mark': action({
    purpose: says['low-mark'].purpose,
    anywhere: true,
    seenBy: 'asker',
    options: {
      item,
      amount: text(says['low-mark'].amount),
    },
    formerly: { grams: 'amount' },
    completes: { item: suggestItems },
    async answer({ item: name, amount: left }, context) {
      const isEmpty = readDecimal(left.trim())[0] === 0;
      const grams = isEmpty ? 0 : await gramsAsked({ item: name, amount: left }, context);
      const outcome = await shelf.setLowMark(context.shelf, name, grams, context.change);
      return told(context.say.shelf.lowMarkSet({ name: outcome.name, grams }), outcome, context);
    },
  }),
};
