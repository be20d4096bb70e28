import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { colourDifference, labOfHex } from '../../src/engine/colour/spectra/cielab.ts';
import { openTerminalRoom, type TerminalRoom } from './terminal-room.ts';

/*
 * What a member's bench is like holds in every command: which spoons lie on it, and how strong bars found a jar to be.
 */

let room: TerminalRoom<Shown>;
beforeAll(async () => {
  room = await openTerminalRoom('bench');
});
afterAll(async () => {
  await room[Symbol.asyncDispose]();
  expect(room.faults).toEqual([]);
});

type Dosed = { readonly teaspoons: number; readonly timesKind?: number };
type Shown = {
  readonly text: string;
  readonly data: {
    readonly predicted: { readonly hex: string };
    readonly doses: readonly Dosed[];
    readonly portions: readonly { readonly millilitres: number; readonly doses: readonly Dosed[] }[];
  };
  readonly problem?: string;
  readonly id?: string;
};
const asker = (member: string) => (line: string) => room.ask(member, line);

const PLAN = '/plan oils:"olive 70%, coconut 30%" size:"1000 g oils" portions:"2 cups Dusk; rest plain"';

describe('a jar far weaker than its kind', () => {
  const ask = asker('weak');

  test('is told by one figure wherever it is told, and nobody is said to have asked for its spoons', async () => {
    await ask('/shelf add item:"ultramarine blue" amount:"60 g"');
    await ask('/shelf weigh item:"ultramarine blue" amount:"3 g"');
    const told = await ask(
      '/calibrate bars item:"ultramarine blue" bar-1:"1/4 tsp per cup #5a68b8" bar-2:"1/8 tsp per cup #7d8bc8" bar-3:"plain #efe6cf"',
    );
    const dose = await ask('/dose colourant:"ultramarine blue" portion:"2 cups"');
    const preview = await ask('/preview mix:"ultramarine blue" portion:"2 cups"');
    const figures = [told, dose, preview].map(({ text }) =>
      [...text.matchAll(/([\d.]+) times (?:as strong as usual|the usual)/g)].map(([, times]) => times),
    );
    // Beside it /calibrate tells how well the jar covers.
    expect(new Set([figures[0]![0], figures[0]![1], ...figures[1]!, ...figures[2]!])).toEqual(
      new Set(['0.4']),
    );
    for (const { text } of [dose, preview]) {
      expect(text).toMatch(/Your jar is weak: so deep a colour would need about 1 1\/4 tsp of/);
      expect(text).not.toContain('You asked for');
    }
    expect(
      (await ask('/dose colourant:"ultramarine blue" portion:"2 cups" strength:"2 tsp per cup"')).text,
    ).toMatch(/You asked for 4 tsp of/);
  });

  test('the most is told in spoons that there are, and never more than it', async () => {
    const { text } = await ask('/dose colourant:"titanium dioxide" portion:"1.5 kg"');
    expect(text).toContain('never more than 2 Tbsp + 1/4 tsp in this portion');
  });
});

describe('how strong bars found a jar to be', () => {
  const ask = asker('strong');
  let asItsKind: string;
  let dosed: number;
  beforeAll(async () => {
    await ask('/shelf add item:Dusk colourant:"ultramarine violet" amount:"50 g"');
    const hexAt = async (spoons: string) =>
      (await ask(`/preview mix:"Dusk ${spoons} tsp" portion:"1 cup"`)).data.predicted.hex;
    asItsKind = (await ask('/preview mix:Dusk portion:"1 cup"')).data.predicted.hex;
    // Twice as strong: half the spoons make what its kind does.
    const bars = [await hexAt('1/8'), await hexAt('1/4'), await hexAt('1/2')] as const;
    await ask(
      `/calibrate bars item:Dusk bar-1:"1/16 tsp per cup ${bars[0]}" bar-2:"1/8 tsp per cup ${bars[1]}" bar-3:"1/4 tsp per cup ${bars[2]}"`,
    );
    const dose = await ask('/dose colourant:Dusk portion:"1 cup"');
    dosed = dose.data.doses[0]!.teaspoons;
    expect(dose.data.doses[0]!.timesKind).toBeGreaterThan(1.4);
  });

  test('is what a plan doses by, and the plan says so', async () => {
    const { data, text } = await ask(PLAN);
    const [portion] = data.portions;
    expect(portion!.doses[0]!.teaspoons / (portion!.millilitres / 236.588)).toBeCloseTo(dosed, 3);
    expect(text).toMatch(/Counted in, by your own bars: “Dusk” is [12]\.?\d* times as strong as usual\./);
  });

  test('is what a preview spoons by: full colour is as deep as of any jar of its kind', async () => {
    const { data, text } = await ask('/preview mix:Dusk portion:"1 cup"');
    expect(data.doses[0]!.teaspoons).toBeCloseTo(dosed, 6);
    expect(colourDifference(labOfHex(data.predicted.hex), labOfHex(asItsKind))).toBeLessThan(3);
    expect(text).toMatch(/Counted in, by your own bars: “Dusk”/);
  });

  test.each([
    '/match target:#8f7fb0 portion:"1 cup"',
    '/palette make colours:"#8f7fb0, #b9aed0"',
    '/pour gradient from:"Dusk full" to:plain',
  ])('is said where it is counted in: %s', async line => {
    expect((await ask(line)).text).toMatch(/Counted in, by your own bars: “Dusk”/);
  });

  test('moves what a remedy calls full', async () => {
    await ask(`${PLAN.replace('2 cups Dusk', '2 cups Dusk 1/2 tsp per cup')} save-as:Deep`);
    const { text } = await ask(
      '/diagnose words:"the lather is coloured and stains the washcloth" recipe:Deep',
    );
    expect(text).toMatch(/Full is \S+ tsp by your own bars/);
  });
});

describe('the spoons one owns', () => {
  const ask = asker('spoons');
  beforeAll(async () => {
    await ask('/shelf add item:Dusk colourant:"ultramarine violet" amount:"50 g"');
    await ask('/shelf add item:Sun colourant:"gold mica" amount:"50 g"');
    await ask('/shelf add item:Snow colourant:"titanium dioxide" amount:"50 g"');
    await ask('/shelf add item:Leaf colourant:"chromium oxide green" amount:"50 g"');
    await ask('/shelf add item:Brick colourant:"red iron oxide" amount:"50 g"');
  });
  beforeEach(() => ask('/prefer owned:"1 tsp, 1/4"'));

  test.each([
    '/match target:#8f7fb0 portion:"4 cups"',
    '/palette make colours:"#8f7fb0, #d9b36a" portion:"4 cups"',
    '/palette today portion:"4 cups"',
    '/pour line mould:"25x9x6 cm" colourant:Sun',
    '/pour layers mould:"20x6x1 cm" layers:9',
    '/calibrate plan jars:"Dusk, Sun" portion:"2 cups"',
    '/shelf compare one:Dusk other:"ultramarine blue"',
    '/preview mix:"Dusk pastel + Sun" portion:"3 cups"',
  ])('are the only ones that %s tells of', async line => {
    const { text, problem } = await ask(line);
    expect(problem).toBeUndefined();
    expect(text).toMatch(/\d (?:x 1\/4 )?tsp|1\/4 tsp/);
    // What a label counts to the cup is a rate, not a spoon to fill.
    const spoons = [...text.matchAll(/1\/\d+ (?:tsp|Tbsp)(?! per cup)|\d Tbsp/g)].map(([one]) => one);
    expect(spoons.filter(one => one !== '1/4 tsp')).toEqual([]);
  });

  test('where even the smallest is too much for any colour, that is said', async () => {
    await ask('/prefer owned:"1 Tbsp, 1 tsp"');
    for (const line of ['/match target:#8f7fb0 portion:"2 Tbsp"', '/palette today portion:"2 Tbsp"']) {
      const { id, problem } = await ask(line);
      expect(id).toBe('spoons-too-large');
      expect(problem).toMatch(/^Your smallest spoon, 1 tsp, is more than any colour/);
    }
    await ask('/prefer owned:all');
    expect((await ask('/match target:#8f7fb0 portion:"2 Tbsp"')).id).toBeUndefined();
  });
});
