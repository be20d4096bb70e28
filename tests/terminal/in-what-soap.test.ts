import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Conversation } from '../../src/conversation/conversation.ts';
import { askLine } from '../../src/terminal/seat.ts';
import { openConversation } from '../sets/open-conversation.ts';

/*
 * What the soap is decides its colour: olive oil makes a yellower bar than coconut oil, and soap that gelled scatters less
 * light, so that it is deeper and takes less powder (both common practice).
 */

let conversation: Conversation & AsyncDisposable;
const seat = { member: 'odile', group: 'soap', language: 'en', manages: true, roles: [] } as const;
/** What an answer tells programs. */
async function told<Data>(line: string): Promise<Data> {
  const { answer } = await askLine(line, seat, conversation);
  if (answer.kind !== 'reply') throw new Error(`${line}: ${answer.kind}`);
  return answer.data as Data;
}
beforeAll(async () => {
  conversation = await openConversation();
  const jars = { Sea: 'ultramarine blue', Brick: 'red iron oxide', Straw: 'yellow iron oxide' };
  for (const [item, colourant] of Object.entries(jars))
    await told(`/shelf add item:${item} colourant:"${colourant}" amount:"50 g"`);
  await told('/shelf add item:Snow colourant:"titanium dioxide" amount:"50 g"');
});
afterAll(() => conversation[Symbol.asyncDispose]());

const OLIVE = 'base:"olive 100%"';
const COCONUT = 'base:"coconut 100%"';

describe('/palette today', () => {
  type Today = {
    readonly palettes: readonly {
      readonly colours: readonly {
        readonly predicted: {
          readonly word: string;
          readonly lab: { readonly l: number; readonly b: number };
        };
      }[];
    }[];
  };
  const inSoap = async (soap: string) => {
    const { palettes } = await told<Today>(`/palette today scheme:complementary ${soap}`);
    const colours = palettes[0]!.colours.map(({ predicted }) => predicted);
    return (word: string) => colours.find(one => one.word === word)!.lab;
  };

  test('a blue is less blue in olive soap than in coconut soap', async () => {
    const [olive, coconut] = [await inSoap(OLIVE), await inSoap(COCONUT)];
    expect(olive('blue').b).toBeGreaterThan(coconut('blue').b + 5);
  });

  test('a gold is deeper in soap that gelled', async () => {
    const [gelled, not] = [await inSoap('gel:yes'), await inSoap('gel:no')];
    expect(gelled('gold').l).toBeLessThan(not('gold').l - 1);
  });
});

describe('/palette make', () => {
  type Made = {
    readonly colours: readonly {
      readonly deltaE: number;
      readonly doses: readonly { readonly grams: number }[];
    }[];
  };
  const make = async (colours: string, soap: string) =>
    (await told<Made>(`/palette make colours:"${colours}" ${soap}`)).colours;

  test('takes less powder for the same colours in soap that gelled', async () => {
    const grams = async (soap: string) =>
      (await make('#26436b, #c9a13c', soap)).map(({ doses: [first] }) => first!.grams);
    const [gelled, not] = [await grams('gel:yes'), await grams('gel:no')];
    expect(gelled).toHaveLength(2);
    for (const [at, one] of gelled.entries()) expect(one).toBeLessThan(not[at]!);
  });

  test('comes nearer to a mustard in olive soap than in coconut soap', async () => {
    const off = async (soap: string) => (await make('#c9a13c', soap))[0]!.deltaE;
    expect(await off(OLIVE)).toBeLessThan((await off(COCONUT)) - 0.5);
  });
});

describe('/palette buy', () => {
  type Buy = { readonly now: { readonly mean: number }; readonly one: readonly { readonly mean: number }[] };
  const buy = (soap: string) => told<Buy>(`/palette buy colours:"#5f8f5a, #2f6b46" ${soap}`);

  test('a green that is bought comes nearer to a deep green in soap that gelled', async () => {
    const [gelled, not] = [await buy('gel:yes'), await buy('gel:no')];
    expect(gelled.one[0]!.mean).toBeLessThan(not.one[0]!.mean - 0.3);
  });

  test('yellowish greens of the shelf come nearer in olive soap than in coconut soap', async () => {
    const [olive, coconut] = [await buy(OLIVE), await buy(COCONUT)];
    expect(olive.now.mean).toBeLessThan(coconut.now.mean);
  });
});

describe('/match and /calibrate', () => {
  type Foretold = { readonly predicted: { readonly lab: { readonly l: number; readonly b: number } } };
  const bars = async (soap: string) =>
    (await told<{ readonly bars: readonly Foretold[] }>(`/calibrate plan jars:Sea ${soap}`)).bars.map(
      ({ predicted }) => predicted.lab,
    );

  test('/match takes less powder for the same blue in soap that gelled', async () => {
    type Matched = {
      readonly recipes: readonly { readonly doses: readonly { readonly teaspoons: number }[] }[];
    };
    const teaspoons = async (soap: string) =>
      (await told<Matched>(`/match target:"#3c46a7" from:shelf ${soap}`)).recipes[0]!.doses[0]!.teaspoons;
    expect(await teaspoons('gel:yes')).toBeLessThan(await teaspoons('gel:no'));
  });

  test('bars to pour are foretold deeper where they will gel, and less blue in olive soap', async () => {
    const [gelled, not] = [await bars('gel:yes'), await bars('gel:no')];
    for (const [at, { l }] of gelled.entries()) expect(l).toBeLessThan(not[at]!.l - 1);
    const [olive, coconut] = [await bars(OLIVE), await bars(COCONUT)];
    for (const [at, { b }] of olive.entries()) expect(b).toBeGreaterThan(coconut[at]!.b + 5);
  });

  test('the same pale bar tells of a weaker jar where it gelled', async () => {
    const strength = async (jar: string, soap: string) => {
      await told(`/shelf add item:${jar} colourant:"ultramarine blue" amount:"50 g"`);
      const line = `/calibrate bars item:${jar} bar-1:"1/4 tsp per cup, #6086c9" ${soap}`;
      return (await told<{ readonly scale: { readonly k: number } }>(line)).scale.k;
    };
    expect(await strength('Lake', 'gel:yes')).toBeLessThan(await strength('Pond', 'gel:no'));
  });
});

test('/palette buy is asked for a portion that can be one', async () => {
  const { answer } = await askLine('/palette buy colours:teal portion:"900 l"', seat, conversation);
  expect(answer).toMatchObject({ kind: 'problem', text: expect.stringContaining('I can work with') });
});

describe('/pour', () => {
  type Gradient = { readonly steps: readonly { readonly lab: { readonly l: number } }[] };

  test('gradient: each step is deeper in soap that gelled', async () => {
    const lightness = async (soap: string) =>
      (
        await told<Gradient>(`/pour gradient from:"1/4 tsp per cup Sea" to:"1/2 tsp per cup Brick" ${soap}`)
      ).steps.map(({ lab }) => lab.l);
    const [gelled, not] = [await lightness('gel:yes'), await lightness('gel:no')];
    expect(gelled.length).toBeGreaterThan(2);
    for (const [at, l] of gelled.entries()) expect(l).toBeLessThan(not[at]! - 1);
  });

  test('infusion: soap that gelled is less white, so a test bar of it says another share of infused oil', async () => {
    const share = async (soap: string) =>
      (await told<{ readonly share: number }>(`/pour infusion bar:"20% #d9b86a" target:"#c79a3c" ${soap}`))
        .share;
    const [gelled, not] = [await share('gel:yes'), await share('gel:no')];
    expect(await share('')).toBe(not);
    expect(Math.abs(gelled - not)).toBeGreaterThan(0.01);
  });
});
