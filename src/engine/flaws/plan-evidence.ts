import type { AdditiveId } from '../batch/additives/additive.ts';
import { additiveById } from '../batch/additives/additives.ts';
import { oilById } from '../batch/oils/find-oil.ts';
import type { FattyAcid, Profile } from '../batch/oils/oil.ts';
import type { PlanAnswer } from '../batch/planning/plan-answer.ts';
import { colourantById } from '../colourants/catalogue.ts';
import type { ColourantKind } from '../colourants/colourant.ts';
import { US_CUP_ML } from '../quantities/units.ts';
import type { BatchNumbers, ColourRate } from './batch-numbers.ts';
import type { Evidence } from './diagnosis.ts';
import type { FindingId } from './findings.ts';

/** What a plan tells of a batch made by it: evidence for the causes, and numbers for the remedies. */
export type PlanEvidence = { readonly evidence: readonly Evidence[]; readonly numbers: BatchNumbers };

/** A plan is what was meant; hands differ. */
const YES = 0.93;
const NO = 0.05;
/** An estimate is never surer than this, either way. */
const ESTIMATED = 0.85;
/** An estimate this near to one half says nothing. */
const UNDECIDED = 0.2;
/** Limits of common practice: the same that numbers in the words are held against. */
const MUCH_WATER_STRENGTH = 29;
const LITTLE_WATER_STRENGTH = 32;
const MUCH_CARRIER_ML_PER_CUP = 20;
/** Percent of saturated fatty acids from which a bar sets very hard. Estimate. */
const HARD_FROM = 55;

const SATURATED: readonly FattyAcid[] = ['C12:0', 'C14:0', 'C16:0', 'C18:0', 'C20:0', 'C22:0'];

const OF_KIND: Readonly<Partial<Record<ColourantKind, FindingId>>> = {
  oxide: 'colour-oxide',
  ultramarine: 'colour-oxide',
  chromium: 'colour-oxide',
  mica: 'colour-mica',
  neon: 'colour-neon',
  lake: 'colour-lake',
  dye: 'colour-dye',
  botanical: 'colour-botanical',
};

/** Reads what a planned batch says of how it was made. The findings are the engine's own, each with its chance. */
export function planEvidence(plan: PlanAnswer): PlanEvidence {
  const numbers = numbersOf(plan);
  const told = new Map<FindingId, number>([...settings(plan), ...colours(plan, numbers), ...heatOf(plan)]);
  return {
    evidence: [...told].map(([finding, probability]) => ({
      finding,
      probability,
      via: 'plan',
      from: 'plan',
    })),
    numbers,
  };
}

type Findings = readonly (readonly [FindingId, number])[];

const either = (finding: FindingId, there: boolean): Findings => [[finding, there ? YES : NO]];

function settings({ water, superfat, oils, additives, fragrance }: PlanAnswer): Findings {
  const strength = water.ways.lyeStrength;
  const sweet = additives.some(({ id }) => {
    const { sugar, fat } = additiveById(id as AdditiveId);
    return sugar > 0 || fat !== undefined;
  });
  return [
    ...(strength <= MUCH_WATER_STRENGTH ? either('much-water', true) : []),
    ...(strength >= LITTLE_WATER_STRENGTH ? either('much-water', false) : []),
    ...either('low-superfat', superfat.effective <= 2),
    ...either('high-superfat', superfat.effective >= 10),
    ...either('hard-oils', saturatedPercent(oils) >= HARD_FROM),
    ...either('yellow-oils', yellowShare(oils) >= 0.3),
    ...either('sugar-or-milk', sweet),
    ...either('fragrance-added', fragrance !== undefined),
    ...(fragrance === undefined ? either('fragrance-vanilla', false) : []),
  ];
}

const massOf = (oils: PlanAnswer['oils']) => oils.reduce((sum, { grams }) => sum + grams, 0);

function saturatedPercent(oils: PlanAnswer['oils']): number {
  const percent = (profile: Profile | undefined) =>
    SATURATED.reduce((sum, acid) => sum + (profile?.[acid] ?? 0), 0);
  return oils.reduce((sum, { id, grams }) => sum + grams * percent(oilById(id).profile), 0) / massOf(oils);
}

function yellowShare(oils: PlanAnswer['oils']): number {
  const yellow = oils.filter(({ id }) => /yellow|deep/.test(oilById(id).yellowness));
  return massOf(yellow) / massOf(oils);
}

function colours({ portions }: PlanAnswer, { rates, carriers = [] }: BatchNumbers): Findings {
  const doses = portions.flatMap(portion => portion.doses);
  const whites = rates.filter(({ kind }) => kind === 'white');
  const bright = rates.filter(({ kind }) => kind !== 'white');
  const kinds = new Set(doses.map(({ colourant }) => OF_KIND[colourant.kind]));
  return [
    ...either('white-pigment', whites.length > 0),
    ...either(
      'much-white-pigment',
      whites.some(({ perCup, most }) => perCup > most * 1.05),
    ),
    ...[...new Set(Object.values(OF_KIND))].flatMap(finding => either(finding, kinds.has(finding))),
    ...(bright.length === 0
      ? []
      : [
          ...either(
            'much-colour',
            bright.some(({ perCup, most }) => perCup > most * 1.05),
          ),
          ...either(
            'little-colour',
            bright.some(({ perCup, full }) => perCup <= full * 0.3),
          ),
        ]),
    ...either(
      'glycerin-carrier',
      doses.some(({ carrier }) => carrier.choice === 'glycerin'),
    ),
    ...either(
      'much-carrier',
      carriers.some(({ millilitres, cups }) => millilitres / cups >= MUCH_CARRIER_ML_PER_CUP),
    ),
  ];
}

const estimated = (chance: number): number => Math.min(ESTIMATED, Math.max(1 - ESTIMATED, chance));

function heatOf({ heat: { gel, overheatChance } }: PlanAnswer): Findings {
  const all = [
    ['gelled', estimated(gel.partial + gel.full)],
    ['not-gelled', estimated(gel.none)],
    ['ran-hot', estimated(overheatChance)],
  ] as const;
  return all.filter(([, chance]) => Math.abs(chance - 0.5) > UNDECIDED);
}

function numbersOf({ portions, water, lye, superfat, heat }: PlanAnswer): BatchNumbers {
  const rates = portions.flatMap(({ name, doses }) =>
    doses.flatMap(({ colourant: { id, kind }, perCup, teaspoons, ...dose }): ColourRate[] => {
      const { fullTspPerCup, ceilingTspPerCup: most } = colourantById(id)?.dose ?? {};
      if (fullTspPerCup === undefined || most === undefined) return [];
      const { askedTeaspoons = teaspoons, overKind: timesKind } = dose;
      return [
        {
          portion: name,
          colourant: id,
          kind,
          perCup: (perCup * askedTeaspoons) / teaspoons,
          full: Math.min(most, fullTspPerCup / (timesKind ?? 1)),
          most,
          ...(timesKind !== undefined && { timesKind }),
        },
      ];
    }),
  );
  return {
    rates,
    carriers: portions
      .filter(({ doses }) => doses.length > 0)
      .map(({ name, doses, millilitres, superfat: own }) => ({
        portion: name,
        cups: millilitres / US_CUP_ML,
        millilitres: doses.reduce((sum, { carrier }) => sum + carrier.millilitres, 0),
        superfat: own,
      })),
    water: { grams: water.grams, strength: water.ways.lyeStrength, atThirdGrams: (lye.grams * 67) / 33 },
    superfat: superfat.effective,
    heat: {
      peakC: heat.peakCoreC,
      lowC: heat.peakCoreBand.low,
      highC: heat.peakCoreBand.high,
      gelChance: heat.gel.partial + heat.gel.full,
      overheatChance: heat.overheatChance,
      levers: heat.crackle.levers,
    },
  };
}
