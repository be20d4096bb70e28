import type { PlanAnswer } from '../../src/engine/batch/planning/plan-answer.ts';
import { portionCalled } from '../../src/engine/batch/portions/portion-name.ts';
import type { Dose } from '../../src/engine/dosing/request.ts';
import { midSentence } from '../../src/engine/text/capital.ts';
import { nameOf, rough, spoonsOf } from '../../src/presenting/dose.ts';
import type { ColourNotes } from '../../src/presenting/warning.ts';
import type { Preferences } from '../../src/records/preferences.ts';
import type { PlanRead } from '../../src/records/recipes/kept-plan.ts';
import type { Words } from '../../src/words/index.ts';

/** A plan answered, and all that is needed to say it to this member. */
export type PlanView = {
  readonly answer: PlanAnswer;
  readonly read: PlanRead;
  readonly wishes: Preferences;
  readonly say: Words;
  /** What the jars' own labels and the group's reports say of the colours. */
  readonly notes: ColourNotes;
};

export type Portion = PlanAnswer['portions'][number];
/** A heading and its lines: a portion, the warnings, the heat. */
export type Section = { readonly title: string; readonly rows: readonly string[] };

/** How masses of this batch are shown: as fine as the scale that weighs them. */
export const shownMass = ({ read: { request }, wishes }: Pick<PlanView, 'read' | 'wishes'>) => ({
  decimals: request.scaleStepGrams >= 1 ? 0 : 1,
  first: wishes.mass,
});

export const massIn = (view: PlanView) => (grams: number) => view.say.plan.mass(grams, shownMass(view));
const weightIn = (view: PlanView) => (grams: number) => view.say.plan.weight(grams, shownMass(view));
const oilGrams = ({ oils }: PlanAnswer) => oils.reduce((sum, { grams }) => sum + grams, 0);

export const placedIn = (into: 'jug' | 'oils', view: PlanView) =>
  view.answer.jug.liquids
    .filter(one => one.into === into)
    .map(({ id, grams }) => ({ id, mass: massIn(view)(grams) }));

/** The numbers a maker weighs first, in one line: lye, and whatever it is dissolved in. */
export function planHeadline(view: PlanView): string {
  const { answer, say } = view;
  const mass = massIn(view);
  const { lye, jug } = answer;
  const weighed = lye.parts.map(({ alkali, grams }, at) =>
    at === lye.parts.length - 1 ? mass(grams) : say.plan.lyeOf({ grams: mass(grams), alkali }),
  );
  const [inJug, inOils] = [placedIn('jug', view), placedIn('oils', view)];
  const headline = say.batch.headline({
    method: jug.method,
    lye: weighed.join(' + '),
    alkali: lye.parts.at(-1)!.alkali,
    water: jug.waterGrams > 0.05 || (inJug.length === 0 && !jug.solution) ? mass(jug.waterGrams) : undefined,
    inJug,
    inOils,
    solution: jug.solution && { mass: mass(jug.solution.grams), percent: jug.solution.percent },
    oils: mass(oilGrams(answer)),
  });
  return [headline, ...scaledFrom(view)].join('. ');
}

/** A share of weights that is too small to be a change of the member's own. */
const SAME = 1e-3;

/** Weights that were given beside a size and made to fit it: said in the first line, since they are weighed. */
function scaledFrom(view: PlanView): readonly string[] {
  const { answer, read, say } = view;
  const given = read.request.oils.totalGrams;
  const made = oilGrams(answer);
  if (given === undefined || Math.abs(made / given - 1) < SAME) return [];
  const [from, to] = [massIn(view)(given), massIn(view)(made)];
  return [say.batch.scaled({ from, to, fills: read.request.size.by === 'mould' })];
}

export const volumeOf = (millilitres: number, { read }: PlanView) => ({
  millilitres,
  cups: millilitres / read.request.measures.cup,
});

/** The name of a portion and its volume. */
function portionTitle(view: PlanView, at: number): string {
  const { answer, read, say } = view;
  const portion = answer.portions[at]!;
  const name = read.request.portions[at]?.name ?? portion.name;
  return say.plan.portion({
    name: portionCalled(name),
    volume: say.plan.volume(volumeOf(portion.millilitres, view)),
  });
}

/** One portion: how much batter, each colour with its liquid, and what it is like inside. */
export function portionSection(view: PlanView, at: number): Section {
  const { answer, say } = view;
  const portion = answer.portions[at]!;
  const { plan } = say;
  const scent =
    portion.fragranceGrams > 0
      ? [plan.scent({ grams: weightIn(view)(portion.fragranceGrams) })]
      : view.read.request.fragrance
        ? [plan.unscented]
        : [];
  const inside = plan.inside({ superfat: portion.superfat, lye: portion.lyeConcentration });
  return {
    title: portionTitle(view, at),
    rows: [
      ...portion.doses.map((dose, which) => doseRow(view, dose, { at, which })),
      [...(portion.doses.length === 0 ? [plan.noColour] : []), ...scent, inside].join('; '),
    ].map(plan.capital),
  };
}

/** `1/2 tsp ultramarine blue, about 1.3 g, in 1 Tbsp Olive oil; whisk it in`. */
function doseRow({ say, read }: PlanView, dose: Dose, { at, which }: { at: number; which: number }): string {
  const { plan } = say;
  // Batter that no portion asked for is a portion of its own, without colours.
  const { asked, carrier } = read.request.portions[at]!.colours[which]!;
  const colour = nameOf(asked.colourant, say);
  const dipped = carrier?.dipped === true;
  const oil = carrier?.oil && midSentence(carrier.oil.names[say.language]);
  const liquid = plan.liquid({
    spoons: say.quantities.measure(dose.carrier.spoons),
    liquid: oil ?? (dipped ? plan.dippedOil : say.dispersion.carriers[dose.carrier.choice]),
    dipped,
  });
  const wetted = dose.premix === undefined && dose.carrier.millilitres > 0;
  const row = plan.dose({
    spoons: spoonsOf(dose, say),
    colour,
    grams: plan.figure(rough((dose.premix?.grams ?? dose.grams).typical), 3),
    liquid: wetted ? liquid : undefined,
  });
  return `${row}; ${plan.blend[dose.carrier.blend]}`;
}
