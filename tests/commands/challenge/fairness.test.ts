import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { day, type Fair, type FairRooms, instant, openFair, photoOf } from './room.ts';

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

const vote = (who: 'ana' | 'bea' | 'cleo' | 'member', ranking: string) =>
  fair[who].run('/challenge vote', { ranking });

describe('who may', () => {
  test('open, extend, cancel, disqualify, export and set is a steward only', async () => {
    await open();
    await enter('ana');
    const refused = [
      await fair.member.run('/challenge open', { title: 'Mine' }),
      await fair.member.run('/challenge extend', { 'entries-until': 'in 5 days', reason: 'storm' }),
      await fair.member.run('/challenge cancel', { reason: 'storm' }),
      await fair.member.run('/challenge disqualify', { entry: 1, reason: 'bought' }),
      await fair.member.run('/challenge export'),
      await fair.member.run('/challenge settings', { zone: 'Asia/Tokyo' }),
    ];
    expect(new Set(refused.map(({ text }) => text)).size).toBe(1);
    expect(refused[0]?.text).toMatch(/steward/i);
  });

  test('be a steward by a role that the group has set', async () => {
    const role = fair.group.addRole('Keepers');
    const set = await fair.steward.run('/challenge settings', { role, zone: 'America/Chicago' });
    expect(set.text).toContain('Times are in America/Chicago.');
    expect(set.text).toContain(`the role <@&${role.id}>`);
    fair.member.grant({ roles: [role] });
    const opened = await fair.member.run('/challenge open', {
      title: 'By role',
      'entries-until': '2026-12-05 18:00',
    });
    expect(opened.text).toContain('“By role” is opened.');
    // Six hours behind UTC in winter.
    expect(opened.text).toContain(instant(Date.UTC(2026, 11, 6, 0)));
  });
});

describe('what a steward does', () => {
  test('is told in the channel and can be read by everybody', async () => {
    await open();
    await enter('ana');
    await enter('bea');
    await fair.steward.run('/challenge extend', {
      'entries-until': 'in 2 days',
      'votes-until': 'in 4 days',
      reason: 'power cut',
    });
    await fair.wait(2 * day);
    await vote('member', '1,2');
    await fair.wait(2 * day + 6_000);
    expect(fair.channel().at(-1)?.text).toContain('First in “Slate”: “Bar of ana” by Ana');
    await fair.steward.run('/challenge disqualify', { entry: 1, reason: 'a bought bar' });
    await fair.wait(0);
    const results = fair.channel().at(-1)?.text ?? '';
    expect(results).toContain('First in “Slate”: “Bar of bea” by Bea');
    expect(results).toContain('a bought bar');
    const audit = (await fair.cleo.run('/challenge audit')).text;
    expect(audit).toContain('power cut');
    expect(audit).toContain('took out 1. “Bar of ana” by Ana: a bought bar');
    expect((await fair.ana.run('/challenge history')).text).toContain('No bar');
  });

  test('cannot move a deadline earlier, nor after it has passed', async () => {
    await open();
    const earlier = await fair.steward.run('/challenge extend', {
      'entries-until': 'in 2 hours',
      reason: 'haste',
    });
    expect(earlier.text).toContain('can only move later');
    await fair.wait(day);
    const passed = await fair.steward.run('/challenge extend', {
      'entries-until': 'in 3 days',
      reason: 'late',
    });
    expect(passed.text).toContain('before it has passed');
  });

  test('calls it off for good: the channel is told, nothing more comes in', async () => {
    await open();
    await fair.wait(0);
    await enter('ana');
    await fair.steward.run('/challenge cancel', { reason: 'the hall is flooded' });
    await fair.wait(0);
    expect(fair.channel().at(-1)?.text).toContain('“Slate” was cancelled: the hall is flooded');
    expect(fair.channel()[0]?.controls).toEqual([]);
    expect((await enter('bea')).text).toContain('No challenge here');
    await fair.wait(3 * day);
    expect(fair.channel().filter(({ text }) => /First in|is over/.test(text))).toEqual([]);
  });
});
