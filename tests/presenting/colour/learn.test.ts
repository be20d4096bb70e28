import { expect, test } from 'vitest';
import { learn, learnAgain, learnMixed, relearn, unlearn } from '../../../src/presenting/colour/learn.ts';
import { lessonsOf } from '../../../src/records/batches/lessons.ts';
import { barOf, openShelves } from './asking.ts';

/* What bars teach of jars that were never tested: our own rule. */

const BLUE = 'ultramarine-blue';

test('a bar teaches its jar, and what it said is kept beside the jar', async () => {
  await using shelves = await openShelves();
  const jar = await shelves.jar('Evening', BLUE);
  const { jars, kept } = await learn(
    { batch: 'b1', bars: [barOf(jar, { colourant: BLUE, strength: 1.5 })] },
    shelves.asking(),
  );
  expect(kept).toBe(true);
  expect(jars.map(({ item, bars, before }) => [item.name, bars, before])).toEqual([
    ['Evening', 1, undefined],
  ]);
  const { learnt } = (await shelves.jarNow('Evening')).lot;
  expect(learnt).toMatchObject({ colourant: BLUE, bars: 1, parameters: jars[0]!.after!.parameters });
});

test('a stronger bar teaches a stronger jar', async () => {
  await using shelves = await openShelves();
  const [weak, strong] = [await shelves.jar('Weak', BLUE), await shelves.jar('Strong', BLUE)];
  const after = async (jar: typeof weak, strength: number) =>
    (await learn({ batch: jar.id, bars: [barOf(jar, { colourant: BLUE, strength })] }, shelves.asking()))
      .jars[0]!.after!.parameters[0]!;
  expect(await after(strong, 2)).toBeGreaterThan(await after(weak, 0.5));
});

test('delivered twice, a lesson is written once', async () => {
  await using shelves = await openShelves();
  const jar = await shelves.jar('Evening', BLUE);
  const bars = [barOf(jar, { colourant: BLUE, strength: 1.5 })];
  await learn({ batch: 'b1', bars }, shelves.asking('maker', 'once'));
  expect(await learn({ batch: 'b1', bars }, shelves.asking('maker', 'once'))).toEqual({
    jars: [],
    kept: true,
  });
  expect((await lessonsOf(shelves.asking().book)).standing).toHaveLength(1);
});

test('told again, a portion takes the place of what it said before; another portion stays', async () => {
  await using shelves = await openShelves();
  const jar = await shelves.jar('Evening', BLUE);
  const [one, two, anew] = [1.2, 1.4, 2].map((strength, at) =>
    barOf(jar, { colourant: BLUE, strength, portion: at % 2 }),
  );
  await learn({ batch: 'b1', bars: [one!, two!] }, shelves.asking());
  const { jars } = await learn({ batch: 'b1', bars: [anew!] }, shelves.asking());
  expect(jars[0]?.bars).toBe(2);
  const { standing } = await lessonsOf(shelves.asking().book);
  expect(standing.map(({ bars }) => bars)).toEqual([[two, anew]]);
});

test('nothing is kept of a bar that is odd', async () => {
  await using shelves = await openShelves();
  const jar = await shelves.jar('Evening', BLUE);
  const bars = [barOf(jar, { colourant: BLUE, strength: 1.5 })];
  expect(await learn({ batch: 'b1', bars }, shelves.asking(), () => true)).toMatchObject({ kept: false });
  expect((await lessonsOf(shelves.asking().book)).standing).toEqual([]);
  expect((await shelves.jarNow('Evening')).lot.learnt).toBeUndefined();
});

test('to forget a batch is to have learnt without it; it may be learnt once more', async () => {
  await using shelves = await openShelves();
  const jar = await shelves.jar('Evening', BLUE);
  const known = async () => {
    const { parameters, bars } = (await shelves.jarNow('Evening')).lot.learnt ?? {};
    return { parameters, bars };
  };
  await learn({ batch: 'b1', bars: [barOf(jar, { colourant: BLUE, strength: 1.5 })] }, shelves.asking());
  const alone = await known();
  await learn({ batch: 'b2', bars: [barOf(jar, { colourant: BLUE, strength: 0.6 })] }, shelves.asking());
  const both = await known();
  expect([alone.bars, both.bars]).toEqual([1, 2]);
  await unlearn('b2', shelves.asking());
  expect(await known()).toEqual(alone);
  await relearn('b2', shelves.asking());
  expect(await known()).toEqual(both);
  await unlearn('b1', shelves.asking());
  await unlearn('b2', shelves.asking());
  expect(await known()).toEqual({});
});

test('what was never said is no lesson to forget', async () => {
  await using shelves = await openShelves();
  expect(await unlearn('b9', shelves.asking())).toEqual([]);
  await relearn('b9', shelves.asking());
  expect((await lessonsOf(shelves.asking().book)).lines).toBe(0);
});

test('mixed test bars are one lesson, of which those with a jar that is tested anew go', async () => {
  await using shelves = await openShelves();
  const jar = await shelves.jar('Evening', BLUE);
  const bars = [1.5, 1.6].map((strength, portion) => barOf(jar, { colourant: BLUE, strength, portion }));
  const isPoor = () => false;
  await learnMixed([bars[0]!], { isPoor }, shelves.asking());
  await learnMixed([bars[1]!], { isPoor }, shelves.asking());
  const standing = async () => (await lessonsOf(shelves.asking().book)).standing.map(one => one.bars);
  expect(await standing()).toEqual([bars]);
  await learnMixed([], { forget: ({ portion }) => portion === 0, isPoor }, shelves.asking());
  expect(await standing()).toEqual([[bars[1]]]);
  expect(await learnMixed([bars[0]!], { isPoor: () => true }, shelves.asking())).toMatchObject({
    kept: false,
  });
  expect(await standing()).toEqual([[bars[1]]]);
});

test('a jar is learnt anew from all that bars still say of it', async () => {
  await using shelves = await openShelves();
  const jar = await shelves.jar('Evening', BLUE);
  await learn({ batch: 'b1', bars: [barOf(jar, { colourant: BLUE, strength: 1.5 })] }, shelves.asking());
  const { learnt } = (await shelves.jarNow('Evening')).lot;
  expect((await learnAgain(jar, shelves.asking()))?.after?.parameters).toEqual(learnt?.parameters);
});
