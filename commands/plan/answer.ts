import type { SeenBy } from '../../src/conversation/command.ts';
import type { Context } from '../../src/conversation/context.ts';
import type { Block, Choice, Reply } from '../../src/conversation/reply.ts';
import { type ClassAsk, type ClassPlan, stationRequest } from '../../src/engine/batch/planning/class-kits.ts';
import { checkPlan } from '../../src/engine/batch/planning/plan.ts';
import type { PlanAnswer } from '../../src/engine/batch/planning/plan-answer.ts';
import type { Price } from '../../src/engine/cost/money.ts';
import { MEASURES } from '../../src/engine/quantities/units.ts';
import { cautionData, doseData, stepData } from '../../src/presenting/dose-data.ts';
import { colourNotes } from '../../src/presenting/warning.ts';
import { preferencesOf } from '../../src/records/preferences.ts';
import { type KeptPlan, keepRecentPlan, type Use } from '../../src/records/recipes/index.ts';
import { type PlanRead, readKept } from '../../src/records/recipes/kept-plan.ts';
import type { Jar } from '../../src/records/shelf/jar.ts';
import { lyeCautions, MOST_PLAN_WORDS, planBlocks } from './blocks.ts';
import { cardOf, classHeadline, classSections, handoutOf } from './card.ts';
import { costBlocks, costData, costOfPlan } from './cost.ts';
import { type Need, needsOf, stockData, stockRows, usesOf } from './stock.ts';
import { type PlanView, planHeadline } from './view.ts';

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
  const { store, asker, shelf, workers, say, change } = context;
  const wishes = await preferencesOf(store, asker.id);
  const read = await readKept(plan, shelf, MEASURES[wishes.spoons]);
  checkPlan(asking.lesson ? stationRequest(read.request, asking.lesson) : read.request);
  const owner = { owner: asker.id };
  const lesson =
    asking.lesson && (await workers.run('planClass', { request: read.request, ask: asking.lesson }, owner));
  const answer: PlanAnswer = lesson?.station ?? (await workers.run('planBatch', read.request, owner));
  const scope = { store, group: context.group };
  const notes = await colourNotes(jarsOnce(read), { scope, viewer: asker.id, say });
  const view: PlanView = { answer, read, wishes, say, notes };
  const needs = needsOf(answer, read);
  // A class buys for itself: what one station needs is not what leaves the shelf.
  const uses = lesson ? [] : usesOf(needs);
  const cost = costOfPlan(view, { prices: asking.prices, own: !lesson && asking.seenBy === 'asker' });
  const kept = { ...plan, colours: read.colours };
  await keepRecentPlan(shelf, change.cause, { ...kept, uses }, change.at);
  const picture = await pictureOf(view, { ...asking, plan: lesson }, context);
  return {
    kept,
    uses,
    reply: {
      kind: 'reply',
      headline: lesson ? classHeadline(view, lesson) : planHeadline(view),
      data: { ...dataOf(answer, { needs, lesson, asking }), ...costData(cost) },
      blocks: [
        ...planBlocks(
          view,
          lesson || asking.seenBy === 'group' ? [] : stockRows(needs, say),
          costBlocks(view, cost),
        ),
        ...(lesson
          ? classSections(view, lesson).map(one => ({ kind: 'rows' as const, ...one, fold: 'more' as const }))
          : []),
        picture,
      ],
      cautions: lyeCautions(view),
      choices: choices({ uses, jars: needs.length }),
      most: MOST_PLAN_WORDS,
    },
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

async function pictureOf(
  view: PlanView,
  { name, plan }: { readonly name?: string | undefined; readonly plan: ClassPlan | undefined },
  { workers, asker, say }: Context,
): Promise<Block> {
  const owner = { owner: asker.id };
  if (plan) {
    const png = await workers.run('classHandout', handoutOf(view, plan, name), owner);
    const alt = say.plan.handoutAlt({ headline: classHeadline(view, plan) });
    return { kind: 'picture', name: 'class-handout.png', png, alt };
  }
  const png = await workers.run('batchCard', cardOf(view, name), owner);
  const alt = say.plan.cardAlt({ headline: planHeadline(view) });
  return { kind: 'picture', name: 'batch-card.png', png, alt };
}
