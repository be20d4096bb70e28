import { expect, test } from 'vitest';
import { addedIn } from '../../../../../src/engine/questions/lye/amounts/added.ts';
import { alkaliIn, type LyeTold } from '../../../../../src/engine/questions/lye/amounts/alkali.ts';
import { superfatIn, waterIn, weighedIn } from '../../../../../src/engine/questions/lye/amounts/amounts.ts';
import { byLitreIn, heldUpIn } from '../../../../../src/engine/questions/lye/amounts/by-litre.ts';
import { withBrackets } from '../../../../../src/engine/questions/lye/amounts/in-brackets.ts';
import { withMilkAsWater } from '../../../../../src/engine/questions/lye/amounts/milk-as-water.ts';
import { oilsIn, trimmed } from '../../../../../src/engine/questions/lye/amounts/oils.ts';
import { knownAs } from '../../../../../src/engine/questions/lye/amounts/recipe-tokens.ts';
import { gramsOf, plainWords, Remaining } from '../../../../../src/engine/questions/lye/amounts/words.ts';
import type { LyeQuestion } from '../../../../../src/engine/questions/lye/question.ts';
import { Refusal } from '../../../../../src/engine/refusal.ts';

/*
 * What a maker tells of lye, water and oils in figures. Relative densities of oils: Codex CXS 33 and CXS 210; pounds and ounces: NIST SP 811;
 * how each is worded: common practice, from memory.
 */

const remaining = (text: string) => new Remaining(plainWords(text));

test.each<readonly [text: string, litres: number, oilGrams: number, verdict: string, alkali: string]>([
  ['1 litre of olive oil and 130 g lye', 1, 920, 'lye-heavy', 'NaOH'],
  ['2 l de aceite de coco y 350 g de sosa', 2, 1840, 'lye-heavy', 'NaOH'],
  ['oil 2 litres, lye 250 g', 2, 1840, 'lye-heavy', 'NaOH'],
  ['1 litre oil and 118 g lye', 1, 920, 'usual', 'NaOH'],
  ['1 litre oil and 180 g KOH', 1, 920, 'usual', 'KOH'],
  ['999 litres oil and 60 g lye', 999, 919_080, 'soft', 'NaOH'],
])('%s: %f l weigh %f g, %s', (text, litres, oilGrams, verdict, alkali) => {
  expect(byLitreIn(text)).toMatchObject({ litres, check: { oilGrams, verdict, lye: { alkali } } });
});
test.each([
  'half a litre of sunflower oil, 60 g lye',
  '0 litres oil and 60 g lye',
  '1000 litres oil and 60 g lye',
  '1 litre of oil',
  '130 g lye',
])('no recipe by the litre: %s', text => {
  expect(byLitreIn(text)).toBeUndefined();
});
// A coconut takes 0.183 g of sodium hydroxide to the gram, more than any other of its trade: 100 g for 500 g is beyond all of them.
test.each<readonly [text: string, kind: string | undefined, verdict: string | undefined]>([
  ['so 100 g for 500 g is fine, right?', 'too-much', undefined],
  ['200 g for 500 g is right?', 'too-much', undefined],
  ['70 g for 500 g is fine?', undefined, undefined],
  ['so 100 g lye for 500 g olive is fine?', 'check', 'lye-heavy'],
  ['87 g for 500 g coconut ok', 'check', 'usual'],
  ['71 g for 500 g coconut ok', 'check', 'soft'],
  ['100 g lye for 500 g gravel is fine', undefined, undefined],
  ['100 g for 500 g', undefined, undefined],
])('held up once more: %s', (text, kind, verdict) => {
  const held = heldUpIn(text);
  expect(held?.kind).toBe(kind);
  expect(held?.kind === 'check' ? held.check.verdict : undefined).toBe(verdict);
});

test.each<readonly [text: string, given: object, alkali: LyeTold['alkali'], purity: number | undefined]>([
  ['naoh', {}, 'NaOH', undefined],
  ['koh', { lye: 'KOH' }, 'KOH', undefined],
  ['500 g olive, koh 90%', { lye: 'KOH 90%' }, 'KOH', 0.9],
  ['sosa al 98%', { purity: 98 }, 'NaOH', 0.98],
  ['97% pure naoh', { purity: 97 }, 'NaOH', 0.97],
  ['la pureza de la sosa es 97%', { purity: 97 }, 'NaOH', 0.97],
  ['170 g koh 85%', { lye: 'KOH 85%' }, 'KOH', 0.85],
  // Lye that is purer than it was counted burns: pure is taken at its word, unless a percent stands beside.
  ['pure koh', { lye: 'KOH 100%' }, 'KOH', 1],
  ['potasa pura', { lye: 'KOH 100%' }, 'KOH', 1],
  ['pure koh superfat 5%', { lye: 'KOH 100%' }, 'KOH', 1],
  ['pure koh 90%', { lye: 'KOH 90%' }, 'KOH', 0.9],
  ['koh no, naoh', {}, 'NaOH', undefined],
  // Ready-made lye is 45 % and stronger; below it is the strength of a batch’s lye water.
  ['50% naoh solution', { lye: '50% lye solution' }, 'NaOH', 1],
  ['45% lye solution', { lye: '45% lye solution' }, 'NaOH', 1],
  ['44% lye solution', {}, 'NaOH', undefined],
  ['una disolución de sosa al 50%', { lye: '50% lye solution' }, 'NaOH', 1],
  ['50% koh solution', { lye: '50% KOH solution' }, 'KOH', 1],
  // Two alkalis, by their shares where one is told.
  ['90% koh 10% naoh', { lye: 'NaOH 10% + KOH 90%' }, 'both', undefined],
  ['koh 90% and naoh', { lye: 'NaOH 10% + KOH 90%' }, 'both', undefined],
  ['naoh 10% and koh', { lye: 'NaOH 10% + KOH 90%' }, 'both', undefined],
  ['koh and naoh', { lye: 'both' }, 'both', undefined],
  ['dual lye', { lye: 'both' }, 'both', undefined],
])('the alkali of “%s”', (text, given, alkali, purity) => {
  expect(alkaliIn(remaining(text))).toMatchObject({ given, lye: { alkali }, purity });
});
test.each<readonly [text: string, weighed: object | undefined]>([
  ['140 g lye', { alkali: 'NaOH', grams: 140, purity: 1 }],
  ['lye: 5 oz', { alkali: 'NaOH', grams: 5 * 28.349523125, purity: 1 }],
  ['140 g of koh', { alkali: 'KOH', grams: 140, purity: 0.9 }],
  ['140 g naoh 97% pure', { alkali: 'NaOH', grams: 140, purity: 0.97 }],
  ['lye 140 g olive', undefined],
  ['lye', undefined],
])('lye that was weighed: %s', (text, weighed) => {
  const rest = remaining(text);
  const alkali = alkaliIn(rest);
  expect(weighedIn(rest, alkali)).toEqual(weighed);
});

test.each<readonly [text: string, superfat: number | undefined]>([
  ['no superfat', 0],
  ['sin sobreengrasado', 0],
  ['5% superfat', 5],
  ['superfat of 5.5 percent', 5.5],
  ['sf -3', -3],
  ['al 7% de sobreengrasado', 7],
  ['lye discount 5%', 5],
  ['soft soap', undefined],
])('the superfat of “%s”', (text, superfat) => {
  expect(superfatIn(remaining(text)).superfat).toBe(superfat);
});
test.each<readonly [text: string, water: string | undefined]>([
  ['2:1 water', '2:1'],
  ['water ratio 2.5 : 1', '2.5:1'],
  ['33% lye concentration', '33% lye'],
  ['concentración 33%', '33% lye'],
  ['lye strength of 30%', '30% lye'],
  ['at 30% lye', '30% lye'],
  ['38% water', '38% of oils'],
  ['water at 38% of oils', '38% of oils'],
  ['agua al 38%', '38% of oils'],
  ['water', undefined],
])('the water of “%s”', (text, water) => {
  expect(waterIn(remaining(text)).water).toBe(water);
});

test.each<readonly [text: string, added: object, rest: string]>([
  ['20 g honey', { additives: 'honey 20 g' }, ''],
  ['honey 20 g', { additives: 'honey 20 g' }, ''],
  ['with 2% sodium lactate', { additives: 'sodium lactate 2%' }, ''],
  ['honey', { additives: 'honey' }, ''],
  ['sugar and 1 tsp salt', { additives: 'sugar, salt 1 tsp' }, ''],
  ['coconut milk 200 g', { additives: 'coconut milk 200 g' }, ''],
  ['goat milk instead of water', { liquid: 'goat milk' }, ''],
  ['leche de cabra en vez de agua', { liquid: 'leche de cabra' }, ''],
  ['beer as the water', { liquid: 'beer' }, ''],
  ['honey 500 g olive', { additives: 'honey' }, '500 g olive'],
  ['500 g olive', {}, '500 g olive'],
])('what is stirred in: %s', (text, added, rest) => {
  const left = remaining(text);
  expect(addedIn(left)).toEqual(added);
  expect(left.text.replaceAll(';', '').trim()).toBe(rest);
});

test.each<readonly [text: string, oils: string | undefined, inGrams: string | undefined]>([
  ['500 g olive, 200 g coconut', '500 g olive, 200 g coconut', '500 g olive, 200 g coconut'],
  ['olive 60%, coconut 40%', '60% olive, 40% coconut', '60% olive, 40% coconut'],
  ['half olive, half coconut', '50% olive, 50% coconut', '50% olive, 50% coconut'],
  ['two thirds olive and a third coconut', '66.67% olive, 33.33% coconut', '66.67% olive, 33.33% coconut'],
  ['500 olive, 200 coconut', '500 g olive, 200 g coconut', '500 g olive, 200 g coconut'],
  ['20 g of my own lard, 500 g olive', '20 g of lard, 500 g olive', '20 g of lard, 500 g olive'],
  ['oil', undefined, undefined],
  ['', undefined, undefined],
])('the oils of “%s”', (text, oils, inGrams) => {
  expect(oilsIn(plainWords(text), { inGrams: false })).toBe(oils);
  expect(oilsIn(plainWords(text), { inGrams: true })).toBe(inGrams);
});
test('beside a total in pounds a bare figure is grams only where that was told', () => {
  expect(oilsIn('2 lb olive, 300 coconut', { inGrams: true })).toBe('2 lb olive, 300 g coconut');
  expect(oilsIn('60 olive, 40 coconut', { inGrams: true })).toBe('60 g olive, 40 g coconut');
});
test.each([
  ['2 cups olive oil', 'oil-by-volume'],
  ['500 g gravel', 'oil-unknown'],
])('%s is refused: %s', (text, id) => {
  const refused = () => oilsIn(plainWords(text), { inGrams: false });
  expect(refused).toThrow(Refusal);
  expect(refused).toThrow(expect.objectContaining({ id }));
});
test.each([
  ['how much for the olive oil please', 'olive oil'],
  ['the the', ''],
  ['my oil', ''],
  ['', ''],
])('“%s” without what changes no lye is “%s”', (piece, rest) => {
  expect(trimmed(piece)).toBe(rest);
});

test.each([
  ['mango 80 (manteca)', 'manteca de mango 80 '],
  ['sunflower 200 g (the high oleic one)', 'high oleic sunflower 200 g'],
  ["babassu 300 (can't do coconut)", 'babassu 300 '],
  // An oil that is in it, one that is left out, and what tells of none, stay.
  ["coconut 200, babassu 300 (can't do coconut)", "coconut 200, babassu 300 (can't do coconut)"],
  ['coconut 300 (no olive)', 'coconut 300 (no olive)'],
  ['olive 500 (it was cheap)', 'olive 500 (it was cheap)'],
])('“%s” is told as “%s”', (text, told) => {
  expect(withBrackets(text)).toBe(told);
});

const milk = (given: object, line = '500 g olive ; 150 g milk as the liquid'): string | undefined =>
  withMilkAsWater({ given } as LyeQuestion, line).given.water;
// Goat's and cow's milk are 87 to 88 % water (common practice); water is 26 to 45 % of the oils.
test.each<readonly [given: object, water: RegExp | undefined]>([
  [{ oils: '500 g olive', additives: 'milk 150 g' }, /^26\.\d+% of oils$/u],
  [{ oils: '500 g olive', additives: 'milk 230 g' }, /^40\.\d+% of oils$/u],
  [{ oils: '60% olive, 40% coconut', additives: 'milk 300 g', size: '1 kg' }, /^26\.\d+% of oils$/u],
  [{ oils: '500 g olive', additives: 'milk 140 g' }, undefined],
  [{ oils: '500 g olive', additives: 'milk 260 g' }, undefined],
  [{ oils: '60% olive, 40% coconut', additives: 'milk 300 g' }, undefined],
  [{ oils: '500 g olive', additives: 'honey 150 g' }, undefined],
  [{ oils: '500 g olive', additives: 'milk 150 g, honey 5 g' }, undefined],
  [{ oils: '500 g olive', additives: 'milk 150 g', size: '0 g' }, undefined],
  [{ oils: '500 g olive' }, undefined],
  [{ additives: 'milk 150 g' }, undefined],
])('milk in place of all the water: %j', (given, water) => {
  expect(milk(given) ?? 'none').toMatch(water ?? /^none$/u);
});
test('milk beside water is no water, and what was told of it stays', () => {
  const given = { oils: '500 g olive', additives: 'milk 150 g' };
  expect(milk(given, '500 g olive ; 150 g milk')).toBeUndefined();
  expect(milk({ ...given, water: '38% of oils' })).toBe('38% of oils');
});

test.each([
  ['lye', 'lye'],
  ['sosa', 'lye'],
  ['cold water', 'water'],
  ['agua destilada', 'water'],
  ['olive', 'oil'],
  ['honey', 'other'],
  ['oils', 'any-oil'],
  ['gravel', undefined],
])('“%s” is known as %s', (name, known) => {
  expect(knownAs(name)).toBe(known);
});
test.each([
  ['250 g', 250],
  ['1.5 kg', 1500],
  ['0,5 kilo', 500],
  ['1/2 kg', 500],
  ['1 1/2 lb', 1.5 * 453.59237],
  ['16 oz', 453.59237],
  ['2 libras', 907.18474],
])('%s are %f g', (mass, grams) => {
  expect(gramsOf(mass)).toBeCloseTo(grams, 6);
});
