import { pino } from 'pino';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Conversation } from '../../../src/conversation/conversation.ts';
import { seal } from '../../../src/conversation/follow-ups/follow.ts';
import { connect } from '../../../src/discord/client.ts';
import { FINDING_IDS, FINDINGS } from '../../../src/engine/flaws/findings.ts';
import type { MessageView } from '../../../src/loopback/index.ts';
import { openRoom, registry } from '../../loopback/room.ts';
import { sharedWorkers } from '../../workers/shared.ts';
import { barPhoto } from './photos.ts';

let room: Awaited<ReturnType<typeof openRoom>>;

beforeAll(async () => {
  room = await openRoom({ whole: true, host: { attachmentSizeLimit: 30 * 1024 * 1024 } });
});

afterAll(() => room[Symbol.asyncDispose]());

const words = (text: string) => room.member.run('/diagnose', { words: text });

const photo = (bytes: Uint8Array, more: Record<string, string> = {}) =>
  room.member.run('/diagnose', { photo: { name: 'bar.jpg', bytes }, ...more });

const control = (message: MessageView, label: string | RegExp) => {
  const found = message.controls.find(one =>
    typeof label === 'string' ? one.label === label : label.test(one.label),
  );
  if (!found?.customId)
    throw new Error(`no ${String(label)} among ${message.controls.map(one => one.label).join(', ')}`);
  return { id: found.customId, options: found.options };
};

const press = (message: MessageView, label: string, who = room.member) =>
  who.press(message, control(message, label).id);

const choose = (message: MessageView, label: RegExp, value: string, who = room.member) =>
  who.choose(message, control(message, label).id, [value]);

const first = (message: MessageView) => message.text.split('\n')[0];
const question = (message: MessageView) => /Question (\d) of 5: (.*\?)/.exec(message.text);

describe('the questions', () => {
  test('each answer updates the same message, and a double press counts once', async () => {
    const asked = await words('white spots in my bar');
    const [, at, text] = question(asked) ?? [];
    expect(at).toBe('1');
    const next = await press(asked, 'No');
    expect(next.id).toBe(asked.id);
    expect(question(next)?.[1]).toBe('2');
    expect(next.text).toContain(`${text} No.`);
    room.host.redeliver(next.interactionId ?? '');
    const both = await words('white spots in my bar');
    await Promise.all([press(both, 'No'), press(both, 'No')]);
    expect(question(room.host.latest(both) ?? both)?.[1]).toBe('2');
    expect(question(room.host.latest(asked) ?? asked)?.[1]).toBe('2');
  });

  test('are at most five, none asked twice, and end', async () => {
    let message = await words('something is odd with my bar, white spots');
    const seen: string[] = [];
    for (let round = 0; round < 8; round += 1) {
      const [, , text] = question(message) ?? [];
      if (text === undefined) break;
      seen.push(text);
      message = await press(message, 'I don’t know');
    }
    expect(seen.length).toBe(5);
    expect(new Set(seen).size).toBe(5);
    expect(message.controls.map(({ label }) => label)).not.toContain('Yes');
  });

  /** Texts of a case as its questions are answered: the first pattern that a question fits says how. */
  async function walked(text: string, replies: readonly (readonly [RegExp, string])[]): Promise<string[]> {
    let message = await words(text);
    const told = [message.text];
    for (let asked = question(message)?.[2]; asked; asked = question(message)?.[2]) {
      const reply = replies.find(([pattern]) => pattern.test(asked ?? ''))![1];
      message = await press(message, reply);
      told.push(message.text);
    }
    return told;
  }
  const TEST = /strip|pH paper|zap/iu;

  test('a strip of 11 is what comes first, whatever else crumbles and whitens the bar', async () => {
    const told = await walked('why is my bar crumbly and white?', [
      [/titanium/u, 'Yes'],
      [TEST, 'Yes'],
      [/./u, 'I don’t know'],
    ]);
    expect(told.at(-1)).toMatch(/^## Don’t use it[.:]/u);
    expect(told.at(-1)?.split('\n')[0]).toMatch(/lye/u);
  });

  test('that it is not to be used stands until a strip or a tongue has told', async () => {
    const told = await walked('why is my bar crumbly and white?', [
      [/titanium/u, 'Yes'],
      [TEST, 'I don’t know'],
      [/./u, 'No'],
    ]);
    expect(told.length).toBeGreaterThan(2);
    for (const text of told) {
      expect(text).toContain('Don’t use it');
      expect(text).not.toMatch(/Grate the broken bars|cut with a thin wire/u);
    }
  });

  test('stop when one cause is sure enough', async () => {
    const answer = await words('orange spots on the old bars and they smell rancid like crayons');
    expect(question(answer)).toBeNull();
  });

  test('another member’s press changes nothing', async () => {
    const asked = await words('white spots in my bar');
    const pressed = await press(asked, 'Yes', room.steward);
    expect(pressed.ephemeral).toBe(true);
    expect(pressed.text).toContain('somebody else');
    expect(question(room.host.latest(asked)!)?.[1]).toBe('1');
  });

  test('what was noticed can be taken back', async () => {
    const asked = await words('orange spots in my bar');
    expect(asked.text).toMatch(/rancidity/);
    const without = await choose(asked, /That’s not it/, 'orange-spots');
    expect(without.id).toBe(asked.id);
    expect(without.text).not.toMatch(/orange spots \(your words\)/);
    expect(first(without)).toMatch(/can’t tell yet/);
  });

  test('the marked photo stays while answers replace one another', async () => {
    const asked = await photo(await barPhoto('orange-spots'));
    const next = await press(asked, 'No');
    expect(next.files.map(({ name }) => name)).toEqual(['marked.png']);
  });

  test('go on after a restart', async () => {
    const asked = await words('white spots in my bar');
    await room.connection.close();
    await room.conversation.services.workers.close();
    const { registry, key, onFault } = room.conversation;
    const restarted: Conversation = {
      registry,
      key,
      onFault,
      services: { store: room.conversation.services.store, workers: sharedWorkers() },
    };
    const connection = await connect(
      { token: 'loopback-token', api: room.host.api },
      restarted,
      pino({ level: 'silent' }),
    );
    const next = await press(asked, 'No');
    expect(question(next)?.[1]).toBe('2');
    await connection.close();
    await restarted.services.workers.close();
    room = await openRoom({ whole: true });
  });
});

describe('what it turned out to be', () => {
  test('is kept once a diagnosis, moves the chances a little, and stewards see and forget it', async () => {
    const { member, steward } = room;
    const asked = await words('white spots in my bar');
    expect(asked.text).toMatch(/stearic spots/);
    const told = await choose(asked, /turn out/, 'ricing');
    expect(told.ephemeral).toBe(true);
    expect(told.text).toMatch(/Noted: it was ricing/);
    await choose(asked, /turn out/, 'stearic-spots');
    const learned = await steward.run('/flaws learned');
    expect(learned.text).toMatch(/1 flaw was found out/);
    expect(learned.text).toMatch(/stearic spots: 1\. Chance before any evidence 3\.4 → 4\.3 %/);
    expect((await member.run('/flaws learned')).text).toMatch(/steward/i);
    const reset = await steward.run('/flaws reset');
    expect((await press(reset, 'Yes, forget them', steward)).text).toMatch(/Forgotten: 1/);
    expect((await steward.run('/flaws learned')).text).toMatch(/Nobody here/);
  });

  test('who rinses an eye is asked nothing', async () => {
    const answer = await words('got raw batter in my eye');
    expect(first(answer)).toMatch(/in the eye: rinse with water now/);
    expect(answer.ephemeral).toBe(true);
    expect(question(answer)).toBeNull();
  });

  test('a cause that nobody offered is not taken', async () => {
    const asked = await words('white spots in my bar');
    await expect(choose(asked, /turn out/, 'gremlins')).rejects.toThrow(/gremlins|option/);
  });
});

test('every question’s buttons fit the platform’s ids', () => {
  const reply = registry.followUps.get('diagnose.reply')!;
  const holder = { group: '1'.repeat(20), asker: '2'.repeat(20) };
  for (const finding of FINDING_IDS.filter(id => FINDINGS[id].ask)) {
    const follow = { followUp: reply, args: ['9'.repeat(20), finding, 'unsure'] };
    const sealed = seal(follow, 'diagnose.reply', { key: new Uint8Array(32), holder, at: Date.now() });
    expect(sealed.length).toBeLessThanOrEqual(100);
  }
});

test('no fault of ours on the way', () => expect(room.faults).toEqual([]));
