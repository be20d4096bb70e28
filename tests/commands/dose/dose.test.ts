import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openRoom } from '../../loopback/room.ts';

let room: Awaited<ReturnType<typeof openRoom>>;
beforeAll(async () => {
  room = await openRoom({ whole: true });
});
afterAll(() => room[Symbol.asyncDispose]());

const dose = (options: Record<string, string>) => room.member.run('/dose', options);

describe('/dose on the chat platform', () => {
  test('puts the spoons first, in sight of the whole group', async () => {
    const answer = await dose({ colourant: 'ultramarine blue', portion: '2 cups' });
    expect(answer.ephemeral).toBe(false);
    expect(answer.text.split('\n')[0]).toBe('## 1/2 tsp ultramarine blue for 2 cups');
    expect(answer.text).toContain('Gloves and goggles');
  });

  test('answers within one request: nothing is announced that can be said', async () => {
    const before = room.host.requests.length;
    await dose({ colourant: 'CI 77007', portion: '1 cup' }).catch(() => undefined);
    expect(room.host.requests.length - before).toBe(1);
  });

  test.each([
    [
      'an unknown colourant with the nearest names',
      { colourant: 'ultraviolet shine', portion: '1 cup' },
      /Ultramarine/,
    ],
    [
      'a portion without a unit with the units',
      { colourant: 'gold mica', portion: '2' },
      /needs a unit: cups/,
    ],
    ['nothing at all', { colourant: 'gold mica', portion: '0 cups' }, /out of range/],
    ['less than nothing', { colourant: 'gold mica', portion: '-2 cups' }, /out of range/],
    ['a swimming pool', { colourant: 'gold mica', portion: '201 l' }, /out of range/],
    ['a smile', { colourant: '🧼', portion: '1 cup' }, /don't know/],
    ['a metal with the reason', { colourant: 'aluminium powder', portion: '1 cup' }, /hydrogen/],
    ['a neon in water', { colourant: 'neon pink', portion: '1 cup', carrier: 'water' }, /never wets/],
  ])('meets %s', async (_, options, sentence) => {
    const answer = await dose(options as Record<string, string>);
    expect(answer.ephemeral).toBe(true);
    expect(answer.text).toMatch(sentence);
    expect(answer.text.length).toBeLessThan(400);
  });

  test('puts a slip of the finger right and says so', async () => {
    const answer = await dose({ colourant: 'utlramarine blu', portion: '2 cups' });
    expect(answer.text).toMatch(/^## 1\/2 tsp ultramarine blue for 2 cups\n[\s\S]*Read as ultramarine blue/);
  });

  test('asks before it reads a slip that may mean a poison', async () => {
    const answer = await dose({ colourant: 'cinabar', portion: '1 cup' });
    expect(answer.text).not.toContain('Read as');
    expect(answer.ephemeral).toBe(true);
  });

  test('answers first what is the same for everything a name may mean', async () => {
    const answer = await dose({ colourant: 'ultramarine', portion: '2-3 cups' });
    expect(answer.text).toContain('The dose is the same for all of them');
    expect(answer.text).toMatch(/For 3 cups: 1\/2 tsp \+ 1\/4 tsp/);
  });

  test('cautions once of what all that a name may mean have, and by name of what some have', async () => {
    const { text } = await dose({ colourant: 'ultramarine', portion: '2 cups' });
    expect(text).toMatch(/Ultramarine violet holds in some batches and not in others/);
    expect(text).not.toMatch(/Ultramarine holds in some batches/);
    expect(text.match(/differs from lot to lot/g)).toHaveLength(1);
    expect(text).toMatch(/Ultramarine differs from lot to lot/);
  });

  test('shows a member’s own words as words, not as markup or a mention', async () => {
    const answer = await dose({ colourant: '**@everyone** <@1>', portion: '1 cup' });
    expect(answer.text).toContain('\\*\\*@everyone\\*\\* \\<@1>');
    expect(answer.raw.mentions).toEqual([]);
  });

  test('suggests colourants while typing, at most 25', async () => {
    const choices = await room.member.complete('/dose', { colourant: 'ultra' }, 'colourant');
    expect(choices.map(({ name }) => name)).toContain('Ultramarine blue');
    expect((await room.member.complete('/dose', { colourant: '' }, 'colourant')).length).toBeLessThanOrEqual(
      25,
    );
  });

  test('is in Spanish for a Spanish client, spoons included', async () => {
    room.member.grant({ locale: 'es-ES' });
    const answer = await dose({ colourant: 'azul ultramar', portion: '2 tazas' });
    room.member.grant({ locale: 'en-US' });
    expect(answer.text).toContain('1/2 cdta de azul ultramar para 2 tazas');
  });
});

describe('a paste', () => {
  test('is what the headline counts, and is in one liquid', async () => {
    const asked = { colourant: 'ultramarine blue', portion: '2 cups', premix: '1 tsp in 1 Tbsp oil' };
    expect((await dose(asked)).text.split('\n')[0]).toMatch(/tsp of your ultramarine blue paste for 2 cups$/);
    expect((await dose({ ...asked, carrier: 'oil' })).text).toMatch(/paste for 2 cups/);
    expect((await dose({ ...asked, carrier: 'water' })).text).toMatch(/different liquids: keep one/);
    expect((await dose({ ...asked, premix: '30%', carrier: 'water' })).text).toMatch(/paste for 2 cups/);
  });
});

describe('what the law says stands before the spoons', () => {
  // 21 CFR 74.2052 (D&C Black No. 2: eye, lip and face make-up), 73.2190 (henna: hair).
  // Regulation (EC) No 1223/2009 Annex IV lists CI 77266 (carbon black) for all cosmetics, and no henna.
  test('carbon black is dosed only where it may be used, and never called unfit and dosed at once', async () => {
    const { text } = await dose({ colourant: 'carbon black', portion: '1 cup' });
    expect(text.split('\n')[0]).toMatch(
      /^## Not in soap sold in the US, which lists .* only; where EU law holds: .*tsp carbon black for 1 cup/,
    );
    expect(text).not.toContain('Not for soap');
  });

  test('henna, which neither law lists for soap, gets no dose', async () => {
    const { text } = await dose({ colourant: 'henna', portion: '1 cup' });
    expect(text).toMatch(/Not for soap: the US lists .* for hair colour only/);
    expect(text).not.toMatch(/tsp/);
  });

  test.each(['carbon black', 'henna'])('%s is not listed for soap', async colourant => {
    const check = await room.member.run('/colourant check', { item: colourant });
    expect(check.text.split('\n')[0]).toContain('Not for soap');
    expect(check.text).not.toMatch(/full colour/i);
  });

  // 21 CFR 74.2208: D&C Green No. 8 at most 0.01 % of the finished product.
  test('a jar named D&C Green 8 keeps its limit though described as another green', async () => {
    await room.member.run('/shelf add', { item: 'D&C Green 8', amount: '20 g', colourant: 'green 6 dye' });
    const { text } = await dose({ colourant: 'D&C Green 8', portion: '2 cups' });
    expect(text.split('\n')[0]).toMatch(/^## At most 0\.01 % of the bar/);
  });

  test('a jar of CI 59040 is no Red 40', async () => {
    const added = await room.member.run('/shelf add', {
      item: 'Lime',
      amount: '20 g',
      ingredients: 'CI 59040',
    });
    expect(added.text).not.toMatch(/red 40/i);
    expect((await dose({ colourant: 'Lime', portion: '2 cups' })).text).toContain('At most 0.01 %');
  });

  test.each(['CI 45430', 'E127', 'cobalt blue', 'CI 77346'])(
    '%s is barred, asked or on a shelf',
    async name => {
      expect((await dose({ colourant: name, portion: '1 cup' })).text).toContain('does not go into soap');
      expect((await room.member.run('/colourant check', { item: name })).text).toContain(
        'does not go into soap',
      );
      const jar = await room.member.run('/shelf add', {
        item: 'Some jar',
        amount: '9 g',
        ingredients: `Mica, ${name}`,
      });
      expect(jar.text).toContain('does not go into soap');
    },
  );
});

describe('another colour in the same cup', () => {
  test('is told in spoons as well as by strength, before or after its name', async () => {
    const first = async (other: string) =>
      (await dose({ colourant: 'ultramarine blue', portion: '2 cups', 'with-1': other })).text.split('\n')[0];
    const told = '## 1/2 tsp ultramarine blue + 1/4 tsp titanium dioxide for 2 cups';
    expect(await first('titanium dioxide 1/4 tsp')).toBe(told);
    expect(await first('1/4 tsp titanium dioxide')).toBe(told);
    // 1/4 tsp a cup is 1/2 tsp in two.
    expect(await first('titanium dioxide 1/4 tsp per cup')).toContain(
      '+ 1/2 tsp titanium dioxide for 2 cups',
    );
    expect(await first('no such thing 1/4 tsp')).toContain('no such thing');
  });

  test('in spoons stays so many spoons at both ends of a range', async () => {
    const range = {
      colourant: 'ultramarine blue',
      portion: '2-4 cups',
      'with-1': 'titanium dioxide 1/4 tsp',
    };
    const { text } = await dose(range);
    expect(text).toContain('1/2 tsp ultramarine blue + 1/4 tsp titanium dioxide for 2 cups');
    expect(text).toContain('For 4 cups: 1 tsp ultramarine blue + 1/4 tsp titanium dioxide');
    const answer = await dose(range);
    const seen = answer.controls.find(({ label }) => label === 'See the colour');
    expect((await room.member.press(answer, seen?.customId ?? '')).text).toContain('in 2 cups');
  });
});

describe('a jar on the shelf changes the dose', () => {
  test('its dish test picks the carrier, its spoon weight the grams, and one press takes it off once', async () => {
    const { member } = room;
    await member.run('/shelf add', { item: 'Evening sky', amount: '40 g', colourant: 'ultramarine blue' });
    await member.run('/shelf dish-test', { item: 'Evening sky', result: 'oil' });
    await member.run('/shelf weigh', { item: 'Evening sky', amount: '3 g' });
    const answer = await dose({ colourant: 'evening sky', portion: '2 cups' });
    expect(answer.text).toContain('1/2 tsp Evening sky');
    expect(answer.text).toContain('about 1.5 g');
    expect(answer.text).toContain('light oil');
    const [button] = answer.controls;
    expect(button?.label).toBe('Take 1.5 g of “Evening sky” off my shelf');
    const taken = await member.press(answer, button?.customId ?? '');
    expect(taken.text).toContain('38.5 g');
    const again = await member.press(answer, button?.customId ?? '');
    expect(again.text).toContain('38.5 g');
    expect((await member.run('/shelf show', { item: 'Evening sky' })).text).toContain('38.5 g');
  });

  test('another member’s press takes nothing', async () => {
    const { member, steward } = room;
    await member.run('/shelf add', { item: 'Moss', amount: '20 g', colourant: 'chromium oxide green' });
    await member.run('/prefer', { jars: 'shown' });
    const answer = await dose({ colourant: 'Moss', portion: '2 cups' });
    await member.run('/prefer', { jars: 'private' });
    const pressed = await steward.press(answer, answer.controls[0]?.customId ?? '');
    expect(pressed.text).toContain('somebody else');
    expect((await member.run('/shelf show', { item: 'Moss' })).text).toContain('20 g');
  });

  test('a metal is not let onto a shelf', async () => {
    const answer = await room.member.run('/shelf add', { item: 'Aluminium powder', amount: '20 g' });
    expect(answer.text).toMatch(/hydrogen/);
    expect((await room.member.run('/shelf list')).text).not.toContain('Aluminium');
  });
});
