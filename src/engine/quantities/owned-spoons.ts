import { refuse } from '../refusal.ts';
import { excerpt } from '../text/excerpt.ts';
import { unaccented } from '../text/unaccented.ts';
import { SPOONS, type Spoon } from './spoons.ts';

declare module '../refusal.ts' {
  interface Reasons {
    'spoons-owned-unreadable': { readonly text: string };
  }
}

const TABLESPOON = /^(?:1 ?)?(?:tbsps?|tbs|tablespoons?|cdas?|cucharadas?)$/;
const UNIT = /(?:tsps?|teaspoons?|cdtas?|cditas?|cucharaditas?)$/;
const HALVES: Readonly<Record<string, string>> = { '½': '1/2', '¼': '1/4', '⅛': '1/8' };

/**
 * The spoons somebody owns, as they list them: `1 tsp, 1/2, 1/4 and 1/8`. `all` is every one there is. Throws a Refusal
 * `spoons-owned-unreadable` for a list with anything else in it, or nothing.
 */
export function parseOwnedSpoons(text: string): readonly Spoon[] {
  const said = unaccented(text.replaceAll(/[½¼⅛]/g, sign => HALVES[sign]!));
  if (/^ *(?:all|every one|todas) *$/.test(said)) return SPOONS;
  const named = said
    .split(/[,;+]| and | y /)
    .map(one => one.trim().replaceAll(/\s+/g, ' '))
    .filter(Boolean)
    .map(spoonNamed);
  if (named.length === 0 || named.includes(undefined))
    return refuse('spoons-owned-unreadable', { text: excerpt(text) });
  return SPOONS.filter(spoon => named.includes(spoon));
}

function spoonNamed(text: string): Spoon | undefined {
  if (TABLESPOON.test(text)) return '1 Tbsp';
  const size = text.replace(UNIT, '').trim();
  return SPOONS.find(spoon => spoon === `${size === '' ? '1' : size} tsp`);
}
