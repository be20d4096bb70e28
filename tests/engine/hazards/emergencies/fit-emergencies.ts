import { CLASSES } from '../../../../src/engine/hazards/emergencies/learned/classes.ts';
import type { Fit } from '../../text/learned/fit.ts';

/** A run of letters in two texts is an accident sooner than a word or an idea. Each feature that is kept takes 16 bytes. */
export const FIT: Fit = { classes: CLASSES.length, trust: 20, most: 12_000, least: [2, 3, 2] };
