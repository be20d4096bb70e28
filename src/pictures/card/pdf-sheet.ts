import PDFDocument from 'pdfkit';
import { INK, LINE_HEIGHT, type PathStyle, RULE, type TextStyle } from '../sheet.ts';
import { fontFiles, widthOf, wrap } from '../type.ts';
import type { Paper } from './paper.ts';

/** Points of a page, and the margin that every printer keeps. */
export const PAGES = { a4: [595.28, 841.89], letter: [612, 792] } as const;
export type PageSize = keyof typeof PAGES;
const MARGIN = 30;

/** One page to print, drawn in the CSS pixels of a sheet that is `width` by `height` and fits into the margins. */
export class PdfSheet implements Paper {
  readonly width: number;
  readonly #document: PDFKit.PDFDocument;

  constructor(
    size: PageSize,
    { width, height, title }: { readonly width: number; readonly height: number; readonly title: string },
  ) {
    this.width = width;
    const [across, down] = PAGES[size];
    // No clock in it: the same card is the same file.
    const info = { Title: title, CreationDate: new Date(0) };
    this.#document = new PDFDocument({ size: [across, down], margin: 0, info, autoFirstPage: true });
    for (const [weight, file] of Object.entries(fontFiles)) this.#document.registerFont(weight, file);
    const scale = Math.min((across - 2 * MARGIN) / width, (down - 2 * MARGIN) / height);
    this.#document.translate((across - scale * width) / 2, MARGIN).scale(scale);
  }

  box(
    x: number,
    y: number,
    width: number,
    height: number,
    fill: string,
    { radius = 0, edge }: { radius?: number; edge?: string } = {},
  ): this {
    const shape = this.#document.lineWidth(1).roundedRect(x, y, width, height, radius);
    if (fill !== 'none' && edge) shape.fillAndStroke(fill, edge);
    else if (edge) shape.stroke(edge);
    else shape.fill(fill);
    return this;
  }

  line(x1: number, y1: number, x2: number, y2: number, colour: string = RULE, width = 1): this {
    this.#document.lineWidth(width).moveTo(x1, y1).lineTo(x2, y2).stroke(colour);
    return this;
  }

  path(d: string, { fill = 'none', stroke, width = 1, dash }: PathStyle): this {
    this.#document.save().lineJoin('round').lineWidth(width);
    if (dash) this.#document.dash(dash[0]!, { space: dash[1] ?? dash[0]! });
    const path = this.#document.path(d);
    if (stroke) path.stroke(stroke);
    else path.fill(fill);
    this.#document.restore();
    return this;
  }

  text(text: string, x: number, y: number, style: TextStyle = {}): this {
    const { size = 16, weight = 'regular', colour = INK, anchor = 'start' } = style;
    const wide = widthOf(text, size, weight);
    const left = anchor === 'start' ? x : anchor === 'end' ? x - wide : x - wide / 2;
    this.#document
      .font(weight)
      .fontSize(size)
      .fillColor(colour)
      .text(text, left, y, { lineBreak: false, baseline: 'alphabetic' });
    return this;
  }

  paragraph(text: string, x: number, top: number, width: number, style: TextStyle = {}): number {
    const { size = 16, weight = 'regular' } = style;
    let y = top;
    for (const line of wrap(text, width, size, weight)) {
      this.text(line, x, y + size, style);
      y += size * LINE_HEIGHT;
    }
    return y;
  }

  /** The page as a file. */
  async pdf(): Promise<Uint8Array> {
    const chunks: Uint8Array[] = [];
    this.#document.on('data', (chunk: Uint8Array) => chunks.push(chunk));
    const ended = new Promise<void>((resolve, reject) => {
      this.#document.on('end', resolve);
      this.#document.on('error', reject);
    });
    this.#document.end();
    await ended;
    return Buffer.concat(chunks);
  }
}
