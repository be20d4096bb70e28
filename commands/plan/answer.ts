import type { SeenBy } from '../../src/conversation/command.ts';
import type { Context } from '../../src/conversation/context.ts';
import type { Block, Choice, Reply } from '../../src/conversation/reply.ts';
import { requireNames } from '../../src/engine/batch/additives/nameless.ts';
import { type ClassAsk, type ClassPlan, stationRequest } from '../../src/engine/batch/planning/class-kits.ts';
import { planNumbers } from '../../src/engine/batch/planning/plan.ts';
import type { PlanAnswer } from '../../src/engine/batch/planning/plan-answer.ts';
import type { Price } from '../../src/engine/cost/money.ts';
import { cautionData, doseData, stepData } from '../../src/presenting/dose-data.ts';
import { colourNotes } from '../../src/presenting/warning.ts';
import { kitchenOf, preferencesOf } from '../../src/records/preferences.ts';
import { type KeptPlan, keepRecentPlan, type Use } from '../../src/records/recipes/index.ts';
import { type PlanRead, readKept } from '../../src/records/recipes/kept-plan.ts';
import type { Jar } from '../../src/records/shelf/jars/jar.ts';
import { lyeCautions, MOST_PLAN_WORDS, planBlocks, planSteps } from './blocks.ts';
import { cardOf, portionHexes } from './card.ts';
import { costBlocks, costData, costOfPlan } from './cost.ts';
import { classHeadline, classSections, handoutOf } from './handout.ts';
import { type Need, needsOf, stockData, stockRows, usesOf } from './stock.ts';
import { type PlanView, planHeadline } from './view.ts';
import { planColourCautions, planWarned, planWorst } from './watch.ts';

/** What a plan is asked for besides itself. */
export type Asking = {
  /** The recipe it comes from. */
  readonly name?: string | undefined;
  readonly lesson?: ClassAsk | undefined;
  /** What oils cost, by their ids. */
  readonly prices?: ReadonlyMap<string, Price> | undefined;
  /** Who sees the answer: what the member's shelf holds is told to nobody else. */
  readonly seenBy: SeenBy;
};

/** A plan made and said, and what its buttons go on with. */
export type Made = {
  readonly reply: Reply;
  /** The plan with its colours as they were found: what a recipe keeps. */
  readonly kept: KeptPlan;
  readonly uses: readonly Use[];
};

/**
 * Plans in the worker pool and says the answer with its card, and remembers the plan under this question's id.
 * `choices` are asked for once it is known what the shelf holds. Throws the Refusals of `readKept` and `planBatch`.
 */
export async function makePlan(
  plan: KeptPlan,
  asking: Asking,
  context: Context,
  choices: (made: { readonly uses: readonly Use[]; readonly jars: number }) => readonly Choice[],
): Promise<Made> {
  const { shelf, say, change } = context;
  const { view, lesson } = await viewOf(plan, asking, context);
  const { answer, read } = view;
  const needs = needsOf(answer, read, lesson?.stations);
  // A class spoons out station by station: nothing leaves the shelf in one press.
  const uses = lesson ? [] : usesOf(needs);
  const cost = costOfPlan(view, { prices: asking.prices, own: !lesson && asking.seenBy === 'asker' });
  const kept = { ...plan, colours: read.colours };
  await keepRecentPlan(shelf, change.cause, { ...kept, uses }, change.at);
  const pictures = await picturesOf(view, { ...asking, plan: lesson }, context);
  return {
    kept,
    uses,
    reply: {
      kind: 'reply',
      headline: lesson ? classHeadline(view, lesson) : planHeadline(view),
      data: { ...dataOf(answer, { needs, lesson, asking }), ...costData(cost) },
      blocks: [
        ...planBlocks(view, asking.seenBy === 'group' ? [] : stockRows(needs, say), costBlocks(view, cost)),
        ...(lesson
          ? classSections(view, lesson).map(one => ({ kind: 'rows' as const, ...one, fold: 'more' as const }))
          : []),
        ...pictures,
      ],
      cautions: lyeCautions(view),
      choices: choices({ uses, jars: needs.length }),
      most: MOST_PLAN_WORDS,
    },
  };
}

/** A plan worked out in the worker pool, with all that is needed to say it. Throws as {@link makePlan} does. */
async function viewOf(
  plan: KeptPlan,
  { lesson: ask }: Pick<Asking, 'lesson'>,
  { store, asker, shelf, workers, say, group }: Context,
): Promise<{ readonly view: PlanView; readonly lesson: ClassPlan | undefined }> {
  requireNames(plan.written.additives);
  const wishes = await preferencesOf(store, asker.id);
  const kept = await readKept(plan, shelf, kitchenOf(wishes));
  // A plan that names no scale is weighed on the member's own.
  const scaleStepGrams = plan.written.scale ?? wishes.scale ?? kept.request.scaleStepGrams;
  const read = { ...kept, request: { ...kept.request, scaleStepGrams } };
  planNumbers(ask ? stationRequest(read.request, ask) : read.request);
  const owner = { owner: asker.id };
  const lesson = ask && (await workers.run('planClass', { request: read.request, ask }, owner));
  const answer: PlanAnswer = lesson?.station ?? (await workers.run('planBatch', read.request, owner));
  const notes = await colourNotes(jarsOnce(read), { scope: { store, group }, viewer: asker.id, say });
  return { view: { answer, read, wishes, say, notes }, lesson };
}

/** The plan on one page to print: Letter for whoever weighs in ounces, else A4. Throws as {@link makePlan} does. */
export async function printPlan(plan: KeptPlan, context: Context): Promise<Reply> {
  const { say, workers, asker } = context;
  const { view } = await viewOf(plan, {}, context);
  const hexes = await portionHexes(view, context);
  const size = view.wishes.mass === 'ounces' ? 'letter' : 'a4';
  // The worst stand on the card already, which is on the page too.
  const worst = planWorst(view);
  const notes = [planWarned(view), planColourCautions(view)]
    .flatMap(({ rows }) => rows)
    .filter(row => !worst.includes(row));
  const bytes = await workers.run(
    'printBatchCard',
    {
      card: cardOf(view, undefined, hexes),
      steps: { title: say.plan.timeline, rows: planSteps(view) },
      cautions: [...lyeCautions(view).map(({ text }) => text), ...notes],
      size,
    },
    { owner: asker.id },
  );
  return {
    kind: 'reply',
    headline: say.plan.printed[size],
    data: { size },
    blocks: [{ kind: 'file', name: 'batch-card.pdf', bytes, mediaType: 'application/pdf' }],
    cautions: [],
  };
}

/** Each jar of a plan once. */
const jarsOnce = ({ jars }: PlanRead): readonly Jar[] => [
  ...new Map(jars.flat().map(jar => [jar.item?.id ?? jar.colourant.id, jar])).values(),
];

function dataOf(
  answer: PlanAnswer,
  { needs, lesson, asking }: { needs: readonly Need[]; lesson: ClassPlan | undefined; asking: Asking },
): object {
  return {
    ...answer,
    portions: answer.portions.map(portion => ({
      ...portion,
      doses: portion.doses.map(doseData),
      cautions: portion.cautions.map(cautionData),
    })),
    timeline: answer.timeline.map(stepData),
    stock: stockData(needs),
    ...(asking.name !== undefined && { recipe: asking.name }),
    ...(lesson && {
      class: {
        stations: lesson.stations,
        peopleAt: lesson.peopleAt,
        totals: lesson.totals,
        steps: lesson.steps,
      },
    }),
  };
}

async function picturesOf(
  view: PlanView,
  { name, plan }: { readonly name?: string | undefined; readonly plan: ClassPlan | undefined },
  context: Context,
): Promise<readonly Block[]> {
  const { workers, asker, say } = context;
  const owner = { owner: asker.id };
  if (plan) {
    const png = await workers.run('classHandout', handoutOf(view, plan, name), owner);
    const alt = say.plan.handoutAlt({ headline: classHeadline(view, plan) });
    return [{ kind: 'picture', name: 'class-handout.png', png, alt }];
  }
  const card = cardOf(view, name, await portionHexes(view, context));
  const steps = { title: say.plan.timeline, rows: planSteps(view) };
  const [png, times] = await Promise.all([
    workers.run('batchCard', card, owner),
    workers.run('timeline', steps, owner),
  ]);
  const headline = planHeadline(view);
  return [
    { kind: 'picture', name: 'batch-card.png', png, alt: say.plan.cardAlt({ headline }) },
    {
      kind: 'picture',
      name: 'timeline.png',
      png: times,
      alt: say.plan.timelineAlt({ headline }),
      fold: 'timeline',
    },
  ];
}
