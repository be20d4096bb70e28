import type { Suggestion } from '../../src/conversation/command.ts';
import type { Context } from '../../src/conversation/context.ts';
import { number, text } from '../../src/conversation/option.ts';
import { completeColourants } from '../../src/engine/colourants/complete.ts';
import { kitchenOf, preferencesOf } from '../../src/records/preferences.ts';
import * as shelf from '../../src/records/shelf/index.ts';
import { itemGrams } from '../../src/records/shelf/jars/item-grams.ts';
import { phrases } from '../../src/words/declared.ts';
import { changedReply } from './view.ts';

const says = phrases('shelf');

export const item = text(says.options.item);
export const amount = text(says.options.amount);
export const colourant = text(says.options.colourant);
export const pigment = number(says.options.pigment, { least: 0.01, most: 100 });

export const ingredients = text(says.options.ingredients, { most: 4000 });
export const price = text(says.options.price, { most: 60 });
export const size = text(says.options.size, { most: 60 });
export const lot = text(says.options.lot, { most: 60 });

export const measuresOf = async ({ store, asker }: Context) =>
  kitchenOf(await preferencesOf(store, asker.id));

export const gramsAsked = async (asked: { item: string; amount: string }, context: Context) =>
  itemGrams(context.shelf, asked, await measuresOf(context));

export const suggestItems = async (typed: string, context: Context): Promise<readonly Suggestion[]> =>
  (await shelf.nearestNames(context.shelf, typed, 25)).map(name => ({ name, value: name }));
export const suggestColourants = (typed: string, { language }: Context) =>
  completeColourants(typed, language);

export const told = (headline: string, outcome: shelf.Outcome, { say }: Context) =>
  changedReply(headline, outcome, say);
