import { describe, expect, test } from 'vitest';
import { plainlyElsewhere, withoutLikenesses } from '../../../../src/engine/questions/fields/elsewhere.ts';
import { isAskedGenerally } from '../../../../src/engine/questions/lye/topics/asked-generally.ts';
import { isCurious } from '../../../../src/engine/questions/lye/topics/curious.ts';
import { lyeTopicIn } from '../../../../src/engine/questions/lye/topics/topics.ts';
import { readQuestion } from '../../../../src/engine/questions/read.ts';

describe('what a question is about, common practice (no source)', () => {
  test.each([
    ['how strong a lye dip for bagels', 'lye-elsewhere'],
    ['grams of naoh per litre for biodiesel', 'lye-elsewhere'],
    ['how much caustic to clear a blocked toilet', 'lye-elsewhere'],
    ['cuanta sosa para curar aceitunas', 'lye-elsewhere'],
    ['how much should i sell a bar of soap for', 'business'],
    ['do i need a licence to sell soap at the market', 'business'],
    ['how many drops of annatto in the cheese', 'food'],
    ['my sourdough smells of acetone', 'food'],
    ['un exfoliante de sal, cuanto aceite lleva', 'body-care'],
    ['the indigo vat went green', 'textiles'],
    ['what wick for a wide jar', 'candles'],
    ['va a llover manana', 'other'],
    ['the tomato leaves have white spots, soap spray ok', 'other'],
  ])('%s: %s', (text, field) => {
    expect(plainlyElsewhere(text)).toBe(field);
    expect(readQuestion(text).outside).toBe(field);
  });

  test.each([
    'can i pour it into a cake tin, batter at trace',
    'lye for 500 g olive oil',
    'i want an orange like cheese',
    'el granate de la camiseta, con que se consigue',
    'that candle scent, is it strong enough for soap',
    'will eyeshadow work',
    'the soda i bought is sold as drain opener, does my recipe change',
    'rose clay and a slice that looks like a piece of cake',
    'what can i ask you',
    'does paprika fade',
    'peach, not orange, for a baby shower',
    'how do i get a match for my bus livery, kind of orangey cream',
    'the lipstick mica, pink, does it stand up to caustic',
  ])('%s: ours', text => {
    expect(plainlyElsewhere(text)).toBeUndefined();
    expect(readQuestion(text).outside).toBeUndefined();
  });

  test('soap without lye, and a stain that is to come out, stay outside', () => {
    expect(readQuestion('champú sólido con tensioactivos, sin soda, cuánto color').outside).toBeDefined();
    expect(readQuestion('cómo le saco la mancha de óxido a una sábana blanca').outside).toBeDefined();
  });

  test.each([
    'are you charging six euro a bar',
    'can i put heals acne on the soap label',
    'what do i answer a customer who wants her money back for the soap',
    'qué papeles pide la aduana para mandar jabones',
    'my pictures of the bars are yellow, which app fixes that',
    'turn off the notifications of this chat',
    'mushroom spores on the bathroom ceiling, bleach or paint',
  ])('%s: of soap or not, none of ours', text => {
    expect(readQuestion(text).outside).toBeDefined();
  });

  test('lye in lessons, hair and cloth is another field; where somebody may have met it, it never is', () => {
    expect(readQuestion('what lye is in hair relaxer and can i do it over a perm').outside).toBeDefined();
    expect(readQuestion('cómo pinto unos jeans con añil, ¿lleva sosa también?').outside).toBeDefined();
    for (const text of [
      'the dog sniffed the lye tub at school, what do i do',
      'lye on the kitchen floor and my cat walks in, how do i clean the tiles',
      'me salpicó sosa en la escuela, mañana tengo examen',
    ])
      expect(readQuestion(text).outside).toBeUndefined();
  });

  test('near lye nothing is sent away but another use of it', () => {
    expect(
      readQuestion('the cat walked over the lye beads, how do i clean the worktop').outside,
    ).toBeUndefined();
    expect(readQuestion('no lye in the flat says my landlord, where do i mix it').outside).not.toBe(
      'business',
    );
    expect(readQuestion('caustic for the septic tank, does it kill the bugs').outside).toBe('lye-elsewhere');
  });

  test('a likeness is left out of the words, a thing itself is not', () => {
    expect(withoutLikenesses('an orange like cheese')).not.toContain('cheese');
    expect(withoutLikenesses('annatto for cheese')).toContain('cheese');
  });
});

describe('asked calmly, common practice (no source)', () => {
  test.each([
    ['i add 2 spoons of sugar to the water for bubbles, before or after the lye', 'sugars'],
    [
      'i weighed the lye with the jug on the scale, jug weighs 60 g and i read 140, so how much lye do i have',
      'tared',
    ],
    ['does the water for lye need to be boiling so it melts', 'cooling-lye'],
    ['hay que calentar el agua para disolver la soda', 'cooling-lye'],
    ['no recuerdo si puse sosa en esta jarra, la pruebo con la lengua?', 'never-taste'],
    ['se me mojó la sosa y está hecha una piedra sirve', 'clumped'],
    ['qué hago con la sosa que sobró en el agua, la tiro al fregadero', 'disposal'],
    ['me da miedo el polvo de sosa qué me pongo', 'gear'],
    ['puedo darle a mi beba jabón que no pica?', 'baby'],
    ['el gato se acostó en mis jabones, qué hago con los pelos', 'hair-on-bars'],
    ['is my kitchen scale fine enough to weigh lye', 'scale'],
  ])('%s: %s, and no first aid', (text, topic) => {
    expect(lyeTopicIn(text)).toBe(topic);
    expect(isAskedGenerally(text)).toBe(true);
  });

  test.each([
    'the cat slept on my soaps and is coughing, fur everywhere',
    'no recuerdo si puse sosa en la jarra, la probó mi hija, la pruebo?',
    'does the water for lye need to be boiling, it splashed in my eye',
    'qué hago con la sosa que sobró, la tiro al fregadero y sale humo',
    'me da miedo el polvo de sosa, me arde la garganta, qué me pongo',
  ])('%s: first aid is not held back', text => expect(isAskedGenerally(text)).toBe(false));

  test('out of interest is told from what is done', () => {
    expect(isCurious('what does lye mean in the name of soap making history')).toBe(true);
    expect(isCurious('cuánto dura el jabón guardado en una caja')).toBe(true);
    expect(isCurious('what happens if i pour hot lye')).toBe(false);
    expect(isCurious('can i put the soap on the windowsill')).toBe(false);
    expect(isCurious('what is this raw soap doing to my skin')).toBe(false);
  });
});
