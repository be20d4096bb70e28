import { readdirSync, readFileSync } from 'node:fs';
import sharp from 'sharp';
import { beforeAll, describe, expect, test } from 'vitest';
import { apart, demoPictures, PICTURES, pageInputs, small } from './readme-pictures.ts';

/** More than this on average a channel, and a picture is another one; the same one made anew stays well below. */
const STEADY = 1.5;
const kept = (name: string) => readFileSync(new URL(`${name}.webp`, PICTURES));
const HOW = 'make them anew: node tests/demo/write-pictures.ts';

describe('the pictures of the README', () => {
  let now: ReadonlyMap<string, Uint8Array>;
  beforeAll(async () => {
    now = await demoPictures();
  }, 400_000);

  test('show what the demo’s commands draw today', async () => {
    expect([...now.keys()].sort()).toEqual(['batch-card', 'board', 'marked-photo', 'swatch-card']);
    for (const [name, png] of now)
      expect([name, (await apart(kept(name), await small(png))) < STEADY, HOW]).toEqual([name, true, HOW]);
  });

  test('are told apart where they differ: one is not mistaken for another', async () => {
    const swatches = await small(now.get('swatch-card')!);
    // One swatch in another colour is enough.
    const { width, height } = await sharp(swatches).metadata();
    const size = { width: Math.round(width / 4), height: Math.round(height / 10) };
    const patch = await sharp({ create: { ...size, channels: 3, background: '#c04040' } })
      .png()
      .toBuffer();
    const changed = await sharp(swatches)
      .composite([{ input: patch, left: 0, top: 0 }])
      .webp()
      .toBuffer();
    expect(await apart(swatches, changed)).toBeGreaterThan(STEADY);
    expect(await apart(kept('board'), swatches)).toBeGreaterThan(STEADY);
  });

  test('show the page as its sources make it today', () => {
    const made = readFileSync(new URL('page.inputs', PICTURES), 'utf8').trim();
    expect([made === pageInputs(), HOW]).toEqual([true, HOW]);
  });

  test('are small, all of them in the README, each described', () => {
    const readme = readFileSync(new URL('../../README.md', import.meta.url), 'utf8');
    const names = readdirSync(PICTURES).filter(name => name.endsWith('.webp'));
    expect(names).toHaveLength(5);
    for (const name of names) {
      expect([name, readFileSync(new URL(name, PICTURES)).length < 120_000]).toEqual([name, true]);
      expect(readme).toMatch(
        new RegExp(
          `(?:!\\[[^\\]]{10,}\\]\\(src/demo/pictures/${name}\\)|src="src/demo/pictures/${name}"[^>]* alt="[^"]{10,}")`,
        ),
      );
    }
  });
});
