import type { ClassPlan } from '../../engine/batch/class-kits.ts';
import {
  lyeCautions,
  type PlanSaid,
  planColourCautions,
  planHeadline,
  planHeat,
  planNumbers,
  planSteps,
  planWatch,
  planWeights,
  portionSection,
  type Section,
  shownMass,
} from './say.ts';

const cautionsOf = (said: PlanSaid): Section => ({
  title: said.say.conversation.cautions,
  rows: lyeCautions(said).map(({ text }) => text),
});

/** The batch card of a plan, in the member's words. */
export function cardOf(said: PlanSaid, name: string | undefined) {
  const { say, answer } = said;
  return {
    title: say.plan.cardTitle({ name }),
    subtitle: planHeadline(said),
    numbers: planNumbers(said),
    weights: planWeights(said),
    portions: answer.portions.map((_, at) => portionSection(said, at)),
    notes: [planWatch(said), planColourCautions(said), planHeat(said)].filter(({ rows }) => rows.length > 0),
    steps: { title: say.plan.timeline, rows: planSteps(said) },
    cautions: cautionsOf(said),
  };
}

/** The stations of a class with their people, what the leader does, and what to buy. */
export function classSections(said: PlanSaid, plan: ClassPlan): readonly Section[] {
  const { say } = said;
  const mass = (grams: number) => say.plan.mass(grams, shownMass(said));
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
export function handoutOf(said: PlanSaid, plan: ClassPlan, name: string | undefined) {
  const { say, answer } = said;
  const mine = cardOf(said, name);
  return {
    title: name ?? say.plan.handoutTitle,
    subtitle: classHeadline(said, plan),
    each: say.plan.eachStation,
    numbers: mine.numbers,
    weights: mine.weights,
    cautions: mine.cautions,
    sections: [
      ...answer.portions.map((_, at) => portionSection(said, at)),
      { title: say.plan.timeline, rows: mine.steps.rows.map(({ when, what }) => `${when}: ${what}`) },
      ...classSections(said, plan),
    ],
  };
}

/** Lye and water of one station, and how many there are. */
export function classHeadline(said: PlanSaid, { stations, peopleAt }: ClassPlan): string {
  const { say } = said;
  return say.batch.kit({
    stations,
    people: String(peopleAt.reduce((sum, people) => sum + people, 0)),
    station: planHeadline(said),
  });
}
