import { expect, test } from 'vitest';
import { drawHeatCurve } from '../../src/pictures/card/heat-curve.ts';
import { Sheet } from '../../src/pictures/sheet.ts';

/** One degree of a scale that ends three above the hottest is this many pixels: 20 to 103 over 830. */
const PIXELS_A_DEGREE = 10;
const [LEFT, BOTTOM] = [32, 830];
const at = (degrees: number) => BOTTOM - PIXELS_A_DEGREE * (degrees - 20);

const sheet = new Sheet(1032);
drawHeatCurve(
  sheet,
  {
    points: [
      { hours: 0, low: 38, typical: 40, high: 42 },
      { hours: 2, low: 60, typical: 70, high: 100 },
      { hours: 4, low: 50, typical: 55, high: 80 },
    ],
    gel: { low: 62, high: 74 },
    gelLabel: 'gels from here',
    hours: [0, 2, 4, 9].map(hours => ({ at: hours, label: `${hours} h` })),
    degrees: [20, 100].map(degrees => ({ at: degrees, label: `${degrees}°` })),
  },
  { x: 0, y: 0, width: 1032, height: BOTTOM + 16, size: 10 },
);
const svg = sheet.svg(900);
const paths = [...svg.matchAll(/<path d="([^"]*)"/g)].map(([, d]) => d!);
const pairs = (d: string) =>
  [...d.matchAll(/([\d.]+) ([\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)] as const);

test('the line runs through the likeliest degrees, hour by hour', () => {
  const [, line] = paths;
  expect(pairs(line!)).toEqual([
    [LEFT, at(40)],
    [LEFT + 500, at(70)],
    [LEFT + 1000, at(55)],
  ]);
});

test('the band lies between the highest and the lowest that may come', () => {
  const [band] = paths;
  expect(pairs(band!).map(([, y]) => y)).toEqual([42, 100, 80, 50, 60, 38].map(at));
});

test('the zone of gel lies from where it may begin to where it must have begun', () => {
  const zone = /<rect x="([\d.]+)" y="([\d.]+)" width="([\d.]+)" height="([\d.]+)"[^>]*fill="#ece3f3"/.exec(
    svg,
  );
  expect(zone?.slice(1).map(Number)).toEqual([LEFT, at(74), 1000, 120]);
});

test('an hour after the last is not written beyond the end', () => {
  expect(svg).toContain('4 h');
  expect(svg).not.toContain('9 h');
});
