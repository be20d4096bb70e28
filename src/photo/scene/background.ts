import { blurred } from '../pixels/gaussian.ts';
import { kMeans } from '../pixels/kmeans.ts';
import type { LabPlanes, Plane } from '../pixels/plane.ts';

/** One colour of what lies round the picture's edge, as planes over the picture since light falls off, and its spread. */
type Surface = {
  /** L*, a*, b* as value at the middle, slope to the right and slope down (per picture width and height). */
  readonly fit: readonly (readonly [number, number, number])[];
  readonly spread: number;
};

/** The share of the edge a colour must have to count as background: a bar's corner that touches it does not. */
const LEAST_SHARE = 0.1;
/** Darker than the background by up to this much L* with no change of hue is a shadow, not a thing. */
const SHADOW = 12;
const LIGHTNESS_WEIGHT = 0.7;

type Sample = { readonly u: number; readonly v: number; readonly lab: readonly [number, number, number] };

/**
 * How unlike the background each pixel is, in CIELAB units after allowance for its texture. The background is what
 * lies along the picture's edge, as up to three colours.
 */
export function unlikeBackground(lab: LabPlanes): Plane {
  const soft = { l: blurred(lab.l, 1.2), a: blurred(lab.a, 1.2), b: blurred(lab.b, 1.2) };
  const surfaces = surfacesOf(edgeSamples(soft));
  const { width, height } = lab.l;
  const data = new Float32Array(width * height);
  for (let y = 0, i = 0; y < height; y++) {
    const v = y / height - 0.5;
    for (let x = 0; x < width; x++, i++) {
      const u = x / width - 0.5;
      let least = Number.POSITIVE_INFINITY;
      for (const { fit, spread } of surfaces) {
        const dl = shaded(soft.l.data[i]! - at(fit[0]!, u, v)) * LIGHTNESS_WEIGHT;
        const da = soft.a.data[i]! - at(fit[1]!, u, v);
        const db = soft.b.data[i]! - at(fit[2]!, u, v);
        least = Math.min(least, Math.sqrt(dl * dl + da * da + db * db) - spread);
      }
      data[i] = Math.max(0, least);
    }
  }
  return { width, height, data };
}

const at = ([middle, right, down]: readonly [number, number, number], u: number, v: number) =>
  middle + right * u + down * v;

const shaded = (difference: number) => (difference < 0 ? Math.min(0, difference + SHADOW) : difference);

function edgeSamples({ l, a, b }: LabPlanes): Sample[] {
  const { width, height } = l;
  const band = Math.max(3, Math.round(Math.min(width, height) * 0.035));
  const samples: Sample[] = [];
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const inBand = x < band || y < band || x >= width - band || y >= height - band;
      if (!inBand || (x + y) % 2 !== 0) continue;
      const i = y * width + x;
      samples.push({ u: x / width - 0.5, v: y / height - 0.5, lab: [l.data[i]!, a.data[i]!, b.data[i]!] });
    }
  }
  return samples;
}

function surfacesOf(samples: readonly Sample[]): Surface[] {
  const clusters = kMeans(Float32Array.from(samples.flatMap(({ lab }) => lab)), 3, 3);
  const distance = (lab: readonly number[], centre: readonly number[]) =>
    Math.hypot(...centre.map((value, d) => lab[d]! - value));
  const apart = clusters.filter(
    ({ centre, share }, i) =>
      share >= LEAST_SHARE && clusters.slice(0, i).every(other => distance(other.centre, centre) > 14),
  );
  return apart.map(({ centre }) => {
    const members = samples.filter(({ lab }) =>
      apart.every(other => distance(lab, centre) <= distance(lab, other.centre)),
    );
    const fit = [0, 1, 2].map(d => planeThrough(members, d));
    const left = members.map(({ u, v, lab }) => {
      const [dl, da, db] = fit.map((one, d) => lab[d]! - at(one, u, v)) as [number, number, number];
      return Math.hypot(dl * LIGHTNESS_WEIGHT, da, db);
    });
    const spread = Math.sqrt(left.reduce((sum, value) => sum + value * value, 0) / left.length);
    return { fit, spread: Math.min(14, 1.3 * spread) };
  });
}

/** Least squares of value on place, with the slopes held small where the members do not span the picture. */
function planeThrough(members: readonly Sample[], d: number): [number, number, number] {
  const mean = (value: (sample: Sample) => number) =>
    members.reduce((sum, sample) => sum + value(sample), 0) / members.length;
  const [u, v, value] = [mean(s => s.u), mean(s => s.v), mean(s => s.lab[d]!)];
  const ridge = 0.01;
  const uu = mean(s => (s.u - u) ** 2) + ridge;
  const vv = mean(s => (s.v - v) ** 2) + ridge;
  const uv = mean(s => (s.u - u) * (s.v - v));
  const ul = mean(s => (s.u - u) * (s.lab[d]! - value));
  const vl = mean(s => (s.v - v) * (s.lab[d]! - value));
  const determinant = uu * vv - uv * uv;
  const right = (ul * vv - vl * uv) / determinant;
  const down = (vl * uu - ul * uv) / determinant;
  return [value - right * u - down * v, right, down];
}
