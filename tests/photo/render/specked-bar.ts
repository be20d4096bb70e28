import { photographBar } from '../../../src/demo/bar-photo.ts';

let drawn: Uint8Array | undefined;

/** The bar that most tests of a photo show: pale blue with dark specks. Drawn once a process, half a second each. */
export function speckedBar(): Uint8Array {
  drawn ??= photographBar({ colours: ['#c3d3e6', '#1f3f8a'], design: 'specks', seed: 42 });
  return drawn.slice();
}
