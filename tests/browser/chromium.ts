import { existsSync } from 'node:fs';
import { type Browser, type BrowserContextOptions, chromium, type Page } from 'playwright-core';
import { openPage } from '../../src/page/index.ts';
import { preferencesOf } from '../../src/records/preferences.ts';
import { openRoom, type RoomOptions } from '../loopback/room.ts';

/** The one without windows of its own takes a third of the other's time, and shows pages the same. */
const KNOWN = ['/usr/lib/chromium/chromium-headless-shell', '/usr/bin/chromium'];
const executablePath = process.env.CHROMIUM ?? KNOWN.find(existsSync) ?? 'chromium';

/** Whether there is a browser to test with. Where there is none, say so: a skipped test proves nothing. */
export const hasChromium = existsSync(executablePath);
if (!hasChromium)
  console.warn(
    `NO CHROMIUM at ${executablePath}: the page is NOT tested. apt-get install chromium-headless-shell, or set CHROMIUM.`,
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

let shared: Promise<Browser> | undefined;

/** The browser of this process: to start one takes seconds, so the files that look at the page share it to its end. */
function sharedBrowser(): Promise<Browser> {
  shared ??= openBrowser();
  return shared;
}

/** As long as what never comes is waited for, ms: a photo that is looked at on a crowded machine takes half a minute. */
const LONG_ENOUGH = 120_000;

async function openWindow(kind: BrowserContextOptions): Promise<Page> {
  // What moves while an answer is awaited is painted sixty times a second, here by the processor.
  const context = await (await sharedBrowser()).newContext({ reducedMotion: 'reduce', ...kind });
  context.setDefaultTimeout(LONG_ENOUGH);
  return await context.newPage();
}

type Windows = { readonly free: Page[]; readonly taken: Page[] };
const windows = new Map<string, Windows>();

/** A window of that kind at that address, with nothing left of whoever sat there before. */
export async function sitDown(address: string, kind: BrowserContextOptions = PHONE): Promise<Page> {
  const key = JSON.stringify(kind);
  const { free, taken } = windows.get(key) ?? { free: [], taken: [] };
  windows.set(key, { free, taken });
  const known = free.pop();
  const page = known ?? (await openWindow(kind));
  taken.push(page);
  if (known)
    await known.evaluate(() => {
      localStorage.clear();
      sessionStorage.clear();
    });
  await page.goto(address);
  return page;
}

/** Gives every window free for who sits down next: to open one anew takes the browser seconds. */
export async function standUp(): Promise<void> {
  for (const { free, taken } of windows.values()) {
    for (const page of taken) await page.unrouteAll({ behavior: 'ignoreErrors' });
    free.push(...taken.splice(0));
  }
}

/** Closes every window: what it looked at is gone. */
export async function closeWindows(): Promise<void> {
  windows.clear();
  if (!shared) return;
  const contexts = (await shared).contexts();
  await Promise.all(contexts.map(context => context.close()));
}

/** The whole room: the host, the real client, the page's server. Patient, since browsers are heavy company. */
export async function openServedRoom(options: RoomOptions = {}) {
  const room = await openRoom({
    draws: true,
    ...options,
    host: { acknowledgeWithinMs: 240_000, ...options.host },
  });
  const page = await openPage(room.host, {
    port: 0,
    languageOf: async member => (await preferencesOf(room.conversation.services.store, member)).language,
  });
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
