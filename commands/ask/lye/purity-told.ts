import type { Context } from '../../../src/conversation/context.ts';
import type { LyeQuestion } from '../../../src/engine/questions/lye/question.ts';

/** How pure the lye is that was told: the amount hangs on it. */
export function purityTold(
  { lye, purity }: LyeQuestion['given'],
  { lyeQuestions }: Context['say'],
): readonly string[] {
  const [, potash] = /^KOH (\d+(?:[.,]\d+)?)%$/u.exec(String(lye ?? '')) ?? [];
  const percent = potash ?? purity;
  return percent === undefined
    ? []
    : [
        lyeQuestions.purityTold({
          alkali: potash === undefined ? 'NaOH' : 'KOH',
          percent: Number(String(percent).replace(',', '.')),
        }),
      ];
}
