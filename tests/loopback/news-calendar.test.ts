import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { permissionBits } from '../../src/loopback/index.ts';
import type { Channel } from '../../src/loopback/interface.ts';
import { day, type Fair, type FairRooms, openFair } from '../commands/challenge/room.ts';

let services: FairRooms;
let fair: Fair;

// A room for each: in one of all, every day that passes is one of the groups before, too.
beforeEach(async () => {
  services = await openFair();
  fair = services.group();
});

afterEach(() => services[Symbol.asyncDispose]());

const open = (channel: Channel, options: Record<string, unknown> = {}) =>
  fair.steward.run('/challenge open', { title: 'Dusk', 'entries-until': 'in 3 days', ...options } as never, {
    channel,
  });

/** What stands in a channel for everybody, without what was answered to one member. */
const news = (channel: Channel) =>
  fair.member
    .sees({ channel })
    .filter(({ ephemeral }) => !ephemeral)
    .map(message => services.room.host.latest(message)?.text.split('\n')[0]);

describe('beside its announcement', () => {
  test('a challenge gets a thread, unless the group wants none', async () => {
    const [channel] = fair.group.channels as [Channel];
    await open(channel);
    await fair.wait(0);
    expect(fair.group.threads.map(({ name }) => name)).toEqual(['Dusk']);
    await fair.steward.run('/challenge settings', { threads: false });
    await open(channel, { title: 'Fog' });
    await fair.wait(0);
    expect(fair.group.threads).toHaveLength(1);
    expect(fair.faults).toEqual([]);
  });

  test('the thread comes with a later try where the first one stumbled over it', async () => {
    const [channel] = fair.group.channels as [Channel];
    // One more than the client tries by itself.
    services.room.host.faultNext('POST', /\/threads$/, 500, { times: 4 });
    await open(channel);
    await fair.wait(0);
    expect(fair.group.threads).toHaveLength(0);
    expect(services.room.faults.splice(0)).toHaveLength(1);
    await fair.wait(day / 24);
    expect(fair.group.threads.map(({ name }) => name)).toEqual(['Dusk']);
    expect(news(channel)).toHaveLength(1);
  });

  test('a thread whose receipt was lost is not opened twice', async () => {
    const [channel] = fair.group.channels as [Channel];
    services.room.host.faultNext('POST', /\/threads$/, 'lost');
    await open(channel);
    await fair.wait(0);
    expect(services.room.faults.splice(0)).toHaveLength(1);
    await fair.wait(day / 24);
    expect(fair.group.threads).toHaveLength(1);
    // That it stands is known, so nothing asks for it again.
    const posts = await services.room.store.range('challenge-post/', 'challenge-post0', 500);
    expect(
      posts.map(({ key }) => key).filter(key => key.includes(fair.group.id) && /thread/.test(key)),
    ).toHaveLength(1);
    expect(fair.faults).toEqual([]);
  });

  test('nobody is called but the role that the stewards chose, and then only that', async () => {
    const [channel] = fair.group.channels as [Channel];
    const callers = fair.group.addRole('Challengers');
    await open(channel, { title: '@everyone', brief: `<@&${callers.id}> <@${fair.ana.id}>` });
    await fair.wait(0);
    const pings = () =>
      fair.member
        .sees({ channel })
        .filter(({ ephemeral }) => !ephemeral)
        .map(({ raw }) => [raw.mention_everyone, raw.mention_roles, raw.mentions.length]);
    expect(pings()).toEqual([[false, [], 0]]);
    await fair.steward.run('/challenge settings', { calls: callers });
    await open(channel, { title: 'Fog' });
    await fair.wait(0);
    expect(pings()[1]).toEqual([false, [callers.id], 0]);
    await fair.steward.run('/challenge settings', { quiet: true });
    await open(channel, { title: 'Rain' });
    await fair.wait(0);
    expect(pings()[2]).toEqual([false, [], 0]);
  });

  test('its deadlines stand in the calendar where we may enter them, move with it and go with it', async () => {
    const hall = services.room.host.addGuild({
      name: 'Hall',
      botPermissions: fair.permissions | permissionBits.createEvents,
    });
    const steward = hall.addMember({ name: 'Odile', permissions: permissionBits.manageGuild });
    const times = () => hall.calendar.map(({ name, starts, ends }) => [name, starts, ends]);
    const iso = (ms: number) => new Date(fair.now() + ms).toISOString();
    const opened = fair.now();
    await steward.run('/challenge open', {
      title: 'Dusk',
      'entries-until': 'in 3 days',
      'votes-until': 'in 5 days',
    });
    await fair.wait(0);
    const hour = day / 24;
    expect(times()).toEqual([
      ['“Dusk”: entries end', iso(3 * day - hour), iso(3 * day)],
      ['“Dusk”: the vote ends', iso(5 * day - hour), iso(5 * day)],
    ]);
    await steward.run('/challenge extend', { 'entries-until': 'in 4 days', reason: 'storm' });
    await fair.wait(0);
    expect(times()[0]).toEqual(['“Dusk”: entries end', iso(4 * day - hour), iso(4 * day)]);
    await steward.run('/challenge cancel', { reason: 'storm' });
    await fair.wait(0);
    expect(times()).toEqual([]);
    expect(fair.now()).toBe(opened);
    expect(fair.faults).toEqual([]);
  });

  test('what is over in the calendar holds up no later deadline', async () => {
    const hall = services.room.host.addGuild({
      name: 'Long hall',
      botPermissions: fair.permissions | permissionBits.createEvents,
    });
    const steward = hall.addMember({ name: 'Odile', permissions: permissionBits.manageGuild });
    const [opened, hour] = [fair.now(), day / 24];
    await steward.run('/challenge open', {
      title: 'Dusk',
      'entries-until': 'in 3 days',
      'votes-until': 'in 5 days',
    });
    await fair.wait(0);
    // The entries are in: their entry in the calendar is over, and can no longer be moved.
    await fair.wait(3.5 * day);
    await steward.run('/challenge extend', { 'votes-until': 'in 4 days', reason: 'storm' });
    await fair.wait(0);
    const iso = (ms: number) => new Date(ms).toISOString();
    expect(hall.calendar.map(({ starts, ends }) => [starts, ends])).toEqual([
      [iso(opened + 3 * day - hour), iso(opened + 3 * day)],
      [iso(fair.now() + 4 * day - hour), iso(fair.now() + 4 * day)],
    ]);
    const [channel] = hall.channels as [Channel];
    const until = `<t:${Math.floor((fair.now() + 4 * day) / 1000)}:`;
    const saying = steward
      .sees({ channel })
      .filter(({ ephemeral }) => !ephemeral)
      .map(one => services.room.host.latest(one)!)
      .filter(({ raw }) => JSON.stringify(raw.components).includes(until))
      .map(({ text }) => text.split('\n')[0]);
    expect(saying).toEqual([
      '## “Dusk” is being voted on.',
      expect.stringMatching(/^## “Dusk”: 0 entries are in, vote until/),
    ]);
    // Nobody asks the platform for what it surely refuses.
    const asked = services.room.host.requests.filter(({ path }) =>
      path.includes(`${hall.id}/scheduled-events`),
    );
    expect(asked.filter(({ status = 0 }) => status >= 400)).toEqual([]);
    expect(fair.faults).toEqual([]);
  });
});
