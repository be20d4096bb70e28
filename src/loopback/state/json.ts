/** A JSON object of unknown shape, as it arrives from outside. */
export type Json = { readonly [key: string]: unknown };

export const isRecord = (value: unknown): value is Json =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** The value as an object; an empty one when it is something else. */
export const recordOf = (value: unknown): Json => (isRecord(value) ? value : {});

/** The value as a list; an empty one when it is something else. */
export const listOf = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : []);

/** The value as text, or undefined. */
export const textOf = (value: unknown): string | undefined => (typeof value === 'string' ? value : undefined);

/** The value as a finite number, else `fallback`. */
export const numberOf = (value: unknown, fallback: number): number =>
  typeof value === 'number' && Number.isFinite(value) ? value : fallback;

/** An id or other word that may come as text or number; '' when it is neither. */
export const wordOf = (value: unknown): string =>
  typeof value === 'string' ? value : typeof value === 'number' ? String(value) : '';
