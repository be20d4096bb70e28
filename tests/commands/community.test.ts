import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import * as keys from '../../src/records/keys.ts';
import { erase } from '../../src/records/privacy/erase.ts';
import { everything, put } from '../../src/records/store.ts';
import { type FairRooms, openFair } from './challenge/room.ts';

let fair: FairRooms;
beforeAll(async () => {
  fair = await openFair();
});
afterAll(() => fair[Symbol.asyncDispose]());

describe('/swap', () => {
  test('shows only what was offered, while it is there, and no longer once taken back', async () => {
    const { member, ana } = fair.group();
    for (const item of ['Dusk', 'Secret'])
      await member.run('/shelf add', { item, amount: '40 g', colourant: 'ultramarine violet' });
    const seen = async () => (await ana.run('/swap list')).text;
    expect(await seen()).toContain('Nobody offers a jar');
    const offered = await member.run('/swap offer', { item: 'Dusk', for: 'a green' });
    expect(offered.ephemeral).toBe(false);
    expect(offered.text).toContain('Bram offers “Dusk” for a green');
    expect(await seen()).toContain('“Dusk” (Ultramarine violet), 40 g, by Bram, for a green');
    expect(await seen()).not.toContain('Secret');
    await member.run('/swap withdraw', { item: 'Dusk' });
    expect(await seen()).toContain('Nobody offers a jar');
    await member.run('/swap offer', { item: 'Dusk' });
    await member.run('/shelf remove', { item: 'Dusk' });
    expect(await seen()).toContain('Nobody offers a jar');
  });

  test('nobody offers what is not theirs, nor takes back what another offers', async () => {
    const { member, ana } = fair.group();
    await member.run('/shelf add', { item: 'Tarn', amount: '40 g', colourant: 'ultramarine blue' });
    await member.run('/swap offer', { item: 'Tarn' });
    expect((await ana.run('/swap offer', { item: 'Tarn' })).text).toContain('not on your shelf');
    expect((await ana.run('/swap withdraw', { item: 'Tarn' })).text).toContain('not on your shelf');
    expect((await ana.run('/swap list')).text).toContain('“Tarn”');
  });
});

describe('two at once', () => {
  test('offer jars of one name: both are listed, and each takes back only their own', async () => {
    const { member, ana, bea } = fair.group();
    for (const one of [member, ana])
      await one.run('/shelf add', { item: 'Fern', amount: '20 g', colourant: 'chromium oxide green' });
    await Promise.all([member, ana].map(one => one.run('/swap offer', { item: 'Fern' })));
    const offers = async () => (await bea.run('/swap list')).text.match(/“Fern”/g)?.length ?? 0;
    expect(await offers()).toBe(2);
    await Promise.all([1, 2].map(() => ana.run('/swap withdraw', { item: 'Fern' })));
    expect(await offers()).toBe(1);
    expect((await bea.run('/swap list')).text).toContain('by Bram');
    expect(fair.room.faults).toEqual([]);
  });

  test('vote, one of them twice: each counts once, and two stewards settle on one palette', async () => {
    const { member, ana, bea, cleo, steward } = fair.group();
    await ana.run('/season propose', { title: 'Lagoon', colours: 'teal, #4b3f9e' });
    await bea.run('/season propose', { title: 'Embers', colours: '#aa2211, #ee9933' });
    await Promise.all([
      ...[member, ana, cleo].map(one => one.run('/season vote', { palette: 'Lagoon' })),
      cleo.run('/season vote', { palette: 'Lagoon' }),
      bea.run('/season vote', { palette: 'Embers' }),
    ]);
    expect((await member.run('/season show')).text).toMatch(/“Lagoon”: .*; 3 votes\n.*“Embers”: .*; 1 vote/);
    const settled = await Promise.all([1, 2].map(() => steward.run('/season settle')));
    expect(settled.some(({ text }) => text.includes('with 3 votes, “Lagoon”'))).toBe(true);
    for (const { text } of settled) expect(text).toMatch(/with 3 votes, “Lagoon”|Nothing is put forward/);
    expect((await member.run('/season show')).text).toContain('“Lagoon”');
    expect(fair.room.faults).toEqual([]);
  });
});

describe('/season', () => {
  test('is put forward, voted on and settled by a steward', async () => {
    const { member, ana, bea, cleo, steward } = fair.group();
    expect((await member.run('/season show')).text).toContain('No palette is settled yet');
    await ana.run('/season propose', { title: 'Lagoon', colours: 'teal, #4b3f9e, old gold' });
    await bea.run('/season propose', { title: 'Embers', colours: '#aa2211, #ee9933' });
    for (const voter of [member, ana]) await voter.run('/season vote', { palette: 'embers' });
    await cleo.run('/season vote', { palette: 'Lagoon' });
    await ana.run('/season vote', { palette: 'lagoon' });
    expect((await member.run('/season show')).text).toMatch(/“Lagoon”: .*; 2 votes\n.*“Embers”: .*; 1 vote/);
    expect((await member.run('/season settle')).text).toContain('steward');
    const settled = await steward.run('/season settle');
    expect(settled.text).toContain('The season’s palette, with 2 votes, “Lagoon”');
    expect(settled.files).toHaveLength(1);
    expect((await bea.run('/season show')).text).toContain('“Lagoon”');
    expect((await bea.run('/season vote', { palette: 'Embers' })).text).toContain('Nothing is put forward');
  });

  test('a tie is not settled by chance, and a palette put forward anew begins without votes', async () => {
    const { ana, bea, cleo, steward } = fair.group();
    await ana.run('/season propose', { title: 'One', colours: '#112233, #445566' });
    await bea.run('/season propose', { title: 'Two', colours: '#aa2211, #ee9933' });
    expect((await steward.run('/season settle')).text).toContain('have as many votes');
    await cleo.run('/season vote', { palette: 'One' });
    await ana.run('/season propose', { title: 'One anew', colours: '#112233, #445577' });
    expect((await steward.run('/season settle')).text).toContain('have as many votes');
    expect(
      (await bea.run('/season propose', { title: 'one ANEW', colours: '#000000, #ffffff' })).text,
    ).toContain('put forward already');
  });

  test.each([
    [{ title: 'One colour', colours: 'teal' }, /2 to 6 colours/],
    [{ title: 'Many', colours: 'red, blue, green, teal, pink, black, white' }, /2 to 6 colours/],
    [{ title: 'None', colours: 'zzqx, qqzx' }, /colour/],
    [{ title: '\u200b', colours: 'teal, red' }, /A name needs/],
  ])('meets %o', async (options, sentence) => {
    const { member } = fair.group();
    expect((await member.run('/season propose', options)).text).toMatch(sentence);
  });

  test('what is kept of a member is erased', async () => {
    const { ana, bea, member } = fair.group();
    await ana.run('/season propose', { title: 'Gone', colours: '#112233, #445566' });
    await bea.run('/season vote', { palette: 'Gone' });
    await member.run('/shelf add', { item: 'Dusk', amount: '40 g', colourant: 'ultramarine violet' });
    await member.run('/swap offer', { item: 'Dusk' });
    for (const one of [ana, member]) await erase(fair.room.store, one.id);
    const left = JSON.stringify(await everything(fair.room.store, { from: 's', to: 't' }));
    expect(left).not.toContain(ana.id);
    expect(left).not.toContain(member.id);
    expect(left).toContain(bea.id);
  });
});

describe('/challenge recipe', () => {
  test('gives the group the recipe of a bar that won, by its maker alone', async () => {
    const { member, ana, bea, group } = fair.group();
    const plan = { oils: 'coconut 30%, olive 70%', size: '500 g oils', portions: 'rest plain' };
    await member.run('/plan', { ...plan, 'save-as': 'Winner' });
    expect((await member.run('/challenge recipe', { recipe: 'Winner' })).text).toContain(
      'No bar of yours came first',
    );
    const placed = (who: string, place: number) =>
      put(keys.placing(group.id, who, '77', `entry-${place}`), {
        v: 1,
        challenge: '77',
        title: 'Dusk over the lagoon',
        entry: `entry-${place}`,
        bar: 'Evening bar',
        place,
        of: 2,
        closedAt: 1,
      });
    await fair.room.store.commit([placed(member.id, 1), placed(ana.id, 2)]);
    expect((await ana.run('/challenge recipe', { recipe: 'Winner' })).text).toContain(
      'No bar of yours came first',
    );
    const given = await member.run('/challenge recipe', {
      recipe: 'Winner',
      challenge: 'dusk over the lagoon',
    });
    expect(given.ephemeral).toBe(false);
    expect(given.text).toContain('The recipe of “Evening bar”, first in “Dusk over the lagoon”');
    expect((await ana.run('/recipe copy', { recipe: 'Winner' })).text).toContain('“Winner” is yours now');
    // Given twice at once it is there once; and what is not one's own is nobody's to give.
    const again = { recipe: 'Winner', challenge: 'dusk over the lagoon' };
    await Promise.all([1, 2].map(() => member.run('/challenge recipe', again)));
    expect((await bea.run('/recipe copy', { recipe: 'Winner' })).text).toContain('“Winner” is yours now');
    await bea.run('/plan', { ...plan, 'save-as': 'Hers alone' });
    expect((await member.run('/challenge recipe', { recipe: 'Hers alone' })).text).not.toContain(
      'The recipe of',
    );
    expect(fair.room.faults).toEqual([]);
  });
});
