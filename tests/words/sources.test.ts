import { describe, expect, test } from 'vitest';
import { colourants } from '../../src/engine/colourants/catalogue.ts';
import { substances } from '../../src/engine/stability/substances/index.ts';
import { wordsIn } from '../../src/words/index.ts';

/** Every statement that a check of a colourant gives as its source. */
const shown = [
  ...new Set([
    ...colourants.flatMap(({ origins }) => [origins.dose.source, origins.carriers.source]),
    ...substances.map(({ source }) => source.source),
  ]),
];

describe('where a colourant’s dose and behaviour are known from', () => {
  test.each(shown)('is said in Spanish to whoever reads Spanish: %s', source => {
    const told = wordsIn('es').checking.source({ source });
    expect(told).not.toBe(source);
    // Years, pages, entries and formulas are those of the source.
    const figures = (text: string) => text.match(/\d{3,}/gu) ?? [];
    expect(figures(told)).toEqual(figures(source));
  });

  test('stands as it is in English, and a title alone in any language', () => {
    expect(wordsIn('en').checking.source({ source: 'dye chemistry' })).toBe('dye chemistry');
    expect(wordsIn('es').checking.source({ source: '21 CFR 73.2250' })).toBe('21 CFR 73.2250');
  });
});
