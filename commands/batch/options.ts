import type { Suggestion } from '../../src/conversation/command.ts';
import type { Context } from '../../src/conversation/context.ts';
import { text } from '../../src/conversation/option.ts';
import { cut } from '../../src/engine/text/excerpt.ts';
import { nearestBatches } from '../../src/records/batches/index.ts';
import { phrases } from '../../src/words/declared.ts';

const says = phrases('batch');

/** The batch that is meant. */
export const batch = text(says.options.batch, { most: 100 });
/** On which day. */
export const on = text(says.options.on, { most: 20 }).optional();
/** Bars on the scale. */
export const weights = text(says.options.weights, { most: 500 });

async function suggest(typed: string, context: Context): Promise<readonly Suggestion[]> {
  const found = await nearestBatches(context.book, typed, 25);
  return found.map(({ name, at }) => ({
    name: `${cut(name, 80)}, ${at.toISOString().slice(0, 10)}`,
    value: name,
  }));
}
export const completes = { batch: suggest };
