import { OF_BARS } from './of-bars.ts';
import { OF_COLOURS } from './of-colours.ts';
import { OF_MAKING } from './of-making.ts';
import type { AskedRow } from './row.ts';

/** The first that fits counts: what says more stands before what says less. */
export const ASKED_ROWS: readonly AskedRow[] = [...OF_COLOURS, ...OF_MAKING, ...OF_BARS];
