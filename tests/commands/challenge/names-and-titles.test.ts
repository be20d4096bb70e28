import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import {
  asOf,
  cancelChallenge,
  listChallenges,
  openChallenge,
} from '../../../src/records/challenges/index.ts';
import * as say from '../../../src/words/en/index.ts';
import { made } from '../../records/challenges/fair.ts';
import { day, type Fair, type FairRooms, hour, openFair, photoOf } from './room.ts';

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

describe('a bar whose colourants have names of their own', () => {
  test('enters where any colourants are allowed, by the names it is given', async () => {
    await open();
    expect((await enter('ana', { colourants: "grandma's pink, titanium dioxide" })).text).toContain('Bar 1');
    await fair.wait(2 * day + 6_000);
    const closed = await fair.steward.run('/challenge export');
    const csv = closed.files.find(({ name }) => name === 'challenge.csv')?.bytes();
    expect(new TextDecoder().decode(csv)).toContain("grandma's pink; Titanium dioxide");
  });

  test('is asked what they are where a rule hangs on it', async () => {
    await open({ rule: 'own-shelf' });
    const refused = await enter('ana', { colourants: "grandma's pink" });
    expect(refused.text).toContain("I don't know a colourant “grandma's pink”");
  });
});

describe('two challenges of one title', () => {
  test('do not run at once: the second is refused, capitals and accents or not', async () => {
    await open({ title: 'Twín' });
    const second = await open({ title: 'TWIN' });
    expect(second.text).toBe(say.refusals['challenge-title-taken']({ title: 'TWIN' }));
    expect(second.text).toContain('“TWIN” is running already');
    expect((await fair.member.run('/challenge list')).text).toContain('1 challenge');
  });

  test('are told apart where they were opened at once: the one that takes entries is meant, not the cancelled', async () => {
    await open({ title: 'Twin' });
    const scope = { store: rooms.room.conversation.services.store, group: fair.group.id };
    const [first] = await listChallenges(scope);
    const { terms } = asOf(first!, fair.now());
    const twin = { terms, channel: first!.channel, language: 'en' } as const;
    const { id } = await openChallenge(scope, twin, made('steward', fair.now() + 1));
    await cancelChallenge(scope, id, 'twice', made('steward', fair.now() + 2));
    await fair.wait(hour);
    expect((await enter('ana', { challenge: 'twin' })).text).toContain('is in “Twin”');
    expect((await fair.ana.run('/challenge show', { challenge: 'Twin' })).text).toContain('Bar of ana');
  });

  test('may follow one another', async () => {
    await open({ title: 'Twin' });
    await fair.steward.run('/challenge cancel', { challenge: 'Twin', reason: 'too soon' });
    await fair.wait(hour);
    expect((await open({ title: 'Twin' })).text).toContain('“Twin” is opened');
  });
});

describe('a bar that was taken out', () => {
  test('is told to its maker, with the reason, wherever they look for it; to nobody else', async () => {
    await open();
    await enter('ana');
    await fair.steward.run('/challenge disqualify', { entry: 1, reason: 'a copy' });
    const told = 'Your bar “Bar of ana” was taken out by a steward: a copy.';
    expect(say.refusals['challenge-bar-taken-out']({ title: 'Bar of ana', reason: 'a copy' })).toContain(
      told,
    );
    expect((await fair.ana.run('/challenge show')).text).toContain(told);
    expect((await enter('ana')).text).toContain(told);
    expect((await fair.ana.run('/challenge replace', { title: 'Anew' })).text).toContain(told);
    expect((await fair.ana.run('/challenge withdraw')).text).toContain(told);
    expect((await fair.bea.run('/challenge show')).text).not.toContain('taken out');
    expect((await enter('bea')).text).toContain('Bar 2');
  });
});
