import { describe, expect, test } from 'vitest';
import type { Known } from '../../../src/engine/flaws/consider.ts';
import { diagnose } from '../../../src/engine/flaws/diagnose.ts';
import type { Evidence } from '../../../src/engine/flaws/diagnosis.ts';
import { FINDINGS, type FindingId } from '../../../src/engine/flaws/findings.ts';
import { infer } from '../../../src/engine/flaws/inference.ts';
import { LIKELIHOODS } from '../../../src/engine/flaws/likelihoods.ts';
import { answered, SURE_ENOUGH, worthAsking } from '../../../src/engine/flaws/questions.ts';

const white: Evidence = { finding: 'white-specks', probability: 0.95, via: 'words', from: 'white spots' };

const nextQuestion = (known: Known) => diagnose('', known).ask;

describe('the next best question', () => {
  test('asks only what may be asked: never a taste, never bare skin', () => {
    let evidence: readonly Evidence[] = [white];
    for (let i = 0; i < 10; i += 1) {
      const finding = nextQuestion({ evidence });
      if (!finding) break;
      expect(FINDINGS[finding].ask).toBe(true);
      expect(['zaps', 'zaps-in-spots', 'burns-skin']).not.toContain(finding);
      evidence = [...evidence, answered(finding, false)];
    }
  });

  test('never asks the same thing twice, answered or not', () => {
    const first = nextQuestion({ evidence: [white] })!;
    expect(nextQuestion({ evidence: [white, answered(first, true)] })).not.toBe(first);
    expect(nextQuestion({ evidence: [white], unanswered: [first] })).not.toBe(first);
  });

  test('honest answers lead from white specks to stearic spots within five questions', () => {
    const truth = new Set<FindingId>([
      ...(LIKELIHOODS['stearic-spots']['nearly always'] ?? []),
      ...(LIKELIHOODS['stearic-spots'].often ?? []),
    ]);
    let evidence: readonly Evidence[] = [white];
    for (let i = 0; i < 5; i += 1) {
      const finding = nextQuestion({ evidence });
      if (!finding) break;
      evidence = [...evidence, answered(finding, truth.has(finding))];
    }
    const { causes } = infer(evidence);
    expect(Object.entries(causes).sort((a, b) => b[1] - a[1])[0]![0]).toBe('stearic-spots');
  });

  test('stops where no answer would tell anything', () => {
    const posterior = infer([white]);
    const telling = (bits: number) =>
      worthAsking(posterior, [{ finding: 'ash-wipes-off' as FindingId, bits }]);
    expect(telling(0.02)).toBe('ash-wipes-off');
    expect(telling(0.0199)).toBeUndefined();
    expect(worthAsking(posterior, [])).toBeUndefined();
  });

  test('stops when one cause is sure enough', () => {
    const evidence = (['orange-spots', 'stale-smell', 'old-oils'] as const).map(id => answered(id, true));
    expect(infer(evidence).causes.rancidity).toBeGreaterThan(SURE_ENOUGH);
    expect(nextQuestion({ evidence })).toBeUndefined();
  });
});
