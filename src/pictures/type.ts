import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import opentype, { type Font } from 'opentype.js';

/** The weights our pictures are set in. */
export type Weight = 'regular' | 'bold';

const file = (name: string) => fileURLToPath(import.meta.resolve(`@expo-google-fonts/inter/${name}`));

/** Inter (SIL Open Font License 1.1), shipped as a package: pictures look the same on every machine. */
export const fontFiles: Readonly<Record<Weight, string>> = {
  regular: file('400Regular/Inter_400Regular.ttf'),
  bold: file('700Bold/Inter_700Bold.ttf'),
};

const fonts = new Map<Weight, Font>();

function fontOf(weight: Weight): Font {
  const known = fonts.get(weight);
  if (known) return known;
  const bytes = readFileSync(fontFiles[weight]);
  // Glyphs are read when they are first used: of some two thousand a picture uses a hundred.
  const font = opentype.parse(bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength), {
    lowMemory: true,
  });
  fonts.set(weight, font);
  return font;
}

/** Width of a line of text set at `size` pixels, in pixels. Kerning, which only narrows here, is left out. */
export function widthOf(text: string, size: number, weight: Weight = 'regular'): number {
  const font = fontOf(weight);
  let units = 0;
  for (const character of text) units += font.charToGlyph(character).advanceWidth ?? 0;
  return (units / font.unitsPerEm) * size;
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
