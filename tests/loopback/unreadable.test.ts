import { Events } from 'discord.js';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { action, command, followUp } from '../../src/conversation/command.ts';
import type { Reply } from '../../src/conversation/reply.ts';
import { drawn } from '../walk.ts';
import { png } from './host-bench.ts';
import { openRoom } from './room.ts';

type Json = Record<string, unknown>;
type Step = string | number;

const says = { en: 'test', es: 'prueba' };
const done = (choices: Reply['choices'] = []): Reply => ({
  kind: 'reply',
  headline: 'Done',
  data: {},
  blocks: [],
  cautions: [],
  choices,
});
const picked = followUp({ seenBy: 'asker', args: {}, answer: () => done() });
const items = [{ label: 'A', value: 'a' }];
const probe = command(
  'probe',
  action({
    purpose: says,
    seenBy: 'asker',
    options: {},
    answer: () =>
      done([
        { kind: 'button', label: 'Go', follow: picked.with({}) },
        { kind: 'menu', label: 'One', items, least: 1, most: 1, follow: picked.with({}) },
      ]),
  }),
  { followUps: { picked } },
);

let room: Awaited<ReturnType<typeof openRoom>>;
const carried: { name: string; data: Json }[] = [];
const thrown: unknown[] = [];
const note = (fault: unknown) => thrown.push(fault);
beforeAll(async () => {
  // A thousand broken ones are read before the one that is asked at the end.
  room = await openRoom({ commands: [probe], host: { acknowledgeWithinMs: 240_000 } });
  process.on('unhandledRejection', note);
  process.on('uncaughtException', note);
  const carry = ({ t, d }: { t: string; d: Json }) => {
    if (t === 'INTERACTION_CREATE') carried.push({ name: kindOf(d), data: d });
  };
  room.connection.client.on(Events.Raw, carry);
  const { member } = room;
  await member.run('/diagnose', { words: 'white crumbs', photo: { name: 'bar.png', bytes: png } });
  await member.run('/challenge history', { member });
  await room.steward.run('/challenge settings', { role: room.group.addRole('Stewards') });
  await room.steward.run('/challenge open', { title: 'Dusk', channel: room.group.channels[1]! });
  const abroad = room.host.addGuild({ name: 'Elsewhere', foreign: true }).addMember({ name: 'Ana' });
  await abroad.run('/dose', { colourant: 'gold mica', portion: '2 cups' });
  await member.complete('/dose', { colourant: 'ultra' }, 'colourant');
  const form = await member.openForm('/plan');
  await member.submit(form, Object.fromEntries(form.fields.map(({ customId }) => [customId, 'olive 500 g'])));
  const posted = await member.postMessage('crumbs', [{ name: 'bar.png', bytes: png }]);
  await member.menu('Diagnose this picture', posted);
  const offered = await member.run('/probe');
  const [button, menu] = offered.controls;
  await member.press(offered, button?.customId ?? '');
  await member.choose(offered, menu?.customId ?? '', ['a']);
  room.connection.client.off(Events.Raw, carry);
});
afterAll(async () => {
  await room[Symbol.asyncDispose]();
  process.off('unhandledRejection', note);
  process.off('uncaughtException', note);
});

const kindOf = ({ type, data }: Json): string => {
  const { name, component_type } = data as { name?: string; component_type?: number };
  return `${String(type)} ${name ?? component_type ?? ''}`;
};

/** Every place in a payload at which something can be missing. */
function placesIn(value: unknown, at: readonly Step[] = []): readonly (readonly Step[])[] {
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => [[...at, key], ...placesIn(inner, [...at, key])]);
}

function without(payload: Json, place: readonly Step[], instead?: null): Json {
  const copy = structuredClone(payload);
  let at = copy as Record<Step, unknown>;
  for (const step of place.slice(0, -1)) at = at[step] as Record<Step, unknown>;
  const last = place.at(-1) ?? '';
  if (instead === null) at[last] = null;
  else delete at[last];
  return copy;
}

/** Of the hundred places of a payload so many are broken in the usual run: most that is missing is not missed, and answered in full. */
const MOST_PLACES = 32;

let ids = 0n;
const freshId = () => String(1_600_000_000_000_000_000n + ids++);

describe('an interaction', () => {
  test('of each kind was seen', () => {
    expect(carried.map(({ name }) => name.split(' ')[0])).toEqual(
      expect.arrayContaining(['2', '3', '4', '5']),
    );
    expect(carried.map(({ name }) => name)).toContain('2 Diagnose this picture');
  });

  test('with whatever missing, or of a kind that nobody knows, ends nothing', async () => {
    let sent = 0;
    for (const { name, data } of carried) {
      for (const place of drawn(placesIn(data), MOST_PLACES, name))
        for (const instead of [undefined, null] as const) {
          const broken = without(data, place, instead);
          room.host.dispatch('INTERACTION_CREATE', {
            ...broken,
            ...(place[0] !== 'id' && { id: freshId() }),
          });
          sent += 1;
        }
      for (const type of [0, 7, 99])
        room.host.dispatch('INTERACTION_CREATE', { ...data, id: freshId(), type });
    }
    room.host.dispatch('INTERACTION_CREATE', {});
    expect(sent).toBeGreaterThan(500);
    expect((await room.member.run('/help')).text).toContain('/dose');
    expect(thrown).toEqual([]);
  });
});
