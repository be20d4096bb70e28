import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { PREPARING, through } from '../../../../../src/engine/questions/lye/amounts/prepared.ts';
import { plainWords } from '../../../../../src/engine/questions/lye/amounts/words.ts';
import { recipeLine } from '../../../../../src/engine/questions/lye/recipe-line/recipe-line.ts';

/* How makers tell a recipe (from memory; the words are our own), a row for each step that its reading needs. */

const NEEDED: Readonly<Record<string, readonly [text: string, recipe: string]>> = {
  'as-typed': ['2.5 lb olive .5 lb coconut, lye?', '2.5 lb olive, 0.5 lb coconut'],
  'plain-words': ['1 lb 4 oz tallow. lye?', '566.99 g tallow'],
  'who-asks': [
    'me podrían decir cuánta sosa lleva 550 g de oliva y 250 g de coco',
    '550 g oliva, 250 g coco',
  ],
  'own-pound': ['3 libras de 500 g de sebo y 1 libra de coco, ¿sosa?', '1500 g sebo, 500 g coco'],
  'batch-asked': [
    'Batch A was coconut 400 and palm 400. Batch B is today, coconut 300 palm 500 olive 200, how much lye for batch B. all grams',
    '300 g coconut, 500 g palm, 200 g olive',
  ],
  'fat-left-over': [
    '93% of the lye it needs, 500 g olive 250 g coconut. how much?',
    '500 g olive, 250 g coconut ; superfat 7%',
  ],
  'figure-put-right': [
    '900 g tallow, 0% superfat. sorry no, that’s laundry, it’s salt bars so 20. lye?',
    '900 g tallow ; superfat 20%',
  ],
  'whole-of-one': ['850 g of oils, all olive. lye?', '100% olive ; 850 g oils'],
  'told-of-all': ['850 g of tallow alone. lye?', '850 g tallow'],
  'out-altogether': [
    'I was going to put 90 g of castor in but there’s no castor. 550 g olive, 250 g coconut. lye?',
    '550 g olive, 250 g coconut',
  ],
  'set-aside': [
    'Sin contar fragancia ni arcilla: 550 g de oliva, 250 g de coco. ¿sosa?',
    '550 g oliva, 250 g coco',
  ],
  'as-listed': ['550 oliva, 250 coco, 150 manteca cerdo', '550 g oliva, 250 g coco, 150 g manteca de cerdo'],
  'how-it-is-written': ['apúntame la sosa de 650 g de oliva y 250 g de coco', '650 g oliva, 250 g coco'],
  mistold: [
    'I said 350 g of lard in my last text, scrap that, it’s 250 g lard, 500 g olive. lye?',
    '250 g lard, 500 g olive',
  ],
  'oil-stock': [
    'My masterbatch of oils is 50% olive, 30% coconut, 20% palm. I take 800 g of it and add 80 g castor. how much lye?',
    '400 g olive, 240 g coconut, 160 g palm, 80 g castor',
  ],
  'ready-solution': ['650 g olive, lye masterbatch at 50%', '650 g olive ; 50% lye solution'],
  scents: ['450 g olive, 200 g coconut, 18 g lavender essential oil. lye?', '450 g olive, 200 g coconut'],
  'former-soap': [
    'La primera que hice fue puro coco y me secó las manos. Ahora quiero: oliva 550, coco 150. ¿Soda?',
    '550 g oliva, 150 g coco',
  ],
  'asked-of-oil': [
    'Beeswax 15 g in with 585 olive and 300 coconut. does the wax count for lye? lye?',
    '15 g beeswax, 585 g olive, 300 g coconut',
  ],
  'told-of-oil': ['450 g olive, 200 g coconut, the olive smells lovely. lye?', '450 g olive, 200 g coconut'],
  'bench-said': ['if I use 110 g lye for 800 g olive is it too much?', '800 g olive, 110 g lye'],
  'of-else': [
    '420 g olive, 210 g coconut. Lye? I cut the fruitcake in half for company',
    '420 g olive, 210 g coconut',
  ],
  'idle-talk': [
    '550 g olive, 200 g coconut. Half my class is out today. Lye at 5%?',
    '550 g olive, 200 g coconut ; superfat 5%',
  ],
  'said-plainly': ['not 500 but 650 g lard, 250 g olive. lye?', '650 g lard, 250 g olive'],
  'double-check': [
    'Could you double check me, 16 oz tallow, 8 oz coconut, lye 3.5 oz',
    '16 oz tallow, 8 oz coconut, 3.5 oz lye',
  ],
  castile: ['straight castile, 750 g', '750 g olive'],
  label: ['Batch C: 650 g lard 300 g coconut. lye?', '650 g lard, 300 g coconut'],
  liquid: [
    'Con leche de cabra congelada en vez de agua: 450 g de oliva, 300 g de coco. ¿Cuánta sosa?',
    '450 g oliva, 300 g coco ; goat milk',
  ],
  'for-each': [
    'por cada 4 partes de manteca 1 de coco. 1500 g de todo. la sosa',
    '80% manteca, 20% coco ; 1500 g oils',
  ],
  'equal-parts': ['equal parts olive and coconut, 900 g. lye?', '50% olive, 50% coconut ; 900 g oils'],
  courtesies: ['450 de oliva y 200 de coco en gramos, o sea 650', '450 g oliva, 200 g coco'],
  kinds: ['100% coconut laundry bar, 850 g oil, 0 superfat', '100% coconut ; 850 g oils ; superfat 0%'],
  'caustic-soda': ['un kilo de oliva y 120 g de soda', '1 kg oliva, 120 g soda caustica'],
  superfat: [
    'olive 450g, palm 250, coconut 250 gr... naoh n water at 8 percent',
    '450 g olive, 250 g palm, 250 g coconut ; superfat 8%',
  ],
  counted: ['started the melt at 6, coconut 250 g, olive 700 g. lye?', '250 g coconut, 700 g olive'],
};

/** The recipe that is read of a text by these steps; undefined where it is asked about. */
function recipeOf(text: string, steps = PREPARING): string | undefined {
  const read = recipeLine(through(steps, text), plainWords(text, { clauses: true }));
  return 'line' in read ? read.line : undefined;
}

describe('a line is prepared', () => {
  test.each(PREPARING.map(({ id }) => id))('by no step that is not needed: %s', id => {
    const [text, recipe] = NEEDED[id]!;
    expect(recipeOf(text)).toBe(recipe);
    expect(
      recipeOf(
        text,
        PREPARING.filter(one => one.id !== id),
      ),
    ).not.toBe(recipe);
  });

  test('by the steps that the handbook prints, in their order', () => {
    const handbook = readFileSync(new URL('../../../../../DEVELOPERS.md', import.meta.url), 'utf8');
    const section = handbook.split('### A recipe told in chat')[1]!.split('###')[0]!;
    const printed = [...section.matchAll(/^ {2}\| `([a-z-]+)` \|/gmu)].map(([, id]) => id);
    expect(printed).toEqual(PREPARING.map(({ id }) => id));
  });
});
