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
import { decoded } from '../../pictures/colours-in.ts';
import { photoOf } from '../challenge/room.ts';

let room: Awaited<ReturnType<typeof openRoom>>;
beforeAll(async () => {
  room = await openRoom({ whole: true, draws: true });
});
afterAll(() => room[Symbol.asyncDispose]());

/** The colour of a bar of a jar so many times as strong as its kind. */
function barOf(id: string, tspPerCup: number, times: number): string {
  const colourant = colourantById(id)!;
  const optics = jarOptics(opticsOf(colourant), [Math.log(times), 0, 0, 0]);
  const grams = gramsPerHundred(tspPerCup, usualTeaspoon(colourant));
  return hexOfLab(barLab([{ optics, grams }], plainBase('cream', false)));
}

const weak = (tspPerCup: number) => barOf('ultramarine-violet', tspPerCup, 0.5);
const bars = {
  'bar-1': `1/16 tsp per cup ${weak(1 / 16)}`,
  'bar-2': `1/4 tsp per cup ${weak(1 / 4)}`,
};
const headline = (text: string) => text.split('\n')[0] ?? '';
const errors = (text: string) =>
  /give or take ([\d.]+) now, ([\d.]+) before/.exec(text)?.slice(1).map(Number) ?? [];

async function jar(name: string, member = room.member, colourant = 'ultramarine violet') {
  await member.run('/shelf add', { item: name, amount: '40 g', colourant });
  return name;
}

describe('/calibrate', () => {
  test('finds the strength of a weak jar, narrows the plus-or-minus, and shows the fit', async () => {
    const item = await jar('Dusk');
    const answer = await room.member.run('/calibrate bars', { item, ...bars });
    expect(answer.ephemeral).toBe(true);
    expect(headline(answer.text)).toMatch(/“Dusk” is 0\.[45]\d* times as strong as usual/);
    const [now = 99, before = 0] = errors(answer.text);
    expect(now).toBeLessThan(before);
    const picture = await decoded(answer.files[0]?.bytes() ?? new Uint8Array());
    expect(picture.count(weak(1 / 4))).toBeGreaterThan(14_000);
    expect(JSON.stringify(answer.raw.components)).toContain('against dose, measured and predicted');
  });

  test('says what changes in spoons, and /dose takes them and says why, until a new lot', async () => {
    const item = await jar('Heather');
    const dose = async () => (await room.member.run('/dose', { colourant: item, portion: '1 cup' })).text;
    expect(headline(await dose())).toBe('## 1/4 tsp Heather for 1 cup');
    const answer = await room.member.run('/calibrate bars', { item, ...bars });
    const [, now] =
      /Full colour in a cup:\*\* (.*) now, where a usual jar takes 1\/4 tsp/.exec(answer.text) ?? [];
    // Half as strong as its kind, so about twice the spoons; 1/2 tsp is the most a cup takes.
    expect(now).toMatch(/^1\/2 tsp$/);
    const learnt = await dose();
    expect(headline(learnt)).toBe(`## ${now} Heather for 1 cup`);
    expect(learnt).toMatch(
      /“Heather” is 0\.[45]\d* times as strong as usual by your own bars: a usual jar takes 1\/4 tsp/,
    );
    await room.member.run('/shelf new-lot', { item });
    expect(headline(await dose())).toBe('## 1/4 tsp Heather for 1 cup');
  });

  test('what was learnt is used by /preview, and voided by a new lot', async () => {
    const item = await jar('Mauve hour');
    const ask = () => room.member.run('/preview', { mix: `${item} 1/4 tsp` });
    const usual = headline((await ask()).text);
    await room.member.run('/calibrate bars', { item, ...bars });
    const learnt = await ask();
    expect(learnt.text).toContain('From your own test bars');
    expect(headline(learnt.text)).not.toBe(usual);
    await room.member.run('/shelf new-lot', { item });
    expect(headline((await ask()).text)).toBe(usual);
  });

  test('bars of one lot add up; a bar made again takes the place of the old one', async () => {
    const item = await jar('Plum');
    const first = await room.member.run('/calibrate bars', { item, 'bar-1': bars['bar-2'] });
    expect(first.text).toContain('A second bar at another strength');
    const second = await room.member.run('/calibrate bars', { item, 'bar-1': bars['bar-1'] });
    expect(second.text.match(/your bar #/g)).toHaveLength(2);
    const again = await room.member.run('/calibrate bars', { item, 'bar-1': '1/4 tsp per cup #7a68a8' });
    expect(again.text.match(/your bar #/g)).toHaveLength(2);
    expect(again.text).toContain('your bar #7a68a8');
    const afresh = await room.member.run('/calibrate bars', { item, ...bars, afresh: true });
    expect(afresh.text).not.toContain('#7a68a8');
    const green = await room.member.run('/calibrate bars', { item, 'bar-1': bars['bar-1'], base: 'green' });
    expect(green.text).toContain('no longer count');
  });

  test('bars that nothing explains are not kept', async () => {
    const item = await jar('Liar');
    const answer = await room.member.run('/calibrate bars', {
      item,
      'bar-1': '1/4 tsp per cup #ff0000',
      share: true,
    });
    expect(headline(answer.text)).toContain('Not kept');
    expect((await room.member.run('/preview', { mix: `${item} 1/4 tsp` })).text).not.toContain(
      'From your own',
    );
  });

  test('reads a bar from a photo with a white sheet', async () => {
    const item = await jar('Pictured');
    const photo = await photoOf([weak(1 / 4)]);
    const answer = await room.member.run('/calibrate bars', { item, photo, dose: '1/4 tsp per cup' });
    expect(answer.text).toContain('Read from the photo: #');
    expect(headline(answer.text)).toMatch(/“Pictured” is 0\.\d+ times as strong/);
  });

  test('asks for the dose and the white sheet a photo needs', async () => {
    const item = await jar('Unlit');
    const dark = await photoOf(['#7f5fa8'], 'none');
    expect((await room.member.run('/calibrate bars', { item, photo: dark })).text).toContain('Say the dose');
    const unlit = await room.member.run('/calibrate bars', { item, photo: dark, dose: 'pastel' });
    expect(unlit.text).toContain('no white sheet');
  });

  test.each([
    ['a jar that is not there', { item: 'Nowhere', 'bar-1': 'pastel #aabbcc' }, /not on your shelf/],
    ['no bar', { item: 'Dusk 2' }, /at least one bar/],
    ['a plain bar alone', { item: 'Dusk 2', 'bar-1': 'plain #f0e8d4' }, /at least one bar/],
    ['a bar without a colour', { item: 'Dusk 2', 'bar-1': '1/4 tsp' }, /as a test bar/],
    ['a smile', { item: 'Dusk 2', 'bar-1': '🧼' }, /as a test bar/],
    ['a Lab that is none', { item: 'Dusk 2', 'bar-1': 'full lab(120 0 0)' }, /L is 0 to 100/],
    ['a cupful of powder', { item: 'Dusk 2', 'bar-1': '99 tsp per cup #fff' }, /not a strength/],
    ['a jar of something unknown', { item: 'What', 'bar-1': 'pastel #aabbcc' }, /what “What” is made of/],
  ])('meets %s', async (_, options, sentence) => {
    await room.member.run('/shelf add', { item: 'Dusk 2', amount: '4 g', colourant: 'ultramarine violet' });
    await room.member.run('/shelf add', { item: 'What', amount: '4 g' });
    const answer = await room.member.run('/calibrate bars', options as Record<string, string>);
    expect(answer.text).toMatch(sentence);
    expect(answer.text.length).toBeLessThan(400);
  });

  test('is in Spanish for a Spanish client', async () => {
    const item = await jar('Ocaso');
    room.member.grant({ locale: 'es-ES' });
    const answer = await room.member.run('/calibrate bars', {
      item,
      'bar-1': `1/4 cdta por taza ${weak(1 / 4)}`,
    });
    room.member.grant({ locale: 'en-US' });
    expect(answer.text).toMatch(/veces tan fuerte como lo habitual/);
    expect(answer.text).toContain('1/4 cdta por taza: tu barra');
  });
});

describe('bars shared with the group', () => {
  test('help others whose jar has the same name, only once their owner shares, and no longer once taken back', async () => {
    const { member, steward } = room;
    await jar('Twilight 40', member);
    await jar('twilight 40', steward);
    const seen = () => steward.run('/preview', { mix: 'twilight 40 1/4 tsp' });
    const usual = headline((await seen()).text);
    await member.run('/calibrate bars', { item: 'Twilight 40', ...bars });
    expect(headline((await seen()).text)).toBe(usual);

    const shared = await member.run('/calibrate bars', { item: 'Twilight 40', ...bars, share: true });
    expect(shared.text).toContain('Shared with this group');
    const helped = await seen();
    expect(helped.text).toContain('others here made with the same product');
    expect(headline(helped.text)).not.toBe(usual);

    const theirs = await steward.run('/calibrate bars', { item: 'twilight 40', 'bar-1': bars['bar-1'] });
    expect(theirs.text).toContain('1 other jar of the same name');

    const back = await member.run('/calibrate bars', { item: 'Twilight 40', share: false });
    expect(back.text).toContain('No longer shared');
    await steward.run('/shelf new-lot', { item: 'twilight 40' });
    expect(headline((await seen()).text)).toBe(usual);
  });

  test('say nothing of a jar called otherwise, nor in another group', async () => {
    const { member, steward, host } = room;
    await jar('Shared sky', member);
    await member.run('/calibrate bars', { item: 'Shared sky', ...bars, share: true });
    await jar('Other sky', steward);
    expect((await steward.run('/preview', { mix: 'Other sky' })).text).not.toContain('others here');
    const stranger = host.addGuild({ name: 'Elsewhere', channels: ['bench'] }).addMember({ name: 'Ida' });
    await jar('Shared sky', stranger);
    expect((await stranger.run('/preview', { mix: 'Shared sky' })).text).not.toContain('others here');
  });
});
