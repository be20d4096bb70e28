import { Refusal } from '../../refusal.ts';

/** What an option says in the words that its own reader takes, or the several things that it may say. */
export type Told = { readonly text: string } | { readonly unclear: readonly string[] };

/** Whether a reader takes a text. */
export function isRead(read: (text: string) => unknown, text: string): boolean {
  try {
    read(text);
    return true;
  } catch (refusal) {
    if (refusal instanceof Refusal) return false;
    throw refusal;
  }
}
