import type { SeenBy } from '../../conversation/command.ts';
import type { Context } from '../../conversation/context.ts';
import type { Block, Choice, Reply } from '../../conversation/reply.ts';
import { type ClassAsk, type ClassPlan, stationRequest } from '../../engine/batch/class-kits.ts';
import { checkPlan } from '../../engine/batch/plan.ts';
import type { PlanAnswer } from '../../engine/batch/plan-answer.ts';
import { MEASURES } from '../../engine/quantities/units.ts';
import { preferencesOf } from '../../records/preferences.ts';
import { type KeptPlan, keepLatePlan, type Use } from '../../records/recipes/index.ts';
import type { Jar } from '../../records/shelf/jar.ts';
import { colourNotes } from '../warning.ts';
import { cardOf, classHeadline, classSections, handoutOf } from './card.ts';
import { type PlanRead, readKept } from './read.ts';
import { lyeCautions, type PlanSaid, planBlocks, planHeadline } from './say.ts';
import { type Need, needsOf, stockData, stockRows, usesOf } from './stock.ts';

/** What a plan is asked for besides itself. */
export type Asking = {
  /** The recipe it comes from. */
  readonly name?: string | undefined;
  readonly lesson?: ClassAsk | undefined;
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
  const { store, asker, workers, say, onceId, at } = context;
  const wishes = await preferencesOf(store, asker.id);
  const shelf = { store, member: asker.id };
  const read = await readKept(plan, shelf, MEASURES[wishes.spoons]);
  checkPlan(asking.lesson ? stationRequest(read.request, asking.lesson) : read.request);
  const owner = { owner: asker.id };
  const lesson =
    asking.lesson && (await workers.run('planClass', { request: read.request, ask: asking.lesson }, owner));
  const answer: PlanAnswer = lesson?.station ?? (await workers.run('planBatch', read.request, owner));
  const book = { store, group: context.group };
  const notes = await colourNotes(jarsOnce(read), { book, viewer: asker.id, say });
  const said: PlanSaid = { answer, read, wishes, say, notes };
  const needs = needsOf(answer, read);
  // A class buys for itself: what one station needs is not what leaves the shelf.
  const uses = lesson ? [] : usesOf(needs);
  const kept = { ...plan, colours: read.colours };
  await keepLatePlan(shelf, onceId, { ...kept, uses }, new Date(at));
  const picture = await pictureOf(said, { ...asking, plan: lesson }, context);
  return {
    kept,
    uses,
    reply: {
      kind: 'reply',
      headline: lesson ? classHeadline(said, lesson) : planHeadline(said),
      data: dataOf(answer, { needs, lesson, asking }),
      blocks: [
        ...planBlocks(said, lesson || asking.seenBy === 'group' ? [] : stockRows(needs, say)),
        ...(lesson ? classSections(said, lesson).map(one => ({ kind: 'rows' as const, ...one })) : []),
        picture,
      ],
      cautions: lyeCautions(said),
      choices: choices({ uses, jars: needs.length }),
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
  said: PlanSaid,
  { name, plan }: { readonly name?: string | undefined; readonly plan: ClassPlan | undefined },
  { workers, asker, say }: Context,
): Promise<Block> {
  const owner = { owner: asker.id };
  if (plan) {
    const png = await workers.run('classHandout', handoutOf(said, plan, name), owner);
    const alt = say.plan.handoutAlt({ headline: classHeadline(said, plan) });
    return { kind: 'picture', name: 'class-handout.png', png, alt };
  }
  const png = await workers.run('batchCard', cardOf(said, name), owner);
  const alt = say.plan.cardAlt({ headline: planHeadline(said) });
  return { kind: 'picture', name: 'batch-card.png', png, alt };
}
