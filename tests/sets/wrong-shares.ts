import { parsePortions } from '../../src/engine/batch/portions/portion-list.ts';
import type { ColourAsk } from '../../src/engine/batch/request.ts';
import { near, sameColour } from './same-thing.ts';

/** A part of a batch by its colours, as its writer would name it. */
export const nameOf = ({ colours }: { colours: readonly ColourAsk[] }): string =>
  colours
    .map(({ text, strength }) =>
      strength.by === 'name' && strength.name !== 'full' ? `${strength.name} ${text}` : text,
    )
    .join(' ') || 'plain';

/** What is wrong with how a batch is shared out, beside shares by their colours that sum to 1. */
export function wrongShares(text: string, wanted: Readonly<Record<string, number>>): string | undefined {
  const portions = parsePortions(text);
  const parts = portions.reduce((sum, { share }) => sum + (share.by === 'parts' ? share.parts : 0), 0);
  const told = portions.reduce(
    (sum, { share }) => sum + (share.by === 'percent' ? share.percent / 100 : 0),
    0,
  );
  const weights = portions.map(({ share }) =>
    share.by === 'mass' ? share.grams : share.by === 'volume' ? share.millilitres : 0,
  );
  const weight = weights.reduce((sum, one) => sum + one, 0);
  const got = portions.map((portion, at) => {
    const { share } = portion;
    const value =
      share.by === 'percent'
        ? share.percent / 100
        : share.by === 'parts'
          ? ((1 - told) * share.parts) / parts
          : share.by === 'rest'
            ? 1 - told
            : weights[at]! / weight;
    return { name: nameOf(portion), value };
  });
  const entries = Object.entries(wanted);
  const missing = entries.filter(
    ([name, value]) => !got.some(one => sameColour(one.name, name) && near(one.value, value)),
  );
  return missing.length === 0 && got.length === entries.length ? undefined : `got ${JSON.stringify(got)}`;
}
