import { FAINT, INK, RULE, Sheet } from './sheet.ts';
import { widthOf } from './type.ts';

/** A point of a curve or a bar: dose in teaspoons to the cup. */
type At = { readonly dose: number; readonly lightness: number; readonly chroma: number };

/** Test bars against dose: measured, expected of the kind, and as fitted. Texts in the reader's words. */
export type FitPlot = {
  readonly title: string;
  readonly lightness: string;
  readonly chroma: string;
  readonly dose: string;
  readonly legend: { readonly measured: string; readonly usual: string; readonly fitted: string };
  readonly usual: readonly At[];
  readonly fitted: readonly At[];
  readonly bars: readonly (At & { readonly hex: string })[];
  readonly pairsTitle: string;
  readonly pairs: readonly {
    readonly measured: string;
    readonly predicted: string;
    readonly label: string;
  }[];
};

const WIDTH = 900;
const MARGIN = 40;
const LEFT = 100;
const PANEL = { width: WIDTH - LEFT - MARGIN - 20, height: 250 } as const;
const TEXT = 22;
const FITTED = '#1f4f8a';
const USUAL = '#8a5a1f';

type Frame = { readonly top: number; readonly most: number; readonly doses: number };

/** Draws lightness and colourfulness against dose, and each bar beside its prediction. Returns a PNG. */
export function drawFitPlot(plot: FitPlot): Uint8Array {
  const sheet = new Sheet(WIDTH);
  let y =
    sheet.paragraph(plot.title, MARGIN, MARGIN - 6, WIDTH - 2 * MARGIN, { size: 34, weight: 'bold' }) + 6;
  y = legend(sheet, plot.legend, y) + 22;
  const doses = Math.max(...plot.fitted.map(({ dose }) => dose));
  y = panel(sheet, plot, { of: 'lightness', most: 100, top: y, doses });
  const vivid = Math.max(...[...plot.usual, ...plot.fitted, ...plot.bars].map(({ chroma }) => chroma));
  y = panel(sheet, plot, {
    of: 'chroma',
    most: Math.max(20, Math.ceil(vivid / 20) * 20),
    top: y + 20,
    doses,
  });
  sheet.text(plot.dose, LEFT + PANEL.width / 2, y + 18, { size: TEXT, anchor: 'middle' });
  y = pairs(sheet, plot, y + 50);
  return sheet.png(y + MARGIN, 1.5);
}

/** The lines differ in dash as well as in colour, the bars are rings. */
function legend(sheet: Sheet, words: FitPlot['legend'], top: number): number {
  const y = top + TEXT;
  let x = MARGIN;
  const entry = (mark: () => void, text: string) => {
    const width = 62 + widthOf(text, TEXT);
    mark();
    sheet.text(text, x + 54, y, { size: TEXT });
    x += width + 22;
  };
  entry(() => ring(sheet, { x: x + 26, y: y - 7 }, '#ffffff'), words.measured);
  entry(() => sheet.element(stroke(`M${x} ${y - 7}h46`, FITTED, '')), words.fitted);
  entry(() => sheet.element(stroke(`M${x} ${y - 7}h46`, USUAL, '9 7')), words.usual);
  return y + 8;
}

const stroke = (path: string, colour: string, dash: string): string =>
  `<path d="${path}" fill="none" stroke="${colour}" stroke-width="4" stroke-dasharray="${dash}"/>`;

function ring(sheet: Sheet, { x, y }: { x: number; y: number }, fill: string): void {
  const place = `cx="${x.toFixed(1)}" cy="${y.toFixed(1)}"`;
  sheet.element(`<circle ${place} r="11" fill="${fill}" stroke="${INK}" stroke-width="3"/>`);
}

function panel(
  sheet: Sheet,
  plot: FitPlot,
  { of, ...frame }: Frame & { readonly of: 'lightness' | 'chroma' },
): number {
  const top =
    sheet.paragraph(plot[of], MARGIN, frame.top, WIDTH - 2 * MARGIN, { size: TEXT, weight: 'bold' }) + 14;
  const inside = { ...frame, top };
  axes(sheet, inside);
  const line = (points: readonly At[]) =>
    points
      .map((point, at) => {
        const { x, y } = placed(point, of, inside);
        return `${at === 0 ? 'M' : 'L'}${x.toFixed(1)} ${y.toFixed(1)}`;
      })
      .join('');
  sheet.element(stroke(line(plot.usual), USUAL, '9 7'));
  sheet.element(stroke(line(plot.fitted), FITTED, ''));
  for (const bar of plot.bars) ring(sheet, placed(bar, of, inside), bar.hex);
  return top + PANEL.height + 44;
}

const placed = (point: At, of: 'lightness' | 'chroma', { top, most, doses }: Frame) => ({
  x: LEFT + (point.dose / doses) * PANEL.width,
  y: top + PANEL.height * (1 - Math.min(point[of], most) / most),
});

function axes(sheet: Sheet, { top, most, doses }: Frame): void {
  for (const part of [0, 0.5, 1]) {
    const y = top + PANEL.height * (1 - part);
    sheet.line(LEFT, y, LEFT + PANEL.width, y, part === 0 ? INK : RULE, part === 0 ? 2 : 1);
    sheet.text(String(Math.round(most * part)), LEFT - 12, y + 8, { size: TEXT, anchor: 'end' });
  }
  const step = tickStep(doses);
  for (let dose = 0; dose <= doses * 1.0001; dose += step) {
    const x = LEFT + (dose / doses) * PANEL.width;
    sheet.line(x, top + PANEL.height, x, top + PANEL.height + 8, INK, 2);
    sheet.text(fraction(dose), x, top + PANEL.height + 32, { size: TEXT, anchor: 'middle', colour: FAINT });
  }
}

/** A spoon's worth between ticks, three to six of them. */
const tickStep = (doses: number): number =>
  [1 / 64, 1 / 32, 1 / 16, 1 / 8, 1 / 4, 1 / 2, 1, 2, 5, 10].find(step => doses / step <= 6) ?? doses / 4;

/** `3/8`, `1 1/4`: spoons as makers read them. */
function fraction(value: number): string {
  const units = Math.round(value * 64);
  const [whole, rest] = [Math.floor(units / 64), units % 64];
  if (rest === 0) return String(whole);
  let [top, below] = [rest, 64];
  while (top % 2 === 0) [top, below] = [top / 2, below / 2];
  return `${whole > 0 ? `${whole} ` : ''}${top}/${below}`;
}

function pairs(sheet: Sheet, { pairsTitle, pairs: list }: FitPlot, top: number): number {
  let y = sheet.paragraph(pairsTitle, MARGIN, top, WIDTH - 2 * MARGIN, { size: TEXT, weight: 'bold' }) + 10;
  for (const { measured, predicted, label } of list) {
    sheet.box(MARGIN, y, 110, 62, measured);
    sheet.box(MARGIN + 110, y, 110, 62, predicted);
    sheet.box(MARGIN, y, 220, 62, 'none', { edge: INK });
    const under = sheet.paragraph(label, MARGIN + 240, y + 2, WIDTH - 2 * MARGIN - 240, { size: TEXT });
    y = Math.max(y + 62, under) + 12;
  }
  return y - 12;
}
