import type { Pixels } from '../decode.ts';
import type { Seen } from '../network/passes.ts';
import { type Mask, maskWhere, type Plane } from '../pixels/plane.ts';
import type { PhotoFinding, Point } from '../reading.ts';
import { type Answered, answered } from './answers.ts';
import { PIT_OR_SPECK, TAUGHT_IDS } from './ids.ts';
import { placesOf } from './places.ts';

/** Two maps share places when this part of the smaller one's is in both. */
const SHARED = 0.25;

/** What is seen or possibly seen on the bars, surest first. */
export function findingsOf(photo: Pixels, seen: Seen): PhotoFinding[] {
  const { square, bar, maps } = seen;
  const soap = maskWhere(bar.width, bar.height, i => bar.data[i]! > 0.5);
  const unit = (2 * square.half) / bar.width;
  const place = (x: number, y: number): Point => ({
    x: (square.x - square.half + x * unit) / photo.width,
    y: (square.y - square.half + y * unit) / photo.height,
  });
  const width = widthOf(soap);
  const found = hedged(
    answered(seen.answers).filter(({ answer }) => answer !== 'not seen'),
    maps,
    soap,
  ).map(({ id, answer, chance, ratio, map }): PhotoFinding => {
    const { region, share, count, size } = placesOf(map, soap, width, place, unit / photo.width);
    return {
      id,
      answer: answer === 'seen' ? 'seen' : 'possibly',
      confidence: chance,
      ratio,
      strength: share,
      region,
      measures: { share, count, size },
    };
  });
  return found.toSorted((one, other) => other.confidence - one.confidence);
}

type FindingTold = Omit<Answered, 'id'> & { readonly id: PhotoFinding['id']; readonly map: Plane };

/**
 * A hole and a speck of dark colour look alike from above: where both are possible in the same places, and neither is
 * sure alone, one finding says so, and it is evidence of neither.
 */
function hedged(answers: readonly Answered[], maps: readonly Plane[], soap: Mask): FindingTold[] {
  const mapOf = (id: Answered['id']) => maps[TAUGHT_IDS.indexOf(id)]!;
  const told = answers.map((one): FindingTold => ({ ...one, map: mapOf(one.id) }));
  const pit = answers.find(({ id }) => id === 'pinholes');
  const speck = answers.find(({ id }) => id === 'coloured-specks');
  if (!pit || !speck || (pit.answer === 'seen') !== (speck.answer === 'seen')) return told;
  const both = { width: soap.width, height: soap.height, data: mapOf('pinholes').data.slice() };
  const specks = mapOf('coloured-specks').data;
  const [inPits, inSpecks, inBoth] = [
    countOf(both.data, soap),
    countOf(specks, soap),
    sharedBy(both.data, specks, soap),
  ];
  if (inBoth < SHARED * Math.min(inPits, inSpecks) || inBoth === 0) return told;
  for (let i = 0; i < both.data.length; i++) both.data[i] = Math.max(both.data[i]!, specks[i]!);
  const one: FindingTold = {
    id: PIT_OR_SPECK,
    answer: pit.answer,
    chance: 1 - (1 - pit.chance) * (1 - speck.chance),
    ratio: 1,
    map: both,
  };
  return [one, ...told.filter(({ id }) => id !== 'pinholes' && id !== 'coloured-specks')];
}

/** From this chance on a pixel may be part of a dot: dots are small, and their maps faint. */
const FAINT = 0.3;

function countOf(map: Float32Array, { data }: Mask): number {
  let count = 0;
  for (let i = 0; i < map.length; i++) if (data[i] && map[i]! > FAINT) count++;
  return count;
}

function sharedBy(one: Float32Array, other: Float32Array, { data }: Mask): number {
  let count = 0;
  for (let i = 0; i < one.length; i++) if (data[i] && one[i]! > FAINT && other[i]! > FAINT) count++;
  return count;
}

/** The width of the box round a mask, in pixels. */
function widthOf({ width, data }: Mask): number {
  let [left, right] = [width, 0];
  for (let i = 0; i < data.length; i++) {
    if (!data[i]) continue;
    const x = i % width;
    left = Math.min(left, x);
    right = Math.max(right, x + 1);
  }
  return Math.max(1, right - left);
}
