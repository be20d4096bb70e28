import type { Suggestion } from '../../src/conversation/command.ts';
import type { Context } from '../../src/conversation/context.ts';
import { number, text } from '../../src/conversation/option.ts';
import { completeColourants } from '../../src/engine/colourants/complete.ts';
import { kitchenOf, preferencesOf } from '../../src/records/preferences.ts';
import * as shelf from '../../src/records/shelf/index.ts';
import { itemGrams } from '../../src/records/shelf/jars/item-grams.ts';
import { changedReply } from './view.ts';

export const item = text({
  en: 'The item by its name on your shelf',
  es: 'El producto por su nombre en tu estantería',
});
export const amount = text({
  en: 'How much: “25 g”, “1 oz”, “1/2 tsp”. A bare number is grams',
  es: 'Cuánto: «25 g», «1 oz», «1/2 cdta». Un número solo son gramos',
});
export const colourant = text({
  en: 'What it is: a colourant of the catalogue, such as “gold mica”',
  es: 'Qué es: un colorante del catálogo, como «mica dorada»',
});
export const pigment = number(
  {
    en: 'Percent pigment by weight, if it came already dispersed',
    es: 'Porcentaje de pigmento en peso, si vino ya disperso',
  },
  { least: 0.01, most: 100 },
);

export const ingredients = text(
  {
    en: 'What the label lists, so that I can warn you: “Mica, Titanium Dioxide, Carmine”',
    es: 'Lo que lista la etiqueta, para poder avisarte: «Mica, Titanium Dioxide, Carmine»',
  },
  { most: 4000 },
);
export const price = text(
  {
    en: 'What it cost, in any currency: “8.50 €”, “12 USD”',
    es: 'Lo que costó, en cualquier moneda: «8,50 €», «12 USD»',
  },
  { most: 60 },
);
export const size = text(
  {
    en: 'How much that price bought: “50 g”. The amount unless you say',
    es: 'Cuánto compró ese precio: «50 g». La cantidad si no dices nada',
  },
  { most: 60 },
);
export const lot = text({ en: 'What is printed on the lot', es: 'Lo que pone en el lote' }, { most: 60 });

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
