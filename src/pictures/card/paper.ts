import type { PathStyle, TextStyle } from '../sheet.ts';

/** What a card is drawn on: a picture or a page to print, both in CSS pixels from the top left. See `Sheet`. */
export type Paper = {
  readonly width: number;
  box(
    x: number,
    y: number,
    width: number,
    height: number,
    fill: string,
    more?: { radius?: number; edge?: string },
  ): unknown;
  line(x1: number, y1: number, x2: number, y2: number, colour?: string, width?: number): unknown;
  text(text: string, x: number, y: number, style?: TextStyle): unknown;
  path(d: string, style: PathStyle): unknown;
  paragraph(text: string, x: number, top: number, width: number, style?: TextStyle): number;
};

/** Where a part of a card may stand, CSS pixels. */
export type Area = { readonly x: number; readonly y: number; readonly width: number };

/** A box to tick; as large as a thumb sees it, not as large as one presses. */
export const tick = (paper: Paper, x: number, y: number, size: number, ink: string): void => {
  paper.box(x, y, size, size, 'none', { radius: 2, edge: ink });
};
