import { describe, expect, test } from 'vitest';
import { openRoom } from './room.ts';

describe('on the chat platform', () => {
  test('/help is answered to the asker only, in the language of their client', async () => {
    await using room = await openRoom();
    const answer = await room.member.run('/help');
    expect(answer.ephemeral).toBe(true);
    expect(answer.text).toContain('/dose');
    room.member.grant({ locale: 'es-ES' });
    expect((await room.member.run('/help')).text).toContain('Pregúntame');
  });

  test('commands are registered once: a second registration writes nothing', async () => {
    await using room = await openRoom();
    const { register } = await import('../../src/discord/register.ts');
    const { registry } = await import('./room.ts');
    const again = await register(registry, { token: 'loopback-token', api: room.host.api });
    expect(again.written).toEqual([]);
    expect(again.removed).toEqual([]);
    expect(again.kept).toEqual([
      ...registry.commands.map(({ name }) => name),
      ...registry.menuEntries.keys(),
    ]);
  });
});
