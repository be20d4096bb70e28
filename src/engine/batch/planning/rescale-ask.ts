import { plainText, readDecimal } from '../../quantities/number.ts';
import { Refusal, refuse } from '../../refusal.ts';
import { excerpt } from '../../text/excerpt.ts';
import { parseSize } from '../batch-size.ts';
import type { BatchSize } from '../request.ts';

declare module '../../refusal.ts' {
  interface Reasons {
    'factor-unreadable': { readonly text: string };
  }
}

/** How a recipe is to be rescaled: so many times, or to a size. */
export type RescaleAsk =
  | { readonly by: 'factor'; readonly factor: number }
  | { readonly by: 'size'; readonly size: BatchSize };

const FACTOR =
  /^(?:x ?)?([\d.,]+)(?: ?\/ ?(\d+))? ?(x|times|times as much|times as big|veces|%|percent|por ciento)?$/iu;

/**
 * Reads `2`, `x3`, `1/2`, `150%`, or a size such as `1500 g oils` or `mould 25x9x7 cm`. English or Spanish.
 * Throws a Refusal `factor-unreadable`, or one of the size's own.
 */
export function parseRescale(text: string): RescaleAsk {
  const plain = plainText(text);
  const written = FACTOR.exec(plain);
  if (!written) return { by: 'size', size: sizeIn(plain) };
  const over = readDecimal(written[1]!)[0];
  const under = written[2] === undefined ? 1 : Number(written[2]);
  const percent = /^(?:%|percent|por ciento)$/iu.test(written[3] ?? '');
  const factor = (over ?? Number.NaN) / under / (percent ? 100 : 1);
  return factor > 0 && Number.isFinite(factor)
    ? { by: 'factor', factor }
    : refuse('factor-unreadable', { text: excerpt(text) });
}

function sizeIn(text: string): BatchSize {
  try {
    return parseSize(text);
  } catch (refusal) {
    if (refusal instanceof Refusal && refusal.id === 'size-unreadable')
      refuse('factor-unreadable', { text: excerpt(text) });
    throw refusal;
  }
}
