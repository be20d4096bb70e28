import type { Block, Caution } from '../../src/conversation/reply.ts';
import type { LyeCautionId } from '../../src/engine/batch/lye/lye-cautions.ts';
import type { PrepStepId } from '../../src/engine/batch/planning/prep-step.ts';
import { learntNote } from '../../src/presenting/colour/learnt-strength.ts';
import { fahrenheitFirst } from '../../src/words/temperatures.ts';
import { planHeat } from './heat.ts';
import { planNumbers, planWeights } from './numbers.ts';
import { type PlanView, portionSection, type Section } from './view.ts';
import { planColourCautions, planDeciding, planRounded, planUrgent, planWatch } from './watch.ts';

/** Words on the face of a plan: as many as leave it on one screen of a phone with its card and its buttons. */
export const MOST_PLAN_WORDS = 112;

/** The pour step by step: when, and what. */
export const planSteps = ({ answer, say, wishes }: PlanView) =>
  answer.timeline.map(({ minutesBeforePour, step, values }) => {
    const what = (say.timeline.steps[step] as (given: typeof values) => string)(values);
    // They stand in pictures too, which nobody turns later.
    return {
      when: say.timeline.when(minutesBeforePour),
      what: wishes.temperature === 'fahrenheit' ? fahrenheitFirst(what) : what,
    };
  });

/**
 * Told in full to whoever plans for the first time: what lye does, what to wear, what to do when it goes wrong. How to mix is
 * a step on the face of every plan; the rest is said in its line, and in full a press away.
 */
const WHOLE: ReadonlySet<LyeCautionId> = new Set(['lye-burns', 'lye-gear', 'lye-first-aid'] as const);

/** What anybody who handles lye must be told: all of it the first time, and what prevents harm at once every time. */
export const lyeCautions = ({ answer, say }: PlanView): readonly Caution[] =>
  answer.cautions.map(({ id }) => ({
    id,
    text: say.batch.lyeCautions[id],
    firm: true,
    brief: say.batch.lyeBriefs[id as keyof typeof say.batch.lyeBriefs] ?? say.batch.lyeBrief,
    ...(!WHOLE.has(id) && { briefAtOnce: true }),
  }));

/** The steps in which lye meets water. */
const MIXING_LYE: ReadonlySet<PrepStepId> = new Set(['mix-lye', 'mix-lye-frozen', 'pour-solution']);
/** The step that says which portions there are. */
const SPLITTING: ReadonlySet<PrepStepId> = new Set(['split']);

/**
 * The whole plan: what is acted on now on its face, the numbers behind it. `stock` says what the shelf holds of it,
 * `cost` what it costs.
 */
export function planBlocks(
  view: PlanView,
  stock: readonly string[],
  cost: readonly Block[],
): readonly Block[] {
  const { say, answer } = view;
  const steps = planSteps(view);
  const learnt = learntNote(view.read.jars.flat(), say);
  return [
    ...onFace(MIXING_LYE, view).map((text): Block => ({ kind: 'text', text, fold: 'face', firm: true })),
    { kind: 'measures', measures: planNumbers(view), fold: 'numbers' },
    { kind: 'measures', measures: planWeights(view), fold: 'numbers' },
    ...planUrgent(view).map((text): Block => ({ kind: 'text', text, firm: true })),
    ...planDeciding(view).map(({ text, firm }): Block => ({ kind: 'text', text, ...(firm && { firm }) })),
    ...planRounded(view).map((text): Block => ({ kind: 'text', text, fold: 'numbers' })),
    ...filled(planWatch(view)),
    ...onFace(SPLITTING, view).map((text): Block => ({ kind: 'text', text, fold: 'face' })),
    ...answer.portions.map((_, at): Block => ({ ...rowsOf(portionSection(view, at)), fold: 'portions' })),
    ...learnt.map((block): Block => ({ ...block, fold: 'portions' })),
    ...folded('shelf', { title: say.plan.stock, rows: stock }),
    ...cost.map((block): Block => ({ ...block, fold: 'numbers' })),
    ...folded('colours', planColourCautions(view)),
    ...folded('heat', planHeat(view)),
    {
      kind: 'text',
      text: `${say.plan.timeline}:\n${steps.map(({ when, what }) => `${when}: ${what}`).join('\n')}`,
      folds: true,
      fold: 'timeline',
    },
  ];
}

/** What the timeline says of some of its steps. */
const onFace = (which: ReadonlySet<PrepStepId>, view: PlanView): readonly string[] =>
  planSteps(view)
    .filter((_, at) => which.has(view.answer.timeline[at]!.step))
    .map(({ what }) => what);

const rowsOf = (section: Section): Block => ({ kind: 'rows', ...section });
const filled = (section: Section): readonly Block[] => (section.rows.length === 0 ? [] : [rowsOf(section)]);
const folded = (fold: NonNullable<Block['fold']>, section: Section): readonly Block[] =>
  filled(section).map(block => ({ ...block, fold }));
