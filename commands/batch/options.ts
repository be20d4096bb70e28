import type { Suggestion } from '../../src/conversation/command.ts';
import type { Context } from '../../src/conversation/context.ts';
import { text } from '../../src/conversation/option.ts';
import { cut } from '../../src/engine/text/cut.ts';
import { nearestBatches } from '../../src/records/batches/index.ts';

/** The batch that is meant. */
export const batch = text(
  { en: 'The batch by its name; the newest unless you say', es: 'El lote por su nombre; si no, el último' },
  { most: 100 },
);
/** On which day. */
export const on = text(
  {
    en: 'On which day: “2026-11-03”, “yesterday”. Today unless you say',
    es: 'Qué día: «2026-11-03», «ayer». Hoy si no dices nada',
  },
  { most: 20 },
).optional();
/** Bars on the scale. */
export const weights = text(
  {
    en: 'Bars on the scale, always the same ones: “112 g, 108 g”',
    es: 'Barras en la báscula, siempre las mismas: «112 g, 108 g»',
  },
  { most: 500 },
);

async function suggest(typed: string, context: Context): Promise<readonly Suggestion[]> {
  const found = await nearestBatches(context.book, typed, 25);
  return found.map(({ name, at }) => ({
    name: `${cut(name, 80)}, ${at.toISOString().slice(0, 10)}`,
    value: name,
  }));
}
export const completes = { batch: suggest };
