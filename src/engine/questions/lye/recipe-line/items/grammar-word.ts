import type { Item, Turn } from './item.ts';

type Span = { readonly from: number; readonly to: number; readonly text: string };
/** A word of the grammar: where it stands, and the item that it makes. */
export type Word = { readonly pattern: RegExp; readonly of: (span: Span) => Item };

/** A turn of that kind, in any of these patterns, as a whole word; lower case without accents. */
export const word = (is: Turn, ...patterns: readonly string[]): Word => ({
  pattern: new RegExp(String.raw`\s*(?<![\p{L}\d])(?:${patterns.join('|')})(?![\p{L}\d])`, 'uy'),
  of: span => ({ ...span, is }) as Item,
});
