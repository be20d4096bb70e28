import { action } from '../../src/conversation/command.ts';
import type { Context } from '../../src/conversation/context.ts';
import { text } from '../../src/conversation/option.ts';
import { parseStock } from '../../src/engine/quantities/told/stock.ts';
import { fold } from '../../src/engine/text/fold.ts';
import { noteShelf } from '../../src/records/group-shelves.ts';
import * as shelf from '../../src/records/shelf/index.ts';
import { gramsOf } from '../../src/records/shelf/jars/jar.ts';
import { whatItIs } from '../../src/records/shelf/jars/what-it-is.ts';
import { phrases } from '../../src/words/declared.ts';
import { askRemove, removedReply, undoChoice, undone } from './follow-ups.ts';
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
import { addedReply, itemReply, shelfReply } from './view.ts';

const says = phrases('shelf');

/** Stock is kept in whole milligrams: what is said of it on adding is what is read of it afterwards. */
const wholeMilligrams = (grams: number): number => Math.round(grams * 1000) / 1000;

/** What a movement did, and the way back from it. */
const moved = (headline: string, outcome: shelf.Outcome, context: Context) => ({
  ...told(headline, outcome, context),
  choices: undoChoice(outcome, context.change.cause, context),
});

/** A removal wants the whole name; what only resembles one is refused by the removal itself. */
const isWhole = (name: string, asked: string): boolean => fold(name) === fold(asked);

/** What is on the shelf, and how much. */
export const stockActions = {
  add: action({
    purpose: says.add.purpose,
    anywhere: true,
    seenBy: 'asker',
    options: {
      item: text(says.add.item, { most: 100 }),
      amount: amount.optional(),
      colourant: colourant.optional(),
      ingredients: ingredients.optional(),
      pigment: pigment.optional(),
      lot: lot.optional(),
      price: price.optional(),
      size: size.optional(),
    },
    completes: { colourant: suggestColourants },
    async answer(asked, context) {
      const found = whatItIs(asked.item, asked);
      const measures = await measuresOf(context);
      const grams =
        asked.amount === undefined
          ? undefined
          : wholeMilligrams(
              gramsOf(parseStock(asked.amount, measures), { name: asked.item, colourant: found.colourant }),
            );
      const wanted = {
        name: asked.item,
        colourant: found.colourant?.id,
        ingredients: found.ingredients,
        lot: asked.lot,
        grams,
        ...(asked.pigment !== undefined && { pigmentFraction: asked.pigment / 100 }),
        price: priceAsked(asked, {
          grams,
          spooned: { name: asked.item, colourant: found.colourant },
          measures,
        }),
      };
      // First, since a noted shelf that stays empty harms nobody.
      // Where only they let us in there are no palettes, and nobody could tell when they leave.
      if (context.here?.letInBy !== 'member')
        await context.store.commit(noteShelf(context.group, context.asker.id, new Date(context.at)));
      const outcome = await shelf.addItem(context.shelf, wanted, context.change);
      return addedReply(found, outcome, context.say);
    },
  }),
  list: action({
    purpose: says.list.purpose,
    anywhere: true,
    seenBy: 'asker',
    options: {},
    async answer(_asked, context) {
      const reply = shelfReply(await shelf.listShelf(context.shelf), context.say);
      const count = await shelf.setAsideOn(context.shelf);
      if (count === 0) return reply;
      // Before the list, which may be long, and never folded: it is their own jar.
      const told = { kind: 'text', text: context.say.privacy.jarsSetAside({ count }), firm: true } as const;
      return { ...reply, blocks: [told, ...reply.blocks] };
    },
  }),
  show: action({
    purpose: says.show.purpose,
    anywhere: true,
    seenBy: 'asker',
    options: { item },
    completes: { item: suggestItems },
    async answer(asked, context) {
      return itemReply(await shelf.showItem(context.shelf, asked.item), context.say);
    },
  }),
  use: action({
    purpose: says.use.purpose,
    anywhere: true,
    seenBy: 'asker',
    options: { item, amount },
    completes: { item: suggestItems },
    async answer(asked, context) {
      const grams = await gramsAsked(asked, context);
      const outcome = await shelf.useItem(context.shelf, asked.item, grams, context.change);
      return moved(context.say.shelf.taken(outcome), outcome, context);
    },
  }),
  restock: action({
    purpose: says.restock.purpose,
    anywhere: true,
    seenBy: 'asker',
    options: { item, amount },
    completes: { item: suggestItems },
    async answer(asked, context) {
      const grams = await gramsAsked(asked, context);
      const outcome = await shelf.restockItem(context.shelf, asked.item, grams, context.change);
      const { name, change = grams, left = 0 } = outcome;
      return moved(context.say.shelf.restocked({ name, put: change, left }), outcome, context);
    },
  }),
  remove: action({
    purpose: says.remove.purpose,
    anywhere: true,
    seenBy: 'asker',
    options: { item },
    completes: { item: suggestItems },
    async answer(asked, context) {
      const kept = await shelf.showItem(context.shelf, asked.item).catch(() => undefined);
      const lines = kept?.history.length ?? 0;
      // Its first line says only that it was put there: nothing is lost with that.
      if (kept && lines > 1 && isWhole(kept.item.name, asked.item))
        return askRemove({ id: kept.item.id, name: kept.item.name, lines }, context);
      return removedReply(await shelf.removeItem(context.shelf, asked.item, context.change), context);
    },
  }),
  undo: action({
    purpose: says.undo.purpose,
    anywhere: true,
    seenBy: 'asker',
    options: {},
    async answer(_asked, context) {
      return undone(await shelf.lastOnShelf(context.shelf, new Date(context.at)), context);
    },
  }),
};
