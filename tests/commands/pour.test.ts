import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openRoom } from '../loopback/room.ts';

let room: Awaited<ReturnType<typeof openRoom>>;
beforeAll(async () => {
  room = await openRoom({ whole: true });
});
afterAll(() => room[Symbol.asyncDispose]());

const run = (command: string, options: Record<string, string | number> = {}) =>
  room.member.run(command, options);

describe('/pour', () => {
  test('layers: volume, grams and height of each, and the wedge', async () => {
    const flat = await run('/pour layers', { mould: '25x9x6 cm', layers: 4 });
    expect(flat.text).toMatch(/4 layers of .*338 ml/);
    expect(flat.text).toContain('up to 1.5 cm');
    const tilted = await run('/pour layers', { mould: '25x9x6 cm', layers: 3, raised: 1.5 });
    expect(tilted.text).toContain('Layer 1, the wedge');
    expect(tilted.text).toContain('block of 1.5 cm');
    expect((await run('/pour layers', { mould: '25x9x6 cm', layers: 3, raised: 8 })).text).toContain(
      'at most',
    );
  });

  test('heights come in the unit that the mould was given in', async () => {
    // By hand: 2.5 in / 3 = 0.83 in, to an eighth 7/8; two of them 1.67 in, 1 5/8.
    const { text } = await run('/pour layers', { mould: '10x3.5x2.5 in', layers: 3 });
    for (const height of ['up to 7/8 in', 'up to 1 5/8 in', 'up to 2 1/2 in']) expect(text).toContain(height);
    expect(text).not.toMatch(/\d cm/);
    const inches = await run('/pour layers', { mould: '10" x 3.5" x 2.5"', layers: 3, raised: 1 });
    expect(inches.text).toMatch(/the wedge: .* from .* in to .* in high/);
    const top = await run('/pour swirl', { mould: '10x3.5x2.5 inches', shares: 'blue 50%, white 50%' });
    expect(top.text.split('\n')[0]).toMatch(/for the top 1 in$/);
  });

  test('slabs, cylinders and cavities too; a wedge only where one sets', async () => {
    // By hand: pi/4 x 8^2 x 24 = 1206 ml in three; 12 x 90 ml in three, 30 ml into each.
    const round = await run('/pour layers', { mould: 'cylinder 8x24 cm', layers: 3 });
    expect(round.text).toMatch(/3 layers of .*402 ml/);
    expect(round.text).toContain('up to 8 cm');
    const tray = await run('/pour layers', { mould: '12 cavities x 90 ml', layers: 3 });
    expect(tray.text).toMatch(/3 layers of .*360 ml/);
    expect(tray.text).toMatch(/30 ml.* into each cavity/);
    const slab = await run('/pour layers', { mould: 'slab 30x30x3 cm', layers: 3, raised: 1 });
    expect(slab.text).toMatch(/3 layers of .*900 ml/);
    for (const mould of ['cylinder 8x24 cm', '12 cavities x 90 ml'])
      expect((await run('/pour layers', { mould, layers: 3, raised: 1 })).text).toMatch(
        /no even wedge when tilted: pour level layers there, or take a loaf or slab mould/,
      );
    expect((await run('/pour line', { mould: 'cylinder 8x24 cm' })).text).toContain('For 50 cm²');
    expect((await run('/pour line', { mould: '12 cavities x 90 ml' })).text).toContain(
      'How deep is one cavity',
    );
    expect((await run('/pour line', { mould: '12 cavities x 90 ml, 3 cm deep' })).text).toContain(
      'For 360 cm²',
    );
    const swirl = { shares: 'blue 50%, white 50%' };
    const through = await run('/pour swirl', { mould: '12 cavities x 90 ml', ...swirl });
    expect(through.text).toMatch(/blue .*540 ml.*swirled right through/);
    const top = await run('/pour swirl', { mould: '12 cavities x 90 ml, 3 cm deep', depth: 1, ...swirl });
    expect(top.text).toMatch(/blue .*180 ml.*for the top 1 cm/);
  });

  test('line: spoons and grams by area', async () => {
    const { text } = await run('/pour line', { mould: '25x9x6 cm', lines: 2 });
    expect(text).toMatch(/tsp.* gold mica.*, about 1\.[34]\d* g/);
    expect(text).toContain('for each of 2 lines');
    const told = (await run('/pour line', { mould: 'cylinder 8x25 cm', colourant: 'charcoal', lines: 2 }))
      .text;
    expect(told).toMatch(/1\/8 tsp \+ 1\/16 tsp (?:activated )?charcoal/i);
    expect(told).toContain('1/16 tsp + 1/32 tsp for each of 2 lines');
    expect((await run('/pour line', { mould: '25x9x6 cm', thickness: 'thick' })).text).toContain(
      'layers part',
    );
  });

  test('swirl: each colour by its share, the rest to the base', async () => {
    const { text } = await run('/pour swirl', {
      mould: '20x10x8 cm',
      shares: 'blue 50%, white 30%',
      depth: 2,
    });
    expect(text).toMatch(/blue .*200 ml.*\(50 %\), white .*120 ml.*\(30 %\), for the top 2 cm/);
    expect(text).toMatch(/The base keeps .*80 ml.*\(20 %\)/);
  });

  test('gradient: how much of two pots, and what equal parts would do', async () => {
    const answer = await run('/pour gradient', { from: 'ultramarine blue full', to: 'plain', steps: 4 });
    expect(answer.text).toMatch(/4 steps that look even, [\d.]+ apart/);
    expect(answer.text.match(/ of A \+ /g)).toHaveLength(2);
    expect(answer.text).toContain('Equal parts would jump by');
    expect(answer.files.map(({ name }) => name)).toEqual(['gradient.png']);
    expect((await run('/pour gradient', { from: 'plain', to: 'plain' })).text).toContain('look alike');
  });

  test('infusion: how to begin, then the share a colour takes', async () => {
    expect((await run('/pour infusion')).text).toContain('Pour a test bar first');
    const { text } = await run('/pour infusion', { bar: '20% #dcc58a', target: '#cda64f', oils: '1000 g' });
    const [, percent, grams] = /Infuse (\d+) % of your oils[\s\S]*That is (\d+) g/.exec(text) ?? [];
    expect(Number(percent)).toBeGreaterThan(20);
    expect(Number(grams)).toBeGreaterThan(200);
    expect(text).toContain('never over a flame');
  });

  test.each([
    ['/pour layers', { mould: '🧼', layers: 3 }, /./],
    ['/pour layers', { mould: '25x9x7', layers: 3 }, /cm|in/],
    ['/pour layers', { mould: '-5x9x7 cm', layers: 3 }, /./],
    ['/pour layers', { mould: '1000 g oils', layers: 3 }, /no mould|mould/],
    ['/pour line', { mould: 'constructor' }, /./],
    ['/pour swirl', { mould: '12 cavities x 90 ml', shares: 'blue 1', depth: 2 }, /How deep/],
    ['/pour line', { mould: '25x9x6 cm', colourant: 'constructor' }, /./],
    ['/pour swirl', { mould: '25x9x6 cm', shares: 'blue 70%, white 60%' }, /130 %/],
    ['/pour swirl', { mould: '25x9x6 cm', shares: 'blue 1', depth: 9 }, /deeper than the mould/],
    ['/pour gradient', { from: 'x'.repeat(400), to: 'plain' }, /./],
    ['/pour gradient', { from: 'plain', to: 'ultramarine blue', portion: '-2 cups' }, /./],
    ['/pour infusion', { bar: '#d9b86a', target: 'mustard' }, /as a bar/],
    ['/pour infusion', { bar: '200% #d9b86a', target: 'mustard' }, /as a bar/],
    ['/pour infusion', { bar: '20% #d9b86a' }, /colour you want/],
  ])('%s meets %j', async (command, options, sentence) => {
    const { text } = await run(command, options as Record<string, string | number>);
    expect(text).toMatch(sentence);
    expect(text).not.toMatch(/NaN|undefined|Infinity/);
    expect(text.length).toBeLessThan(600);
    expect(room.faults).toEqual([]);
  });

  test('is in Spanish for a Spanish client', async () => {
    room.member.grant({ locale: 'es-ES' });
    const { text } = await run('/pour layers', { mould: '25x9x6 cm', layers: 3, raised: 1 });
    room.member.grant({ locale: 'en-US' });
    expect(text).toContain('la cuña');
  });
});
