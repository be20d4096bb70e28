import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { AFTER_ALL, answeredAs, TURNS } from '../../../commands/ask/answer.ts';
import { ALONE, answeredAlone, answerOf, BESIDE_PHOTO } from '../../../commands/ask/answerers.ts';
import { askedOfLye } from '../../../commands/ask/lye/asked-of-lye.ts';
import { foundNearLye, LYE_ANSWERERS } from '../../../commands/ask/lye/lye-answer.ts';
import { readAsked } from '../../../commands/ask/read-asked.ts';
import { answeredOfBatter, BATTER_ANSWERERS } from '../../../commands/ask/technique/technique.ts';
import { contextOf } from '../../../src/conversation/answering/context-of.ts';
import type { Context } from '../../../src/conversation/context.ts';
import { withOwnJars } from '../../../src/engine/questions/found/jars/own-jars.ts';
import { openTalk, type Talk } from '../../talks/talking.ts';

/* Who answers a plain question, in which order: our own table, as DEVELOPERS.md tells it. */

let talk: Talk;
beforeAll(async () => {
  talk = await openTalk();
});
afterAll(() => talk[Symbol.asyncDispose]());

const ids = (answerers: readonly { readonly id: string }[]) => answerers.map(({ id }) => id);

let asked = 0;
/** Where somebody asks next, in a channel of their own unless one is named. */
function place(channel = `bench ${asked}`): Context {
  asked += 1;
  const asker = { id: 'maker', name: 'maker', manages: false, roles: [] };
  const at = Date.UTC(2026, 10, 29, 12, 5);
  const origin = { id: `answered-${asked}`, at, asker, group: 'club', channel, language: 'en' as const };
  return contextOf(origin, talk.conversation, origin.id);
}
const readAlone = (question: string) => readAsked({ question }, withOwnJars(question, []), place());

/** All who would answer a question if they were asked alone, in their order. */
async function whoWould(question: string): Promise<readonly string[]> {
  const read = readAlone(question);
  const would: string[] = [];
  for (const one of ALONE) if (await answerOf(one, read)) would.push(one.id);
  return would;
}

describe('the handbook tells the order in which they are asked', () => {
  const handbook = readFileSync(new URL('../../../DEVELOPERS.md', import.meta.url), 'utf8');
  const section = handbook.split('## How a question in plain words is read')[1]!.split('### ')[0]!;
  const quoted = (text: string) => [...text.matchAll(/`([^`]+)`/gu)].map(([, id]) => id);
  const lineOf = (start: string) =>
    section
      .split('\n')
      .find(line => line.startsWith(start))!
      .split(/\): |: /u)[1]!
      .split('. ')[0]!;

  test('one row for each, from the top of the list to its end', () => {
    const rows = section.split('\n').filter(line => line.startsWith('| `'));
    const told = rows.map(row => {
      const [, id, , leavesTo] = row.split('|');
      return { id: quoted(id!)[0], leavesTo: quoted(leavesTo!) };
    });
    const all = [...TURNS, ...ALONE, ...AFTER_ALL];
    expect(told).toEqual(
      all.map(one => ({ id: one.id, leavesTo: 'leavesTo' in one ? (one.leavesTo ?? []) : [] })),
    );
    expect(new Set(ids(all)).size).toBe(all.length);
  });
  test.each([
    ['- Beside a photo', ['first-aid', ...ids(BESIDE_PHOTO)]],
    ['- Near lye', ids(LYE_ANSWERERS)],
    ['- Of working with batter', ids(BATTER_ANSWERERS)],
  ])('%s', (start, order) => expect(quoted(lineOf(start))).toEqual(order));
});

describe('a question that nobody else answers but as a command', () => {
  test.each([
    ['hue', 'yellow that stays yellow'],
    ['colour-sums', 'i have 1200g total batter split 3 ways how much mica each'],
    ['contest', 'hasta cuando se puede mandar foto pal concurso'],
    ['palette-idea', 'ideas de colores para navidad'],
    ['asked-of-named', 'does indigo fade'],
    ['technique', 'best oils for swirling'],
    ['survival', 'butterfly pea flower tea as my water for the lye. stays blue?'],
    ['near-lye', 'do i put lye in water or water in lye'],
    ['word-of-lye', 'cómo sé si quedó con soda de más el jabón'],
    ['doubt', 'last week you gave me a different amount for the same thing'],
    ['hardly-told', 'tops ugly how fix'],
    ['plan-without-oils', 'rainbow loaf, three equal layers red, yellow, blue, 900 ml, plan it'],
    ['several-jars', 'add pink mica 10 g and titanium dioxide 50 g'],
    ['which-portion', 'bit under a lb, call it 420 g of batter'],
    ['beyond-range', 'how much mica for 90000 kg of oils'],
  ])('%s: %s', async (id, question) => expect(await whoWould(question)).toEqual([id, 'as-command']));

  test.each([
    ['scents', 'what does wintergreen oil do in a bar', ['scents', 'other-field', 'not-understood']],
    [
      'lye-elsewhere',
      'how much caustic for the curtains',
      ['lye-elsewhere', 'other-field', 'not-understood'],
    ],
    ['technique', 'four cups of batter it takes', ['technique', 'unsure-near-lye', 'as-command']],
    ['other-field', 'formula in my cost sheet shows an error', ['other-field', 'not-understood']],
    ['not-understood', 'and for the other one?', ['not-understood']],
    ['as-command', 'what does lake mean', ['as-command']],
  ])('%s: %s', async (_, question, would) => expect(await whoWould(question)).toEqual(would));
});

describe('of two who could answer, who does', () => {
  /*
   * Neighbours that are not here do not meet: one leaves the question to the other, they are of different jobs, or, with what is of another
   * field behind technique and before survival, nobody of the sets asked such a thing.
   */
  test.each([
    ['hue', 'colour-sums', 'best blue that stays blue, 1200 g batter 3 colours how much each'],
    ['colour-sums', 'contest', '650g oils 3 colours how much each, until when is the contest'],
    ['contest', 'palette-idea', 'colour ideas for the contest, a sunset, when does it close'],
    ['palette-idea', 'asked-of-named', 'does indigo fade beside colours for sea soap'],
    ['asked-of-named', 'technique', 'will charcoal stain the bath'],
    ['colour-sums', 'which-portion', 'I have 120 g of blue mica in a tub, batch is 1.5 kg, is that enough'],
    ['technique', 'doubt', 'q es mejor mica u oxido'],
    ['technique', 'survival', 'de q color queda con cafe'],
    ['technique', 'near-lye', 'my swirl recipe: olive 40 coconut 25 palm 25 shea 10 will it stay thin'],
    ['technique', 'hardly-told', 'it looks weird'],
    ['lye-elsewhere', 'near-lye', 'wood ash lye for hominy, how strong'],
    ['lye-elsewhere', 'unsure-near-lye', 'sartén antiadherente con sosa'],
    ['survival', 'near-lye', 'is fruit puree ok in soap'],
    ['scents', 'other-field', 'room spray how much oil'],
    ['unsure-near-lye', 'other-field', 'my candle batter goes thick'],
    ['unsure-near-lye', 'word-of-lye', 'powdery film or lye how do i see the difference'],
    ['other-field', 'not-understood', 'para un mercadillo,'],
    ['beyond-range', 'as-command', 'how much mica for 90000 kg of oils'],
  ])('%s before %s: %s', async (first, second, question) => {
    expect(await whoWould(question)).toEqual(expect.arrayContaining([first, second]));
    expect((await answeredAlone(readAlone(question))).by).toBe(first);
  });
});

describe('wherever they stand in the list', () => {
  test.each([
    // Red lead is lead: it stays out of soap, however well its red holds.
    ['a hue waits for the check of what stays out of soap', 'hue', 'red lead, a red that stays red'],
    ['so does a sum of colour', 'colour-sums', '650g oils 3 colours how much each, one is red lead'],
    ['a scent waits for what was found near lye', 'scents', 'can i use clove essential oil in soap'],
    ['and so does another field', 'other-field', 'wood ash lye for hominy, how strong'],
    ['what is unsure waits for the check', 'unsure-near-lye', 'red lead in raw soap'],
  ])('%s', async (_, id, question) => expect(await whoWould(question)).not.toContain(id));

  test('beside a photo a bar is judged, and lye and colours are not told', async () => {
    const photo = { name: 'bar.jpg', mediaType: 'image/jpeg', size: 1, read: async () => new Uint8Array(1) };
    const read = (question: string) => readAsked({ question, photo }, withOwnJars(question, []), place());
    const asked = read('lye for 500 g olive oil');
    expect(await asked.nearLye()).toEqual({});
    expect((await asked.reading())?.command).toBe('diagnose');
    expect((await read('mix me a navy blue').reading())?.job).not.toBe('diagnose');
    expect((await answeredAlone(read('my tomatoes look sad'))).by).toBe('other-field');
  });
});

describe('near lye', () => {
  const found = (question: string) => {
    const { read, context } = readAlone(question);
    return foundNearLye(askedOfLye(question, { typed: question, read, context }));
  };
  test.each([
    ['sums', 'used 100 g lye instead of 130'],
    ['asked-of-things', 'and how do i stop white ash'],
    ['care', 'i grabbed the salt instead of the lye'],
    ['in-passing', '142 g lye for 1000 g lard ok?'],
    ['learned', 'is a rinsed lye tub safe for kids crafts'],
    ['matter', 'how much caustic to clear the cellar drain without wrecking the pipes'],
    ['plan', 'plan a batch with 700 g olive, 300 g coconut, gold mica'],
    ['bleach-or-lye', 'cuánta lejía para 500 g de aceite de oliva'],
    ['oils-for-lye', 'how much olive oil do I need for 100 g of lye'],
    ['recipe', '40% lard 30% olive 25% coconut 5% castor, what lye do I need for 1000 g total'],
    // A weight that went wrong is told by its own figures, before the care that its words are also of.
    ['sums', 'weighed 200 g caustic soda instead of 160'],
    ['asked-of-things', 'do i add water to lye or lye to water'],
    // What keeps from harm is told before a recipe is asked for.
    ['care', 'calculo a ojo la sosa que falta'],
    ['learned', 'how much superfat do you all use'],
    ['matter', 'can i switch canola for olive same lye'],
  ])('%s: %s', async (id, question) => expect((await found(question))?.by).toBe(id));

  test('what is asked of a shelf is no matter of handling and no recipe', async () =>
    expect(await found('show me my shelf')).toBeUndefined());
});

describe('of working with batter', () => {
  const answered = (question: string) => {
    const { said, read, context } = readAlone(question);
    return answeredOfBatter(said, read, context);
  };
  test.each([
    ['its-colour', 'alkanet what colour do you get'],
    ['outright', 'el dioxido se disuelve en agua o aceite?'],
    ['bench', 'soap still soft after 3 days'],
    ['two-together', 'purple from red + blue?'],
    ['chat', 'hey you there? got a pot on'],
    ['trouble', 'i do not understand'],
    ['colour-families', 'de q color queda con cafe'],
    ['likeliest', 'best oils for swirling'],
  ])('%s: %s', async (id, question) => expect((await answered(question))?.by).toBe(id));

  test('after-lye: grains in a jug of lye are no mica that sank', async () => {
    const channel = 'cloudy';
    await talk.say('lye water gone cloudy is it ruined', { channel });
    const context = place(channel);
    const { said, read } = readAsked(
      { question: 'it has lumps at the bottom' },
      withOwnJars('it has lumps at the bottom', []),
      context,
    );
    expect((await answeredOfBatter(said, read, context))?.by).toBe('after-lye');
    expect((await answered('it has lumps at the bottom'))?.by).toBe('likeliest');
  });

  test('lye that is weighed, and somebody who is hurt, are not', async () => {
    expect(await answered('best oils for swirling, how much lye for 500 g olive')).toBeUndefined();
    expect(await answered('my hand burns, best oils for swirling')).toBeUndefined();
  });
});

describe('a turn is answered by', () => {
  test.each([
    ['first-aid', [], 'first aid please'],
    ['whole-sentence', [], 'undo'],
    ['still-hurt', ['lye splashed in my eye'], 'it still burns'],
    ['leaning', ['how much mica for 500 g oils'], 'and for 800 g?'],
    ['in-context', ['how long before i can cut it'], 'and how do i clean my moulds'],
    // A turn that asks an aspect of what was told before leans on it, before both are read as one text.
    ['leaning', ['how do I do straight layers'], 'how long between'],
    ['clarified', ['bars feel scratchy, why'], 'paprika'],
    ['carried', ['my swirl turned to mud'], 'black yellow and white, went at it with a stick'],
    ['back-to-before', ['lye water gone cloudy is it ruined'], 'theres a white skin on it'],
    ['technique', ['how much mica for 500 g oils'], 'best oils for swirling'],
  ])('%s, behind %j: %s', async (id, before, question) => {
    const channel = `turn ${question}`;
    for (const turn of before) await talk.say(turn, { channel });
    expect((await answeredAs({ question }, place(channel))).by).toBe(id);
  });
});
