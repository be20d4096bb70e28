import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import * as say from '../../../src/words/en/index.ts';
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

describe('/plan as forms', () => {
  const filled = { oils: 'olive 70%, coconut 30%', size: '1000 g oils', water: '2:1', superfat: '6' };

  test('bare, it asks five things and plans what is sent', async () => {
    const form = await room.member.openForm('/plan');
    expect(form.fields.map(({ label }) => label)).toEqual([
      'Oils',
      'Size (needed with percents)',
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
    expect(text).toBe(say.refusals['additive-without-name']({ text: '3%' }));
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
