import sharp from 'sharp';
import { spaced } from '../engine/over-lines.ts';
import { INK, PAPER, Sheet } from './sheet.ts';

/** A place as fractions of the picture's width and height, origin top left. */
export type Spot = { readonly x: number; readonly y: number };

/** What to draw round; a circle's radius is a fraction of the picture's width. */
export type MarkOutline =
  | { readonly kind: 'circle'; readonly at: Spot; readonly radius: number }
  | { readonly kind: 'path'; readonly points: readonly Spot[]; readonly closed: boolean };

/** One numbered thing on the photo and its line in the legend; what is not `sure` is dashed, its number hollow. */
export type Mark = {
  readonly number: number;
  readonly sure: boolean;
  readonly outlines: readonly MarkOutline[];
  readonly label: string;
};

export type MarkedPhoto = {
  /** The photo as JPEG, upright, with its size in pixels. */
  readonly photo: { readonly bytes: Uint8Array; readonly width: number; readonly height: number };
  readonly title: string;
  /** The bar's outline, drawn thin and without a number. */
  readonly bars: readonly (readonly Spot[])[];
  readonly marks: readonly Mark[];
};

const WIDTH = 760;
const MARGIN = 20;
/**
 * Blue, vermilion, maroon, indigo, rose, olive: the first two of Okabe and Ito (2008), the others those that lie furthest
 * from them and from one another for eyes that lack one kind of cone; numbers repeat it.
 */
export const PENS = ['#0072b2', '#d55e00', '#46000c', '#2d0255', '#95385b', '#303b00'] as const;
/** A phone shows the picture at half its width: a letter of 30 is then as large as the chat's own text. */
const LEGEND = 30;
const HALO = 7;
const PEN = 3.5;
const BADGE = 20;
/** Between a number and what it stands by. */
const GAP = 6;
const DASHES = '10 6';

const penOf = ({ number }: Mark): string => PENS[(number - 1) % PENS.length] ?? INK;

/** Device pixels to the CSS pixel. */
const SCALE = 1.5;

/** Draws outlines and numbers over a photo, the legend as text under it. Returns a PNG. */
export async function drawMarkedPhoto({ photo, title, bars, marks }: MarkedPhoto): Promise<Uint8Array> {
  const sheet = new Sheet(WIDTH);
  const wide = WIDTH - 2 * MARGIN;
  const high = (wide * photo.height) / photo.width;
  const top = sheet.paragraph(title, MARGIN, MARGIN - 4, wide, { size: 34, weight: 'bold' }) + 8;
  const at = ({ x, y }: Spot): Spot => ({ x: MARGIN + x * wide, y: top + y * high });
  for (const bar of bars)
    outline(sheet, { kind: 'path', points: bar, closed: true }, INK, { at, wide, pen: 1.5, sure: true });
  for (const mark of marks)
    for (const shape of mark.outlines)
      outline(sheet, shape, penOf(mark), { at, wide, pen: PEN, sure: mark.sure });
  badges(sheet, marks, at, wide);
  let y = top + high + 16;
  for (const mark of marks) {
    badge(sheet, mark, MARGIN + BADGE, y + BADGE);
    const under = sheet.paragraph(mark.label, MARGIN + 3 * BADGE, y + 1, wide - 3 * BADGE, { size: LEGEND });
    y = Math.max(y + 2 * BADGE, under) + 8;
  }
  return over(photo.bytes, sheet.overlay(y + 8, SCALE), {
    left: Math.round(MARGIN * SCALE),
    top: Math.round(top * SCALE),
    width: Math.round(wide * SCALE),
    height: Math.round(high * SCALE),
  });
}

/** The photo in its place on paper, under what was drawn: a painter of outlines takes a tenth of a second for a photo. */
async function over(
  jpeg: Uint8Array,
  { data, width, height }: ReturnType<Sheet['overlay']>,
  place: { readonly left: number; readonly top: number; readonly width: number; readonly height: number },
): Promise<Uint8Array> {
  const photo = await sharp(jpeg)
    .resize(place.width, place.height, { fit: 'fill' })
    .raw()
    .toBuffer({ resolveWithObject: true });
  const { channels } = photo.info;
  return sharp({ create: { width, height, channels: 3, background: PAPER } })
    .composite([
      {
        input: photo.data,
        raw: { width: place.width, height: place.height, channels },
        left: place.left,
        top: place.top,
      },
      {
        input: Buffer.from(data.buffer, data.byteOffset, data.length),
        raw: { width, height, channels: 4, premultiplied: true },
        premultiplied: true,
      },
    ])
    .png({ compressionLevel: 3 })
    .toBuffer();
}

type Pen = {
  readonly at: (spot: Spot) => Spot;
  readonly wide: number;
  readonly pen: number;
  readonly sure: boolean;
};

/** Each outline twice: a light halo under the pen, so that it shows on any soap. */
function outline(sheet: Sheet, shape: MarkOutline, colour: string, { at, wide, pen, sure }: Pen): void {
  for (const [stroke, width] of [
    [PAPER, pen + HALO - PEN],
    [colour, pen],
  ] as const) {
    // A circle is too small for dashes: they would be fragments.
    const dashed = !sure && stroke !== PAPER && shape.kind === 'path';
    const dashes = dashed ? ` stroke-dasharray="${DASHES}"` : '';
    const style = `fill="none" stroke="${stroke}" stroke-width="${width}" stroke-linejoin="round"${dashes}`;
    if (shape.kind === 'circle') {
      const { x, y } = at(shape.at);
      sheet.element(`<circle cx="${fixed(x)}" cy="${fixed(y)}" r="${fixed(shape.radius * wide)}" ${style}/>`);
    } else {
      const path = shape.points.map(at).map(({ x, y }) => `${fixed(x)},${fixed(y)}`);
      sheet.element(`<${shape.closed ? 'polygon' : 'polyline'} points="${path.join(' ')}" ${style}/>`);
    }
  }
}

const fixed = (value: number) => value.toFixed(1);

/** A number over the first outline of each mark, moved down where another number is already. */
function badges(sheet: Sheet, marks: readonly Mark[], at: (spot: Spot) => Spot, wide: number): void {
  const taken: Spot[] = [];
  for (const mark of marks) {
    const [first] = mark.outlines;
    if (!first) continue;
    const anchor = at(first.kind === 'circle' ? first.at : (first.points[0] ?? { x: 0, y: 0 }));
    const reach = first.kind === 'circle' ? first.radius * wide : 0;
    // Clear of a small circle, which it would hide.
    let y = anchor.y - reach - GAP - BADGE;
    const clashes = () => taken.some(other => Math.hypot(other.x - anchor.x, other.y - y) < 2 * BADGE + 2);
    while (clashes()) y += BADGE;
    taken.push({ x: anchor.x, y });
    badge(sheet, mark, anchor.x, y);
  }
}

function badge(sheet: Sheet, mark: Mark, x: number, y: number): void {
  sheet.element(
    spaced`
      <circle cx="${fixed(x)}" cy="${fixed(y)}" r="${BADGE}" fill="${mark.sure ? penOf(mark) : PAPER}"
      stroke="${mark.sure ? PAPER : penOf(mark)}" stroke-width="${mark.sure ? 2 : 4}"/>
    `,
  );
  const colour = mark.sure ? PAPER : penOf(mark);
  sheet.text(String(mark.number), x, y + 8, { size: 23, weight: 'bold', colour, anchor: 'middle' });
}
