import { FAINT, INK, RULE, type Sheet, type TextStyle } from './sheet.ts';
import { widthOf, wrap } from './type.ts';

/** Space from the edge of a picture to what is in it, CSS pixels. */
export const MARGIN = 32;
/** Where no photo is. */
const BLANK = '#e9e3d6';

/** The first lines of a text that fit, the last one ending in `…` where more was left out. */
export function clamped(
  text: string,
  {
    width,
    size,
    lines,
    weight = 'regular',
  }: { width: number; size: number; lines: number; weight?: 'regular' | 'bold' },
): readonly string[] {
  const all = wrap(text, width, size, weight);
  if (all.length <= lines) return all;
  const kept = all.slice(0, lines);
  let last = kept.at(-1) ?? '';
  while (last !== '' && widthOf(`${last}…`, size, weight) > width) last = last.slice(0, -1).trimEnd();
  return [...kept.slice(0, -1), `${last}…`];
}

/** Lines of text, the first with its top at `top`; returns the y under the last. */
export function lines(
  sheet: Sheet,
  texts: readonly string[],
  { x, top, ...style }: { x: number; top: number } & TextStyle,
): number {
  const { size = 16 } = style;
  let y = top;
  for (const text of texts) {
    sheet.text(text, x, y + size, style);
    y += size * 1.35;
  }
  return y;
}

/** Title of a picture, at most two lines; returns the y under it. */
export function heading(sheet: Sheet, title: string, kicker: string): number {
  sheet.text(kicker, MARGIN, MARGIN + 12, { size: 14, weight: 'bold', colour: FAINT });
  const width = sheet.width - 2 * MARGIN;
  const texts = clamped(title, { width, size: 30, lines: 2, weight: 'bold' });
  return lines(sheet, texts, { x: MARGIN, top: MARGIN + 24, size: 30, weight: 'bold', colour: INK });
}

export type Frame = {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
};

let clips = 0;

/** A JPEG photo, whole, in the middle of a frame; an empty frame where there is none. */
export function photo(sheet: Sheet, jpeg: Uint8Array | undefined, { x, y, width, height }: Frame): void {
  sheet.box(x, y, width, height, BLANK, { radius: 6, edge: RULE });
  if (!jpeg) return;
  clips += 1;
  const id = `cut${clips}`;
  const href = `data:image/jpeg;base64,${Buffer.from(jpeg).toString('base64')}`;
  const at = `x="${x}" y="${y}" width="${width}" height="${height}"`;
  sheet.element(
    `<clipPath id="${id}"><rect ${at} rx="6"/></clipPath><image ${at} preserveAspectRatio="xMidYMid meet" clip-path="url(#${id})" href="${href}"/>`,
  );
}

/** One colour wanted above what the bar has for it; `undefined` where the bar lacks it. */
export type Pair = { readonly target: string; readonly bar: string | undefined };

/** Target above measured, a column a colour; returns the x behind the last. */
export function pairs(
  sheet: Sheet,
  list: readonly Pair[],
  { x, y, side, gap = 6 }: { x: number; y: number; side: number; gap?: number },
): number {
  for (const [index, { target, bar }] of list.entries()) {
    const left = x + index * (side + gap);
    sheet.box(left, y, side, side, target, { edge: RULE });
    if (bar) sheet.box(left, y + side, side, side, bar, { edge: RULE });
    else {
      sheet.box(left, y + side, side, side, 'none', { edge: FAINT });
      sheet.line(left, y + 2 * side, left + side, y + side, FAINT);
    }
  }
  return x + list.length * (side + gap);
}
