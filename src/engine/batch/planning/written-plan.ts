import type { DoseAsked } from '../../dosing/request.ts';
import { type HeatProcess, type HeatSetting, type MouldMaterial, USUAL_HEAT } from '../../heat/setting.ts';
import { parseTemperature } from '../../heat/temperature.ts';
import { MEASURES, type Measures } from '../../quantities/units.ts';
import { refuse } from '../../refusal.ts';
import { parseAdditives } from '../additives/additives.ts';
import { parseFragrance } from '../additives/fragrance.ts';
import { checkPlainSize, parseSize } from '../batch-size.ts';
import { parseLiquids } from '../liquids/liquid-list.ts';
import { parseLye, speaksOfMasterbatch } from '../lye/lye-choice.ts';
import { parseWater } from '../lye/water.ts';
import type { OilBlend } from '../oils/blend.ts';
import { oilsOfBatch } from '../oils/lists/bare-grams.ts';
import { parsePortions } from '../portions/portion-list.ts';
import { keptName } from '../portions/portion-name.ts';
import type { BatchSize, LyeChoice, PlanRequest, PortionAsk, Swirl } from '../request.ts';
import { checkOven, checkStart, hottestOven } from '../start.ts';

declare module '../../refusal.ts' {
  interface Reasons {
    'size-missing': Record<never, never>;
  }
}

/** A plan as it is written: one text or number an option, so that a recipe can be kept as its own words. */
export type WrittenPlan = {
  readonly oils: string;
  /** May be left out where the oils come by weight. */
  readonly size?: string;
  /** Percent. */
  readonly superfat?: number;
  readonly lye?: string;
  /** Percent, of the one alkali or of both. */
  readonly purity?: number;
  readonly water?: string;
  readonly portions?: string;
  readonly additives?: string;
  /** What stands in the place of water. */
  readonly liquid?: string;
  readonly fragrance?: string;
  /** Grams that the scale steps in. */
  readonly scale?: number;
  /** Percent of the batter. */
  readonly reserve?: number;
  readonly swirl?: Swirl;
  readonly process?: HeatProcess;
  readonly material?: MouldMaterial;
  readonly room?: string;
  readonly start?: string;
  readonly oven?: string;
};

/** A plan that is read but for its colours, which the door finds on shelf or in catalogue. */
export type ReadPlan = Omit<PlanRequest, 'portions'> & { readonly portions: readonly PortionAsk[] };

/** What is taken when nothing is said (common practice). */
const USUAL = { superfat: 5, lye: 'NaOH', water: '33% lye', scale: 0.1, reserve: 2 } as const;

/**
 * Reads a whole plan, with the usual where nothing is said: 5 % superfat, NaOH, 33 % lye, a 0.1 g scale, 2 % reserve.
 * Throws a Refusal `size-missing`, or one of any option's own.
 * @example coloursNamed(readPlan({ oils: 'olive 100%', size: '1000 g oils', portions: '1 cup gold mica; rest plain' })) // ['gold mica']
 */
export function readPlan(written: WrittenPlan, measures: Measures = MEASURES.us): ReadPlan {
  const oils = oilsOfBatch(written.oils);
  const { lye, water } = lyeAndWater(written);
  const alkali = parseLye(lye ?? USUAL.lye);
  const heat = heatOf(written);
  checkStart(heat.startC, oils, alkali);
  checkOven(heat);
  const size = sizeOf(written.size, oils);
  checkPlainSize(size, written.size ?? written.oils);
  return {
    oils,
    size,
    superfatPercent: written.superfat ?? USUAL.superfat,
    ...(written.superfat === undefined && { isSuperfatUsual: true }),
    lye: withPurity(alkali, written.purity),
    water: parseWater(water ?? USUAL.water),
    portions: parsePortions(written.portions ?? '', measures),
    additives: parseAdditives(written.additives ?? ''),
    liquids: parseLiquids(written.liquid ?? ''),
    fragrance: written.fragrance === undefined ? undefined : parseFragrance(written.fragrance),
    scaleStepGrams: written.scale ?? USUAL.scale,
    reservePercent: written.reserve ?? USUAL.reserve,
    swirl: written.swirl ?? 'in-the-pot',
    heat,
    measures,
  };
}

/** `masterbatch 1:1` where the water stands is how the lye comes, not how much water the batch has. */
function lyeAndWater({ lye, water }: WrittenPlan): Pick<WrittenPlan, 'lye' | 'water'> {
  const pieces = (water ?? '').split(/[;,](?!\d)/u);
  const solution = pieces.find(speaksOfMasterbatch);
  if (solution === undefined)
    return { ...(lye !== undefined && { lye }), ...(water !== undefined && { water }) };
  const rest = pieces.filter(piece => piece !== solution && piece.trim() !== '').join(' ');
  return { lye: lye === undefined ? solution : `${lye} ${solution}`, ...(rest !== '' && { water: rest }) };
}

function sizeOf(written: string | undefined, { totalGrams }: OilBlend): BatchSize {
  if (written !== undefined) return parseSize(written);
  return totalGrams === undefined ? refuse('size-missing', {}) : { by: 'oils', grams: totalGrams };
}

function withPurity(lye: LyeChoice, percent: number | undefined): LyeChoice {
  if (percent === undefined) return lye;
  const purity = percent / 100;
  if (lye.kind === 'both') return { naohPurity: purity, kohPurity: purity, ...lye };
  return lye.kind === 'NaOH' ? { naohPurity: purity, ...lye } : { kohPurity: purity, ...lye };
}

function heatOf({ process, material, room, start, oven }: WrittenPlan): HeatSetting {
  return {
    process: process ?? USUAL_HEAT.process,
    material: material ?? USUAL_HEAT.material,
    roomC: room === undefined ? USUAL_HEAT.roomC : parseTemperature(room),
    startC: start === undefined ? USUAL_HEAT.startC : parseTemperature(start),
    ...ovenOf(oven, material),
  };
}

/** The oven asked for; a plastic mould gets its own where none is. */
function ovenOf(
  oven: string | undefined,
  material: HeatSetting['material'] = USUAL_HEAT.material,
): Pick<HeatSetting, 'ovenC'> {
  if (oven !== undefined) return { ovenC: parseTemperature(oven) };
  return material === 'plastic' ? { ovenC: hottestOven(material) } : {};
}

/**
 * The colours a read plan names, as typed, each once: what the door has to find.
 * @example coloursNamed(readPlan({ oils: 'olive 100%', size: '500 g oils', portions: '1 cup charcoal; rest charcoal' })) // ['charcoal']
 */
export function coloursNamed(read: ReadPlan): readonly string[] {
  return [...new Set(read.portions.flatMap(({ colours }) => colours.map(({ text }) => text)))];
}

/** A colourant as found, with what is known of the member's own jar. */
export type FoundColour = Omit<DoseAsked, 'strength' | 'carrier'>;

/**
 * The plan with its colours found: `find` is asked for each of {@link coloursNamed}. A portion without a label is named
 * after its colours, or `plain` or `rest` ({@link keptName}); names are made unlike.
 * @example withColours(readPlan({ oils: 'olive 100%', size: '500 g oils', portions: '1 cup gold mica; rest' }),
 * name => ({ colourant: findColourant(name) })).portions.map(({ name }) => name) // ['gold mica', 'rest']
 */
export function withColours(read: ReadPlan, find: (text: string) => FoundColour): PlanRequest {
  const taken = new Map<string, number>();
  return {
    ...read,
    portions: read.portions.map(portion => ({
      name: keptName(portion, taken),
      share: portion.share,
      scented: portion.scented,
      colours: portion.colours.map(({ text, strength, carrier }) => ({
        asked: { ...find(text), strength },
        carrier,
      })),
    })),
  };
}
