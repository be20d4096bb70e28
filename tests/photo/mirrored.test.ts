import { expect, test } from 'vitest';
import { decodePhoto } from '../../src/photo/decode.ts';
import { meanWithMirrored, mirrored } from '../../src/photo/network/mirrored.ts';
import { look } from '../../src/photo/network/passes.ts';
import { shoot } from './render/scene.ts';
import { FLAW_DRAWINGS, shotOf } from './render/shots.ts';

test('each row is turned round by itself, and twice turned is as it was', () => {
  const rows = Float32Array.from([1, 2, 3, 4, 5, 6]);
  expect([...mirrored(rows, 3)]).toEqual([3, 2, 1, 6, 5, 4]);
  expect(mirrored(mirrored(rows, 3), 3)).toEqual(rows);
});

test('the mean of two looks has what the mirrored one saw where it lies', () => {
  const one = { side: 2, maps: Float32Array.from([8, 0, 0, 0]), answers: Float32Array.from([1, -3]) };
  const other = { side: 2, maps: Float32Array.from([0, 4, 0, 0]), answers: Float32Array.from([3, -5]) };
  const mean = meanWithMirrored(one, other);
  expect([...mean.maps]).toEqual([6, 0, 0, 0]);
  expect([...mean.answers]).toEqual([2, -4]);
});

test('a picture and its mirror image are read alike where the bar fills the same square', async () => {
  const { flaw } = FLAW_DRAWINGS['crack-on-top'](3);
  const photo = await decodePhoto(
    await shoot(shotOf(61, { blur: 2, noise: 3, quality: 88 }, { flaws: [flaw], paper: 'none' })),
  );
  const rgb = new Uint8Array(photo.rgb.length);
  for (let i = 0; i < photo.width * photo.height; i++) {
    const x = i % photo.width;
    const from = i - x + photo.width - 1 - x;
    rgb.set(photo.rgb.subarray(3 * from, 3 * from + 3), 3 * i);
  }
  const [seen, turned] = [await look(photo), await look({ ...photo, rgb })];
  const unlike = seen!.answers.map((value, i) => Math.abs(value - turned!.answers[i]!));
  // One look alone differs by 1.5 in one answer.
  expect(Math.max(...unlike)).toBeLessThan(0.4);
});
