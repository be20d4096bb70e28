import sharp from 'sharp';
import { expect, test } from 'vitest';
import { PHOTO_LIMITS } from '../../src/photo/limits.ts';
import { readPhoto } from '../../src/photo/read.ts';
import { openWorkers } from '../../src/workers/workers.ts';
import { shoot } from '../photo/render/scene.ts';
import { FLAW_DRAWINGS, shotOf } from '../photo/render/shots.ts';

/** A 12-megapixel JPEG as a phone writes it: grain, quality 93, a bar with veins and white paper beside it. */
async function twelveMegapixels(): Promise<Uint8Array> {
  const { flaw, colours = [] } = FLAW_DRAWINGS['translucent-veins'](1034);
  const camera = { blur: 0.8, noise: 5, quality: 93 };
  return shoot(shotOf(77, camera, { flaws: [flaw], colours, paper: 'beside', width: 4000, height: 3000 }));
}

const decodeAndResize = (bytes: Uint8Array) =>
  sharp(bytes).resize(PHOTO_LIMITS.readAt, PHOTO_LIMITS.readAt, { fit: 'inside' }).raw().toBuffer();

test('reading a 12-megapixel photo takes at most 4 times its decoding and resizing', {
  timeout: 120_000,
}, async ({ bench }) => {
  const bytes = await twelveMegapixels();
  const base = await bench('decode and resize', () => decodeAndResize(bytes).then(() => {})).run();
  const whole = await bench('read', () => readPhoto(bytes).then(() => {})).run();
  const ratio = whole.latency.p50 / base.latency.p50;
  console.log(
    `read / decode and resize: ${ratio.toFixed(2)} (${whole.latency.p50.toFixed(0)} ms / ${base.latency.p50.toFixed(0)} ms)`,
  );
  expect(ratio).toBeLessThan(4);
});

test('ten photos at once keep the main thread free and stay within 600 MB', {
  timeout: 120_000,
}, async () => {
  const { monitorEventLoopDelay } = await import('node:perf_hooks');
  const bytes = await twelveMegapixels();
  const workers = openWorkers();
  await workers.run('readPhoto', { bytes }, { owner: 'warm-up' });
  const delay = monitorEventLoopDelay({ resolution: 1 });
  let most = 0;
  const watch = setInterval(() => {
    most = Math.max(most, process.memoryUsage.rss());
  }, 20);
  delay.enable();
  await Promise.all(
    Array.from({ length: 10 }, (_, i) => workers.run('readPhoto', { bytes }, { owner: `member-${i}` })),
  );
  delay.disable();
  clearInterval(watch);
  await workers.close();
  console.log(
    `99th percentile of delay ${(delay.percentile(99) / 1e6).toFixed(1)} ms, resident ${(most / 1e6).toFixed(0)} MB`,
  );
  expect(most).toBeLessThan(600e6);
});
