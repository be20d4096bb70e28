import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { read } from '../../src/records/record.ts';
import { itemKind } from '../../src/records/shelf/schema.ts';
import { openRoom } from '../loopback/room.ts';

let room: Awaited<ReturnType<typeof openRoom>>;
beforeEach(async () => {
  room = await openRoom({ whole: true });
});
afterEach(() => room[Symbol.asyncDispose]());

const run = (command: string, options: Record<string, string> = {}) => room.member.run(command, options);

const addSea = () =>
  run('/shelf add', { item: 'Sea', amount: '50 g', colourant: 'ultramarine blue', price: '8.50 €' });
const addClay = () =>
  run('/shelf add', { item: 'Clay', colourant: 'red iron oxide', price: '6 USD', size: '4 oz' });

describe('what colour costs', () => {
  test('a price is for the amount unless a size is said, and shows on the shelf', async () => {
    await addSea();
    await addClay();
    const { text } = await run('/shelf list');
    expect(text).toContain('Sea: 50 g');
    expect(text).toContain('€8.50 for 50 g');
    expect(text).toContain('$6.00 for 113 g');
  });

  test('is told with a dose: the portion, and a bar of 100 g', async () => {
    await addSea();
    const { text } = await run('/dose', { colourant: 'Sea', portion: '2 cups' });
    const [, sum, bar] = /The colour costs €([\d.]+); €([\d.]+) in a 100 g bar/.exec(text) ?? [];
    const grams = Number(/about ([\d.]+) g/.exec(text)?.[1]);
    expect(Number(sum)).toBeCloseTo((grams * 8.5) / 50, 1);
    // Two US cups of batter of 1 g/ml are 473 g.
    expect(Number(bar)).toBeCloseTo(Number(sum) / 4.73, 2);
    expect((await run('/dose', { colourant: 'titanium dioxide', portion: '2 cups' })).text).not.toContain(
      'cost',
    );
  });

  test('two currencies stay two, and a jar without a price is named', async () => {
    await addSea();
    await addClay();
    await run('/shelf add', { item: 'Snow', amount: '50 g', colourant: 'titanium dioxide' });
    const { text } = await run('/dose', {
      colourant: 'Sea pastel',
      portion: '2 cups',
      'with-1': 'Clay pastel',
      'with-2': 'Snow tint',
    });
    expect(text).toMatch(/The colour costs €[\d.]+ \+ \$[\d.]+/);
    expect(text).toContain('Without a price, so not counted: Snow');
  });

  test('is told with a match, and the cheapest that holds', async () => {
    await addSea();
    await run('/shelf add', {
      item: 'Dear sea',
      amount: '50 g',
      colourant: 'ultramarine blue',
      price: '80 €',
    });
    const { text } = await run('/match', { target: '#5f6fb5' });
    expect(text).toMatch(/Cheapest that holds: .*Sea, €0\.\d+/);
    expect(text).not.toMatch(/Cheapest that holds: .*Dear sea/);
  });

  test('a price is corrected by describing the jar anew, which keeps the rest', async () => {
    await addSea();
    const { text } = await run('/shelf describe', { item: 'Sea', price: '10 €', size: '100 g' });
    expect(text).toContain('“Sea” costs €10.00 for 100 g');
    await run('/shelf describe', { item: 'Sea', colourant: 'ultramarine blue' });
    expect((await run('/shelf show', { item: 'Sea' })).text).toContain('€10.00 for 100 g');
  });

  test('of a batch: oils always, colour of own jars for their owner only', async () => {
    await addSea();
    await addClay();
    await run('/prefer', { jars: 'shown' });
    const open = await run('/plan', {
      oils: 'olive 70%, coconut 30%',
      size: '1 kg oils',
      portions: '2 cups Sea pastel; rest Clay tint',
      prices: 'olive 8 €/kg',
      'save-as': 'Priced',
    });
    expect(open.text).toMatch(/Oils: €5\.60/);
    expect(open.text).toMatch(/Oils without a price, not counted: coconut/i);
    expect(open.text).not.toContain('Colour: €');
    await run('/prefer', { jars: 'private' });
    const own = await run('/plan', { recipe: 'Priced', prices: 'olive 8 €/kg' });
    expect(own.text).toMatch(/Colour: €[\d.]+ \+ \$[\d.]+ for the batch/);
    expect(own.text).toMatch(/Oils and colour: €[\d.]+ \+ \$/);
  });

  test.each([
    ['no size', { item: 'A', price: '3 €' }, /How much did that price buy/],
    ['a size alone', { item: 'A', size: '3 g' }, /needs its price too/],
    ['no currency', { item: 'A', amount: '3 g', price: '3' }, /needs one currency/],
    ['less than nothing', { item: 'A', amount: '3 g', price: '-3 €' }, /as a price/],
    ['a smile', { item: 'A', amount: '3 g', price: '🧼' }, /as a price/],
  ])('meets %s, and adds nothing', async (_, options, sentence) => {
    expect((await run('/shelf add', options)).text).toMatch(sentence);
    expect((await run('/shelf list')).text).not.toMatch(/^- A:/m);
    expect(room.faults).toEqual([]);
  });
});

test('a jar that was written down before there were prices still reads', () => {
  const old = { v: 1, id: 'x', name: 'Old', colourant: 'gold-mica', since: '2026-01-01T00:00:00.000Z' };
  expect(read(itemKind, 'shelf/1/x', old)).toMatchObject({ name: 'Old', colourant: 'gold-mica' });
});
