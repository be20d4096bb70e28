import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { parseBarDose } from '../../../src/engine/colour/reading/bar-text.ts';
import { openRoom } from '../../loopback/room.ts';

let room: Awaited<ReturnType<typeof openRoom>>;
beforeEach(async () => {
  room = await openRoom({ whole: true });
  for (const [item, colourant] of [
    ['Dusk', 'ultramarine violet'],
    ['Brick', 'red iron oxide'],
    ['Moss', 'chromium oxide green'],
  ])
    await room.member.run('/shelf add', { item: item!, amount: '40 g', colourant: colourant! });
});
afterEach(() => room[Symbol.asyncDispose]());

const plan = async (options: Record<string, string | number | boolean> = {}) => {
  const answer = await room.member.run('/calibrate plan', options);
  return {
    ...answer,
    ephemeral: answer.ephemeral,
    files: answer.files,
    text: answer.text.replace(/^#+ /, ''),
  };
};
const bars = (text: string) => Number(/^(\d+) test bars?/.exec(text)?.[1]);

describe('/calibrate plan', () => {
  test('says first how many bars, then which spoons, and draws their labels', async () => {
    const answer = await plan();
    expect(answer.ephemeral).toBe(true);
    expect(answer.text).toMatch(
      /^\d test bars of 1\/2 cup for 3 jars: give or take \d(\.\d)? after, \d\d(\.\d)? now/,
    );
    for (const name of ['Dusk', 'Brick', 'Moss'])
      expect(answer.text).toMatch(new RegExp(`tsp ${name} in 1/2 cup`));
    expect(answer.files.map(({ name }) => name)).toEqual(['labels.png']);
    expect(answer.text).toContain('no colour, unless you keep a plain bar');
    expect(answer.text).toContain('Gloves and goggles');
  });

  test('what stands on a label is what /calibrate bars reads', async () => {
    await room.member.run('/shelf add', { item: 'Fern', amount: '9 g', colourant: 'chromium oxide green' });
    const { text } = await plan({ jars: 'Fern', portion: '3/4 cup', within: 4.7 });
    const [, dose = ''] = /bar-1:"(.+?) #/.exec(text) ?? [];
    expect(parseBarDose(dose)).toMatchObject({ by: 'cup' });
    const handed = await room.member.run('/calibrate bars', { item: 'Fern', 'bar-1': `${dose} #4f7a4a` });
    expect(handed.text).not.toContain('as a test bar');
  });

  test('mixes take no more bars, and say what one jar a bar would take', async () => {
    const alone = await plan({ jars: 'Dusk, Brick, Moss' });
    const mixed = await plan({ jars: 'Dusk, Brick, Moss', mixes: true });
    expect(bars(mixed.text)).toBeLessThanOrEqual(bars(alone.text));
    expect(mixed.text).toMatch(/With one jar a bar it takes \d/);
  });

  test('a jar that was calibrated needs fewer bars or none', async () => {
    await room.member.run('/shelf add', { item: 'Known', amount: '9 g', colourant: 'ultramarine pink' });
    const before = bars((await plan({ jars: 'Known', within: 5 })).text);
    expect(before).toBeGreaterThan(0);
    const learnt = await room.member.run('/calibrate bars', {
      item: 'Known',
      'bar-1': '1/16 tsp per cup #e3c6c8',
      'bar-2': '1/4 tsp per cup #d29bab',
      'bar-3': '1/8 tsp per cup #dab2ba',
    });
    expect(learnt.text).toContain('Kept with');
    const after = await plan({ jars: 'Known', within: 5 });
    expect(after.text).toMatch(/^No test bar needed|^1 test bar/);
    expect((await plan()).text).not.toContain('Known:');
  });

  test.each([
    ['a jar that is not there', { jars: 'Nowhere' }, /not on your shelf/],
    ['seven jars', { jars: 'a,b,c,d,e,f,g' }, /At most 6 jars/],
    ['only commas', { jars: ', ,' }, /no jar to plan/],
    ['a thimble', { portion: '1 tsp' }, /makes no test bar/],
    ['a bucket', { portion: '20 l' }, /makes no test bar/],
    ['a wrong unit', { portion: '3 parsecs' }, /parsecs/],
    ['less than none', { portion: '-1 cup' }, /.+/],
    ['a smile', { jars: '🧼' }, /.+/],
    ['a constructor', { jars: 'constructor' }, /not on your shelf/],
  ])('meets %s', async (_, options, sentence) => {
    const answer = await plan(options);
    expect(answer.text).toMatch(sentence);
    expect(answer.text).not.toMatch(/^\d+ test bar/);
    expect(answer.text.length).toBeLessThan(400);
    expect(room.faults).toEqual([]);
  });

  test('an empty shelf is told what to do', async () => {
    expect((await room.steward.run('/calibrate plan', {})).text).toContain('/shelf add');
  });

  test('is in Spanish for a Spanish client', async () => {
    room.member.grant({ locale: 'es-ES' });
    const answer = await plan();
    room.member.grant({ locale: 'en-US' });
    expect(answer.text).toMatch(/^\d barras de prueba de 1\/2 taza/);
    expect(answer.text).toMatch(/cdta de Dusk en 1\/2 taza/);
  });
});
