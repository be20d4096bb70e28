import { clamped, heading, lines, MARGIN, type Pair, pairs, photo } from './challenge-parts.ts';
import { FAINT, GOLD, INK, RULE, Sheet } from './sheet.ts';

/** The board of results: texts in the group's language, colours as `#rrggbb`, photos as JPEG. */
export type ChallengeResults = {
  readonly kicker: string;
  readonly title: string;
  readonly rows: readonly {
    /** `1`, `2=`, or `–` for a bar without a place. */
    readonly place: string;
    readonly name: string;
    readonly lines: readonly string[];
    readonly photo?: Uint8Array | undefined;
    readonly pairs: readonly Pair[];
  }[];
  /** What the columns of swatches are: above the target, below the bar. */
  readonly swatchNote: string;
  readonly why: readonly string[];
  /** Who beat whom; undefined where nobody voted. */
  readonly pairwise?: PairTable | undefined;
};

/** Row against column: how many ballots put the row's bar first. */
export type PairTable = {
  readonly title: string;
  readonly numbers: readonly string[];
  /** `undefined` on the diagonal. */
  readonly cells: readonly (readonly ({ readonly votes: number; readonly wins: boolean } | undefined)[])[];
};

/** Read on a phone: what is drawn wider is smaller there. */
const WIDTH = 600;
const INNER = WIDTH - 2 * MARGIN;
/** Few places are drawn large, many small: the board is filled either way. */
const sizesFor = (rows: number) => (rows <= 6 ? { photo: 132, side: 44 } : { photo: 96, side: 32 });
const WIN = '#dfe9d3';

/** Draws places with photos, colours wanted above colours measured, and the pairwise table. Returns a PNG. */
export function drawChallengeResults(board: ChallengeResults): Uint8Array {
  const sheet = new Sheet(WIDTH);
  let y = heading(sheet, board.title, board.kicker) + 20;
  const sizes = sizesFor(board.rows.length);
  for (const row of board.rows) {
    drawRow(sheet, row, y, sizes);
    y += sizes.photo + 16;
  }
  if (board.rows.some(row => row.pairs.length > 0))
    y = sheet.paragraph(board.swatchNote, MARGIN, y, INNER, { size: 16, colour: FAINT }) + 6;
  for (const text of board.why) y = sheet.paragraph(text, MARGIN, y, INNER, { size: 18 }) + 3;
  if (board.pairwise) y = table(sheet, board.pairwise, y + 14);
  return sheet.png(y + MARGIN - 8);
}

function drawRow(
  sheet: Sheet,
  row: ChallengeResults['rows'][number],
  y: number,
  { photo: height, side: most }: ReturnType<typeof sizesFor>,
): void {
  if (/^1=?$/.test(row.place)) sheet.box(MARGIN - 12, y - 6, INNER + 24, height + 12, GOLD, { radius: 10 });
  sheet.text(row.place, MARGIN + 16, y + height / 2 + 12, { size: 34, weight: 'bold', anchor: 'middle' });
  // As wide as phones take them: nothing of the frame stays empty.
  const wide = (height * 4) / 3;
  photo(sheet, row.photo, { x: MARGIN + 44, y, width: wide, height });
  const left = MARGIN + 44 + wide + 14;
  // Words keep two thirds of what is left: many colours are drawn smaller.
  const side = Math.min(most, (WIDTH - MARGIN - left) / 3 / Math.max(1, row.pairs.length) - 6);
  const swatches = row.pairs.length * (side + 6);
  const width = WIDTH - MARGIN - left - swatches - 12;
  const name = clamped(row.name, { width, size: 19, lines: 2, weight: 'bold' });
  const under = lines(sheet, name, { x: left, top: y + 2, size: 19, weight: 'bold', colour: INK });
  const room = Math.floor((y + height - under) / (15 * 1.35));
  const rest = row.lines.flatMap(text => clamped(text, { width, size: 15, lines: 3 })).slice(0, room);
  lines(sheet, rest, { x: left, top: under + 2, size: 15, colour: FAINT });
  pairs(sheet, row.pairs, { x: WIDTH - MARGIN - swatches + 6, y: y + (height - 2 * side) / 2, side });
}

function table(sheet: Sheet, { title, numbers, cells }: PairTable, top: number): number {
  const titled = sheet.paragraph(title, MARGIN, top, INNER, { size: 18, weight: 'bold' }) + 6;
  const width = (INNER - 60) / numbers.length;
  const height = 34;
  const left = MARGIN + 60;
  const size = width < 40 ? 12 : 16;
  for (const [index, number] of numbers.entries()) {
    const x = left + index * width + width / 2;
    sheet.text(number, x, titled + 20, { size, weight: 'bold', anchor: 'middle' });
    const y = titled + height * (index + 1);
    sheet.text(number, MARGIN + 30, y + 23, { size, weight: 'bold', anchor: 'middle' });
  }
  for (const [row, list] of cells.entries())
    for (const [column, cell] of list.entries()) {
      const x = left + column * width;
      const y = titled + height * (row + 1);
      sheet.box(x, y, width, height, cell?.wins ? WIN : 'none', { edge: RULE });
      if (!cell) continue;
      const weight = cell.wins ? 'bold' : 'regular';
      sheet.text(String(cell.votes), x + width / 2, y + 23, { size, weight, anchor: 'middle' });
    }
  return titled + height * (numbers.length + 1);
}
