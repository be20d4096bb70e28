import { action, commandGroup, type Suggestion } from '../../src/conversation/command.ts';
import type { Context } from '../../src/conversation/context.ts';
import { choice, number, text } from '../../src/conversation/option.ts';
import { completeColourants } from '../../src/engine/colourants/complete.ts';
import { parseStock } from '../../src/engine/quantities/stock.ts';
import { MEASURES } from '../../src/engine/quantities/units.ts';
import { fold } from '../../src/engine/text/fold.ts';
import { noteShelf } from '../../src/records/group-shelves.ts';
import { preferencesOf } from '../../src/records/preferences.ts';
import * as shelf from '../../src/records/shelf/index.ts';
import { itemGrams } from '../../src/records/shelf/item-grams.ts';
import { gramsOf } from '../../src/records/shelf/jar.ts';
import { whatItIs } from '../../src/records/shelf/what-it-is.ts';
import { askRemove, shelfFollowUps, undoChoice, undone } from './follow-ups.ts';
import { addedReply, changedReply, describedReply, itemReply, shelfReply } from './view.ts';

const item = text({
  en: 'The item by its name on your shelf',
  es: 'El producto por su nombre en tu estantería',
});
const amount = text({
  en: 'How much: “25 g”, “1 oz”, “1/2 tsp”. A bare number is grams',
  es: 'Cuánto: «25 g», «1 oz», «1/2 cdta». Un número solo son gramos',
});
const colourant = text({
  en: 'What it is: a colourant of the catalogue, such as “gold mica”',
  es: 'Qué es: un colorante del catálogo, como «mica dorada»',
});
const pigment = number(
  {
    en: 'Percent pigment by weight, if it came already dispersed',
    es: 'Porcentaje de pigmento en peso, si vino ya disperso',
  },
  { least: 0.01, most: 100 },
);

const ingredients = text(
  {
    en: 'What the label lists, so that I can warn you: “Mica, Titanium Dioxide, Carmine”',
    es: 'Lo que lista la etiqueta, para poder avisarte: «Mica, Titanium Dioxide, Carmine»',
  },
  { most: 4000 },
);
const lot = text({ en: 'What is printed on the lot', es: 'Lo que pone en el lote' }, { most: 60 });

const measuresOf = async ({ store, asker }: Context) =>
  MEASURES[(await preferencesOf(store, asker.id)).spoons];

const gramsAsked = async (asked: { item: string; amount: string }, context: Context) =>
  itemGrams(context.shelf, asked, await measuresOf(context));

const suggestItems = async (typed: string, context: Context): Promise<readonly Suggestion[]> =>
  (await shelf.nearestNames(context.shelf, typed, 25)).map(name => ({ name, value: name }));
const suggestColourants = (typed: string, { language }: Context) => completeColourants(typed, language);

const told = (headline: string, outcome: shelf.Outcome, { say }: Context) =>
  changedReply(headline, outcome, say);

/** What a movement did, and the way back from it. */
const moved = (headline: string, outcome: shelf.Outcome, context: Context) => ({
  ...told(headline, outcome, context),
  choices: undoChoice(outcome, context.change.cause, context),
});

/** A removal wants the whole name; what only resembles one is refused by the removal itself. */
const isWhole = (name: string, asked: string): boolean => fold(name) === fold(asked);

export default commandGroup(
  'shelf',
  {
    en: 'Your pigments: what you have, how much, how they behave',
    es: 'Tus pigmentos: qué tienes, cuánto y cómo se portan',
  },
  {
    add: action({
      purpose: { en: 'Put a colourant on your shelf', es: 'Pon un colorante en tu estantería' },
      anywhere: true,
      seenBy: 'asker',
      options: {
        item: text(
          { en: 'Your name for it, any language', es: 'Tu nombre para él, en cualquier idioma' },
          { most: 100 },
        ),
        amount: amount.optional(),
        colourant: colourant.optional(),
        ingredients: ingredients.optional(),
        pigment: pigment.optional(),
        lot: lot.optional(),
      },
      completes: { colourant: suggestColourants },
      async answer(asked, context) {
        const found = whatItIs(asked.item, asked);
        const measures = await measuresOf(context);
        const grams =
          asked.amount === undefined
            ? undefined
            : gramsOf(parseStock(asked.amount, measures), { name: asked.item, colourant: found.colourant });
        const wanted = {
          name: asked.item,
          colourant: found.colourant?.id,
          ingredients: found.ingredients,
          lot: asked.lot,
          grams,
          ...(asked.pigment !== undefined && { pigmentFraction: asked.pigment / 100 }),
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
      purpose: { en: 'Everything on your shelf', es: 'Todo lo que hay en tu estantería' },
      anywhere: true,
      seenBy: 'asker',
      options: {},
      async answer(_asked, context) {
        const reply = shelfReply(await shelf.listShelf(context.shelf), context.say);
        const count = await shelf.setAsideOn(context.shelf);
        if (count === 0) return reply;
        return {
          ...reply,
          blocks: [...reply.blocks, { kind: 'text', text: context.say.privacy.jarsSetAside({ count }) }],
        };
      },
    }),
    show: action({
      purpose: {
        en: 'One item: stock, lot, tests and history',
        es: 'Un producto: existencias, lote, pruebas e historial',
      },
      anywhere: true,
      seenBy: 'asker',
      options: { item },
      completes: { item: suggestItems },
      async answer(asked, context) {
        return itemReply(await shelf.showItem(context.shelf, asked.item), context.say);
      },
    }),
    use: action({
      purpose: { en: 'Take some off your shelf', es: 'Saca un poco de tu estantería' },
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
      purpose: { en: 'Add more of the same lot', es: 'Añade más del mismo lote' },
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
      purpose: {
        en: 'Take an item off your shelf with its history',
        es: 'Quita un producto de tu estantería con su historial',
      },
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
        const outcome = await shelf.removeItem(context.shelf, asked.item, context.change);
        return told(context.say.shelf.removed(outcome), { ...outcome, low: false }, context);
      },
    }),
    undo: action({
      purpose: {
        en: 'Take back what you just used or restocked',
        es: 'Deshaz lo que acabas de sacar o reponer',
      },
      anywhere: true,
      seenBy: 'asker',
      options: {},
      async answer(_asked, context) {
        return undone(await shelf.lastMovement(context.shelf, new Date(context.at)), context);
      },
    }),
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
        grams: number(
          { en: 'Grams of one level teaspoon', es: 'Gramos de una cucharadita rasa' },
          { least: 0.01, most: 50 },
        ),
      },
      completes: { item: suggestItems },
      async answer({ item: name, grams }, context) {
        const weight = { grams, spoonMillilitres: (await measuresOf(context)).teaspoon };
        const outcome = await shelf.weighSpoon(context.shelf, name, weight, context.change);
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
        return told(context.say.shelf.lotStarted(outcome), outcome, context);
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
      },
      completes: { item: suggestItems, colourant: suggestColourants },
      async answer(asked, context) {
        const { id, name, colourant: known } = await shelf.findItem(context.shelf, asked.item);
        const found = whatItIs(name, { ...asked, known });
        const what = {
          colourant: found.colourant?.id,
          ingredients: found.ingredients,
          pigmentFraction: asked.pigment === undefined ? undefined : asked.pigment / 100,
        };
        const outcome = await shelf.describeItem(context.shelf, id, what, context.change);
        return describedReply(found, outcome, context.say);
      },
    }),
    'low-mark': action({
      purpose: { en: 'At how much left I should warn you', es: 'Con cuánto restante debo avisarte' },
      anywhere: true,
      seenBy: 'asker',
      options: {
        item,
        grams: number(
          { en: 'Grams left; 0 for only when empty', es: 'Gramos restantes; 0 solo cuando se acabe' },
          { least: 0, most: 100_000 },
        ),
      },
      completes: { item: suggestItems },
      async answer({ item: name, grams }, context) {
        const outcome = await shelf.setLowMark(context.shelf, name, grams, context.change);
        return told(context.say.shelf.lowMarkSet({ name: outcome.name, grams }), outcome, context);
      },
    }),
  },
  { followUps: shelfFollowUps },
);
