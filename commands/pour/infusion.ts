import type { Context } from '../../src/conversation/context.ts';
import type { Caution, Reply } from '../../src/conversation/reply.ts';
import { parseBase, USUAL_BASE } from '../../src/engine/colour/reading/base-text.ts';
import { labOfHex } from '../../src/engine/colour/spectra/cielab.ts';
import { parseInfusedBar } from '../../src/engine/pouring/infused-bar.ts';
import { INFUSING, infusedShare } from '../../src/engine/pouring/infused-oil.ts';
import { parseStock } from '../../src/engine/quantities/told/stock.ts';
import { refuse } from '../../src/engine/refusal.ts';
import { readColour } from '../../src/engine/text/colours/colour-name.ts';
import { tenth } from '../../src/presenting/colour/view.ts';

declare module '../../src/engine/refusal.ts' {
  interface Reasons {
    'infusion-without-target': Record<never, never>;
  }
}

export type InfusionAsked = {
  readonly bar?: string | undefined;
  readonly target?: string | undefined;
  readonly oils?: string | undefined;
  readonly base?: string | undefined;
  readonly gel?: boolean | undefined;
};

/** How much of the oils to infuse for a colour, from a test bar; without one, how to make it. */
export function infusionReply(asked: InfusionAsked, { say }: Context): Reply {
  const words = say.pouring;
  const cautions: readonly Caution[] = [{ id: 'hot-oil', text: words.infusionCaution, firm: true }];
  if (asked.bar === undefined)
    return {
      kind: 'reply',
      headline: words.infusionFirst,
      data: { infusing: INFUSING },
      blocks: [{ kind: 'text', text: [words.infusionFirstWhy, words.infusionHow].join('\n') }],
      cautions,
    };
  const bar = parseInfusedBar(asked.bar);
  if (asked.target === undefined) return refuse('infusion-without-target', {});
  const { shades } = asked.base === undefined ? USUAL_BASE : parseBase(asked.base);
  const target = labOfHex(readColour(asked.target).hex);
  const found = infusedShare({ bar, target, shades, gelled: asked.gel ?? false });
  const oils = oilGrams(asked.oils);
  const oil = oils === undefined ? undefined : oils * found.share;
  return {
    kind: 'reply',
    headline: words.infusion({
      percent: Math.round(found.share * 100),
      hex: found.hex,
      deltaE: tenth(found.deltaE),
    }),
    data: { ...found, infusedGrams: oil },
    blocks: [
      {
        kind: 'text',
        text: [
          ...(oil !== undefined
            ? [
                words.infusionGrams({
                  oil: Math.round(oil),
                  plantLow: Math.round(oil * INFUSING.plantToOil.low),
                  plantHigh: Math.round(oil * INFUSING.plantToOil.high),
                }),
              ]
            : []),
          ...(found.tooWeak ? [words.infusionTooWeak] : []),
          ...(found.otherColour ? [words.infusionOtherColour] : []),
          words.infusionHow,
        ].join('\n'),
      },
      { kind: 'text', folds: true, fold: 'why', text: say.match.scale },
    ],
    cautions,
  };
}

/** Grams of all the oils of the recipe; a bare number is grams. Throws the Refusals of amounts. */
function oilGrams(text: string | undefined): number | undefined {
  if (text === undefined) return undefined;
  const amount = parseStock(text);
  return amount.measure === 'mass' ? amount.grams : refuse('size-oils-by-volume', {});
}
