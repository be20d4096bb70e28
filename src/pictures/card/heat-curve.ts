import { FAINT, INK, RULE } from '../sheet.ts';
import type { Area, Paper } from './paper.ts';

/** The core of the loaf over the hours after the pour, degrees as they are to be read. */
export type HeatCurve = {
  readonly points: readonly {
    readonly hours: number;
    readonly low: number;
    readonly typical: number;
    readonly high: number;
  }[];
  /** The temperatures between which it may start to gel. */
  readonly gel: { readonly low: number; readonly high: number };
  /** In the band of gel. */
  readonly gelLabel: string;
  /** What is written along the axes. */
  readonly hours: readonly Mark[];
  readonly degrees: readonly Mark[];
};
type Mark = { readonly at: number; readonly label: string };

const GEL = '#ece3f3';
const BAND = '#f3c9a5';
const LINE = '#9c3d12';

/**
 * Draws the curve with its band over a band of where gel begins: what lies above it gels. Returns the y under it.
 */
export function drawHeatCurve(
  paper: Paper,
  curve: HeatCurve,
  { x, y, width, height, size }: Area & { readonly height: number; readonly size: number },
): number {
  const { points, gel } = curve;
  const left = x + size * 3.2;
  const right = x + width;
  const bottom = y + height - size * 1.6;
  const least = Math.min(...points.map(({ low }) => low), ...curve.degrees.map(({ at }) => at));
  const most = Math.max(gel.high, ...points.map(({ high }) => high)) + 3;
  const end = Math.max(points.at(-1)?.hours ?? 1, 0.5);
  const across = (hours: number) => left + ((right - left) * hours) / end;
  const up = (degrees: number) => bottom - ((bottom - y) * (degrees - least)) / (most - least);
  paper.box(left, up(gel.high), right - left, up(gel.low) - up(gel.high), GEL);
  for (const { at, label } of curve.degrees) {
    paper.line(left, up(at), right, up(at), RULE);
    paper.text(label, left - 4, up(at) + size * 0.35, { size, colour: FAINT, anchor: 'end' });
  }
  const line = (
    value: (point: HeatCurve['points'][number]) => number,
    way: readonly HeatCurve['points'][number][],
  ) => way.map(point => `${across(point.hours).toFixed(1)} ${up(value(point)).toFixed(1)}`).join(' L');
  const back = [...points].reverse();
  paper.path(`M${line(({ high }) => high, points)} L${line(({ low }) => low, back)} Z`, { fill: BAND });
  paper.path(`M${line(({ typical }) => typical, points)}`, { stroke: LINE, width: 2.2 });
  paper.text(curve.gelLabel, left + 4, up(gel.low) - 3, { size, colour: INK });
  paper.line(left, bottom, right, bottom, INK, 1.2);
  for (const { at, label } of curve.hours.filter(one => one.at <= end))
    paper.text(label, across(at), bottom + size * 1.3, {
      size,
      colour: FAINT,
      anchor: at === 0 ? 'start' : at > end * 0.95 ? 'end' : 'middle',
    });
  return y + height;
}
