import { colours } from './colours.ts';
import { dose } from './dose.ts';
import { nearLye } from './near-lye.ts';
import { plan } from './plan.ts';
import type { WarnedCase } from './row.ts';

export const WARNED: readonly WarnedCase[] = [...dose, ...plan, ...nearLye, ...colours];
