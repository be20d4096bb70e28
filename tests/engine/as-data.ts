import { Refusal } from '../../src/engine/refusal.ts';

type Item = Readonly<Record<'is' | 'known' | 'figure' | 'unit' | 'share' | 'typed' | 'text', unknown>>;
const isItem = (value: object): value is Item =>
  'is' in value && typeof value.is === 'string' && 'text' in value && typeof value.text === 'string';
const isNamed = (value: object): value is { readonly id: string } =>
  'id' in value && typeof value.id === 'string' && 'names' in value;
const figure = (value: unknown): unknown =>
  typeof value === 'number' ? Number(value.toPrecision(6)) : value;

/** Six digits of a number; an item of a line as its words; of what has names its id; no pattern and no function. */
function short(_: string, value: unknown): unknown {
  if (value instanceof Set || value instanceof Map) return [...value];
  if (value instanceof RegExp || typeof value === 'function') return undefined;
  if (typeof value !== 'object' || value === null) return figure(value);
  if (isNamed(value)) return value.id;
  if (!isItem(value)) return value;
  const { is, known, figure: many, unit, share, typed, text } = value;
  return [is, known, many, unit, share, typed, text]
    .filter(one => one !== undefined)
    .map(figure)
    .join(' ');
}

/** What a reader gives, as plain data that a file can hold; null for nothing, and the id of a refusal. Throws what else it throws. */
export function asData(read: () => unknown): unknown {
  try {
    const told = read();
    return told === undefined ? null : JSON.parse(JSON.stringify(told, short) ?? 'null');
  } catch (error) {
    if (error instanceof Refusal) return { refused: error.id };
    throw error;
  }
}
