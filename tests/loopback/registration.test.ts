import { describe, expect, test } from 'vitest';
import { register } from '../../src/discord/register.ts';
import { openJudgedHost } from './judged-host.ts';
import { openRoom, registry } from './room.ts';

const token = 'loopback-token';
const all = [...registry.commands.map(({ name }) => name), ...registry.menuEntries.keys()];

describe('registering', () => {
  test('for one group writes what a group’s commands may say, and the second time nothing', async () => {
    await using host = await openJudgedHost();
    const { id: guild } = host.addGuild({ name: 'Sunday soapers' });
    const first = await register(registry, { token, api: host.api, guild });
    expect(first).toMatchObject({ written: all, removed: [], kept: [], clearedIn: [], doubled: [] });
    expect(host.commands(guild)).toHaveLength(all.length);
    expect(host.commands()).toEqual([]);
    const second = await register(registry, { token, api: host.api, guild });
    expect(second).toMatchObject({ written: [], removed: [], kept: all });
  });

  test('everywhere, and the second time writes nothing', async () => {
    await using host = await openJudgedHost();
    expect((await register(registry, { token, api: host.api })).written).toEqual(all);
    expect(await register(registry, { token, api: host.api })).toMatchObject({ written: [], kept: all });
  });

  test('everywhere clears the copies in groups, and leaves what is not ours there', async () => {
    await using host = await openJudgedHost();
    const { id: guild } = host.addGuild({ name: 'Sunday soapers' });
    host.addGuild({ name: 'Monday soapers' });
    await register(registry, { token, api: host.api, guild });
    await fetch(`${host.api}/v10/applications/${host.applicationId}/guilds/${guild}/commands`, {
      method: 'POST',
      headers: { authorization: `Bot ${token}`, 'content-type': 'application/json' },
      body: JSON.stringify({ name: 'theirs', description: 'Theirs' }),
    });
    expect((await register(registry, { token, api: host.api })).clearedIn).toEqual(['Sunday soapers']);
    expect(host.commands(guild).map(({ name }) => name)).toEqual(['theirs']);
  });

  test('for one group names what would show twice there', async () => {
    await using host = await openJudgedHost();
    const { id: guild } = host.addGuild({ name: 'Sunday soapers' });
    await register(registry, { token, api: host.api });
    expect((await register(registry, { token, api: host.api, guild })).doubled).toEqual(all);
  });

  test('tells a changed description, choice and length from what stands, and nothing else', async () => {
    await using host = await openJudgedHost();
    await register(registry, { token, api: host.api });
    const [first] = registry.commands;
    if (!first) throw new Error('no commands');
    const changed = { ...first, purpose: { ...first.purpose, en: 'Changed' } };
    const again = { ...registry, commands: [changed, ...registry.commands.slice(1)] };
    expect((await register(again, { token, api: host.api })).written).toEqual([first.name]);
    const onlySpanish = { ...first, purpose: { en: 'Changed', es: 'Cambiado' } };
    const translated = { ...registry, commands: [onlySpanish, ...registry.commands.slice(1)] };
    expect((await register(translated, { token, api: host.api })).written).toEqual([first.name]);
  });

  test('gives the address at which a group lets us in, with no more than we use', async () => {
    await using host = await openJudgedHost();
    const invite = new URL((await register(registry, { token, api: host.api })).invite);
    expect(invite.origin).toBe('https://discord.com');
    expect(invite.searchParams.get('client_id')).toBe(host.applicationId);
    expect(invite.searchParams.get('scope')).toBe('bot applications.commands');
    // View Channel 10, Send Messages 11, Attach Files 15, Create Public Threads 35, Send in Threads 38, Create
    // Events 44. Source: platform documentation, Topics > Permissions > Bitwise Permission Flags.
    const bits = [10n, 11n, 15n, 35n, 38n, 44n].reduce((sum, bit) => sum | (1n << bit), 0n);
    expect(BigInt(invite.searchParams.get('permissions') ?? 0)).toBe(bits);
  });
});

const away = new Set([
  'first-aid',
  'dose',
  'preview',
  'match',
  'plan',
  'diagnose',
  'shelf',
  'colourant',
  'batch',
]);

describe('what a member installs for themselves', () => {
  test('is what needs no group, and is declared so; everything else belongs to groups', () => {
    const named = (name: string) => (name === 'Diagnose this picture' ? 'diagnose' : name);
    for (const { name } of registry.commands)
      expect([name, away.has(named(name))]).toEqual([name, isAway(name)]);
  });

  const isAway = (name: string) => {
    const { does } = registry.commands.find(one => one.name === name) ?? {};
    if (!does) return false;
    return typeof does.take === 'function'
      ? (does as { anywhere: boolean }).anywhere
      : Object.values(does as Record<string, { anywhere: boolean }>).some(({ anywhere }) => anywhere);
  };

  test('answers privately in a group we are not in, and keeps out of that group’s records', async () => {
    await using room = await openRoom();
    const foreign = room.host.addGuild({ name: 'Elsewhere', foreign: true });
    const guest = foreign.addMember({ name: 'Ana' });
    const dose = await guest.run('/dose', { colourant: 'ultramarine blue', portion: '2 cups' });
    expect(dose.ephemeral).toBe(true);
    expect(dose.text).toContain('tsp');
    await guest.run('/shelf add', { item: 'Moss', amount: '20 g', colourant: 'chromium oxide green' });
    expect((await guest.run('/shelf list')).text).toContain('Moss');
    const inGroup = await room.store.range(`group-shelf/${foreign.id}/`, `group-shelf/${foreign.id}0`, 9);
    expect(inGroup).toEqual([]);
    // Answered to everybody in groups.
    expect((await guest.run('/preview', { mix: '1 tsp ultramarine blue' })).ephemeral).toBe(true);
    expect((await guest.run('/colourant evidence')).text).toContain('Here only you brought me along');
    const help = await guest.run('/first-aid', { what: 'lye-eye' });
    expect(help.ephemeral).toBe(true);
    expect(help.text).toContain('Lye or raw soap in the eye');
    await expect(guest.run('/challenge list')).rejects.toThrow('is not offered here');
    const between = await guest.run('/shelf list', {}, { context: 'elsewhere' });
    expect([between.ephemeral, between.text.includes('Moss')]).toEqual([true, true]);
    expect(room.faults).toEqual([]);
  });

  test('in a group that let us in is that group’s, as ever', async () => {
    await using room = await openRoom();
    await room.member.run('/shelf add', { item: 'Moss', amount: '20 g', colourant: 'chromium oxide green' });
    const { id } = room.group;
    expect(await room.store.range(`group-shelf/${id}/`, `group-shelf/${id}0`, 9)).toHaveLength(1);
  });
});
