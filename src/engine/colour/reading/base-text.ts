import { knownOil } from '../../batch/oils/find-oil.ts';
import { parseOils } from '../../batch/oils/lists/oil-list.ts';
import { Refusal, refuse } from '../../refusal.ts';
import { excerpt } from '../../text/excerpt.ts';
import { fold } from '../../text/fold.ts';
import { type BaseShade, type ShadeShare, shadeOfOil } from '../mixing/base-soap.ts';

declare module '../../refusal.ts' {
  interface Reasons {
    'base-unreadable': { text: string };
  }
}

/** The uncoloured soap that is meant. */
export type WrittenBase = {
  /** The cast it was said to have; undefined when it was told by its oils. */
  readonly shade: BaseShade | undefined;
  readonly shades: readonly ShadeShare[];
};

/** What is taken when nothing is said. */
export const USUAL_BASE: WrittenBase = { shade: 'cream', shades: [{ shade: 'cream', share: 1 }] };

const WORDS: Readonly<Record<BaseShade, string>> = {
  white: 'white snow blanco blanca',
  cream: 'cream ivory crema marfil off-white',
  yellow: 'yellow yellowish amarillo amarilla amarillento amarillenta',
  green: 'green greenish olive verde verdoso verdosa',
  deep: 'deep orange gold deep-yellow naranja intensa intenso',
};

const BY_WORD: ReadonlyMap<string, BaseShade> = new Map(
  (Object.entries(WORDS) as [BaseShade, string][]).flatMap(([shade, words]) =>
    words.split(' ').map(word => [fold(word), shade] as const),
  ),
);

/**
 * Reads a base: `white`, `cream`, `yellow`, `green` or `deep`, with or without "base", in English or Spanish; one oil; or oils
 * with percents or weights (`olive 60%, coconut 40%`). Throws a Refusal `base-unreadable`, or one of the oil list's own.
 */
export function parseBase(text: string): WrittenBase {
  const said = text.slice(0, 400);
  const word = said.toLowerCase().replaceAll(/\b(?:base|soap|jab[oó]n|una?|the|la|el)\b/gu, '');
  const shade = BY_WORD.get(fold(word));
  if (shade !== undefined) return { shade, shades: [{ shade, share: 1 }] };
  const oil = knownOil(said);
  if (oil) return { shade: undefined, shades: [{ shade: shadeOfOil(oil), share: 1 }] };
  if (!/\d/u.test(said)) refuse('base-unreadable', { text: excerpt(text) });
  return { shade: undefined, shades: blended(said) };
}

function blended(text: string): readonly ShadeShare[] {
  try {
    return parseOils(text).shares.map(({ oil, share }) => ({ shade: shadeOfOil(oil), share }));
  } catch (refusal) {
    const empty = refusal instanceof Refusal && refusal.id === 'oils-empty';
    return empty ? refuse('base-unreadable', { text: excerpt(text) }) : raise(refusal);
  }
}

const raise = (error: unknown): never => {
  throw error;
};
