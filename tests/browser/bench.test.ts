import type { Locator } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import type { Guild } from '../../src/loopback/index.ts';
import { permissionBits } from '../../src/loopback/index.ts';
import { isDue } from '../walk.ts';
import {
  closeWindows,
  DESKTOP,
  hands,
  hasChromium,
  openServedRoom,
  PHONE,
  type ServedRoom,
  standUp,
  sitDown as visit,
} from './chromium.ts';

/** Whether all of it is between what stays at the top of the screen and what stays at its end. */
const isSeen = (one: Locator): Promise<boolean> =>
  one.evaluate(node => {
    const { top, bottom } = node.getBoundingClientRect();
    const inForm = node.closest('dialog') !== null;
    const from = inForm ? 0 : (document.querySelector('.top')?.getBoundingClientRect().bottom ?? 0);
    const to = inForm
      ? node.closest('dialog')!.getBoundingClientRect().bottom
      : (document.querySelector('.bottom')?.getBoundingClientRect().top ?? window.innerHeight);
    return top >= from && bottom <= to;
  });

const addSteward = (group: Guild) =>
  group.addMember({ name: 'Odile', permissions: permissionBits.manageGuild });

describe.skipIf(!hasChromium)('at the bench, in a browser', () => {
  let served: ServedRoom;
  beforeAll(async () => {
    served = await openServedRoom();
  });
  afterAll(async () => {
    await closeWindows();
    await served[Symbol.asyncDispose]();
  });

  afterEach(standUp);

  const whenDue = isDue('page') ? test : test.todo;

  /** A group that no other test has been in. */
  const freshGroup = () => {
    const group = served.host.addGuild({ name: 'Sunday soapers', channels: ['bench'] });
    return { group, member: group.addMember({ name: 'Bram' }), steward: addSteward(group) };
  };

  test('a question in plain words is answered at once, a note only where it is meant for everyone', async () => {
    const room = freshGroup();
    const page = await visit(served.seat(room.member));
    const me = hands(page);
    for (const [question, answer] of [
      ['how much blue for 3 cups?', /Which colourant/],
      ['show my shelf', /shelf/i],
    ] as const) {
      const entry = await me.ask(question);
      await expect.poll(() => entry.textContent()).toMatch(answer);
      expect(await entry.textContent()).toContain(`Bram asked “${question}”`);
    }
    await me.line.fill('my bars came out lovely');
    await page.getByRole('button', { name: 'Say it to everyone instead' }).click();
    await expect.poll(() => me.last.textContent()).toContain('Bram put on the bench');
    await me.line.fill('/dose ');
    await expect.poll(() => page.getByRole('button', { name: 'Say it to everyone' }).isVisible()).toBe(false);
  });

  whenDue('a dose is asked with the keyboard alone, and the number comes first', async () => {
    const room = freshGroup();
    const page = await visit(served.seat(room.member));
    const { line, entries } = hands(page);
    await line.press('/');
    await page.keyboard.type('do');
    await page.getByRole('option', { name: /^\/dose/ }).waitFor();
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Enter');
    await expect.poll(() => line.inputValue()).toBe('/dose ');
    await page.keyboard.type('colourant:ultramarine bl');
    await page.getByRole('option', { name: 'Ultramarine blue' }).waitFor();
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Enter');
    await page.keyboard.type('portion:"2 cups"');
    await page.keyboard.press('Escape');
    await page.keyboard.press('Enter');
    const heading = entries.last().getByRole('heading');
    await heading.waitFor();
    await expect.poll(() => heading.textContent()).toMatch(/^1\/2 tsp/);
    await expect.poll(() => entries.last().textContent()).toContain('Bram asked /dose');
  });

  whenDue('the fields below the line say the same as the line', async () => {
    const room = freshGroup();
    const page = await visit(served.seat(room.member));
    const { line, last } = hands(page);
    await line.fill('/dose colourant:"red iron oxide"');
    await page.keyboard.press('Escape');
    await expect
      .poll(() => page.getByLabel('colourant', { exact: true }).inputValue())
      .toBe('red iron oxide');
    await page.getByLabel('portion', { exact: true }).fill('1 cup');
    await expect.poll(() => line.inputValue()).toBe('/dose colourant:"red iron oxide" portion:"1 cup"');
    await page.getByRole('button', { name: 'Ask' }).click();
    await last.getByRole('heading').waitFor();
    await expect.poll(() => line.inputValue()).toBe('');
  });

  whenDue('what is missing is said beside its field, before anything is sent', async () => {
    const room = freshGroup();
    const page = await visit(served.seat(room.member));
    const { line, entries } = hands(page);
    await line.fill('/dose colourant:mica');
    await page.keyboard.press('Escape');
    await page.keyboard.press('Enter');
    const portion = page.getByLabel('portion', { exact: true });
    await expect.poll(() => portion.getAttribute('aria-invalid')).toBe('true');
    await expect.poll(() => portion.evaluate(field => field === document.activeElement)).toBe(true);
    // In one line, which the focused field is described by, so that it is read out too.
    await expect.poll(() => page.getByText('Please fill in').count()).toBe(1);
    const said = () =>
      portion.evaluate(field =>
        (field.getAttribute('aria-describedby') ?? '')
          .split(' ')
          .map(id => document.getElementById(id)?.textContent)
          .join(' '),
      );
    await expect.poll(said).toContain('Please fill in “portion”');
    expect(await entries.count()).toBe(0);
  });

  whenDue('a colourant nobody knows is told so, to the asker only', async () => {
    const room = freshGroup();
    const page = await visit(served.seat(room.member));
    const other = await visit(served.seat(room.steward), DESKTOP);
    const answer = await hands(page).ask('/dose colourant:moonshine portion:"2 cups"');
    await expect.poll(() => answer.textContent()).toContain('Only you see this');
    const seen = await hands(page).ask('/dose colourant:"titanium dioxide" portion:"1 cup"');
    expect(await seen.textContent()).not.toContain('Only you see this');
    await hands(other).entries.first().waitFor();
    expect(await other.textContent('main')).not.toContain('moonshine');
  });

  whenDue('a shelf is kept through a reload, and so is the half-written line', async () => {
    const room = freshGroup();
    const page = await visit(served.seat(room.member));
    await hands(page).ask('/shelf add item:"Plum mica" amount:"25 g" colourant:"gold mica"');
    await hands(page).line.fill('/shelf us');
    const before = await page.getByRole('log').innerHTML();
    await page.reload();
    await hands(page).entries.first().waitFor();
    await expect.poll(() => page.getByRole('log').innerHTML()).toBe(before);
    await expect.poll(() => hands(page).line.inputValue()).toBe('/shelf us');
    const list = await hands(page).ask('/shelf list');
    expect(await list.textContent()).toContain('Plum mica');
  });

  whenDue('a button takes the dose off the shelf, once', async () => {
    const room = freshGroup();
    const page = await visit(served.seat(room.member));
    await hands(page).ask('/shelf add item:"Plum mica" amount:"25 g" colourant:"gold mica"');
    const dose = await hands(page).ask('/dose colourant:"Plum mica" portion:"2 cups"');
    await dose.getByRole('button', { name: /Plum mica/ }).click();
    const taken = hands(page).entries.nth(2);
    await taken.locator('.body').waitFor();
    await expect.poll(() => taken.textContent()).toContain('Plum mica');
    const list = await hands(page).ask('/shelf list');
    expect(await list.textContent()).not.toContain('25 g');
  });

  whenDue('a button on an old message brings its answer into view; a fold moves nobody', async () => {
    const room = freshGroup();
    const page = await visit(served.seat(room.member));
    const bench = hands(page);
    const { entries } = bench;
    const ask = (line: string) => bench.ask(line);
    const old = await ask('/dose colourant:"gold mica" portion:"1 cup"');
    for (const portion of ['2 cups', '3 cups', '4 cups'])
      await ask(`/dose colourant:"ultramarine blue" portion:"${portion}"`);
    const why = old.locator('summary', { hasText: 'Why' });
    await why.scrollIntoViewIfNeeded();
    const before = await page.evaluate(() => scrollY);
    await why.click();
    await old.locator('details[open] .fold-body *').first().waitFor();
    expect(await page.evaluate(() => scrollY)).toBe(before);
    await old.getByRole('button', { name: 'See the colour' }).click();
    const answer = entries.nth(4).getByRole('heading').first();
    await answer.waitFor();
    await expect.poll(() => isSeen(answer)).toBe(true);
  });

  whenDue('opens at its end, and stays there when pictures come late', async () => {
    const room = freshGroup();
    const page = await visit(served.seat(room.member));
    const bench = hands(page);
    const { entries } = bench;
    const ask = (line: string) => bench.ask(line);
    for (const mix of ['gold mica', 'ultramarine blue', 'red iron oxide', 'chromium oxide green'])
      await ask(`/preview mix:"${mix}"`);
    await page.route('**/files/**', async route => {
      await new Promise(resolve => setTimeout(resolve, 400));
      await route.continue();
    });
    await page.reload();
    await entries.nth(3).locator('.body').waitFor();
    const last = entries.last().locator('img').first();
    await expect
      .poll(() => last.evaluate(image => (image as HTMLImageElement).naturalWidth))
      .toBeGreaterThan(0);
    await page.waitForTimeout(600);
    const left = () =>
      page.evaluate(() => document.documentElement.scrollHeight - window.scrollY - window.innerHeight);
    await expect.poll(left).toBeLessThan(4);
  });

  whenDue('copies what was said, without what is pressed', async () => {
    const room = freshGroup();
    const page = await visit(served.seat(room.member), {
      ...PHONE,
      permissions: ['clipboard-read', 'clipboard-write'],
    });
    const answer = await hands(page).ask('/dose colourant:"gold mica" portion:"1 cup"');
    await answer.getByRole('button', { name: 'Copy' }).click();
    await answer.getByRole('button', { name: 'Copied' }).waitFor();
    const copied = await page.evaluate(() => navigator.clipboard.readText());
    expect(copied).toMatch(/^1\/2 tsp gold mica/);
    expect(copied).toMatch(/Gloves and goggles/);
    expect(copied).not.toMatch(/See the colour|Choose|Why|pastel/);
  });

  whenDue.each(['en-US', 'es-ES'])('hints and what sends a form fit a phone, in %s', async locale => {
    const { group } = freshGroup();
    const page = await visit(served.seat(group.addMember({ name: 'Ana', locale })), {
      viewport: { width: 390, height: 844 },
      hasTouch: true,
      locale,
    });
    const { line } = hands(page);
    await expect.poll(() => line.getAttribute('placeholder')).toBeTruthy();
    // As wide as the hint would have it, in the letters of the line.
    const fits = await line.evaluate(input => {
      const { font, paddingLeft, paddingRight } = getComputedStyle(input);
      const pen = document.createElement('canvas').getContext('2d')!;
      pen.font = font;
      const room = input.clientWidth - Number.parseFloat(paddingLeft) - Number.parseFloat(paddingRight);
      return pen.measureText((input as HTMLInputElement).placeholder).width <= room;
    });
    expect(fits).toBe(true);
    // The form stands over nothing, and what is suggested over no field.
    await line.fill('/dose colourant:ultramarin');
    await page.locator('.line [role=option]').first().waitFor();
    await expect.poll(() => page.locator('.command-form').isVisible()).toBe(false);
    await page.keyboard.press('Escape');
    await page.locator('.command-form').waitFor();
    await line.fill('/diagnose');
    await page.keyboard.press('Escape');
    await page.keyboard.press('Enter');
    const send = page.locator('dialog button[type=submit]');
    await send.waitFor();
    await expect.poll(() => isSeen(send)).toBe(true);
  });

  whenDue('a member in Spanish has the page and the answers in Spanish', async () => {
    const room = freshGroup();
    const ana = room.group.addMember({ name: 'Ana', locale: 'es-ES' });
    const page = await visit(served.seat(ana));
    await expect.poll(() => page.getAttribute('html', 'lang')).toBe('es');
    const answer = await hands(page).ask('/dose colourant:"azul ultramar" portion:"2 tazas"');
    expect(await answer.textContent()).toContain('Ana preguntó');
    expect(await answer.getByRole('heading').textContent()).toMatch(/cdta/);
  });

  whenDue('the page speaks the language that its member chooses to be answered in', async () => {
    const room = freshGroup();
    const ana = room.group.addMember({ name: 'Ana', locale: 'es-ES' });
    const page = await visit(served.seat(ana));
    await hands(page).ask('/prefer language:en');
    await expect.poll(() => page.getAttribute('html', 'lang')).toBe('en');
    await page.getByRole('button', { name: 'Ask', exact: true }).waitFor();
    // What was answered stays on the page.
    await expect.poll(() => hands(page).entries.last().textContent()).toContain('This is how I answer you');
  });

  whenDue('what a member writes never becomes markup', async () => {
    const room = freshGroup();
    const page = await visit(served.seat(room.member));
    const words = '<img src=x onerror=alert(1)> **loud** # title';
    const note = await hands(page).ask(words);
    expect(await note.textContent()).toContain(words);
    const item = '<b>Plum</b> **mica** [x](http://x)';
    const added = await hands(page).ask(`/shelf add item:"${item}"`);
    expect(await added.textContent()).toContain(item);
    expect(await page.locator('main b, main img, main a').count()).toBe(0);
  });

  whenDue('a new seat is taken from the page: another member, a steward, a group of one’s own', async () => {
    const room = freshGroup();
    const page = await visit(served.seat(room.member));
    await page.getByRole('button', { name: 'New seat' }).click();
    const dialog = page.getByRole('dialog');
    await dialog.getByLabel('Name', { exact: true }).fill('Pia');
    await dialog.getByLabel('Group', { exact: true }).selectOption({ label: 'A new group…' });
    await dialog.getByLabel('Name of the new group').fill('Harbour suds');
    await dialog.getByLabel('Language').selectOption('es');
    await dialog.getByRole('checkbox').check();
    await Promise.all([page.waitForURL(/seat=/), dialog.getByRole('button', { name: 'Sit down' }).click()]);
    await page.getByLabel('Eres').waitFor();
    const chosen = page.getByLabel('Eres').locator('option:checked');
    await expect.poll(() => chosen.textContent()).toBe('Pia, Harbour suds (encargada)');
  });
});
