import { isRisingInMould } from '../../../hazards/index.ts';
import { unaccented } from '../../../text/unaccented.ts';
import { AT_HAND } from './at-hand.ts';
import { IN_GENERAL } from './in-general.ts';
import { OF_BATCHES } from './of-batches.ts';
import { OF_COLOURS } from './of-colours.ts';
import type { Outright } from './words.ts';

/** What is at hand stands before the rest; the first that fits counts. */
export const OUTRIGHT: readonly Outright[] = [...AT_HAND, ...IN_GENERAL, ...OF_COLOURS, ...OF_BATCHES];
/** Longer texts are told by more than one phrase, characters. */
const LONGEST = 120;

const RISING = { technique: 'rising-now', to: { named: 'rising-in-mould' }, atHand: true } as const;

/**
 * The matter and the answer of a short question that says it outright; undefined for every other. English and Spanish. Pure.
 * @example outrightIn('se cortó')?.to // { named: 'split-where' }
 */
export function outrightIn(question: string): Pick<Outright, 'technique' | 'to' | 'atHand'> | undefined {
  if (question.length > LONGEST) return undefined;
  if (isRisingInMould(question)) return RISING;
  const plain = unaccented(question).replace(/(?<=\p{L})['’](?=\p{L})/gu, '');
  return OUTRIGHT.find(({ words, unless }) => words.test(plain) && unless?.test(plain) !== true);
}
