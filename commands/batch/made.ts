import type { Context } from '../../src/conversation/context.ts';
import { additiveById } from '../../src/engine/batch/additives/additives.ts';
import { cureDays } from '../../src/engine/batch/curing/cure-time.ts';
import type { MadeColour, MadePortion } from '../../src/engine/batch/made/made.ts';
import { planNumbers } from '../../src/engine/batch/planning/plan.ts';
import type { PlanAnswer } from '../../src/engine/batch/planning/plan-answer.ts';
import { kohShareOf, saltPercentOf } from '../../src/engine/batch/recipe.ts';
import { barGrams, pigmentIn, pigmentPerTeaspoon } from '../../src/engine/colour/jars/jar-spoons.ts';
import { type ShadeShare, shadeOfOil } from '../../src/engine/colour/mixing/base-soap.ts';
import { parseBase, USUAL_BASE } from '../../src/engine/colour/reading/base-text.ts';
import { parseMix } from '../../src/engine/colour/reading/mix-text.ts';
import { colourantsNamed } from '../../src/engine/colourants/find.ts';
import { TYPICAL_BATTER } from '../../src/engine/dispersion/batter.ts';
import { usualStrength } from '../../src/engine/dosing/amount-in-portion.ts';
import type { Dose } from '../../src/engine/dosing/request.ts';
import { excerpt } from '../../src/engine/quantities/excerpt.ts';
import type { ToldStrength } from '../../src/engine/quantities/strength.ts';
import type { Measures } from '../../src/engine/quantities/units.ts';
import { Refusal, refuse } from '../../src/engine/refusal.ts';
import { leadingBatter, tailNamed } from '../../src/engine/text/amounts/leading-amount.ts';
import { fold } from '../../src/engine/text/fold.ts';
import { knownAs, spooned } from '../../src/presenting/colour/jars.ts';
import { kitchenOf, preferencesOf } from '../../src/records/preferences.ts';
import type { KeptPlan } from '../../src/records/recipes/index.ts';
import { readKept } from '../../src/records/recipes/kept-plan.ts';
import { listShelf } from '../../src/records/shelf/index.ts';
import { findJar, type Jar } from '../../src/records/shelf/jars/jar.ts';
import type { Words } from '../../src/words/index.ts';

declare module '../../src/engine/refusal.ts' {
  interface Reasons {
    'batch-portion-unsized': { readonly text: string };
    'batch-portions-many': { readonly most: number };
  }
}

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
const MOST_PORTIONS = 12;
const PLAIN = /^(?:plain|uncolou?red|natural|no colou?r|none|sin color|sin colorear)$/iu;

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
 * What was made, told without a plan: portions apart by `;`, each its batter and its mix, as in `2 cups violet 1/2 tsp +
 * gold mica pastel; 1 cup plain`. Nothing is held under a ceiling: it was made. Throws a Refusal: `batch-portion-unsized`,
 * `batch-portions-many`, or one of the mixes' and jars' own.
 */
export async function plannedInWords(
  text: string,
  base: string | undefined,
  context: Context,
): Promise<Planned> {
  const { store, asker, shelf, say } = context;
  const measures = kitchenOf(await preferencesOf(store, asker.id));
  const own = new Set((await listShelf(shelf)).map(({ name }) => fold(name)));
  const pieces = text.split(/\s*[;\n]\s*/u).filter(piece => piece !== '');
  if (pieces.length > MOST_PORTIONS) refuse('batch-portions-many', { most: MOST_PORTIONS });
  if (pieces.length === 0) refuse('batch-portion-unsized', { text: excerpt(text) });
  const isName = (one: string) => own.has(fold(one)) || colourantsNamed(one).length > 0;
  const portions = await Promise.all(
    pieces.map(piece => portionInWords(piece, { measures, isName }, { shelf, say })),
  );
  return {
    portions,
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

/** Whether the first colour of a mix is called so. */
function isCalled(
  mix: string,
  { measures, isName }: { measures: Measures; isName: (text: string) => boolean },
): boolean {
  try {
    return isName(parseMix(mix, measures, isName)[0]?.name ?? '');
  } catch (refusal) {
    if (refusal instanceof Refusal) return false;
    throw refusal;
  }
}

async function portionInWords(
  piece: string,
  { measures, isName }: { measures: Measures; isName: (text: string) => boolean },
  { shelf, say }: Pick<Context, 'shelf' | 'say'>,
): Promise<Planned['portions'][number]> {
  const label = /^(\p{L}[\p{L}\p{N} '-]{0,30}):\s*(.+)$/u.exec(piece);
  const head = leadingBatter(label?.[2] ?? piece, measures);
  if (!head) return refuse('batch-portion-unsized', { text: excerpt(piece) });
  const { amount } = head;
  const density = TYPICAL_BATTER.gramsPerMillilitre;
  const grams = amount.measure === 'mass' ? amount.grams : amount.millilitres * density;
  if (grams < 1) refuse('batch-portion-unsized', { text: excerpt(piece) });
  const mix =
    tailNamed(piece, head.rest, tail => isCalled(tail, { measures, isName })) ??
    head.rest.replace(/^(?:(?:of|de)\s+|:\s*)/iu, '').trim();
  const parts = mix === '' || PLAIN.test(mix) ? [] : parseMix(mix, measures, isName);
  const colours = await Promise.all(
    parts.map(async ({ name, dose }) =>
      colourSaid(await findJar(shelf, name), dose, { grams, measures, say }),
    ),
  );
  const name = label?.[1] ?? (colours.map(one => one.name).join(' + ') || 'plain');
  return { name, grams, millilitres: grams / density, colours };
}
