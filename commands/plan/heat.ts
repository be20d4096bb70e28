import type { PlanAnswer } from '../../src/engine/batch/planning/plan-answer.ts';
import type { Words } from '../../src/words/index.ts';
import type { PlanView, Section } from './view.ts';

/** Chances below this are not worth a line. */
const WORTH_SAYING = 0.1;
const MOST_LEVERS = 2;

/** How hot the loaf gets, whether it gels, whether white crackles and what lowers that. All estimate. */
export function planHeat({ answer, read, say }: PlanView): Section {
  const { heat } = answer;
  const words = say.heat;
  const white = heat.crackleRisk !== 'none';
  const rows = [
    words.verdicts[heat.verdict],
    words.gel(heat.gel),
    words.peaks({
      coreC: heat.peakCoreC,
      lowC: heat.peakCoreBand.low,
      highC: heat.peakCoreBand.high,
      edgeC: heat.peakEdgeC,
      hours: heat.peakHours,
    }),
    ...(heat.ring.millimetresFromSide !== undefined && heat.gel.partial >= WORTH_SAYING
      ? [words.ring({ millimetres: heat.ring.millimetresFromSide })]
      : []),
    ...(heat.overheatChance >= WORTH_SAYING ? [words.overheat({ chance: heat.overheatChance })] : []),
    ...(white ? [words.crackle[heat.crackleRisk]] : []),
    ...(white && heat.crackleRisk !== 'low'
      ? [...heat.crackle.levers.slice(0, MOST_LEVERS).map(lever => leverRow(lever, say)), words.lessWhite]
      : []),
    ...(read.request.size.by === 'mould' ? [] : [say.plan.heatShape(shapeOf(heat))]),
    words.estimate,
  ];
  return { title: say.plan.heat, rows };
}

const leverRow = (
  { id, to = 0, peakCoreC, gelChance }: PlanAnswer['heat']['crackle']['levers'][number],
  say: Words,
) => say.heat.lever({ id, to, peakC: peakCoreC, gelChance });

const shapeOf = ({ shape }: PlanAnswer['heat']) => ({
  widthCm: shape.shape === 'loaf' ? shape.widthCm : shape.diameterCm,
  heightCm: shape.heightCm,
});
