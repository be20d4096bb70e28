import { test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { colourants } from '../../src/engine/colourants/catalogue.ts';
import type { Carrier } from '../../src/engine/colourants/colourant.ts';
import { answerDose } from '../../src/engine/dosing/answer.ts';
import type { Caution } from '../../src/engine/dosing/cautions.ts';
import { parsePortion } from '../../src/engine/quantities/told/portion.ts';
import { Refusal } from '../../src/engine/refusal.ts';
import { wordsIn } from '../../src/words/index.ts';

const usable = colourants.filter(({ alkali }) => alkali.behaviour !== 'never');
const said = (language: 'en' | 'es', { id, values }: Caution) =>
  (wordsIn(language).dosing.cautions[id] as (given: typeof values) => string)(values);
/** What a forgotten value looks like in a sentence. */
const BROKEN = /undefined|NaN|\[object|null|\$\{/u;

describe('every caution a colour can bring is said in both languages', () => {
  test.each(usable.map(colourant => [colourant.id, colourant] as const))('%s', (_id, colourant) => {
    for (const carrier of colourant.carriers) {
      for (const strength of [
        { by: 'cup', tspPerCup: 9 },
        { by: 'name', name: 'tint' },
      ] as const) {
        const { cautions } = answerDose({
          portion: parsePortion('1 lb oils'),
          colourants: [{ colourant, strength, carrier, dishTest: 'oil' }],
        });
        for (const caution of cautions) {
          const [en, es] = [said('en', caution), said('es', caution)];
          expect(en).not.toMatch(BROKEN);
          expect(es).not.toMatch(BROKEN);
          expect(es).not.toBe(en);
          expect(es).not.toMatch(/\btsp\b|\bTbsp\b/u);
        }
      }
    }
  });
});

describe('a refused carrier is said with its reason and what would work', () => {
  test('a neon in water', () => {
    const neon = colourants.find(({ kind }) => kind === 'neon')!;
    const asked: Carrier = 'water';
    try {
      answerDose({
        portion: parsePortion('1 cup'),
        colourants: [{ colourant: neon, strength: { by: 'name', name: 'full' }, carrier: asked }],
      });
      expect.unreachable();
    } catch (problem) {
      expect(problem).toBeInstanceOf(Refusal);
      const refusal = problem as Refusal;
      expect(wordsIn('en').refusal(refusal)).toMatch(/water.*oil or glycerin/u);
      expect(wordsIn('es').refusal(refusal)).toMatch(/agua.*aceite ligero o glicerina/u);
    }
  });
});
