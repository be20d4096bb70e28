import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { controlOf, type Fair, type FairRooms, openFair, photoOf } from './room.ts';

let rooms: FairRooms;
let fair: Fair;

// A room for each: in one of all, every day that passes is one of the groups before, too.
beforeEach(async () => {
  rooms = await openFair();
  fair = rooms.group();
});

afterEach(() => rooms[Symbol.asyncDispose]());

const open = (more: Record<string, string | number | boolean> = {}) =>
  fair.steward.run('/challenge open', {
    title: 'Slate',
    'entries-until': 'in 1 day',
    'votes-until': 'in 2 days',
    ...more,
  });

const enter = async (who: 'ana' | 'bea' | 'cleo', more: Record<string, string> = {}) =>
  fair[who].run('/challenge enter', {
    photo: await photoOf(['#3f6fa8']),
    title: `Bar of ${who}`,
    colourants: 'ultramarine blue',
    ...more,
  });

describe('a bar', () => {
  test('that breaks the terms is told everything that is wrong with it, at once', async () => {
    await open({ rule: 'one-pigment', 'cure-days': 28, 'made-from': '2026-10-01' });
    const refused = await enter('ana', { colourants: 'ultramarine blue, gold mica', made: '2026-11-30' });
    expect(refused.text).toContain('One pigment only; yours names 2.');
    expect(refused.text).toContain('26 days to go: the bar cures at least 28 days');
    const fine = await enter('ana', { made: '2026-10-20' });
    expect(fine.text).toContain('Bar 1');
  });

  test('“from one’s own shelf” may hold a kind of which its maker keeps a jar, and nothing else', async () => {
    await open({ rule: 'own-shelf' });
    expect((await enter('ana')).text).toContain('not on it: Ultramarine blue');
    await fair.ana.run('/shelf add', { item: 'Evening sky', amount: '40 g', colourant: 'ultramarine blue' });
    expect((await enter('ana', { colourants: 'evening sky' })).text).toContain('Bar 1');
  });

  test('of one pigment is thought of from each jar on the shelf, deep and pale', async () => {
    await open({ rule: 'one-pigment' });
    await fair.wait(0);
    await fair.ana.run('/shelf add', { item: 'Moss', amount: '40 g', colourant: 'chromium oxide green' });
    const card = fair.channel()[0]!;
    const ideas = await fair.ana.press(card, controlOf(card, 'From my shelf'));
    expect(ideas.text).toMatch(/Moss: .*green #[0-9a-f]{6} at the most, .* #[0-9a-f]{6} at a quarter/);
  });

  test('is thought of from the shelf for each colour of the largest palette there may be', async () => {
    const colours = ['#3f6f9f', '#ece4d2', '#7faf6f', '#b14e78', '#f2b95c', '#8a6f4a'];
    await open({ palette: colours.join(', ') });
    await fair.wait(0);
    for (const colourant of ['ultramarine blue', 'titanium dioxide', 'yellow iron oxide'])
      await fair.ana.run('/shelf add', { item: `My ${colourant}`, amount: '40 g', colourant });
    const card = fair.channel()[0]!;
    const ideas = await fair.ana.press(card, controlOf(card, 'From my shelf'));
    expect(ideas.text).toMatch(/can come near [1-6] of 6 colours/);
  });

  test('can be replaced in part and withdrawn while entries are taken, which frees its place', async () => {
    await open({ palette: '#3f6fa8' });
    await enter('ana');
    const replaced = await fair.ana.run('/challenge replace', { title: 'Better' });
    expect(replaced.text).toContain('Bar 1, “Better”');
    expect(replaced.files.map(({ name }) => name)).toEqual(['measured.png']);
    const withdrawn = await fair.ana.press(replaced, controlOf(replaced, 'Withdraw this bar'));
    expect(withdrawn.text).toContain('“Better” is withdrawn');
    expect((await fair.ana.run('/challenge withdraw')).text).toContain('You have no bar');
    expect((await enter('ana')).text).toContain('Bar 2');
  });

  test('of somebody else can be neither replaced nor withdrawn', async () => {
    await open();
    await enter('ana');
    expect((await fair.bea.run('/challenge withdraw', { entry: 1 })).text).toContain('not yours');
    expect((await fair.bea.run('/challenge replace', { entry: 1, title: 'Mine' })).text).toContain(
      'not yours',
    );
  });

  test('is no bar when the file is no photo', async () => {
    await open();
    const refused = await fair.ana.run('/challenge enter', {
      photo: { name: 'bar.jpg', bytes: new TextEncoder().encode('not a photo at all') },
      title: 'Trick',
      colourants: 'ultramarine blue',
    });
    expect(refused.text).toMatch(/picture|photo/i);
    expect((await fair.ana.run('/challenge show')).text).not.toContain('Trick');
  });

  test('without a white sheet has no score, and is told so', async () => {
    await open({ palette: '#3f6fa8', decides: 'colour' });
    const entered = await fair.ana.run('/challenge enter', {
      photo: await photoOf(['#3f6fa8'], 'none'),
      title: 'No paper',
      colourants: 'ultramarine blue',
    });
    expect(entered.text).toContain('No score: the photo shows no white sheet');
  });
});
