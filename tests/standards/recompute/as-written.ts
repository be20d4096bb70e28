import { readPlan, type WrittenPlan, withColours } from '../../../src/engine/batch/planning/written-plan.ts';
import type { PlanRequest } from '../../../src/engine/batch/request.ts';
import { findColourant } from '../../../src/engine/colourants/asked/find-colourant.ts';
import type { BatchRequest, PortionRequest } from './recompute.ts';

/** A number as a member types it: no exponent, no thousands. */
const plain = new Intl.NumberFormat('en', { useGrouping: false, maximumFractionDigits: 20 });
const typed = (value: number): string => plain.format(value);

const COLOUR_NAMES: Readonly<Record<string, string>> = {
  'iron oxide red': 'red iron oxide',
  'iron oxide yellow': 'yellow iron oxide',
  mica: 'gold mica',
  charcoal: 'activated charcoal',
};

/** Powders that a plan has no word for; they bring no water and use up no lye. */
/** Names there that mean another thing here: bare citric acid is counted as the monohydrate. */
const NAMES: Readonly<Record<string, string>> = { 'citric acid': 'anhydrous citric acid' };
const LEFT_OUT: ReadonlySet<string> = new Set(['titanium dioxide', 'charcoal', 'sodium citrate', 'silk']);

function lyeText({ lye, masterbatchPercent }: BatchRequest): string {
  if (typeof lye === 'object') {
    const [sodium, potassium] = [100 - 100 * lye.kohShare, 100 * lye.kohShare].map(typed);
    const both = `NaOH ${sodium}% + KOH ${potassium}%`;
    return masterbatchPercent === null ? both : `${both} solution`;
  }
  const alkali = lye === 'koh' ? 'KOH' : 'NaOH';
  return masterbatchPercent === null ? alkali : `${alkali} ${typed(masterbatchPercent)}% solution`;
}

function waterText({ water }: BatchRequest): string {
  if (water.by === 'strength') return `${typed(water.percent)}% lye`;
  return water.by === 'ratio' ? `${typed(water.waterPerLye)}:1` : `${typed(water.percent)}% of oils`;
}

function portionText({ share, colourants, carrierOil, carrierOilGrams }: PortionRequest): string {
  const colours = colourants.map(
    ({ name, tsp }) => `${COLOUR_NAMES[name] ?? name} at ${typed(tsp)} tsp per cup`,
  );
  const carrier = carrierOil === null ? '' : ` in ${typed(carrierOilGrams)} ml ${carrierOil}`;
  return `${typed(100 * share)}% ${colours.length === 0 ? 'plain' : `${colours.join(' + ')}${carrier}`}`;
}

/**
 * The request as a member writes it into `/plan`. What a plan has no words for is left out: alkali added by hand, water
 * held back by hand (a plan holds back what its colours bring), one purity for each of two alkalis.
 */
export function asWritten(q: BatchRequest): WrittenPlan {
  const liquids = q.liquids.map(({ name, grams, shareOfWaterReplaced, where }) => {
    const amount = grams === null ? `${typed(100 * (shareOfWaterReplaced ?? 0))}%` : `${typed(grams)} g`;
    return `${name} ${amount} in the ${where}`;
  });
  const additives = q.additives.filter(({ name }) => !LEFT_OUT.has(name));
  return {
    oils: q.oils.map(({ name, grams }) => `${name} ${typed(grams)} g`).join(', '),
    superfat: q.superfatPercent,
    lye: lyeText(q),
    purity: q.lye === 'koh' ? q.purityPercent.koh : q.purityPercent.naoh,
    water: waterText(q),
    ...(liquids.length > 0 && { liquid: liquids.join('; ') }),
    ...(additives.length > 0 && {
      additives: additives.map(({ name, grams }) => `${NAMES[name] ?? name} ${typed(grams)} g`).join('; '),
    }),
    ...(q.portions.length > 0 && { portions: q.portions.map(portionText).join('; ') }),
    scale: 0.1,
    reserve: 0,
    // Waxes and stearic acid pour hot; nothing else may.
    start: q.oils.some(({ name }) => /wax|stearic/i.test(name)) ? '85 C' : '55 C',
  };
}

const found = new Map<string, ReturnType<typeof findColourant>>();
/** A name is looked up once: ten thousand plans name a few colours. */
function colourantOf(text: string) {
  const colourant = found.get(text) ?? findColourant(text);
  found.set(text, colourant);
  return { colourant };
}

/** The request through the reading that `/plan` uses. Throws its Refusals. */
export function asPlan(q: BatchRequest): PlanRequest {
  return withColours(readPlan(asWritten(q)), colourantOf);
}
