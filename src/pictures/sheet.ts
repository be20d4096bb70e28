import { Resvg } from '@resvg/resvg-js';
import { spaced } from '../engine/over-lines.ts';
import { outlineOf, type Weight, wrap } from './type.ts';

/** Paper and ink of every picture: dark on light, so that it also prints in black and white. */
export const PAPER = '#faf7f0';
export const INK = '#2b2620';
export const FAINT = '#6b6358';
export const RULE = '#d8d0c2';
/** What comes first, or was chosen. */
export const GOLD = '#f0dfae';

export type TextStyle = {
  readonly size?: number;
  readonly weight?: Weight;
  readonly colour?: string;
  /** Where `x` is in the text. */
  readonly anchor?: 'start' | 'middle' | 'end';
};

export type PathStyle = {
  readonly fill?: string;
  readonly stroke?: string;
  readonly width?: number;
  readonly dash?: readonly number[];
};

export const LINE_HEIGHT = 1.35;

const escaped = (text: string) =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');

/** Control characters are not allowed in XML, and have no letter, whatever a member typed. */
const CONTROL = /[\p{Cc}\ufffe\uffff]/gu;

const round = (value: number) => Math.round(value * 100) / 100;

/** A line of text with its baseline at `y`. */
type Line = Required<TextStyle> & { readonly text: string; readonly x: number; readonly y: number };

const asText = ({ text, x, y, size, weight, colour, anchor }: Line): string => {
  const bold = weight === 'bold' ? ' font-weight="700"' : '';
  return spaced`
    <text x="${round(x)}" y="${round(y)}" font-family="Inter" font-size="${size}"${bold} fill="${colour}"
    text-anchor="${anchor}">${escaped(text)}</text>
  `;
};

/** A painter that is given text maps the font file anew for every letter, and takes as long again for each line. */
function asOutline({ text, x, y, size, weight, colour, anchor }: Line): string {
  const { d, width, unitsPerEm } = outlineOf(text, weight);
  const scale = size / unitsPerEm;
  const left = anchor === 'start' ? x : anchor === 'end' ? x - width * scale : x - (width * scale) / 2;
  const place = `translate(${round(left)} ${round(y)}) scale(${scale} ${-scale})`;
  return `<path transform="${place}" fill="${colour}" d="${d}"/>`;
}

const painted = (svg: string, scale: number) =>
  new Resvg(svg, { fitTo: { mode: 'zoom', value: scale }, font: { loadSystemFonts: false } }).render();

/**
 * A picture drawn top-left to bottom-right in CSS pixels. Nothing is measured back from the drawing: text is
 * wrapped with the font's own widths before it is placed.
 */
export class Sheet {
  readonly width: number;
  readonly #parts: (string | Line)[] = [];

  constructor(width: number) {
    this.width = width;
  }

  /** A filled rectangle; `edge` draws its outline, so that pale colours show on paper. */
  box(
    x: number,
    y: number,
    width: number,
    height: number,
    fill: string,
    more: { radius?: number; edge?: string } = {},
  ): this {
    const { radius = 0, edge } = more;
    const outline = edge ? ` stroke="${edge}" stroke-width="1"` : '';
    this.#parts.push(
      `<rect x="${round(x)}" y="${round(y)}" width="${round(width)}" height="${round(height)}" rx="${radius}" fill="${fill}"${outline}/>`,
    );
    return this;
  }

  line(x1: number, y1: number, x2: number, y2: number, colour: string = RULE, width = 1): this {
    this.#parts.push(
      `<line x1="${round(x1)}" y1="${round(y1)}" x2="${round(x2)}" y2="${round(y2)}" stroke="${colour}" stroke-width="${width}"/>`,
    );
    return this;
  }

  /** A path by SVG's own letters, filled or drawn. */
  path(d: string, { fill = 'none', stroke, width = 1, dash }: PathStyle): this {
    const line = stroke ? ` stroke="${stroke}" stroke-width="${width}" stroke-linejoin="round"` : '';
    const dashed = dash ? ` stroke-dasharray="${dash.join(' ')}"` : '';
    return this.element(`<path d="${d}" fill="${fill}"${line}${dashed}/>`);
  }

  /** A path, a circle, an image: any one SVG element that is trusted already. */
  element(svg: string): this {
    this.#parts.push(svg);
    return this;
  }

  /** One line of text with its baseline at `y`. */
  text(text: string, x: number, y: number, style: TextStyle = {}): this {
    const { size = 16, weight = 'regular', colour = INK, anchor = 'start' } = style;
    this.#parts.push({ text: text.replaceAll(CONTROL, ''), x, y, size, weight, colour, anchor });
    return this;
  }

  /** Text wrapped to `width`, its top at `top`; returns the y under its last line. */
  paragraph(text: string, x: number, top: number, width: number, style: TextStyle = {}): number {
    const { size = 16, weight = 'regular' } = style;
    let y = top;
    for (const line of wrap(text, width, size, weight)) {
      this.text(line, x, y + size, style);
      y += size * LINE_HEIGHT;
    }
    return y;
  }

  /** The drawing as SVG of the given height, its text as text. */
  svg(height: number): string {
    return this.#drawn(height, asText);
  }

  /** The drawing as PNG, `scale` device pixels to the CSS pixel. */
  png(height: number, scale = 2): Uint8Array {
    return painted(this.#drawn(Math.ceil(height), asOutline), scale).asPng();
  }

  /** The drawing without its paper, as RGBA rows (8 bits, premultiplied), to be laid over a photo. */
  overlay(
    height: number,
    scale = 2,
  ): { readonly data: Uint8Array; readonly width: number; readonly height: number } {
    const { pixels, width, height: rows } = painted(this.#drawn(Math.ceil(height), asOutline, 'none'), scale);
    return { data: pixels, width, height: rows };
  }

  #drawn(height: number, line: (line: Line) => string, paper = PAPER): string {
    const size = `width="${this.width}" height="${round(height)}"`;
    const parts = this.#parts.map(part => (typeof part === 'string' ? part : line(part)));
    return `<svg xmlns="http://www.w3.org/2000/svg" ${size}><rect ${size} fill="${paper}"/>${parts.join('')}</svg>`;
  }
}
