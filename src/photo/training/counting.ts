import { type PhotoFindingId, PIT_OR_SPECK } from '../findings/ids.ts';
import type { PhotoReading } from '../reading.ts';

/** The share, and Wilson's 95 % interval for it (E. B. Wilson, JASA 22 (1927) 209-212). */
export function shareOf(hits: number, of: number): string {
  if (of === 0) return 'none to count';
  const z2 = 1.96 ** 2;
  const p = hits / of;
  const middle = (p + z2 / (2 * of)) / (1 + z2 / of);
  const half = (1.96 * Math.sqrt((p * (1 - p)) / of + z2 / (4 * of * of))) / (1 + z2 / of);
  const percent = (value: number) => `${(100 * value).toFixed(0)} %`;
  return `${hits} of ${of}, ${percent(p)} (${percent(Math.max(0, middle - half))} to ${percent(middle + half)})`;
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
