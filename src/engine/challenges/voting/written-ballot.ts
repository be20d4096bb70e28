import { refuse } from '../../refusal.ts';
import { cut } from '../../text/excerpt.ts';
import type { Chosen } from './voting.ts';

declare module '../../refusal.ts' {
  interface Reasons {
    'vote-unreadable': { readonly text: string };
    'vote-number-unknown': { readonly number: number };
  }
}

/**
 * Reads `2,1,3` or `2 > 1=4 > 3`: the numbers of bars, the most liked first, `=` between those liked alike.
 * `entries` gives the entry of each number. Throws a Refusal for anything else, and for a number without a bar.
 */
export function readRanking(text: string, entries: ReadonlyMap<number, string>): Chosen {
  const plain = text.replaceAll(/\s+/g, ' ').trim();
  if (!/^#?\d+(?: ?[,;>= ] ?#?\d+)*$/.test(plain)) refuse('vote-unreadable', { text: cut(plain, 60) });
  return plain
    .replaceAll('#', '')
    .replaceAll(/ ?= ?/g, '=')
    .split(/[,;> ]+/)
    .map(tied => tied.split('=').map(number => entries.get(Number(number)) ?? unknown(Number(number))));
}

const unknown = (number: number): never => refuse('vote-number-unknown', { number });
