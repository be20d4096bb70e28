import { clamped, heading, lines, MARGIN, photo } from './challenge-parts.ts';
import { FAINT, GOLD, INK, PAPER, Sheet } from './sheet.ts';
import { widthOf } from './type.ts';

/** The bars of a challenge side by side, each by the number it is voted for with. */
export type ChallengeBars = {
  readonly kicker: string;
  readonly title: string;
  readonly bars: readonly {
    readonly number: number;
    readonly name: string;
    readonly below: string;
    /** What a voter gave it, in the other corner. */
    readonly mark?: string | undefined;
    /** A JPEG. */
    readonly photo?: Uint8Array | undefined;
  }[];
};

const WIDTH = 720;
const GAP = 16;

/** Draws a sheet of numbered photos, three or four a row. Returns a PNG. */
export function drawChallengeBars({ kicker, title, bars }: ChallengeBars): Uint8Array {
  const sheet = new Sheet(WIDTH);
  const top = heading(sheet, title, kicker) + 12;
  // Few bars are shown large: the sheet is filled either way.
  const columns = bars.length > 9 ? 4 : Math.min(3, Math.max(1, bars.length));
  const side = (WIDTH - 2 * MARGIN - GAP * (columns - 1)) / columns;
  const cell = side + 66;
  for (const [index, bar] of bars.entries()) {
    const x = MARGIN + (index % columns) * (side + GAP);
    const y = top + Math.floor(index / columns) * cell;
    photo(sheet, bar.photo, { x, y, width: side, height: side });
    sheet.box(x + 6, y + 6, 34, 28, PAPER, { radius: 6 });
    sheet.text(String(bar.number), x + 23, y + 27, { size: 18, weight: 'bold', anchor: 'middle' });
    if (bar.mark) {
      const wide = widthOf(bar.mark, 17, 'bold') + 16;
      sheet.box(x + side - wide - 6, y + 6, wide, 28, GOLD, { radius: 6 });
      sheet.text(bar.mark, x + side - 6 - wide / 2, y + 26, { size: 17, weight: 'bold', anchor: 'middle' });
    }
    const name = clamped(bar.name, { width: side, size: 15, lines: 1, weight: 'bold' });
    const below = clamped(bar.below, { width: side, size: 13, lines: 1 });
    const under = lines(sheet, name, { x, top: y + side + 6, size: 15, weight: 'bold', colour: INK });
    lines(sheet, below, { x, top: under, size: 13, colour: FAINT });
  }
  return sheet.png(top + Math.ceil(bars.length / columns) * cell + MARGIN - 20);
}
