import { describe, expect, test } from 'vitest';
import { inOrder } from '../../../../../../src/engine/questions/lye/amounts/amounts-first.ts';
import { plainWords } from '../../../../../../src/engine/questions/lye/amounts/words.ts';
import { bothLyesIn } from '../../../../../../src/engine/questions/lye/recipe-line/doubts/both-lyes.ts';
import { cocoaNamedIn } from '../../../../../../src/engine/questions/lye/recipe-line/doubts/cocoa-named.ts';
import { withLyeWater } from '../../../../../../src/engine/questions/lye/recipe-line/settling/lye-water.ts';
import { readLyeInChat } from '../../../../../../src/engine/questions/lye/told-in-chat.ts';
import type { Refusal } from '../../../../../../src/engine/refusal.ts';

const plain = (text: string) => plainWords(text, { clauses: true });
const given = (text: string) => readLyeInChat(text, inOrder(text)).given;

// Cocoa butter is a fat and takes lye, cocoa powder is taken by none as an oil (common practice).
describe('bare cocoa among oils is asked for', () => {
  test.each([
    '500g olive 200g coconut 80g cocoa',
    '20 g of cocoa, 500 g olive, lye?',
    'cocoa 10%, olive 90%, 1 kg',
    'olive 500, coconut 200, cocoa: 80 g',
  ])('%s', text => expect(cocoaNamedIn(plain(text))).toBeDefined());
  test.each([
    '500 g olive, 80 g cocoa butter',
    'cocoa butter 80 g, olive 500 g',
    '50 g each of cocoa and shea butter',
    '80 g cocoa and 50 g mango butters',
    'butters: cocoa 50 g, shea 50 g',
    '500 g olive, 20 g cocoa powder',
    'cocoa soap: 400 g olive',
    '500 g oliva, 80 g de cacao, sosa',
    'manteca de cacao 80 g',
    '80 g de manteca cacao',
    'mantequilla de cacao: 80 g',
    '20 g de cacao en polvo',
    '20 g polvo de cacao, 500 g oliva',
    'the soap smells of cocoa, 500 g olive',
  ])('told, or no weight of it: %s', text => expect(cocoaNamedIn(plain(text))).toBeUndefined());
  test('by a reason of its own', () => {
    expect(() => given('500g olive 200g coconut 80g cocoa. lye?')).toThrow(
      expect.objectContaining({ id: 'cocoa-which' }) as Refusal,
    );
  });
});

// NaOH weighs 40.00 g and KOH 56.11 g a mole (IUPAC 2021 atomic weights): all of one is no weight of the other.
describe('two alkalis without their shares are asked for', () => {
  test.each([
    'both lyes half and half, 500 g olive',
    '500 g olive with both alkalis',
    'con las dos sosas, 500 g de oliva',
    'ambos hidróxidos, 500 g de oliva',
    'dual lye, 500 g olive',
  ])('%s', text => expect(bothLyesIn(plain(text))).toBeDefined());
  test.each([
    '500 g olive, both oils melted, lye?',
    'both lyes: 60% naoh and 40% koh, 500 g olive',
    '500 g olive, lye?',
  ])('one, or told: %s', text => expect(bothLyesIn(plain(text))).toBeUndefined());
});

describe('the strength of lye water is no water by the oils', () => {
  test.each([
    'coconut oil only, 300 g, superfat 20 %, lye water 30 % w/w',
    '300 g coconut oil, 30 % lye water, superfat 20%',
    '300 g de aceite de coco, agua de sosa al 30 % en peso, sobreengrasado 20%',
  ])('%s', text => {
    const { water, superfat } = given(text);
    expect(water).toContain('30% lye');
    expect(String(superfat)).toBe('20');
  });
  test('water by the oils stays so, and what lye water never is stays as it was told', () => {
    expect(given('300 g coconut oil, water 30% of oils, superfat 20%').water).toContain('of oils');
    for (const text of ['lye water 5 %', 'lye water 60 %', 'lye 30 % water'])
      expect(withLyeWater(text)).toBe(text);
  });
});
