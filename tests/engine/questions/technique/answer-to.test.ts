import { expect, test } from 'vitest';
import { answerTo } from '../../../../src/engine/questions/technique/answer-to.ts';
import { ASKED_ROWS } from '../../../../src/engine/questions/technique/asked/table.ts';
import { NAMED_ANSWERS } from '../../../../src/engine/questions/technique/named-answers.ts';
import { OUTRIGHT } from '../../../../src/engine/questions/technique/outright/read.ts';
import { PARTS } from '../../../../src/engine/questions/technique/parts.ts';
import { warmthTold } from '../../../../src/engine/questions/technique/warmth.ts';

test.each([
  ['natural-colours', 'which plant colours hold', { technique: 'natural-colours' }],
  ['natural-colours', 'azul natural hay?', { named: 'natural-blue' }],
  ['natural-colours', 'rosa natural que no se vaya', { named: 'natural-pink' }],
  ['natural-colours', 'natural green', { named: 'natural-green' }],
  ['natural-colours', 'any natural red that stays red', { named: 'natural-red' }],
  ['natural-colours', 'amarillo natural', { named: 'natural-yellow' }],
  ['natural-colours', 'natural orange?', { named: 'natural-orange' }],
  ['natural-colours', 'morado natural', { named: 'natural-purple' }],
  ['natural-colours', 'marrón natural', { named: 'natural-brown' }],
  ['natural-colours', 'natural black', { named: 'natural-black' }],
  ['thick-now', 'its going thick', { technique: 'thick-now' }],
  ['thick-now', 'SEIZED. solid. in the jug', { named: 'solid-now' }],
  ['thick-now', 'se me espesó todo, tengo 3 colores todavia', { named: 'colours-left' }],
  ['riced-now', 'riced!!! little bits', { technique: 'riced-now' }],
  ['riced-now', 'ayuda se me separo el aceite arriba', { named: 'split-oil' }],
  ['gel-and-colour', 'to gel or not to gel for pastels', { named: 'gel-for-pastels' }],
  ['gel-and-colour', 'gel or no gel for bright colours', { named: 'gel-for-bright' }],
  ['spoon-or-grams', 'teaspoon or grams??', { technique: 'spoon-or-grams' }],
  ['spoon-or-grams', '1 tsp is how many grams mica', { named: 'teaspoon-in-grams' }],
  ['children-colours', 'safe for lips?', { named: 'for-lips' }],
  ['children-colours', 'necesito color pa jabon de bebe', { named: 'for-a-baby' }],
  ['no-lumps', 'td too lumpy', { named: 'titanium-lumps' }],
  ['botanicals', 'lavender buds in or on top', { named: 'lavender-buds' }],
  ['botanicals', 'coffee grounds inside', { named: 'coffee-grounds' }],
  ['botanicals', 'pétalos frescos', { lye: 'fresh-plants' }],
  ['coloured-suds', 'grey lather from charcoal normal?', { named: 'charcoal-suds' }],
  ['stained-things', 'charcoal makes my sink black', { named: 'charcoal-suds' }],
  ['steep-in-oil', 'anatto', { named: 'annatto-in-oil' }],
  ['darker-lighter', 'too dark, can i add white now? its in the pot', { named: 'lighten-in-pot' }],
  ['darker-lighter', 'chrome green too dark. how fix', { named: 'lighten-next-time' }],
  ['dust-on-top', 'dusting of mica rubbed off on my hands', { named: 'rubs-off' }],
  ['vanilla-brown', 'vanillin 8% will it mess my white', { named: 'white-vanilla' }],
  ['blend-two', 'blue + yellow = green in soap?', { named: 'blue-and-yellow' }],
  ['blend-two', 'ultramarine and yellow oxide?', { named: 'blue-and-yellow' }],
  // Ultramarine is pink and violet too, and makes no green then.
  ['blend-two', 'pink ultramarine and yellow oxide?', { technique: 'blend-two' }],
  ['blend-two', 'ultramar rosa con óxido amarillo', { technique: 'blend-two' }],
  ['blend-two', 'purple from red + blue?', { named: 'red-and-blue' }],
  ['blend-two', 'óxido rojo y blanco', { named: 'with-white' }],
  ['swirl-temperature', 'is 40 degrees too hot for swirling', { named: 'a-bit-warm' }],
  ['swirl-temperature', 'temps were like 120', { named: 'too-warm' }],
  ['swirl-temperature', 'how warm for swirls', { technique: 'swirl-temperature' }],
  ['demould-cut', 'cuando corto', { lye: 'after-pour' }],
  ['goggles-gloves', 'what do i wear', { lye: 'gear' }],
  ['goggles-gloves', 'do i rlly need goggles', { lye: 'no-goggles' }],
  ['powder-dust', 'mask for powders?', { lye: 'dust' }],
  ['powder-dust', 'mica dust all over the kitchen', { technique: 'powder-dust' }],
  ['children-helping', 'can my kid help', { lye: 'children' }],
  ['lye-cloudy', 'lye still clumpy in the jug', { lye: 'undissolved-lye' }],
  ['lye-cloudy', 'white skin on lye left overnight', { lye: 'cloudy-lye' }],
  ['lye-spilt-surface', 'spilt lye on the floor', { lye: 'clean-up' }],
  ['rising-now', 'its rising', { lye: 'hot-crack' }],
  ['kitchen-tools', 'aluminium bowl ok', { lye: 'aluminium' }],
  ['kitchen-tools', 'glass bowl or plastic', { lye: 'vessel' }],
  ['kitchen-tools', 'can I use my cooking pans', { lye: 'back-to-food' }],
  ['water-amount', 'cuanta agua lleva', { lye: 'water-amount' }],
  ['water-amount', 'water discount for swirls', { technique: 'swirl-water' }],
  ['no-trace', 'wont trace', { lye: 'no-trace' }],
  ['label-selling', 'label how do i list mica', { technique: 'label-selling' }],
  ['label-selling', 'can I sell it with these micas', { lye: 'selling' }],
  ['cosmetic-grade', 'resin mica is it same', { lye: 'craft-colour' }],
  ['unlabelled-powder', 'powder paint from school', { lye: 'craft-colour' }],
  ['shine-sparkle', 'glitter in it', { lye: 'craft-glitter' }],
  ['milk-colour', 'se me quemó la leche', { lye: 'scorched-milk' }],
  ['colour-families', 'café molido da color?', { named: 'coffee-grounds' }],
] as const)('%s, “%s”', (technique, question, answer) => {
  expect(answerTo(technique, question)).toEqual(answer);
});

test('every named answer is led to by some words', () => {
  const led = Object.values(PARTS).flatMap(parts =>
    parts.flatMap(part => ('named' in part ? [part.named] : [])),
  );
  const outright = OUTRIGHT.flatMap(({ to }) => ('named' in to ? [to.named] : []));
  const asked = ASKED_ROWS.flatMap(({ to }) => ('named' in to ? [to.named] : []));
  const byWarmth = ['a-bit-warm', 'too-warm'];
  expect(
    NAMED_ANSWERS.filter(
      id => ![...led, ...outright, ...asked, 'rising-in-mould'].includes(id) && !byWarmth.includes(id),
    ),
  ).toEqual([]);
});

test.each([
  ['both at 50', 'too-warm'],
  ['45c', 'a-bit-warm'],
  ['38', undefined],
  ['39 grados', 'a-bit-warm'],
  ['46 c', 'a-bit-warm'],
  ['47 c', 'too-warm'],
  // 100 °F is 37.8 °C, 104 °F is 40 °C, 118 °F is 47.8 °C.
  ['100f', undefined],
  ['104 f', 'a-bit-warm'],
  ['118', 'too-warm'],
  ['66', undefined],
  ['500 g oils for 40 min', undefined],
  ['33%', undefined],
  ['1200', undefined],
  ['7 c', undefined],
] as const)('warmth of “%s”', (text, told) => {
  expect(warmthTold(text)).toBe(told);
});
