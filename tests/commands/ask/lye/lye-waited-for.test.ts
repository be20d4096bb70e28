import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { readEmergencies } from '../../../../src/engine/hazards/index.ts';
import { isOilLostBeforeLye } from '../../../../src/engine/questions/lye/recipe-line/doubts/oil-lost.ts';
import { asksForLyeOfWeighed } from '../../../../src/engine/questions/lye/recipe-line/recipe-asked.ts';
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

describe('whoever weighs oils and asks for their lye gets its weight, or what is unclear of it, and no answer to something else', () => {
  // Each had been answered with another matter: extra lye, a lost bottle, an animal that met lye.
  test.each([
    [
      'Coconut oil, olive oil and castor oil, 300, 600 and 60 g respectively, superfat 5. Sorry, the first two the other way round. Lye?',
      'I cannot tell what “the other way round”',
    ],
    [
      'Recipe: 500 g lard, 300 g olive, 200 g coconut at 5%. For Batch B I do it at half size and without the coconut. How much lye for Batch B?',
      '“half”',
    ],
    [
      '600 g olive oil and 250 g coconut oil, and my neighbour dropped in 150 g of lard for her own batch on Thursday. Superfat 5%. How much lye for mine?',
      'dropped',
    ],
    [
      'Shaving soap: 500 g tallow, 200 g coconut oil, 5% superfat, 60% of the alkali as KOH (90% pure) and 40% as NaOH. How much of each?',
      '60% of the alkali',
    ],
    [
      'I put in 300 g olive oil, then another 200 g of it, then poured 100 g back into the bottle. Also 150 g coconut oil. 5% superfat. Lye?',
      '“200 g”',
    ],
  ])('%s', async (question, unclear) => {
    const text = await ask(question);
    expect(text).toContain(unclear);
    expect(text).not.toMatch(/\d g NaOH in/u);
  });

  test('of two butters, in Spanish', async () => {
    const text = await ask(
      '600 g de oliva, 300 g de manteca de coco o de cacao, no me acuerdo cuál eché, sobreengrasado 5%. ¿Cuánta sosa?',
      'es-ES',
    );
    expect(text).toContain('«manteca de coco o de cacao»');
  });

  test('a weight that nothing touches is told, whatever the chat beside it reminds of', async () => {
    const text = await ask(
      'my mother made hers with the lye by eye. mine is weighed: 800 g lard and 200 g olive. Lye?',
    );
    // 0.140 and 0.135 g NaOH a gram at most (Codex CXS 33 and 211), 5 % less: 120 to 135 g.
    const grams = Number(/([\d.]+) g NaOH/u.exec(text)?.[1]);
    expect(grams).toBeGreaterThan(125);
    expect(grams).toBeLessThan(136);
  });

  test('what was done wrong already keeps its answer', async () => {
    expect(
      await ask('i swapped 200 g of coconut for 200 g of lard and kept the same lye. safe?'),
    ).not.toContain('I cannot tell what');
    expect(asksForLyeOfWeighed('how much lye for 500 g olive and 200 g coconut')).toBe(true);
    expect(asksForLyeOfWeighed('how much lye for 500 g olive')).toBe(false);
    expect(asksForLyeOfWeighed('how much lye for 500 g olive, 20 minutes')).toBe(false);
    // With its superfat one oil is a recipe.
    expect(asksForLyeOfWeighed('how much lye for 500 g olive at 5 %')).toBe(true);
    expect(asksForLyeOfWeighed('500 g olive and 200 g coconut, same lye?')).toBe(false);
    expect(asksForLyeOfWeighed('my olive soap has 500 g, is lye dangerous')).toBe(false);
  });
});

describe('a general answer to something else is none beside weighed oils', () => {
  // The first two had been told how to clean up spilt lye, and to take the lower of two figures.
  test.each([
    [
      'I recycle oil with my pupils: 1 kg sunflower oil, filtered and clean, 5% superfat. How much lye?',
      'NaOH',
    ],
    [
      'The book says 500 g olive oil, 300 g coconut oil, 200 g palm oil, but half of the palm I’m replacing with shea. 5% superfat. Lye?',
      'I cannot tell what',
    ],
    [
      'the book says 800 g olive, I weighed 600 g olive, lye 103 g, is that safe',
      'stands twice: 800 g and 600 g',
    ],
    ['the lye fell on the floor, 1 kg sunflower at 5%, how much lye and how do I clean it?', 'neutralise'],
  ])('%s', async (question, said) => expect(await ask(question)).toContain(said));
});

describe('oil that was lost before the lye is weighed anew', () => {
  test('in English: what is gone, what to weigh, and no lye before', async () => {
    const text = await ask(
      'I melted 600 g coconut oil with 400 g olive oil, then the dog knocked the pan and a quarter of the mix went on the floor before any lye went in. 5% superfat, how much lye for what is left?',
    );
    expect(text).toContain(
      '“knocked the pan”: some of the oil is gone. Weigh each oil that is in the pot now',
    );
    expect(text).toContain('No lye before that.');
    expect(text).not.toContain('vet');
  });
  test('in Spanish', async () => {
    const text = await ask(
      'Puse 600 g de coco y 400 g de oliva, pero se me cayó la mitad del coco antes de mezclar nada. Sobreengrasado 5%. ¿Cuánta sosa?',
      'es-ES',
    );
    expect(text).toContain('«se me cayo la mitad»: falta parte del aceite.');
    expect(text).toContain('Antes, nada de sosa.');
  });

  test.each([
    ['the dog knocked the pan, 500 g olive and 200 g coconut, and licked it up. how much lye?'],
    ['500 g olive and 200 g coconut, the cat knocked the lye over. how much lye?'],
    ['500 g olive and 200 g coconut spilled on my hand and it burns, how much lye?'],
    ['el perro volcó 500 g de oliva y 200 g de coco con la sosa, cuánta sosa?'],
  ])('first aid stays where somebody or lye was met: %s', question => {
    expect(isOilLostBeforeLye(question)).toBe(false);
  });
});

test('a fat by the name of its animal is no animal, and an animal is one beside it', async () => {
  const text = await ask('manteca de chancho 450 g, coco 170 g y ricino 30 g, ¿cuánta sosa?', 'es-ES');
  expect(text).toContain('g de NaOH');
  expect(
    await ask('olvidé echar el coco. quedó solo 600 de manteca de chancho con 92 de sosa', 'es-ES'),
  ).not.toContain('veterinario');
  expect(await ask('mi perro lamió la manteca de cerdo con sosa', 'es-ES')).toContain('veterinario');
  expect(await ask('the dog licked goose fat with lye')).toContain('vet');
});

describe('told of lye alone, and of nobody', () => {
  test.each([
    ["I'm scared of lye any tips", 'goggles'],
    ['lye still clumpy at the bottom of the jug', 'stir on'],
    ['my lye water is still cloudy in the jug', 'stir on'],
    ['spilled lye on the worktop, can I put vinegar on it', 'Do not neutralise it'],
    ['lye on the worktop, vinegar?', 'Do not neutralise it'],
  ])('%s', async (question, said) => {
    expect(await ask(question)).toContain(said);
  });
  test.each([
    ['me da miedo la sosa, ¿algún consejo?', 'gafas'],
    ['la sosa sigue turbia en la jarra', 'remueve'],
    ['la sosa está con grumos en el fondo de la jarra', 'remueve'],
    ['se me cayó sosa en la encimera, ¿le echo vinagre?', 'No la neutralices'],
  ])('%s', async (question, said) => {
    expect(await ask(question, 'es-ES')).toContain(said);
  });
  test('vinegar on skin is first aid, and lye that clumped in its tub is no lye to use', async () => {
    expect(readEmergencies('lye got on my hand at the worktop, vinegar?').map(({ id }) => id)).toContain(
      'lye-skin',
    );
    expect(await ask('lye got on my hand at the worktop, vinegar?')).toContain('running water');
    expect(await ask('my lye is clumped in the tub, still good?')).toContain('nobody knows its strength');
  });
});

test('a superfat that nobody named is told as the usual one', async () => {
  const text = await ask(
    'I will pour at 6 this evening. 500 g olive oil and 500 g coconut oil. How much lye?',
  );
  expect(text).not.toContain('Asked: 5 %');
  const { text: plan } = await room.member.run('/plan', { oils: 'olive 500 g, coconut 500 g' });
  expect(`${text} ${plan}`).not.toContain('Asked: 5 %');
});
