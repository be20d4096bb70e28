import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { Member } from '../../../src/loopback/interface.ts';
import { openRoom } from '../../loopback/room.ts';

let room: Awaited<ReturnType<typeof openRoom>>;

beforeEach(async () => {
  room = await openRoom({ whole: true });
});

afterEach(() => room[Symbol.asyncDispose]());

const first = (text: string) => text.split('\n')[0];

describe('what the group has seen', () => {
  const report = (member: Member, result: string, more: Record<string, string | number> = {}) =>
    member.run('/colourant report', { item: 'carmine mica', result, process: 'ambient', ...more });

  test('moves from the chemistry with each report, and tells dose and check', async () => {
    const { member, steward } = room;
    const before = await member.run('/colourant evidence', { item: 'carmine mica' });
    expect(first(before.text)).toMatch(/No reports on .* yet/);
    const told = await report(member, 'held', { weeks: 6, strength: 'pastel', base: 'pale olive' });
    expect(told.ephemeral).toBe(false);
    expect(told.text).toMatch(/1 of 1 here saw .* hold/);
    await report(steward, 'shifted', { note: '**went** lilac' });
    const after = await member.run('/colourant evidence', { item: 'carmine mica' });
    expect(first(after.text)).toMatch(/1 of 2 here saw .* hold/);
    expect(after.text).toContain('held; left to itself; 6 weeks; pastel; in pale olive; yours');
    expect(after.text).toContain('\\*\\*went\\*\\* lilac');
    expect((await member.run('/colourant check', { item: 'carmine mica' })).text).toMatch(/1 of 2 here/);
    expect((await member.run('/dose', { colourant: 'carmine mica', portion: '1 cup' })).text).toMatch(
      /1 of 2/,
    );
  });

  test('a later report takes the place of the earlier one, and its maker can take it back', async () => {
    const { member, steward } = room;
    await report(member, 'held');
    await report(steward, 'shifted');
    expect((await report(member, 'faded')).text).toContain('takes the place');
    expect((await member.run('/colourant evidence', { item: 'carmine mica' })).text).toMatch(/0 of 2 here/);
    const gone = await member.run('/colourant withdraw', { item: 'carmine mica' });
    expect(gone.text).toMatch(/report on .* is gone/);
    expect((await member.run('/colourant evidence', { item: 'carmine mica' })).text).toMatch(/0 of 1 here/);
    expect((await member.run('/colourant withdraw', { item: 'carmine mica' })).text).toMatch(
      /nothing to take back/,
    );
  });

  test('is turned page by page, and one colour opened from the list', async () => {
    const { member } = room;
    const names = [
      'gold mica',
      'ultramarine blue',
      'kaolin',
      'cocoa',
      'neon pink',
      'nettle',
      'charcoal',
      'indigo',
      'madder',
    ];
    for (const item of names) await member.run('/colourant report', { item, result: 'held', process: 'gel' });
    const page = await member.run('/colourant evidence');
    expect(page.text).toContain('Page 1 of 2');
    const more = page.controls.find(({ label }) => label === 'More');
    const second = await member.press(page, more?.customId ?? '');
    expect(second.text).toContain('Page 2 of 2');
    const menu = second.controls.find(({ kind }) => kind === 'text-menu');
    const opened = await member.choose(second, menu?.customId ?? '', ['ultramarine-blue']);
    expect(first(opened.text)).toMatch(/1 of 1 here saw ultramarine blue hold/);
  });

  test('a metal cannot be reported, a strength must be readable', async () => {
    const { member, steward } = room;
    const metal = await member.run('/colourant report', {
      item: 'Mica, Bronze Powder',
      result: 'held',
      process: 'gel',
    });
    expect(metal.text).toMatch(/Never put metal/);
    await report(steward, 'shifted');
    const odd = await report(member, 'held', { strength: 'purple' });
    expect(odd.text).toMatch(/purple/);
    expect((await member.run('/colourant evidence', { item: 'carmine mica' })).text).toMatch(/of 1 here/);
  });

  test('of a photo only the number is kept', async () => {
    const photo = { name: 'bar.png', bytes: new Uint8Array([137, 80, 78, 71]) };
    const { text } = await room.member.run('/colourant report', {
      item: 'rose clay',
      result: 'held',
      process: 'other',
      photo,
    });
    expect(text).toContain('not the picture');
    expect((await room.member.run('/colourant evidence', { item: 'rose clay' })).text).toContain(
      'with photo',
    );
  });

  test('stays in the group until stewards of both groups share', async () => {
    const { host, steward, member } = room;
    const other = host.addGuild({ name: 'Tuesday soapers', channels: ['bench'] });
    const guest = other.addMember({ name: 'Ines', permissions: 1n << 5n });
    await guest.run('/colourant report', { item: 'madder', result: 'faded', process: 'gel' });
    const look = async () => (await member.run('/colourant evidence', { item: 'madder' })).text;
    expect(await look()).not.toContain('other groups');
    expect((await member.run('/colourant share', { on: true })).text).toMatch(/steward/);
    await steward.run('/colourant share', { on: true });
    expect(await look()).not.toContain('other groups');
    await guest.run('/colourant share', { on: true });
    expect(await look()).toContain('In other groups that share: 0 of 1 saw it hold');
    await steward.run('/colourant share', { on: false });
    expect(await look()).not.toContain('other groups');
  });
});
