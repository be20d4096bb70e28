import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { colourDifference, type Lab, labOfHex } from '../../../src/engine/colour/spectra/cielab.ts';
import { colourantById } from '../../../src/engine/colourants/catalogue.ts';
import type { MessageView } from '../../../src/loopback/interface.ts';
import { askLine } from '../../../src/terminal/seat.ts';
import { openRoom } from '../../loopback/room.ts';
import { decoded } from '../../pictures/colours-in.ts';
import { photoOf } from '../challenge/room.ts';

let room: Awaited<ReturnType<typeof openRoom>>;
beforeEach(async () => {
  room = await openRoom({ whole: true, draws: true });
  const { member } = room;
  await member.run('/shelf add', { item: 'Evening sky', amount: '40 g', colourant: 'ultramarine violet' });
  await member.run('/shelf add', { item: 'Deep sea', amount: '30 g', colourant: 'ultramarine blue' });
  await member.run('/shelf add', { item: 'Snow', amount: '90 g', colourant: 'titanium dioxide' });
  await member.run('/shelf add', { item: 'Mystery', amount: '10 g' });
});
afterEach(() => room[Symbol.asyncDispose]());

const match = (options: Record<string, string | number>) => room.member.run('/match', options);
const pressed = async (message: MessageView, label: string) => {
  const button = message.controls.find(control => control.label === label);
  return room.member.press(message, button?.customId ?? label);
};

type Matched = {
  target: string;
  from: string;
  reached: boolean;
  recipes: {
    deltaE: number;
    deltaEUnrounded: number;
    doses: { colourant: string; item?: string; spoons: string; grams: number; short: number }[];
    predicted: { hex: string; lab: Lab };
    warnings: { id: string }[];
    fullness: number;
  }[];
};

async function dataOf(line: string, member = room.member.id): Promise<Matched> {
  const seat = { member, group: 'home', language: 'en', manages: false, roles: [] } as const;
  const { answer } = await askLine(line, seat, room.conversation);
  return ('data' in answer ? answer.data : answer) as Matched;
}

describe('/match from a shelf', () => {
  test('gives real spoons for the portion first, how far off, and the stock', async () => {
    const answer = await match({ target: '#8a78b8', portion: '2 cups' });
    expect(answer.text.split('\n')[0]).toMatch(
      /^## [\d/]+ tsp.* Evening sky.* for 2 cups: [\w ]+, (?:[\w ]+: |very close, )within \d+$/,
    );
    expect(answer.text).toContain('40 g on your shelf');
    expect(answer.text).toContain('Left out, since I do not know what is in them: Mystery');
  });

  test('shows the wanted colour beside what the recipe gives, each as it is', async () => {
    const answer = await match({ target: '#8a78b8', portion: '2 cups' });
    const [card] = answer.files;
    const picture = await decoded(card?.bytes() ?? new Uint8Array());
    const given = /You would get:\*\* \w+ (?:\w+ )?(#[\da-f]{6})/.exec(answer.text)?.[1] ?? '';
    expect(picture.count('#8a78b8')).toBeGreaterThan(50_000);
    expect(picture.count(given)).toBeGreaterThan(50_000);
    expect(JSON.stringify(answer.raw.components)).toContain('The wanted colour periwinkle #8a78b8 beside');
  });

  test('its data hold the target and every recipe, the nearest first, within the ceilings', async () => {
    const data = await dataOf('/match target:#8a78b8 portion:"2 cups" from:shelf most:3');
    expect(data.target).toBe('#8a78b8');
    expect(data.recipes.length).toBeGreaterThan(0);
    for (const recipe of data.recipes) {
      expect(recipe.deltaEUnrounded).toBeLessThanOrEqual(recipe.deltaE + 1e-9);
      expect(recipe.fullness).toBeLessThanOrEqual(1 + 1e-9);
      expect(recipe.predicted.hex).toMatch(/^#[\da-f]{6}$/);
      expect(colourDifference(recipe.predicted.lab, labOfHex('#8a78b8'))).toBeCloseTo(recipe.deltaE, 1);
      expect(Array.isArray(recipe.warnings)).toBe(true);
      for (const { spoons } of recipe.doses)
        expect(spoons).toMatch(/^(?:(?:\d x )?[\d/]+ T?b?t?s?p( \+ )?)+$/);
    }
    const off = data.recipes.map(({ deltaE }) => Math.round(deltaE * 10));
    expect(off).toEqual(off.toSorted((a, b) => a - b));
  });

  test('says what is out of reach, why, and the nearest', async () => {
    const answer = await match({ target: 'red' });
    expect(answer.text).toMatch(/^.{0,4}\d.* tsp .* for .*: .*, the nearest I get(?: to .*)? \(off by \d+/mu);
    expect(answer.text).toMatch(/that vivid|that hue/);
  });

  test('names what would bring a colour out of reach nearer, with how it looks before and after', async () => {
    const data = await dataOf('/match target:#b03a3a');
    expect(data.reached).toBe(false);
    const { buy } = data as Matched & { buy?: { ids: string[]; deltaE: number } };
    expect(buy!.deltaE).toBeLessThan(data.recipes[0]!.deltaE - 1);
    for (const id of buy!.ids) expect(colourantById(id)?.alkali.behaviour).toBe('stable');
    const answer = await match({ target: '#b03a3a' });
    const bought = buy!.ids.map(id => colourantById(id)!.names.en);
    for (const name of bought) expect(answer.text.toLowerCase()).toContain(name.toLowerCase());
    expect(answer.text).toMatch(/To come nearer, buy .+: off by [\d.]+/);
    expect(answer.files.map(({ name }) => name)).toContain('to-buy.png');
    expect((await match({ target: '#8a78b8' })).text).not.toContain('To come nearer');
    expect((await match({ target: '#b03a3a', from: 'catalogue' })).text).not.toContain('To come nearer');
  });

  test('one press tells how to wet and blend it, with the spoons of the recipe and the cautions', async () => {
    const answer = await match({ target: '#8a78b8', portion: '2 cups' });
    const spoons = /([\d/]+ tsp(?: \+ [\d/]+ tsp)?) Evening sky/.exec(answer.text)?.[1] ?? 'none';
    const dosed = await pressed(answer, '1: how to dose it');
    expect(dosed.text).toContain(`${spoons} Evening sky`);
    expect(dosed.text).toContain('Gloves and goggles');
  });

  test('takes a recipe off the shelf once, whichever of its buttons is pressed', async () => {
    const { member } = room;
    const answer = await match({ target: '#6f5aa0', portion: '1 cup' });
    const [first] = (await dataOf('/match target:#6f5aa0 portion:"1 cup"')).recipes;
    const violet = first?.doses.find(({ colourant }) => colourant === 'ultramarine-violet');
    const kept = 40_000 - Math.round((violet?.grams ?? 0) * 1000);
    const left = `${Math.round(kept / 10) / 100} g`;
    expect((await pressed(answer, '1: take it off my shelf')).text).toContain(`Evening sky ${left}`);
    expect((await pressed(answer, '1: take it off my shelf')).text).toContain('nothing was counted twice');
    const dosed = await pressed(answer, '1: how to dose it');
    expect((await pressed(dosed, '1: take it off my shelf')).text).toContain('nothing was counted twice');
    expect((await member.run('/shelf show', { item: 'Evening sky' })).text).toContain(left);
  });

  test('is for its owner, until they show one', async () => {
    const answer = await match({ target: '#8a78b8' });
    expect(answer.ephemeral).toBe(true);
    expect((await pressed(answer, '1: how to dose it')).ephemeral).toBe(true);
    const shown = await pressed(answer, 'Show everyone');
    expect(shown.ephemeral).toBe(false);
    expect(shown.text.split('\n')[0]).toBe(answer.text.split('\n')[0]);
    expect(shown.files.map(({ name }) => name)).toContain('match.png');
    expect(shown.text).toContain('Gloves and goggles');
    // What stands on a shelf, and what only its owner could press, is not for the others.
    expect(answer.text).toMatch(/ g on your shelf/);
    expect(shown.text).not.toMatch(/on your shelf|Mystery/);
    const folds = shown.controls.filter(({ label }) => !label.startsWith('▸'));
    expect(folds).toEqual([]);
  });

  test('a jar that would run short is said to, and is not offered to be taken', async () => {
    const { member } = room;
    await member.run('/shelf add', { item: 'Last crumbs', amount: '0.1 g', colourant: 'yellow iron oxide' });
    const answer = await match({ target: '#c79a3a', portion: '4 cups', most: 1 });
    expect(answer.text).toMatch(/Only 0\.1 g on your shelf/);
    expect(answer.controls.map(({ label }) => label)).not.toContain('1: take it off my shelf');
  });
});

describe('/match beyond a shelf', () => {
  test('stands in with the catalogue where nothing is on the shelf, and says so', async () => {
    const answer = await room.steward.run('/match', { target: 'teal', most: 2 });
    expect(answer.text).toContain('from the catalogue');
    expect(answer.controls.map(({ label }) => label)).not.toContain('1: take it off my shelf');
  });

  test('offers no dye or plant to be bought, nothing that lye is known to change', async () => {
    const { recipes, from } = await dataOf('/match target:#c8842a from:catalogue most:2', 'nobody');
    expect(from).toBe('catalogue');
    const { colourantById } = await import('../../../src/engine/colourants/catalogue.ts');
    for (const { colourant } of recipes.flatMap(({ doses }) => doses)) {
      const found = colourantById(colourant);
      expect(['dye', 'botanical']).not.toContain(found?.kind);
      expect(['stable', 'conditional']).toContain(found?.alkali.behaviour);
    }
  });

  test('sends out for nothing that a law does not list, or that fades', async () => {
    for (const target of ['#8977b3', '#ff4fa0', 'lavender']) {
      const { recipes } = await dataOf(`/match target:"${target}" from:catalogue`, 'nobody');
      for (const { colourant } of recipes.flatMap(({ doses }) => doses)) {
        const { kind, light } = colourantById(colourant)!;
        expect(kind).not.toBe('neon');
        expect(light).toBe('holds');
      }
    }
  });

  test('names ultramarine violet for a violet that nothing surer reaches, with its caution', async () => {
    await dataOf('/shelf add item:"ultramarine blue" amount:"20 g"', 'sol');
    await dataOf('/shelf add item:"titanium dioxide" amount:"20 g"', 'sol');
    const seat = { member: 'sol', group: 'home', language: 'en', manages: false, roles: [] } as const;
    const { answer } = await askLine('/match target:"#8977b3" portion:"2 cups"', seat, room.conversation);
    const { buy } = (answer as { data: { buy: { ids: string[]; deltaE: number } } }).data;
    expect(buy.ids).toContain('ultramarine-violet');
    expect(buy.deltaE).toBeLessThan(3);
    const told = JSON.stringify(answer);
    expect(told).toContain('Ultramarine violet holds in some batches and not in others');
    // One answer to one question: no brown or black for a violet, no second way to other jars.
    expect(told).not.toMatch(/brown or black|from:catalogue/);
  });

  test('a recipe that all see can be gone on with by all, each in private', async () => {
    const answer = await match({ target: 'teal', from: 'catalogue', portion: '2 cups' });
    expect(answer.ephemeral).toBe(false);
    const button = answer.controls.find(({ label }) => label === '1: how to dose it');
    for (const whoever of [room.member, room.steward]) {
      const dosed = await whoever.press(answer, button?.customId ?? '');
      expect(dosed.ephemeral).toBe(true);
      expect(dosed.text.split('\n')[0]).toMatch(/ for 2 cups$/);
    }
  });

  test.each([
    ['an unknown colour', { target: 'zxqv wug' }, /as a colour/],
    ['a smile', { target: '🧼' }, /as a colour/],
    ['no colour', {}, /Say which colour you want/],
    ['a shelf with nothing on it', { target: 'teal', from: 'shelf' }, /nothing to choose from/],
    ['a portion without a unit', { target: 'teal', portion: '3' }, /needs a unit/],
    ['a base nobody knows', { target: 'teal', base: 'plaid' }, /as a base/],
  ])('meets %s', async (_, options, sentence) => {
    const answer = await room.steward.run('/match', options as Record<string, string>);
    expect(answer.text).toMatch(sentence);
    expect(answer.text.length).toBeLessThan(400);
  });

  test('asks for no more colourants than it mixes, and for texts of a length to read', async () => {
    await expect(match({ target: 'teal', most: 9 })).rejects.toThrow(/most/);
    await expect(match({ target: 'x'.repeat(5000) })).rejects.toThrow(/200/);
  });

  test('is in Spanish for a Spanish client', async () => {
    room.member.grant({ locale: 'es-ES' });
    const answer = await match({ target: '#8a78b8', portion: '2 tazas' });
    room.member.grant({ locale: 'en-US' });
    expect(answer.text).toMatch(/cdta.* de Evening sky.* para 2 tazas: .*a \d+ como mucho/);
    expect(answer.text).toContain('Saldría');
  });
});

describe('/match from a photo', () => {
  test('offers the colours of the bar as a menu, and matches the one that is picked', async () => {
    const photo = await photoOf(['#efe6d6', '#7f6fb0']);
    const asked = await room.member.run('/match', { photo, portion: '2 cups' });
    expect(asked.text).toMatch(/Which colour do you want\? I see 2/);
    expect(asked.text).toContain('Balanced by the white sheet');
    const menu = asked.controls.find(({ kind }) => kind === 'text-menu');
    const violet = menu?.options.find(({ label }) => /violet|periwinkle|lilac/.test(label));
    const answer = await room.member.choose(asked, menu?.customId ?? '', [violet?.value ?? '']);
    expect(answer.text).toMatch(/Evening sky.* for 2 cups/);
    const hex = /#[\da-f]{6}/.exec(violet?.label ?? '')?.[0] ?? '#000000';
    expect(colourDifference(labOfHex(hex), labOfHex('#7f6fb0'))).toBeLessThan(8);
    const picture = await decoded(answer.files[0]?.bytes() ?? new Uint8Array());
    expect(picture.count(hex)).toBeGreaterThan(50_000);
  });

  test('takes a colour or a photo, not both', async () => {
    const photo = await photoOf(['#7f6fb0']);
    const answer = await room.member.run('/match', { photo, target: 'teal' });
    expect(answer.text).toContain('not both');
  });
});
