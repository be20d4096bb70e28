import { type PhotoFindingId, PIT_OR_SPECK } from '../findings/ids.ts';
import type { PhotoReading } from '../reading.ts';

/** Wilson's 95 % interval for a share (E. B. Wilson, JASA 22 (1927) 209-212); `of` above 0. */
export function intervalOf(hits: number, of: number): { readonly least: number; readonly most: number } {
  const z2 = 1.96 ** 2;
  const p = hits / of;
  const middle = (p + z2 / (2 * of)) / (1 + z2 / of);
  const half = (1.96 * Math.sqrt((p * (1 - p)) / of + z2 / (4 * of * of))) / (1 + z2 / of);
  return { least: Math.max(0, middle - half), most: middle + half };
}

/** The share in words, with {@link intervalOf} it. */
export function shareOf(hits: number, of: number): string {
  if (of === 0) return 'none to count';
  const { least, most } = intervalOf(hits, of);
  const percent = (value: number) => `${(100 * value).toFixed(0)} %`;
  return `${hits} of ${of}, ${percent(hits / of)} (${percent(least)} to ${percent(most)})`;
}

/** Whether a reading gives one of these answers on a finding; a hole or speck told as one counts for both. */
export function answers(
  { findings }: Pick<PhotoReading, 'findings'>,
  id: string,
  kinds: readonly ('seen' | 'possibly')[],
): boolean {
  const also: readonly PhotoFindingId[] = id === 'pinholes' || id === 'coloured-specks' ? [PIT_OR_SPECK] : [];
  return findings.some(one => (one.id === id || also.includes(one.id)) && kinds.includes(one.answer));
}
