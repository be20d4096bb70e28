import { CLASSES } from '../../../src/engine/questions/learned/classes.ts';
import type { Fit } from '../text/learned/fit.ts';

export const FIT: Fit = { classes: CLASSES.length, trust: 80, most: 14_000, least: 2 };

/** Two classes and few features beyond those of the jobs. */
export const FIELD_FIT: Fit = { classes: 2, trust: 8, most: 16_000, least: 2 };
