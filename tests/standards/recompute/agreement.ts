import { additiveById } from '../../../src/engine/batch/additives/additives.ts';
import { findOil, oilById } from '../../../src/engine/batch/oils/find-oil.ts';
import type { PlanNumbers } from '../../../src/engine/batch/planning/plan.ts';
import { colourantById } from '../../../src/engine/colourants/catalogue.ts';
import type { BatchRequest, LyeKind, OilAmount } from './recompute.ts';
import * as again from './recompute.ts';

/** Within a tenth of a gram or a tenth of a percent, whichever is more. */
const near = (one: number, other: number): boolean =>
  Math.abs(one - other) <= Math.max(0.1, 0.001 * Math.abs(other)) + 1e-9;
/** Percents, ratios of like things: superfat, strength. */
const nearPercent = (one: number, other: number, within = 0.1): boolean => Math.abs(one - other) <= within;

/** Liquids of ours under the names of the other tables. */
const LIQUID_NAMES: Readonly<Record<string, string>> = {
  milk: 'cow milk',
  'goat-milk': 'goat milk',
  'coconut-milk': 'coconut milk',
  'aloe-juice': 'aloe juice',
  'lemon-juice': 'lemon juice',
};
const rowOf = (id: string) => again.liquidRow(LIQUID_NAMES[id] ?? id);

/** Level teaspoons a US cup that are the most of each kind: the trade's own table (common practice). */
const MOST_TSP_PER_CUP: Readonly<Record<string, number>> = {
  oxide: 0.5,
  ultramarine: 0.5,
  chromium: 0.5,
  mica: 1,
  white: 1,
  neon: 0.5,
};

/** One number of a plan against the same number worked out again. */
type Disagreement = { readonly what: string; readonly plan: number; readonly again: number };

/** All that the recomputation starts from: the request, and the masses that the plan tells its maker to weigh. */
type Case = { readonly q: BatchRequest; readonly plan: PlanNumbers };

const kindOf = ({ lye }: BatchRequest): LyeKind =>
  typeof lye === 'object' ? { ...lye, meaning: 'oils' } : lye;
/** One purity is written for both. */
const purityOf = (q: BatchRequest) => (q.lye === 'koh' ? q.purityPercent.koh : q.purityPercent.naoh);
const sapOf = (id: string) => oilById(id).saponification.typical;
const oilsOf = ({ q }: Case): OilAmount[] =>
  q.oils.map(({ name, grams }) => ({ grams, sapKohMgPerG: sapOf(findOil(name).id) }));
/** Bare citric acid is counted as the monohydrate here, as the anhydrous one there. */
const ADDITIVE_NAMES: Readonly<Record<string, string>> = {
  'citric-acid': 'citric acid monohydrate',
  'citric-anhydrous': 'citric acid',
};
const additiveName = (id: string) => ADDITIVE_NAMES[id] ?? id.replaceAll('-', ' ');

/** Alkali that the acids use up, g of KOH: what each liquid and additive holds is from the other tables. */
function acidKoh(c: Case): number {
  return c.plan.additives.reduce((sum, { id, grams }) => {
    const acid = (rowOf(id) ?? again.additiveRow(additiveName(id)))?.acid;
    if (acid) return sum + again.acidKohGrams(acid.acid, grams * acid.gramsPerGram);
    // A row that the other tables lack: the plan's own moles, 56.106 g/mol.
    const known = rowOf(id) !== undefined || again.additiveRow(additiveName(id)) !== undefined;
    const moles = known ? 0 : additiveById(id).acid * grams;
    return sum + moles * again.KOH_MOLAR_MASS;
  }, 0);
}

const fatsOf = (c: Case): OilAmount[] =>
  c.plan.jug.liquids.flatMap(({ id, grams }) => {
    const row = rowOf(id);
    return row && row.fatFraction > 0 ? [{ grams: grams * row.fatFraction, sapKohMgPerG: row.fatSap }] : [];
  });

const weighed = ({ plan }: Case, of: 'grams' | 'exactGrams'): again.LyeGrams => {
  const gramsOf = (alkali: 'NaOH' | 'KOH') => plan.lye.parts.find(part => part.alkali === alkali)?.[of] ?? 0;
  return { naohGrams: gramsOf('NaOH'), kohGrams: gramsOf('KOH') };
};
const inAll = ({ naohGrams, kohGrams }: again.LyeGrams) => naohGrams + kohGrams;

/** Every number that can hurt, worked out again; an empty list is agreement. */
export function disagreements(q: BatchRequest, plan: PlanNumbers): readonly Disagreement[] {
  const c = { q, plan };
  return [...lye(c), ...water(c), ...jug(c), ...superfat(c), ...portions(c)];
}

type Check = readonly [agrees: boolean, what: string, plan: number, again: number];
const wrong = (checks: readonly Check[]): readonly Disagreement[] =>
  checks.flatMap(([agrees, what, ofPlan, other]) => (agrees ? [] : [{ what, plan: ofPlan, again: other }]));

function lye(c: Case): readonly Disagreement[] {
  const { q, plan } = c;
  const purityPercent = purityOf(q);
  const forOils = again.lyeFor({
    oils: oilsOf(c),
    superfatPercent: q.superfatPercent,
    kind: kindOf(q),
    purityPercent,
  });
  const forAcids = again.lyeForKohEquivalent(acidKoh(c), kindOf(q), purityPercent);
  const wanted = {
    naohGrams: forOils.naohGrams + forAcids.naohGrams,
    kohGrams: forOils.kohGrams + forAcids.kohGrams,
  };
  const [exact, grams] = [weighed(c, 'exactGrams'), weighed(c, 'grams')];
  return wrong([
    [near(exact.naohGrams, wanted.naohGrams), 'NaOH', exact.naohGrams, wanted.naohGrams],
    [near(exact.kohGrams, wanted.kohGrams), 'KOH', exact.kohGrams, wanted.kohGrams],
    [inAll(grams) <= inAll(exact) + 1e-9, 'lye rounded up', inAll(grams), inAll(exact)],
    [inAll(grams) > inAll(exact) - 0.21, 'lye rounded by more than the scale', inAll(grams), inAll(exact)],
    [near(plan.lye.grams, inAll(grams)), 'lye in all', plan.lye.grams, inAll(grams)],
  ]);
}

/** Water in what is neither a liquid in the place of water nor a colour's carrier. */
const otherWater = ({ plan }: Case) =>
  plan.additives.reduce((sum, { id, grams }) => {
    const row = rowOf(id) === undefined ? again.additiveRow(additiveName(id)) : undefined;
    return sum + grams * (id === 'oatmeal' ? 0 : (row?.waterFraction ?? 0));
  }, 0);

function water(c: Case): readonly Disagreement[] {
  const { q, plan } = c;
  const oils = q.oils.reduce((sum, { grams }) => sum + grams, 0);
  const wanted = again.waterFor(q.water, inAll(weighed(c, 'exactGrams')), oils);
  const { jug: its, water: told } = plan;
  const inLiquids = its.liquids.reduce((sum, { waterGrams }) => sum + waterGrams, 0);
  const solution = its.solution?.waterGrams ?? 0;
  const real = its.waterGrams + its.heldBackGrams + inLiquids + solution + otherWater(c);
  // Honey and the like take off plain water, where there is any and only what the lye can spare; the plan says so.
  const over = real - wanted;
  const spared = its.waterInJugGrams + its.heldBackGrams - plan.lye.grams;
  const agrees =
    near(real, wanted) || (over > 0 && over <= otherWater(c) + 0.1 && (spared < 0.2 || told.grams < 0.1));
  return wrong([
    [agrees, 'all water', real, wanted],
    [
      near(told.grams, its.waterGrams + its.heldBackGrams),
      'plain water',
      told.grams,
      its.waterGrams + its.heldBackGrams,
    ],
  ]);
}

function jug(c: Case): readonly Disagreement[] {
  const { q, plan } = c;
  const its = plan.jug;
  const held = again.jug({
    lyeGrams: inAll(weighed(c, 'grams')),
    plainWaterGrams: its.waterGrams + its.heldBackGrams + (its.solution?.waterGrams ?? 0),
    otherLiquids: its.liquids
      .filter(({ into }) => into === 'jug')
      .map(({ id, grams }) => ({ grams, waterFraction: additiveById(id).water })),
    waterHeldBackGrams: its.heldBackGrams,
  });
  const asked = its.liquids.reduce((sum, one) => sum + one.grams, 0);
  const byGrams = q.liquids.every(({ grams }) => grams !== null)
    ? q.liquids.reduce((sum, { grams }) => sum + (grams ?? 0), 0)
    : asked;
  const ofSolution =
    its.solution &&
    again.masterbatch({
      lyeGrams: plan.lye.grams,
      waterGrams: its.waterGrams + its.heldBackGrams + its.solution.waterGrams,
      solutionPercent: q.masterbatchPercent ?? 0,
    });
  return wrong([
    [again.strengthAllowed(held.strengthPercent), 'jug over 50 %', its.strength, held.strengthPercent],
    [nearPercent(its.strength, held.strengthPercent), 'jug strength', its.strength, held.strengthPercent],
    [
      nearPercent(plan.water.jugConcentration, held.strengthPercent),
      'jug told',
      plan.water.jugConcentration,
      held.strengthPercent,
    ],
    [near(asked, byGrams), 'liquids', asked, byGrams],
    [
      (q.masterbatchPercent === null) === (its.solution === undefined),
      'masterbatch',
      its.solution?.percent ?? 0,
      q.masterbatchPercent ?? 0,
    ],
    ...(its.solution && ofSolution?.ok
      ? ([
          [
            near(its.solution.grams, ofSolution.solutionGrams),
            'solution',
            its.solution.grams,
            ofSolution.solutionGrams,
          ],
          [
            near(its.waterGrams + its.heldBackGrams, ofSolution.additionalWaterGrams),
            'water to add',
            its.waterGrams,
            ofSolution.additionalWaterGrams,
          ],
        ] as const)
      : []),
  ]);
}

/** Oil that the colours of a portion bring, by the millilitres that the plan tells. */
function addedOils(q: BatchRequest, plan: PlanNumbers, at: number): OilAmount[] {
  const named = q.portions[at]?.carrierOil ?? null;
  return plan.portions[at]!.doses.flatMap(({ carrier }) => {
    if (carrier.choice !== 'oil') return [];
    const name = named ?? 'sunflower oil';
    const row = again.sapRow(name)!;
    const density = again.oilDensityAt(row.densityGPerMl, row.densityAtC, 20);
    return [{ grams: carrier.millilitres * density, sapKohMgPerG: sapOf(findOil(name).id) }];
  });
}

function superfat(c: Case): readonly Disagreement[] {
  const { q, plan } = c;
  const oils = [...oilsOf(c), ...fatsOf(c), ...plan.portions.flatMap((_, at) => addedOils(q, plan, at))];
  const alkaliKohGrams = again.kohEquivalentGrams(weighed(c, 'grams'), purityOf(q));
  const other = again.superfatPercentOf({ alkaliKohGrams, acidKohGrams: acidKoh(c), oils });
  // The two tables take milk fat at 226.5 and 228.8 mg KOH a gram, both inside the 218 to 235 of dairy standards.
  const within = fatsOf(c).length > 0 ? 0.2 : 0.1;
  return wrong([
    [nearPercent(plan.superfat.effective, other, within), 'superfat', plan.superfat.effective, other],
    [other > -0.05, 'free lye', plan.superfat.effective, other],
  ]);
}

function portions(c: Case): readonly Disagreement[] {
  const { q, plan } = c;
  const alkaliKohGrams = again.kohEquivalentGrams(weighed(c, 'grams'), purityOf(q));
  return q.portions.flatMap(({ share }, at) => {
    const portion = plan.portions[at]!;
    if (portion.doses.some(({ carrier }) => carrier.choice === 'oil') && share < 1e-6) return [];
    const other = again.portionSuperfatPercent({
      share,
      alkaliKohGrams,
      acidKohGrams: acidKoh(c),
      batchOils: [...oilsOf(c), ...fatsOf(c)],
      addedOils: addedOils(q, plan, at),
    });
    const ofBatter = portion.millilitres / plan.batter.millilitres;
    return wrong([
      [Math.abs(ofBatter - share) < 1e-6, `share of portion ${at}`, ofBatter, share],
      [nearPercent(portion.superfat, other, 0.15), `superfat of portion ${at}`, portion.superfat, other],
      ...doses(plan, at),
    ]);
  });
}

/** Spoons over their ceiling, counted together, and each colour's mass against what the law allows of it. */
function doses(plan: PlanNumbers, at: number): readonly Check[] {
  const portion = plan.portions[at]!;
  const use = again.colourantUse({
    volumeMl: portion.millilitres,
    doses: portion.doses.map(({ colourant, teaspoons }) => ({
      tsp: teaspoons,
      ceilingTspPerCup:
        MOST_TSP_PER_CUP[colourant.kind] ?? colourantById(colourant.id)!.dose.ceilingTspPerCup,
    })),
  });
  return [
    [use.total <= 1 + 1e-6, `dose over ceiling in portion ${at}`, use.total, 1],
    ...portion.doses.map(({ colourant, grams }): Check => {
      const percent = overLaw(colourantById(colourant.id)!.ci, grams.typical, portion.grams);
      return [percent <= 1 + 1e-9, `dose over the law in portion ${at}`, percent, 1];
    }),
  ];
}

/** The largest share of a legal limit that so many grams in so much soap use up; 0 where no limit has a figure. */
export function overLaw(ci: readonly string[], pigmentGrams: number, soapGrams: number): number {
  const limits = again.LEGAL_COLOUR_LIMITS.filter(
    ({ colourIndex, limitPercent }) =>
      limitPercent !== null && ci.some(one => colourIndex.includes(one.replace(/\D/gu, ''))),
  );
  return limits.reduce((most, { limitPercent }) => {
    const { useOfLimit } = again.legalMassUse({ pigmentGrams, soapGrams, limitPercent: limitPercent! });
    return Math.max(most, useOfLimit);
  }, 0);
}
