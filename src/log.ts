import { pino } from 'pino';
import type { Environment } from './environment.ts';

/** Logs go to standard error, so that answers on standard output stay clean. */
export const logger = ({ TINTMOOT_LOG }: Pick<Environment, 'TINTMOOT_LOG'>) =>
  pino({ level: TINTMOOT_LOG }, pino.destination(2));
export type Log = ReturnType<typeof logger>;
