import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openTalk, type Talk, textOf, understoodOf } from './talking.ts';

/* Everyday messages that were once answered as if something else had been asked. Common practice of soap makers, no source, where none is named. */

let talk: Talk;
beforeAll(async () => {
  talk = await openTalk();
});
afterAll(() => talk[Symbol.asyncDispose]());
const read = async (language: 'en' | 'es', ...turns: readonly string[]) => await talk.lastOf(turns, language);

describe('talk that asks for nothing', () => {
  test.each([
    ['en', 'good mornin from Dubuque, 14 below here so its a coffee and soap day', 'greets'],
    ['es', 'Bon dia!! ya estoy otra vez con mis potingues jajaja', 'greets'],
    ['en', 'are you a real person or is somebody messing with me again', 'program'],
    ['es', 'eres una persona o un robot?', 'program'],
    ['es', 'ponme un aviso para que les dé la vuelta el domingo', 'remind'],
    ['en', 'can you draw me a picture of that swirl', 'draw'],
    ['en', 'Tell Jolene to bring my slab mold back thursday', 'cannot'],
  ] as const)('%s: %s', async (language, text, chat) => {
    expect((await read(language, text)).data).toMatchObject({ understood: { chat } });
  });
  test.each([
    ['en', 'good morning, my soap turned brown overnight'],
    ['es', 'hola, cuánta mica para 500 g de aceites'],
    ['en', 'morning, lye splashed on my arm'],
  ] as const)('%s: %s: a greeting is no more than its opening', async (language, text) => {
    expect((await read(language, text)).data).not.toMatchObject({ understood: { chat: 'greets' } });
  });
});

describe('a colour that is spoken of', () => {
  test.each([
    ['en', 'and the gray how much charcoal for a pound of oils, last time it was basically asphalt'],
    ['es', 'cuánto carbón para un gris en 500 g de aceites'],
  ] as const)('%s: %s: grey is a tint of black', async (language, text) => {
    expect(understoodOf(await read(language, text)).given).toMatchObject({ strength: 'tint' });
  });
  test('a black of charcoal is no tint', async () => {
    expect(
      understoodOf(await read('en', 'how much charcoal for a black in a pound of oils')).given?.strength,
    ).not.toBe('tint');
  });
  test.each([
    ['en', 'oils are mostly that dark green olive oil, is that why it is yellow'],
    ['es', 'un gris claro que no parezca cemento'],
    ['es', 'verde oliva cómo lo saco, tengo óxido amarillo, ultramar azul y negro'],
  ] as const)(
    '%s: %s: an oil, a likeness that is refused and what is owned are no wish',
    async (language, text) => {
      const target = understoodOf(await read(language, text)).given?.target ?? '';
      expect(target).not.toMatch(/green|cemento|tengo|amarillo/u);
    },
  );
  test.each([
    ['en', 'how much blue and pink ultramarine for 1 lb oils', /half the dose of each/u],
    ['es', 'de azul y rosa ultramarino, cuánto para 1,5 kg de aceite', /media dosis de cada uno/u],
  ] as const)('%s: %s: of two none is dropped', async (language, text, said) => {
    expect(textOf(await read(language, text))).toMatch(said);
  });
  test.each([
    ['en', 'Canned 14 quarts of beets and saved the juice. Will it make pink soap'],
    ['es', 'Tengo la tienda llena de pétalos de rosa que tiraría. Los meto en el jabón y se queda rosa no?'],
  ] as const)(
    '%s: %s: the plant is asked of, and goes brown (betalains and anthocyanins in alkali, textbook chemistry)',
    async (language, text) => {
      expect(understoodOf(await read(language, text)).command).toBe('colourant check');
    },
  );
});

describe('words that were taken for others', () => {
  test('fine white powder is no turmeric', async () => {
    expect(
      understoodOf(await read('es', 'polvillo blanco por arriba. se come?? digo que si se quita')).command,
    ).toBe('diagnose');
  });
  test('a stick that draws a swirl is no turmeric', async () => {
    expect(
      understoodOf(await read('es', 'para el dibujo de arriba con palillo, cuanto hundo?')).command,
    ).not.toBe('dose');
    expect(understoodOf(await read('es', 'el palillo para 300 g de masa cuánto será pues')).command).toBe(
      'dose',
    );
    expect(understoodOf(await read('es', 'cuánto palillo en polvo para 500 g de aceites')).command).toBe(
      'dose',
    );
  });
  test('the dose that is asked last is told, whatever was seen before', async () => {
    const text = 'my white soap comes out looking like butter. how much titanium dioxide per pound of oil';
    expect(understoodOf(await read('en', text))).toMatchObject({
      command: 'dose',
      given: { portion: '1 pound oils' },
    });
  });
});

describe('a place and its warmth', () => {
  test.each([
    ['en', 'garage is 48 degrees. can i soap out there or nah', 'cold-room'],
    ['es', 'mi garaje está a 9 grados, puedo hacer jabón ahí?', 'cold-room'],
    ['en', 'lye is 140 oils are 95. wait or go', 'mixing-temperature'],
    ['es', 'la sosa está a 60 y los aceites a 35, espero o mezclo?', 'mixing-temperature'],
  ] as const)('%s: %s', async (language, text, lye) => {
    expect(understoodOf(await read(language, text)).lye).toBe(lye);
  });
});

describe('a turn that goes on', () => {
  test.each([
    [
      'en',
      ['how much mica for 800 g of oils', 'ok but half of that batch is staying plain. so half the mica?'],
    ],
    [
      'es',
      [
        'cuánta mica para 800 g de aceites',
        'la mitad de la masa se queda blanca, entonces la mitad de mica?',
      ],
    ],
  ] as const)('%s: %j: the coloured half is dosed', async (language, turns) => {
    expect(understoodOf(await read(language, ...turns)).given).toMatchObject({ portion: '400 g oils' });
  });
  test.each([
    ['en', ['red oxide left little freckles all thru my bars', 'how much oil to wet 1 tsp']],
    ['es', ['el óxido rojo me dejó puntitos en el jabón', 'con cuánto aceite lo mojo?']],
  ] as const)('%s: %j: what is wetted is the powder that was spoken of', async (language, turns) => {
    expect(textOf(await read(language, ...turns))).toMatch(
      /red iron oxide|óxido de hierro rojo|red oxide|oxido rojo/u,
    );
  });
});
