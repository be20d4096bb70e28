import { CLASSES } from '../../../src/engine/questions/learned/classes.ts';
import type { Fit } from '../text/learned/fit.ts';

export const FIT: Fit = { classes: CLASSES.length, trust: 100, most: 14_000, least: 2 };
