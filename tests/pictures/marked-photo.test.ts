import {
  type Color,
  differenceCiede2000,
  filterDeficiencyDeuter,
  filterDeficiencyProt,
  filterDeficiencyTrit,
  parse,
  wcagContrast,
} from 'culori';
import sharp from 'sharp';
import { expect, test } from 'vitest';
import { drawMarkedPhoto, type Mark, PENS } from '../../src/pictures/marked-photo.ts';
import { PAPER } from '../../src/pictures/sheet.ts';

const apart = differenceCiede2000();

test.each([
  ['all cones', (colour: Color) => colour],
  // G. M. Machado and others, IEEE TVCG 15 (2009) 1291-1298, at full strength, as culori has it.
  ['no long cones', filterDeficiencyProt(1)],
  ['no middle cones', filterDeficiencyDeuter(1)],
  ['no short cones', filterDeficiencyTrit(1)],
])('pens are told apart by eyes with %s', (_, seen) => {
  const colours = PENS.map(pen => seen(parse(pen)!));
  const pairs = colours.flatMap((one, i) => colours.slice(0, i).map(other => apart(one, other)));
  expect(Math.min(...pairs)).toBeGreaterThan(15);
});

test('pens stand out from their halo and from the legend’s ground (WCAG 2.2, 1.4.11: 3 to 1)', () => {
  for (const pen of PENS) expect(wcagContrast(pen, PAPER)).toBeGreaterThan(3);
});

const square = [
  { x: 0.2, y: 0.3 },
  { x: 0.8, y: 0.3 },
  { x: 0.8, y: 0.7 },
  { x: 0.2, y: 0.7 },
];

async function drawn(marks: readonly Mark[]) {
  const bytes = await sharp({ create: { width: 600, height: 400, channels: 3, background: '#d8c8b0' } })
    .jpeg({ quality: 100 })
    .toBuffer();
  const png = await drawMarkedPhoto({
    photo: { bytes, width: 600, height: 400 },
    title: 'Seen',
    bars: [],
    marks,
  });
  const { data, info } = await sharp(png).removeAlpha().raw().toBuffer({ resolveWithObject: true });
  return { data, ...info };
}

type Drawn = Awaited<ReturnType<typeof drawn>>;

/** How many pixels of a part of the picture (fractions, left, top, right, bottom) have about a pen's colour. */
function inked({ data, width, height }: Drawn, pen: string, part = [0, 0, 1, 1]): number {
  const wanted = [1, 3, 5].map(at => Number.parseInt(pen.slice(at, at + 2), 16));
  const [left = 0, top = 0, right = 1, bottom = 1] = part;
  let count = 0;
  for (let y = Math.floor(top * height); y < bottom * height; y++)
    for (let x = Math.floor(left * width); x < right * width; x++)
      if (wanted.every((value, c) => Math.abs(value - data[3 * (y * width + x) + c]!) < 30)) count++;
  return count;
}

const path = { kind: 'path', points: square, closed: true } as const;

test('what is only possible is dashed, and its number hollow', async () => {
  const mark = { number: 1, outlines: [path], label: 'veins' };
  const [sure, possible] = [await drawn([{ ...mark, sure: true }]), await drawn([{ ...mark, sure: false }])];
  const legend = [0, 0.82, 0.12, 1];
  expect(inked(possible, PENS[0], legend)).toBeLessThan(0.6 * inked(sure, PENS[0], legend));
  expect(inked(possible, PENS[0], legend)).toBeGreaterThan(100);
  // The right side of the outline, clear of the number: dashes of 10 with gaps of 6.
  const side = [0.6, 0.4, 0.95, 0.6];
  const share = inked(possible, PENS[0], side) / inked(sure, PENS[0], side);
  expect(share).toBeGreaterThan(0.5);
  expect(share).toBeLessThan(0.8);
});

test('a number stands clear of the small circle that it names', async () => {
  const at = { x: 0.5, y: 0.5 };
  const circle = { kind: 'circle', at, radius: 0.012 } as const;
  const alone = await drawn([{ number: 1, sure: true, outlines: [circle], label: 'a pit' }]);
  // A ring of radius 0.012 of 720 wide and 3.5 thick, drawn at one and a half times that size.
  const ring = Math.PI * 2 * 0.012 * 720 * 3.5 * 1.5 ** 2;
  const { width, height } = alone;
  const middle = ((34 * 1.2 + 28 + 0.5 * 480) * 1.5) / height;
  const reach = (0.02 * 720 * 1.5) / height;
  const seen = inked(alone, PENS[0], [
    0.5 - 15 / 760,
    middle - reach * 2,
    0.5 + 15 / 760,
    middle + reach * 2,
  ]);
  expect(width).toBe(1140);
  expect(seen).toBeGreaterThan(0.5 * ring);
  expect(seen).toBeLessThan(3 * ring);
});
