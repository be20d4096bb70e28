import type { Laid } from './before.ts';
import type { Lean } from './lean-kinds.ts';

/** The colourant that a command was about. */
export const thingOf = ({ given }: Laid): string | undefined =>
  given.colourant ??
  given.item ??
  (given.mix?.includes('+') ? undefined : given.mix?.replace(/^[\d.,/ ]+\p{L}+ /u, ''));

/** A command run as it stands. */
export const run = ({ job, command, given, wish, asked }: Laid): Lean => ({
  kind: 'runs',
  readings: [{ job, command, given, ...(wish !== undefined && { wish }), ...(asked && { asked }) }],
});
