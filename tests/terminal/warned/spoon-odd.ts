import type { WarnedCase } from './row.ts';

/** What no line meets, since no spoon can be weighed so today: `tests/records/shelf/lots.test.ts` looks at it. */
export const SPOON_ODD: WarnedCase[1][number] = [
  'spoon-odd',
  'cannot be right, so it is counted as its kind usually weighs',
  'no puede ser, así que cuenta lo que suele pesar su tipo',
];
