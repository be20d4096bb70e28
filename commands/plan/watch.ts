import type { PlanAnswer } from '../../src/engine/batch/planning/plan-answer.ts';
import type { Caution as DoseCaution } from '../../src/engine/dosing/cautions.ts';
import { withoutCatalogueLye } from '../../src/presenting/warning.ts';
import type { PlanView, Section } from './view.ts';

/** Warnings that stay on the face however long it is: what they tell hurts at once or leaves lye in the bar. */
const URGENT: ReadonlySet<PlanAnswer['warnings'][number]['id']> = new Set([
  'boils-over',
  'batch-large',
  'superfat-may-go-negative',
  'portion-superfat-negative',
  'liquid-eats-lye',
  'citric-eats-lye',
] as const);

/** What decides how the batch is worked or what becomes of it: on the face, and folded only where all else is. */
const DECIDES: ReadonlySet<PlanAnswer['warnings'][number]['id']> = new Set([
  'fragrance-speeds',
  'fragrance-browns',
  'superfat-shifted',
] as const);

/** What a scale cannot show: among the numbers. */
const OF_NUMBERS: ReadonlySet<PlanAnswer['warnings'][number]['id']> = new Set(['lye-rounded-down'] as const);

type WarningId = PlanAnswer['warnings'][number]['id'];

const spoken = ({ id, values }: PlanAnswer['warnings'][number], { say }: PlanView): string =>
  (say.batch.warnings[id] as (given: typeof values) => string)(values);

const warned = (view: PlanView, is: (id: WarningId) => boolean): readonly string[] =>
  view.answer.warnings.filter(({ id }) => is(id)).map(one => spoken(one, view));

const isElse = (id: WarningId): boolean => ![URGENT, DECIDES, OF_NUMBERS].some(ids => ids.has(id));

/** What stands on the card and its print, the worst first: lye that is left or strong, heat, what hurts to breathe or touch. */
const WORST: readonly WarningId[] = [
  'boils-over',
  'superfat-may-go-negative',
  'portion-superfat-negative',
  'liquid-eats-lye',
  'citric-eats-lye',
  'jug-strong',
  'lye-strong',
  'additive-heats',
  'start-hot',
  'melts-above-pour',
  'scent-hurts',
  'boil-off-alcohol',
  'batch-large',
];
const MOST_ON_CARD = 2;

/** The one or two warnings that matter most where the card lies beside the pot. */
export const planWorst = (view: PlanView): readonly string[] =>
  view.answer.warnings
    .filter(({ id }) => WORST.includes(id))
    .toSorted((a, b) => WORST.indexOf(a.id) - WORST.indexOf(b.id))
    .slice(0, MOST_ON_CARD)
    .map(one => spoken(one, view));

export const planUrgent = (view: PlanView): readonly string[] => warned(view, id => URGENT.has(id));

/** What decides how the batch is worked; `firm` what the hand has to know before it begins. */
export const planDeciding = (view: PlanView): readonly { readonly text: string; readonly firm: boolean }[] =>
  view.answer.warnings
    .filter(({ id }) => DECIDES.has(id))
    .map(one => ({ text: spoken(one, view), firm: one.id !== 'superfat-shifted' }));

/** What is true of the numbers and changes nothing that a scale shows. */
export const planRounded = (view: PlanView): readonly string[] => warned(view, id => OF_NUMBERS.has(id));

/** All that is worth a warning, what hurts at once first. */
export const planWarned = (view: PlanView): Section => ({
  title: view.say.plan.watch,
  rows: [
    ...planUrgent(view),
    ...planDeciding(view).map(({ text }) => text),
    ...planWatch(view).rows,
    ...planRounded(view),
  ],
});

/** Everything else worth a warning, the lye first. */
export const planWatch = (view: PlanView): Section => ({
  title: view.say.plan.watch,
  rows: warned(view, isElse),
});

/** Cautions of the doses that the plan says elsewhere and better, with its own numbers. */
const SAID_ELSEWHERE: ReadonlySet<DoseCaution['id']> = new Set([
  'raw-batter',
  'superfat-rises',
  'lye-thins',
  'stick-blend-thickens',
  'typical-batter',
]);

/** What the colours themselves call for, each once. */
export function planColourCautions({ answer, read, say, notes }: PlanView): Section {
  const jars = read.jars.flat();
  const rows = answer.portions.flatMap(({ cautions }) =>
    withoutCatalogueLye(cautions, jars)
      .filter(({ id }) => !SAID_ELSEWHERE.has(id))
      .map(({ id, values }) => (say.dosing.cautions[id] as (given: typeof values) => string)(values)),
  );
  const known = [...notes.cautions.map(({ text }) => text), ...notes.asides];
  return { title: say.plan.colours, rows: [...new Set([...known, ...rows])] };
}
