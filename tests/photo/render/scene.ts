import { createHash } from 'node:crypto';
import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';
import { keptIn } from '../../kept-in.ts';
import { type Design, paintBar } from './bar.ts';
import { type Canvas, canvas, encoded, type Linear, linear } from './canvas.ts';
import { chance, smoothNoise } from './chance.ts';
import type { Flaw } from './flaws.ts';

/** Everything a rendered photo is made of: its parameters are its caption. */
export type Shot = {
  readonly seed: number;
  readonly design: Design;
  /** `#rrggbb` of the bar's colours in daylight. */
  readonly colours: readonly string[];
  readonly flaws: readonly Flaw[];
  readonly background: 'table' | 'wood' | 'cloth' | 'slate';
  /** White paper beside the bar, under it, or none. */
  readonly paper: 'beside' | 'under' | 'none';
  /** Turn of the bar in degrees, and how far its far side shrinks (0 to 0.2). */
  readonly angle: number;
  readonly perspective: number;
  /** The bar's width as a share of the picture's. */
  readonly fill: number;
  /** How much darker the far corner is (0 to 0.5). */
  readonly falloff: number;
  /** What each linear channel is multiplied by: the phone's colour cast. */
  readonly cast: Linear;
  /** Blur: standard deviation in thousandths of the bar's width. */
  readonly blur: number;
  /** Sensor noise: standard deviation in 8-bit steps at mid grey. */
  readonly noise: number;
  readonly quality: number;
  readonly width: number;
  readonly height: number;
};

/** The photo as JPEG. `see` gives the linear colour of `#rrggbb` as the camera has it under the light. */
export async function shoot(shot: Shot, see: (hex: string) => Linear = linear): Promise<Uint8Array> {
  if (see !== linear) return taken(shot, see);
  const key = JSON.stringify(shot);
  const known = album.get(key) ?? keptIn(ALBUM, key, () => taken(shot, see));
  album.set(key, known);
  return (await known).slice();
}

/** What was shot already in this process: a photo takes half a second, and is the same each time. */
const album = new Map<string, Promise<Uint8Array>>();
/** And what earlier runs shot, by what draws it: a photo is the same until the code here or a library changes. */
const ALBUM = join(
  import.meta.dirname,
  '../../../.tintmoot/photos',
  globSync('*.ts', { cwd: import.meta.dirname })
    .toSorted()
    .reduce(
      (hash, file) => hash.update(readFileSync(join(import.meta.dirname, file))),
      createHash('sha256').update(JSON.stringify([process.version, sharp.versions])),
    )
    .digest('hex')
    .slice(0, 16),
);

async function taken(shot: Shot, see: (hex: string) => Linear): Promise<Uint8Array> {
  const pixels = develop(exposed(shot, see), shot);
  return await sharp(pixels, { raw: { width: shot.width, height: shot.height, channels: 3 } })
    .jpeg({ quality: shot.quality })
    .toBuffer();
}

type Spot = readonly [number, number];

const BACKGROUNDS = { table: '#b9b2a6', wood: '#8a6a48', cloth: '#6f8a94', slate: '#4a4d50' } as const;
/** Paper sends back 0.87 of the light at every wavelength. */
const PAPER = '#f0f0f0';

function exposed(shot: Shot, see: (hex: string) => Linear): Canvas {
  const out = canvas(shot.width, shot.height);
  const dice = chance(shot.seed + 17);
  const barWidth = shot.fill * shot.width;
  const barHeight = barWidth * dice.between(0.62, 0.75);
  const face = paintBar(shot.design, shot.colours.map(see), shot.flaws, {
    width: Math.round(barWidth),
    height: Math.round(barHeight),
    seed: shot.seed,
  });
  const beside = shot.paper === 'beside';
  const middle: Spot = [
    shot.width * (beside ? 0.4 : dice.between(0.47, 0.53)),
    shot.height * dice.between(0.47, 0.53),
  ];
  const toFace = intoFace(middle, barWidth, barHeight, shot);
  const toPaper = intoFace([shot.width * 0.86, shot.height * 0.5], shot.width * 0.2, shot.height * 0.7, {
    angle: shot.angle * 0.3,
    perspective: 0,
  });
  const ground = groundOf(shot, see);
  const paper = see(PAPER);
  const white = paper.map(value => (value / linear(PAPER)[0]) * 0.87) as unknown as Linear;
  const lit = dice.between(0, 2 * Math.PI);
  for (let y = 0; y < shot.height; y++) {
    for (let x = 0; x < shot.width; x++) {
      const light =
        1 -
        shot.falloff *
          (0.5 + ((x / shot.width - 0.5) * Math.cos(lit) + (y / shot.height - 0.5) * Math.sin(lit)) * 0.7);
      const pixel = 3 * (y * shot.width + x);
      const [u, v] = toFace(x + 0.5, y + 0.5);
      const cover = roundedCover(u, v, barWidth, barHeight);
      const onPaper = beside && covers(toPaper(x + 0.5, y + 0.5));
      const under = shot.paper === 'under' || onPaper ? white : ground(x, y);
      const [su, sv] = toFace(x - barWidth * 0.018, y - barWidth * 0.022);
      const shadow = 1 - 0.3 * softBox(su, sv, 0.03);
      for (let c = 0; c < 3; c++) {
        const below = under[c]! * shadow;
        const value = cover > 0 ? below + (faceAt(face, u, v, c) * bevel(u, v) - below) * cover : below;
        out.data[pixel + c] = value * light * shot.cast[c]!;
      }
    }
  }
  return out;
}

/** From the picture to a rectangle's own coordinates, 0 to 1 each way, its far (upper) side drawn in by `perspective`. */
function intoFace(
  [mx, my]: Spot,
  width: number,
  height: number,
  { angle, perspective }: { angle: number; perspective: number },
): (x: number, y: number) => Spot {
  const turn = (angle * Math.PI) / 180;
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  return (x, y) => {
    const [px, py] = [(x - mx) / width, (y - my) / height];
    const across = px * cos + ((py * height) / width) * sin;
    const down = py * cos - ((px * width) / height) * sin;
    const depth = 1 + perspective * down;
    return [across / depth + 0.5, down / depth + 0.5];
  };
}

const covers = ([u, v]: Spot) => u >= 0 && u <= 1 && v >= 0 && v <= 1;

/** How much of a pixel the bar covers: a rectangle with corners rounded by 4 % of its width. */
function roundedCover(u: number, v: number, width: number, height: number): number {
  const radius = 0.04 * width;
  const dx = Math.max(Math.abs(u - 0.5) * width - (width / 2 - radius), 0);
  const dy = Math.max(Math.abs(v - 0.5) * height - (height / 2 - radius), 0);
  return Math.min(1, Math.max(0, radius + 0.5 - Math.hypot(dx, dy)));
}

function softBox(u: number, v: number, soft: number): number {
  const step = (t: number) => Math.min(1, Math.max(0, t / soft + 0.5));
  return step(u) * step(1 - u) * step(v) * step(1 - v);
}

/** Edges of a cut bar are a little worn: lit on top, dark below. */
const bevel = (u: number, v: number) =>
  1 +
  0.06 * Math.max(0, 1 - v / 0.012) -
  0.12 * Math.max(0, 1 - (1 - v) / 0.012) -
  0.06 * Math.max(0, 1 - (1 - u) / 0.01);

function faceAt({ width, height, data }: Canvas, u: number, v: number, channel: number): number {
  const x = Math.min(Math.max(u * width - 0.5, 0), width - 1.001);
  const y = Math.min(Math.max(v * height - 0.5, 0), height - 1.001);
  const [x0, y0] = [Math.floor(x), Math.floor(y)];
  const [fx, fy] = [x - x0, y - y0];
  const at = 3 * (y0 * width + x0) + channel;
  const below = at + 3 * width;
  const top = data[at]! + (data[at + 3]! - data[at]!) * fx;
  return top + (data[below]! + (data[below + 3]! - data[below]!) * fx - top) * fy;
}

function groundOf(shot: Shot, see: (hex: string) => Linear): (x: number, y: number) => Linear {
  const base = see(BACKGROUNDS[shot.background]);
  const noise = smoothNoise(shot.seed + 5);
  const scale = shot.width / 1000;
  const shadeAt: Record<Shot['background'], (x: number, y: number) => number> = {
    table: (x, y) => 1 + 0.03 * noise(x / 90, y / 90),
    wood: (x, y) => 1 + 0.14 * noise(x / 160, y / 7) + 0.08 * noise(x / 60, y / 2.5),
    cloth: (x, y) => 1 + 0.07 * Math.sin(x / 1.6) * Math.sin(y / 1.6) + 0.06 * noise(x / 120, y / 120),
    slate: (x, y) => 1 + 0.12 * noise(x / 30, y / 30) + 0.1 * noise(x / 5, y / 5),
  };
  return (x, y) => {
    const by = shadeAt[shot.background](x / scale, y / scale);
    return [base[0] * by, base[1] * by, base[2] * by];
  };
}

const STEPS = 8192;
const ENCODED = Float32Array.from({ length: STEPS + 1 }, (_, i) => encoded(i / STEPS));

/** The lens's blur, the sensor's shot and read noise, and sRGB. */
function develop(light: Canvas, shot: Shot): Uint8Array {
  const sigma = (shot.blur / 1000) * shot.fill * shot.width;
  const seen = sigma > 0.2 ? blurredCanvas(light, sigma) : light;
  const out = new Uint8Array(seen.data.length);
  const dice = chance(shot.seed + 99);
  const grain = Float32Array.from({ length: 9973 }, () => dice.normal() * shot.noise);
  let row = 0;
  for (let i = 0, at = 0; i < out.length; i++, at++) {
    // Each run through the grain starts elsewhere, so that it never lines up with itself.
    if (at >= grain.length) {
      row = (row + 3571) % grain.length;
      at = row >> 1;
    }
    const clean = ENCODED[Math.round(Math.min(1, seen.data[i]!) * STEPS)]!;
    out[i] = Math.min(255, Math.max(0, clean + (1.15 - clean / 850) * grain[at]! + 0.5));
  }
  return out;
}

function blurredCanvas({ width, height, data }: Canvas, sigma: number): Canvas {
  const radius = Math.ceil(3 * sigma);
  const bell = Float32Array.from({ length: radius + 1 }, (_, i) => Math.exp(-(i * i) / (2 * sigma * sigma)));
  const total = bell.reduce((sum, weight, i) => sum + (i === 0 ? 1 : 2) * weight, 0);
  const weights = bell.map(weight => weight / total);
  const across = new Float32Array(data.length);
  const row = new Float32Array((width + 2 * radius) * 3);
  for (let y = 0; y < height; y++) {
    for (let x = -radius; x < width + radius; x++) {
      const from = (y * width + Math.min(Math.max(x, 0), width - 1)) * 3;
      for (let c = 0; c < 3; c++) row[(x + radius) * 3 + c] = data[from + c]!;
    }
    for (let i = 0; i < 3 * width; i++) {
      const at = i + 3 * radius;
      let sum = row[at]! * weights[0]!;
      for (let k = 1; k <= radius; k++) sum += (row[at - 3 * k]! + row[at + 3 * k]!) * weights[k]!;
      across[y * width * 3 + i] = sum;
    }
  }
  const down = new Float32Array(data.length);
  const line = 3 * width;
  for (let y = 0; y < height; y++) {
    for (let k = -radius; k <= radius; k++) {
      const from = Math.min(Math.max(y + k, 0), height - 1) * line;
      const weight = weights[Math.abs(k)]!;
      for (let i = 0; i < line; i++) down[y * line + i]! += across[from + i]! * weight;
    }
  }
  return { width, height, data: down };
}
