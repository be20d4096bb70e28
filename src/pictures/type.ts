import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { Blob, Face, Font, Buffer as Letters, shape } from 'harfbuzzjs';

/** The weights our pictures are set in. */
export type Weight = 'regular' | 'bold';

const file = (name: string) => fileURLToPath(import.meta.resolve(`@expo-google-fonts/inter/${name}`));

/** Inter (SIL Open Font License 1.1), shipped as a package: pictures look the same on every machine. */
export const fontFiles: Readonly<Record<Weight, string>> = {
  regular: file('400Regular/Inter_400Regular.ttf'),
  bold: file('700Bold/Inter_700Bold.ttf'),
};

/** A font, and what has been read from it so far. All measures in its own units. */
type Typeface = {
  readonly font: Font;
  readonly unitsPerEm: number;
  /** How far each character moves the pen. */
  readonly advances: Map<string, number>;
  /** The outline of each glyph, as {@link relative} writes it. */
  readonly outlines: Map<number, string>;
};

const typefaces = new Map<Weight, Typeface>();

function typefaceOf(weight: Weight): Typeface {
  const known = typefaces.get(weight);
  if (known) return known;
  const face = new Face(new Blob(readFileSync(fontFiles[weight])));
  const typeface = {
    font: new Font(face),
    unitsPerEm: face.upem,
    advances: new Map<string, number>(),
    outlines: new Map<number, string>(),
  };
  typefaces.set(weight, typeface);
  return typeface;
}

/** The glyph of what a font has no letter for. Source: OpenType specification, chapter on glyph 0, `.notdef`. */
const NO_LETTER = 0;

function advanceOf({ font, advances }: Typeface, character: string): number {
  const known = advances.get(character);
  if (known !== undefined) return known;
  const advance = font.glyphHAdvance(font.nominalGlyph(character.codePointAt(0) ?? 0) ?? NO_LETTER);
  advances.set(character, advance);
  return advance;
}

/** Width of a line of text set at `size` pixels, in pixels. Kerning, which only narrows here, is left out. */
export function widthOf(text: string, size: number, weight: Weight = 'regular'): number {
  const typeface = typefaceOf(weight);
  let units = 0;
  for (const character of text) units += advanceOf(typeface, character);
  return (units / typeface.unitsPerEm) * size;
}

/** A line of text as a path by SVG's letters, y upwards from the baseline, and how far it goes: both in units of the font. */
export type Outline = { readonly d: string; readonly width: number; readonly unitsPerEm: number };

/** Sets a line of text with its kerning and ligatures. What the font has no letter for is an empty box. */
export function outlineOf(text: string, weight: Weight = 'regular'): Outline {
  const typeface = typefaceOf(weight);
  const letters = new Letters();
  letters.addText(text);
  letters.guessSegmentProperties();
  shape(typeface.font, letters);
  const places = letters.getGlyphPositions();
  let width = 0;
  let d = '';
  for (const [at, { codepoint: glyph }] of letters.getGlyphInfos().entries()) {
    const { xOffset = 0, yOffset = 0, xAdvance = 0 } = places[at] ?? {};
    const outline = glyphOutline(typeface, glyph);
    if (outline !== '') d += `M${width + xOffset} ${yOffset}${outline}`;
    width += xAdvance;
  }
  return { d, width, unitsPerEm: typeface.unitsPerEm };
}

function glyphOutline({ font, outlines }: Typeface, glyph: number): string {
  const known = outlines.get(glyph);
  if (known !== undefined) return known;
  const outline = relative(font.glyphToJson(glyph));
  outlines.set(glyph, outline);
  return outline;
}

/** An outline in steps from wherever the pen stands, so that it is written once and set anywhere. */
function relative(outline: ReturnType<Font['glyphToJson']>): string {
  let [x, y] = [0, 0];
  let start: readonly [number, number] = [0, 0];
  let steps = '';
  for (const { type, values } of outline) {
    steps += type.toLowerCase() + values.map((value, at) => value - (at % 2 === 0 ? x : y)).join(' ');
    if (type === 'Z') [x, y] = start;
    else [x, y] = [values.at(-2) ?? x, values.at(-1) ?? y];
    if (type === 'M') start = [x, y];
  }
  return steps;
}

/**
 * Breaks a text into lines no wider than `width` pixels, never at a no-break space; a word that is wider by itself is
 * broken too.
 */
export function wrap(text: string, width: number, size: number, weight: Weight = 'regular'): string[] {
  return text
    .split('\n')
    .flatMap(paragraph => wrapParagraph(paragraph, line => widthOf(line, size, weight) <= width));
}

function wrapParagraph(paragraph: string, fits: (line: string) => boolean): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of paragraph.split(/[^\S\u00a0]+/).flatMap(one => broken(one, fits))) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (fits(longer)) line = longer;
    else {
      if (line !== '') lines.push(line);
      line = word;
    }
  }
  return [...lines, line];
}

function broken(word: string, fits: (line: string) => boolean): string[] {
  if (fits(word)) return [word];
  const pieces: string[] = [];
  let piece = '';
  for (const character of word) {
    if (piece !== '' && !fits(piece + character)) {
      pieces.push(piece);
      piece = '';
    }
    piece += character;
  }
  return [...pieces, piece];
}
