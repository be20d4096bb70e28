import { expect, test } from 'vitest';
import { ASKED_ANSWERS } from '../../../../src/engine/questions/technique/asked/answers.ts';
import { askedOfBench } from '../../../../src/engine/questions/technique/asked/read.ts';
import { technique as english } from '../../../../src/words/en/colour/technique.ts';
import { oneText } from '../../../../src/words/sentence.ts';

/* What is asked of a thing of the bench. The answers are common practice; what is reckoned in them is reckoned here. */

const CASES = [
  ['store-bars', 'where do I keep my bars once they are done', '¿dónde guardo las pastillas ya curadas?'],
  ['cured-when', 'how can you tell when a bar is cured', '¿cómo me doy cuenta de que está curado?'],
  ['start-when', 'when should I pour for a christmas market', '¿cuándo arranco para la feria de navidad?'],
  ['give-when', 'can I give them away next week', '¿ya los puedo regalar el domingo?'],
  ['cut-with', 'can I slice it with a bread knife', '¿se corta con alambre o con cuchillo?'],
  ['air-out', 'how do I avoid air pockets', '¿cómo evito las burbujas de aire?'],
  ['melt-fats', 'do I have to melt the shea first', '¿la manteca de karité se derrite antes?'],
  ['wet-in-scent', 'should I mix the mica into my fragrance', '¿puedo mezclar el color en la esencia?'],
  ['wet-in-alcohol', 'can I wet it with alcohol', '¿lo humedezco con alcohol?'],
  ['wet-in-glycerin', 'is it ok to mix oxides in glycerin', '¿puedo mojar el óxido en glicerina?'],
  ['water-held-back', 'do I take that water off the lye water', '¿descuento esa agua del agua de la sosa?'],
  ['salt-and-colour', 'what does sea salt do to the colour', '¿la sal marina cambia el color?'],
  ['salt-hardens', 'will salt make it harder', '¿con sal queda más duro?'],
  ['sensitive-skin', 'is it ok for sensitive skin', '¿sirve para piel sensible?'],
  ['rinse-tools', 'do I rinse the jugs with vinegar', '¿enjuago la jarra con vinagre?'],
  ['blender-stuff', 'plastic or steel stick blender', '¿batidora de acero o de plástico?'],
  [
    'colour-scales',
    'if I halve the batch is the colour the same amount',
    'si hago el doble, ¿se duplica el color?',
  ],
  ['without-white', 'do I need less colour without the white', '¿uso menos color si va sin blanco?'],
  ['zinc-or-titanium', 'zinc oxide or titanium, which is better', '¿óxido de zinc o titanio, cuál conviene?'],
  ['fridge-mould', 'should it go in the fridge', '¿lo meto en la heladera?'],
  ['how-many-strokes', 'how many passes with the skewer', '¿cuántas vueltas con el palito?'],
  ['layer-fell', 'my second layer sank through', 'la segunda capa se hundió'],
  ['layers-apart', 'why do layers come apart', '¿por qué se separan las capas?'],
  ['recipe-in-cups', 'my recipe is in cups', 'tengo la receta en tazas'],
  ['buy-lye', 'where can I buy lye', '¿dónde consigo soda cáustica?'],
  ['olive-soft', 'all olive and still soft', 'es puro oliva y está blando'],
  ['pomace', 'does it matter that it is pomace', 'es de orujo, ¿cambia algo?'],
  ['scrub', 'how fine do I grind the oats', '¿cuánta avena le pongo para exfoliar?'],
  ['stamp-when', 'when do I stamp them', '¿cuándo se sellan?'],
  ['plane-bars', 'how soon can I plane the bars', '¿cuándo los cepillo?'],
  ['cold-room', 'freezing garage here, will soap set', 'hace mucho frío, ¿cuaja igual?'],
  ['damp-room', 'where do I cure bars in a damp flat', '¿dónde los guardo con tanta humedad?'],
  ['cure-outside', 'can I cure them on the balcony', '¿se secan al sol?'],
  ['scraps', 'what can I do with the offcuts', '¿qué hago con los recortes?'],
  ['repeat-colour', 'how do I get the same shade in the next batch', '¿cómo repito el mismo tono de color?'],
  ['old-powder', 'is mica from years ago still good', '¿los óxidos caducan?'],
  ['are-natural', 'are oxides natural', '¿las micas son naturales?'],
  ['embeds', 'how do I put embeds in', '¿cómo pongo un cilindro dentro?'],
  ['pinch', 'how much is a pinch', '¿cuánto es una pizca?'],
  [
    'batter-or-bar',
    'will the batter look darker than the bar, the colour',
    'el color en la masa, ¿queda más claro?',
  ],
  ['use-up-strong', 'can I save bars with black lather', '¿aprovecho las que manchan, con demasiado color?'],
] as const;

test.each(CASES.flatMap(([named, en, es]) => [[named, en] as const, [named, es] as const]))(
  '%s: “%s”',
  (named, question) => {
    expect(askedOfBench(question)?.to).toEqual({ named });
  },
);

test('every answer of the bench is asked for here in both languages', () => {
  expect(ASKED_ANSWERS.filter(id => !CASES.some(([named]) => named === id))).toEqual([]);
});

test.each([
  ['how do i keep it thin for swirls'],
  ['how much mica for 500 g oils'],
  ['wire cutter left wee lines dragging through'],
  ['how do I store lye'],
  ['keep it in the fridge with the food?'],
  ['cut at 18 hours and it dragged, was it too soon?'],
  ['how many colours for a drop swirl'],
  ['why is the lather bubbly without coconut'],
  ['can I put perfume in'],
  ['my baby got soap in his eye, do I rinse with vinegar in a bowl, he is crying'],
])('“%s” is of none of them', question => {
  expect(askedOfBench(question)).toBeUndefined();
});

test('a thing may have been named by the turn before; what is asked has to be said now', () => {
  expect(askedOfBench('and trace, thinner or thicker', 'how many goes for a swirl')?.technique).toBe(
    'which-trace',
  );
  expect(askedOfBench('thanks a lot', 'how many goes for a swirl')).toBeUndefined();
  expect(askedOfBench('thanks a lot', 'vinegar for the jugs?')).toBeUndefined();
  expect(askedOfBench('doesnt say on the tub', 'titanium dioxide, oil or water?')?.to).toEqual({
    named: 'titanium-which',
  });
  expect(askedOfBench('all olive', 'soap still soft after 3 days')?.to).toEqual({ named: 'olive-soft' });
});

test('three times the usual dose in two parts of plain to one is the usual dose, six times in five (arithmetic)', () => {
  expect(oneText(english.named['use-up-strong'].why)).toContain(
    'two parts of plain to one of it at least, six times five parts',
  );
  expect([3 / (2 + 1), 6 / (5 + 1)]).toEqual([1, 1]);
});

test('a quarter teaspoon of 1 tsp powder in 1 Tbsp oil holds about 1/16 tsp (arithmetic: 1 in 3 to 4 parts)', () => {
  expect(oneText(english.named.pinch.why)).toContain('holds about 1/16 tsp of powder');
  expect(0.25 / 4).toBe(1 / 16);
});

test('a cup of oil weighs 205 to 220 g (236.6 ml, NIST Handbook 44; oils 0.90 to 0.93 g/ml, Codex Stan 210)', () => {
  expect(oneText(english.named['recipe-in-cups'].why)).toContain('205 to 220 g');
  expect(236.6 * 0.9).toBeGreaterThan(205);
  expect(236.6 * 0.93).toBeLessThan(221);
});

test('less water never goes below the weight of the lye, and neither does what is held back', () => {
  expect(oneText(english.named['water-held-back'].answer)).toContain('Never less water than lye');
  expect(oneText(english.named['less-water'].why)).toContain('never less water than lye');
});

test('nothing that meets lye is of aluminium, and no two cleaners are mixed', () => {
  expect(oneText(english.named['blender-stuff'].answer)).toMatch(/Never aluminium/u);
  expect(oneText(english.named['rinse-tools'].why)).toMatch(/Never mix the two.*chlorine/u);
});

test('soap is given away from four weeks on, and no earlier (common practice)', () => {
  expect(oneText(english.named['give-when'].answer)).toMatch(/^From four weeks on/u);
  expect(oneText(english.named['start-when'].answer)).toContain('six weeks');
});
