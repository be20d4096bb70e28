import { MARGIN, type Pair, pairs, photo } from './challenge-parts.ts';
import { FAINT, RULE, Sheet } from './sheet.ts';

/** What was measured on an entry, for the one who enters it. */
export type MeasuredEntry = {
  /** A JPEG and its size in pixels. */
  readonly photo: { readonly bytes: Uint8Array; readonly width: number; readonly height: number };
  /** The part that was measured, as fractions of width and height; undefined for the bar as it was found. */
  readonly region?:
    | { readonly left: number; readonly top: number; readonly width: number; readonly height: number }
    | undefined;
  /** Palette colours and what the bar has for each; without a palette, none. */
  readonly pairs: readonly Pair[];
  /** All colours measured, `#rrggbb` with their part of the face. */
  readonly colours: readonly { readonly hex: string; readonly part: string }[];
  readonly words: { readonly pairs: string; readonly colours: string };
};

const WIDTH = 720;
const PHOTO = 300;

/** Draws the photo with the measured part outlined, and the colours beside it. Returns a PNG. */
export function drawMeasuredEntry({
  photo: shot,
  region,
  pairs: list,
  colours,
  words,
}: MeasuredEntry): Uint8Array {
  const sheet = new Sheet(WIDTH);
  const scale = Math.min(PHOTO / shot.width, PHOTO / shot.height);
  const [width, height] = [shot.width * scale, shot.height * scale];
  photo(sheet, shot.bytes, { x: MARGIN, y: MARGIN, width, height });
  if (region) outline(sheet, { x: MARGIN, y: MARGIN, width, height }, region);
  const left = MARGIN + width + 28;
  let y = MARGIN;
  if (list.length > 0) {
    y = sheet.paragraph(words.pairs, left, y, WIDTH - MARGIN - left, { size: 15, colour: FAINT }) + 6;
    pairs(sheet, list, { x: left, y, side: 48 });
    y += 2 * 48 + 20;
  }
  if (colours.length > 0) {
    y = sheet.paragraph(words.colours, left, y, WIDTH - MARGIN - left, { size: 15, colour: FAINT }) + 6;
    for (const { hex, part } of colours) {
      sheet.box(left, y, 40, 26, hex, { radius: 4, edge: RULE });
      sheet.text(`${hex} · ${part}`, left + 52, y + 19, { size: 15 });
      y += 32;
    }
  }
  return sheet.png(Math.max(y, MARGIN + height) + MARGIN);
}

/** Twice, dark under light, so that it shows on any photo. */
function outline(
  sheet: Sheet,
  frame: { x: number; y: number; width: number; height: number },
  region: NonNullable<MeasuredEntry['region']>,
): void {
  const x = frame.x + region.left * frame.width;
  const y = frame.y + region.top * frame.height;
  const at = `x="${x}" y="${y}" width="${region.width * frame.width}" height="${region.height * frame.height}"`;
  sheet.element(`<rect ${at} fill="none" stroke="#000000" stroke-width="5" opacity="0.6"/>`);
  sheet.element(`<rect ${at} fill="none" stroke="#ffffff" stroke-width="2.5"/>`);
}
