import { labOfHex } from '../colour/spectra/cielab.ts';
import { readDecimal } from '../quantities/number.ts';
import { refuse } from '../refusal.ts';
import { readColour } from '../text/colours/colour-name.ts';
import { excerpt } from '../text/excerpt.ts';
import type { InfusedAsk } from './infused-oil.ts';

declare module '../refusal.ts' {
  interface Reasons {
    'infusion-bar-unreadable': { readonly text: string };
  }
}

/** A longer text is no bar; cut, so that work stays bounded. */
const LONGEST = 120;

/**
 * Reads a test bar of infused oil, `30% = #c9a44b`, `12,5 %: mustard`: the share of the oils, and what colour it became.
 * Throws a Refusal: `infusion-bar-unreadable`, or those of colours.
 */
export function parseInfusedBar(text: string): InfusedAsk['bar'] {
  const [, figures = '', colour = ''] =
    /^\s*([\d.,]+)\s*%\s*(?:=|:|,)?\s*(.+)$/u.exec(text.slice(0, LONGEST)) ?? [];
  const percent = readDecimal(figures)[0];
  if (percent === undefined || !(percent > 0 && percent <= 100))
    return refuse('infusion-bar-unreadable', { text: excerpt(text) });
  return { share: percent / 100, lab: labOfHex(readColour(colour).hex) };
}
