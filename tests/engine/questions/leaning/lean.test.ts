import { describe, expect, test } from 'vitest';
import type { Before, Ran } from '../../../../src/engine/questions/leaning/before.ts';
import { leanOf } from '../../../../src/engine/questions/leaning/lean.ts';
import type { Lack, Lean } from '../../../../src/engine/questions/leaning/lean-kinds.ts';

/* How makers go on from what they asked a minute ago; common practice of chat (no source). */

const ran = (command: string, given: Ran['given'], job?: Ran['job']): Ran => ({
  kind: 'command',
  job,
  command,
  given,
});
const MICA = ran('dose', { colourant: 'mica', portion: '1 kilo oils' }, 'dose');
const CLAY = ran('dose', { colourant: 'green clay', portion: '500 g oils' }, 'dose');
const CUPS = ran('dose', { colourant: 'ultramarine blue', portion: '2 cups' }, 'dose');
const LYE = ran('plan', { oils: '800 g olive, 200 g coconut', superfat: '5' }, 'lye');
const CHECK: Ran = { ...ran('colourant check', { item: 'spirulina' }, 'survives-lye'), wish: 'green' };
const TEAL = ran('match', { target: 'teal' }, 'mix');
const SHELF = ran('shelf add', { item: 'rose clay', amount: '80 g' }, 'shelf-add');
const LAYERS: Before = { kind: 'technique', id: 'layers-how' };
const JUG: Before = { kind: 'matter', id: 'glass-jug' };

const leaning = (before: Before | undefined, turn: string, carried = before): Lean | undefined =>
  leanOf(turn, before && { last: before, ran: carried?.kind === 'command' ? carried : undefined });
const given = (before: Before, turn: string) => {
  const lean = leaning(before, turn);
  return lean?.kind === 'runs' ? lean.readings.map(one => ({ [one.command]: one.given })) : lean;
};

describe('after a dose', () => {
  test.each([
    ['same for the oxide?', { colourant: 'iron oxide', portion: '1 kilo oils' }],
    ['lo mismo para el óxido?', { colourant: 'iron oxide', portion: '1 kilo oils' }],
    ['charcoal?', { colourant: 'charcoal', portion: '1 kilo oils' }],
    ['no the gold one', { colourant: 'gold mica', portion: '1 kilo oils' }],
    // A weight of which nothing is said is of what the one before was of.
    ['and for 800g?', { colourant: 'mica', portion: '800 g oils' }],
    ['righto and how much for 900g then', { colourant: 'mica', portion: '900 g oils' }],
    ['¿y para dos kilos?', { colourant: 'mica', portion: '2 kilos oils' }],
    // Cups are of batter.
    ['ok and for 3 cups', { colourant: 'mica', portion: '3 cups' }],
    ['i mean batter not oils', { colourant: 'mica', portion: '1 kilo batter' }],
    ['no, masa, no aceites', { colourant: 'mica', portion: '1 kilo batter' }],
    ['lighter', { colourant: 'mica', portion: '1 kilo oils', strength: 'pastel' }],
    ['y si lo quiero mas clarito', { colourant: 'mica', portion: '1 kilo oils', strength: 'pastel' }],
    ['darker', { colourant: 'mica', portion: '1 kilo oils', strength: 'full' }],
    ['what if i only have water', { colourant: 'mica', portion: '1 kilo oils', carrier: 'water' }],
    ['y si solo tengo aceite', { colourant: 'mica', portion: '1 kilo oils', carrier: 'aceite' }],
  ])('“%s” changes that alone', (turn, dose) => {
    expect(given(MICA, turn)).toEqual([{ dose }]);
  });

  test('a hue is of the same kind where there is one, and a colour that is wished for where there is none', () => {
    expect(given(CLAY, 'no the pink one')).toEqual([
      { dose: { colourant: 'pink clay', portion: '500 g oils' } },
    ]);
    expect(given(CLAY, 'no, la roja')).toEqual([
      { dose: { colourant: 'arcilla roja', portion: '500 g oils' } },
    ]);
    expect(given(CLAY, 'and turquoise?')).toEqual([
      { match: { target: 'turquoise', portion: '500 g oils' } },
    ]);
  });

  test('white alone is the pigment that makes it', () => {
    expect(given(CUPS, 'and white?')).toEqual([
      { dose: { colourant: 'titanium dioxide', portion: '2 cups' } },
    ]);
  });

  test('grey instead of black is little of the same black', () => {
    const charcoal = ran('dose', { colourant: 'charcoal', portion: '500 g oils' });
    expect(given(charcoal, 'i want grey no black')).toEqual([
      { dose: { colourant: 'charcoal', portion: '500 g oils', strength: 'pastel' } },
    ]);
  });

  test('half of it is half the batter or half the colour: both are offered, and nothing is chosen for them', () => {
    expect(given(CUPS, 'half that')).toEqual([
      { dose: { colourant: 'ultramarine blue', portion: '1 cups' } },
      { dose: { colourant: 'ultramarine blue', portion: '2 cups', strength: '50% of full' } },
    ]);
    expect(given(CUPS, 'so double?')).toMatchObject([
      { dose: { portion: '4 cups' } },
      { dose: { strength: '200% of full' } },
    ]);
  });

  test.each([
    ['a quarter of that', '500 g batter', '25% of full'],
    ['la cuarta parte', '500 g batter', '25% of full'],
    ['a third of it', '666.7 g batter', '33% of full'],
    ['triple', '6000 g batter', '300% of full'],
    ['el doble', '4000 g batter', '200% of full'],
    ['la mitad', '1000 g batter', '50% of full'],
  ])('“%s” is so much of the batter, or of the colour', (turn, portion, strength) => {
    const two = ran('dose', { colourant: 'ultramarine blue', portion: '2000 g batter' });
    expect(given(two, turn)).toMatchObject([{ dose: { portion } }, { dose: { strength } }]);
  });

  test('a bare figure of batter or oils is grams from 100 on, and so many of the same unit below', () => {
    expect(given(CUPS, '100 of batter')).toMatchObject([{ dose: { portion: '100 g batter' } }]);
    expect(given(CUPS, 'quiero decir 500 de aceites')).toMatchObject([{ dose: { portion: '500 g oils' } }]);
    expect(given(CUPS, '99 of batter')).toMatchObject([{ dose: { portion: '99 cups batter' } }]);
    expect(given(CUPS, 'and for 3')).toMatchObject([{ dose: { portion: '3 cups' } }]);
  });

  test('a unit that is asked for changes no amount', () => {
    expect(leaning(MICA, 'and in grams')).toMatchObject({
      kind: 'runs',
      unit: 'grams',
      readings: [{ given: MICA.given }],
    });
    expect(leaning(MICA, 'y en gramos')).toMatchObject({ unit: 'grams' });
  });

  test.each([
    ['and will it fade', { 'colourant check': { item: 'green clay' } }],
    ['is it safe', { 'colourant check': { item: 'green clay' } }],
    ['¿mancha la toalla?', { 'colourant check': { item: 'green clay' } }],
    ['can i mix it with oil', { dose: { colourant: 'green clay', portion: '500 g oils' } }],
    ['how much water', { dose: { colourant: 'green clay', portion: '500 g oils' } }],
    ['what colour will it be', { preview: { mix: 'green clay', portion: '500 g oils' } }],
    ['y cómo queda de color?', { preview: { mix: 'green clay', portion: '500 g oils' } }],
  ])('“%s” takes its colourant to another command', (turn, command) => {
    expect(given(CLAY, turn)).toEqual([command]);
  });

  test.each([
    'and how do i clean my moulds',
    'how about colours for autumn',
    'will the steam melt my mica top',
    'my blue turned grey overnight',
    'titanium dioxide for 2 cups',
    'how much is a tsp in grams',
    'got lye on my hand',
    '/dose colourant:mica portion:"1 cup"',
  ])('“%s” stands alone', turn => {
    expect(leaning(MICA, turn)).toBeUndefined();
  });
});

describe('after the lye of a recipe', () => {
  test.each([
    ['half that', '400 g olive, 100 g coconut', '5'],
    ['el doble', '1600 g olive, 400 g coconut', '5'],
    ['and for 600 g', '480 g olive, 120 g coconut', '5'],
    ['at 8%', '800 g olive, 200 g coconut', '8'],
    ['15 then', '800 g olive, 200 g coconut', '15'],
    ['at 30%', '800 g olive, 200 g coconut', '30'],
    ['con 3% de sobreengrasado', '800 g olive, 200 g coconut', '3'],
    ['swap the coconut for lard', '800 g olive, 200 g lard', '5'],
    ['cambia el coco por manteca de cerdo', '800 g olive, 200 g manteca de cerdo', '5'],
    ['lard instead of the coconut', '800 g olive, 200 g lard', '5'],
    ['add 50 g castor', '800 g olive, 200 g coconut, 50 g castor', '5'],
    ['añade 50 g de ricino', '800 g olive, 200 g coconut, 50 g ricino', '5'],
    ['and water', '800 g olive, 200 g coconut', '5'],
  ])('“%s” is the whole recipe, changed in that alone', (turn, oils, superfat) => {
    expect(given(LYE, turn)).toEqual([{ plan: { oils, superfat } }]);
  });

  test.each([
    // A volume of what, an oil that is not in it, a superfat that is none: asked, never guessed.
    'and for 2 cups',
    'swap the palm for lard',
    'swap the coconut for butter flavour',
    'swap the coconut for olive',
    // In addition or instead? More of the same, or so much in all?
    'and 50 g castor',
    'no, 700 g olive',
    'add 100 g olive',
    'at 31%',
    'of batter',
  ])('“%s” asks for the whole recipe', turn => {
    expect(leaning(LYE, turn)).toEqual({ kind: 'asks', lacks: 'whole-recipe' });
  });

  test('a third of kilos comes out to the gram', () => {
    const kilos = ran('plan', { oils: '1 kg olive, 1 kg coconut, 1 kg lard, 1 kg palm' });
    expect(given(kilos, 'a third of that')).toEqual([
      { plan: { oils: '0.3333 kg olive, 0.3333 kg coconut, 0.3333 kg lard, 0.3333 kg palm' } },
    ]);
  });

  test('a weight that can be read in two ways is scaled in neither', () => {
    const thousands = ran('plan', { oils: '1.000 g olive' });
    expect(leaning(thousands, 'half that')).toEqual({ kind: 'asks', lacks: 'whole-recipe' });
  });

  test('a figure alone is a superfat only where one was told', () => {
    const told = ran('plan', { oils: '500 g coconut' }, 'lye');
    expect(leaning(told, '15 then')).toEqual({ kind: 'asks', lacks: 'whole-recipe' });
  });

  test('a recipe that tells not every weight is changed in nothing', () => {
    const shares = ran('plan', { oils: 'olive 60%, coconut 40%', size: '1 kg' }, 'lye');
    expect(leaning(shares, 'half that')).toEqual({ kind: 'asks', lacks: 'whole-recipe' });
  });

  test('what is told beside the oils as an amount would have to be scaled too, and is not', () => {
    const wet = ran('plan', { oils: '500 g olive', water: '150 g' });
    expect(leaning(wet, 'double it')).toEqual({ kind: 'asks', lacks: 'whole-recipe' });
    expect(leaning(wet, 'add 50 g castor')).toEqual({ kind: 'asks', lacks: 'whole-recipe' });
    const strong = ran('plan', { oils: '500 g olive', water: '30% lye' });
    expect(given(strong, 'double it')).toEqual([{ plan: { oils: '1000 g olive', water: '30% lye' } }]);
  });

  test('of two superfats neither is chosen', () => {
    expect(leaning(LYE, '5 or 8')).toBeUndefined();
    expect(leaning(LYE, '5% or 8%')).toBeUndefined();
    expect(leaning(LYE, 'entre 5 y 8')).toBeUndefined();
  });

  test('a matter in between leaves the recipe as it was', () => {
    const meaning: Before = { kind: 'matter', id: 'superfat-meaning' };
    expect(leaning(meaning, '15 then', LYE)).toMatchObject({
      kind: 'runs',
      readings: [{ given: { superfat: '15' } }],
    });
  });
});

describe('after a check, a colour, a jar', () => {
  test.each([
    [CHECK, 'and turmeric?', { 'colourant check': { item: 'turmeric' } }],
    [CHECK, 'y cuánto le pongo', { dose: { colourant: 'spirulina' } }],
    [CHECK, 'for 2 cups', { dose: { colourant: 'spirulina', portion: '2 cups' } }],
    [CHECK, 'what does then', { dose: { colourant: 'chromium oxide green' } }],
    [TEAL, 'more green in it', { match: { target: 'teal but more green' } }],
    [TEAL, 'and purple?', { match: { target: 'purple' } }],
    [TEAL, 'lighter', { match: { target: 'light teal' } }],
    [TEAL, 'for 1 kg', { match: { target: 'teal', portion: '1 kg' } }],
    [SHELF, 'no 60 sorry', { 'shelf add': { item: 'rose clay', amount: '60 g' } }],
  ])('%o: “%s”', (before, turn, command) => {
    expect(given(before, turn)).toEqual([command]);
  });
});

describe('after a matter', () => {
  test.each([
    ['how long is that', 'how-long'],
    ['y cuánto tiempo', 'how-long'],
    ['why', 'why'],
    ['por qué pasa', 'why'],
    ['ok did that now what', 'done'],
    ['ya hice eso, ahora qué', 'done'],
    ['it’s still lumpy', 'still'],
    ['ya hice eso y sigue con grumos', 'still'],
    ['already poured', 'still'],
    ['how do i stop it next time', 'next-time'],
    ['y la próxima vez cómo lo evito', 'next-time'],
    ['will it come back', 'comes-back'],
    ['¿y eso se quita?', 'comes-back'],
    ['both the same?', 'same'],
  ])('“%s” asks on', (turn, of) => {
    expect(leaning(LAYERS, turn)).toEqual({ kind: 'part', of });
  });

  test('lye alone, after colours by the spoon, is no spoonful', () => {
    expect(leaning(MICA, 'lye?')).toEqual({ kind: 'matter', id: 'spooned-lye' });
    expect(leaning(JUG, 'lye?')).not.toMatchObject({ kind: 'matter' });
  });
});

describe('with nothing before', () => {
  const lacks: readonly (readonly [string, Lack])[] = [
    ['and for 800g?', 'amount-of'],
    ['y para 2 kilos?', 'amount-of'],
    ['how much for 32 oz', 'amount-of'],
    ['what about the pink', 'name-for'],
    ['same for oxide?', 'name-for'],
    ['and for the oxide one?', 'name-for'],
    ['so double?', 'of-what'],
    ['so same amount for that too?', 'of-what'],
    ['lighter', 'of-what'],
    ['why', 'of-what'],
    ['el morado ese q dijiste donde va, en la lejia o despues', 'of-what'],
    ['ok did that now what', 'what-happened'],
    ['ok i did that and its still lumpy', 'what-happened'],
    ['is it safe', 'which-thing'],
    ['is this one lye safe', 'which-thing'],
    ['esta mica sirve?', 'which-thing'],
    ['how much?', 'which-thing'],
    ['cuánto??', 'which-thing'],
    ['did you mean oil or water sorry', 'which-thing'],
    ['eso va antes o despues', 'which-thing'],
    ['that one', 'which-thing'],
    ['y el otro?', 'which-thing'],
    ['is this too much', 'which-thing'],
  ];
  test.each(lacks)('“%s” asks back for what is missing', (turn, lack) => {
    expect(leaning(undefined, turn)).toMatchObject({ kind: 'asks', lacks: lack });
  });

  test.each([
    'how much mica',
    'charcoal?',
    'teal',
    'what temp',
    'will it fade',
    'when do i put the colour in',
    '33% or 28',
  ])('“%s” is answered as it stands', turn => {
    expect(leaning(undefined, turn)).toBeUndefined();
  });

  test.each(['ok', 'ok cool', 'vale', 'perfecto'])('“%s” asks nothing', turn => {
    expect(leaning(undefined, turn)).toEqual({ kind: 'fine' });
  });
});

test('the language is asked for in either language, and nothing else is', () => {
  expect(leaning(MICA, 'y en español?')).toEqual({ kind: 'again' });
  expect(leaning(MICA, 'in english please')).toEqual({ kind: 'again' });
  expect(leaning(MICA, 'how do you say mica in spanish')).toBeUndefined();
});
