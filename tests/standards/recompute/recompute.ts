/**
 * Independent recomputation of cold-process soap batches.
 *
 * Everything here is worked out again from published definitions, stoichiometry
 * and reference tables, so that a batch worked out elsewhere can be compared
 * with it. No rounding is done anywhere: callers round, and choose tolerances.
 *
 * Conventions
 * - masses in grams, volumes in millilitres, shares as 0..1, percents as 0..100;
 * - every function is pure; bad input (not finite, or out of the stated range)
 *   throws a RangeError, except where a function's result type has its own
 *   way to refuse ({ ok: false, ... });
 * - "KOH equivalent" of an alkali = the grams of pure KOH that hold as many
 *   moles of hydroxide. Demands of fats and supplies of lye are both carried
 *   in this unit, because the saponification value is defined in it.
 *
 * `verified` in the tables: 'page seen' = the cited text was read;
 * 'from memory' = quoted from memory of the cited source, not re-read;
 * 'computed' = arithmetic on cited constants.
 *
 * Worked examples by hand (all are repeated by `workedExamples()`)
 *
 *  1. 1000 g olive oil, SV 190 mg/g, 5 % superfat, pure NaOH.
 *     Full demand        1000 x 190/1000            = 190.000 g KOH
 *     As NaOH            190 x 39.997/56.106
 *                        = 190 x 0.71288276         = 135.44772 g
 *     Less 5 %           135.44772 x 0.95           = 128.67534 g NaOH
 *     Water at 33 1/3 %  128.67534 x 2              = 257.35068 g
 *
 *  2. 700 g olive (190) + 300 g coconut (256.5), 8 % superfat, both alkalis,
 *     KOH 90 % pure, NaOH 98 % pure, KOH share 0.4.
 *     Full demand        133.00 + 76.95             = 209.95 g KOH
 *     Less 8 %           209.95 x 0.92              = 193.154 g KOH
 *     (a) share of the fat saponified:
 *         KOH   0.4 x 193.154 = 77.2616;   / 0.90   = 85.84622 g
 *         NaOH  0.6 x 193.154 x 0.71288276 = 82.61769; / 0.98 = 84.30377 g
 *     (b) share of the pure alkali mass:
 *         moles 193.154/56.106 = 3.442662
 *         mass  3.442662 / (0.6/39.997 + 0.4/56.106)
 *             = 3.442662 / (0.015001125 + 0.007129362) = 155.56197 g
 *         KOH   62.22479 / 0.90 = 69.13865 g;  NaOH 93.33718 / 0.98 = 95.24202 g
 *
 *  3. 20 g anhydrous citric acid in batch 1, lye left as it is.
 *     Uses               20 x 3 x 39.997/192.12     = 12.49126 g NaOH
 *     Left for fat       128.67534 - 12.49126       = 116.18408 g
 *     Superfat           1 - 116.18408/135.44772    = 14.2222 %
 *
 *  4. Jug: 128.68 g NaOH, 150 g water, 100 g goat milk (0.8703 water),
 *     20 g of the water kept back.
 *     Water              150 + 87.03 - 20           = 217.03 g
 *     Strength           128.68/(128.68 + 217.03)   = 37.2220 %
 *
 *  5. Masterbatch of 50 %: wanted 128.68 g NaOH in 257.36 g water.
 *     Solution           128.68/0.50                = 257.36 g (128.68 g water)
 *     Water to add       257.36 - 128.68            = 128.68 g
 *     Wanted with only 100 g water: refused, the solution brings 128.68 g.
 *
 *  6. A quarter of batch 1 with 10 g sunflower oil (SV 190.5).
 *     Supply             0.25 x 190 x 0.95          = 45.125 g KOH
 *     Demand             47.5 + 1.905               = 49.405 g KOH
 *     Superfat           1 - 45.125/49.405          = 8.66309 %
 *
 *  7. 473.176473 ml (2 US cups): 1 tsp of a colour with a ceiling of 1 tsp per
 *     cup and 1/2 tsp of one with a ceiling of 1/2 tsp per cup.
 *     1/2 + (1/2)/1                                 = 1.0: just at the ceiling
 *
 *  8. 1000 g oil of density 0.905, 134 g NaOH in 380 g water, 40 C.
 *     Solution           514 g of 26.07 %; at 20 C 1.2739 + 1.07/5 x (1.3277
 *                        - 1.2739) = 1.28541; at 40 C - 20 x 0.000594 = 1.27353
 *     Volume             1104.97 + 403.60           = 1508.57 ml
 *     Density            1514/1508.57               = 1.0036 g/ml
 */

// ---------------------------------------------------------------------------
// Constants
// ---------------------------------------------------------------------------

/** Molar mass of potassium hydroxide, g/mol (K 39.098 + O 15.999 + H 1.008, rounded). */
export const KOH_MOLAR_MASS = 56.106;
/** Molar mass of sodium hydroxide, g/mol (Na 22.990 + O 15.999 + H 1.008, rounded). */
export const NAOH_MOLAR_MASS = 39.997;
/** Molar mass of water, g/mol (IUPAC/CIAAW standard atomic weights). */
export const WATER_MOLAR_MASS = 18.015;
/**
 * Grams of NaOH that hold as much hydroxide as one gram of KOH (0.712883).
 * With five-figure weights, 39.9968/56.1053 = 0.712888: a program built on
 * those differs by 8e-6 of the result, which no kitchen scale shows.
 */
export const NAOH_PER_KOH: number = NAOH_MOLAR_MASS / KOH_MOLAR_MASS;
/** US customary cup, ml: 16 US fluid ounces, 1/16 of a 231 in3 gallon (NIST Handbook 44, appendix C). */
export const US_CUP_ML = 236.5882365;
/** US customary teaspoon, ml: 1/48 of the US cup (NIST Handbook 44, appendix C). */
export const US_TEASPOON_ML = 4.92892159375;
/** US fluid ounce, ml (NIST Handbook 44, appendix C). */
export const US_FLUID_OUNCE_ML = 29.5735295625;
/** Avoirdupois pound, g: exact (NIST Handbook 44, appendix C). */
export const POUND_GRAMS = 453.59237;
/**
 * Highest strength a lye jug may have, percent by mass.
 * NaOH dissolves to 109 g per 100 g water at 20 C (52.2 % of the solution) and
 * about 114 g at 25 C; KOH to 112 g per 100 g water at 20 C (52.8 %) (CRC
 * Handbook of Chemistry and Physics, solubility of inorganic compounds; the
 * 20 C figures page seen in an encyclopedia, the 25 C figure from memory).
 * Equal masses of alkali and water, 50 %, is therefore the last round figure
 * that stays dissolved at room temperature.
 */
export const MAX_JUG_STRENGTH_PERCENT = 50;
/** Solubility of NaOH, g per g of water, at 20 C and at 25 C (CRC Handbook; see MAX_JUG_STRENGTH_PERCENT). */
export const NAOH_SOLUBILITY_G_PER_G: { at20C: number; at25C: number } = { at20C: 1.09, at25C: 1.14 };

// ---------------------------------------------------------------------------
// Input checks
// ---------------------------------------------------------------------------

function need(name: string, value: number, min = 0, max = Number.MAX_VALUE): number {
  if (typeof value !== 'number' || !Number.isFinite(value)) {
    throw new RangeError(`${name} must be a finite number, got ${String(value)}`);
  }
  if (value < min || value > max) {
    throw new RangeError(`${name} must lie in ${min}..${max}, got ${value}`);
  }
  return value;
}

function needPositive(name: string, value: number, max = Number.MAX_VALUE): number {
  need(name, value, 0, max);
  if (value === 0) throw new RangeError(`${name} must be more than 0`);
  return value;
}

function sum(values: readonly number[]): number {
  let total = 0;
  for (const v of values) total += v;
  return total;
}

// ---------------------------------------------------------------------------
// Saponification value and lye
// ---------------------------------------------------------------------------

export type OilAmount = {
  /** grams of the oil */
  grams: number;
  /** saponification value, mg KOH per g (ISO 3657; AOCS Cd 3) */
  sapKohMgPerG: number;
};

export type DualLyeMeaning = 'oils' | 'mass';
export type LyeKind = 'naoh' | 'koh' | { kohShare: number; meaning?: DualLyeMeaning };

/** Purity in percent by mass: one figure for both alkalis, or one for each. */
export type Purity = number | { naoh: number; koh: number };

export type LyeGrams = { naohGrams: number; kohGrams: number };

function purityFraction(purity: Purity, which: 'naoh' | 'koh'): number {
  const percent = typeof purity === 'number' ? purity : purity[which];
  return needPositive(`purityPercent (${which})`, percent, 100) / 100;
}

/**
 * Pure KOH that saponifies (and neutralises) the given fats completely, g.
 *
 * Formula: sum of grams x SV / 1000. By definition the saponification value is
 * the number of milligrams of KOH needed to saponify one gram of fat,
 * free acids included (ISO 3657; AOCS Cd 3-25).
 */
export function kohDemandGrams(oils: readonly OilAmount[]): number {
  return sum(
    oils.map(
      (o, i) => (need(`oils[${i}].grams`, o.grams) * need(`oils[${i}].sapKohMgPerG`, o.sapKohMgPerG)) / 1000,
    ),
  );
}

/**
 * Saponification value of a pure triglyceride with mean fatty-acid molar mass
 * M, mg KOH/g: 3 x 1000 x M(KOH) / (3 M + 38.049), where 38.049 = M(glycerol)
 * 92.094 - 3 x M(water) 18.015 (stoichiometry of three ester bonds; AOCS
 * Cd 3a-94 is the published calculated saponification value).
 */
export function sapOfTriglyceride(meanFattyAcidMolarMass: number): number {
  needPositive('meanFattyAcidMolarMass', meanFattyAcidMolarMass);
  return (3000 * KOH_MOLAR_MASS) / (3 * meanFattyAcidMolarMass + 38.049);
}

/**
 * Neutralisation (acid) value of a pure free fatty acid, mg KOH/g:
 * 1000 x M(KOH)/M(acid). For a free acid it equals the saponification value
 * (ISO 660 for the acid value). Stearic acid, 284.484 g/mol: 197.22.
 */
export function sapOfFreeFattyAcid(molarMass: number): number {
  needPositive('molarMass', molarMass);
  return (1000 * KOH_MOLAR_MASS) / molarMass;
}

/**
 * Two alkalis, `kohShare` = share of the FAT (equivalently of the moles of
 * hydroxide) that is saponified by KOH. Weighed grams.
 *
 * KOH = x n M(KOH) / purity, NaOH = (1 - x) n M(NaOH) / purity, where n is the
 * moles of hydroxide wanted. Stoichiometry: one hydroxide per ester bond.
 */
export function dualLyeByShareOfOils(input: {
  kohEquivalentGrams: number;
  kohShare: number;
  purityPercent: Purity;
}): LyeGrams {
  const demand = need('kohEquivalentGrams', input.kohEquivalentGrams);
  const x = need('kohShare', input.kohShare, 0, 1);
  return {
    naohGrams: ((1 - x) * demand * NAOH_PER_KOH) / purityFraction(input.purityPercent, 'naoh'),
    kohGrams: (x * demand) / purityFraction(input.purityPercent, 'koh'),
  };
}

/**
 * Two alkalis, `kohShare` = share of the alkali MASS that is KOH. Weighed grams.
 *
 * With basis 'pure' (default) the share is of the pure alkalis; with 'weighed'
 * it is of what goes on the scale, impurities included. From
 * n = (1 - x) m pN / M(NaOH) + x m pK / M(KOH) the mass m follows; pN and pK
 * are 1 for 'pure' and the purities for 'weighed'. Because KOH is the heavier
 * alkali, x by mass always saponifies less than x of the fat (0 < x < 1).
 */
export function dualLyeByMassOfAlkali(input: {
  kohEquivalentGrams: number;
  kohShare: number;
  purityPercent: Purity;
  basis?: 'pure' | 'weighed';
}): LyeGrams {
  const moles = need('kohEquivalentGrams', input.kohEquivalentGrams) / KOH_MOLAR_MASS;
  const x = need('kohShare', input.kohShare, 0, 1);
  const pN = purityFraction(input.purityPercent, 'naoh');
  const pK = purityFraction(input.purityPercent, 'koh');
  if ((input.basis ?? 'pure') === 'pure') {
    const mass = moles / ((1 - x) / NAOH_MOLAR_MASS + x / KOH_MOLAR_MASS);
    return { naohGrams: ((1 - x) * mass) / pN, kohGrams: (x * mass) / pK };
  }
  const mass = moles / (((1 - x) * pN) / NAOH_MOLAR_MASS + (x * pK) / KOH_MOLAR_MASS);
  return { naohGrams: (1 - x) * mass, kohGrams: x * mass };
}

/** Weighed grams of alkali that supply the wanted KOH equivalent, for any kind of lye. */
export function lyeForKohEquivalent(
  kohEquivalentGrams: number,
  kind: LyeKind,
  purityPercent: Purity,
): LyeGrams {
  if (kind === 'naoh')
    return dualLyeByShareOfOils({
      kohEquivalentGrams,
      kohShare: 0,
      purityPercent: onlyPurity(purityPercent, 'naoh'),
    });
  if (kind === 'koh')
    return dualLyeByShareOfOils({
      kohEquivalentGrams,
      kohShare: 1,
      purityPercent: onlyPurity(purityPercent, 'koh'),
    });
  const args = { kohEquivalentGrams, kohShare: kind.kohShare, purityPercent };
  return (kind.meaning ?? 'oils') === 'oils' ? dualLyeByShareOfOils(args) : dualLyeByMassOfAlkali(args);
}

/** The purity of an alkali that is not used must not matter, nor be able to fail. */
function onlyPurity(purity: Purity, used: 'naoh' | 'koh'): Purity {
  const p = typeof purity === 'number' ? purity : purity[used];
  return { naoh: p, koh: p };
}

/**
 * Weighed grams of alkali for a batch.
 *
 * Formula: demand x (1 - superfat/100), shared between the alkalis, divided by
 * the purity. `superfatPercent` is the lye discount: the percentage of the full
 * saponification demand that is left out. (The other usage, free fat as percent
 * of all fat by mass, is the same number whenever no oil is singled out as the
 * unsaponified one.) Negative values, down to -100, mean lye in excess.
 * ISO 3657 / AOCS Cd 3 for the demand; molar masses 56.106 and 39.997.
 */
export function lyeFor(input: {
  oils: readonly OilAmount[];
  superfatPercent: number;
  kind: LyeKind;
  purityPercent: Purity;
}): LyeGrams {
  const superfat = need('superfatPercent', input.superfatPercent, -100, 100);
  return lyeForKohEquivalent(
    kohDemandGrams(input.oils) * (1 - superfat / 100),
    input.kind,
    input.purityPercent,
  );
}

/** KOH equivalent, g, of weighed alkali: NaOH x p x 56.106/39.997 + KOH x p (stoichiometry). */
export function kohEquivalentGrams(lye: LyeGrams, purityPercent: Purity): number {
  const n = need('naohGrams', lye.naohGrams);
  const k = need('kohGrams', lye.kohGrams);
  return (
    (n === 0 ? 0 : (n * purityFraction(purityPercent, 'naoh')) / NAOH_PER_KOH) +
    (k === 0 ? 0 : k * purityFraction(purityPercent, 'koh'))
  );
}

// ---------------------------------------------------------------------------
// Acids that use up lye
// ---------------------------------------------------------------------------

export type AcidName =
  | 'citric acid anhydrous'
  | 'citric acid monohydrate'
  | 'acetic acid'
  | 'lactic acid'
  | 'tartaric acid'
  | 'malic acid'
  | 'stearic acid'
  | 'sodium bicarbonate'
  | 'sodium lactate'
  | 'sodium citrate';

export type Acid = {
  molarMass: number;
  /** moles of hydroxide used by one mole at the pH of soap (about 9 to 10 and above) */
  hydroxidesPerMole: number;
  note: string;
};

/** Molar masses: IUPAC/CIAAW atomic weights; basicities: number of carboxylic (or hydrogencarbonate) protons. */
export const ACIDS: Record<AcidName, Acid> = {
  'citric acid anhydrous': {
    molarMass: 192.12,
    hydroxidesPerMole: 3,
    note: 'C6H8O7, pKa 3.1, 4.8, 6.4 (CRC Handbook): all three neutralised; 0.6246 g NaOH or 0.8761 g KOH per g',
  },
  'citric acid monohydrate': {
    molarMass: 210.14,
    hydroxidesPerMole: 3,
    note: 'C6H8O7.H2O: 0.5710 g NaOH or 0.8010 g KOH per g',
  },
  'acetic acid': { molarMass: 60.052, hydroxidesPerMole: 1, note: 'C2H4O2, pKa 4.76: 0.6660 g NaOH per g' },
  'lactic acid': {
    molarMass: 90.078,
    hydroxidesPerMole: 1,
    note: 'C3H6O3, pKa 3.86; in fresh milk 0.14-0.18 % titratable acidity as lactic acid (dairy handbooks, from memory): at most 0.08 g NaOH per 100 g milk, negligible',
  },
  'tartaric acid': {
    molarMass: 150.087,
    hydroxidesPerMole: 2,
    note: 'C4H6O6; wine holds about 5 to 8 g/L total acidity as tartaric acid (from memory)',
  },
  'malic acid': { molarMass: 134.087, hydroxidesPerMole: 2, note: 'C4H6O5' },
  'stearic acid': {
    molarMass: 284.484,
    hydroxidesPerMole: 1,
    note: 'count it once only: either here or as an oil with SV 197.2',
  },
  'sodium bicarbonate': {
    molarMass: 84.007,
    hydroxidesPerMole: 1,
    note: 'NaHCO3 + OH- gives carbonate and water',
  },
  'sodium lactate': { molarMass: 112.06, hydroxidesPerMole: 0, note: 'already the salt: uses no lye' },
  'sodium citrate': { molarMass: 258.07, hydroxidesPerMole: 0, note: 'already the salt: uses no lye' },
};

/**
 * KOH equivalent, g, used up by an acid: grams / M x hydroxides x 56.106.
 * Stoichiometric neutralisation (acid value in the sense of ISO 660).
 */
export function acidKohGrams(acid: AcidName, grams: number): number {
  const a = ACIDS[acid];
  if (a === undefined) throw new RangeError(`unknown acid ${String(acid)}`);
  return (need('grams', grams) / a.molarMass) * a.hydroxidesPerMole * KOH_MOLAR_MASS;
}

/** Pure NaOH, g, used up by an acid: grams / M x hydroxides x 39.997. */
export function acidNaohGrams(acid: AcidName, grams: number): number {
  return acidKohGrams(acid, grams) * NAOH_PER_KOH;
}

/** Weighed lye, g, to be added so that an acid does not raise the superfat; `kind` and purity as in `lyeFor`. */
export function lyeForAcids(input: {
  acids: readonly { acid: AcidName; grams: number }[];
  kind: LyeKind;
  purityPercent: Purity;
}): LyeGrams {
  return lyeForKohEquivalent(
    sum(input.acids.map(a => acidKohGrams(a.acid, a.grams))),
    input.kind,
    input.purityPercent,
  );
}

/** Water, g, formed by neutralisation: 18.015 g per mole of hydroxide used by a free acid (none by esters). */
export function neutralisationWaterGrams(acid: AcidName, grams: number): number {
  return (acidKohGrams(acid, grams) / KOH_MOLAR_MASS) * WATER_MOLAR_MASS;
}

/** Density of table vinegar, g/ml at 20 C: 1.005 to 1.01 (handbooks, from memory). */
export const VINEGAR_DENSITY_G_PER_ML = 1.006;

/**
 * Acetic acid, g, in vinegar.
 * `basis` 'w/v': percent = grams per 100 ml, as on US labels ("4 grams of
 * acetic acid per 100 mL", FDA Compliance Policy Guide 525.825, page seen);
 * 'w/w': percent by mass. The two differ by the density, under 1 %.
 */
export function aceticAcidInVinegarGrams(
  vinegarGrams: number,
  percent: number,
  basis: 'w/v' | 'w/w' = 'w/v',
): number {
  need('vinegarGrams', vinegarGrams);
  need('percent', percent, 0, 100);
  return basis === 'w/w'
    ? (vinegarGrams * percent) / 100
    : ((vinegarGrams / VINEGAR_DENSITY_G_PER_ML) * percent) / 100;
}

/**
 * Citric acid (anhydrous) in lemon juice, g per g of juice.
 * Typical: 1.44 g per US fl oz of fresh juice = 48.7 g/L (Penniston et al.,
 * J Endourol 2008;22:567-570, page seen), over 1.03 g/ml = 0.0473.
 * Low: 1.10 g per fl oz for juice from concentrate = 37.2 g/L, and 34 g/L as
 * the lowest commercial figure quoted for bottled juice = 0.033.
 * High: 8 % by mass as the upper figure of the range 5 to 8 % often quoted.
 */
export const LEMON_JUICE_CITRIC_G_PER_G: { min: number; typical: number; max: number } = {
  min: 0.033,
  typical: 0.0473,
  max: 0.08,
};

/** Citric acid, g, in lemon juice, as a range (see LEMON_JUICE_CITRIC_G_PER_G). */
export function citricAcidInLemonJuiceGrams(juiceGrams: number): {
  min: number;
  typical: number;
  max: number;
} {
  need('juiceGrams', juiceGrams);
  const c = LEMON_JUICE_CITRIC_G_PER_G;
  return { min: juiceGrams * c.min, typical: juiceGrams * c.typical, max: juiceGrams * c.max };
}

// ---------------------------------------------------------------------------
// Superfat
// ---------------------------------------------------------------------------

/**
 * Superfat in percent of what is in the pot:
 * 100 x (1 - (alkali - acid use) / demand of all fats), all as KOH equivalent.
 * Negative = free alkali is left. From the definition of the saponification
 * value (ISO 3657). With no fat at all the superfat has no meaning: RangeError.
 */
export function superfatPercentOf(input: {
  alkaliKohGrams: number;
  acidKohGrams?: number;
  oils: readonly OilAmount[];
}): number {
  const supply = need('alkaliKohGrams', input.alkaliKohGrams) - need('acidKohGrams', input.acidKohGrams ?? 0);
  const demand = kohDemandGrams(input.oils);
  if (demand === 0) throw new RangeError('no saponifiable fat: superfat is undefined');
  return 100 * (1 - supply / demand);
}

/**
 * Superfat, percent, after further oils are stirred in (at trace or later)
 * to a batch whose lye was worked out for `oils` at `superfatPercent`.
 */
export function superfatAfterExtraOils(input: {
  oils: readonly OilAmount[];
  superfatPercent: number;
  extraOils: readonly OilAmount[];
}): number {
  const supply =
    kohDemandGrams(input.oils) * (1 - need('superfatPercent', input.superfatPercent, -100, 100) / 100);
  return superfatPercentOf({ alkaliKohGrams: supply, oils: [...input.oils, ...input.extraOils] });
}

/**
 * Superfat, percent, of a portion: share f of the batter plus its own oil.
 * 100 x (1 - f A / (f D + g S/1000)), with A the batch's alkali less acids and
 * D its fat demand (KOH equivalents), g and S grams and SV of the added oil.
 * The batter is uniform, so a share by mass and a share by volume of the
 * batter BEFORE the addition are the same number.
 */
export function portionSuperfatPercent(input: {
  share: number;
  alkaliKohGrams: number;
  acidKohGrams?: number;
  batchOils: readonly OilAmount[];
  addedOils: readonly OilAmount[];
}): number {
  const f = need('share', input.share, 0, 1);
  const supply =
    f * (need('alkaliKohGrams', input.alkaliKohGrams) - need('acidKohGrams', input.acidKohGrams ?? 0));
  const demand = f * kohDemandGrams(input.batchOils) + kohDemandGrams(input.addedOils);
  if (demand === 0) throw new RangeError('no saponifiable fat in the portion: superfat is undefined');
  return 100 * (1 - supply / demand);
}

/**
 * Share of the plain batter in a portion whose volume was measured AFTER the
 * carrier oil went in: (V - g/rho) / V(batch). Ideal mixing by volume.
 */
export function shareOfBatterFromVolume(input: {
  portionVolumeMl: number;
  batchVolumeMl: number;
  carrierOilGrams: number;
  carrierOilDensityGPerMl: number;
}): number {
  const carrier =
    need('carrierOilGrams', input.carrierOilGrams) /
    needPositive('carrierOilDensityGPerMl', input.carrierOilDensityGPerMl);
  const batter = need('portionVolumeMl', input.portionVolumeMl) - carrier;
  if (batter < 0) throw new RangeError('the carrier oil alone is larger than the portion');
  return batter / needPositive('batchVolumeMl', input.batchVolumeMl);
}

// ---------------------------------------------------------------------------
// Water and the lye jug
// ---------------------------------------------------------------------------

/** Water, g, from the lye strength s in percent by mass: lye x (100 - s)/s (definition of mass fraction). */
export function waterFromStrength(lyeGrams: number, strengthPercent: number): number {
  needPositive('strengthPercent', strengthPercent, 100);
  return (need('lyeGrams', lyeGrams) * (100 - strengthPercent)) / strengthPercent;
}

/** Water, g, from a water:lye ratio r by mass: r x lye. */
export function waterFromRatio(lyeGrams: number, waterPerLye: number): number {
  return need('lyeGrams', lyeGrams) * need('waterPerLye', waterPerLye);
}

/** Water, g, as a percentage of the oils' mass. The lye strength then floats with the oils' SV. */
export function waterFromOils(oilsGrams: number, percent: number): number {
  return (need('oilsGrams', oilsGrams) * need('percent', percent)) / 100;
}

export type WaterSpec =
  | { by: 'strength'; percent: number }
  | { by: 'ratio'; waterPerLye: number }
  | { by: 'oils'; percent: number };

/** Water, g, by any of the three ways. `lyeGrams` is the lye that the strength is meant to describe. */
export function waterFor(spec: WaterSpec, lyeGrams: number, oilsGrams: number): number {
  if (spec.by === 'strength') return waterFromStrength(lyeGrams, spec.percent);
  if (spec.by === 'ratio') return waterFromRatio(lyeGrams, spec.waterPerLye);
  return waterFromOils(oilsGrams, spec.percent);
}

/** Strength, percent by mass, of lye in water: 100 x lye/(lye + water). No lye and no water: 0. */
export function strengthPercent(lyeGrams: number, waterGrams: number): number {
  need('lyeGrams', lyeGrams);
  need('waterGrams', waterGrams);
  return lyeGrams === 0 ? 0 : (100 * lyeGrams) / (lyeGrams + waterGrams);
}

/**
 * Water in the jug and its strength.
 *
 * Only the water part of the other liquids dissolves lye, so
 * water = plain + sum(grams x waterFraction) - held back, and
 * strength = 100 x lye/(lye + water). Holding back more water than there is
 * throws. Solids of milk, sugar of juice and so on are left out of the
 * strength on purpose: it is the figure that decides whether lye dissolves.
 */
export function jug(input: {
  lyeGrams: number;
  plainWaterGrams: number;
  otherLiquids: readonly { grams: number; waterFraction: number }[];
  waterHeldBackGrams: number;
}): { waterGrams: number; strengthPercent: number } {
  const lye = need('lyeGrams', input.lyeGrams);
  const brought =
    need('plainWaterGrams', input.plainWaterGrams) +
    sum(
      input.otherLiquids.map(
        (l, i) =>
          need(`otherLiquids[${i}].grams`, l.grams) *
          need(`otherLiquids[${i}].waterFraction`, l.waterFraction, 0, 1),
      ),
    );
  const held = need('waterHeldBackGrams', input.waterHeldBackGrams);
  if (held > brought * (1 + 1e-12)) throw new RangeError('more water held back than there is');
  const water = Math.max(0, brought - held);
  return { waterGrams: water, strengthPercent: strengthPercent(lye, water) };
}

/** Least water, g, that keeps a jug at or below the highest strength: lye x (100 - s)/s; for 50 %, the lye's own mass. */
export function leastJugWater(
  lyeGrams: number,
  maxStrengthPercent: number = MAX_JUG_STRENGTH_PERCENT,
): number {
  return waterFromStrength(lyeGrams, maxStrengthPercent);
}

/** Is a strength allowed? A relative slack of 1e-9 forgives floating-point noise only. */
export function strengthAllowed(
  percent: number,
  maxStrengthPercent: number = MAX_JUG_STRENGTH_PERCENT,
): boolean {
  return Number.isFinite(percent) && percent >= 0 && percent <= maxStrengthPercent * (1 + 1e-9);
}

/**
 * Most water, g, that may be held back from the jug (0 if none). `feasible` is
 * false if the jug is too strong even with nothing held back.
 */
export function mostWaterHeldBack(input: {
  lyeGrams: number;
  waterGrams: number;
  maxStrengthPercent?: number;
}): { grams: number; feasible: boolean } {
  const least = leastJugWater(input.lyeGrams, input.maxStrengthPercent ?? MAX_JUG_STRENGTH_PERCENT);
  const spare = need('waterGrams', input.waterGrams) - least;
  return { grams: Math.max(0, spare), feasible: spare >= -1e-9 * least };
}

/**
 * Replacing a share of the water by another liquid.
 * 'mass': the liquid takes the place of water gram for gram, so the batch has
 * less real water; 'water': enough liquid that its own water makes up what was
 * taken out, so real water is unchanged. Mass balance only.
 */
export function replaceWater(input: {
  waterGrams: number;
  shareReplaced: number;
  waterFraction: number;
  meaning: 'mass' | 'water';
}): { liquidGrams: number; plainWaterGrams: number; realWaterGrams: number } {
  const water = need('waterGrams', input.waterGrams);
  const share = need('shareReplaced', input.shareReplaced, 0, 1);
  const wf = needPositive('waterFraction', input.waterFraction, 1);
  const liquid = input.meaning === 'mass' ? share * water : (share * water) / wf;
  const plain = water * (1 - share);
  return { liquidGrams: liquid, plainWaterGrams: plain, realWaterGrams: plain + liquid * wf };
}

export type MasterbatchResult =
  | {
      ok: true;
      solutionGrams: number;
      waterInSolutionGrams: number;
      additionalWaterGrams: number;
      totalGrams: number;
    }
  | {
      ok: false;
      reason: string;
      solutionGrams: number;
      waterInSolutionGrams: number;
      shortfallGrams: number;
    };

/**
 * Stock solution ("masterbatch") of s percent alkali by mass.
 * Solution = lye/(s/100); its water = solution - lye; water to add = wanted
 * water - that. Refused when the solution alone brings more water than wanted.
 * `lyeGrams` is the pure alkali if s is an assayed strength, or the weighed
 * alkali if the solution was mixed from weighed flakes: use the same for both.
 */
export function masterbatch(input: {
  lyeGrams: number;
  waterGrams: number;
  solutionPercent: number;
}): MasterbatchResult {
  const lye = need('lyeGrams', input.lyeGrams);
  const wanted = need('waterGrams', input.waterGrams);
  const s = needPositive('solutionPercent', input.solutionPercent, 100);
  const solutionGrams = (lye * 100) / s;
  const waterInSolutionGrams = (lye * (100 - s)) / s;
  const spare = wanted - waterInSolutionGrams;
  if (spare < -1e-9 * waterInSolutionGrams) {
    return {
      ok: false,
      reason: 'the wanted water is less than the solution brings',
      solutionGrams,
      waterInSolutionGrams,
      shortfallGrams: -spare,
    };
  }
  const additionalWaterGrams = Math.max(0, spare);
  return {
    ok: true,
    solutionGrams,
    waterInSolutionGrams,
    additionalWaterGrams,
    totalGrams: solutionGrams + additionalWaterGrams,
  };
}

// ---------------------------------------------------------------------------
// Colourants
// ---------------------------------------------------------------------------

/**
 * How much of the ceiling a portion's colourants use up together.
 * Each: dose / (ceiling per cup x cups of batter); the parts add up, and the
 * total must not exceed 1. US cup 236.5882365 ml, 48 teaspoons (NIST HB 44).
 * A dose with a ceiling of 0, or in no batter at all, gives Infinity.
 */
export function colourantUse(input: {
  volumeMl: number;
  doses: readonly { tsp: number; ceilingTspPerCup: number }[];
}): { fractions: number[]; total: number; allowed: boolean } {
  const cups = need('volumeMl', input.volumeMl) / US_CUP_ML;
  const fractions = input.doses.map((d, i) => {
    const tsp = need(`doses[${i}].tsp`, d.tsp);
    const room = need(`doses[${i}].ceilingTspPerCup`, d.ceilingTspPerCup) * cups;
    return tsp === 0 ? 0 : room === 0 ? Infinity : tsp / room;
  });
  const total = sum(fractions);
  return { fractions, total, allowed: total <= 1 + 1e-9 };
}

/** Volume of level US teaspoons, ml. */
export function teaspoonsToMl(tsp: number): number {
  return need('tsp', tsp) * US_TEASPOON_ML;
}

/** Mass, g, of a powder measured by level teaspoons, from its loose bulk density (g/ml). Bulk densities vary twofold. */
export function powderGrams(tsp: number, bulkDensityGPerMl: number): number {
  return teaspoonsToMl(tsp) * needPositive('bulkDensityGPerMl', bulkDensityGPerMl);
}

/**
 * Colour additive by mass against a legal limit.
 * percent = 100 x grams / finished soap mass. The law limits the FINISHED
 * product, so pass the mass after curing; `lossPercent` takes water loss off a
 * batter mass. `additiveShare` is the colour additive's share of a blend.
 */
export function legalMassUse(input: {
  pigmentGrams: number;
  soapGrams: number;
  limitPercent: number;
  additiveShare?: number;
  lossPercent?: number;
}): { percent: number; useOfLimit: number; allowed: boolean } {
  const additive =
    need('pigmentGrams', input.pigmentGrams) * need('additiveShare', input.additiveShare ?? 1, 0, 1);
  const soap =
    needPositive('soapGrams', input.soapGrams) *
    (1 - need('lossPercent', input.lossPercent ?? 0, 0, 99.999) / 100);
  const limit = need('limitPercent', input.limitPercent, 0, 100);
  const percent = (100 * additive) / soap;
  const useOfLimit = percent === 0 ? 0 : limit === 0 ? Infinity : percent / limit;
  return { percent, useOfLimit, allowed: useOfLimit <= 1 + 1e-9 };
}

export type LegalColourLimit = {
  name: string;
  colourIndex: string;
  region: 'US' | 'EU';
  /** percent by mass of the finished product; null = no figure, other condition only */
  limitPercent: number | null;
  condition: string;
  source: string;
  verified: 'page seen' | 'from memory';
};

/**
 * Limits that bear on a rinse-off bar, and listings that rule one out.
 * Cosmetic listings are in subpart C of part 74 (sections 74.2xxx); sections
 * 74.1xxx are for drugs, so D&C Green No. 8 is 74.2208 here and 74.1208 there.
 */
export const LEGAL_COLOUR_LIMITS: readonly LegalColourLimit[] = [
  {
    name: 'D&C Green No. 8',
    colourIndex: 'CI 59040',
    region: 'US',
    limitPercent: 0.01,
    condition: 'external only, <=0.01% of finished product',
    source: '21 CFR 74.2208',
    verified: 'from memory',
  },
  {
    name: 'D&C Black No. 2',
    colourIndex: 'CI 77266',
    region: 'US',
    limitPercent: 0,
    condition: 'listed product types only; soap is not one of them',
    source: '21 CFR 74.2052',
    verified: 'page seen',
  },
  {
    name: 'D&C Black No. 3',
    colourIndex: 'CI 77267',
    region: 'US',
    limitPercent: 0,
    condition: 'eyeliner, eye shadow, mascara, face powder only',
    source: '21 CFR 74.2053',
    verified: 'from memory',
  },
  {
    name: 'Luminescent zinc sulfide',
    colourIndex: 'CI 77975',
    region: 'US',
    limitPercent: 0,
    condition: 'limited-use facial make-up and nail polish only (<=10% there)',
    source: '21 CFR 73.2995',
    verified: 'from memory',
  },
  {
    name: 'Potassium sodium copper chlorophyllin',
    colourIndex: 'CI 75810',
    region: 'US',
    limitPercent: 0,
    condition: 'dentifrices only, <=0.1%',
    source: '21 CFR 73.2125',
    verified: 'from memory',
  },
  {
    name: 'CI 59040',
    colourIndex: 'CI 59040',
    region: 'EU',
    limitPercent: null,
    condition: 'not to be used in products applied on mucous membranes',
    source: 'Regulation (EC) 1223/2009 Annex IV, entry 87',
    verified: 'page seen',
  },
  {
    name: 'CI 42520',
    colourIndex: 'CI 42520',
    region: 'EU',
    limitPercent: 0.0005,
    condition: 'rinse-off product, 5 ppm',
    source: 'Regulation (EC) 1223/2009 Annex IV, entry 67',
    verified: 'page seen',
  },
  {
    name: 'CI 12085',
    colourIndex: 'CI 12085',
    region: 'EU',
    limitPercent: 3,
    condition: '3%',
    source: 'Regulation (EC) 1223/2009 Annex IV, entry 9',
    verified: 'page seen',
  },
  {
    name: 'CI 15630',
    colourIndex: 'CI 15630',
    region: 'EU',
    limitPercent: 3,
    condition: '3%',
    source: 'Regulation (EC) 1223/2009 Annex IV, entry 25',
    verified: 'page seen',
  },
  {
    name: 'CI 45350',
    colourIndex: 'CI 45350',
    region: 'EU',
    limitPercent: 6,
    condition: '6%',
    source: 'Regulation (EC) 1223/2009 Annex IV, entry 74',
    verified: 'page seen',
  },
  {
    name: 'Carbon black (nano)',
    colourIndex: 'CI 77266',
    region: 'EU',
    limitPercent: 10,
    condition: '10%; not where the lungs may be exposed by inhalation',
    source: 'Regulation (EC) 1223/2009 Annex IV, entry 126a',
    verified: 'page seen',
  },
  {
    name: 'Iron oxides',
    colourIndex: 'CI 77491, CI 77492, CI 77499',
    region: 'US',
    limitPercent: null,
    condition: 'good manufacturing practice',
    source: '21 CFR 73.2250',
    verified: 'page seen',
  },
  {
    name: 'Ultramarines',
    colourIndex: 'CI 77007',
    region: 'US',
    limitPercent: null,
    condition: 'externally applied; good manufacturing practice',
    source: '21 CFR 73.2725',
    verified: 'page seen',
  },
  {
    name: 'Titanium dioxide',
    colourIndex: 'CI 77891',
    region: 'US',
    limitPercent: null,
    condition: 'good manufacturing practice',
    source: '21 CFR 73.2575',
    verified: 'page seen',
  },
];

// ---------------------------------------------------------------------------
// Saponification values of fats
// ---------------------------------------------------------------------------

export type SapRow = {
  name: string;
  /** mg KOH per g */
  min: number;
  max: number;
  mid: number;
  /** SV of the pure triglyceride of a typical fatty-acid profile (AOCS Cd 3a-94 formula), or null */
  computed: number | null;
  /** density g/ml and the temperature it holds at */
  densityGPerMl: number;
  densityAtC: number;
  source: string;
  verified: string;
  note?: string;
};

/**
 * Ranges of saponification values, mg KOH/g. A midpoint is the middle of a
 * standard's range, NOT a typical sample (almond, shea): judge a program by
 * the range, and by the computed value where there is one.
 * Densities: centre of the standard's relative density range times water's.
 */
export const SAP_TABLE: readonly SapRow[] = [
  {
    name: 'coconut oil',
    min: 248,
    max: 265,
    mid: 256.5,
    computed: 256.7,
    densityGPerMl: 0.908,
    densityAtC: 40,
    source: 'Codex Alimentarius CXS 210-1999, tables 1 and 2',
    verified: 'from memory; same range seen on a trade listing',
  },
  {
    name: 'olive oil',
    min: 184,
    max: 196,
    mid: 190,
    computed: 192.4,
    densityGPerMl: 0.913,
    densityAtC: 20,
    source: 'Codex CXS 33-1981',
    verified: 'from memory',
  },
  {
    name: 'palm oil',
    min: 190,
    max: 209,
    mid: 199.5,
    computed: 198.9,
    densityGPerMl: 0.892,
    densityAtC: 50,
    source: 'Codex CXS 210-1999',
    verified: 'from memory; Indian AGMARK 195-205 seen',
  },
  {
    name: 'shea butter',
    min: 160,
    max: 195,
    mid: 177.5,
    computed: 190.2,
    densityGPerMl: 0.905,
    densityAtC: 40,
    source: 'Codex CXS 325R-2017, table 2 (unrefined)',
    verified: 'page seen',
    note: '1-19 % unsaponifiable: the wide range is real',
  },
  {
    name: 'castor oil',
    min: 176,
    max: 187,
    mid: 181.5,
    computed: 181.5,
    densityGPerMl: 0.959,
    densityAtC: 20,
    source: 'British Pharmacopoeia 1993, castor oil',
    verified: 'page seen',
  },
  {
    name: 'rice bran oil',
    min: 180,
    max: 199,
    mid: 189.5,
    computed: 194.0,
    densityGPerMl: 0.918,
    densityAtC: 20,
    source: 'Codex CXS 210-1999',
    verified: 'from memory; an Indian standard 180-195 seen',
  },
  {
    name: 'cocoa butter',
    min: 188,
    max: 198,
    mid: 193,
    computed: 194.4,
    densityGPerMl: 0.895,
    densityAtC: 40,
    source: 'older Codex CXS 86; fat handbooks',
    verified: 'from memory (density of the melted fat also)',
  },
  {
    name: 'sunflower oil',
    min: 187,
    max: 194,
    mid: 190.5,
    computed: 191.7,
    densityGPerMl: 0.919,
    densityAtC: 20,
    source: 'Codex CXS 210-1999, as amended 2022',
    verified: 'page seen',
  },
  {
    name: 'lard',
    min: 192,
    max: 203,
    mid: 197.5,
    computed: 195.8,
    densityGPerMl: 0.899,
    densityAtC: 40,
    source: 'Codex CXS 211-1999',
    verified: 'from memory',
  },
  {
    name: 'sweet almond oil',
    min: 183,
    max: 207,
    mid: 195,
    computed: 191.7,
    densityGPerMl: 0.918,
    densityAtC: 20,
    source: 'Codex CXS 210 (almond added 2019); pharmacopoeias 188-200',
    verified: 'from memory, weak',
  },
  {
    name: 'beeswax',
    min: 87,
    max: 104,
    mid: 95.5,
    computed: null,
    densityGPerMl: 0.96,
    densityAtC: 20,
    source: 'European Pharmacopoeia, yellow and white beeswax; JECFA beeswax (INS 901)',
    verified: 'SV from memory; acid value 17-24 and relative density about 0.960 page seen',
    note: 'a wax ester: in cold process the esters react slowly, only the free acids (17-24) surely',
  },
  {
    name: 'stearic acid',
    min: 194,
    max: 212,
    mid: 203,
    computed: 197.2,
    densityGPerMl: 0.87,
    densityAtC: 40,
    source:
      'European Pharmacopoeia 1474 (acid value 194-212; a mixture with palmitic acid); 56106/284.484 for pure stearic acid',
    verified: 'page seen; density from memory',
  },
];

/** Row of SAP_TABLE by name, or undefined. */
export function sapRow(name: string): SapRow | undefined {
  return SAP_TABLE.find(r => r.name === name);
}

// ---------------------------------------------------------------------------
// Liquids and additives
// ---------------------------------------------------------------------------

export type LiquidRow = {
  name: string;
  /** grams of water per gram */
  waterFraction: number;
  /** band that covers ordinary variation, or the kinds sold under that name */
  waterMin: number;
  waterMax: number;
  /** grams of fat per gram, and its SV in mg KOH/g: it takes part in saponification */
  fatFraction: number;
  fatSap: number;
  /** acid per gram, typical (null = negligible) */
  acid: { acid: AcidName; gramsPerGram: number } | null;
  densityGPerMl: number;
  source: string;
  verified: 'page seen' | 'from memory' | 'computed';
};

/**
 * Water in liquids, g/g: USDA FoodData Central, Standard Reference (SR Legacy),
 * grams of water per 100 g, unless said otherwise. Milk fat SV 218-235 (dairy
 * fat standards), middle 226.5; coconut milk fat as coconut oil. Densities:
 * handbooks. All from memory except where marked.
 */
export const LIQUIDS: readonly LiquidRow[] = [
  {
    name: 'water',
    waterFraction: 1,
    waterMin: 1,
    waterMax: 1,
    fatFraction: 0,
    fatSap: 0,
    acid: null,
    densityGPerMl: 0.998,
    source: 'definition',
    verified: 'computed',
  },
  {
    name: 'ice',
    waterFraction: 1,
    waterMin: 1,
    waterMax: 1,
    fatFraction: 0,
    fatSap: 0,
    acid: null,
    densityGPerMl: 0.998,
    source: 'definition (density once melted)',
    verified: 'computed',
  },
  {
    name: 'goat milk',
    waterFraction: 0.8703,
    waterMin: 0.86,
    waterMax: 0.89,
    fatFraction: 0.0414,
    fatSap: 226.5,
    acid: null,
    densityGPerMl: 1.03,
    source: 'SR 01106 Milk, goat, fluid: 87.03 (87.0 seen in a rounded copy)',
    verified: 'from memory',
  },
  {
    name: 'cow milk',
    waterFraction: 0.8813,
    waterMin: 0.87,
    waterMax: 0.91,
    fatFraction: 0.0325,
    fatSap: 226.5,
    acid: null,
    densityGPerMl: 1.03,
    source: 'SR 01077 Milk, whole, 3.25 % milkfat: 88.13; skim 90.84',
    verified: 'from memory',
  },
  {
    name: 'buttermilk',
    waterFraction: 0.9013,
    waterMin: 0.87,
    waterMax: 0.92,
    fatFraction: 0.0088,
    fatSap: 226.5,
    acid: { acid: 'lactic acid', gramsPerGram: 0.008 },
    densityGPerMl: 1.03,
    source: 'SR 01088 Buttermilk, cultured, lowfat: 90.13; acidity about 0.8 % as lactic acid',
    verified: 'from memory',
  },
  {
    name: 'coconut milk',
    waterFraction: 0.7288,
    waterMin: 0.65,
    waterMax: 0.95,
    fatFraction: 0.2133,
    fatSap: 256.5,
    acid: null,
    densityGPerMl: 0.99,
    source: 'SR 12118 Coconut milk, canned: 72.88; raw 67.62; cartons of drink about 94',
    verified: 'from memory',
  },
  {
    name: 'cream',
    waterFraction: 0.5771,
    waterMin: 0.55,
    waterMax: 0.81,
    fatFraction: 0.3608,
    fatSap: 226.5,
    acid: null,
    densityGPerMl: 0.994,
    source: 'SR 01053 Cream, heavy whipping: 57.71; light 73.75; half and half 80.57',
    verified: 'from memory',
  },
  {
    name: 'beer',
    waterFraction: 0.9196,
    waterMin: 0.89,
    waterMax: 0.96,
    fatFraction: 0,
    fatSap: 0,
    acid: null,
    densityGPerMl: 1.008,
    source: 'SR 14003 Beer, regular: 91.96; boiled down or flat beer differs',
    verified: 'from memory',
  },
  {
    name: 'wine',
    waterFraction: 0.8649,
    waterMin: 0.77,
    waterMax: 0.9,
    fatFraction: 0,
    fatSap: 0,
    acid: { acid: 'tartaric acid', gramsPerGram: 0.006 },
    densityGPerMl: 0.994,
    source: 'SR 14096 Wine, table, red: 86.49; white 86.86; sweet dessert wine about 0.71',
    verified: 'from memory',
  },
  {
    name: 'coffee',
    waterFraction: 0.9939,
    waterMin: 0.975,
    waterMax: 0.997,
    fatFraction: 0,
    fatSap: 0,
    acid: null,
    densityGPerMl: 1.0,
    source: 'SR 14209 Coffee, brewed: 99.39; espresso 97.80',
    verified: 'from memory',
  },
  {
    name: 'tea',
    waterFraction: 0.997,
    waterMin: 0.99,
    waterMax: 0.999,
    fatFraction: 0,
    fatSap: 0,
    acid: null,
    densityGPerMl: 1.0,
    source: 'SR 14355 Tea, black, brewed: 99.70',
    verified: 'from memory',
  },
  {
    name: 'aloe juice',
    waterFraction: 0.99,
    waterMin: 0.96,
    waterMax: 0.995,
    fatFraction: 0,
    fatSap: 0,
    acid: null,
    densityGPerMl: 1.0,
    source: 'aloe gel is 98.5-99.5 % water (phytochemical reviews); sweetened drinks have less',
    verified: 'from memory',
  },
  {
    name: 'vinegar',
    waterFraction: 0.9478,
    waterMin: 0.93,
    waterMax: 0.96,
    fatFraction: 0,
    fatSap: 0,
    acid: { acid: 'acetic acid', gramsPerGram: 0.05 },
    densityGPerMl: 1.006,
    source:
      'SR 02053 Vinegar, distilled: 94.78, footnote "Contains 5% acetic acid" (footnote page seen); cider 93.81',
    verified: 'from memory',
  },
  {
    name: 'lemon juice',
    waterFraction: 0.9231,
    waterMin: 0.9,
    waterMax: 0.93,
    fatFraction: 0,
    fatSap: 0,
    acid: { acid: 'citric acid anhydrous', gramsPerGram: 0.0473 },
    densityGPerMl: 1.03,
    source: 'SR 09152 Lemon juice, raw: 92.31; acid see LEMON_JUICE_CITRIC_G_PER_G',
    verified: 'from memory',
  },
];

/** Row of LIQUIDS by name, or undefined. */
export function liquidRow(name: string): LiquidRow | undefined {
  return LIQUIDS.find(r => r.name === name);
}

export type AdditiveRow = {
  name: string;
  waterFraction: number;
  acid: { acid: AcidName; gramsPerGram: number } | null;
  /** density that it counts with in the batter (particle or solution, not bulk), g/ml */
  densityGPerMl: number;
  source: string;
};

/** Additives: water, acid and density. From memory of the sources named. */
export const ADDITIVES: readonly AdditiveRow[] = [
  {
    name: 'honey',
    waterFraction: 0.171,
    acid: null,
    densityGPerMl: 1.42,
    source:
      'SR 19296 Honey: 17.10 water; free acidity at most 50 meq/kg (Codex CXS 12-1981), that is 2 g NaOH per kg: negligible',
  },
  { name: 'sugar', waterFraction: 0, acid: null, densityGPerMl: 1.59, source: 'sucrose, CRC Handbook' },
  { name: 'salt', waterFraction: 0, acid: null, densityGPerMl: 2.16, source: 'NaCl, CRC Handbook' },
  {
    name: 'citric acid',
    waterFraction: 0,
    acid: { acid: 'citric acid anhydrous', gramsPerGram: 1 },
    densityGPerMl: 1.665,
    source: 'anhydrous; CRC Handbook',
  },
  {
    name: 'citric acid monohydrate',
    waterFraction: 18.015 / 210.14,
    acid: { acid: 'citric acid monohydrate', gramsPerGram: 1 },
    densityGPerMl: 1.54,
    source: 'CRC Handbook; crystal water 8.57 %',
  },
  {
    name: 'sodium lactate',
    waterFraction: 0.4,
    acid: null,
    densityGPerMl: 1.33,
    source: '60 % solution, the usual article; a salt, uses no lye',
  },
  {
    name: 'clay',
    waterFraction: 0,
    acid: null,
    densityGPerMl: 2.6,
    source: 'kaolin, particle density (Gettens and Stout)',
  },
  { name: 'oatmeal', waterFraction: 0.1, acid: null, densityGPerMl: 1.4, source: 'cereal solids' },
  {
    name: 'titanium dioxide',
    waterFraction: 0,
    acid: null,
    densityGPerMl: 4.2,
    source: 'rutile, particle density (Gettens and Stout)',
  },
  { name: 'charcoal', waterFraction: 0, acid: null, densityGPerMl: 2.0, source: 'carbon, skeletal density' },
  { name: 'sodium citrate', waterFraction: 0, acid: null, densityGPerMl: 1.7, source: 'a salt, uses no lye' },
  { name: 'silk', waterFraction: 0, acid: null, densityGPerMl: 1.3, source: 'protein fibre' },
];

/** Row of ADDITIVES by name, or undefined. */
export function additiveRow(name: string): AdditiveRow | undefined {
  return ADDITIVES.find(r => r.name === name);
}

// ---------------------------------------------------------------------------
// Volume
// ---------------------------------------------------------------------------

/** Fall of a triglyceride oil's density with temperature, g/ml per C: 0.00065-0.00070 (oil handbooks, from memory). */
export const OIL_DENSITY_SLOPE = 0.000675;
/** Fall of a NaOH solution's density, g/ml per C: (1.20866 - 1.18192)/45 at 6 mol/kg, 25 to 70 C (fitted table, page seen). */
export const LYE_DENSITY_SLOPE: number = (1.20866 - 1.18192) / 45;

/** Density of NaOH solution at 20 C, g/ml against percent by mass (CRC/Perry; 5-20, 30, 40 page seen, others from memory). */
export const NAOH_SOLUTION_DENSITY_20C: readonly (readonly [percent: number, density: number])[] = [
  [0, 0.99821],
  [5, 1.0538],
  [10, 1.1089],
  [20, 1.2192],
  [25, 1.2739],
  [30, 1.3277],
  [35, 1.3798],
  [40, 1.4299],
  [45, 1.4779],
  [50, 1.5253],
];
/** Density of KOH solution near 15-20 C, g/ml against percent by mass (Perry, from memory). */
export const KOH_SOLUTION_DENSITY_20C: readonly (readonly [percent: number, density: number])[] = [
  [0, 0.99821],
  [10, 1.0918],
  [20, 1.1884],
  [30, 1.2905],
  [40, 1.3991],
  [50, 1.5143],
];

/** Linear interpolation in a table sorted by its first column; beyond the last row the last slope goes on. */
export function interpolate(table: readonly (readonly [number, number])[], x: number): number {
  let i = 1;
  while (i < table.length - 1 && x > table[i]![0]) i++;
  const [x0, y0] = table[i - 1]!;
  const [x1, y1] = table[i]!;
  return y0 + ((y1 - y0) * (x - x0)) / (x1 - x0);
}

/** Density of an oil at another temperature, g/ml, by the common slope of triglycerides. */
export function oilDensityAt(densityGPerMl: number, atC: number, wantedC: number): number {
  return densityGPerMl - OIL_DENSITY_SLOPE * (wantedC - atC);
}

/**
 * Density of a lye solution, g/ml, from the weighed alkalis and its water.
 * Mixed lyes: the two tables weighed by the alkalis' masses.
 */
export function lyeSolutionDensity(lye: LyeGrams, waterGrams: number, temperatureC = 40): number {
  const alkali = lye.naohGrams + lye.kohGrams;
  const s = strengthPercent(alkali, waterGrams);
  const n = interpolate(NAOH_SOLUTION_DENSITY_20C, s);
  const k = interpolate(KOH_SOLUTION_DENSITY_20C, s);
  const at20 = alkali === 0 ? n : (n * lye.naohGrams + k * lye.kohGrams) / alkali;
  return at20 - LYE_DENSITY_SLOPE * (temperatureC - 20);
}

/**
 * Volume, ml, of things mixed without change of volume: sum of mass/density.
 * Real batter differs by trapped air and by a per cent or two of contraction.
 */
export function volumeMl(parts: readonly { grams: number; densityGPerMl: number }[]): number {
  return sum(
    parts.map(
      (p, i) =>
        need(`parts[${i}].grams`, p.grams) / needPositive(`parts[${i}].densityGPerMl`, p.densityGPerMl),
    ),
  );
}

/** Batter: mass g, volume ml and density g/ml at `temperatureC` (40 by default) from oils, lye, water and other parts. */
export function batter(input: {
  oils: readonly { grams: number; densityGPerMl: number; densityAtC: number }[];
  lye: LyeGrams;
  waterGrams: number;
  others?: readonly { grams: number; densityGPerMl: number }[];
  temperatureC?: number;
}): { massGrams: number; volumeMl: number; densityGPerMl: number } {
  const t = input.temperatureC ?? 40;
  const solution = input.lye.naohGrams + input.lye.kohGrams + input.waterGrams;
  const parts = [
    ...input.oils.map(o => ({
      grams: o.grams,
      densityGPerMl: oilDensityAt(o.densityGPerMl, o.densityAtC, t),
    })),
    { grams: solution, densityGPerMl: lyeSolutionDensity(input.lye, input.waterGrams, t) },
    ...(input.others ?? []),
  ];
  const massGrams = sum(parts.map(p => p.grams));
  const volume = volumeMl(parts);
  return { massGrams, volumeMl: volume, densityGPerMl: volume === 0 ? 0 : massGrams / volume };
}

// ---------------------------------------------------------------------------
// Requests
// ---------------------------------------------------------------------------

export type PortionRequest = {
  name: string;
  /** share of the batter before anything is added to the portion, 0..1 */
  share: number;
  shareBy: 'mass' | 'volume';
  carrierOil: string | null;
  carrierOilGrams: number;
  colourants: { name: string; tsp: number; ceilingTspPerCup: number }[];
};

/** A batch as plain data. It can be written as JSON. */
export type BatchRequest = {
  id: string;
  oils: { name: string; grams: number }[];
  superfatPercent: number;
  lye: LyeKind;
  purityPercent: { naoh: number; koh: number };
  water: WaterSpec;
  /** either grams, or a share of the water that the liquid replaces gram for gram */
  liquids: {
    name: string;
    grams: number | null;
    shareOfWaterReplaced: number | null;
    where: 'jug' | 'oils';
  }[];
  /** plain water that is kept out of the jug and added to the oils */
  waterHeldBackGrams: number;
  /** strength of a stock solution, percent; null = solid alkali */
  masterbatchPercent: number | null;
  additives: { name: string; grams: number }[];
  /** further alkali asked for by hand, weighed g */
  extraLye: LyeGrams;
  portions: PortionRequest[];
  /** what was made wrong on purpose; empty for a plausible request */
  faults: string[];
};

/** Seeded random numbers in [0, 1): the public-domain "mulberry32" generator. Same seed, same numbers. */
export function seededRandom(seed: number): () => number {
  let a = seed >>> 0;
  return () => {
    a = (a + 0x6d2b79f5) >>> 0;
    let t = a;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

type Random = () => number;
const pick = <T>(r: Random, list: readonly T[]): T =>
  list[Math.min(list.length - 1, Math.floor(r() * list.length))]!;
const between = (r: Random, lo: number, hi: number): number => lo + (hi - lo) * r();
const roundTo = (x: number, step: number): number => Number((Math.round(x / step) * step).toFixed(6));

function someOf<T>(r: Random, list: readonly T[], count: number): T[] {
  const left = [...list];
  const out: T[] = [];
  while (out.length < count && left.length > 0) {
    out.push(left.splice(Math.min(left.length - 1, Math.floor(r() * left.length)), 1)[0]!);
  }
  return out;
}

const BASE_OILS = [
  'coconut oil',
  'olive oil',
  'palm oil',
  'shea butter',
  'castor oil',
  'rice bran oil',
  'cocoa butter',
  'sunflower oil',
  'lard',
  'sweet almond oil',
] as const;
const MINOR_OILS = ['beeswax', 'stearic acid'] as const;
const LIQUID_NAMES = [
  'goat milk',
  'cow milk',
  'coconut milk',
  'beer',
  'wine',
  'coffee',
  'tea',
  'aloe juice',
  'cream',
  'vinegar',
  'ice',
  'buttermilk',
  'lemon juice',
] as const;
const COLOURS = [
  'iron oxide red',
  'iron oxide yellow',
  'ultramarine blue',
  'titanium dioxide',
  'mica',
  'charcoal',
  'chromium oxide green',
  'kaolin',
] as const;

/**
 * A batch that a maker could ask for; amounts are on a scale's steps. About one
 * in thirty must be refused all the same, mostly because so much liquid goes to
 * the oils that the jug is too strong.
 */
export function plausibleRequest(seed: number): BatchRequest {
  const r = seededRandom(seed);
  const total = roundTo(between(r, 300, 3000), 50);
  const names: string[] = someOf(r, BASE_OILS, 1 + Math.floor(r() * 6));
  const weights = names.map(n =>
    n === 'castor oil'
      ? between(r, 0.05, 0.15)
      : n.endsWith('butter')
        ? between(r, 0.1, 0.4)
        : between(r, 0.3, 1),
  );
  const whole = sum(weights);
  const oils = names.map((name, i) => ({
    name,
    grams: Math.max(5, roundTo((total * weights[i]!) / whole, 1)),
  }));
  if (r() < 0.2)
    oils.push({ name: pick(r, MINOR_OILS), grams: Math.max(2, roundTo(total * between(r, 0.005, 0.03), 1)) });

  const kindDraw = r();
  const lye: LyeKind =
    kindDraw < 0.75
      ? 'naoh'
      : kindDraw < 0.85
        ? 'koh'
        : {
            kohShare: roundTo(between(r, 0.03, 0.6), 0.01),
            meaning: r() < 0.5 ? 'oils' : 'mass',
          };
  const waterDraw = r();
  const water: WaterSpec =
    waterDraw < 0.5
      ? { by: 'strength', percent: roundTo(between(r, 25, 40), 0.5) }
      : waterDraw < 0.8
        ? { by: 'ratio', waterPerLye: roundTo(between(r, 1.4, 3), 0.1) }
        : { by: 'oils', percent: roundTo(between(r, 28, 40), 1) };

  const masterbatchPercent = r() < 0.15 ? 50 : null;
  const liquids: BatchRequest['liquids'] =
    masterbatchPercent === null && r() < 0.45
      ? someOf(r, LIQUID_NAMES, r() < 0.8 ? 1 : 2).map(name => {
          const acid = name === 'vinegar' || name === 'lemon juice';
          const share = roundTo(acid ? between(r, 0.05, 0.2) : between(r, 0.1, 0.5), 0.05);
          const byGrams = r() < 0.4;
          return {
            name,
            grams: byGrams ? roundTo(Math.max(5, total * 0.3 * share), 5) : null,
            shareOfWaterReplaced: byGrams ? null : share,
            where: r() < 0.5 ? ('jug' as const) : ('oils' as const),
          };
        })
      : [];
  const additives = someOf(r, ADDITIVES, r() < 0.5 ? 0 : 1 + Math.floor(r() * 2)).map(a => ({
    name: a.name,
    grams: roundTo(
      Math.max(1, total * (a.acid !== null ? between(r, 0.005, 0.02) : between(r, 0.003, 0.03))),
      0.5,
    ),
  }));

  const portions: PortionRequest[] = [];
  if (r() < 0.6) {
    const count = 2 + Math.floor(r() * 4);
    const parts = Array.from({ length: count }, () => 1 + Math.floor(r() * 4));
    const partSum = sum(parts);
    for (let i = 0; i < count; i++) {
      const share = parts[i]! / partSum;
      portions.push({
        name: `portion ${i + 1}`,
        share,
        shareBy: r() < 0.5 ? 'mass' : 'volume',
        carrierOil:
          r() < 0.6 ? pick(r, ['sunflower oil', 'sweet almond oil', 'castor oil', 'olive oil']) : null,
        carrierOilGrams: 0,
        colourants: someOf(r, COLOURS, Math.floor(r() * 3)).map(name => ({
          name,
          tsp: roundTo(between(r, 0.03125, 0.5), 0.03125),
          ceilingTspPerCup: pick(r, [0.25, 0.5, 0.75, 1, 1.5]),
        })),
      });
      const p = portions[i]!;
      if (p.carrierOil !== null) p.carrierOilGrams = roundTo(between(r, 2, 15), 0.5);
    }
  }
  return {
    id: `plausible-${seed}`,
    oils,
    superfatPercent: roundTo(between(r, 2, 10), 0.5),
    lye,
    purityPercent: { naoh: pick(r, [100, 99, 98, 97]), koh: pick(r, [100, 95, 90, 85]) },
    water,
    liquids,
    waterHeldBackGrams: 0,
    masterbatchPercent,
    additives,
    extraLye: { naohGrams: r() < 0.05 && lye !== 'koh' ? roundTo(between(r, 0.5, 3), 0.1) : 0, kohGrams: 0 },
    portions,
    faults: [],
  };
}

type Spoil = { fault: string; apply: (q: BatchRequest, r: Random) => void };

const EXTREMES = [0, -1, -0.01, -1e9, 1e-12, 1e-6, 1e9, 1e15, 5e-324, 1.7e308] as const;

const SPOILS: readonly Spoil[] = [
  {
    fault: 'no oils',
    apply: q => {
      q.oils = [];
    },
  },
  {
    fault: 'all oils 0 g',
    apply: q => {
      for (const o of q.oils) o.grams = 0;
    },
  },
  {
    fault: 'extreme oil grams',
    apply: (q, r) => {
      pick(r, q.oils).grams = pick(r, EXTREMES);
    },
  },
  {
    fault: 'tiny batch',
    apply: q => {
      for (const o of q.oils) o.grams *= 1e-4;
    },
  },
  {
    fault: 'huge batch',
    apply: q => {
      for (const o of q.oils) o.grams *= 1e4;
    },
  },
  {
    fault: 'unknown oil',
    apply: (q, r) => {
      pick(r, q.oils).name = pick(r, [
        '',
        'mineral oil',
        'unobtainium butter',
        'COCONUT OIL ',
        '<b>olive</b>',
      ]);
    },
  },
  {
    fault: 'same oil twice',
    apply: q => {
      q.oils.push({ ...q.oils[0]! });
    },
  },
  {
    fault: 'wax only',
    apply: q => {
      q.oils = [{ name: 'beeswax', grams: 500 }];
    },
  },
  {
    fault: 'free acid only',
    apply: q => {
      q.oils = [{ name: 'stearic acid', grams: 500 }];
    },
  },
  {
    fault: 'superfat out of range',
    apply: (q, r) => {
      q.superfatPercent = pick(r, [-5, -0.5, -150, 100, 100.5, 1000, 1e-9]);
    },
  },
  {
    fault: 'superfat very high',
    apply: (q, r) => {
      q.superfatPercent = pick(r, [25, 40, 60, 99.9]);
    },
  },
  {
    fault: 'purity out of range',
    apply: (q, r) => {
      const p = pick(r, [0, -1, 100.1, 1000, 1e-6]);
      q.purityPercent = { naoh: p, koh: p };
    },
  },
  {
    fault: 'KOH share out of range',
    apply: (q, r) => {
      q.lye = { kohShare: pick(r, [-0.1, 1.1, 40, 1e-9]), meaning: 'oils' };
    },
  },
  {
    fault: 'KOH share at an end',
    apply: (q, r) => {
      q.lye = { kohShare: pick(r, [0, 1]), meaning: pick(r, ['oils', 'mass'] as const) };
    },
  },
  {
    fault: 'lye too strong',
    apply: (q, r) => {
      q.water = pick(r, [
        { by: 'strength', percent: 50.1 },
        { by: 'strength', percent: 60 },
        { by: 'strength', percent: 100 },
        { by: 'ratio', waterPerLye: 0.5 },
        { by: 'ratio', waterPerLye: 0.99 },
        { by: 'oils', percent: 10 },
      ] as WaterSpec[]);
    },
  },
  {
    fault: 'lye exactly at the ceiling',
    apply: q => {
      q.water = { by: 'strength', percent: 50 };
      q.liquids = [];
    },
  },
  {
    fault: 'water spec out of range',
    apply: (q, r) => {
      q.water = pick(r, [
        { by: 'strength', percent: 0 },
        { by: 'strength', percent: -33 },
        { by: 'strength', percent: 101 },
        { by: 'ratio', waterPerLye: -1 },
        { by: 'ratio', waterPerLye: 0 },
        { by: 'oils', percent: -5 },
        { by: 'oils', percent: 0 },
      ] as WaterSpec[]);
    },
  },
  {
    fault: 'lye very weak',
    apply: (q, r) => {
      q.water = pick(r, [
        { by: 'strength', percent: 1 },
        { by: 'ratio', waterPerLye: 50 },
        { by: 'oils', percent: 300 },
      ] as WaterSpec[]);
    },
  },
  {
    fault: 'all water is milk',
    apply: (q, r) => {
      q.liquids = [
        {
          name: pick(r, ['goat milk', 'coconut milk', 'cream']),
          grams: null,
          shareOfWaterReplaced: 1,
          where: 'jug',
        },
      ];
    },
  },
  {
    fault: 'all water goes to the oils as milk',
    apply: (q, r) => {
      q.liquids = [
        {
          name: pick(r, ['goat milk', 'coconut milk', 'cream']),
          grams: null,
          shareOfWaterReplaced: 1,
          where: 'oils',
        },
      ];
    },
  },
  {
    fault: 'liquid replaces more than the water',
    apply: (q, r) => {
      q.liquids = [
        {
          name: pick(r, LIQUID_NAMES),
          grams: null,
          shareOfWaterReplaced: pick(r, [1.01, 1.5, 50]),
          where: 'jug',
        },
      ];
    },
  },
  {
    fault: 'two liquids replace more than the water',
    apply: q => {
      q.liquids = [
        { name: 'goat milk', grams: null, shareOfWaterReplaced: 0.6, where: 'oils' },
        { name: 'aloe juice', grams: null, shareOfWaterReplaced: 0.6, where: 'jug' },
      ];
    },
  },
  {
    fault: 'milk to the oils leaves the jug too strong',
    apply: q => {
      q.water = { by: 'strength', percent: 40 };
      q.liquids = [{ name: 'goat milk', grams: null, shareOfWaterReplaced: 0.6, where: 'oils' }];
    },
  },
  {
    fault: 'cream in the jug leaves too little real water',
    apply: q => {
      q.water = { by: 'strength', percent: 45 };
      q.liquids = [{ name: 'cream', grams: null, shareOfWaterReplaced: 1, where: 'jug' }];
    },
  },
  {
    fault: 'extreme liquid grams',
    apply: (q, r) => {
      q.liquids = [
        { name: pick(r, LIQUID_NAMES), grams: pick(r, EXTREMES), shareOfWaterReplaced: null, where: 'jug' },
      ];
    },
  },
  {
    fault: 'unknown liquid',
    apply: (q, r) => {
      q.liquids = [
        { name: pick(r, ['', 'mercury', 'Goat  Milk']), grams: 50, shareOfWaterReplaced: null, where: 'jug' },
      ];
    },
  },
  {
    fault: 'vinegar instead of water',
    apply: q => {
      q.liquids = [{ name: 'vinegar', grams: null, shareOfWaterReplaced: 1, where: 'jug' }];
    },
  },
  {
    fault: 'too much water held back',
    apply: (q, r) => {
      q.waterHeldBackGrams = pick(r, [1e6, 1e12]);
    },
  },
  {
    fault: 'negative water held back',
    apply: q => {
      q.waterHeldBackGrams = -10;
    },
  },
  {
    fault: 'masterbatch weaker than the wanted lye',
    apply: q => {
      q.masterbatchPercent = 30;
      q.water = { by: 'strength', percent: 35 };
      q.liquids = [];
    },
  },
  {
    fault: 'masterbatch strength out of range',
    apply: (q, r) => {
      q.masterbatchPercent = pick(r, [0, -50, 101, 1e-9, 75]);
    },
  },
  {
    fault: 'acid eats all the lye',
    apply: q => {
      q.additives.push({ name: 'citric acid', grams: sum(q.oils.map(o => o.grams)) * 0.5 });
    },
  },
  {
    fault: 'extreme additive grams',
    apply: (q, r) => {
      q.additives.push({ name: pick(r, ADDITIVES).name, grams: pick(r, EXTREMES) });
    },
  },
  {
    fault: 'unknown additive',
    apply: (q, r) => {
      q.additives.push({ name: pick(r, ['', 'glitter', 'sand']), grams: 10 });
    },
  },
  {
    fault: 'more salt than oil',
    apply: q => {
      q.additives.push({ name: 'salt', grams: sum(q.oils.map(o => o.grams)) * 1.5 });
    },
  },
  {
    fault: 'negative extra lye',
    apply: q => {
      q.extraLye = { naohGrams: -5, kohGrams: 0 };
    },
  },
  {
    fault: 'extra lye makes the soap caustic',
    apply: q => {
      q.extraLye = { naohGrams: sum(q.oils.map(o => o.grams)) * 0.1, kohGrams: 0 };
    },
  },
  {
    fault: 'portions add up to more than the batch',
    apply: q => {
      q.portions = [0.5, 0.5, 0.2].map((share, i) => emptyPortion(`p${i}`, share));
    },
  },
  {
    fault: 'portions leave some of the batch',
    apply: q => {
      q.portions = [0.3, 0.3].map((share, i) => emptyPortion(`p${i}`, share));
    },
  },
  {
    fault: 'extreme portion share',
    apply: (q, r) => {
      q.portions = [emptyPortion('p', pick(r, [0, -0.5, 1.0001, 2, 1e-9]))];
    },
  },
  {
    fault: 'carrier oil larger than the portion',
    apply: q => {
      q.portions = [
        { ...emptyPortion('p0', 0.01), carrierOil: 'sunflower oil', carrierOilGrams: 500 },
        emptyPortion('p1', 0.99),
      ];
    },
  },
  {
    fault: 'extreme carrier oil',
    apply: (q, r) => {
      q.portions = [
        { ...emptyPortion('p0', 1), carrierOil: 'sunflower oil', carrierOilGrams: pick(r, EXTREMES) },
      ];
    },
  },
  {
    fault: 'colour above its ceiling',
    apply: q => {
      q.portions = [
        { ...emptyPortion('p0', 1), colourants: [{ name: 'mica', tsp: 500, ceilingTspPerCup: 1 }] },
      ];
    },
  },
  {
    fault: 'colours above the ceiling only together',
    apply: q => {
      q.portions = [
        {
          ...emptyPortion('p0', 1),
          colourants: COLOURS.map(name => ({
            name,
            tsp: (sum(q.oils.map(o => o.grams)) / 1000) * 1.3,
            ceilingTspPerCup: 1,
          })),
        },
      ];
    },
  },
  {
    fault: 'extreme colour dose',
    apply: (q, r) => {
      q.portions = [
        {
          ...emptyPortion('p0', 1),
          colourants: [{ name: 'mica', tsp: pick(r, EXTREMES), ceilingTspPerCup: pick(r, [0, 1, -1]) }],
        },
      ];
    },
  },
];

function emptyPortion(name: string, share: number): PortionRequest {
  return { name, share, shareBy: 'mass', carrierOil: null, carrierOilGrams: 0, colourants: [] };
}

/** Names of all faults that `nastyRequest` can put in, in order: seed k (k < length) puts in fault k first. */
export const FAULTS: readonly string[] = SPOILS.map(s => s.fault);

/**
 * A plausible request spoiled in one to three ways, named in `faults`.
 * The first fault is number (seed mod FAULTS.length), so that a run of
 * FAULTS.length seeds meets each. A later fault may undo an earlier one, so
 * not every nasty request must be refused; `recomputeBatch` says which must.
 */
export function nastyRequest(seed: number): BatchRequest {
  const r = seededRandom((seed ^ 0x5bd1e995) >>> 0);
  const q = plausibleRequest(Math.floor(r() * 4294967296));
  q.id = `nasty-${seed}`;
  const chosen = [SPOILS[((seed % SPOILS.length) + SPOILS.length) % SPOILS.length]!];
  if (r() < 0.3) chosen.push(pick(r, SPOILS));
  if (r() < 0.1) chosen.push(pick(r, SPOILS));
  for (const s of chosen) {
    if (q.oils.length === 0 && s.fault.includes('oil')) continue;
    s.apply(q, r);
    q.faults.push(s.fault);
  }
  return q;
}

/** `count` requests from consecutive seeds. */
export function requests(kind: 'plausible' | 'nasty', firstSeed: number, count: number): BatchRequest[] {
  return Array.from({ length: count }, (_, i) =>
    kind === 'plausible' ? plausibleRequest(firstSeed + i) : nastyRequest(firstSeed + i),
  );
}

// ---------------------------------------------------------------------------
// A whole batch
// ---------------------------------------------------------------------------

export type SapChoice = 'min' | 'mid' | 'max' | ((name: string) => number | undefined);

export type RecomputeOptions = {
  /** which saponification values; a function lets a test use the judged program's own. Default 'mid' */
  sap?: SapChoice;
  /** add lye for the acids in liquids and additives? Default false */
  compensateAcids?: boolean;
  /** water fraction of a liquid; default LIQUIDS */
  waterFraction?: (name: string) => number | undefined;
  temperatureC?: number;
};

export type PortionResult = {
  name: string;
  massGrams: number;
  volumeMl: number;
  superfatPercent: number;
  colourants: { fractions: number[]; total: number; allowed: boolean };
};

export type BatchResult = {
  ok: true;
  oilsGrams: number;
  /** full demand of the oils, g KOH */
  kohDemandGrams: number;
  /** lye for the oils alone, weighed g */
  lyeForOils: LyeGrams;
  /** KOH equivalent used by acids of liquids and additives, g */
  acidKohGrams: number;
  /** lye that would make up for the acids, weighed g (part of `lye` only if compensated) */
  lyeForAcids: LyeGrams;
  /** everything that goes into the jug: oils, acids if compensated, extra */
  lye: LyeGrams;
  /** real superfat with acids and extra lye counted; fat of milk not counted */
  superfatPercent: number;
  /** the same with the fat of milk, cream and coconut milk as further oil */
  superfatWithLiquidFatPercent: number;
  waterWantedGrams: number;
  plainWaterGrams: number;
  liquids: { name: string; grams: number; waterGrams: number; where: 'jug' | 'oils' }[];
  /** all water in the batter but that of additives, g */
  realWaterGrams: number;
  jug: { waterGrams: number; strengthPercent: number };
  masterbatch: { solutionGrams: number; waterInSolutionGrams: number; additionalWaterGrams: number } | null;
  batter: { massGrams: number; volumeMl: number; densityGPerMl: number };
  portions: PortionResult[];
  /** true, but worth a warning */
  warnings: string[];
};

export type Refusal = { ok: false; refusals: string[] };

/**
 * A whole request worked out, or refused with reasons.
 *
 * Order: demand of the oils (ISO 3657) -> lye at the wanted superfat -> lye for
 * acids (if wanted) and extra lye -> water from the lye for the oils plus acids
 * (extra lye by hand does not change the water) -> liquids take the place of
 * water gram for gram -> jug -> batter -> portions.
 * The strength in a water spec is taken against the weighed lye.
 */
export function recomputeBatch(q: BatchRequest, options: RecomputeOptions = {}): BatchResult | Refusal {
  try {
    return recomputeOrThrow(q, options);
  } catch (e) {
    if (e instanceof RangeError) return { ok: false, refusals: [e.message] };
    throw e;
  }
}

function sapValue(name: string, choice: SapChoice): number {
  if (typeof choice === 'function') {
    const v = choice(name);
    if (v === undefined) throw new RangeError(`no saponification value for "${name}"`);
    return v;
  }
  const row = sapRow(name);
  if (row === undefined) throw new RangeError(`no saponification value for "${name}"`);
  return row[choice];
}

function recomputeOrThrow(q: BatchRequest, options: RecomputeOptions): BatchResult | Refusal {
  const refusals: string[] = [];
  const warnings: string[] = [];
  const sapChoice = options.sap ?? 'mid';
  const withSap = (o: { name: string; grams: number }): OilAmount => ({
    grams: need(`${o.name} grams`, o.grams),
    sapKohMgPerG: sapValue(o.name, sapChoice),
  });

  // Lye
  const oils = q.oils.map(withSap);
  const oilsGrams = sum(oils.map(o => o.grams));
  if (!(oilsGrams > 0) || !Number.isFinite(oilsGrams))
    throw new RangeError('there must be some oil, and a finite amount');
  const demand = kohDemandGrams(oils);
  need('superfatPercent', q.superfatPercent, 0, 100);
  const lyeForOils = lyeFor({
    oils,
    superfatPercent: q.superfatPercent,
    kind: q.lye,
    purityPercent: q.purityPercent,
  });
  need('extraLye.naohGrams', q.extraLye.naohGrams);
  need('extraLye.kohGrams', q.extraLye.kohGrams);

  // Liquids depend on the water, the water on the lye, the lye (if acids are
  // made up for) on the liquids. Shares are therefore taken of the water for the
  // oils' lye plus the lye for acids in additives; acids of liquids come on top.
  const additives = q.additives.map(a => {
    const row = additiveRow(a.name);
    if (row === undefined) throw new RangeError(`unknown additive "${a.name}"`);
    return { row, grams: need(`${a.name} grams`, a.grams) };
  });
  const additiveAcid = sum(
    additives.map(a =>
      a.row.acid === null ? 0 : acidKohGrams(a.row.acid.acid, a.grams * a.row.acid.gramsPerGram),
    ),
  );
  const compensate = options.compensateAcids ?? false;
  const lyeForAdditiveAcid = lyeForKohEquivalent(additiveAcid, q.lye, q.purityPercent);
  const basisGrams =
    lyeForOils.naohGrams +
    lyeForOils.kohGrams +
    (compensate ? lyeForAdditiveAcid.naohGrams + lyeForAdditiveAcid.kohGrams : 0);
  const waterWantedGrams = waterFor(q.water, basisGrams, oilsGrams);

  const liquids = q.liquids.map(l => {
    const row = liquidRow(l.name);
    const wf = options.waterFraction?.(l.name) ?? row?.waterFraction;
    if (wf === undefined) throw new RangeError(`unknown liquid "${l.name}"`);
    const grams =
      l.grams !== null
        ? need(`${l.name} grams`, l.grams)
        : need(`${l.name} share`, l.shareOfWaterReplaced ?? 0, 0, 1) * waterWantedGrams;
    return { name: l.name, where: l.where, grams, wf: need('waterFraction', wf, 0, 1), row };
  });
  const liquidGrams = sum(liquids.map(l => l.grams));
  if (liquidGrams > waterWantedGrams * (1 + 1e-9))
    refusals.push('the liquids replace more than all of the water');
  const plainWaterGrams = Math.max(0, waterWantedGrams - liquidGrams);

  const liquidAcid = sum(
    liquids.map(l => (l.row?.acid ? acidKohGrams(l.row.acid.acid, l.grams * l.row.acid.gramsPerGram) : 0)),
  );
  const acid = additiveAcid + liquidAcid;
  const lyeForAcid = lyeForKohEquivalent(acid, q.lye, q.purityPercent);
  const lye: LyeGrams = {
    naohGrams: lyeForOils.naohGrams + q.extraLye.naohGrams + (compensate ? lyeForAcid.naohGrams : 0),
    kohGrams: lyeForOils.kohGrams + q.extraLye.kohGrams + (compensate ? lyeForAcid.kohGrams : 0),
  };
  const lyeGrams = lye.naohGrams + lye.kohGrams;

  // Jug
  const held = need('waterHeldBackGrams', q.waterHeldBackGrams);
  if (held > plainWaterGrams * (1 + 1e-12)) refusals.push('more water held back than there is plain water');
  const jugResult = jug({
    lyeGrams,
    plainWaterGrams,
    otherLiquids: liquids.filter(l => l.where === 'jug').map(l => ({ grams: l.grams, waterFraction: l.wf })),
    waterHeldBackGrams: Math.min(held, plainWaterGrams),
  });
  if (!strengthAllowed(jugResult.strengthPercent)) {
    refusals.push(
      `the lye would be ${jugResult.strengthPercent.toFixed(2)} %, above ${MAX_JUG_STRENGTH_PERCENT} %`,
    );
  }
  let master: BatchResult['masterbatch'] = null;
  if (q.masterbatchPercent !== null) {
    if (!strengthAllowed(need('masterbatchPercent', q.masterbatchPercent, 0, 100)))
      refusals.push(`a stock solution above ${MAX_JUG_STRENGTH_PERCENT} % does not stay dissolved`);
    const m = masterbatch({ lyeGrams, waterGrams: plainWaterGrams, solutionPercent: q.masterbatchPercent });
    if (m.ok)
      master = {
        solutionGrams: m.solutionGrams,
        waterInSolutionGrams: m.waterInSolutionGrams,
        additionalWaterGrams: m.additionalWaterGrams,
      };
    else refusals.push(m.reason);
  }

  // Superfat
  const alkali = kohEquivalentGrams(lye, q.purityPercent);
  const superfat = superfatPercentOf({ alkaliKohGrams: alkali, acidKohGrams: acid, oils });
  const liquidFats: OilAmount[] = liquids
    .filter(l => (l.row?.fatFraction ?? 0) > 0)
    .map(l => ({ grams: l.grams * l.row!.fatFraction, sapKohMgPerG: l.row!.fatSap }));
  const superfatWithFat = superfatPercentOf({
    alkaliKohGrams: alkali,
    acidKohGrams: acid,
    oils: [...oils, ...liquidFats],
  });
  if (superfat < -1e-9) refusals.push(`free alkali: superfat ${superfat.toFixed(2)} %`);
  if (superfat >= 100 && q.superfatPercent < 100) refusals.push('the acids use up all of the lye');
  if (acid > 0 && !compensate) warnings.push('acid uses up lye: the real superfat is above the wanted one');
  if (superfat > 20) warnings.push('superfat above 20 %');

  // Batter
  const t = options.temperatureC ?? 40;
  const realWaterGrams = plainWaterGrams + sum(liquids.map(l => l.grams * l.wf));
  const oilDensity = (name: string): { densityGPerMl: number; densityAtC: number } => {
    const row = sapRow(name);
    return row === undefined
      ? { densityGPerMl: 0.915, densityAtC: 20 }
      : { densityGPerMl: row.densityGPerMl, densityAtC: row.densityAtC };
  };
  const batterResult = batter({
    oils: q.oils.map(o => ({ grams: o.grams, ...oilDensity(o.name) })),
    lye,
    waterGrams: plainWaterGrams,
    others: [
      ...liquids.map(l => ({ grams: l.grams, densityGPerMl: l.row?.densityGPerMl ?? 1 })),
      ...additives.map(a => ({ grams: a.grams, densityGPerMl: a.row.densityGPerMl })),
    ],
    temperatureC: t,
  });

  // Portions
  const shares = q.portions.map(p => need(`${p.name} share`, p.share, 0, 1));
  if (sum(shares) > 1 + 1e-9) refusals.push('the portions add up to more than the batch');
  else if (shares.length > 0 && sum(shares) < 1 - 1e-9) warnings.push('the portions leave some of the batch');
  const portions = q.portions.map((p): PortionResult => {
    const grams = need(`${p.name} carrier oil grams`, p.carrierOilGrams);
    const added = grams === 0 || p.carrierOil === null ? [] : [withSap({ name: p.carrierOil, grams })];
    const d = p.carrierOil === null ? null : oilDensity(p.carrierOil);
    const volume =
      p.share * batterResult.volumeMl +
      (d === null ? 0 : grams / oilDensityAt(d.densityGPerMl, d.densityAtC, t));
    if (p.share === 0) refusals.push(`${p.name} is empty`);
    const colourants = colourantUse({ volumeMl: volume, doses: p.colourants });
    if (!colourants.allowed) warnings.push(`${p.name}: colour above its ceiling`);
    return {
      name: p.name,
      massGrams: p.share * batterResult.massGrams + (p.carrierOil === null ? 0 : grams),
      volumeMl: volume,
      superfatPercent:
        p.share === 0 && added.length === 0
          ? Number.NaN
          : portionSuperfatPercent({
              share: p.share,
              alkaliKohGrams: alkali,
              acidKohGrams: acid,
              batchOils: oils,
              addedOils: added,
            }),
      colourants,
    };
  });

  for (const v of [lyeGrams, waterWantedGrams, batterResult.massGrams, batterResult.volumeMl, superfat]) {
    if (!Number.isFinite(v)) throw new RangeError('amounts too large to compute with');
  }
  if (refusals.length > 0) return { ok: false, refusals };
  return {
    ok: true,
    oilsGrams,
    kohDemandGrams: demand,
    lyeForOils,
    acidKohGrams: acid,
    lyeForAcids: lyeForAcid,
    lye,
    superfatPercent: superfat,
    superfatWithLiquidFatPercent: superfatWithFat,
    waterWantedGrams,
    plainWaterGrams,
    liquids: liquids.map(l => ({ name: l.name, grams: l.grams, waterGrams: l.grams * l.wf, where: l.where })),
    realWaterGrams,
    jug: jugResult,
    masterbatch: master,
    batter: batterResult,
    portions,
    warnings,
  };
}

/**
 * Lye for the oils, weighed g, at the lowest and the highest saponification
 * values of the cited ranges: a program's figure for the same request, with
 * whatever table it uses, ought to lie between the two. Throws a RangeError
 * where `lyeFor` does, and for a fat that SAP_TABLE does not hold.
 */
export function lyeBand(q: BatchRequest): { low: LyeGrams; mid: LyeGrams; high: LyeGrams } {
  const at = (choice: 'min' | 'mid' | 'max'): LyeGrams =>
    lyeFor({
      oils: q.oils.map(o => ({ grams: o.grams, sapKohMgPerG: sapValue(o.name, choice) })),
      superfatPercent: q.superfatPercent,
      kind: q.lye,
      purityPercent: q.purityPercent,
    });
  return { low: at('min'), mid: at('mid'), high: at('max') };
}

// ---------------------------------------------------------------------------
// Worked examples
// ---------------------------------------------------------------------------

export type WorkedExample = { name: string; got: number; want: number; tolerance: number };

/** The hand-computed examples of the heading, with what the functions give. */
export function workedExamples(): WorkedExample[] {
  const out: WorkedExample[] = [];
  const add = (name: string, got: number, want: number, tolerance: number): void => {
    out.push({ name, got, want, tolerance });
  };

  const olive = [{ grams: 1000, sapKohMgPerG: 190 }];
  const one = lyeFor({ oils: olive, superfatPercent: 5, kind: 'naoh', purityPercent: 100 });
  add('1 NaOH', one.naohGrams, 128.67534, 1e-5);
  add('1 KOH', one.kohGrams, 0, 0);
  add('1 water', waterFromStrength(one.naohGrams, 100 / 3), 257.35068, 2e-5);

  const mix = [
    { grams: 700, sapKohMgPerG: 190 },
    { grams: 300, sapKohMgPerG: 256.5 },
  ];
  const purity = { naoh: 98, koh: 90 };
  const a = lyeFor({
    oils: mix,
    superfatPercent: 8,
    kind: { kohShare: 0.4, meaning: 'oils' },
    purityPercent: purity,
  });
  add('2a KOH', a.kohGrams, 85.84622, 1e-5);
  add('2a NaOH', a.naohGrams, 84.30377, 2e-5);
  const b = lyeFor({
    oils: mix,
    superfatPercent: 8,
    kind: { kohShare: 0.4, meaning: 'mass' },
    purityPercent: purity,
  });
  add('2b KOH', b.kohGrams, 69.13865, 2e-5);
  add('2b NaOH', b.naohGrams, 95.24202, 2e-5);
  add('2 same hydroxide', kohEquivalentGrams(a, purity), kohEquivalentGrams(b, purity), 1e-9);

  add('3 citric acid', acidNaohGrams('citric acid anhydrous', 20), 12.49126, 1e-5);
  add(
    '3 superfat',
    superfatPercentOf({
      alkaliKohGrams: kohEquivalentGrams(one, 100),
      acidKohGrams: acidKohGrams('citric acid anhydrous', 20),
      oils: olive,
    }),
    14.2222,
    1e-4,
  );

  const j = jug({
    lyeGrams: 128.68,
    plainWaterGrams: 150,
    otherLiquids: [{ grams: 100, waterFraction: 0.8703 }],
    waterHeldBackGrams: 20,
  });
  add('4 water', j.waterGrams, 217.03, 1e-9);
  add('4 strength', j.strengthPercent, 37.222, 1e-4);

  const m = masterbatch({ lyeGrams: 128.68, waterGrams: 257.36, solutionPercent: 50 });
  add('5 solution', m.solutionGrams, 257.36, 1e-9);
  add('5 water to add', m.ok ? m.additionalWaterGrams : Number.NaN, 128.68, 1e-9);
  const refused = masterbatch({ lyeGrams: 128.68, waterGrams: 100, solutionPercent: 50 });
  add('5 refused, short by', refused.ok ? Number.NaN : refused.shortfallGrams, 28.68, 1e-9);

  add(
    '6 portion superfat',
    portionSuperfatPercent({
      share: 0.25,
      alkaliKohGrams: kohEquivalentGrams(one, 100),
      batchOils: olive,
      addedOils: [{ grams: 10, sapKohMgPerG: 190.5 }],
    }),
    8.66309,
    1e-5,
  );

  add(
    '7 ceiling',
    colourantUse({
      volumeMl: 2 * US_CUP_ML,
      doses: [
        { tsp: 1, ceilingTspPerCup: 1 },
        { tsp: 0.5, ceilingTspPerCup: 0.5 },
      ],
    }).total,
    1,
    1e-12,
  );
  add('7 teaspoons in a cup', US_CUP_ML / US_TEASPOON_ML, 48, 1e-12);

  const v = batter({
    oils: [{ grams: 1000, densityGPerMl: 0.905, densityAtC: 40 }],
    lye: { naohGrams: 134, kohGrams: 0 },
    waterGrams: 380,
  });
  add('8 volume', v.volumeMl, 1508.57, 0.02);
  add('8 density', v.densityGPerMl, 1.0036, 5e-5);
  return out;
}
