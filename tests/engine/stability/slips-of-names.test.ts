import { expect, test } from 'vitest';
import { colourantsNamed } from '../../../src/engine/colourants/find.ts';
import { readEntries } from '../../../src/engine/stability/entries.ts';
import { namesByLength, substanceNamed } from '../../../src/engine/stability/names.ts';
import { recognise } from '../../../src/engine/stability/recognise.ts';
import type { Substance } from '../../../src/engine/stability/substances/substance.ts';
import { drawn } from '../../walk.ts';

const LETTERS = 'aeiourstnldcm';

/** A name with one letter left out, doubled by another, changed or swapped with its neighbour, at a place that `turn` tells. */
function slipped(name: string, turn: number): string {
  const at = (turn * 7919) % name.length;
  const letter = LETTERS[(turn * 31 + name.length) % LETTERS.length]!;
  const [head, tail] = [name.slice(0, at), name.slice(at)];
  if (turn % 4 === 0) return head + tail.slice(1);
  if (turn % 4 === 1) return head + letter + tail;
  if (turn % 4 === 2) return head + letter + tail.slice(1);
  return at === 0 ? name : head.slice(0, -1) + tail.slice(0, 1) + head.slice(-1) + tail.slice(1);
}

/** Whether lye and the law treat both alike. */
const isAlike = (one: Substance, other: Substance): boolean =>
  one.alkali.behaviour === other.alkali.behaviour &&
  String(one.us) === String(other.us) &&
  String(one.ci) === String(other.ci);

/** Lake and dye of one Colour Index number, whose law is one entry; oils by a word of their own. */
const isOfOneName = (one: Substance, other: Substance): boolean =>
  one.ci.some(number => other.ci.some(same => same.split(':')[0] === number.split(':')[0])) ||
  other.id === 'plant-oil';

test('a name off by one or two letters is never read for what lye or the law treats otherwise', () => {
  const taken: string[] = [];
  let read = 0;
  let tried = 0;
  const all = [...namesByLength.values()]
    .flat()
    .filter(([name]) => /^[a-z ]{5,}$/u.test(name) && !/\b\w\b/u.test(name));
  expect(all.length).toBeGreaterThan(1000);
  for (const [name, meant] of drawn(all, 300, 'slips')) {
    for (let turn = 1; turn <= 6; turn += 1) {
      const once = slipped(name, turn);
      const typed = turn > 4 ? slipped(once, turn + 3) : once;
      // Another name exactly, such as rose clay for red clay in Italian, is what was written.
      if (substanceNamed(typed) !== undefined || colourantsNamed(typed).length > 0) continue;
      const got = readEntries(typed).flatMap(entry => recognise(entry).substances);
      tried += 1;
      read += got.length > 0 ? 1 : 0;
      const wrong = got.filter(
        one => one.alkali.behaviour !== 'never' && !isAlike(meant, one) && !isOfOneName(meant, one),
      );
      const isAlarmed = got.some(({ alkali }) => alkali.behaviour === 'never');
      if (wrong.length > 0 && !isAlarmed)
        taken.push(`${name} as “${typed}” is read ${wrong.map(({ id }) => id).join(', ')}`);
    }
  }
  expect(taken).toEqual([]);
  // Most slips are still put right: asking always would be no reading.
  console.info(`${read} of ${tried} slips are read, ${all.length} names`);
  expect(read / tried).toBeGreaterThan(0.85);
});
