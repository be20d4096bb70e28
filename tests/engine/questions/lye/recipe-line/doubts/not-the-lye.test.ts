import { describe, expect, test } from 'vitest';
import * as english from '../../../../../../src/words/en/index.ts';
import * as spanish from '../../../../../../src/words/es/index.ts';
import { isAskedBack, readInChat, refusalOf } from '../../../read-in-chat.ts';

describe('a carbonate is no lye: it makes no soap of a fat (textbook chemistry)', () => {
  test.each([
    'I make it with washing soda, how many g for 500g tallow',
    '500 g lard and 200 g olive, sodium carbonate as my lye, 5%. how much?',
    'hago mi jabón con carbonato de sodio, ¿cuánto para 500 g de sebo?',
  ])('%s', question => expect(refusalOf(question).id).toBe('lye-not-hydroxide'));
  test('but what the sink was scrubbed with is none of the recipe', () =>
    expect(
      isAskedBack(
        '500 g lard, 200 g olive, 5% superfat. How much NaOH? I scrubbed the sink with washing soda.',
      ),
    ).toBe(false));
});

describe('a hydroxide of which nobody knows which it is is not weighed', () => {
  test.each([
    'en el bote pone hidróxido pero no dice si sódico o potásico, tengo 600 g oliva y 200 coco, cuanto echo',
    "the tub says hydroxide but not whether it's sodium or potassium. 600 g olive 200 g coconut, how much lye?",
    'unlabelled tub of lye from the shed. 600 g olive, 200 g coconut, 5%, how much?',
    'sosa sin etiqueta: 600 g oliva, 200 g coco, 5%, ¿cuánta echo?',
    'encontre un frasco con escamas blancas que dice hidroxido y nada mas, para 500 g oliva y 200 g coco cuanto le echo?',
    'the jar says hydroxide and nothing else. 500 g olive, 200 g coconut, how much?',
  ])('%s', question => expect(refusalOf(question).id).toBe('lye-which-unknown'));
  test('in both languages', () => {
    const { values } = refusalOf('unlabelled tub of lye. 600 g olive, 200 g coconut, 5%, how much?');
    expect(english.refusals['lye-which-unknown'](values as never)).toContain(
      'do not use it until it is known which it is',
    );
    expect(spanish.refusals['lye-which-unknown'](values as never)).toContain(
      'no lo uses hasta saber cuál es',
    );
  });
});

test('a first one of one’s own is no oil of the list', () =>
  expect(
    isAskedBack(
      'How much lye for 500g olive, 250g coconut, 250g tallow at 5%? its my first one without the recipe card',
    ),
  ).toBe(false));

test('who does not know which superfat to take is answered with the usual one', () =>
  expect(
    isAskedBack(
      'manteca de cerdo 600 y coco 400 cuanta sosa lleva. no digo sobreengrasado pq no se cual poner',
    ),
  ).toBe(false));

describe('a superfat told as fat left over, or as a share of the lye', () => {
  test.each([
    ['650 g olive and 250 g coconut. i want a twentieth of the fats left over after. naoh', 5],
    ["olive 800 coconut 200 all grams, I use 92% of the lye it'd need in full. so how many g of NaOH", 8],
    ['quiero que quede un 8 por ciento de aceite sin convertir. 650 g oliva 350 g palma. sosa', 8],
    ['500 g olive 200 g coconut. About 6 percent of the fat unsaponified. How much lye?', 6],
    ['500 g olive 200 g coconut. How much lye, with no extra fat at all?', 0],
    ['500 g de oliva y 200 g de coco, sin nada de grasa libre, ¿cuánta sosa?', 0],
  ])('%s', (question, superfat) => expect(readInChat(question).given.superfat).toBe(superfat));
});

describe('what is asked for its own reason', () => {
  test.each([
    ['olive 60% coconut 25% castor 10%, 1200g of oils. NaOH 5% sf', 95],
    ['oliva 70% coco 20% ricino 15%, 1000 g de aceites. sosa 5%', 105],
  ])('percents that are no hundred: %s', (question, sum) => {
    const { id, values } = refusalOf(question);
    expect([id, values]).toEqual(['oils-percent-sum', { sum }]);
  });
  test.each([
    'scale says 845g with the bowl, bowl on its own 230. its all lard. how much lye, superfat 5',
    'peso con olla 2310 g, la olla vacía 1560, es todo sebo de vaca. sosa 5',
  ])('a weight with its vessel has no button that takes it so: %s', question =>
    expect((refusalOf(question).values as { ways?: readonly unknown[] }).ways ?? []).toEqual([]),
  );
  test.each([
    '16 oz olive, 16 oz coconut, I used a measuring jug like always. How much lye?',
    '5lb batch, olive 40 coconut 30 palm 30. sf 6. is the 5lb with the water in? lye?',
    '2 libras de sebo y media libra de coco. ¿Sosa? Ella vive en el norte, y aquí la libra es otra',
  ])('a weight that may be another: %s', question => expect(isAskedBack(question)).toBe(true));
});

describe('“sin la manteca” is of the one butter that is told', () => {
  test.each([
    'oliva 500 g, coco 200 g, manteca de cacao 80 g, sin la manteca. sosa 5%',
    'sin la manteca: oliva 500 g, coco 200 g, manteca de cacao 80 g. sosa 5%',
  ])('%s', question => expect(readInChat(question).given.oils).toBe('500 g oliva, 200 g coco'));
  test('of lard where it is told, and asked of two butters', () => {
    expect(
      readInChat('oliva 500 g, manteca de cerdo 200 g, karité 80 g, sin la manteca. sosa 5%').given.oils,
    ).toBe('500 g oliva, 80 g karite');
    expect(isAskedBack('oliva 500 g, karité 80 g, manteca de cacao 80 g, sin la manteca. sosa 5%')).toBe(
      true,
    );
  });
});

test('ounces go on to be told, though the answer is asked for in grams', () =>
  expect(
    readInChat('20 onzas de oliva, 10 onzas de coco y 2 de ricino, pesadas. ¿Cuánta sosa, en gramos?').given
      .oils,
  ).toBe('20 oz oliva, 10 oz coco, 2 oz ricino'));
