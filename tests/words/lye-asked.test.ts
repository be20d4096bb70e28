import { describe, expect, test } from 'vitest';
import { KOH_MOLAR_MASS, NAOH_MOLAR_MASS } from '../../src/engine/batch/oils/fatty-acids.ts';
import { knownOil } from '../../src/engine/batch/oils/find-oil.ts';
import { LANGUAGES } from '../../src/engine/language.ts';
import { USUAL_SUPERFAT } from '../../src/engine/questions/lye/sums/check.ts';
import { wordsIn } from '../../src/words/index.ts';
import { oneText } from '../../src/words/sentence.ts';

/** Grams of sodium hydroxide that do the work of one of potassium hydroxide. */
const NAOH_PER_KOH = NAOH_MOLAR_MASS / KOH_MOLAR_MASS;

const saidIn = (language: (typeof LANGUAGES)[number]) => {
  const { topics } = wordsIn(language).lyeQuestions;
  const of = (topic: keyof typeof topics) =>
    oneText([...topics[topic].answer, ...topics[topic].why]).replaceAll(',', '.');
  return { of, answer: (topic: keyof typeof topics) => oneText(topics[topic].answer).replaceAll(',', '.') };
};

describe.each(LANGUAGES)('figures told in words are those of the engine: %s', language => {
  const { of, answer } = saidIn(language);

  test('beeswax takes what its saponification value says', () => {
    const { saponification } = knownOil('beeswax')!;
    // European Pharmacopoeia, Beeswax, yellow: 87 to 104 mg KOH/g.
    expect([saponification.low, saponification.high]).toEqual([87, 104]);
    const perGram = (saponification.typical / 1000) * NAOH_PER_KOH;
    expect(answer('wax-counted')).toContain(perGram.toFixed(3));
    expect(of('wax-counted')).toContain(`${(20 * perGram * (1 - USUAL_SUPERFAT / 100)).toFixed(1)} g`);
  });

  test('superfat is taken off the lye', () => {
    expect(answer('superfat-on-which')).toContain(`${USUAL_SUPERFAT} %`);
    expect(answer('superfat-on-which')).toContain(`× ${(1 - USUAL_SUPERFAT / 100).toFixed(2)}`);
  });

  test('three percent of the lye for a kilo of olive is four grams', () => {
    const { typical } = knownOil('olive oil')!.saponification;
    expect(Math.round(0.03 * typical * NAOH_PER_KOH)).toBe(4);
    expect(of('superfat-low')).toMatch(/3 %.* 4 g/u);
  });

  test('KOH weighs more for the same oils, at 90 % by as much again', () => {
    expect(of('soda-or-potash')).toContain((1 / NAOH_PER_KOH).toFixed(2));
    expect(of('soda-or-potash')).toContain((1 / NAOH_PER_KOH / 0.9).toFixed(2));
  });

  test('five grams off on lye and on oil', () => {
    expect(of('scale-by-grams')).toContain(`${Math.round((100 * 5) / 70)} %`);
    expect(of('scale-by-grams')).toContain(`${(100 * 5) / 500} %`);
  });

  // Common practice (no source): how fast a jug of two litres cools, by itself and in cold water.
  test('how lye water cools and keeps', () => {
    expect(answer('cooling-time')).toMatch(/20 (?:to|a) 30 minut/u);
    expect(of('cooling-time')).toMatch(/80 (?:to|a) 95 °C \(176 (?:to|a) 203 °F\)/u);
    // Handbook tables, from memory: a solution of 50 % sets solid under about 12 °C.
    expect(of('lye-water-keeps')).toMatch(/50 %.*12 °C \(54 °F\)/u);
    expect(answer('lye-water-keeps')).toMatch(/HDPE \(2\).*PP \(5\)/u);
  });

  test('the numbers by which lye and potash are registered', () => {
    expect(of('names-of-lye')).toContain('CAS 1310-73-2');
    expect(of('names-of-lye')).toContain('1310-58-3');
  });
});
