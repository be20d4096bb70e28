import { expect, test } from 'vitest';
import { duesBy } from '../../../src/records/dues/dues.ts';
import { openStore } from '../../../src/records/open.ts';
import type { Store } from '../../../src/records/store.ts';
import { refusals } from '../../../src/words/en/index.ts';
import { openRoom } from '../../loopback/room.ts';
import { PATIENT } from '../../records/patience.ts';

test('what is kept can be seen, taken along and erased, by its owner alone', async () => {
  await using room = await openRoom({ whole: true, host: { acknowledgeWithinMs: 20_000 } });
  const { member, steward, group, conversation, host } = room;
  await member.run('/shelf add', { item: 'Evening sky', amount: '40 g', colourant: 'ultramarine blue' });
  await steward.run('/shelf add', { item: 'Moss', amount: '5 g' });

  const shown = await member.run('/privacy show');
  expect(shown.ephemeral).toBe(true);
  expect(shown.text).toMatch(/I keep \d+ notes of you/);
  expect(shown.text).toContain('Your shelf: 1.');
  expect(shown.text).toContain('Your preferences: 1.');
  expect(shown.text).toContain('30 days');

  const exported = await member.run('/privacy export');
  expect(exported.ephemeral).toBe(true);
  const [file] = exported.files;
  const about = JSON.parse(Buffer.from(file!.bytes()).toString('utf8'));
  expect(about.member).toBe(member.id);
  expect(JSON.stringify(about)).toContain('Evening sky');
  expect(JSON.stringify(about)).not.toContain('Moss');

  const asked = await member.run('/privacy erase', { what: 'everything' });
  expect(asked.text).toContain('be undone');
  expect((await member.run('/shelf list')).text).toContain('Evening sky');
  await member.press(asked, asked.controls[0]?.customId ?? '');
  expect((await member.run('/shelf list')).text).not.toContain('Evening sky');
  expect((await member.run('/privacy show')).text).toContain('nothing of you');
  expect((await steward.run('/shelf list')).text).toContain('Moss');

  // The sweep of this group is due by tomorrow, and asks the platform who is still here.
  const tomorrow = new Date(Date.now() + 86_400_000);
  const dues = await duesBy(conversation.services.store, tomorrow);
  expect(dues.map(({ what, group: of }) => [what, of])).toEqual([['privacy-sweep', group.id]]);
  expect(room.faults).toEqual([]);
  expect(host.requests.every(({ status }) => status === undefined || status < 500)).toBe(true);
});

test('looks through everything for one member once at a time, and for others meanwhile', async () => {
  const kept = await openStore('sqlite::memory:', PATIENT);
  const store: Store = {
    patience: PATIENT,
    get: keys => kept.get(keys),
    async range(from, to, limit) {
      await new Promise(resolve => setTimeout(resolve, 10));
      return await kept.range(from, to, limit);
    },
    commit: writes => kept.commit(writes),
    close: () => kept.close(),
  };
  {
    await using room = await openRoom({ store, host: { acknowledgeWithinMs: 20_000 } });
    const { member, steward } = room;
    const told = await Promise.all([
      member.run('/privacy show'),
      member.run('/privacy show'),
      steward.run('/privacy show'),
    ]);
    const refused = told.map(({ text }) => text.includes(refusals['privacy-under-way']({})));
    expect(refused.filter(Boolean)).toHaveLength(1);
    expect(refused[2]).toBe(false);
    expect((await member.run('/privacy show')).text).not.toContain('still looking');
  }
  await kept.close();
});
