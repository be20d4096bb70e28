import type { Context } from '../../src/conversation/context.ts';
import { additiveById } from '../../src/engine/batch/additives/additives.ts';
import { cureDays } from '../../src/engine/batch/curing/cure-time.ts';
import type { MadeColour, MadePortion } from '../../src/engine/batch/made/made.ts';
import { type PortionTold, portionsMade } from '../../src/engine/batch/made/portions-made.ts';
import { planNumbers } from '../../src/engine/batch/planning/plan.ts';
import type { PlanAnswer } from '../../src/engine/batch/planning/plan-answer.ts';
import { kohShareOf, saltPercentOf } from '../../src/engine/batch/recipe.ts';
import { barGrams, pigmentIn, pigmentPerTeaspoon } from '../../src/engine/colour/jars/jar-spoons.ts';
import { type ShadeShare, shadeOfOil } from '../../src/engine/colour/mixing/base-soap.ts';
import { parseBase, USUAL_BASE } from '../../src/engine/colour/reading/base-text.ts';
import { colourantsNamed } from '../../src/engine/colourants/find.ts';
import { usualStrength } from '../../src/engine/dosing/amount-in-portion.ts';
import type { Dose } from '../../src/engine/dosing/request.ts';
import type { ToldStrength } from '../../src/engine/quantities/strength.ts';
import type { Measures } from '../../src/engine/quantities/units.ts';
import { fold } from '../../src/engine/text/fold.ts';
import { knownAs, spooned } from '../../src/presenting/colour/jars.ts';
import { kitchenOf, preferencesOf } from '../../src/records/preferences.ts';
import type { KeptPlan } from '../../src/records/recipes/index.ts';
import { readKept } from '../../src/records/recipes/kept-plan.ts';
import { listShelf } from '../../src/records/shelf/index.ts';
import { findJar, type Jar } from '../../src/records/shelf/jars/jar.ts';
import type { Words } from '../../src/words/index.ts';

/** A colour with the jar it came from. */
export type JarColour = MadeColour & { readonly jar: Jar };

/** A batch before its changes: what went in, and what its dates and colours hang on. */
export type Planned = {
  readonly portions: readonly (MadePortion<JarColour> & { readonly millilitres: number })[];
  readonly plan: KeptPlan | undefined;
  readonly shades: readonly ShadeShare[];
  readonly gelled: boolean;
  readonly peak: { readonly hours: number; readonly celsius: number } | undefined;
  readonly cure: { readonly low: number; readonly typical: number; readonly high: number };
  readonly lyeConcentration: number;
  readonly kohShare: number;
  readonly saltPercent: number;
  readonly isLoaf: boolean;
};

/** Warming that is worth looking at, K. */
const FELT_WARMING = 3;
/** What is taken where nobody said what lye it was: 33 % (common practice). */
const USUAL_LYE = 33;

/**
 * What a plan makes: as it stands on paper, or with its colours `asSaid`, under no ceiling and in no rounded spoons, where
 * the words are of what was poured. Throws the Refusals of `readKept` and `planBatch`.
 */
export async function plannedBy(
  plan: KeptPlan,
  context: Context,
  { asSaid = false }: { readonly asSaid?: boolean } = {},
): Promise<Planned> {
  const { store, asker, shelf, workers, say } = context;
  const measures = kitchenOf(await preferencesOf(store, asker.id));
  const read = await readKept(plan, shelf, measures);
  planNumbers(read.request);
  const answer = await workers.run('planBatch', read.request, { owner: asker.id });
  const { shares } = read.request.oils;
  const oilGrams = answer.oils.reduce((sum, { grams }) => sum + grams, 0);
  const { heat, water } = answer;
  const kohShare = kohShareOf({ lye: answer.lye.parts });
  const { size } = read.request;
  return {
    portions: answer.portions.map(({ name, grams, millilitres, doses }, at) => ({
      name,
      grams,
      millilitres,
      colours: doses.map((dose, which) => {
        const jar = read.jars[at]![which]!;
        if (!asSaid) return fromDose(dose, jar, grams, say);
        const { strength } = read.request.portions[at]!.colours[which]!.asked;
        const said = strength.by === 'usual' ? usualOf(jar.colourant) : strength;
        return colourSaid(jar, said, { grams, measures, say });
      }),
    })),
    plan: { ...plan, colours: read.colours },
    shades: shares.map(({ oil, share }) => ({ shade: shadeOfOil(oil), share })),
    gelled: heat.gel.full >= 0.5,
    peak:
      heat.peakCoreC - read.request.heat.startC < FELT_WARMING
        ? undefined
        : { hours: heat.peakHours, celsius: heat.peakCoreC },
    cure: cureDays({
      oils: shares.map(({ oil, share }) => ({ oil, grams: share * oilGrams })),
      lyeConcentration: water.lyeConcentration,
      kohShare,
    }),
    lyeConcentration: water.lyeConcentration,
    kohShare,
    saltPercent: saltPercentIn(answer, oilGrams),
    isLoaf: !(size.by === 'mould' && size.mould.shape === 'cavities'),
  };
}

const saltPercentIn = ({ additives }: PlanAnswer, oilGrams: number): number =>
  saltPercentOf({
    oilGrams,
    additives: additives.map(({ id, grams }) => ({ additive: additiveById(id), grams })) as never,
  });

/** What a plan says of a dose, by its grams: what its buttons take off the shelf, the book counts as well. */
function fromDose(dose: Dose, jar: Jar, batterGrams: number, say: Words): JarColour {
  const { premix, spoons: practical, grams } = dose;
  return {
    jar,
    name: knownAs(jar, say),
    colourant: jar.colourant.id,
    teaspoons: premix ? premix.teaspoons : practical.teaspoons,
    grams: premix ? premix.grams.typical : grams.typical,
    pigment: (100 * grams.typical) / batterGrams,
  };
}

const usualOf = (colourant: Jar['colourant']): ToldStrength => ({
  by: 'name',
  name: usualStrength(colourant),
});

/** A colour as its maker says that it went into so many grams of batter. */
function colourSaid(
  jar: Jar,
  dose: ToldStrength,
  { grams, measures, say }: { readonly grams: number; readonly measures: Measures; readonly say: Words },
): JarColour {
  const spoon = spooned(jar, measures);
  const pigment =
    dose.by === 'amount'
      ? (100 * pigmentIn(dose.amount, spoon, measures)) / grams
      : barGrams(dose, spoon, measures);
  const pigmentGrams = (pigment * grams) / 100;
  return {
    jar,
    name: knownAs(jar, say),
    colourant: jar.colourant.id,
    teaspoons: pigmentGrams / pigmentPerTeaspoon(spoon, measures),
    grams: pigmentGrams / (spoon.pigmentFraction ?? 1),
    pigment,
  };
}

/**
 * What was made, told without a plan (`portionsMade`). Nothing is held under a ceiling: it was made. Throws the Refusals of
 * `portionsMade` and those of jars.
 */
export async function plannedInWords(
  text: string,
  base: string | undefined,
  context: Context,
): Promise<Planned> {
  const { store, asker, shelf } = context;
  const measures = kitchenOf(await preferencesOf(store, asker.id));
  const own = new Set((await listShelf(shelf)).map(({ name }) => fold(name)));
  const isName = (one: string) => own.has(fold(one)) || colourantsNamed(one).length > 0;
  const told = portionsMade(text, { measures, isName });
  return {
    portions: await Promise.all(told.map(portion => withJars(portion, measures, context))),
    plan: undefined,
    shades: (base === undefined ? USUAL_BASE : parseBase(base)).shades,
    gelled: false,
    peak: undefined,
    cure: cureDays({ oils: [], lyeConcentration: USUAL_LYE, kohShare: 0 }),
    lyeConcentration: USUAL_LYE,
    kohShare: 0,
    saltPercent: 0,
    isLoaf: true,
  };
}

async function withJars(
  { name, grams, millilitres, parts }: PortionTold,
  measures: Measures,
  { shelf, say }: Pick<Context, 'shelf' | 'say'>,
): Promise<Planned['portions'][number]> {
  const colours = await Promise.all(
    parts.map(async part => colourSaid(await findJar(shelf, part.name), part.dose, { grams, measures, say })),
  );
  const called = name ?? (colours.map(one => one.name).join(' + ') || 'plain');
  return { name: called, grams, millilitres, colours };
}
