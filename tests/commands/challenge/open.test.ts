import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { controlOf, day, type Fair, type FairRooms, instant, openFair, photoOf } from './room.ts';

let rooms: FairRooms;
let fair: Fair;
// A room for each: in one of all, every day that passes is one of the groups before, too.
beforeEach(async () => {
  rooms = await openFair();
  fair = rooms.group();
});
afterEach(() => rooms[Symbol.asyncDispose]());

const open = (options: Record<string, unknown>) => fair.steward.run('/challenge open', options as never);

describe('opening a challenge', () => {
  test('needs a title only: two weeks to enter, three days to vote, makers hidden', async () => {
    const { text } = await open({ title: 'Plain' });
    expect(text).toContain(`**Enter until:** ${instant(Date.UTC(2026, 11, 16, 10))}`);
    expect(text).toContain(`**Vote until:** ${instant(Date.UTC(2026, 11, 19, 10))}`);
    expect(text).toContain('Schulze method');
  });

  test('with nothing said asks for what matters by a form', async () => {
    const form = await fair.steward.openForm('/challenge open');
    const opened = await fair.steward.submit(form, {
      title: 'By form',
      palette: 'teal',
      'entries-until': 'in 2 days',
    });
    expect(opened.text).toContain('“By form” is opened.');
    expect(opened.text).toMatch(/#[0-9a-f]{6}/);
  });

  test.each([
    ['a colour nobody knows', { palette: 'zxqv wug' }, /colour/],
    ['seven colours', { palette: 'red,blue,lime,teal,gold,pink,navy' }, /1 to 6|0 to 6/],
    ['parts that sum to more than the whole', { palette: 'red 70%, blue 60%' }, /130 %/],
    ['a time that has passed', { 'entries-until': '2026-12-01 10:00' }, /has passed/],
    [
      'a vote that ends before the entries do',
      { 'entries-until': 'in 5 days', 'votes-until': 'in 2 days' },
      /must come before/,
    ],
    ['a zone nobody knows', { zone: 'Mars/Olympus' }, /don't know the time zone/],
    ['measured colour without a palette', { decides: 'colour' }, /A palette has 1 to 6 colours; you gave 0/],
    ['a day that no calendar has', { 'made-from': '2026-02-30' }, /No calendar/],
  ])('refuses %s', async (_, options, sentence) => {
    const { text } = await open({ title: 'No', ...options });
    expect(text).toMatch(sentence);
    expect((await fair.member.run('/challenge list')).text).toContain('No challenge yet');
  });

  test('says when the clocks skip the time it was given', async () => {
    const { text } = await open({
      title: 'Spring',
      zone: 'Europe/Madrid',
      'entries-until': '2027-03-28 02:30',
    });
    expect(text).toContain(
      'The clocks skip that time; I moved it 60 minutes on: Sun, 28 Mar 2027, 03:30 CEST',
    );
  });

  test('takes its palette from a photo', async () => {
    const { text } = await open({ title: 'Seen', photo: await photoOf(['#3f6fa8', '#e3b7b0']) });
    expect(text).toMatch(/Palette: #[0-9a-f]{6}, #[0-9a-f]{6}$/m);
  });

  test('takes a colourant by name as the bar it makes at its full dose', async () => {
    const { text } = await open({ title: 'Named', palette: 'chromium oxide green' });
    expect(text).toMatch(/Palette: #[0-9a-f]{6}$/m);
  });

  test('speaks Spanish in the channel when its steward does', async () => {
    fair.steward.grant({ locale: 'es-ES' });
    const { text } = await open({
      title: 'Pizarra',
      'entries-until': 'en 1 día',
      'votes-until': 'en 2 días',
    });
    expect(text).toContain('«Pizarra» queda abierto.');
    await fair.wait(0);
    const card = fair.channel()[0]!;
    expect(card.text).toContain('«Pizarra» admite barras.');
    const entered = await fair.ana.run('/challenge enter', {
      photo: await photoOf(['#3f6fa8']),
      title: 'Noche',
      colourants: 'ultramarine blue',
    });
    expect(entered.text).toContain('Bar 1');
    await fair.wait(day);
    fair.member.grant({ locale: 'es-ES' });
    const notice = fair.channel().at(-1)!;
    expect(notice.text).toContain('hay 1 barra, vota hasta');
    const ballot = await fair.member.press(notice, controlOf(notice, 'Votar'));
    expect(ballot.text).toContain('Tu papeleta de «Pizarra» sigue vacía.');
  });
});

describe('a drawn palette', () => {
  const shelve = async (who: 'ana' | 'bea', jars: readonly string[]) => {
    for (const jar of jars) await fair[who].run('/shelf add', { item: jar, amount: '50 g', colourant: jar });
  };

  test('is the same for the same seed, and says which seed it was', async () => {
    await shelve('ana', ['ultramarine blue', 'red iron oxide', 'titanium dioxide']);
    await shelve('bea', ['chromium oxide green', 'red iron oxide', 'titanium dioxide']);
    const first = await fair.member.run('/challenge palette', { colours: 2, share: 100, seed: 'moss' });
    const again = await fair.member.run('/challenge palette', { colours: 2, share: 100, seed: 'moss' });
    expect(first.text).toMatch(/^## #[0-9a-f]{6}, #[0-9a-f]{6}$/m);
    expect(first.text).toContain('seed “moss”: 100 % of 2 shelves');
    expect(again.text).toBe(first.text);
    const opened = await open({ title: 'Drawn', random: 2, share: 100, seed: 'moss' });
    const [, hexes = 'none'] = /## (.*)/.exec(first.text) ?? [];
    expect(opened.text).toContain(`Palette: ${hexes}`);
  });

  test('is refused where no shelf holds anything', async () => {
    expect((await fair.member.run('/challenge palette')).text).toContain('No shelf in this group');
  });
});
