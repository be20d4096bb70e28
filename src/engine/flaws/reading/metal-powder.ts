import { type Metal, metalIn, refuseMetal } from '../../colourants/metals.ts';
import { unbroken } from '../../over-lines.ts';
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

/** What gold and silver micas are called by their look: their dust that comes off a bar is loose mica, unless it was put in by that name. */
const DUST_OF_MICA = /^(?:gold|oro|silver|plata|bronze|bronce|copper|cobre)$/;
const COMES_OFF = new RegExp(
  unbroken`
    ^(?: (?:that|which|just|it|always|keeps?|still|all|easily|que|se|me|te|nos|le|les|siempre|todo|
    sigue))*(?: (?:on|en) (?:the |la |el |los |las )?(?:top|cima|parte de arriba|jabon|bar|
    barra))?(?: (?:that|which|just|que|se|me|te|nos|le))* (?:com(?:es?|ing)|came|rub(?:s|bed|bing)?|
    wip(?:es?|ed|ing)|fall(?:s|ing)?|fell|shed(?:s|ding)?|brush(?:es|ed)|smudg(?:es?|ed)|transfer(?:s|red)?|
    gets? (?:on|all over)|got on|ends? up|sale|salio|suelta|solto|desprende|desprendio|cae|cayo|queda|quedo|
    pega|pego|borra|quita)(?: |$)
  `,
  '',
);
const PUT_IN =
  /\b(?:put|added|add|used|use|mixed|mix|stirred|poured|dusted|sprinkled|painted|puse|eche|agregue|anadi|use|usado|puesto|mezcle|espolvoree|pinte)\b/;

/** "Gold dust comes off on your fingers": what is seen of a bar, and no metal that went in. */
function isRubbedOff(tokens: readonly Token[], { from, to }: { readonly from: number; readonly to: number }) {
  const text = (some: readonly Token[]) => some.map(({ text }) => text).join(' ');
  const named = tokens.slice(from, to);
  if (!named.some(token => DUST_OF_MICA.test(token.text)) || !/dust|polvo/.test(text(named))) return false;
  return COMES_OFF.test(` ${text(tokens.slice(to, to + 10))}`) && !PUT_IN.test(text(tokens));
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
    if (standing[from] !== 'yes' || isRubbedOff(tokens, { from, to })) continue;
    const text = words.slice(tokens[from]!.start, tokens[to - 1]!.end);
    const metal = metalIn(text)?.metal;
    if (hurts !== undefined && metal !== undefined) refuse('metal-and-hurt', { text, metal, where: hurts });
    refuseMetal(text);
  }
}
