import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import {
  gramsPerHundred,
  opticsOf,
  usualTeaspoon,
} from '../../../src/engine/colour/jars/colourant-optics.ts';
import { barLab } from '../../../src/engine/colour/mixing/bar.ts';
import { plainBase } from '../../../src/engine/colour/mixing/base-soap.ts';
import { hexOfLab } from '../../../src/engine/colour/spectra/cielab.ts';
import { colourantById } from '../../../src/engine/colourants/catalogue.ts';
import { controlOf, photoOf } from '../challenge/room.ts';
import { type Book, headline, openBook } from './book.ts';

let book: Book;
beforeAll(async () => {
  book = await openBook();
});
afterAll(() => book[Symbol.asyncDispose]());

/** The colour of a bar of a jar half as strong as its kind, in cream soap. */
function weak(tspPerCup: number): string {
  const colourant = colourantById('ultramarine-violet')!;
  const kind = opticsOf(colourant);
  const grams = gramsPerHundred(tspPerCup, usualTeaspoon(colourant));
  const optics = { ...kind, k: kind.k.map(value => value / 2) };
  return hexOfLab(barLab([{ optics, grams }], plainBase('cream', false)));
}

type Member = Awaited<ReturnType<Book['maker']>>['member'];
const foretold = async (member: Member) => headline(await member.run('/preview', { mix: 'Dusk 1/4 tsp' }));
const pour = (member: Member, spoons: string, name: string) =>
  member.run('/batch poured', { made: `1 cup Dusk ${spoons}`, name });

describe('a cured batch teaches its jars', () => {
  test('how strong they are, in spoons; what is foretold follows, and the lesson can be forgotten', async () => {
    const { member } = await book.maker();
    const untaught = await foretold(member);
    await pour(member, '1/4 tsp', 'First');
    const cured = await member.run('/batch cured', { colours: weak(1 / 4) });
    expect(cured.text).toMatch(/“Dusk” is 0\.[4-7]\d* times as strong as usual/);
    expect(cured.text).toMatch(
      /take (?:3\/8|1\/4 tsp \+ 1\/8|1\/2|1\/4 tsp \+ 1\/16)[^.]* instead of 1\/4 tsp/,
    );
    const taught = await foretold(member);
    expect(taught).not.toBe(untaught);
    expect(Number(/± (\d+)/.exec(taught)?.[1])).toBeLessThan(Number(/± (\d+)/.exec(untaught)?.[1]));
    expect((await member.run('/preview', { mix: 'Dusk 1/4 tsp' })).text).toContain('From your own');
    const forgotten = await member.press(cured, controlOf(cured, 'Forget this lesson'));
    expect(headline(forgotten)).toContain('“Dusk” is as before this bar');
    expect(await foretold(member)).toBe(untaught);
    expect(headline(await member.press(cured, controlOf(cured, 'Forget this lesson')))).toContain(
      'nothing was changed',
    );
  });

  test('by a photo beside white paper; a rough one teaches nothing', async () => {
    const { member } = await book.maker();
    const untaught = await foretold(member);
    await pour(member, '1/4 tsp', 'Rough');
    await member.run('/batch cured', { photo: await photoOf(['#7f5fa8'], 'none') });
    expect(await foretold(member)).toBe(untaught);
    const cured = await member.run('/batch cured', { photo: await photoOf([weak(1 / 4)]) });
    expect(cured.text).toContain('What this bar teaches of your jars');
    expect(await foretold(member)).not.toBe(untaught);
  });

  test('a pale, dull red teaches no livelier jar unless its maker says so', async () => {
    const { member } = await book.maker();
    await member.run('/shelf add', { item: 'Cherry', amount: '9 g', colourant: 'red 30 lake' });
    const foretoldRed = async () => headline(await member.run('/preview', { mix: 'Cherry 1 tsp' }));
    const untaught = await foretoldRed();
    await member.run('/batch poured', { made: '1 cup Cherry 1 tsp', name: 'Red' });
    // Foretold is #b73840; as pale as this only a weak jar gets, and the colour of a weak one is livelier.
    const cured = await member.run('/batch cured', { batch: 'Red', colours: '#d56c6b' });
    expect(cured.text).toContain('the bar is duller than I foretold');
    expect(cured.text).not.toContain('What this bar teaches');
    expect(await foretoldRed()).toBe(untaught);
    const taught = await member.press(cured, controlOf(cured, 'It was: learn from it'));
    expect(taught.text).toMatch(/“Cherry” is 0\.\d+ times as strong as usual/);
    expect(await foretoldRed()).not.toBe(untaught);
    await member.press(taught, controlOf(taught, 'Forget this lesson'));
    expect(await foretoldRed()).toBe(untaught);
  });

  test('a second reading of the same bar takes the place of the first; a batch that is gone teaches nothing', async () => {
    const { member } = await book.maker();
    const untaught = await foretold(member);
    await pour(member, '1/4 tsp', 'Again');
    await member.run('/batch cured', { colours: weak(1 / 4) });
    const once = await foretold(member);
    const twice = await member.run('/batch cured', { colours: weak(1 / 4) });
    expect(twice.text).toContain('from 1 bar.');
    expect(await foretold(member)).toBe(once);
    await member.run('/batch remove', { batch: 'Again' });
    expect(await foretold(member)).toBe(untaught);
  });

  test('three batches cured at once all count, and test bars with them', async () => {
    const { member } = await book.maker();
    const doses = [1 / 8, 1 / 4, 1 / 2];
    for (const [at, spoons] of ['1/8 tsp', '1/4 tsp', '1/2 tsp'].entries())
      await pour(member, spoons, `Of ${at}`);
    await Promise.all(
      doses.map((dose, at) => member.run('/batch cured', { batch: `Of ${at}`, colours: weak(dose) })),
    );
    await member.run('/calibrate bars', { item: 'Dusk', 'bar-1': `1/16 tsp per cup ${weak(1 / 16)}` });
    await pour(member, '3/8 tsp', 'Last');
    const last = await member.run('/batch cured', { batch: 'Last', colours: weak(3 / 8) });
    expect(last.text).toContain('from 5 bars.');
    expect(last.text).toMatch(/“Dusk” is 0\.5\d* times as strong as usual/);
  });

  test('a new lot knows nothing of it', async () => {
    const { member } = await book.maker();
    const untaught = await foretold(member);
    await pour(member, '1/4 tsp', 'Old lot');
    await member.run('/batch cured', { colours: weak(1 / 4) });
    await member.run('/shelf new-lot', { item: 'Dusk' });
    expect(await foretold(member)).toBe(untaught);
  });

  test('others start from it only once the batch is shared, and no longer once taken back', async () => {
    const { member, ana } = await book.maker();
    await ana.run('/shelf add', { item: 'Dusk', amount: '9 g', colourant: 'ultramarine violet' });
    const untaught = await foretold(ana);
    await pour(member, '1/4 tsp', 'Pooled');
    await member.run('/batch cured', { colours: weak(1 / 4) });
    expect(await foretold(ana)).toBe(untaught);
    expect((await member.run('/batch share')).text).toContain('Jars here of the same name start from');
    expect(await foretold(ana)).not.toBe(untaught);
    await member.run('/batch unshare');
    expect(await foretold(ana)).toBe(untaught);
  });
});
