import { existsSync } from 'node:fs';
import { type Browser, type BrowserContextOptions, chromium, type Page } from 'playwright-core';
import { openPage } from '../../src/page/index.ts';
import { openRoom, type RoomOptions } from '../loopback/room.ts';

const executablePath = process.env.CHROMIUM ?? '/usr/bin/chromium';

/** Whether there is a browser to test with. Where there is none, say so: a skipped test proves nothing. */
export const hasChromium = existsSync(executablePath);
if (!hasChromium)
  console.warn(
    `NO CHROMIUM at ${executablePath}: the page is NOT tested. apt-get install chromium, or set CHROMIUM.`,
  );

/** A phone as many carry: 360 by 740 points. */
export const PHONE: BrowserContextOptions = { viewport: { width: 360, height: 740 }, hasTouch: true };
export const DESKTOP: BrowserContextOptions = { viewport: { width: 1280, height: 800 } };

export const openBrowser = (): Promise<Browser> =>
  chromium.launch({
    executablePath,
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
    ],
  });

/** The whole room: the host, the real client, the page's server. Patient, since browsers are heavy company. */
export async function openServedRoom(options: RoomOptions = {}) {
  const room = await openRoom({ ...options, host: { acknowledgeWithinMs: 20_000, ...options.host } });
  const page = await openPage(room.host, { port: 0 });
  page.ready();
  return {
    ...room,
    url: page.url,
    seat: (member: { id: string; guild: { id: string } }) =>
      `${page.url}/?seat=${member.guild.id}-${member.id}`,
    async [Symbol.asyncDispose]() {
      await page.close();
      await room[Symbol.asyncDispose]();
    },
  };
}

export type ServedRoom = Awaited<ReturnType<typeof openServedRoom>>;

/** What a member does on the page, in the words of somebody who uses it. */
export function hands(page: Page) {
  const line = page.getByRole('combobox', { name: /Your question|Tu pregunta/ });
  const entries = page.getByRole('article');
  return {
    line,
    entries,
    last: entries.last(),
    /** Types a line and sends it; resolves when one more entry has its answer. */
    async ask(text: string) {
      const before = await entries.count();
      await line.fill(text);
      await page.keyboard.press('Escape');
      await page.keyboard.press('Enter');
      await entries.nth(before).locator('.body').waitFor();
      return entries.nth(before);
    },
  };
}
