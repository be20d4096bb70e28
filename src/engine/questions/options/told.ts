import { unlessRefused } from '../../refusal.ts';

/** What an option says in the words that its own reader takes, or the several things that it may say. */
export type OptionTold = { readonly text: string } | { readonly unclear: readonly string[] };

/** Whether a reader takes a text. */
export const isRead = (read: (text: string) => object, text: string): boolean =>
  unlessRefused(() => read(text)) !== undefined;
