import type { ClassPlan } from '../../src/engine/batch/planning/class-kits.ts';
import { colourantById } from '../../src/engine/colourants/catalogue.ts';
import { nameOf, rough } from '../../src/presenting/dose.ts';
import { lyeCautions, planSteps } from './blocks.ts';
import { planNumbers, planWeights } from './numbers.ts';
import { type PlanView, planHeadline, portionSection, type Section, shownMass } from './view.ts';

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
        ...totals.colours.map(({ colourant, grams, spoons }) =>
          say.plan.dose({
            spoons: say.quantities.measure(spoons),
            colour: nameOf(colourantById(colourant)!, say),
            grams: say.plan.figure(rough(grams), 3),
            liquid: undefined,
          }),
        ),
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
  return {
    title: name ?? say.plan.handoutTitle,
    subtitle: classHeadline(view, plan),
    each: say.plan.eachStation,
    numbers: planNumbers(view),
    weights: planWeights(view),
    cautions: { title: say.conversation.cautions, rows: lyeCautions(view).map(({ text }) => text) },
    sections: [
      ...answer.portions.map((_, at) => portionSection(view, at)),
      { title: say.plan.timeline, rows: planSteps(view).map(({ when, what }) => `${when}: ${what}`) },
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
