import type { Context } from '../../src/conversation/context.ts';
import type { Reply } from '../../src/conversation/reply.ts';
import type { BarPlanAsk, PlannedJar } from '../../src/engine/colour/calibration/test-bars/plan-bars.ts';
import { ceilingPerCup, pigmentPerTeaspoon } from '../../src/engine/colour/jars/jar-spoons.ts';
import { parseBase, USUAL_BASE } from '../../src/engine/colour/reading/base-text.ts';
import { colourantById } from '../../src/engine/colourants/catalogue.ts';
import { TYPICAL_BATTER } from '../../src/engine/dispersion/batter.ts';
import { portionMillilitres } from '../../src/engine/dosing/portion.ts';
import { parsePortion } from '../../src/engine/quantities/told/portion.ts';
import { saidAmount } from '../../src/engine/quantities/told/said-amount.ts';
import { type Measures, US_CUP_ML } from '../../src/engine/quantities/units.ts';
import { refuse } from '../../src/engine/refusal.ts';
import { excerpt } from '../../src/engine/text/excerpt.ts';
import { namesApart } from '../../src/engine/text/names/names-apart.ts';
import { LYE_RISK } from '../../src/presenting/colour/candidates.ts';
import { colourJar, spooned } from '../../src/presenting/colour/jars.ts';
import { doseCautions } from '../../src/presenting/dose.ts';
import { kitchenOf, preferencesOf } from '../../src/records/preferences.ts';
import { findItem, listShelf } from '../../src/records/shelf/index.ts';
import { calibrationOf } from '../../src/records/shelf/jars/calibration.ts';
import { type Jar, jarOf } from '../../src/records/shelf/jars/jar.ts';
import {
  type BarPlanView,
  barPlanBlocks,
  barPlanData,
  barPlanHeadline,
  labelSheet,
} from './bar-plan-view.ts';

declare module '../../src/engine/refusal.ts' {
  interface Reasons {
    'plan-bars-without-jars': Record<never, never>;
    'plan-bars-too-many': { readonly most: number };
    'plan-bars-portion': { readonly text: string };
  }
}

export type BarPlanAsked = {
  readonly jars?: string | undefined;
  readonly portion?: string | undefined;
  readonly within?: number | undefined;
  readonly mixes?: boolean | undefined;
  readonly base?: string | undefined;
  readonly gel?: boolean | undefined;
};

/** More are another afternoon, and take longer to work out than anybody waits. */
const MOST_JARS = 6;
const MOST_BARS = 16;
/** Known well enough unless asked otherwise (CIEDE2000): about as near as two bars a jar bring it. */
const USUAL_WITHIN = 5;
/** Error of a colour that was typed after looking or read beside white paper, CIEDE2000 (from memory). */
const READING = 3;
/** A smaller bar is all rim, a larger one is no test; ml. */
const PORTION = { least: 25, most: 1000 } as const;

/** Which test bars to pour, in spoons, and the labels for them. */
export async function barPlanReply(asked: BarPlanAsked, context: Context): Promise<Reply> {
  const { store, asker, workers, say } = context;
  const owner = { owner: asker.id };
  const measures = kitchenOf(await preferencesOf(store, asker.id));
  const typed = asked.portion?.trim() ?? say.testBars.usualPortion;
  const written = say.quantities.said(saidAmount(typed));
  const millilitres = portionMillilitres(parsePortion(typed, measures), TYPICAL_BATTER);
  if (millilitres < PORTION.least || millilitres > PORTION.most)
    refuse('plan-bars-portion', { text: excerpt(typed) });
  const base = asked.base === undefined ? USUAL_BASE : parseBase(asked.base);
  const { jars, leftOut } = await jarsOf(asked.jars, context);
  const planned = await Promise.all(jars.map(jar => plannedJar(jar, measures, context)));
  const ask: BarPlanAsk = {
    jars: planned,
    shades: base.shades,
    gelled: asked.gel ?? false,
    owned: measures.owned,
    portion: { cups: millilitres / US_CUP_ML, grams: millilitres * TYPICAL_BATTER.gramsPerMillilitre },
    reading: READING,
    within: asked.within ?? USUAL_WITHIN,
    mixes: asked.mixes ?? false,
    mostBars: MOST_BARS,
  };
  const plan = await workers.run('planBars', ask, owner);
  const other =
    jars.length > 1 ? await workers.run('planBars', { ...ask, mixes: !ask.mixes }, owner) : undefined;
  const view: BarPlanView = {
    ask,
    plan,
    other,
    jars,
    leftOut,
    portion: { written, millilitres },
    measures,
    say,
  };
  const { sheet, alt } = labelSheet(view);
  const png = plan.bars.length > 0 ? [await workers.run('labelSheet', sheet, owner)] : [];
  return {
    kind: 'reply',
    headline: barPlanHeadline(view),
    data: barPlanData(view),
    blocks: barPlanBlocks(
      view,
      png.map(bytes => ({ kind: 'picture', name: 'labels.png', png: bytes, alt })),
    ),
    cautions:
      plan.bars.length > 0
        ? doseCautions(
            [
              { id: 'raw-batter', values: {} },
              { id: 'dust', values: {} },
            ],
            say,
          )
        : [],
  };
}

/** The jars that were named, else those of the shelf that no test bar told of yet. */
async function jarsOf(
  named: string | undefined,
  { shelf }: Context,
): Promise<{ readonly jars: readonly Jar[]; readonly leftOut: readonly string[] }> {
  if (named !== undefined) {
    const names = namesApart(named, { plus: true });
    if (names.length > MOST_JARS) refuse('plan-bars-too-many', { most: MOST_JARS });
    const items = await Promise.all(names.map(name => findItem(shelf, name)));
    const once = items.filter((item, at) => items.findIndex(({ id }) => id === item.id) === at);
    if (once.length === 0) refuse('plan-bars-without-jars', {});
    return { jars: once.map(jarOf), leftOut: [] };
  }
  const jars = (await listShelf(shelf))
    .filter(({ colourant }) => colourant !== undefined && colourantById(colourant))
    .filter(item => calibrationOf(item) === undefined)
    .map(jarOf)
    .filter(({ colourant }) => LYE_RISK[colourant.alkali.behaviour] < 1);
  if (jars.length === 0) refuse('plan-bars-without-jars', {});
  const leftOut = jars.slice(MOST_JARS).map(({ item }) => item!.name);
  return { jars: jars.slice(0, MOST_JARS), leftOut };
}

async function plannedJar(jar: Jar, measures: Measures, context: Context): Promise<PlannedJar> {
  const spoon = spooned(jar, measures);
  const ceilingTspPerCup = ceilingPerCup(spoon, measures);
  const { dose } = jar.colourant;
  return {
    id: jar.item!.id,
    jar: await colourJar(jar, context),
    gramsPerTeaspoon: pigmentPerTeaspoon(spoon, measures),
    fullTspPerCup: (ceilingTspPerCup * dose.fullTspPerCup) / dose.ceilingTspPerCup,
    ceilingTspPerCup,
  };
}
