/** How often a finding comes with a cause. Nobody has counted; five words are all the precision there is. */
export type Level = 'nearly always' | 'often' | 'sometimes' | 'seldom' | 'hardly ever';

/**
 * The chance each word stands for, 0 to 1. From memory: makers talk of flaws in words, not counts; spacing chosen so that each
 * word is about four times the next.
 */
export const LEVEL: Readonly<Record<Level, number>> = {
  'nearly always': 0.9,
  often: 0.6,
  sometimes: 0.25,
  seldom: 0.06,
  'hardly ever': 0.01,
};
