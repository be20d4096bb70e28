import { Refusal, refuse } from '../../refusal.ts';
import { excerpt } from '../../text/excerpt.ts';
import { fold } from '../../text/fold.ts';
import type { Lab } from '../spectra/cielab.ts';
import { parseBar } from './bar-text.ts';

declare module '../../refusal.ts' {
  interface Reasons {
    'batch-colours-unreadable': { readonly text: string; readonly portions: readonly string[] };
  }
}

/** What portions are called: each by any of its names. */
export type NamedPortion = { readonly names: readonly string[] };

/**
 * Reads what portions became: `violet #6b5aa8; gold lab(70 5 40)`, by the names of portions or of their colours, or by
 * their numbers (`1 #6b5aa8`); a colour alone where there is one portion. Throws a Refusal `batch-colours-unreadable`.
 */
export function parsePortionColours(
  text: string,
  portions: readonly NamedPortion[],
): readonly { readonly portion: number; readonly lab: Lab }[] {
  const pieces = text
    .slice(0, 1000)
    .split(/\s*[;\n]\s*|\s*,\s*(?=\p{L}+[^()]*(?:#|lab))/iu)
    .filter(piece => piece !== '');
  return pieces.map(piece => {
    const read = colourLast(piece);
    const portion = read && portionNamed(read.name, portions);
    if (!read || portion === undefined)
      return refuse('batch-colours-unreadable', {
        text: excerpt(piece),
        portions: portions.map(({ names }) => names[0] ?? ''),
      });
    return { portion, lab: read.lab };
  });
}

/** The colour at the end of a text and what stands before it. */
function colourLast(piece: string): { readonly name: string; readonly lab: Lab } | undefined {
  const marked = /^(.*?)[\s:=]*(#[0-9a-f]{3,8}|lab\s*\(?[^()]*\)?)\s*$/iu.exec(piece);
  const words = piece.trim().split(/\s+/u);
  const cuts = marked
    ? [[marked[1]!, marked[2]!] as const]
    : [1, 2, 3].map(count => [words.slice(0, -count).join(' '), words.slice(-count).join(' ')] as const);
  for (const [name, colour] of cuts) {
    if (colour === '') continue;
    try {
      return { name: name.replace(/[\s:=]+$/u, ''), lab: parseBar(`plain ${colour}`).lab };
    } catch (refusal) {
      if (!(refusal instanceof Refusal) || refusal.id === 'lab-out-of-range') throw refusal;
    }
  }
  return undefined;
}

function portionNamed(name: string, portions: readonly NamedPortion[]): number | undefined {
  if (name === '') return portions.length === 1 ? 0 : undefined;
  const number = /^\d{1,2}$/.test(name) ? Number(name) : undefined;
  if (number !== undefined) return number >= 1 && number <= portions.length ? number - 1 : undefined;
  const wanted = fold(name);
  const exact = portions.findIndex(({ names }) => names.some(one => fold(one) === wanted));
  if (exact >= 0) return exact;
  const holding = portions.flatMap(({ names }, at) =>
    names.some(one => fold(one).includes(wanted)) ? [at] : [],
  );
  return wanted.length >= 3 && holding.length === 1 ? holding[0] : undefined;
}
