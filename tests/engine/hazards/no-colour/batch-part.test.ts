import { describe, expect, test } from 'vitest';
import { findColourant } from '../../../../src/engine/colourants/asked/find-colourant.ts';
import { colourants } from '../../../../src/engine/colourants/catalogue.ts';
import { type BatchPart, barredInSentence, batchPartIn } from '../../../../src/engine/hazards/index.ts';
import { isCalledColour } from '../../../../src/engine/hazards/no-colour/batch-part.ts';
import { Refusal } from '../../../../src/engine/refusal.ts';

const refusalOf = (name: string) => {
  try {
    return findColourant(name).id;
  } catch (refusal) {
    if (refusal instanceof Refusal) return refusal.id;
    throw refusal;
  }
};

/** What each is in a batch is common practice; the names are ours. */
const PARTS: readonly (readonly [name: string, part: BatchPart | undefined])[] = [
  ['red wine', 'liquid'],
  ['orange juice', 'liquid'],
  ['goat milk', 'liquid'],
  ['rice milk', 'liquid'],
  ['jugo de betabel', 'liquid'],
  ['vino tinto', 'liquid'],
  ['honey', 'sugar'],
  ['maple syrup', 'sugar'],
  ['milk powder', 'sugar'],
  ['azúcar moreno', 'sugar'],
  ['apple cider vinegar', 'acid'],
  ['lemon juice', 'acid'],
  ['ácido cítrico', 'acid'],
  ['olive oil', 'fat'],
  ['aceite de coco', 'fat'],
  ['cinnamon oil', 'scent'],
  ['motor oil', 'oil'],
  // Prohibited scents, and scents still.
  ['boldo oil', 'scent'],
  ['pennyroyal oil', 'scent'],
  ['aceite de boldo', 'scent'],
  ['lard', 'fat'],
  ['sebo', 'fat'],
  ['coconut milk powder', 'sugar'],
  ['lemon juice powder', 'acid'],
  ['agua destilada', 'plain'],
  ['vegetable glycerin', 'plain'],
  ['stearic acid', 'wax'],
  ['citric acid', 'acid'],
  ['beer', 'liquid'],
  ['sea salt', 'salt'],
  ['', undefined],
  ['lavender essential oil', 'scent'],
  ['vanilla extract', 'scent'],
  ['fragancia de rosas', 'scent'],
  ['pink salt', 'salt'],
  ['sal rosa', 'salt'],
  ['beeswax', 'wax'],
  ['cera de abejas', 'wax'],
  ['caustic soda', 'lye'],
  ['sosa', 'lye'],
  ['rosemary extract', 'herb'],
  ['maltodextrin', 'plain'],
  ['wine red mica', undefined],
  ['honey pigment', undefined],
  ['mica milk', undefined],
  ['neon beer', undefined],
  ['kaolin clay', undefined],
  ['moonlight dream', undefined],
];

test.each(PARTS)('%s is %s', (name, part) => {
  expect(batchPartIn(name)).toBe(part);
});

test.each([
  ['wine mica', true],
  ['azul óxido', true],
  ['red wine', false],
])('%s calls itself a colour: %s', (name, isColour) => {
  expect(isCalledColour(name)).toBe(isColour);
});

test('a name is read up to two hundred signs', () => {
  expect(batchPartIn(`${'x '.repeat(98)}milk`)).toBe('liquid');
  expect(batchPartIn(`${'x '.repeat(99)}milk`)).not.toBe('liquid');
});

describe('a likeness makes no colour of the kitchen', () => {
  test.each(['wine', 'sugar', 'orange juice', 'beer', 'lemon juice', 'rose water', 'miel', 'vino'])(
    '%s',
    name => {
      expect(refusalOf(name)).toBe('no-colour');
    },
  );
  test.each(['vodka', 'rubbing alcohol'])('%s', name => {
    expect(refusalOf(name)).toBe('liquid-is-spirit');
  });

  test('every name of every colourant still finds a colourant', () => {
    const lost = colourants
      .flatMap(({ names, synonyms }) => [names.en, names.es, ...synonyms])
      .filter(name => refusalOf(name) === 'no-colour' && batchPartIn(name) !== undefined);
    expect(lost).toEqual([]);
  });
});

describe('what a sentence asks for that stays out of soap', () => {
  test.each([
    ['can I use acrylic paint to colour soap?', 'acrylic paint'],
    ['could I put hair dye in my soap for a bright red', 'hair dye'],
    ['¿puedo usar tinte para el pelo en el jabón?', 'tinte para pelo'],
    ['can I use eye shadow to colour my soap', 'eye shadow'],
    ['can I use mica made for car paint', 'car paint'],
    ['does calmium red survive lye', 'calmium'],
    ['how much cadmiun yellow for 2 cups', 'cadmiun'],
    ['¿sirve el azul de lavar la ropa?', 'azul de lavar ropa'],
  ])('%s', (sentence, name) => {
    expect(barredInSentence(sentence)).toBe(name);
  });

  test.each([
    'can I use hair dye mica',
    'can I use a hair dye brush',
    'how much cobalt blue mica for 3 cups',
    'does this lead to soda ash',
    'will calcium carbonate lighten my soap',
    'can I paint the top of my soap with gold mica',
    'how much chromium oxide green for 2 cups',
    'can I use a minimum of water',
  ])('%s asks for none', sentence => {
    expect(barredInSentence(sentence)).toBeUndefined();
  });
});
