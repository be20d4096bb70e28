import { describe, expect, test } from 'vitest';
import { thingsIn } from '../../../../src/engine/questions/found/names/entities.ts';
import { strengthIn } from '../../../../src/engine/questions/found/strength/strength-in.ts';
import { wordsOf } from '../../../../src/engine/questions/found/words-of.ts';
import { readQuestion } from '../../../../src/engine/questions/read.ts';

const named = (text: string) => thingsIn(wordsOf(text)).map(({ text: name }) => name);

describe('a hue that stands apart from what it is the hue of', () => {
  test.each([
    ['clay: straight in or slurried? 15 g of french green', ['green clay']],
    ['what do I wet oxide with? the red one', ['red iron oxide']],
    ['la arcilla se moja con agua? la rosa', ['arcilla rosa']],
    ['¿óxido de cromo o el hidratado?', ['oxido de cromo', 'hydrated chromium oxide']],
    ['3 layers, red black yellow, with oxides', ['red iron oxide', 'black iron oxide', 'yellow iron oxide']],
    [
      'capas con óxidos: negro, rojo y amarillo',
      ['oxido de hierro negro', 'oxido de hierro rojo', 'oxido de hierro amarillo'],
    ],
    ['are neones allowed', ['pigmentos neon']],
    ['got red oxide yellow oxide chrome green', ['red oxide', 'yellow oxide', 'chrome green']],
  ])('%s', (text, names) => {
    expect(named(text)).toEqual(names);
  });

  test.each([
    'the oxide in the white one and the red one',
    'does clay turn the white batter green',
    'the blue one bleeds',
    'is hydrated better',
  ])('not: %s', text => {
    expect(named(text)).toEqual([]);
  });
});

test.each([
  ['how much tit dioxide for 2 cups', 'titanium dioxide'],
  ['how much tie tanium dioxide for 2 cups', 'titanium dioxide'],
  ['does butterfly pee powder stay blue', 'butterfly pea'],
])('a name as it is heard: %s', (text, name) => {
  expect(named(text)[0]).toContain(name);
});

test('carbon dioxide is no pigment', () => {
  expect(named('does carbon dioxide make the ash')).not.toContain('titanium dioxide');
});

test('what is named by its kind alone is asked about by that', () => {
  expect(readQuestion('my clay keeps clumping, what do I wet it in').facts.named).toEqual(['clay']);
  expect(readQuestion('con qué mojo los óxidos').facts.named).toEqual(['oxido de hierro']);
});

describe('how strong', () => {
  const strength = (text: string) => {
    const words = wordsOf(text);
    return strengthIn(words, thingsIn(words));
  };
  test.each([
    ['a good full strong spruce, not minty', 'full'],
    ['strong please, my last were washed out', 'full'],
    ['washed out, please', 'pastel'],
    ['la quiero clarita nomás', 'tint'],
    ['la quiero clarita', 'pastel'],
    ['un verdecito de nada', 'tint'],
    ['solo un tinte suavecito', 'tint'],
    ['un tono suavecito nada más', 'tint'],
  ])('%s', (text, wished) => {
    expect(strength(text)).toBe(wished);
  });
});
