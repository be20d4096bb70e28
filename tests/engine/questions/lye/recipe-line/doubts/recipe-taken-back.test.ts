import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import * as inEnglish from '../../../../../../src/words/en/index.ts';
import * as inSpanish from '../../../../../../src/words/es/index.ts';
import { isAskedBack, readInChat } from '../../../read-in-chat.ts';

const grams = fc.integer({ min: 60, max: 900 });
const ENGLISH = fc.constantFrom(['olive', 'coconut'], ['lard', 'castor oil'], ['palm oil', 'shea butter']);
const SPANISH = fc.constantFrom(
  ['oliva', 'coco'],
  ['manteca de cerdo', 'ricino'],
  ['aceite de palma', 'karité'],
);
/** A recipe, and behind it what is said. */
const english = fc
  .tuple(ENGLISH, grams, grams, fc.constantFrom('. ', '; ', ', '))
  .map(([[one, other], a, b, stop]) => `${a} g ${one} and ${b} g ${other}, 5% superfat${stop}`);
const spanish = fc
  .tuple(SPANISH, grams, grams, fc.constantFrom('. ', '; ', ', '))
  .map(([[one, other], a, b, stop]) => `${a} g de ${one} y ${b} g de ${other}, sobreengrasado 5%${stop}`);
const none = (recipe: fc.Arbitrary<string>, said: readonly string[], asks: string) =>
  fc.assert(
    fc.property(recipe, fc.constantFrom(...said), (told, words) => {
      expect(isAskedBack(`${told}${words}. ${asks}`), `${told}${words}`).toBe(true);
    }),
  );

describe('what turns two weights round is asked back, never passed by', () => {
  // The first of each language had been given a number, 13 % too much lye and twice the lye.
  test.each([
    'Coconut oil and olive oil, 600 g and 250 g respectively. No, the other way about. 5% superfat. How much NaOH?',
    '400 g de coco, 400 g de oliva. Perdón, 400 eran entre los dos, mitad y mitad. Sobreengrasado 5%. ¿Cuánta sosa?',
    'Aceite de coco y de oliva, 600 y 250 g respectivamente. No, al contrario. ¿Cuánta sosa?',
    '400 g coconut, 400 g olive. Sorry, 400 was for the two, half and half. Lye?',
  ])('%s', question => expect(isAskedBack(question)).toBe(true));

  test('in English', () =>
    none(
      english,
      [
        'no, the other way about',
        'sorry, other way round',
        'the opposite way, I mean',
        'swap those two',
        'I got them muddled',
        'I had the numbers crossed',
        'vice versa',
        'just the opposite',
      ],
      'How much lye?',
    ));
  test('in Spanish', () =>
    none(
      spanish,
      [
        'no, al revés',
        'perdón, al contrario',
        'las confundí',
        'los tengo intercambiados',
        'están invertidos',
      ],
      '¿Cuánta sosa?',
    ));
});

describe('a sentence that takes back what was told is asked back, in whatever words', () => {
  const word = fc.stringMatching(/^[b-z]{3,8}$/u);
  test('English and Spanish, strange words behind "no" and "sorry"', () => {
    fc.assert(
      fc.property(
        english,
        fc.constantFrom('No, ', 'Nope, ', 'Sorry, the ', 'Wait, '),
        word,
        (told, no, said) => {
          expect(isAskedBack(`${told}. ${no}${said}wq. How much lye?`)).toBe(true);
        },
      ),
    );
    fc.assert(
      fc.property(spanish, fc.constantFrom('No, ', 'Perdón, ', 'Digo, '), word, (told, no, said) => {
        expect(isAskedBack(`${told}. ${no}${said}wq. ¿Cuánta sosa?`)).toBe(true);
      }),
    );
  });
  test('a courtesy takes nothing back', () => {
    expect(readInChat('500 g olive, 100 g coconut. Sorry for the bother! How much lye?').given.oils).toBe(
      '500 g olive, 100 g coconut',
    );
    expect(
      readInChat('500 g de oliva, 100 g de coco. ¡Perdón por la molestia! ¿Cuánta sosa?').given.oils,
    ).toBe('500 g oliva, 100 g coco');
    expect(readInChat('500 g de oliva, 100 g de coco, ¿cuánta sosa? no quiero que me queme').given.oils).toBe(
      '500 g oliva, 100 g coco',
    );
  });
});

describe('what points back at a recipe without naming an oil is asked back', () => {
  test('in English', () =>
    none(
      english,
      [
        'the first one is 400 really',
        'the second was less',
        'one of them is not in',
        'take 100 off each',
        'the latter is gone',
        'the mixture leaked',
        'someone stole it',
        'the pan boiled over and I lost some',
        'both weighed with the jar on',
        'those are ml',
        'measured by volume',
        'weights are in ounces',
        'that is what I do not want',
        'it is the list for a different soap',
        'I poured a cup of the mix away',
        'it should be 100 less',
      ],
      'Lye?',
    ));
  test('in Spanish', () =>
    none(
      spanish,
      [
        'el segundo es el primero',
        'lo segundo era 200',
        'uno de los dos no va',
        'quítale 100 a cada uno',
        'súmale 100 al primero',
        'la mezcla se salió',
        'se regó algo',
        'lo medí en tazas',
        'pesado con el tarro puesto',
        'son 100 menos',
        'el primero resultó vinagre',
        'es de otra receta',
      ],
      '¿Sosa?',
    ));
  test('a weight that is denied to be one of volume is one', () => {
    expect(readInChat('lard 24 oz, coconut 8 oz (all oz, by weight not by cup). lye?').given.oils).toBe(
      '24 oz lard, 8 oz coconut',
    );
  });
  test('cream of coconut is no coconut oil', () => {
    expect(isAskedBack('500 g olive, 300 g coconut cream, how much lye?')).toBe(true);
    // Castor sugar is the fine one, and takes no lye.
    expect(readInChat('500 g olive, 50 g castor sugar, how much lye?').given).toEqual({
      oils: '500 g olive',
      additives: 'sugar 50 g',
    });
  });
  test('part of what stands there is asked for', () => {
    expect(isAskedBack('I make only part of this: 500 g olive, 300 g coconut. Lye?')).toBe(true);
    expect(isAskedBack('Hago solo una parte: 500 g de oliva, 300 g de coco. ¿Sosa?')).toBe(true);
  });
});

describe('lye of two alkalis is asked for where the shares are told otherwise than the reader takes', () => {
  test.each([
    '500 g tallow, 200 g coconut oil, 5% superfat, 60% of the alkali as KOH (90% pure) and 40% as NaOH. How much of each?',
    '600 g de oliva, 200 g de coco, mitad del álcali en KOH y mitad en NaOH. ¿Cuánto de cada uno?',
  ])('%s', question => expect(isAskedBack(question)).toBe(true));
});

describe('oil that was lost before the lye is asked for by its weight', () => {
  test.each([
    [
      '500 g olive and 300 g coconut, half of the coconut was spilled. How much lye?',
      'half of the coconut was spilled',
    ],
    ['500 g de oliva y 300 g de coco, se me cayó la mitad del coco. ¿Cuánta sosa?', 'se me cayo la mitad'],
  ])('%s', (question, text) => {
    expect(() => readInChat(question)).toThrow(expect.objectContaining({ id: 'oil-lost', values: { text } }));
    expect(inEnglish.refusals['oil-lost']({ text })).toContain(`“${text}”: some of the oil is gone.`);
    expect(inSpanish.refusals['oil-lost']({ text })).toContain(`«${text}»: falta parte del aceite.`);
  });
  test('lye that was spilled is no oil', () => {
    expect(() => readInChat('500 g olive and 300 g coconut. I spilled some lye. How much lye?')).not.toThrow(
      expect.objectContaining({ id: 'oil-lost' }),
    );
  });
});
