import { describe, expect, test } from 'vitest';
import { isSurelyOurs } from '../../../../../src/engine/questions/fields/surely-ours.ts';
import { thingsIn } from '../../../../../src/engine/questions/found/names/entities.ts';
import { targetIn, wishOfThing } from '../../../../../src/engine/questions/found/target-in.ts';
import { wordsOf } from '../../../../../src/engine/questions/found/words-of.ts';
import { readQuestion } from '../../../../../src/engine/questions/read.ts';

const named = (text: string) => thingsIn(wordsOf(text)).map(one => one.text);

describe('two things that one word names', () => {
  test.each([
    ['óxido rojo y amarillo para 500 g', ['oxido rojo', 'oxido amarillo']],
    ['red and yellow oxide for 2 cups', ['red oxide', 'yellow oxide']],
    ['pink n white clay', ['white clay', 'pink clay']],
  ])('%s', (text, names) => {
    expect(named(text).toSorted()).toEqual(names.toSorted());
  });

  test.each([
    ['red, yellow and black oxide', ['red oxide', 'yellow oxide', 'black oxide']],
    ['olive green from yellow + black oxide', ['yellow oxide', 'black oxide']],
    ['rust from the red and the yellow oxides', ['red oxide', 'yellow oxides']],
    ['marrón con óxido rojo, amarillo y negro', ['oxido rojo', 'oxido amarillo', 'oxido negro']],
    [
      '¿verde oliva con óxidos? con el amarillo y el negro',
      ['oxido de hierro amarillo', 'oxido de hierro negro'],
    ],
    ['which oxides for olive, the yellow and the black?', ['yellow iron oxide', 'black iron oxide']],
  ])('a list of hues: %s', (text, names) => {
    expect(named(text).toSorted()).toEqual(names.toSorted());
  });

  test('one hue alone is none of the oxides that are spoken of, nor are two beside a named thing', () => {
    expect(named('oxides for an olive green, the yellow one?')).toEqual([]);
    expect(named('óxido rojo, amarillo')).toEqual(['oxido rojo']);
    expect(named('which oxides beside ultramarine blue for the green and the red')).toEqual([
      'ultramarine blue',
    ]);
  });

  test('the dioxide of soap makers is of titanium, and no other is', () => {
    expect(named('5 g de dióxido en glicerina')).toEqual(['dioxido de titanio']);
    expect(named('dióxido de silicio en el jabón')).not.toContain('dioxido de titanio');
  });

  test('a name keeps its own letters before a short verb', () => {
    expect(named("cochineal's not allowed in australia, is it?")).toEqual(['cochineal']);
  });

  test('a hue behind a comma, and what stands apart, is none of them', () => {
    expect(named('white, pink clay')).toEqual(['pink clay']);
    expect(named('a red soap and yellow oxide')).toEqual(['yellow oxide']);
  });
});

describe('a plant beside a colourant', () => {
  test('is named with it, and checked by what colours it', () => {
    // What is joined to a plant is of the same list, each as it was typed.
    expect(readQuestion('remolacha, granada o arándano, alguna sobrevive a la sosa').facts.plants).toEqual([
      'granada',
      'arandano',
    ]);
    const { facts, readings } = readQuestion('do spirulina and chlorella survive lye');
    expect(facts).toMatchObject({ named: ['spirulina', 'chlorella'], plants: ['chlorella'] });
    expect(readings[0]).toMatchObject({ command: 'colourant check', given: { item: 'spirulina' } });
  });
  test('is none where no joining word stands between, or where its oil is meant', () => {
    expect(
      readQuestion('does spirulina survive lye in a soap with carrot puree').facts.plants,
    ).toBeUndefined();
    expect(readQuestion('does spirulina and carrot oil survive lye').facts.plants).toBeUndefined();
  });
});

describe('a wished colour', () => {
  const wished = (text: string) => targetIn(text, wordsOf(text), thingsIn(wordsOf(text)))?.text;
  test('is the one that is looked for, not the one that came out', () => {
    expect(wished('me sale un gris horrible cuando busco lila')).toBe('lila');
    expect(wished('¿cómo se hace el lila?')).toBe('lila');
  });
  test.each([
    ['azul + rosa da lila?', 'lila'],
    ['blue and pink gives lilac, right', 'lilac'],
  ])('what a mix comes to: %s', (text, target) => {
    expect(wished(text)).toBe(target);
  });
  test.each([
    ['un calipso bien piola, con qué lo hago', 'calipso'],
    ['color de corteza de pan, qué polvos', 'corteza de pan'],
    ['un color como las orquídeas', 'orquideas'],
  ])('a thing that has it: %s', (text, target) => {
    const words = wordsOf(text);
    expect(wishOfThing(words, thingsIn(words))?.text).toBe(target);
  });
  test('a white that is only called white is one of what a mix is made of', () => {
    expect(readQuestion('how do I make dusty rose with red mica and white').facts.named).toEqual([
      'red mica',
      'titanium dioxide',
    ]);
  });
});

describe('how strong', () => {
  test.each([
    ['rose clay for 3 lb oils, just a blush of it', 'tint'],
    ['yellow oxide for 12 oz batter, go hard', 'full'],
    ['carbón para una libra de mezcla, bien prieto', 'full'],
    ['ultramar violeta a media máquina para 1 taza', 'medium'],
    ['titanio para 1 taza, blanco de verdad', 'full'],
    ['3 g ultramarine in 600 g batter is barely lilac, what would full strength have been', 'full'],
  ])('%s', (text, strength) => {
    expect(readQuestion(text).facts.strength).toBe(strength);
  });
});

test('a vote with its pictures or its button is the contest’s, an election’s is not', () => {
  const isOurs = (text: string) => {
    const words = wordsOf(text);
    const { facts } = readQuestion(text);
    return isSurelyOurs(words, { things: [], amounts: [], facts });
  };
  expect(isOurs('how do i vote, i see 12 pics and no button')).toBe(true);
  expect(isOurs('dónde se vota, veo las fotos')).toBe(true);
  expect(isOurs('how do i vote in the general election')).toBe(false);
});
