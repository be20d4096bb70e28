import { chromaOf, hueOf, type Lab } from '../spectra/cielab.ts';

/** Where the nearest reachable colour falls short of the target: ids for `src/words`. */
export type Miss = {
  readonly why: 'not-vivid-enough' | 'not-light-enough' | 'not-dark-enough' | 'other-hue' | 'too-vivid';
  /** Target minus reachable: L*, chroma, and hue difference as a length (CIELAB). */
  readonly lightness: number;
  readonly chroma: number;
  readonly hue: number;
};

/** Names the greatest part of the difference between a target and the nearest reachable colour. */
export function explainMiss(target: Lab, nearest: Lab): Miss {
  const lightness = target.l - nearest.l;
  const chroma = chromaOf(target) - chromaOf(nearest);
  const turn = ((hueOf(target) - hueOf(nearest)) * Math.PI) / 360;
  const hue = 2 * Math.sqrt(chromaOf(target) * chromaOf(nearest)) * Math.sin(turn);
  const parts = { lightness: Math.abs(lightness), chroma: Math.abs(chroma), hue: Math.abs(hue) };
  const greatest = Math.max(parts.lightness, parts.chroma, parts.hue);
  if (greatest === parts.hue) return { why: 'other-hue', lightness, chroma, hue };
  if (greatest === parts.chroma)
    return { why: chroma > 0 ? 'not-vivid-enough' : 'too-vivid', lightness, chroma, hue };
  return { why: lightness > 0 ? 'not-light-enough' : 'not-dark-enough', lightness, chroma, hue };
}
