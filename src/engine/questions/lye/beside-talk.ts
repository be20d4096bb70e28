import { Refusal } from '../../refusal.ts';
import { inOrder } from './amounts/amounts-first.ts';
import { withoutIdleSentences } from './idle-sentences.ts';
import type { LyeQuestion } from './question.ts';
import { readLyeInChat } from './told-in-chat.ts';

/** What sentences beside a recipe may stand in the way of, where they speak of nothing in it. */
const BY_WORDS: ReadonlySet<string> = new Set([
  'recipe-words',
  'oil-in-pot',
  'oil-unknown',
  'oil-without-amount',
  'amounts-whose',
]);

/**
 * {@link readLyeInChat}; where words stand in a recipe's way, that of the message without its idle sentences, which are then told again in
 * `beside`. Throws what `readLyeInChat` throws, of the shorter message where that is not read either: what then stands in the way is of
 * the recipe. Pure.
 */
export function readLyeBesideTalk(
  question: string,
  order: { readonly ordered: string; readonly unordered?: Refusal },
): LyeQuestion {
  try {
    return readLyeInChat(question, order);
  } catch (refusal) {
    if (!(refusal instanceof Refusal) || !BY_WORDS.has(refusal.id)) throw refusal;
    const less = withoutIdleSentences(question);
    if (less === undefined) throw refusal;
    return { ...readLyeInChat(less.rest, inOrder(less.rest)), beside: less.idle };
  }
}
