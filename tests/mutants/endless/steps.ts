import { stepsDown } from './steps-down.ts';

/** Steps that are one larger than `more`: of size 0 they never end, and nothing that was changed is met again on the way. */
export const stepsFrom = (height: number, more: number): number => stepsDown(height, more + 1);

/** Tried after it, with a value that a test looks at. */
export const back = (height: number, step: number): number => height - step;

/** Tried after it, with a value that no test looks at. */
export const echo = (sound: number): number => sound * 2;
