import { parseOils } from '../../../batch/oils/lists/oil-list.ts';
import { unlessRefused } from '../../../refusal.ts';
import { inOrder } from '../amounts/amounts-first.ts';
import { MASS, plainWords } from '../amounts/words.ts';
import { readLyeQuestion } from '../question.ts';

const EVERY_MASS = new RegExp(MASS, 'gu');

/**
 * Whether one figure of lye and no second stands beside oils that are all weighed: "650 g olive and 350 g coconut, the book says 160 g lye". It is
 * held against those oils, and nothing of two figures is said. Pure.
 */
export function isOneFigureForOils(question: string): boolean {
  const plain = plainWords(question, { clauses: true });
  const asked = unlessRefused(() => readLyeQuestion(inOrder(plain).ordered));
  const { oils } = asked?.given ?? {};
  if (!asked?.weighed || oils === undefined) return false;
  const list = unlessRefused(() => parseOils(oils));
  return list !== undefined && (plain.match(EVERY_MASS) ?? []).length === list.shares.length + 1;
}
