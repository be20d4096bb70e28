import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import {
  asOf,
  cancelChallenge,
  enterBar,
  listChallenges,
  openChallenge,
} from '../../../src/records/challenges/index.ts';
import { bar, made } from '../../records/challenges/fair.ts';
import { controlOf, day, type Fair, type FairRooms, hour, instant, openFair, photoOf } from './room.ts';

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

describe('who may', () => {
  test('open, extend, cancel, disqualify, export and set is a steward only', async () => {
    await open();
    await enter('ana');
    const refused = [
      await fair.member.run('/challenge open', { title: 'Mine' }),
      await fair.member.run('/challenge extend', { 'entries-until': 'in 5 days', reason: 'storm' }),
      await fair.member.run('/challenge cancel', { reason: 'storm' }),
      await fair.member.run('/challenge disqualify', { entry: 1, reason: 'bought' }),
      await fair.member.run('/challenge export'),
      await fair.member.run('/challenge settings', { zone: 'Asia/Tokyo' }),
    ];
    expect(new Set(refused.map(({ text }) => text)).size).toBe(1);
    expect(refused[0]?.text).toMatch(/steward/i);
  });

  test('be a steward by a role that the group has set', async () => {
    const role = fair.group.addRole('Keepers');
    const set = await fair.steward.run('/challenge settings', { role, zone: 'America/Chicago' });
    expect(set.text).toContain('Times are in America/Chicago.');
    expect(set.text).toContain(`the role <@&${role.id}>`);
    fair.member.grant({ roles: [role] });
    const opened = await fair.member.run('/challenge open', {
      title: 'By role',
      'entries-until': '2026-12-05 18:00',
    });
    expect(opened.text).toContain('“By role” is opened.');
    // Six hours behind UTC in winter.
    expect(opened.text).toContain(instant(Date.UTC(2026, 11, 6, 0)));
  });
});

describe('a bar', () => {
  test('that breaks the terms is told everything that is wrong with it, at once', async () => {
    await open({ rule: 'one-pigment', 'cure-days': 28, 'made-from': '2026-10-01' });
    const refused = await enter('ana', { colourants: 'ultramarine blue, gold mica', made: '2026-11-30' });
    expect(refused.text).toContain('One pigment only; yours names 2.');
    expect(refused.text).toContain('26 days to go: the bar cures at least 28 days');
    const fine = await enter('ana', { made: '2026-10-20' });
    expect(fine.text).toContain('Bar 1');
  });

  test('“from one’s own shelf” may hold a kind of which its maker keeps a jar, and nothing else', async () => {
    await open({ rule: 'own-shelf' });
    expect((await enter('ana')).text).toContain('not on it: Ultramarine blue');
    await fair.ana.run('/shelf add', { item: 'Evening sky', amount: '40 g', colourant: 'ultramarine blue' });
    expect((await enter('ana', { colourants: 'evening sky' })).text).toContain('Bar 1');
  });

  test('of one pigment is thought of from each jar on the shelf, deep and pale', async () => {
    await open({ rule: 'one-pigment' });
    await fair.wait(0);
    await fair.ana.run('/shelf add', { item: 'Moss', amount: '40 g', colourant: 'chromium oxide green' });
    const card = fair.channel()[0]!;
    const ideas = await fair.ana.press(card, controlOf(card, 'From my shelf'));
    expect(ideas.text).toMatch(/Moss: .*green #[0-9a-f]{6} at the most, .* #[0-9a-f]{6} at a quarter/);
  });

  test('is thought of from the shelf for each colour of the largest palette there may be', async () => {
    const colours = ['#3f6f9f', '#ece4d2', '#7faf6f', '#b14e78', '#f2b95c', '#8a6f4a'];
    await open({ palette: colours.join(', ') });
    await fair.wait(0);
    for (const colourant of ['ultramarine blue', 'titanium dioxide', 'yellow iron oxide'])
      await fair.ana.run('/shelf add', { item: `My ${colourant}`, amount: '40 g', colourant });
    const card = fair.channel()[0]!;
    const ideas = await fair.ana.press(card, controlOf(card, 'From my shelf'));
    expect(ideas.text).toMatch(/can come near [1-6] of 6 colours/);
  });

  test('can be replaced in part and withdrawn while entries are taken, which frees its place', async () => {
    await open({ palette: '#3f6fa8' });
    await enter('ana');
    const replaced = await fair.ana.run('/challenge replace', { title: 'Better' });
    expect(replaced.text).toContain('Bar 1, “Better”');
    expect(replaced.files.map(({ name }) => name)).toEqual(['measured.png']);
    const withdrawn = await fair.ana.press(replaced, controlOf(replaced, 'Withdraw this bar'));
    expect(withdrawn.text).toContain('“Better” is withdrawn');
    expect((await fair.ana.run('/challenge withdraw')).text).toContain('You have no bar');
    expect((await enter('ana')).text).toContain('Bar 2');
  });

  test('of somebody else can be neither replaced nor withdrawn', async () => {
    await open();
    await enter('ana');
    expect((await fair.bea.run('/challenge withdraw', { entry: 1 })).text).toContain('not yours');
    expect((await fair.bea.run('/challenge replace', { entry: 1, title: 'Mine' })).text).toContain(
      'not yours',
    );
  });

  test('is no bar when the file is no photo', async () => {
    await open();
    const refused = await fair.ana.run('/challenge enter', {
      photo: { name: 'bar.jpg', bytes: new TextEncoder().encode('not a photo at all') },
      title: 'Trick',
      colourants: 'ultramarine blue',
    });
    expect(refused.text).toMatch(/picture|photo/i);
    expect((await fair.ana.run('/challenge show')).text).not.toContain('Trick');
  });

  test('without a white sheet has no score, and is told so', async () => {
    await open({ palette: '#3f6fa8', decides: 'colour' });
    const entered = await fair.ana.run('/challenge enter', {
      photo: await photoOf(['#3f6fa8'], 'none'),
      title: 'No paper',
      colourants: 'ultramarine blue',
    });
    expect(entered.text).toContain('No score: the photo shows no white sheet');
  });
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
    expect(second.text).toBe(
      'A challenge “TWIN” is running already: give this one another title, or cancel the other first.',
    );
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
    expect((await fair.ana.run('/challenge show')).text).toContain(told);
    expect((await enter('ana')).text).toContain(told);
    expect((await fair.ana.run('/challenge replace', { title: 'Anew' })).text).toContain(told);
    expect((await fair.ana.run('/challenge withdraw')).text).toContain(told);
    expect((await fair.bea.run('/challenge show')).text).not.toContain('taken out');
    expect((await enter('bea')).text).toContain('Bar 2');
  });
});

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

describe('what a steward does', () => {
  test('is told in the channel and can be read by everybody', async () => {
    await open();
    await enter('ana');
    await enter('bea');
    await fair.steward.run('/challenge extend', {
      'entries-until': 'in 2 days',
      'votes-until': 'in 4 days',
      reason: 'power cut',
    });
    await fair.wait(2 * day);
    await vote('member', '1,2');
    await fair.wait(2 * day + 6_000);
    expect(fair.channel().at(-1)?.text).toContain('First in “Slate”: “Bar of ana” by Ana');
    await fair.steward.run('/challenge disqualify', { entry: 1, reason: 'a bought bar' });
    await fair.wait(0);
    const results = fair.channel().at(-1)?.text ?? '';
    expect(results).toContain('First in “Slate”: “Bar of bea” by Bea');
    expect(results).toContain('a bought bar');
    const audit = (await fair.cleo.run('/challenge audit')).text;
    expect(audit).toContain('power cut');
    expect(audit).toContain('took out 1. “Bar of ana” by Ana: a bought bar');
    expect((await fair.ana.run('/challenge history')).text).toContain('No bar');
  });

  test('cannot move a deadline earlier, nor after it has passed', async () => {
    await open();
    const earlier = await fair.steward.run('/challenge extend', {
      'entries-until': 'in 2 hours',
      reason: 'haste',
    });
    expect(earlier.text).toContain('can only move later');
    await fair.wait(day);
    const passed = await fair.steward.run('/challenge extend', {
      'entries-until': 'in 3 days',
      reason: 'late',
    });
    expect(passed.text).toContain('before it has passed');
  });

  test('calls it off for good: the channel is told, nothing more comes in', async () => {
    await open();
    await fair.wait(0);
    await enter('ana');
    await fair.steward.run('/challenge cancel', { reason: 'the hall is flooded' });
    await fair.wait(0);
    expect(fair.channel().at(-1)?.text).toContain('“Slate” was cancelled: the hall is flooded');
    expect(fair.channel()[0]?.controls).toEqual([]);
    expect((await enter('bea')).text).toContain('No challenge here');
    await fair.wait(3 * day);
    expect(fair.channel().filter(({ text }) => /First in|is over/.test(text))).toEqual([]);
  });
});
