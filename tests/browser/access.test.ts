import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import type { AxeResults, RunOptions } from 'axe-core';
import type { BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { drawn, isDue } from '../walk.ts';
import {
  closeWindows,
  DESKTOP,
  hands,
  hasChromium,
  openServedRoom,
  PHONE,
  type ServedRoom,
  sitDown,
  standUp,
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
const looks = drawn<(typeof ALL_LOOKS)[number]>(ALL_LOOKS, 1, 'looks');

describe.skipIf(!hasChromium)('the page for everybody', () => {
  let room: ServedRoom;
  beforeAll(async () => {
    room = await openServedRoom();
  });
  afterEach(standUp);
  afterAll(async () => {
    await closeWindows();
    await room[Symbol.asyncDispose]();
  });

  (isDue('page') ? test : test.todo).each(looks)(
    'on %s axe has nothing to say, whatever is open',
    async (_, size) => {
      const group = room.host.addGuild({ name: 'Sunday soapers', channels: ['bench'] });
      const page = await sitDown(room.seat(group.addMember({ name: 'Bram' })), size);
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
      await page.getByText('Please fill in').first().waitFor();
      expect(await complaints(page)).toEqual([]);

      await page.getByRole('button', { name: 'New seat' }).click();
      await page.getByRole('dialog').waitFor();
      expect(await complaints(page)).toEqual([]);
    },
  );

  test('answers are read out, and those of before are not', async () => {
    const page = await sitDown(room.seat(room.member));
    const log = page.getByRole('log', { name: 'Conversation' });
    await hands(page).ask('/help');
    expect(await log.getAttribute('aria-live')).toBe('polite');
  });

  test('nothing moves for whoever asked for less motion', async () => {
    const page = await sitDown(room.seat(room.member), { ...PHONE, reducedMotion: 'reduce' });
    // Long enough to be seen on a busy machine.
    room.host.delayNext('POST', /callback/, 8_000);
    await hands(page).line.fill('/help');
    await page.keyboard.press('Escape');
    await page.keyboard.press('Enter');
    await page.locator('.working').waitFor();
    const moving = await page.evaluate(() => document.getAnimations().length);
    expect(moving).toBe(0);
  });

  test('the page never scrolls sideways, down to 320 points', async () => {
    const page = await sitDown(room.seat(room.member), { viewport: { width: 320, height: 640 } });
    await hands(page).ask(`/dose colourant:"ultramarine blue" portion:"2 cups"`);
    await hands(page).ask('x'.repeat(300));
    const beyond = () =>
      page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
    await expect.poll(beyond).toBe(0);
  });

  test('the browser speaks to nobody but this machine', async () => {
    const page = await sitDown(room.seat(room.member));
    const asked = new Set<string>();
    page.on('request', request => asked.add(new URL(request.url()).host));
    const refused: string[] = [];
    page.on('console', message => refused.push(message.text()));
    await page.reload();
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
    await expect.poll(() => refused.join()).toContain('Content Security Policy');
  });
});
