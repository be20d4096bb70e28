import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openRoom } from '../loopback/room.ts';

let room: Awaited<ReturnType<typeof openRoom>>;
beforeAll(async () => {
  room = await openRoom({ whole: true, host: { acknowledgeWithinMs: 20_000 } });
  await room.member.run('/shelf add', {
    item: 'Evening sky',
    amount: '40 g',
    colourant: 'ultramarine blue',
  });
});
afterAll(() => room[Symbol.asyncDispose]());

const named = [
  ['/dose', { colourant: 'evening sky', portion: '2 cups' }],
  ['/dose', { colourant: 'gold mica', 'with-1': 'Evening sky pastel', portion: '2 cups' }],
  ['/preview', { mix: 'gold mica pastel + evening sky pastel' }],
  ['/match', { target: '#3040a0' }],
  ['/colourant check', { item: 'Evening sky' }],
] as const;

describe('an answer that names a jar of the asker’s', { timeout: 60_000 }, () => {
  test.each(named)('%s %o is shown to them alone', async (command, options) => {
    const answer = await room.member.run(command, options);
    expect(answer.ephemeral).toBe(true);
    expect(answer.text).toContain('Evening sky');
  });

  test('is shown to the group once they say so, and no longer when they take it back', async () => {
    await room.member.run('/prefer', { jars: 'shown' });
    expect((await room.member.run('/dose', named[0][1])).ephemeral).toBe(false);
    await room.member.run('/prefer', { jars: 'private' });
    expect((await room.member.run('/dose', named[0][1])).ephemeral).toBe(true);
  });

  test.each([
    ['/dose', { colourant: 'ultramarine blue', portion: '2 cups' }],
    ['/preview', { mix: 'ultramarine blue pastel' }],
    ['/match', { target: '#3040a0', from: 'catalogue' }],
  ] as const)('%s %o names none and is for the group', async (command, options) => {
    const answer = await room.member.run(command, options);
    expect(answer.ephemeral).toBe(false);
    expect(answer.text).not.toContain('Evening sky');
  });

  test('a report to the group calls the colour by its own name', async () => {
    const told = await room.member.run('/colourant report', {
      item: 'Evening sky',
      result: 'held',
      process: 'ambient',
    });
    expect(told.ephemeral).toBe(false);
    expect(told.text).not.toContain('Evening sky');
    expect(told.text.toLowerCase()).toContain('ultramarine blue');
  });
});
