import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import type { AxeResults, RunOptions } from 'axe-core';
import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { WHOLE } from '../walk.ts';
import {
  DESKTOP,
  hands,
  hasChromium,
  openBrowser,
  openServedRoom,
  PHONE,
  type ServedRoom,
} from './chromium.ts';

const axeSource = await readFile(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** WCAG 2.2 AA and the good practice beside it. */
const RULES = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/** What axe finds wrong with the page as it stands: rule and place, one a line. */
async function complaints(page: Page): Promise<readonly string[]> {
  await page.evaluate(axeSource);
  const { violations } = await page.evaluate(async (rules): Promise<AxeResults> => {
    const { axe } = window as unknown as {
      axe: { run(context: Document, options: RunOptions): Promise<AxeResults> };
    };
    return await axe.run(document, { runOnly: rules });
  }, RULES);
  return violations.flatMap(({ id, nodes }) =>
    nodes.map(({ target, failureSummary }) => `${id} ${target.join(' ')}: ${failureSummary}`),
  );
}

const ALL_LOOKS = [
  ['a phone by day', { ...PHONE, colorScheme: 'light' }],
  ['a phone by night', { ...PHONE, colorScheme: 'dark' }],
  ['a desk by day', { ...DESKTOP, colorScheme: 'light' }],
  ['a desk by night', { ...DESKTOP, colorScheme: 'dark' }],
] satisfies readonly (readonly [string, BrowserContextOptions])[];
/** Each size and each scheme once, or each with each. */
const looks = WHOLE ? ALL_LOOKS : [ALL_LOOKS[0]!, ALL_LOOKS[3]!];

describe.skipIf(!hasChromium)('the page for everybody', () => {
  let browser: Browser;
  let room: ServedRoom;
  beforeAll(async () => {
    [browser, room] = await Promise.all([openBrowser(), openServedRoom()]);
  });
  afterAll(async () => {
    await browser.close();
    await room[Symbol.asyncDispose]();
  });

  test.each(looks)('on %s axe has nothing to say, whatever is open', async (_, size) => {
    const group = room.host.addGuild({ name: 'Sunday soapers', channels: ['bench'] });
    const page = await (await browser.newContext(size)).newPage();
    await page.goto(room.seat(group.addMember({ name: 'Bram' })));
    const me = hands(page);
    const { line } = me;
    await line.waitFor();
    expect(await complaints(page)).toEqual([]);

    await me.ask('/shelf add item:"Plum mica" amount:"25 g" colourant:"gold mica"');
    await me.ask('/dose colourant:"Plum mica" portion:"2 cups"');
    await me.ask('/dose colourant:nonsense portion:"2 cups"');
    await me.ask('a note for the bench');
    await line.fill('/dose colourant:ultra');
    await page.getByRole('listbox', { name: 'Suggestions' }).getByRole('option').first().waitFor();
    await page.keyboard.press('ArrowDown');
    expect(await complaints(page)).toEqual([]);
    await page.keyboard.press('Escape');
    await page.keyboard.press('Enter');
    expect(await complaints(page)).toEqual([]);

    await page.getByRole('button', { name: 'New seat' }).click();
    expect(await complaints(page)).toEqual([]);
    await page.context().close();
  });

  test('answers are read out, and those of before are not', async () => {
    const page = await (await browser.newContext(PHONE)).newPage();
    await page.goto(room.seat(room.member));
    const log = page.getByRole('log', { name: 'Conversation' });
    await hands(page).ask('/help');
    expect(await log.getAttribute('aria-live')).toBe('polite');
    await page.context().close();
  });

  test('nothing moves for whoever asked for less motion', async () => {
    const page = await (await browser.newContext({ ...PHONE, reducedMotion: 'reduce' })).newPage();
    await page.goto(room.seat(room.member));
    // Long enough to be seen on a busy machine.
    room.host.delayNext('POST', /callback/, 8_000);
    await hands(page).line.fill('/help');
    await page.keyboard.press('Escape');
    await page.keyboard.press('Enter');
    await page.locator('.working').waitFor();
    const moving = await page.evaluate(() => document.getAnimations().length);
    expect(moving).toBe(0);
    await page.context().close();
  });

  test('the page never scrolls sideways, down to 320 points', async () => {
    const page = await (await browser.newContext({ viewport: { width: 320, height: 640 } })).newPage();
    await page.goto(room.seat(room.member));
    await hands(page).ask(`/dose colourant:"ultramarine blue" portion:"2 cups"`);
    await hands(page).ask('x'.repeat(300));
    const { width, all } = await page.evaluate(() => ({
      width: document.documentElement.clientWidth,
      all: document.documentElement.scrollWidth,
    }));
    expect(all).toBe(width);
    await page.context().close();
  });

  test('the browser speaks to nobody but this machine', async () => {
    const page = await (await browser.newContext(PHONE)).newPage();
    const asked = new Set<string>();
    page.on('request', request => asked.add(new URL(request.url()).host));
    const refused: string[] = [];
    page.on('console', message => refused.push(message.text()));
    await page.goto(room.seat(room.member));
    await hands(page).ask('/help');
    expect([...asked]).toEqual([new URL(room.url).host]);
    expect(refused).toEqual([]);
    // Were it ever tricked into more, the policy holds it back.
    const escaped = await page.evaluate(async () => {
      try {
        await fetch('http://127.0.0.1:9/');
        return 'went out';
      } catch (error) {
        return String(error);
      }
    });
    expect(escaped).toContain('Failed to fetch');
    expect(refused.join()).toContain('Content Security Policy');
    await page.context().close();
  });
});
