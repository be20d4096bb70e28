import { describe, expect, test } from 'vitest';
import { maybeNamed, nearestNamed } from '../../../../src/engine/text/names/own-names.ts';
import {
  allClosest,
  byNearness,
  closestThing,
  nearestNames,
} from '../../../../src/engine/text/spelling/closest-name.ts';

const scored = (...rows: readonly (readonly [string, number])[]) =>
  rows.map(([thing, far]) => ({ thing, far }));
const never = () => false;

describe('which of some names was meant', () => {
  test('each thing counts once, by its nearest name; equals stay in the order of those names', () => {
    expect(byNearness(scored(['a', 2], ['b', 1], ['a', 1], ['c', 0]))).toEqual(
      scored(['c', 0], ['b', 1], ['a', 1]),
    );
  });

  test('the nearest within reach, unless another is nearly as near and not alike', () => {
    const near = scored(['a', 1], ['b', 2], ['c', 4]);
    expect(closestThing(near, { most: 1, margin: 1, alike: never })).toBe('a');
    expect(closestThing(near, { most: 1, margin: 2, alike: never })).toBeUndefined();
    expect(closestThing(near, { most: 1, margin: 2, alike: other => other === 'b' })).toBe('a');
    expect(closestThing(near, { most: 0, margin: 1, alike: never })).toBeUndefined();
    expect(closestThing([], { most: 9, margin: 1, alike: never })).toBeUndefined();
  });

  test('all that are as near as the nearest', () => {
    const near = scored(['a', 1], ['b', 1], ['c', 2]);
    expect(allClosest(near, 1)).toEqual(['a', 'b']);
    expect(allClosest(near, 0)).toEqual([]);
  });

  test('suggestions come nearest first, capitals aside', () => {
    expect(nearestNames('DOES', ['help', 'dose', 'Does it'], 2)).toEqual(['dose', 'Does it']);
  });
});

describe('names that people gave', () => {
  const items = ['Dusk blue', 'Dust blue', 'Deep green'].map(name => ({ id: name, name }));
  const names = (found: readonly { readonly name: string }[]) => found.map(({ name }) => name);

  test('a slip that two names are as near to means either', () => {
    expect(names(maybeNamed(items, 'duss blue'))).toEqual(['Dusk blue', 'Dust blue']);
    expect(names(maybeNamed(items, 'dusk bleu'))).toEqual(['Dusk blue']);
    expect(names(maybeNamed(items, 'crimson'))).toEqual([]);
  });

  test('those that begin so come before those with such a word, then by slips, equals by the alphabet', () => {
    expect(names(nearestNamed(items, 'de'))).toEqual(['Deep green', 'Dusk blue', 'Dust blue']);
    const short = [{ id: 'dust', name: 'Dust' }, ...items];
    // A whole name that is a letter off comes before one that only begins nearly so.
    expect(names(nearestNamed(short, 'dusy'))[0]).toBe('Dust');
    expect(names(nearestNamed(items, 'green'))).toEqual(['Deep green', 'Dusk blue', 'Dust blue']);
  });
});
