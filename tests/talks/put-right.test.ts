import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { lyeFor } from './lye-by-hand.ts';
import { ASKS_WHOLE, lyeIn, openTalk, type Talk, textOf, understoodOf } from './talking.ts';

/* What a maker puts right or adds in a few words; common practice of chat (no source), lye by the fats' own figures (`lye-by-hand.ts`). */

let talk: Talk;
beforeAll(async () => {
  talk = await openTalk();
});
afterAll(() => talk[Symbol.asyncDispose]());

const lastOf: Talk['lastOf'] = (...turns) => talk.lastOf(...turns);

describe('a recipe that was put right', () => {
  test.each([
    [['how much lye for 800 g lard', 'oh no its 600', 'water?'], 'en', { lard: 600 }],
    [['cuanta soda para 800 g de manteca de cerdo', 'ay no son 600', 'el agua'], 'es', { lard: 600 }],
    [
      ['cuanta soda para 500 g de oliva', 'le agrego 200 de coco tambien'],
      'es',
      { olive: 500, coconut: 200 },
    ],
    [['how much lye for 500 g olive', 'i add 200 coconut too'], 'en', { olive: 500, coconut: 200 }],
    [['how much lye for 700g olive 300g coconut', 'halve the lot'], 'en', { olive: 350, coconut: 150 }],
    [
      ['sosa para 700 g de oliva y 300 g de coco', 'divide todo entre dos'],
      'es',
      { olive: 350, coconut: 150 },
    ],
  ] as const)('%j is reckoned as it stands now, with the whole recipe', async (turns, language, oils) => {
    const { headline } = await lastOf(turns, language);
    for (const grams of Object.values(oils)) expect(headline).toContain(`${grams} g`);
    expect(Math.abs(lyeIn(headline) - lyeFor(oils, 5))).toBeLessThan(0.02 * lyeFor(oils, 5));
  });

  test.each([
    [['how much lye for 700g olive 300g coconut', 'no 600', 'water?'], 'en'],
    [['sosa para 700 g de oliva y 300 g de coco', 'no, 600', 'el agua'], 'es'],
    // It tells a figure that has no place: what was told before may no longer stand.
    [['how much lye for 700g olive 300g coconut', 'the olive was 40 short in the end', 'water?'], 'en'],
    [['how much lye for 700g olive 300g coconut', 'the olive was 40 short in the end'], 'en'],
    [
      ['cuánta sosa para 700 g de oliva y 300 g de coco', 'al final el coco quedó corto por 50', 'el agua'],
      'es',
    ],
    [['cuánta sosa para 700 g de oliva y 300 g de coco', 'me faltaron 40 de oliva'], 'es'],
    [['i add 200 g of coconut too'], 'en'],
    [['le agrego 200 g de coco tambien'], 'es'],
    [['red oxide for 750 g batter', 'and of lye?'], 'en'],
    [['óxido rojo para 750 g de masa', 'y de sosa?'], 'es'],
  ] as const)('%j is asked for, whole', async (turns, language) => {
    const asked = await lastOf(turns, language);
    expect(asked.headline).toBe(ASKS_WHOLE[language]);
    expect(textOf(asked)).not.toMatch(/\d ?g\b/u);
  });

  test.each([
    [['óxido rojo para 750 g de masa', 'y de sosa?', '500 de oliva, solo eso'], 'es', { olive: 500 }],
    [['red oxide for 750 g batter', 'and of lye?', '500 olive, thats all'], 'en', { olive: 500 }],
    [
      ['red oxide for 750 g batter', 'and of lye?', '500 olive, 200 coconut'],
      'en',
      { olive: 500, coconut: 200 },
    ],
  ] as const)('%j: the recipe that was asked for is reckoned', async (turns, language, oils) => {
    const { headline } = await lastOf(turns, language);
    expect(Math.abs(lyeIn(headline) - lyeFor(oils, 5))).toBeLessThan(0.02 * lyeFor(oils, 5));
  });

  test('what may have changed it in words that nobody understood leaves no gram of it', async () => {
    const turns = ['sosa para 700 g de oliva y 300 g de coco', 'el oliva quedo corto al final', 'el agua'];
    expect((await lastOf(turns, 'es')).headline).not.toMatch(/NaOH/u);
  });

  test.each(['500 g olive', '500 g hidden oil, 200 g coconut', '500 g olive, a bit of coconut'])(
    '“%s” after another recipe is no whole one',
    async turn => {
      const turns = ['how much lye for 700g olive 300g coconut', 'swap the palm for lard', turn];
      expect((await lastOf(turns)).headline).not.toMatch(/\d g NaOH/u);
    },
  );

  test('one oil after the question of which oils is the recipe, said whole', async () => {
    const { headline } = await lastOf(['red oxide for 750 g batter', 'and of lye?', '500 g olive']);
    expect(headline).toMatch(/^For 500 g olive: /u);
  });
});

describe('near lye', () => {
  test.each([
    [
      ['142g lye how much water', 'less, want it to set up quicker'],
      'en',
      /^Yes, less water thickens .* 1\.5 to 1\.8/u,
    ],
    [
      ['cuánta agua para 142 g de sosa', 'menos, quiero que cuaje antes'],
      'es',
      /^Sí, con menos agua .* 1,5 a 1,8/u,
    ],
    [['y si le pongo menos agua espesa más?'], 'es', /^Sí, con menos agua/u],
    [['does less water thicken it faster', 'less water thicken it faster'], 'en', /^Yes, less water/u],
    [['mine only does whole grams'], 'en', /for lye at least 500 g of oils/u],
    [['la mía solo pesa gramos enteros'], 'es', /para la sosa, al menos 500 g de aceites/u],
    [['pink clay 500g oils', 'does it change the lye'], 'en', /^The lye stays the same/u],
    [['arcilla rosa 500 g aceite', 'cambia la sosa?'], 'es', /^La sosa no cambia/u],
  ] as const)('%j', async (turns, language, says) => {
    expect((await lastOf(turns, language)).headline).toMatch(says);
  });

  test.each([
    [['spilt lye water on worktop', 'bit on me sleeve an all'], 'en'],
    [['se me derramó la sosa en la mesa', 'me cayó en la manga'], 'es'],
  ] as const)('%j: clothes come off, and the skin beneath is rinsed', async (turns, language) => {
    const answer = await lastOf(turns, language);
    expect(answer.data).toHaveProperty('emergency.id', 'lye-skin');
    expect(textOf(answer)).toMatch(/take off clothes|quita.* ropa/iu);
  });

  test.each([
    [
      ['spilt lye water on worktop', 'arms fine, its the worktop ive vinegar for'],
      'en',
      /^Do not neutralise/u,
    ],
    [['se me derramó la sosa en la mesa', 'estoy bien, es solo la mesa'], 'es', /^No la neutralices/u],
  ] as const)('%j: nobody is hurt, and the place is washed', async (turns, language, says) => {
    expect((await lastOf(turns, language)).headline).toMatch(says);
  });

  test('what takes lye is not told of as if it took none', async () => {
    const { headline } = await lastOf(['does lemon juice survive lye', 'does it change the lye']);
    expect(headline).not.toMatch(/stays the same/u);
  });
});

describe('a maker who writes two words', () => {
  test.each([
    [['se cortó'], 'es', /^¿Dónde está: aún en la olla o ya vertido\?/u],
    [['it split'], 'en', /^Where is it: still in the pot, or poured\?/u],
    [['it split', 'its in the mould already'], 'en', /^Don’t use it/u],
    [['se cortó', 'todavía en la olla'], 'es', /^Aceite arriba en la olla/u],
    [['can i use food colouring', 'the gel ones?'], 'en', /“gel food colouring” does not go into soap/u],
    [
      ['vale el colorante de velas para jabón?', 'y el de bombas de baño'],
      'es',
      /habla de la piel, no de la sosa/u,
    ],
    [['por qué huele a huevo podrido el azul'], 'es', /normal/u],
    [['why does the blue smell of rotten eggs'], 'en', /^A whiff of sulphur/u],
    [['me salieron grumos blancos adentro'], 'es', /puede ser sosa: no lo uses/u],
    [['white lumps inside my soap'], 'en', /may be lye: do not use it/u],
    [['td free white??'], 'en', /^Without titanium dioxide/u],
    [['blanco sin titanio'], 'es', /^Sin dióxido de titanio/u],
    [['colours looked gr8 in the pot now dull'], 'en', /no gel, a veil of ash/u],
    [['los colores quedaron apagados todos'], 'es', /sin gel, velo de ceniza/u],
    [['dióxido de titanio cuánto por kilo de masa'], 'es', /para 1 kg de masa/u],
    [['titanium dioxide how much per pound of batter'], 'en', /for 1 lb batter/u],
    [['mica 3 tsp in 600 g oils too much?'], 'en', /full colour, the most, is .* Most begin with .*medium/u],
    [['mica 3 cdtas en 600 g de aceites es demasiado?'], 'es', /el color pleno, lo máximo, es .*medio/u],
    [
      ['help batters going thick already', 'had lavender and clove in'],
      'en',
      /^Floral and spice scents race/u,
    ],
  ] as const)('%j', async (turns, language, says) => {
    expect((await lastOf(turns, language)).headline).toMatch(says);
  });

  test.each([
    [['light grey please', 'darker'], 'en', 'grey'],
    [['cómo saco un gris clarito', 'más oscuro'], 'es', 'gris'],
    [['light grey please', 'darker', 'with a hint of blue'], 'en', 'grey but more blue'],
    [['cómo saco un gris clarito', 'más oscuro', 'y tirando a azul'], 'es', 'gris but more azul'],
  ] as const)('%j wishes for another colour than before', async (turns, language, target) => {
    expect(understoodOf(await lastOf(turns, language)).given).toMatchObject({ target });
  });

  test.each([
    [
      ['titanium dioxide for 1 kg oils', 'hmm and fiddly?'],
      'en',
      'About titanium dioxide: how much of it, what it is wetted in, or whether it holds?',
    ],
    [
      ['dióxido de titanio para 1 kilo de aceites', 'y lo raro?'],
      'es',
      'Sobre dioxido de titanio: ¿cuánto va, en qué se moja o si aguanta?',
    ],
    [
      ['help batters going thick already', 'didnt even use the blender!!'],
      'en',
      'About “my batter gets thick: what now?”: what more do you want to know?',
    ],
  ] as const)('%j is asked by the name of what is spoken of', async (turns, language, asked) => {
    expect((await lastOf(turns, language)).headline).toBe(asked);
  });
});
