import { beforeAll, describe, expect, test } from 'vitest';
import { chanceOfField, fieldOf } from '../../../../src/engine/questions/fields/field-of.ts';
import { wordsOf } from '../../../../src/engine/questions/found/words-of.ts';

/** What is said of a text that is so likely another field's, both judges together. */
const said = (text: string, chance: number) => fieldOf(wordsOf(text), chance);

// The lists of names are built with the first text.
beforeAll(() => void said('mica', 0), 120_000);

/** Bounds chosen by leaving writers out; each text is kept at one chance and sent away at the other. */
describe('how likely a text must be of another field to be sent there', () => {
  test.each([
    ['with a field’s own name', 'melt and pour cubes', 0.46, 0.48, 'melt-and-pour'],
    ['with none', 'a mica for the saddle', 0.46, 0.48, 'other'],
    ['near lye', 'what is lye called in esperanto', 0.84, 0.86, 'other'],
    ['where a house is spoken of near lye', 'lye on the tiles of the porch', 0.84, 0.86, 'lye-elsewhere'],
  ])('%s', (_, text, kept, sent, field) => {
    expect(said(text, kept)).toBeUndefined();
    expect(said(text, sent)).toBe(field);
  });

  test('less where else nothing would be understood, but not near lye', () => {
    const nothing = (text: string, chance: number) => fieldOf(wordsOf(text), chance, { isNothing: true });
    expect(nothing('choir practice moved to thursday', 0.29)).toBeUndefined();
    expect(nothing('choir practice moved to thursday', 0.31)).toBe('other');
    expect(nothing('what is lye called in esperanto', 0.84)).toBeUndefined();
  });

  test('more where a colourant is named and no craft that shares powders with soap', () => {
    const of = (text: string, chance: number) => fieldOf(wordsOf(text), chance, { isColourant: true });
    expect(of('ultramarine for the stall', 0.79)).toBeUndefined();
    expect(of('ultramarine for the stall', 0.81)).toBe('other');
    expect(of('ultramarine for my frosting', 0.48)).toBe('other');
    expect(of('ultramarine for the leather', 0.48)).toBe('other');
  });

  test('never where somebody may have come near lye, however likely', () => {
    expect(said('lye on the tiles and the dog walks in', 0.99)).toBeUndefined();
    expect(said('lye in my eye at school', 0.99)).toBeUndefined();
  });
});

describe('both judges together', () => {
  const chance = (text: string, judged: { elsewhere: number; job: number; noJob: number }) =>
    chanceOfField(wordsOf(text), judged);
  const unsure = { elsewhere: 0.5, job: 0.5, noJob: 0.5 };

  test('one that is surer moves the sum, each in its own way', () => {
    const even = chance('my glitter sinks', unsure);
    expect(chance('my glitter sinks', { ...unsure, elsewhere: 0.9 })).toBeGreaterThan(even + 0.1);
    expect(chance('my glitter sinks', { ...unsure, noJob: 0.99 })).toBeGreaterThan(even + 0.05);
    expect(chance('my glitter sinks', { ...unsure, job: 0.99 })).toBeLessThan(even - 0.05);
  });

  test('another craft and a field’s own name count where no word of soap stands beside them', () => {
    const even = chance('a colour for it', unsure);
    expect(chance('a colour for leather', unsure)).toBeGreaterThan(even + 0.2);
    expect(chance('melt and pour cubes', unsure)).toBeGreaterThan(even + 0.05);
    expect(chance('a soap for leather', unsure)).toBeCloseTo(even, 9);
    expect(chance('melt and pour cubes in my soap', unsure)).toBeCloseTo(even, 9);
  });

  test('judges that are sure beyond doubt leave a chance', () => {
    expect(chance('a colour for it', { elsewhere: 1, job: 0, noJob: 1 })).toBeLessThan(1);
    expect(chance('a colour for it', { elsewhere: 0, job: 1, noJob: 0 })).toBeGreaterThan(0);
  });
});
