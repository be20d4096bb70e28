import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { permissionBits } from '../../src/loopback/index.ts';
import type { Channel } from '../../src/loopback/interface.ts';
import { duesOfGroup } from '../../src/records/dues/dues.ts';
import { leftAt } from '../../src/records/left-groups.ts';
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

/** What is to be done for a group beside looking every night through what is kept there. */
const challengeDues = async (group: string) =>
  (await duesOfGroup(services.room.store, group)).filter(({ key }) => !key.includes('/privacy-sweep/'));

describe('news of a challenge', () => {
  test.each(['thread', 'forum'] as const)(
    'in a %s that lies in the archive by then are told all the same',
    async kind => {
      const parent = kind === 'forum' ? fair.group.addForum('posts') : fair.group.channels[0];
      const thread = fair.group.addThread('Dusk', parent);
      await open(thread);
      await fair.wait(0);
      thread.archive();
      await fair.wait(2 * day);
      expect(news(thread)).toEqual([
        '## “Dusk” is taking entries.',
        expect.stringMatching(/^## “Dusk”: entries end /),
      ]);
      expect(thread.archived).toBe(false);
      thread.archive();
      await fair.wait(day);
      expect(news(thread)[0]).toBe('## “Dusk” is being voted on.');
      thread.archive();
      await fair.wait(4 * day);
      expect(news(thread)[0]).toBe('## “Dusk” is over.');
      expect(await challengeDues(fair.group.id)).toEqual([]);
      expect(fair.faults).toEqual([]);
    },
  );

  test('whose message cannot be edited for now are told all the same', async () => {
    const [channel] = fair.group.channels as [Channel];
    await open(channel);
    await fair.wait(0);
    // One more than the client tries by itself.
    services.room.host.faultNext('PATCH', /channels\/\d+\/messages\/\d+$/, 500, { times: 4 });
    await fair.wait(2 * day);
    expect(news(channel).at(-1)).toMatch(/^## “Dusk”: entries end /);
    services.room.faults.length = 0;
    await fair.wait(5 * day);
    expect(news(channel)[0]).toBe('## “Dusk” is over.');
  });

  test('in a locked thread are given up, and whoever opened it hears so with their next command, once', async () => {
    const thread = fair.group.addThread('Dusk');
    await open(thread);
    await fair.wait(0);
    thread.archive(true);
    await fair.wait(2 * day);
    expect(await challengeDues(fair.group.id)).not.toEqual([]);
    expect(services.room.barred).toContainEqual({
      group: fair.group.id,
      channel: thread.id,
      what: 'entries-soon',
    });
    const inPrivate = fair.steward.sees({ context: 'bot-dm' }).map(({ text }) => text);
    expect(inPrivate).toEqual([expect.stringContaining('I could not tell the group about “Dusk”')]);
    expect((await fair.member.run('/challenge list')).text).not.toContain('could not tell');
    expect((await fair.steward.run('/challenge list')).text).toContain(
      'I could not tell the group about “Dusk”',
    );
    expect((await fair.steward.run('/challenge list')).text).not.toContain('could not tell');
    expect(fair.faults).toEqual([]);
  });
});

describe('at its opening', () => {
  test('a challenge says what is missing in its channel, and where it could be announced', async () => {
    const [bench] = fair.group.channels as [Channel];
    bench.allowBot(permissionBits.viewChannel);
    fair.group.addChannel('show');
    const { text } = await open(bench);
    expect(text).toContain('I may not write there (Send Messages)');
    expect(text).toContain('(Attach Files)');
    expect(text).toContain('open it in #show');
    expect(text).not.toContain('I announce it');
  });

  test('it goes to another channel where one is named, if we may write there', async () => {
    const [bench] = fair.group.channels as [Channel];
    const show = fair.group.addChannel('show');
    expect((await open(bench, { channel: show })).text).toContain('I announce it in #show');
    await fair.wait(0);
    expect(news(show)).toEqual(['## “Dusk” is taking entries.']);
    const cellar = fair.group.addChannel('cellar');
    cellar.allowBot(0n);
    expect((await open(bench, { channel: cellar, title: 'Fog' })).text).toContain('(View Channel)');
  });

  test('it says what will not stand beside it, and nothing of what the group does not want', async () => {
    const [bench] = fair.group.channels as [Channel];
    // A group lets us open threads, and enter nothing in its calendar.
    const first = (await open(bench)).text;
    expect(first).toContain('Create Events');
    expect(first).not.toContain('Create Public Threads');
    bench.allowBot(fair.permissions & ~permissionBits.createPublicThreads);
    expect((await open(bench, { title: 'Fog' })).text).toContain('(Create Public Threads)');
    await fair.steward.run('/challenge settings', { threads: false, calendar: false });
    expect((await open(bench, { title: 'Rain' })).text).not.toMatch(/Create (?:Public Threads|Events)/);
    const hall = services.room.host.addGuild({
      name: 'Open hall',
      botPermissions: fair.permissions | permissionBits.createEvents,
    });
    const steward = hall.addMember({ name: 'Odile', permissions: permissionBits.manageGuild });
    const told = await steward.run('/challenge open', { title: 'Dawn' });
    expect(told.text).not.toMatch(/Create (?:Public Threads|Events)/);
  });

  test('a role that nobody can call is named as such when it is chosen, others are not', async () => {
    const quiet = fair.group.addRole('Quiet', 0n, false);
    const uncallable = /lets nobody be called/;
    expect((await fair.steward.run('/challenge settings', { calls: quiet })).text).toMatch(uncallable);
    const callers = fair.group.addRole('Challengers');
    expect((await fair.steward.run('/challenge settings', { calls: callers })).text).not.toMatch(uncallable);
  });

  test('a locked thread is named as such', async () => {
    const thread = fair.group.addThread('old');
    thread.archive(true);
    expect((await open(thread)).text).toContain('the thread is locked');
  });
});

describe('a group that puts us out', () => {
  const isKnown = () => services.room.connection.client.guilds.cache.has(fair.group.id);
  const putOut = async () => {
    fair.group.removeBot();
    await expect.poll(isKnown).toBe(false);
  };

  test('is told nothing more; what is remembered of it stays, with a note of when', async () => {
    const [channel] = fair.group.channels as [Channel];
    await open(channel);
    await fair.wait(0);
    const keys = async () => (await services.room.store.range('challenge/', 'challenge0', 500)).length;
    const before = await keys();
    await putOut();
    await fair.wait(2 * day);
    expect(await duesOfGroup(services.room.store, fair.group.id)).toEqual([]);
    expect((await leftAt(services.room.store, fair.group.id))?.getTime()).toBe(fair.now());
    expect(await keys()).toBe(before);
    expect(fair.faults).toEqual([]);
  });

  test('and takes us in again finds its challenges going on, and closed where their time ran out', async () => {
    const [channel] = fair.group.channels as [Channel];
    await open(channel);
    await open(channel, { title: 'Fog', 'entries-until': 'in 1 days', 'votes-until': 'in 2 days' });
    await fair.wait(0);
    await putOut();
    await fair.wait(day);
    expect(await duesOfGroup(services.room.store, fair.group.id)).toEqual([]);
    await fair.wait(1.5 * day);
    const again = services.room.host.addGuild({ name: 'Back again', id: fair.group.id });
    const steward = again.addMember({ name: 'Odile', permissions: permissionBits.manageGuild });
    await expect.poll(() => services.room.connection.client.guilds.cache.has(again.id)).toBe(true);
    await fair.wait(0);
    expect(await leftAt(services.room.store, again.id)).toBeUndefined();
    const { text } = await steward.run('/challenge list');
    expect(text).toContain('“Dusk” is taking entries');
    expect(text).toContain('“Fog” is over');
    expect(await challengeDues(again.id)).not.toEqual([]);
    await fair.wait(5 * day);
    expect((await steward.run('/challenge list')).text).toContain('“Dusk” is over');
    expect(await challengeDues(again.id)).toEqual([]);
    expect(fair.faults).toEqual([]);
  });

  test('is not one that is only out of reach for a while', async () => {
    const [channel] = fair.group.channels as [Channel];
    await open(channel);
    await fair.wait(0);
    services.room.host.dispatch('GUILD_DELETE', { id: fair.group.id, unavailable: true }, fair.group.id);
    await fair.wait(2 * day);
    expect(await challengeDues(fair.group.id)).not.toEqual([]);
    expect(await leftAt(services.room.store, fair.group.id)).toBeUndefined();
  });
});
