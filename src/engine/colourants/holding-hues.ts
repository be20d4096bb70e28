import type { StrengthName } from '../quantities/strength.ts';
import { unaccented } from '../text/unaccented.ts';
import { colourantById } from './catalogue.ts';
import type { Colourant } from './colourant.ts';

/*
 * Of each hue the one colourant that makers reach for since neither lye nor light moves it; common practice (no source). A true red is the one
 * lake that does not bleed; brick is the iron oxide’s.
 */
const HOLDERS: readonly (readonly [id: string, hues: RegExp])[] = [
  ['chromium-oxide-green', /^(?:greens?|verdes?|moss|musgo|olive|oliva|sage|salvia|forest)$/u],
  ['chromium-hydroxide-green', /^(?:teal|turquoise|turquesa|aqua|mint|menta|emerald|esmeralda)$/u],
  ['ultramarine-blue', /^(?:blues?|azul(?:es|ito)?|bluer|navy|denim|celeste)$/u],
  ['ultramarine-violet', /^(?:purples?|violets?|violetas?|morad[oa]s?|lilac|lilas?|lavender|lavanda)$/u],
  ['ultramarine-pink', /^(?:pinks?|rosas?|rosad[oa]s?|rosit[oa]|fuchsia|fucsia)$/u],
  ['red-30-lake', /^(?:reds?|roj[oa]s?|colorad[oa]s?)$/u],
  ['red-iron-oxide', /^(?:brick|teja|ladrillo|terracotta|terracota|rust|oxido)$/u],
  ['orange-iron-oxide', /^(?:oranges?|naranjas?|anaranjad[oa]s?)$/u],
  ['yellow-iron-oxide', /^(?:yellows?|amarill[oa]s?|mustard|mostaza|ochre|ocre)$/u],
  ['brown-iron-oxide', /^(?:browns?|marron(?:es)?|cafes?)$/u],
  ['activated-charcoal', /^(?:blacks?|negr[oa]s?|gr[ea]ys?|gris(?:es)?)$/u],
  ['titanium-dioxide', /^(?:whites?|blanc[oa]s?)$/u],
];

/** The colourant of a hue that neither lye nor light moves, by a word for it in English or Spanish; undefined where there is none. Pure. */
export function holderOf(hue: string): Colourant | undefined {
  const word = unaccented(hue);
  const id = HOLDERS.find(([, hues]) => hues.test(word))?.[0];
  return id === undefined ? undefined : colourantById(id);
}

/** Hues that are a paler shade of what their colourant gives at full colour (common practice). */
const PALER: readonly (readonly [strength: StrengthName, hues: RegExp])[] = [
  ['tint', /^(?:gr[ea]y|gris(?:es)?)$/u],
  ['pastel', /^(?:sage|salvia|lavender|lavanda|lilac|lilas?|mint|menta|celeste)$/u],
];
/** Hues that their colourant comes to only with another beside it: black in navy, a little brown in moss. */
const MIXED = /^(?:navy|denim|olive|oliva|moss|musgo|forest)$/u;

/** The strength at which a hue’s own colourant gives it; undefined where that is full colour, or `mixed` where it alone never does. Pure. */
export function strengthOfHue(hue: string): StrengthName | 'mixed' | undefined {
  const word = unaccented(hue);
  if (MIXED.test(word)) return 'mixed';
  return PALER.find(([, hues]) => hues.test(word))?.[0];
}

/** Which kinds wander into what lies beside them, or into lather and cloth. */
const WANDERS: ReadonlySet<string> = new Set(['lake-bleeds', 'dye-migrates-and-stains']);

/** Whether a colourant bleeds: what is a solid grain stays where it is, what dissolves in part wanders. Pure. */
export const bleeds = ({ hints, alkali }: Pick<Colourant, 'hints' | 'alkali'>): boolean =>
  alkali.behaviour === 'bleeds' || hints.some(hint => WANDERS.has(hint));
