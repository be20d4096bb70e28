import type { AdditiveId } from './additives/additive.ts';
import { additiveById } from './additives/additives.ts';
import type { Jug, PlacedLiquid } from './liquids/jug.ts';
import type { LyePart } from './lye/lye.ts';
import { at, type TimelineStep } from './planning/prep-step.ts';

/** When the steps around the jug fall, minutes before the pour, and what else they tell. */
type Around = {
  readonly lyeAt: number;
  readonly dayBefore: number;
  readonly intoOilsAt: number;
  readonly hottestC: number;
  /** Acids by weight that are no liquids. */
  readonly acids: readonly { readonly id: AdditiveId; readonly grams: number }[];
};

/** Liquids whose acid heats the jug well beyond what the lye does. */
const SOUR: ReadonlySet<AdditiveId> = new Set(['vinegar', 'lemon-juice']);

const weighed = ({ id, grams }: { readonly id: AdditiveId; readonly grams: number }) => ({
  additive: id,
  grams,
});

/** Everything that is done with the lye jug and the liquids, from the day before. */
export function lyeSteps(
  { lye, jug }: { readonly lye: readonly LyePart[]; readonly jug: Jug },
  around: Around,
): readonly TimelineStep[] {
  const { lyeAt, dayBefore, intoOilsAt, acids } = around;
  const alcoholic = jug.liquids.filter(({ id }) => (additiveById(id).liquid?.alcoholPercent ?? 0) > 0);
  const frozen = jug.liquids.filter(({ id, frozen: is }) => is && id !== 'ice');
  // Acid goes in while the water is still only water: stirred into lye it would boil up.
  const acid = (one: { readonly id: AdditiveId; readonly grams: number }) => {
    if (jug.method === 'masterbatch') return at(intoOilsAt, 'acid-into-oils', weighed(one));
    const alone = jug.method === 'frozen' && jug.waterGrams < one.grams;
    return at(alone ? dayBefore : lyeAt, 'dissolve-acid', weighed(one));
  };
  return [
    ...alcoholic.map(({ id }) =>
      at(dayBefore + 60, 'boil-off', { additive: id, percent: additiveById(id).liquid?.alcoholPercent ?? 0 }),
    ),
    ...acids.map(acid),
    ...frozen.map(one => at(dayBefore, 'freeze-liquid', weighed(one))),
    dissolving(lye, jug, around),
    ...jug.liquids
      .filter(({ into }) => into === 'oils')
      .map(one => at(intoOilsAt, 'liquid-into-oils', weighed(one))),
  ];
}

function dissolving(lye: readonly LyePart[], jug: Jug, { lyeAt, hottestC }: Around): TimelineStep {
  const { waterGrams, heldBackGrams: holdBackGrams, solution } = jug;
  const alkalis = lye.map(({ alkali, grams }) => ({ alkali, grams }));
  const liquids = jug.liquids.filter(({ into }: PlacedLiquid) => into === 'jug').map(weighed);
  if (solution) {
    const { percent, grams } = solution;
    const [{ alkali } = { alkali: 'NaOH' as const }] = alkalis;
    return at(lyeAt, 'pour-solution', { alkali, percent, grams, waterGrams, holdBackGrams });
  }
  if (jug.method === 'frozen') {
    return at(lyeAt, 'mix-lye-frozen', { lye: alkalis, waterGrams, liquids, holdBackGrams });
  }
  const sour = liquids.some(({ additive }) => SOUR.has(additive));
  return at(lyeAt, 'mix-lye', { lye: alkalis, waterGrams, liquids, holdBackGrams, hottestC, sour });
}
