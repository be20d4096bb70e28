import { colourDifference, hexOfLab, type Lab } from '../../engine/colour/spectra/cielab.ts';
import { blurred } from '../pixels/gaussian.ts';
import { type Cluster, kMeans } from '../pixels/kmeans.ts';
import type { LabPlanes } from '../pixels/plane.ts';
import type { MainColour } from '../reading.ts';
import type { Face } from '../scene/face.ts';

/** Colours nearer to one another than this (CIEDE2000) are one. */
const SAME = 7;
/** A colour with less of the face is not a main one. */
const LEAST_SHARE = 0.04;
const MOST_POINTS = 6000;
/** Blur that takes out grain and specks before colours are read, in pixels. */
const SOFTEN = 2.4;
const CLUSTERS = 7;

const labOfCluster = ({ centre: [l = 0, a = 0, b = 0] }: Cluster): Lab => ({ l, a, b });

/**
 * The main colours of the pixels that `inside` marks, by area: k-means in CIELAB, clusters nearer than {@link SAME}
 * joined. `plusMinus` is what the light and the spread leave open.
 */
export function mainColours({ l, a, b }: LabPlanes, inside: Uint8Array, lightUnsure: number): MainColour[] {
  const clusters = joined(kMeans(pointsOf([l.data, a.data, b.data], inside), 3, CLUSTERS));
  const kept = clusters.filter(({ share }) => share >= LEAST_SHARE);
  const total = kept.reduce((sum, { share }) => sum + share, 0);
  return kept.map(cluster => {
    const lab = labOfCluster(cluster);
    return { lab, hex: hexOfLab(lab), share: cluster.share / total, plusMinus: lightUnsure };
  });
}

function pointsOf(channels: readonly Float32Array[], inside: Uint8Array): Float32Array {
  const all = inside.reduce((sum, value) => sum + value, 0);
  // A stride that shares no small factor with a row's length, so that the points spread over the face.
  const stride = Math.max(1, Math.floor(all / MOST_POINTS)) | 1;
  const points: number[] = [];
  for (let i = 0, seen = 0; i < inside.length; i++) {
    if (!inside[i] || seen++ % stride !== 0) continue;
    for (const channel of channels) points.push(channel[i]!);
  }
  return Float32Array.from(points);
}

function joined(clusters: readonly Cluster[]): Cluster[] {
  let left = [...clusters];
  for (;;) {
    let pair: [number, number] | undefined;
    let least = SAME;
    for (let i = 0; i < left.length; i++) {
      for (let j = i + 1; j < left.length; j++) {
        const apart = colourDifference(labOfCluster(left[i]!), labOfCluster(left[j]!));
        if (apart < least) {
          least = apart;
          pair = [i, j];
        }
      }
    }
    if (!pair) return left.toSorted((one, other) => other.share - one.share);
    const [one, other] = [left[pair[0]]!, left[pair[1]]!];
    const share = one.share + other.share;
    const centre = one.centre.map((value, d) => (value * one.share + other.centre[d]! * other.share) / share);
    left = [...left.filter(cluster => cluster !== one && cluster !== other), { centre, share }];
  }
}

/** The main colours of a bar's face. */
export const faceColours = ({ lab, inside }: Face, lightUnsure: number): MainColour[] =>
  mainColours(softened(lab), inside, lightUnsure);

/** The planes without grain and specks. */
export const softened = ({ l, a, b }: LabPlanes): LabPlanes => ({
  l: blurred(l, SOFTEN),
  a: blurred(a, SOFTEN),
  b: blurred(b, SOFTEN),
});
