import type { Measure } from '../../src/conversation/reply.ts';
import { oilById } from '../../src/engine/batch/oils/find-oil.ts';
import type { Words } from '../../src/words/index.ts';
import { massIn, type PlanView, placedIn, shownMass, volumeOf } from './view.ts';

/** A measure of which each unit stands by itself. */
type Numbered = Omit<Measure, 'value'> & { readonly in: ReturnType<Words['plan']['weightInTwo']> };

const inTwoUnits = (view: PlanView) => (grams: number) => view.say.plan.weightInTwo(grams, shownMass(view));

/** As a reply shows them: both units in one text. */
const asMeasures = (all: readonly Numbered[], { say }: PlanView): readonly Measure[] =>
  all.map(({ in: units, label, ...rest }) => ({ label, value: say.plan.inTwo(units), ...rest }));

/** {@link numbersInTwo} as a reply shows them. */
export const planNumbers = (view: PlanView): readonly Measure[] => asMeasures(numbersInTwo(view), view);

/** {@link weightsInTwo} as a reply shows them. */
export const planWeights = (view: PlanView): readonly Measure[] => asMeasures(weightsInTwo(view), view);

/** The lye as it is weighed: dry, or in its own water. */
function lyeRows(view: PlanView): readonly Numbered[] {
  const { say } = view;
  const { lye, jug } = view.answer;
  const [weight, mass] = [inTwoUnits(view), massIn(view)];
  const { solution } = jug;
  if (!solution)
    return lye.parts.map(({ alkali, grams }) => ({ label: say.plan.lye[alkali], in: weight(grams) }));
  return lye.parts.map(({ alkali, grams }) => ({
    label: say.batch.jug.solution({ alkali, percent: solution.percent }),
    in: weight(solution.grams),
    note: say.batch.jug.solutionNote({ lye: mass(grams), water: mass(solution.waterGrams) }),
  }));
}

/** Whether any colour is wetted in oil, which no lye was weighed for. */
const isWettedInOil = ({ answer }: PlanView): boolean =>
  answer.portions.some(({ doses }) => doses.some(({ carrier }) => carrier.choice === 'oil'));

/** Lye, water, batter, superfat: what decides the pour. */
export function numbersInTwo(view: PlanView): readonly Numbered[] {
  const { answer, say } = view;
  const { plan, batch } = say;
  const weight = inTwoUnits(view);
  const { water, superfat, batter, reserve } = answer;
  const { jug } = answer;
  const fat = answer.warnings.some(({ id }) => id === 'liquid-fat');
  return [
    ...lyeRows(view),
    {
      label: jug.solution ? batch.jug.furtherWater : plan.water,
      in:
        jug.waterGrams > 0.05
          ? weight(jug.waterGrams)
          : {
              first: batch.jug.noWater({
                inJug: placedIn('jug', view),
                frozen: jug.method === 'frozen',
              }),
            },
      note: [
        ...(water.holdBackGrams > 0.05
          ? [plan.holdBack({ all: massIn(view)(water.grams), held: massIn(view)(water.holdBackGrams) })]
          : []),
        ...(jug.method === 'water' && jug.liquids.length === 0
          ? []
          : [batch.jug.strength({ percent: jug.strength })]),
        batch.waterWays({
          strength: plan.figure(water.ways.lyeStrength, 1),
          ratio: plan.figure(water.ways.waterPerLye, 2),
          ofOils: plan.figure(water.ways.percentOfOils, 1),
        }),
      ].join(' '),
    },
    {
      label: plan.batter,
      in: plan.volumeInTwo(volumeOf(batter.millilitres, view)),
      note: plan.batterNote({
        grams: plan.inTwo(weight(batter.grams)),
        density: batter.density,
        reserve: reserve.millilitres,
      }),
    },
    {
      label: plan.superfat,
      in: { first: plan.percent({ percent: superfat.effective }) },
      note: plan.superfatNote({
        asked: superfat.asked,
        usual: view.read.request.isSuperfatUsual === true,
        carriers: superfat.effective > superfat.asked + 0.5 && !fat && isWettedInOil(view),
        low: superfat.band.low,
        high: superfat.band.high,
      }),
    },
  ];
}

/** What else is weighed: each oil, additives, fragrance. */
export function weightsInTwo(view: PlanView): readonly Numbered[] {
  const { answer, say } = view;
  const weight = inTwoUnits(view);
  return [
    ...answer.oils.map(({ id, grams }) => ({
      label: oilById(id).names[say.language],
      in: weight(grams),
    })),
    ...answer.jug.liquids.map(({ id, grams, waterGrams, into, frozen }) => ({
      label: say.plan.capital(say.batch.additives[id]),
      in: weight(grams),
      note: say.batch.jug.placed({ into, frozen, water: massIn(view)(waterGrams) }),
    })),
    ...answer.additives
      .filter(({ id }) => !answer.jug.liquids.some(one => one.id === id))
      .map(({ id, grams }) => ({
        label: say.plan.capital(say.batch.additives[id as keyof typeof say.batch.additives]),
        in: weight(grams),
      })),
    ...(answer.fragrance && answer.fragrance.grams > 0
      ? [
          {
            label: say.plan.fragrance,
            in: weight(answer.fragrance.grams),
            note: say.plan.fragranceNote({ percent: answer.fragrance.percentOfOils }),
          },
        ]
      : []),
  ];
}
