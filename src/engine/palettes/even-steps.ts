import { colourDifference, type Lab } from '../colour/spectra/cielab.ts';

/** Short lines between two colours are taken for straight in CIEDE2000. */
const PIECES = 256;

/**
 * So many colours along a line of colours in CIELAB, its ends among them, each as far (CIEDE2000 along the line) from the one
 * before as the next is from it.
 * Throws RangeError for less than two colours, or less than two stops.
 */
export function evenAlong(stops: readonly Lab[], count: number): readonly Lab[] {
  if (stops.length < 2 || count < 2) throw new RangeError('a line has two ends');
  const places = placesAlong(colourAt(stops), count);
  return places.map(colourAt(stops));
}

/** The colour at a place of the line, 0 to 1. */
const colourAt =
  (stops: readonly Lab[]) =>
  (place: number): Lab => {
    const along = Math.min(Math.max(place, 0), 1) * (stops.length - 1);
    const at = Math.min(Math.floor(along), stops.length - 2);
    const [from, to] = [stops[at]!, stops[at + 1]!];
    const share = along - at;
    return {
      l: from.l + share * (to.l - from.l),
      a: from.a + share * (to.a - from.a),
      b: from.b + share * (to.b - from.b),
    };
  };

/** A whole line of colours shorter than this (CIEDE2000) is one colour: what is left are the rounding errors of the arithmetic. */
export const ONE_COLOUR = 1e-6;

/**
 * Places, 0 to 1, that part a line of colours into steps of equal length, CIEDE2000 added up over short pieces; evenly
 * spaced ones on a line of {@link ONE_COLOUR}.
 */
export function placesAlong(at: (place: number) => Lab, count: number): readonly number[] {
  const lengths = [0];
  let before = at(0);
  for (let piece = 1; piece <= PIECES; piece++) {
    const next = at(piece / PIECES);
    lengths.push(lengths.at(-1)! + colourDifference(before, next));
    before = next;
  }
  const whole = lengths.at(-1)!;
  if (whole < ONE_COLOUR) return Array.from({ length: count }, (_, step) => step / (count - 1));
  return Array.from({ length: count }, (_, step) => {
    const wanted = (whole * step) / (count - 1);
    const piece = Math.max(
      1,
      lengths.findIndex(length => length >= wanted - 1e-12),
    );
    const [low, high] = [lengths[piece - 1]!, lengths[piece]!];
    return (piece - 1 + (high > low ? (wanted - low) / (high - low) : 0)) / PIECES;
  });
}
