import sharp from 'sharp';
import { describe, expect, test } from 'vitest';
import { Sheet } from '../../src/pictures/sheet.ts';
import { widthOf, wrap } from '../../src/pictures/type.ts';

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
