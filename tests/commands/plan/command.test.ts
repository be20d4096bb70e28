import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openRoom } from '../../loopback/room.ts';

let room: Awaited<ReturnType<typeof openRoom>>;
beforeAll(async () => {
  room = await openRoom({ whole: true });
});
afterAll(() => room[Symbol.asyncDispose]());

const ONE_LINE = {
  oils: 'coconut 30%, olive 50%, palm 20%',
  size: '1000 g oils',
  superfat: 5,
  lye: 'NaOH',
  water: '33% lye',
  portions:
    '2 cups ultramarine blue full in 1 Tbsp olive; 500 ml titanium dioxide medium + gold mica pastel in water; rest plain unscented',
};
const plan = (options: Record<string, string | number> = ONE_LINE) => room.member.run('/plan', options);

describe('/plan in one line', () => {
  test('puts lye and water first, in sight of the whole group', async () => {
    const answer = await plan();
    expect(answer.ephemeral).toBe(false);
    expect(answer.text.split('\n')[0]).toMatch(/^## 143\.1 g NaOH in 2\d\d\.\d g water for 1000 g oils$/);
  });

  test('weights that a size scales are told in the first line, and only those', async () => {
    const first = async (options: Record<string, string>) => (await plan(options)).text.split('\n')[0];
    const oils = 'olive 500 g, coconut 300 g';
    expect(await first({ oils, size: 'mould 25x9x7 cm' })).toMatch(
      /for (\d+(?:\.\d)?) g oils\. Your 800 g of oils were scaled to \1 g to fill the mould\.$/,
    );
    expect(await first({ oils, size: '1000 g oils' })).toMatch(
      /Your 800 g of oils were scaled to 1000 g to make the size you gave\.$/,
    );
    expect(await first({ oils })).toMatch(/for 800 g oils$/);
    expect(await first({ oils, size: '800 g oils' })).toMatch(/for 800 g oils$/);
  });

  test('a loaf that would boil is told on the face, whatever is folded', async () => {
    const { text } = await plan({ ...ONE_LINE, start: '60 C' });
    expect(text).toMatch(/May erupt: the core may reach 1\d\d °C/);
    expect((await plan()).text).not.toMatch(/May erupt/);
  });

  test('echoes the water in all three ways', async () => {
    const { text } = await plan();
    expect(text).toContain('33 % lye = 2.03:1 water to lye = 29.1 % of oils');
  });

  test('tells each portion with its spoons and what it is like inside', async () => {
    const { text } = await plan();
    expect(text).toContain('Ultramarine blue: 473 ml (2 cups)');
    expect(text).toContain('1/2 tsp ultramarine blue');
    expect(text).toMatch(/Superfat 8\.\d %, lye 34\.\d % in there/);
  });

  test('shows every lye caution although the answer is long, and attaches the whole of it', async () => {
    const answer = await plan();
    for (const said of [
      'goggles',
      'never water to lye',
      'children',
      'No aluminium',
      'not glass',
      'local rules',
    ])
      expect(answer.text).toMatch(new RegExp(said, 'i'));
    const whole = answer.files.find(({ name }) => name === 'answer.txt');
    expect(Buffer.from(whole?.bytes() ?? []).toString()).toContain('Pour the colours back into the pot');
  });

  test('comes with a card to print, described for those who cannot see it', async () => {
    const answer = await plan();
    const card = answer.files.find(({ name }) => name === 'batch-card.png');
    expect(JSON.stringify(answer.components)).toContain('"description":"Batch card: 143.1 g NaOH');
    expect([...(card?.bytes() ?? []).slice(1, 4)]).toEqual([...Buffer.from('PNG')]);
    expect(answer.files.map(({ name }) => name)).toContain('timeline.png');
  });

  test('prints on one page: A4, or Letter for whoever weighs in ounces', async () => {
    const { member } = room;
    const print = async () => {
      const answer = await plan();
      const { customId = '' } = answer.controls.find(({ label }) => label === 'Print on one page') ?? {};
      const printed = await member.press(answer, customId);
      const page = printed.files.find(({ name }) => name === 'batch-card.pdf');
      return Buffer.from(page?.bytes() ?? []).toString('latin1');
    };
    const a4 = await print();
    expect(a4.match(/\/MediaBox \[[^\]]*\]/g)).toEqual(['/MediaBox [0 0 595.28 841.89]']);
    await member.run('/prefer', { mass: 'ounces' });
    const letter = await print();
    expect(letter.match(/\/MediaBox \[[^\]]*\]/g)).toEqual(['/MediaBox [0 0 612 792]']);
    await member.run('/prefer', { mass: 'grams' });
  });

  test('plans a soap without colours, and one for a mould in inches', async () => {
    const { text } = await plan({ oils: 'olive 70%, coconut 30%', size: 'mould 10x3.5x2.5 in' });
    expect(text).toMatch(/\d+ ml \(\d/);
    expect(text).not.toContain('You named no mould');
  });

  test('takes oils by weight without a size', async () => {
    expect((await plan({ oils: 'olive 16 oz, coconut 8 oz' })).text).toContain('for 680.4 g oils');
  });

  test('works out both lyes', async () => {
    const { text } = await plan({ oils: 'olive 100%', size: '500 g oils', lye: 'NaOH 90% + KOH 10%' });
    expect(text.split('\n')[0]).toMatch(/g NaOH \+ \d+\.?\d* g KOH in/);
  });

  test('two members at once each get their own', async () => {
    const [mine, theirs] = await Promise.all([
      plan(),
      room.steward.run('/plan', { oils: 'olive 100%', size: '500 g oils' }),
    ]);
    expect(mine.text).toContain('for 1000 g oils');
    expect(theirs.text).toContain('for 500 g oils');
  });

  test('is in Spanish for a Spanish client', async () => {
    room.member.grant({ locale: 'es-ES' });
    const { text } = await plan({
      oils: 'coco 30%, oliva 70%',
      size: '500 g de aceites',
      portions: '1 taza azul ultramar; resto sin color',
    });
    room.member.grant({ locale: 'en-US' });
    expect(text).toMatch(/g de NaOH en .* g de agua para 500 g de aceites/);
    expect(text).toMatch(/1\/4 cdta de azul ultramar/);
    expect(text).toContain('Gafas');
    expect(text).not.toMatch(/\btsp\b|\bsuperfat\b/i);
  });
});

describe('/plan says no in one sentence', () => {
  const base = { oils: 'olive 70%, coconut 30%', size: '1000 g oils' };
  test.each([
    ['a bare percent of water', { ...base, water: '33%' }, /33% of what\?.*33% of oils/],
    ['superfat below nothing', { ...base, superfat: -1 }, /free lye/],
    ['lye over 50 %', { ...base, water: '55% lye' }, /too strong/],
    ['oils that do not add up', { ...base, oils: 'olive 90%' }, /add up to 90 %/],
    ['an oil nobody knows', { ...base, oils: 'moonshine 100%' }, /don’t know the oil/],
    ['a scale too coarse for so little', { ...base, size: '100 g oils', scale: 1 }, /finer scale/],
    ['portions larger than the pot', { ...base, portions: '9 l plain' }, /portions need/],
    ['a metal', { ...base, portions: '1 cup aluminium powder' }, /hydrogen/],
    ['no oils at all', { size: '1000 g oils' }, /Which oils/],
    ['more stations than people', { ...base, people: 2, stations: 5 }, /no more stations than people/],
    ['an unknown recipe', { recipe: 'nowhere' }, /no recipe “nowhere”/],
    ['a smile', { oils: '🧼', size: '🧼' }, /don’t know the oil/],
  ])('to %s', async (_, options, sentence) => {
    const answer = await plan(options as Record<string, string | number>);
    expect(answer.ephemeral).toBe(true);
    expect(answer.text).toMatch(sentence);
    expect(answer.text.length).toBeLessThan(400);
  });

  test('to as much text as the platform lets through, without echoing it', async () => {
    const answer = await plan({ ...base, portions: `1 cup ${'blå '.repeat(370)}` });
    expect(answer.text.length).toBeLessThan(400);
    await expect(plan({ ...base, portions: 'x'.repeat(5000) })).rejects.toThrow(/1500/);
  });
});

describe('/plan as forms', () => {
  const filled = { oils: 'olive 70%, coconut 30%', size: '1000 g oils', water: '2:1', superfat: '6' };

  test('bare, it asks five things and plans what is sent', async () => {
    const form = await room.member.openForm('/plan');
    expect(form.fields.map(({ label }) => label)).toEqual([
      'Oils',
      'Size',
      'Water',
      'Superfat, percent',
      'Portions and colours',
    ]);
    const answer = await room.member.submit(form, { ...filled, portions: '2 cups ultramarine blue; rest' });
    expect(answer.text).toContain('2:1 water to lye');
    expect(answer.text).toContain('Asked: 6 %');
  });

  test('a wrong field costs nothing: one press opens the form again with all that was typed', async () => {
    const { member } = room;
    const refused = await member.submit(await member.openForm('/plan'), { ...filled, water: '33%' });
    expect(refused.text).toMatch(/33% of what/);
    const again = await member.pressForForm(refused, refused.controls[0]?.customId ?? '');
    expect(again.fields.find(({ label }) => label === 'Oils')?.value).toBe(filled.oils);
    const answer = await member.submit(again, { ...filled, water: '33% lye' });
    expect(answer.text).toContain('for 1000 g oils');
  });

  test('more stands behind buttons, and keeps what was planned', async () => {
    const { member } = room;
    const first = await plan();
    const more = first.controls.find(({ label }) => label === 'Lye, scent, extras');
    const form = await member.pressForForm(first, more?.customId ?? '');
    const second = await member.submit(form, {
      lye: 'NaOH 98%',
      additives: 'honey 10 g, citric acid 5 g',
      fragrance: '3%',
    });
    expect(second.text).toContain('for 1000 g oils');
    expect(second.text).toContain('Citric acid');
    const heat = second.controls.find(({ label }) => label === 'Mould, heat, scale');
    const third = await member.submit(await member.pressForForm(second, heat?.customId ?? ''), {
      process: ['fridge'],
      scale: '1',
    });
    expect(third.text.split('\n')[0]).toMatch(/^## \d+ g NaOH in \d+ g water/);
    expect(third.text).toContain('Citric acid');
  });

  test('a field that is emptied takes its word out of the plan', async () => {
    const { member } = room;
    const first = await plan({ ...ONE_LINE, additives: 'honey 10 g', fragrance: '3%', water: '2:1' });
    expect(first.text).toMatch(/Honey/);
    expect(first.text).toMatch(/Fragrance/);
    const press = (label: string, of: typeof first) =>
      member.pressForForm(of, of.controls.find(one => one.label === label)?.customId ?? '');
    const plainer = await member.submit(await press('Lye, scent, extras', first), {
      additives: '',
      fragrance: '',
    });
    expect(plainer.text).not.toMatch(/Honey|Fragrance/);
    const again = await press('Lye, scent, extras', plainer);
    const typed = again.fields.filter(({ label }) => /Additives|Fragrance/.test(label));
    expect(typed.map(({ value }) => value ?? '')).toEqual(['', '']);
    const bare = await member.submit(await press('Change', plainer), { water: '', portions: '' });
    expect(bare.text).not.toMatch(/2:1|ltramarine/);
  });

  test('an amount of nothing is named, with where a scent belongs', async () => {
    const { text } = await plan({ ...ONE_LINE, additives: '3%' });
    expect(text).toBe(
      '“3%” of which additive? Write its name too: “honey 10 g”. Scent goes under Fragrance.',
    );
    expect((await plan({ ...ONE_LINE, additives: 'honey 10 g, 2,5 %' })).text).toContain('“2,5 %” of which');
    expect((await plan({ ...ONE_LINE, additives: 'salt 5%' })).text).toContain('Salt');
  });

  test('a form that says the same again changes nothing of a rescaled recipe', async () => {
    const { member } = room;
    await plan({ ...ONE_LINE, 'save-as': 'Formed' });
    const double = await member.run('/recipe rescale', { recipe: 'Formed', size: '2' });
    const change = double.controls.find(({ label }) => label === 'Change');
    const form = await member.pressForForm(double, change?.customId ?? '');
    const sent = Object.fromEntries(
      form.fields.map(({ customId, value }) => [customId, String(value ?? '')]),
    );
    const answer = await member.submit(form, sent);
    expect(answer.text).toContain('for 2000 g oils');
    expect(answer.text).toContain('946 ml');
  });
});

describe('the shelf behind a plan', () => {
  const withJars = {
    oils: 'olive 70%, coconut 30%',
    size: '1000 g oils',
    portions: '2 cups Lagoon; 2 cups Sunrise in oil; rest Lagoon tint',
  };
  const pressed = (answer: Awaited<ReturnType<typeof plan>>, wanted: string) =>
    room.member.press(answer, answer.controls.find(({ label }) => label === wanted)?.customId ?? '');
  const stock = async (item: string) => (await room.member.run('/shelf show', { item })).text;

  test('is looked at, and one press takes every colour off, once', async () => {
    const { member } = room;
    await member.run('/shelf add', { item: 'Lagoon', amount: '40 g', colourant: 'ultramarine blue' });
    await member.run('/shelf add', { item: 'Sunrise', amount: '12 g', colourant: 'gold mica' });
    const alone = await plan(withJars);
    expect(alone.ephemeral).toBe(true);
    expect(alone.text).toMatch(/“Lagoon”: .* needed, 40 g there/);
    await member.run('/prefer', { jars: 'shown' });
    const answer = await plan(withJars);
    // The jars' names may be known; what stands on a shelf is for its owner alone all the same.
    expect(answer.ephemeral).toBe(false);
    expect(answer.text).not.toContain('40 g there');
    const mine = await pressed(answer, 'My shelf for it');
    expect(mine.ephemeral).toBe(true);
    expect(mine.text).toMatch(/“Lagoon”: .* needed, 40 g there/);
    expect(mine.text).toMatch(/“Sunrise”: .*Low after this/);
    const [take] = answer.controls;
    expect(take?.label).toBe('Take all 2 colours off my shelf');
    const taken = await member.press(answer, take?.customId ?? '');
    expect(taken.text).toMatch(/Taken off your shelf: .* “Lagoon”, .* “Sunrise”/);
    const [lagoon, sunrise] = [await stock('Lagoon'), await stock('Sunrise')];
    expect(lagoon).not.toContain('Lagoon: 40 g');
    const again = await member.press(answer, take?.customId ?? '');
    expect(again.text).toContain('nothing was counted twice');
    expect(await stock('Lagoon')).toBe(lagoon);
    expect(await stock('Sunrise')).toBe(sunrise);
  });

  test('is left alone when one colour does not reach', async () => {
    const { member } = room;
    await member.run('/shelf add', { item: 'Ember', amount: '0.1 g', colourant: 'red iron oxide' });
    const answer = await plan({ ...withJars, portions: '2 cups Ember; rest Lagoon' });
    expect((await pressed(answer, 'My shelf for it')).text).toMatch(/Not enough “Ember”/);
    expect(answer.controls.map(({ label }) => label)).not.toContain('Take all 2 colours off my shelf');
  });

  test('gives all or nothing when it was emptied between the answer and the press', async () => {
    const { member } = room;
    await member.run('/shelf restock', { item: 'Sunrise', amount: '10 g' });
    const answer = await plan(withJars);
    const left = /Sunrise: ([\d.]+) g/.exec(await stock('Sunrise'))?.[1];
    await member.run('/shelf use', { item: 'Sunrise', amount: `${left} g` });
    const before = await stock('Lagoon');
    const pressed = await member.press(answer, answer.controls[0]?.customId ?? '');
    expect(pressed.text).toMatch(/Only 0\.00\d g of “Sunrise” left|None of “Sunrise” is left/);
    expect(await stock('Lagoon')).toBe(before);
  });

  test('is nobody else’s: their press takes nothing', async () => {
    await room.member.run('/shelf restock', { item: 'Sunrise', amount: '20 g' });
    const answer = await plan(withJars);
    const pressed = await room.steward.press(answer, answer.controls[0]?.customId ?? '');
    expect(pressed.text).toContain('somebody else');
  });
});

describe('/plan for a class', () => {
  test('weighs the lye of each station, and hands out a picture', async () => {
    const answer = await plan({
      oils: 'olive 70%, coconut 30%',
      size: '300 g oils',
      people: 10,
      stations: 4,
    });
    expect(answer.text.split('\n')[0]).toMatch(
      /^## 4 stations \(10 people\), at each: 42\.6 g NaOH in 86\.\d g water/,
    );
    const whole = answer.files.find(({ name }) => name === 'answer.txt');
    const text = Buffer.from(whole?.bytes() ?? []).toString() + answer.text;
    expect(text).toContain('never handed out unweighed');
    expect(text).toContain('11 pairs of goggles');
    expect(answer.files.map(({ name }) => name)).toContain('class-handout.png');
  });
});
