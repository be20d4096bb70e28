import { expect, test } from 'vitest';
import { valuesOn } from '../../src/engine/values-on.ts';

test('a value is known by the very object, and by nothing that is like it', () => {
  const values = valuesOn<object, string>();
  const [key, alike] = [{ of: 1 }, { of: 1 }];
  values.set(key, 'first');
  expect([values.get(key), values.get(alike)]).toEqual(['first', undefined]);
  values.set(key, 'second');
  expect(values.get(key)).toBe('second');
});

test('nobody else sees it: no key, no copy and no comparison takes it along', () => {
  const [values, others] = [valuesOn<object, string>(), valuesOn<object, string>()];
  const key = { of: 1 };
  values.set(key, 'kept');
  expect(Reflect.ownKeys(key)).toEqual(['of']);
  expect(key).toEqual({ of: 1 });
  expect([values.get({ ...key }), values.get(structuredClone(key)), others.get(key)]).toEqual([
    undefined,
    undefined,
    undefined,
  ]);
});

test('undefined may be known, and lists may know it', () => {
  const values = valuesOn<readonly number[], { readonly it: undefined }>();
  const list = Object.freeze([1, 2]);
  values.set(list, { it: undefined });
  expect(values.get(list)).toEqual({ it: undefined });
});
