import { spawnSync } from 'node:child_process';
import { describe, test } from 'vitest';
import { codedIn, heic } from '../photo/heif/writer.ts';
import { shoot } from '../photo/render/scene.ts';
import { FLAW_DRAWINGS, shotOf } from '../photo/render/shots.ts';
import { hold } from './figures.ts';

/** A 12-megapixel JPEG as a phone writes it: grain, quality 93, a bar with veins and white paper beside it. */
async function twelveMegapixels(): Promise<Uint8Array> {
  const { flaw, colours = [] } = FLAW_DRAWINGS['translucent-veins'](1034);
  const camera = { blur: 0.8, noise: 5, quality: 93 };
  return shoot(shotOf(77, camera, { flaws: [flaw], colours, paper: 'beside', width: 4000, height: 3000 }));
}

const photo = await twelveMegapixels();

/** As many pixels in a HEIC, in tiles as phones write them. Every tile is the same, with the grain of a photograph. */
const heicPhoto = heic({
  tile: codedIn('grain.heic'),
  grid: { rows: 6, columns: 8, size: { width: 4000, height: 3000 } },
});

function measured<Report>(what: string, input: Uint8Array): Report {
  const script = new URL('./photo-alone.ts', import.meta.url).pathname;
  const { stdout, stderr } = spawnSync(process.execPath, [script, what], { input, encoding: 'utf8' });
  if (stdout === '') throw new Error(stderr);
  return JSON.parse(stdout) as Report;
}

const patient = { timeout: 300_000 };

/** Resident memory of a process that reads ten photos at once, MB. */
const MOST_MB = 600;

describe.each([
  // Decoding HEVC in WebAssembly takes 1.6 s by itself, libheif's own time.
  ['JPEG', photo, 1_500],
  ['HEIC', heicPhoto, 4_000],
] as const)('a 12-megapixel %s', (kind, bytes, most) => {
  test('is answered within its processor time', patient, ({ task }) => {
    const { first, warm, clock } = measured<{ first: number; warm: number; clock: number }>('once', bytes);
    console.info(`the first ${first.toFixed(0)} ms of processor time, the clock ${clock.toFixed(0)} ms`);
    hold(task, [{ what: `a 12-megapixel ${kind}`, seen: warm, most, unit: 'ms of processor time' }]);
  });

  test('ten times at once keeps the main thread free and its memory within bounds', patient, ({ task }) => {
    const { resident, quiet, busy } = measured<{ resident: number; quiet: number; busy: number }>(
      'ten',
      bytes,
    );
    hold(task, [
      { what: `ten 12-megapixel ${kind}s at once`, seen: resident / 1e6, most: MOST_MB, unit: 'MB resident' },
      // What the machine's other work costs the main thread, it costs with nothing to do as well.
      {
        what: `the main thread late meanwhile, 99 %, beyond ${quiet.toFixed(1)} ms with nothing to do`,
        seen: busy - quiet,
        most: 20,
        unit: 'ms',
      },
    ]);
  });
});
