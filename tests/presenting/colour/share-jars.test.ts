import { expect, test } from 'vitest';
import { learn } from '../../../src/presenting/colour/learn.ts';
import { shareJars, unshareJars } from '../../../src/presenting/colour/share-jars.ts';
import { sharedJar } from '../../../src/presenting/colour/what-bars-say.ts';
import { isShared, poolFor } from '../../../src/records/calibrations/index.ts';
import { barOf, openShelves } from './asking.ts';

/* What members share of their jars is theirs to give and to take back: our own rule. */

const BLUE = 'ultramarine-blue';

async function openClub() {
  const shelves = await openShelves();
  const jar = await shelves.jar('Evening', BLUE);
  const untested = await shelves.jar('Morning', BLUE);
  const other = await shelves.jar('evening', BLUE, 'neighbour');
  await learn({ batch: 'b1', bars: [barOf(jar, { colourant: BLUE, strength: 1.5 })] }, shelves.asking());
  return {
    ...shelves,
    jar,
    all: new Set([jar.id, untested.id]),
    poolOfNeighbour: () => poolFor(sharedJar(other, shelves.asking('neighbour'))),
    isShared: () => isShared(sharedJar(jar, shelves.asking())),
  };
}

test('only jars that bars spoke of are shared, with those whose jars are called alike', async () => {
  await using club = await openClub();
  expect(await club.poolOfNeighbour()).toEqual([]);
  expect(await shareJars(club.all, club.asking())).toEqual(['Evening']);
  expect(await club.isShared()).toBe(true);
  expect(await club.poolOfNeighbour()).toHaveLength(1);
});

test('a jar that nobody asked to share stays out', async () => {
  await using club = await openClub();
  expect(await shareJars(new Set(), club.asking())).toEqual([]);
  expect(await club.isShared()).toBe(false);
});

test('what is learnt later reaches the group only of a jar that is shared', async () => {
  await using club = await openClub();
  const bars = (strength: number) => [barOf(club.jar, { colourant: BLUE, strength })];
  await learn({ batch: 'b2', bars: bars(1.4) }, club.asking());
  expect(await club.poolOfNeighbour()).toEqual([]);
  await shareJars(club.all, club.asking());
  const before = await club.poolOfNeighbour();
  await learn({ batch: 'b3', bars: bars(1.9) }, club.asking());
  const after = await club.poolOfNeighbour();
  expect(after).toHaveLength(1);
  expect(after).not.toEqual(before);
});

test('taken back, nothing of it is left in the group', async () => {
  await using club = await openClub();
  await shareJars(club.all, club.asking());
  await unshareJars(new Set(), club.asking());
  expect(await club.isShared()).toBe(true);
  await unshareJars(club.all, club.asking());
  expect(await club.isShared()).toBe(false);
  expect(await club.poolOfNeighbour()).toEqual([]);
});
