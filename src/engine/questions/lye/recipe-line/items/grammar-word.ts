import type { Item, Turn } from './item.ts';

type Span = { readonly from: number; readonly to: number; readonly text: string };
export type Word = { readonly pattern: RegExp; readonly of: (span: Span) => Item };

export const word = (is: Turn, ...patterns: readonly string[]): Word => ({
  pattern: new RegExp(String.raw`\s*(?<![\p{L}\d])(?:${patterns.join('|')})(?![\p{L}\d])`, 'uy'),
  of: span => ({ ...span, is }) as Item,
});
