import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { enterBar, listChallenges } from '../../../src/records/challenges/index.ts';
import { bar, made } from '../../records/challenges/fair.ts';
import { controlOf, day, type Fair, type FairRooms, hour, openFair, photoOf } from './room.ts';

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

describe('a vote', () => {
  test('that comes after the deadline does not count, one made before it does', async () => {
    await open();
    await enter('ana');
    await enter('bea');
    await fair.wait(day);
    await vote('cleo', '2');
    await fair.wait(day - 1);
    await vote('member', '2');
    await fair.wait(1);
    expect((await vote('ana', '2')).text).toContain('No challenge here');
    await fair.wait(6_000);
    const { text } = await fair.member.run('/challenge results');
    expect(text).toContain('2 ballots counted');
    expect(text).toContain('First in “Slate”: “Bar of bea” by Bea');
  });

  test('delivered twice counts once', async () => {
    await open();
    await enter('ana');
    await enter('bea');
    await fair.wait(day);
    const voted = await vote('member', '1');
    fair.host.redeliver(voted.interactionId ?? '');
    await fair.wait(day + 6_000);
    expect((await fair.member.run('/challenge results')).text).toContain('1 ballot counted');
  });

  test('of an account that joined too late is refused with the reason', async () => {
    await open({ 'joined-before': new Date(fair.now() + day).toISOString().slice(0, 10) });
    await enter('ana');
    await fair.wait(day + hour);
    const late = fair.group.addMember({ name: 'Late' });
    expect((await late.run('/challenge vote', { ranking: '1' })).text).toContain(
      'Only members who joined before',
    );
    expect((await vote('member', '1')).text).toContain('Saved');
  });

  test('for one’s own bar alone is refused', async () => {
    await open();
    await enter('ana');
    await enter('bea');
    await fair.wait(day);
    expect((await vote('ana', '1')).text).toContain('Nobody votes for their own bar');
  });

  test('by approval names any bars, by single choice one', async () => {
    await open({ method: 'approval' });
    await enter('ana');
    await enter('bea');
    await enter('cleo');
    await fair.wait(day);
    const ballot = await fair.member.run('/challenge vote');
    const both = await fair.member.choose(ballot, controlOf(ballot, /Every bar you like/), ['1', '3']);
    expect(both.text).toContain('Saved: 2 bars');
    const one = await fair.member.choose(both, controlOf(both, /Every bar you like/), ['2']);
    expect(one.text).toContain('Saved: 1 bar');
    await fair.wait(day + 6_000);
    await open({ title: 'Single', method: 'single' });
    await enter('ana');
    await enter('bea');
    await fair.wait(day);
    expect((await vote('member', '1,2')).text).toContain('Choose one bar; you chose 2.');
  });

  test('among more bars than a menu holds turns pages', async () => {
    await open();
    const scope = { store: rooms.room.conversation.services.store, group: fair.group.id };
    const [challenge] = await listChallenges(scope);
    for (let number = 1; number <= 30; number++)
      await enterBar(
        scope,
        challenge?.id ?? '',
        { bar: bar(`Bar ${number}`, `Maker ${number}`) },
        made(`maker-${number}`, fair.now() + number),
      );
    await fair.wait(day);
    const first = await fair.member.run('/challenge vote');
    expect(first.controls[0]?.options).toHaveLength(25);
    const second = await fair.member.press(first, controlOf(first, 'More bars'));
    expect(second.controls[0]?.options.map(({ value }) => value)).toEqual(['26', '27', '28', '29', '30']);
    const picked = await fair.member.choose(second, controlOf(second, /like best/), ['28']);
    expect(picked.text).toContain('“Bar 28” (bar 28)');
    expect(picked.controls[0]?.label).toBe('Your 2nd place');
  });

  test('is counted aloud only where the terms say so, and even then names no makers', async () => {
    await open({ totals: true });
    await enter('ana');
    await enter('bea');
    await fair.wait(day);
    await vote('member', '2,1');
    const { text } = await fair.member.run('/challenge results');
    expect(text).toContain('“Slate” so far');
    expect(text).toContain('1\\. “Bar of bea”');
    expect(text).not.toMatch(/by (Ana|Bea)/);
  });

  test('below the quorum places nobody', async () => {
    await open({ quorum: 3 });
    await enter('ana');
    await fair.wait(day);
    await vote('member', '1');
    await fair.wait(day + 6_000);
    expect((await fair.member.run('/challenge results')).text).toContain('1 ballot of the 3 needed');
  });
});
