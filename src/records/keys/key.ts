import type { Span } from '../store.ts';

/*
 * How keys are written: one function for each kind of record, beside this file, one key for each fact.
 * `/` separates parts; within a part only [A-Za-z0-9_-] occurs, anything else is written as `_` and the two
 * hexadecimal digits of each of its UTF-8 bytes (and `_` itself as `_5f`), so no name can reach across a `/`,
 * and every store orders keys alike.
 */

const utf8 = new TextEncoder();

/** One part of a key; two different texts never give the same part. */
export function part(text: string): string {
  if (/^[A-Za-z0-9-]+$/.test(text)) return text;
  // An empty part would make `a//b`, which some stores fold into `a/b`.
  if (text === '') return '_';
  let encoded = '';
  for (const byte of utf8.encode(text)) {
    const character = String.fromCharCode(byte);
    encoded += /[A-Za-z0-9-]/.test(character) ? character : `_${byte.toString(16).padStart(2, '0')}`;
  }
  return encoded;
}

/** The text that a part of a key stands for. */
export function textOfPart(encoded: string): string {
  if (encoded === '_') return '';
  const bytes = encoded.replaceAll(/_([0-9a-f]{2})/g, '%$1');
  return decodeURIComponent(bytes);
}

/** A key of a kind of record, from parts in any script. Kinds are made in this folder only. */
export function key(kind: string, ...parts: readonly string[]): string {
  return [kind, ...parts.map(part)].join('/');
}

/** The span of every key that lies under a key: `a/b/...`, but neither `a/b` itself nor `a/bc`. */
export function under(parent: string): Span {
  // '0' is the character after '/'.
  return { from: `${parent}/`, to: `${parent}0` };
}

/** The span of one key and nothing else: '-' is the lowest character that a key may hold. */
export const alone = (key: string): Span => ({ from: key, to: `${key}-` });

/** Numbers in the order they were given. */
export const serial = (n: number) => String(n).padStart(6, '0');

/** Whole numbers from 0, written so that the highest comes first in key order. */
export const newestFirst = (n: number) => String(999_999_999 - n).padStart(9, '0');
