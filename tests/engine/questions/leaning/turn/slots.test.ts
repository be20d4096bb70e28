import { expect, test } from 'vitest';
import { openedTurn, plainTurn } from '../../../../../src/engine/questions/leaning/turn/plain.ts';
import { asksWhatWasSaid } from '../../../../../src/engine/questions/leaning/turn/said-before.ts';
import { slotsOf } from '../../../../../src/engine/questions/leaning/turn/slots.ts';

/* What a short turn tells of what is to be changed (how members write, from memory), and that one word too many leaves nothing. */

/** What is told, in few words: an amount by its text and what it is of. */
function told(turn: string): Record<string, unknown> | undefined {
  const slots = slotsOf(openedTurn(turn)!);
  if (!slots) return undefined;
  const { named, hues, amount, isMarked, ...rest } = slots;
  return {
    ...rest,
    ...(named.length > 0 && { named: named.join(', ') }),
    ...(hues.length > 0 && { hues: hues.join(', ') }),
    ...(amount && { amount: `${amount.text}${amount.of === 'unsaid' ? '' : ` ${amount.of}`}` }),
    ...(isMarked && { isMarked }),
  };
}

test.each<readonly [turn: string, slots: Record<string, unknown> | undefined]>([
  // Amounts, and what they are of.
  ['for 3 cups', { amount: '3 cups batter' }],
  ['y para 3 tazas', { amount: '3 tazas batter', isMarked: true }],
  ['2 kilos of oils', { amount: '2 kilos oils', of: 'oils' }],
  ['500 g batter', { amount: '500 g batter', of: 'batter' }],
  ['500 g de masa', { amount: '500 g batter', of: 'batter' }],
  ['800 g oil', { amount: '800 g oils', of: 'oils' }],
  ['800 g aceite', { amount: '800 g oils', of: 'oils' }],
  ['half a kilo', { amount: '1/2 kilo' }],
  ['½ kg', { amount: '1/2 kg' }],
  ['1½ cups', { amount: '1 1/2 cups batter' }],
  ['per kilo', { amount: '1 kg oils', of: 'oils' }],
  ['por libra de masa', { amount: '1 lb batter', of: 'batter' }],
  // A figure without a unit, a share of the oils that the lye leaves.
  ['800 aceite', { figure: 800, carrier: 'aceite' }],
  ['20 batter', { figure: 20, of: 'batter' }],
  ['10 of oils', { figure: 10, of: 'oils' }],
  ['2,5', { figure: 2.5 }],
  ['8% superfat', { percent: 8 }],
  ['superfat 8', { percent: 8 }],
  ['8 superfat', { percent: 8 }],
  ['al 8', { percent: 8 }],
  ['at 8', { percent: 8 }],
  ['12 por ciento', { percent: 12 }],
  ['superfat', {}],
  // Of two of a kind none is chosen; the same twice is one.
  ['3 cups 2 cups', undefined],
  ['5 6', undefined],
  ['5 5', { figure: 5 }],
  ['5% 6', undefined],
  ['5% superfat 6', undefined],
  // What it is wetted in.
  ['in oil', { carrier: 'oil' }],
  ['con agua', { carrier: 'agua' }],
  ['with sweet almond', { carrier: 'sweet almond' }],
  ['in olive oil', { carrier: 'olive' }],
  ['en aceite de oliva', { carrier: 'aceite de oliva' }],
  ['water not oil', { carrier: 'water' }],
  ['sin agua', {}],
  ['in water in oil', undefined],
  // A hue, a name, a kind, what it is not.
  ['the pink one', { hues: 'pink' }],
  ['blue and green', { hues: 'blue, green' }],
  ['not the blue one, the red one', { hues: 'red' }],
  ['red instead of blue', { hues: 'red' }],
  ['rose clay 2 kg', { named: 'rose clay', amount: '2 kg' }],
  ['rose clay not green clay', { named: 'rose clay' }],
  ['the oxide', { named: 'iron oxide' }],
  ['el óxido', { named: 'iron oxide' }],
  ['same for clay', { named: 'clay', isMarked: true }],
  ['kaolin works', { named: 'kaolin' }],
  ['not 500 g, 600 g', { amount: '600 g' }],
  ['600 g not 500 g', { amount: '600 g' }],
  ['not 5 but 6', undefined],
  // So many times, so many parts, paler, deeper.
  ['half', { times: 0.5 }],
  ['la mitad', { times: 0.5 }],
  ['triple', { times: 3 }],
  ['split three ways', { share: 1 / 3 }],
  ['dividir entre 4 colores', { share: 1 / 4 }],
  ['double and lighter', { times: 2, depth: 'lighter' }],
  ['más oscuro', { depth: 'darker' }],
  ['lighter like a baby room', { depth: 'lighter' }],
  ['darker cos it came out pale', { depth: 'darker' }],
  ['pastel', { strength: 'pastel' }],
  ['full strength', { strength: 'full' }],
  ['half a kilo, pale', { amount: '1/2 kilo', strength: 'pastel' }],
  ['1 kg dark', { amount: '1 kg', strength: 'full' }],
  ['more green in it', { towards: 'green', isMarked: true }],
  ['more salt in it', { named: 'salt' }],
  // A unit that is asked for; a spoon of powder in grams is a question of its own.
  ['in grams', { unit: 'grams' }],
  ['en cucharadas', { unit: 'spoons' }],
  ['my scale only does grams', { unit: 'grams' }],
  ['my scale only does ounces', { unit: 'ounces' }],
  ['a teaspoon in grams', undefined],
  ['500 g in spoons', { amount: '500 g', unit: 'spoons' }],
  ['in grams in spoons', undefined],
  // Where it is sold.
  ['in the eu', { region: 'EU' }],
  ['in the eu for my own market stall', undefined],
  // Goes on from before by its own words.
  ['no the gold one', { hues: 'gold', isMarked: true }],
  ['and for 3 cups', { amount: '3 cups batter', isMarked: true }],
  ['and 3 cups', { amount: '3 cups batter' }],
  ['for gold', { hues: 'gold' }],
  ['and', {}],
  ['lo mismo', { isMarked: true }],
  // A word that has no place.
  ['for 3 cups of gravel', undefined],
  ['the pink one tomorrow', undefined],
])('“%s”', (turn, slots) => {
  expect(told(turn)).toEqual(slots);
});

test.each<readonly [typed: string, text: string, leads: readonly string[], tails: readonly string[]]>([
  ['Ok, and for 3 cups then please?', 'for 3 cups', ['ok', 'and'], ['please', 'then']],
  ['¿Y entonces con agua, gracias?', 'con agua', ['y', 'entonces'], ['gracias']],
  ['charcoal', 'charcoal', [], []],
  ['ok', 'ok', [], []],
])('“%s” opens and ends', (typed, text, leads, tails) => {
  expect(openedTurn(typed)).toEqual({ text, leads, tails });
});
test('a turn of more than 14 words or 160 signs leans on nothing', () => {
  const words = (count: number) => Array.from({ length: count }, () => 'blue').join(' ');
  expect(openedTurn(words(14))?.text).toBe(words(14));
  expect(openedTurn(words(15))).toBeUndefined();
  expect(openedTurn('b'.repeat(160))?.text).toBe('b'.repeat(160));
  expect(openedTurn('b'.repeat(161))).toBeUndefined();
  expect(openedTurn('?!')).toBeUndefined();
});
test.each([
  ['It’s ½ a cup — ¼?', 'its 1/2 a cup 1/4'],
  ['¾ tsp: 2.5 g, 1,5 kg.', '3/4 tsp 2.5 g 1,5 kg'],
  ['Más CLARITO :)', 'mas clarito'],
  ['cold-process 3-4', 'cold process 3-4'],
  ['  so   much ', 'so much'],
])('“%s” plainly is “%s”', (typed, plain) => {
  expect(plainTurn(typed)).toBe(plain);
});

test.each<readonly [text: string, asks: boolean]>([
  ['the purple you said', true],
  ['el morado que dijiste', true],
  ['what did i ask you last tuesday', true],
  ['te acuerdas que te pregunte', true],
  ['you told me yesterday', true],
  ['me dijiste la vez pasada', true],
  ['the purple one', false],
  ['what do i need', false],
])('whether “%s” is of what was said another time', (text, asks) => {
  expect(asksWhatWasSaid(text)).toBe(asks);
});
