import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { jarOptics } from '../../../src/engine/colour/calibration/joint/jar-model.ts';
import {
  gramsPerHundred,
  opticsOf,
  usualTeaspoon,
} from '../../../src/engine/colour/jars/colourant-optics.ts';
import { barLab } from '../../../src/engine/colour/mixing/bar.ts';
import { plainBase } from '../../../src/engine/colour/mixing/base-soap.ts';
import { hexOfLab } from '../../../src/engine/colour/spectra/cielab.ts';
import { colourantById } from '../../../src/engine/colourants/catalogue.ts';
import { openRoom } from '../../loopback/room.ts';
import { photoOf } from '../challenge/room.ts';

let room: Awaited<ReturnType<typeof openRoom>>;
beforeAll(async () => {
  room = await openRoom({ whole: true });
  for (const [item, colourant] of [
    ['Sky', 'ultramarine blue'],
    ['Brick', 'red iron oxide'],
  ])
    await room.member.run('/shelf add', { item: item!, amount: '40 g', colourant: colourant! });
});
afterAll(() => room[Symbol.asyncDispose]());

/** The colour of a bar of a blue half as strong as usual and a red as usual, teaspoons to the cup. */
function barOf(blue: number, red: number): string {
  const part = (id: string, tspPerCup: number, times: number) => ({
    optics: jarOptics(opticsOf(colourantById(id)!), [Math.log(times), 0, 0, 0]),
    grams: gramsPerHundred(tspPerCup, usualTeaspoon(colourantById(id)!)),
  });
  const mix = [part('ultramarine-blue', blue, 0.5), part('red-iron-oxide', red, 1)];
  return hexOfLab(barLab(mix, plainBase('cream', false)));
}
const bars = {
  'bar-1': `Sky 1/4 tsp + Brick 1/32 tsp per cup: ${barOf(1 / 4, 1 / 32)}`,
  'bar-2': `Sky 1/8 tsp per cup + 1/8 tsp Brick ${barOf(1 / 8, 1 / 8)}`,
  'bar-3': `1/4 tsp Sky + Brick 1/64 tsp = ${barOf(1 / 4, 1 / 64)}`,
};
const run = (options: Record<string, string | boolean>) => room.member.run('/calibrate bars', options);
const times = (text: string, name: string) =>
  Number(new RegExp(`“${name}” is ([\\d.]+) times`).exec(text)?.[1]);
const preview = async () => (await room.member.run('/preview', { mix: 'Sky 1/4 tsp' })).text;

describe('/calibrate bars of several jars', () => {
  test('tells the jars apart, and every command goes on with what was learnt', async () => {
    const usual = await preview();
    const { text } = await run(bars);
    expect(times(text, 'Sky')).toBeGreaterThan(0.4);
    expect(times(text, 'Sky')).toBeLessThan(0.65);
    expect(text).toMatch(/“Brick” is (?:as strong as usual|(?:0\.[89]|1\.[012])\d* times)/);
    const [, now = '99', before = '0'] =
      /“Sky” is .*give or take ([\d.]+) now, ([\d.]+) before/.exec(text) ?? [];
    expect(Number(now)).toBeLessThan(0.6 * Number(before));
    expect(text).toMatch(/1\/4 tsp per cup Sky \+ 1\/32 tsp per cup Brick: your bar #/);
    const learnt = await preview();
    expect(learnt).toContain('From your own test bars');
    expect(learnt.split('\n')[0]).not.toBe(usual.split('\n')[0]);
  });

  test('and one jar beside them: both count, in one answer', async () => {
    await room.member.run('/shelf add', { item: 'Lake', amount: '9 g', colourant: 'ultramarine blue' });
    const { text } = await run({
      item: 'Lake',
      'bar-1': `1/4 tsp per cup ${barOf(1 / 4, 0)}`,
      'bar-2': `Lake 1/8 tsp + Brick 1/8 tsp ${barOf(1 / 8, 1 / 8)}`,
    });
    expect(times(text, 'Lake')).toBeLessThan(0.65);
    expect(text).toContain('Your test bars');
    expect(text).toContain('Your mixed bars');
  });

  test('the same mix again takes the place of the first; afresh forgets those of a jar', async () => {
    await room.member.run('/shelf add', { item: 'Fen', amount: '9 g', colourant: 'ultramarine blue' });
    const one = `Fen 1/4 tsp + Brick 1/32 tsp: ${barOf(1 / 4, 1 / 32)}`;
    const fen = (text: string) => /“Fen” is .*/.exec(text)?.[0];
    const first = fen((await run({ 'bar-1': one })).text);
    expect(first).toContain('give or take');
    // Counted twice it would be known better.
    expect(fen((await run({ 'bar-1': one })).text)).toBe(first);
    const stored = async () => (await room.member.run('/preview', { mix: 'Fen 1/4 tsp' })).text;
    expect(await stored()).toContain('From your own test bars');
    await run({ item: 'Fen', afresh: true, 'bar-1': `1/4 tsp per cup ${barOf(1 / 4, 0)}` });
    await room.member.run('/shelf new-lot', { item: 'Fen' });
    expect(await stored()).not.toContain('From your own test bars');
  });

  test('a colour that no such jars give is not kept', async () => {
    await room.member.run('/shelf add', { item: 'Odd', amount: '9 g', colourant: 'ultramarine blue' });
    const { text } = await run({ 'bar-1': 'Odd 1/4 tsp + Brick 1/32 tsp: #30ff10' });
    expect(text).toMatch(/^#* ?Not kept: no such jars give these colours/);
    expect((await room.member.run('/preview', { mix: 'Odd 1/4 tsp' })).text).not.toContain('From your own');
  });

  test('reads one from a photo', async () => {
    await room.member.run('/shelf add', { item: 'Shot', amount: '9 g', colourant: 'ultramarine blue' });
    const answer = await room.member.run('/calibrate bars', {
      photo: await photoOf([barOf(1 / 4, 1 / 32)]),
      dose: 'Shot 1/4 tsp + Brick 1/32 tsp per cup',
    });
    expect(times(answer.text, 'Shot')).toBeLessThan(0.8);
  });

  test.each([
    ['a dose of no jar', { 'bar-1': '1/4 tsp per cup #aabbcc' }, /Which jar\?/],
    ['nothing', {}, /Which jar\?/],
    ['no jar of one’s own', { 'bar-1': 'gold mica 1 tsp + kaolin 1 tsp #ccbb99' }, /no jar of your shelf/],
    ['a thing nobody knows', { 'bar-1': 'Sky 1 tsp + moonbeam 1 tsp #ccbb99' }, /moonbeam/],
    ['a smile', { 'bar-1': '🧼' }, /as a test bar/],
    ['a constructor', { 'bar-1': 'constructor 1 tsp #aabbcc' }, /./],
    ['less than nothing', { 'bar-1': 'Sky -1 tsp + Brick 1 tsp #aabbcc' }, /./],
    ['two hundred characters', { 'bar-1': 'x'.repeat(200) }, /./],
  ])('meets %s', async (_, options, sentence) => {
    const answer = await run(options as Record<string, string>);
    expect(answer.text).toMatch(sentence);
    expect(answer.text).not.toMatch(/times as strong|NaN|undefined/);
    expect(answer.text.length).toBeLessThan(500);
    expect(room.faults).toEqual([]);
  });
});

test('a plain bar beside bars that name one jar is that jar’s base; beside several it says that it was left out', async () => {
  const one = await run({ 'bar-1': 'Sky 1/4 tsp per cup #5a68b8', 'bar-2': 'plain #efe6cf' });
  expect(one.text).toMatch(/“Sky” is [\d.]+ times as strong as usual/);
  const two = await run({ 'bar-1': bars['bar-1'], 'bar-2': bars['bar-2'], 'bar-3': 'plain #efe6cf' });
  expect(two.text).toContain('The plain bar was left out');
});
