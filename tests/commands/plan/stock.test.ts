import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { openRoom } from '../../loopback/room.ts';

let room: Awaited<ReturnType<typeof openRoom>>;

beforeEach(async () => {
  room = await openRoom({ whole: true });
});

afterEach(() => room[Symbol.asyncDispose]());

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

describe('the shelf behind a plan', () => {
  const withJars = {
    oils: 'olive 70%, coconut 30%',
    size: '1000 g oils',
    portions: '2 cups Lagoon; 2 cups Sunrise in oil; rest Lagoon tint',
  };
  const pressed = (answer: Awaited<ReturnType<typeof plan>>, wanted: string) =>
    room.member.press(answer, answer.controls.find(({ label }) => label === wanted)?.customId ?? '');
  const stock = async (item: string) => (await room.member.run('/shelf show', { item })).text;

  beforeEach(async () => {
    const { member } = room;
    await member.run('/shelf add', { item: 'Lagoon', amount: '40 g', colourant: 'ultramarine blue' });
    await member.run('/shelf add', { item: 'Sunrise', amount: '6 g', colourant: 'gold mica' });
  });

  test('is looked at, and one press takes every colour off, once', async () => {
    const { member } = room;
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
    await member.run('/prefer', { jars: 'shown' });
    await member.run('/shelf add', { item: 'Ember', amount: '0.1 g', colourant: 'red iron oxide' });
    const answer = await plan({ ...withJars, portions: '2 cups Ember; rest Lagoon' });
    expect((await pressed(answer, 'My shelf for it')).text).toMatch(/Not enough “Ember”/);
    expect(answer.controls.map(({ label }) => label)).not.toContain('Take all 2 colours off my shelf');
  });

  test('gives all or nothing when it was emptied between the answer and the press', async () => {
    const { member } = room;
    const answer = await plan(withJars);
    const left = /Sunrise: ([\d.]+) g/.exec(await stock('Sunrise'))?.[1];
    await member.run('/shelf use', { item: 'Sunrise', amount: `${left} g` });
    const before = await stock('Lagoon');
    const pressed = await member.press(answer, answer.controls[0]?.customId ?? '');
    expect(pressed.text).toMatch(/Only 0\.00\d g of “Sunrise” left|None of “Sunrise” is left/);
    expect(await stock('Lagoon')).toBe(before);
  });

  test('is nobody else’s: their press takes nothing', async () => {
    // Where the jars may be named the answer is for all to see, and its button still for one.
    await room.member.run('/prefer', { jars: 'shown' });
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

  test('lists the colours for all of it, and what the shelf holds of them', async () => {
    const lesson = { oils: 'olive 70%, coconut 30%', size: '1000 g oils', people: 12, stations: 4 };
    await room.member.run('/shelf add', { item: 'Sunrise', amount: '26 g', colourant: 'gold mica' });
    const answer = await plan({ ...lesson, portions: '2 cups Sunrise; 1 cup ultramarine blue; rest plain' });
    const own = answer.controls.find(({ label }) => label === 'My shelf for it');
    const shown = own ? await room.member.press(answer, own.customId ?? '') : answer;
    const whole = shown.files.find(({ name }) => name === 'answer.txt');
    const text = Buffer.from(whole?.bytes() ?? []).toString() + shown.text;
    // 4 x 1/4 tsp; all of it is bought or taken for the class.
    expect(text).toMatch(/For the whole class[\s\S]*1 tsp ultramarine blue, about \d/);
    expect(text).toMatch(/“Sunrise”: \d+(?:\.\d+)? g needed/);
  });
});
