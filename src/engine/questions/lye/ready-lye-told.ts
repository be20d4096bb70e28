import { refuse } from '../../refusal.ts';
import { asTyped } from './amounts/as-typed.ts';
import { POTASSIUM, plainWords } from './amounts/words.ts';
import type { LyeQuestion } from './question.ts';
import { readyLyeNamed, strengthOfReady } from './sums/ready-solution.ts';

/** What is asked of ready-made lye is told as grams of that lye, or it is asked how strong it is: by the figure of dry lye it is too little. */
export function dissolved(told: LyeQuestion, question: string): LyeQuestion {
  const plain = plainWords(asTyped(question), { clauses: true });
  const named = readyLyeNamed(plain);
  if (named === undefined || told.given.oils === undefined || told.lye.solution) return told;
  const strength = strengthOfReady(plain);
  if (strength === undefined || told.weighed || POTASSIUM.test(plain))
    return refuse('lye-ready-strength', { text: named });
  const { water: _, ...given } = told.given;
  return {
    ...told,
    given: { ...given, lye: `${strength}% lye solution` },
    lye: { alkali: 'NaOH', solution: true },
  };
}
