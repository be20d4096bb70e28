import { Resvg } from '@resvg/resvg-js';
import sharp from 'sharp';
import { describe, expect, test } from 'vitest';
import { Sheet, type TextStyle } from '../../src/pictures/sheet.ts';
import { fontFiles, outlineOf, widthOf, wrap } from '../../src/pictures/type.ts';

describe('text in pictures', () => {
  test('is wrapped so that no line is wider than the room it has', () => {
    const text = 'Put the powder under 1 Tbsp of light oil and let it soak while you weigh the rest.';
    const lines = wrap(text, 200, 16);
    expect(lines.length).toBeGreaterThan(2);
    for (const line of lines) expect(widthOf(line, 16)).toBeLessThanOrEqual(200);
    expect(lines.join(' ')).toBe(text);
  });

  test('breaks a word that is wider than the room by itself', () => {
    for (const line of wrap('x'.repeat(200), 100, 16)) expect(widthOf(line, 16)).toBeLessThanOrEqual(100);
  });
});

/** The same drawing, its letters set by the painter, which shapes text by a program of its own (rustybuzz). */
const setByPainter = (sheet: Sheet, height: number): Uint8Array =>
  new Resvg(sheet.svg(height), {
    fitTo: { mode: 'zoom', value: 2 },
    font: { fontFiles: Object.values(fontFiles), loadSystemFonts: false, defaultFontFamily: 'Inter' },
  })
    .render()
    .asPng();

/** How far two pictures of one size are apart: the mean over the pixels that are not paper in either, 0 to 255. */
async function apart(one: Uint8Array, other: Uint8Array): Promise<number> {
  const [a, b] = await Promise.all([one, other].map(png => sharp(png).greyscale().raw().toBuffer()));
  const paper = a![0]!;
  const inked = [...a!.keys()].filter(at => a![at] !== paper || b![at] !== paper);
  return inked.reduce((sum, at) => sum + Math.abs(a![at]! - b![at]!), 0) / inked.length;
}

describe('letters', () => {
  const lines: readonly (readonly [string, TextStyle])[] = [
    ['AVATAR To Wa. “LT” 1/2 tsp + 1/32 tsp', { size: 26 }],
    ['Añil: 473 ml (2.1 cups), 96 °C, 5.1 %', { size: 25, weight: 'bold' }],
    ['office 3x4 -> flux', { size: 24, weight: 'bold', anchor: 'end', colour: '#6b6358' }],
    ['Ультрамарин, Άνθος', { size: 24, anchor: 'middle' }],
  ];
  const drawn = (shift: number) => {
    const sheet = new Sheet(600);
    for (const [at, [text, style]] of lines.entries())
      sheet.text(
        text,
        { start: 20, middle: 300, end: 580 }[style.anchor ?? 'start'] + shift,
        40 + 40 * at,
        style,
      );
    return sheet;
  };

  test('stand where the painter’s own setting puts them, kerned as there', async () => {
    const theirs = setByPainter(drawn(0), 180);
    expect(await apart(drawn(0).png(180, 2), theirs)).toBeLessThan(4);
    // One point aside is seen, and so is a line without its kerning.
    expect(await apart(drawn(1).png(180, 2), theirs)).toBeGreaterThan(30);
  });

  test.each(['regular', 'bold'] as const)('of %s are kerned: pairs that hang over come closer', weight => {
    for (const pair of ['AV', 'To', 'LT']) {
      const { width, unitsPerEm } = outlineOf(pair, weight);
      expect((16 * width) / unitsPerEm).toBeLessThan(widthOf(pair, 16, weight) - 0.3);
    }
    const { width, unitsPerEm } = outlineOf('mmmm', weight);
    expect((16 * width) / unitsPerEm).toBeCloseTo(widthOf('mmmm', 16, weight), 6);
  });

  test('that the font lacks are drawn as empty boxes as wide as they are taken to be, and break nothing', async () => {
    const odd = '\u{1F9FC}群\ud800\u0000\u200d';
    expect(outlineOf('群').d).not.toBe('');
    expect((16 * outlineOf('群').width) / outlineOf('群').unitsPerEm).toBeCloseTo(widthOf('群', 16), 6);
    const { info } = await sharp(new Sheet(200).text(odd, 4, 20).png(30, 1))
      .raw()
      .toBuffer({ resolveWithObject: true });
    expect([info.width, info.height]).toEqual([200, 30]);
  });
});

describe('a sheet', () => {
  test('draws a box in exactly the colour it is given', async () => {
    const png = new Sheet(40).box(0, 0, 40, 40, '#4b3f9e').png(40, 1);
    const { data, info } = await sharp(png).raw().toBuffer({ resolveWithObject: true });
    expect([info.width, info.height]).toEqual([40, 40]);
    expect([...data.subarray(0, 3)]).toEqual([0x4b, 0x3f, 0x9e]);
  });

  test('draws letters, not boxes: two words of one length look different', async () => {
    const drawn = (word: string) =>
      sharp(new Sheet(80).text(word, 4, 20).png(30, 1))
        .raw()
        .toBuffer();
    expect((await drawn('gold')).equals(await drawn('blue'))).toBe(false);
  });

  test('takes any text as text', () => {
    const svg = new Sheet(80).text('<script>&"\u0000', 0, 20).svg(30);
    expect(svg).toContain('&lt;script&gt;&amp;&quot;</text>');
  });
});
