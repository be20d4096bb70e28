import { type Metal, metalIn, refuseMetal } from '../../colourants/metals.ts';
import { refuse } from '../../refusal.ts';
import { type Token, tokenise } from '../../text/tokens.ts';
import { mentions } from './concepts.ts';
import { polarity } from './polarity.ts';

declare module '../../refusal.ts' {
  interface Reasons {
    /** A metal powder went in, and somebody hurts: the first aid is said with the refusal. */
    'metal-and-hurt': { readonly text: string; readonly metal: Metal; readonly where: 'skin' | 'eye' };
  }
}

const METAL =
  /^(aluminium|aluminum|aluminio|copper|cobre|bronze|bronce|brass|laton|zinc|gold|oro|silver|plata)$/;
const FORM = /^(powders?|flakes?|dust|leaf|filings|polvo|escamas?|copos?|hojas?|limaduras?)$/;

/** "Copper powder", "polvo de cobre": a metal with its form at its side. A pan or a mould has none. */
function spans(tokens: readonly Token[]): { readonly from: number; readonly to: number }[] {
  return tokens.flatMap(({ text }, at) => {
    if (METAL.test(text) && FORM.test(tokens[at + 1]?.text ?? '')) return [{ from: at, to: at + 2 }];
    const spanish =
      FORM.test(text) && tokens[at + 1]?.text === 'de' && METAL.test(tokens[at + 2]?.text ?? '');
    return spanish ? [{ from: at, to: at + 3 }] : [];
  });
}

/**
 * Throws the Refusal of the colourants (`metal-never-in-lye`) where the words say that a metal powder, flake or leaf
 * went into soap; `metal-and-hurt` where somebody hurts besides. A metal pan, mould or rack is no such thing: it is a
 * finding.
 */
export function refuseMetalPowder(words: string, hurts: 'skin' | 'eye' | undefined): void {
  const tokens = tokenise(words);
  const found = spans(tokens);
  if (found.length === 0) return;
  const { standing } = polarity(tokens, mentions(tokens));
  for (const { from, to } of found) {
    if (standing[from] !== 'yes') continue;
    const text = words.slice(tokens[from]!.start, tokens[to - 1]!.end);
    const metal = metalIn(text)?.metal;
    if (hurts !== undefined && metal !== undefined) refuse('metal-and-hurt', { text, metal, where: hurts });
    refuseMetal(text);
  }
}
