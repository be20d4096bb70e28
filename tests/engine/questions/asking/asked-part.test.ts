import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { emergenciesTold } from '../../../../src/conversation/first-aid/told.ts';
import { parsePortions } from '../../../../src/engine/batch/portions/portion-list.ts';
import { askedPart, askingPart } from '../../../../src/engine/questions/asking/asked-part.ts';
import { asksCalmly } from '../../../../src/engine/questions/asking/asks-calmly.ts';
import { piecesOf } from '../../../../src/engine/questions/asking/pieces.ts';
import { amountsIn } from '../../../../src/engine/questions/found/amounts.ts';
import { thingsIn } from '../../../../src/engine/questions/found/names/entities.ts';
import { wordsOf } from '../../../../src/engine/questions/found/words-of.ts';
import { readQuestion } from '../../../../src/engine/questions/read.ts';
import { drawn } from '../../../walk.ts';

const setNamed = (name: string) =>
  JSON.parse(readFileSync(new URL(`../../../sets/${name}.json`, import.meta.url), 'utf8')) as {
    readonly questions: readonly { readonly text: string }[];
  };
const TEXTS = drawn(
  ['harbour-and-hedge', 'physio-and-dispatch', 'bazaar-and-bothy', 'organ-and-volcano'].flatMap(name =>
    setNamed(name).questions.map(({ text }) => text),
  ),
  200,
  'asked part',
);
const namesOf = (text: string) =>
  thingsIn(wordsOf(text)).filter(({ colourants }) => colourants.length > 0).length;
const amountsOf = (text: string) => amountsIn(wordsOf(text), thingsIn(wordsOf(text))).length;

// Sentences of talk and what is asked beside them: from memory of how members write.
describe('talk of the day beside a question is left out', () => {
  test.each([
    [
      'It rained all day and the washing is soaked. How much mica for 500 g of oils?',
      'How much mica for 500 g of oils?',
    ],
    ['Evening all. My sister is on nights this week. Does annatto fade?', 'Does annatto fade?'],
    ['Does annatto fade? My neighbour thinks I am mad.', 'Does annatto fade?'],
    [
      'Hoy llovió y no hubo clases. ¿Cuánta arcilla rosa para 1 kg de aceites?',
      '¿Cuánta arcilla rosa para 1 kg de aceites?',
    ],
    ['Mi suegra llegó de sorpresa. ¿La cúrcuma aguanta la sosa?', '¿La cúrcuma aguanta la sosa?'],
  ])('%s', (text, asked) => {
    expect(askedPart(text)).toBe(asked);
  });

  test.each([
    // A figure, an oil, a hue, a country, how strong, a sign of a flaw.
    'My sister took 200 g of it home. How much lye is left to weigh?',
    'My sister needs 14 for the wedding. How much mica for 500 g of batter?',
    'My daughter wishes them paler for the fair. How much mica for 500 g of batter?',
    'My mother gave me the lard. How much lye for it?',
    'My daughter wants lilac. What do I mix?',
    'My brother lives in Spain. Is carmine allowed in soap there?',
    'Spirulina for 500 g of batter, how much? Pastel, obviously.',
    'Se me puso duro de una, mi hija se reía. ¿Qué pasó?',
    'Lo hice con mi abuela y quedó blandito. ¿Por qué?',
  ])('what an answer hangs on stays: %s', text => {
    expect(askedPart(text)).toBe(text);
  });

  test('what a question that names nothing points to stays with it', () => {
    const text = 'I am making soap. My kids want to join in. Can they help?';
    expect(askedPart(text)).toBe(text);
  });

  test('where somebody is hurt nothing is left out', () => {
    const text = 'My son is crying. Rain all day here. How much vinegar for lye on skin?';
    expect(askedPart(text)).toBe(text);
  });

  test('nothing is left out where nothing of the trade would be left', () => {
    expect(askedPart('My mum rang. It rained all day.')).toBe('My mum rang. It rained all day.');
  });
});

describe('of every text that makers wrote', () => {
  test('its pieces joined are the text again', () => {
    for (const text of TEXTS) expect(piecesOf(text).join('')).toBe(text);
  });

  test('one sentence stays as it is', () => {
    const single = TEXTS.filter(text => piecesOf(text).length === 1);
    expect(single.map(text => askedPart(text))).toEqual(single);
  });

  test('no colourant that is named and no amount is left out', () => {
    for (const text of TEXTS) {
      expect(namesOf(askedPart(text))).toBe(namesOf(text));
      expect(amountsOf(askedPart(text))).toBe(amountsOf(text));
    }
  });

  test('what was left out once leaves nothing more to leave out', () => {
    for (const text of TEXTS) expect(askedPart(askedPart(text))).toBe(askedPart(text));
  });
});

describe('pieces', () => {
  test.each([
    ['1 lb. of lard and 1.5 kg olive. How much lye?', 2],
    ['Rained off, so I am soaping. Which green holds?', 3],
    ['Llovió mucho, bueno, ¿cuánta mica?', 2],
    ['aprox. 3 tazas de masa', 1],
  ])('%s', (text, count) => {
    expect(piecesOf(text)).toHaveLength(count);
  });

  test('the sentences that ask stand by themselves', () => {
    expect(askingPart('I have madder. How much of it for 500 g?')).toBe('How much of it for 500 g?');
    expect(askingPart('How much madder?')).toBeUndefined();
  });
});

describe('the job is judged by what is asked', () => {
  test.each([
    [
      'Foggy as anything this morning. I have had alkanet root steeping since the summer, will it stay purple in lye?',
      'survives-lye',
    ],
    ['Mi prima ganó el partido anoche. ¿Qué color da el óxido amarillo con el ultramar azul?', 'preview'],
    ['El violeta de manganeso viró a pardo. ¿Qué ha ocurrido?', 'diagnose'],
    [
      'La niña tiene presentación de salsa el sábado y yo de boba prometí jabones dorados pa todo el grupo, son 14. Mica dorada, 1.600 gramos de masa en total, ¿cuánta mica?',
      'dose',
    ],
    ['I am new, my niece put me on here. What can you do?', 'help'],
  ])('%s', (text, job) => {
    expect(readQuestion(text).readings[0]?.job).toBe(job);
  });

  test('a litre of batter is a portion where so much is asked of each', () => {
    expect(readQuestion('¿Cuánto carbón activado por litro de masa?').facts.portion).toBe('1 litre');
  });
});

describe('first aid', () => {
  test.each([
    'Ayer se nos metió el agua al salón, trapeando hasta las diez. Bueno, ¿cuánto óxido de hierro rojo para 350 ml de masa?',
    'Hola, a mí me metió al grupo mi comadre y no conozco a nadie. ¿Qué sabés hacer, en qué me podés ayudar?',
    'The dog is barking at the rain. Does annatto hold up in soap?',
  ])('does not come for talk: %s', text => {
    expect(emergenciesTold([text]).map(({ id }) => id)).toEqual([]);
  });

  test.each([
    'The dog got into the lye jug. How much mica for 500 g?',
    'My hands are burning. How much mica for 500 g of oils?',
    'Me siento mareada y no hay ventana. ¿Cuánta mica para 500 g?',
    'My baby swallowed some of it. What can you do?',
    'He is limp. What colours do I mix for teal?',
  ])('is not held back by a plain question: %s', text => {
    expect(asksCalmly(text)).toBe(false);
  });

  test('no emergency that anybody wrote down is taken for talk', () => {
    const files = ['fifth', 'sixth', 'seventh', 'eighth', 'ninth', 'tenth'];
    const told = files.flatMap(name => {
      const file = new URL(`../../hazards/emergencies/emergencies-${name}.json`, import.meta.url);
      return (JSON.parse(readFileSync(file, 'utf8')) as { emergencies: { text: string }[] }).emergencies;
    });
    expect(told.map(({ text }) => text).filter(asksCalmly)).toEqual([]);
  });

  test('what would come of too much lye is asked calmly', () => {
    expect(emergenciesTold(['what if i go over on the lye']).map(({ id }) => id)).toEqual([]);
    expect(
      emergenciesTold(['what if i go over on the lye, it is foaming']).map(({ id }) => id).length,
    ).toBeGreaterThan(0);
  });
});

describe('layers and shares', () => {
  const namesIn = (text: string) => parsePortions(text).map(({ colours }) => colours[0]?.text);

  test.each([
    ['verde de base, encima turquesa y cierro con blanco', ['verde', 'turquesa', 'blanco']],
    [
      'En el fondo, azul marino; sobre éste, turquesa; por último, blanco a modo de espuma',
      ['azul marino', 'turquesa', 'blanco'],
    ],
    ['pink at the bottom, then cream, finally gold', ['pink', 'cream', 'gold']],
  ])('told in the order of pouring: %s', (text, layers) => {
    expect(namesIn(text)).toEqual(layers);
  });

  test('names and as many figures behind them', () => {
    const shares = parsePortions('amarillo : naranja : marrón = 1 : 1 : 2');
    expect(shares.map(({ share }) => share)).toEqual([
      { by: 'parts', parts: 1 },
      { by: 'parts', parts: 1 },
      { by: 'parts', parts: 2 },
    ]);
  });
});
