import type { ClassPlan } from '../../src/engine/batch/planning/class-kits.ts';
import { lyeCautions, planSteps } from './blocks.ts';
import { planHeat } from './heat.ts';
import {
  type PlanView,
  planHeadline,
  planNumbers,
  planWeights,
  portionSection,
  type Section,
  shownMass,
} from './view.ts';
import { planColourCautions, planWarned } from './watch.ts';

const cautionsOf = (view: PlanView): Section => ({
  title: view.say.conversation.cautions,
  rows: lyeCautions(view).map(({ text }) => text),
});

/** The batch card of a plan, in the member's words. */
export function cardOf(view: PlanView, name: string | undefined) {
  const { say, answer } = view;
  return {
    title: say.plan.cardTitle({ name }),
    subtitle: planHeadline(view),
    numbers: planNumbers(view),
    weights: planWeights(view),
    portions: answer.portions.map((_, at) => portionSection(view, at)),
    notes: [planWarned(view), planColourCautions(view), planHeat(view)].filter(({ rows }) => rows.length > 0),
    steps: { title: say.plan.timeline, rows: planSteps(view) },
    cautions: cautionsOf(view),
  };
}

/** The stations of a class with their people, what the leader does, and what to buy. */
export function classSections(view: PlanView, plan: ClassPlan): readonly Section[] {
  const { say } = view;
  const mass = (grams: number) => say.plan.mass(grams, shownMass(view));
  const { peopleAt, totals, steps } = plan;
  return [
    {
      title: say.plan.stations,
      rows: peopleAt.map((people, at) => say.plan.station({ number: at + 1, people })),
    },
    { title: say.plan.leader, rows: steps.map(({ id }) => say.batch.classSteps[id]) },
    {
      title: say.plan.shopping,
      rows: [
        ...totals.oils.map(({ id, grams }) => say.plan.oil({ id, grams: mass(grams) })),
        ...totals.additives.map(({ id, grams }) => `${mass(grams)} ${say.batch.additives[id]}`),
        say.plan.lyeInAll({ grams: mass(totals.lyeGrams) }),
        say.plan.waterInAll({ grams: mass(totals.waterGrams) }),
        say.plan.gear({ pairs: totals.gear }),
      ],
    },
  ];
}

/** The handout of a class, in the leader's words. */
export function handoutOf(view: PlanView, plan: ClassPlan, name: string | undefined) {
  const { say, answer } = view;
  const mine = cardOf(view, name);
  return {
    title: name ?? say.plan.handoutTitle,
    subtitle: classHeadline(view, plan),
    each: say.plan.eachStation,
    numbers: mine.numbers,
    weights: mine.weights,
    cautions: mine.cautions,
    sections: [
      ...answer.portions.map((_, at) => portionSection(view, at)),
      { title: say.plan.timeline, rows: mine.steps.rows.map(({ when, what }) => `${when}: ${what}`) },
      ...classSections(view, plan),
    ],
  };
}

/** Lye and water of one station, and how many there are. */
export function classHeadline(view: PlanView, { stations, peopleAt }: ClassPlan): string {
  const { say } = view;
  return say.batch.kit({
    stations,
    people: String(peopleAt.reduce((sum, people) => sum + people, 0)),
    station: planHeadline(view),
  });
}
