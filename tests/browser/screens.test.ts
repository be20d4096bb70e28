import { writeFile } from 'node:fs/promises';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { colourantById } from '../../src/engine/colourants/catalogue.ts';
import { hands, hasChromium, openBrowser, openServedRoom, type ServedRoom } from './chromium.ts';

/*
 * A face is one screen of a phone, 390 by 844 points as many have: everything of an answer that is seen before a fold is
 * opened, with its picture and its buttons.
 */
const SCREEN = { width: 390, height: 844 };

/** What is asked before: standing cautions are then known, and there is something to show. */
const BEFORE = [
  '/dose colourant:"ultramarine blue" portion:"2 cups"',
  '/plan oils:"coconut 30%, olive 70%" size:"1000 g oils" portions:"2 cups ultramarine blue; rest plain"',
  '/shelf add item:Dusk colourant:"ultramarine violet" amount:"50 g" price:"8.50 €"',
  '/shelf add item:Sun colourant:"gold mica" amount:"50 g"',
  '/shelf add item:Leaf colourant:"chromium oxide green" amount:"50 g"',
  '/shelf add item:Brick colourant:"red iron oxide" amount:"50 g"',
];
/** The kinds of answer, and the longest of each that is asked in earnest. */
const LINES = [
  '/dose colourant:Dusk portion:"2 cups"',
  '/dose colourant:"ultramarine blue" portion:"1 cup" with-1:"gold mica" with-2:"titanium dioxide tint" with-3:"red iron oxide" with-4:"chromium oxide green"',
  '/plan oils:"coconut 30%, olive 50%, palm 20%" size:"1000 g oils" portions:"2 cups Dusk; 500 ml Sun pastel; rest plain"',
  '/plan oils:"coconut 30%, olive 50%, palm 20%" size:"1000 g oils" portions:"2 cups ultramarine blue; rest plain" liquid:"goat milk" fragrance:"3%, vanillin 8%" additives:"honey 10 g, salt 5%"',
  '/plan oils:"coconut 30%, olive 70%" size:"1000 g oils" people:6 stations:3',
  '/match target:#6b3fa0 portion:"500 ml"',
  '/match target:#6b3fa0 portion:"500 ml" from:catalogue',
  '/preview mix:"ultramarine blue + gold mica" portion:"1 cup"',
  '/preview mix:"neon pink + titanium dioxide + gold mica" gel:true',
  '/diagnose words:"white crackly veins on top, the soap got hot, oozing liquid, zaps"',
  '/diagnose words:"it looks odd"',
  '/colourant check ingredients:"Mica (CI 77019), Carmine (CI 75470), Titanium Dioxide (CI 77891), Blue 1 Lake, Iron Oxides (CI 77491), Tin Oxide, Red 40 Lake"',
  '/help',
  '/shelf list',
  '/palette today',
  '/palette make colours:"#4b3a78, #b14e78, #de6f4d, #f2b95c"',
  '/pour layers mould:"25x9x6 cm" layers:12 raised:0.2',
  '/pour gradient from:"ultramarine blue full" to:plain steps:8',
  '/calibrate plan',
  '/calibrate bars item:Dusk bar-1:"1/8 tsp per cup #8b93bd" bar-2:"1/2 tsp per cup #4d5aa0"',
  '/batch poured name:Lagoon',
  '/batch show batch:Lagoon',
  '/prefer',
];

const TALL = /^\/(?:plan|match|colourant check|calibrate plan|diagnose words:"white)/u;

/** Where the pictures of the faces go, for whoever wants to look at them. */
const LOOK = process.env.SCREENS;

describe.skipIf(!hasChromium)('a face is one screen of a phone', () => {
  let browser: Browser;
  let room: ServedRoom;
  beforeAll(async () => {
    [browser, room] = await Promise.all([openBrowser(), openServedRoom()]);
  });
  afterAll(async () => {
    await browser.close();
    await room[Symbol.asyncDispose]();
  });

  async function heightsOf(page: Page, lines: readonly string[], language: string) {
    const me = hands(page);
    await me.line.waitFor();
    for (const line of BEFORE) await me.ask(line);
    const heights: (readonly [string, number])[] = [];
    for (const [at, line] of lines.entries()) {
      const entry = await me.ask(line);
      await entry.locator('.working').waitFor({ state: 'detached' });
      await page.waitForFunction(() => [...document.images].every(({ complete }) => complete));
      const height = await entry
        .locator('.body')
        .evaluate(one => Math.round(one.getBoundingClientRect().height));
      heights.push([line, height]);
      if (LOOK) await writeFile(`${LOOK}/${language}-${at}.png`, await entry.screenshot());
    }
    return heights;
  }

  test('what is suggested shows the colour it is', async () => {
    const page = await (await browser.newContext({ viewport: SCREEN, hasTouch: true })).newPage();
    await page.goto(room.seat(room.member));
    const { line } = hands(page);
    await line.fill('/dose colourant:ultramarine bl');
    const option = page.getByRole('option', { name: /^Ultramarine blue/ }).first();
    await option.waitFor();
    const shown = await option.locator('.patch').evaluate(one => getComputedStyle(one).backgroundColor);
    const { hex } = colourantById('ultramarine-blue')!;
    const channels = [1, 3, 5].map(at => Number.parseInt(hex.slice(at, at + 2), 16));
    expect(shown).toBe(`rgb(${channels.join(', ')})`);
    await line.fill('/dose strength:');
    await page.getByRole('option', { name: 'pastel' }).waitFor();
    expect(await page.locator('.suggestions .patch').count()).toBe(0);
    await page.context().close();
  });

  test.each([
    ['en-US', LINES],
    // The tallest, which are taller in Spanish.
    ['es-ES', LINES.filter(line => TALL.test(line))],
  ] as const)('in %s', { timeout: 600_000 }, async (locale, lines) => {
    const context = await browser.newContext({ viewport: SCREEN, hasTouch: true, locale });
    const page = await context.newPage();
    const group = room.host.addGuild({ name: `Soapers ${locale}`, channels: ['bench'] });
    await page.goto(room.seat(group.addMember({ name: 'Bram', locale })));
    const heights = await heightsOf(page, lines, locale);
    if (LOOK) await writeFile(`${LOOK}/${locale}.json`, JSON.stringify(heights, null, 1));
    await context.close();
    expect(heights.filter(([, height]) => height > SCREEN.height)).toEqual([]);
  });
});
