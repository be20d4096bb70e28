import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { checkLye } from '../../../../src/engine/questions/lye/sums/check.ts';
import { openRoom } from '../../../loopback/room.ts';

let room: Awaited<ReturnType<typeof openRoom>>;
beforeAll(async () => {
  room = await openRoom({ whole: true });
});
afterAll(() => room[Symbol.asyncDispose]());

const ask = async (question: string, locale = 'en-US') => {
  room.member.grant({ locale });
  const { text } = await room.member.run('/ask', { question });
  room.member.grant({ locale: 'en-US' });
  expect(room.faults).toEqual([]);
  return text;
};

describe('lye that went in amiss is told first, with what is to be done', () => {
  test.each([
    [
      'doubled the lye but not the oils. 500 g olive, 128 g lye',
      'en-US',
      'Do not use it, gloves on, set it aside: 100 % too much lye',
    ],
    [
      'dupliqué la sosa sin querer, 160 g para 600 g de oliva',
      'es-ES',
      'No lo uses, ponte guantes, apártalo: 100 % de sosa de más',
    ],
    [
      'I put in an ounce over of lye in a 2 lb olive oil batch',
      'en-US',
      'Do not use it, gloves on, set it aside: 24 % too much lye',
    ],
    [
      '5 g too much lye in a 2 kg batch with 8% superfat',
      'en-US',
      'Not lye-heavy: 2 % too much lye still leaves superfat about 6.2 %',
    ],
    [
      'me faltaron 20 g de aceite de coco en una receta de un kilo',
      'es-ES',
      'Demasiado justo, guantes, no lo uses aún',
    ],
    ['aceite 1 kilo sosa 200 gramos agua 350', 'es-ES', 'No: 200 g de sosa es más de lo que gastan 1000 g'],
    ['two extra tablespoons of lye fell in the pot', 'en-US', 'Do not use it and do not touch it bare'],
    ['I was 10 g short on lye, recipe said 103 g', 'en-US', 'Too little lye does not burn: 9.7 % short'],
  ])('%s', async (question, locale, first) => {
    expect((await ask(question, locale)).replaceAll(' ', ' ')).toContain(first);
  });

  test('how it may be saved stands beside it, only with weights that are certain', async () => {
    const text = await ask('I put 160 g lye instead of 128 g in 1000 g olive');
    expect(text).toContain('only if every weight is certain');
    expect(text).toContain('25 % more of every oil, 250 g in all');
    expect(text).toContain('caustic waste');
  });
});

test('water told in ml makes a strength and no nonsense', async () => {
  const text = await ask('1 kilo aceite de oliva, 128 g sosa, 300 ml agua. me la revisan?', 'es-ES');
  expect(text).toContain('Agua de sosa al 30 %');
  expect(text).not.toContain('NaN');
  expect(await ask('500 g olive, 64 g lye, 1.5 l water, is that ok')).not.toContain('NaN');
});

test('a milk that is named twice is one milk', async () => {
  const text = await ask(
    'goat milk for all the water: 500 g olive 500 g coconut at 5% superfat, how much lye and milk',
  );
  expect(text).toContain('frozen goat’s milk');
  expect(text).not.toContain('frozen milk');
});

test('lye of a tenth is asked about before it is called little', async () => {
  expect(await ask('700g olive 300g coconut 14.2 g lye 300 g water, ready to pour?')).toContain(
    'Is it 142 g?',
  );
});

describe('what is asked in general is answered, and is no recipe', () => {
  test.each([
    ['what does superfat mean when people say five percent', 'en-US', 'Superfat is the percent of the oils'],
    [
      'what does the sugar in maple sap do to the lye, is it the same amount as with water',
      'en-US',
      'The lye stays the same',
    ],
    ['is 33% lye concentration the same as 2:1', 'en-US', '33 % lye is 2.03 parts'],
    ['está la lejía a 80 grados, la echo ya al aceite', 'es-ES', 'No: espera a 35 a 45 °C (95 a 113 °F)'],
    ['puedo cambiar 120 g de sosa por 120 g de potasa', 'es-ES', 'No la misma cantidad'],
    ['la lejía se enfrió y tiene cristales abajo', 'es-ES', 'Que no entre en el aceite hasta estar clara'],
    ['se puede mezclar NaOH y KOH en la misma receta', 'es-ES', 'Sí: un poco de KOH'],
    ['is a ph strip enough to know it is safe', 'en-US', 'a good figure alone proves nothing'],
    ['why is my castile slimy', 'en-US', 'soaks up water'],
  ])('%s', async (question, locale, told) => {
    expect((await ask(question, locale)).replaceAll(' ', ' ')).toContain(told);
  });

  test.each([
    'how much lye for 500 g olive and 200 g coconut',
    'how much ultramarine for 500 g oils',
    'does red mica survive lye',
  ])('it takes no question from others: %s', async question => {
    expect(await ask(question)).toContain('Understood as: /');
  });

  test('an amount of oil nobody named is asked back, never told roughly', async () => {
    expect(await ask('500 g oil, how much lye?')).toContain('Which oils');
  });
});

test('what is said to be usual lies between what the standards allow', () => {
  // Codex CXS 33, CXS 210 and CXS 211: olive 184 to 196, coconut 248 to 265, lard 192 to 203 mg KOH/g.
  const per100 = (least: number, most: number) =>
    [least, most].map(sap => (sap / 10) * (39.997 / 56.105) * 0.95);
  for (const [said, least, most, oil] of [
    [12.9, 184, 196, 'olive'],
    [13.2, 192, 203, 'lard'],
    [17.3, 248, 265, 'coconut'],
  ] as const) {
    const [low = 0, high = 0] = per100(least, most);
    expect(said).toBeGreaterThan(low);
    expect(said).toBeLessThan(high);
    const { usualGrams } = checkLye({ alkali: 'NaOH', grams: 10, purity: 1 }, { oils: `100 g ${oil}` });
    expect(Math.abs(usualGrams - said)).toBeLessThan(0.1);
  }
});

describe('what is asked of a thing near lye in general is answered in the language it is asked in', () => {
  test.each([
    [
      'does clay change my lye number. its a lot of clay',
      'en-US',
      'The lye stays the same: clay, colour, honey',
    ],
    [
      'si le echo miel, ¿cambia la cantidad de sosa? una cucharada por kilo',
      'es-ES',
      'La sosa no cambia: arcilla',
    ],
    ['do I count beeswax in the lye', 'en-US', 'half as much, about 0.067 g NaOH a gram'],
    ['can I use cold lye from yesterday, room temperature', 'en-US', 'clear and cold it keeps for weeks'],
    ['cuánto tarda en enfriar el agua con sosa', 'es-ES', 'De una a dos horas sola'],
    ['si le pongo cafe en vez de agua le cambia la sosa', 'es-ES', 'La sosa no cambia: agua, leche, té'],
    ['abuelita dice que la sosa se echa al agua y no al reves verdad??', 'es-ES', 'La sosa al agua fría'],
    [
      'Disculpen, la sosa se echa en el agua o el agua en la sosa? Siempre me confundo',
      'es-ES',
      'La sosa al agua fría',
    ],
    ['my scale reads 5 g high on everything', 'en-US', 'Reads high: less lye is in than it showed'],
    [
      'el 5% se le quita a la sosa o se le agrega al aceite? mi hija dice una cosa y yo otra',
      'es-ES',
      'Se le quita a la sosa',
    ],
    ['se me regó la sosa en escamas en el piso de la cocina, ¿la barro?', 'es-ES', 'No la neutralices'],
    ["if I've 130g of caustic how much water do I dissolve it in", 'en-US', '264 g water for 130 g lye'],
    ['cuánta agua para 95 g de soda? vi 2 a 1 y vi 3 a 1', 'es-ES', '193 g de agua para 95 g de sosa'],
  ])('%s', async (question, locale, first) => {
    expect((await ask(question, locale)).replaceAll(' ', ' ')).toContain(first);
  });

  test('a strength that is told counts before the usual one', async () => {
    expect(await ask('30% lye concentration, 150 g lye, how much water')).toContain('350 g water');
  });

  test('another spoon of lye on top is too much, whatever was weighed', async () => {
    expect(await ask('128 g lye 1 kg olive, and then I added another spoon of lye')).toContain(
      'Do not use it',
    );
    expect(
      await ask('128 g de sosa para 1 kg de oliva y luego eché otra cucharada de sosa', 'es-ES'),
    ).toContain('No lo uses');
  });

  test('an order of lye and water in which something happened stays with first aid', async () => {
    expect(await ask('water in the lye or lye in the water? I did the first and it is boiling over')).toMatch(
      /step back|out of control/u,
    );
  });
});
