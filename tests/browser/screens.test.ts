import { writeFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { readCommandLine } from '../../src/conversation/typed/command-line.ts';
import { colourantById } from '../../src/engine/colourants/catalogue.ts';
import { type Member, type Options, permissionBits } from '../../src/loopback/index.ts';
import { givenFrom } from '../../src/terminal/given.ts';
import { ALL, REST } from '../conversation/every-reply/lines.ts';
import { registry } from '../loopback/room.ts';
import { speckedBar } from '../photo/render/specked-bar.ts';
import { isDue, WHOLE } from '../walk.ts';
import {
  closeWindows,
  hands,
  hasChromium,
  openServedRoom,
  type ServedRoom,
  sitDown,
  standUp,
} from './chromium.ts';

/*
 * A face is one screen of a phone, 390 by 844 points as many have: everything of an answer that is seen before a fold is
 * opened, with its picture and its buttons. TABLE=1 prints how many words and screens each has.
 */
const SCREEN = { width: 390, height: 844 };

type Face = { readonly line: string; readonly height: number; readonly words: number };
const BAR = {
  name: 'bar.png',
  bytes: speckedBar(),
};

/** The longest plan that somebody new may meet: every caution of lye is new to them. */
const FIRST_PLAN =
  '/plan oils:"coconut 30%, olive 50%, palm 20%" size:"1000 g oils" portions:"2 cups ultramarine blue; 500 ml gold mica pastel; rest plain" liquid:"goat milk" fragrance:"3%, vanillin 8%" additives:"honey 10 g, salt 5%"';
const PLAIN_FIRST_PLAN =
  '/plan oils:"coconut 30%, olive 50%, palm 20%" size:"1000 g oils" portions:"2 cups ultramarine blue; 500 ml gold mica pastel; rest plain"';

/** Where the pictures of the faces go, for whoever wants to look at them. */
const LOOK = process.env.SCREENS;

/** Spanish says the same in more words: in the usual run it stands for both. */
const LOCALES = process.env.TABLE || WHOLE ? ['en-US', 'es-ES'] : ['es-ES'];

/** What is left of the commands is half of all, and looked at in the whole walk; how many words it has is told by tests/conversation. */
const WALKED = process.env.TABLE || WHOLE ? ALL : ALL.slice(0, -REST.length);

describe.skipIf(!hasChromium)('a face is one screen of a phone', () => {
  let room: ServedRoom;
  let now = Date.UTC(2026, 10, 2, 10);
  beforeAll(async () => {
    room = await openServedRoom({ host: { now: () => now } });
  });
  afterAll(async () => {
    await closeWindows();
    await room[Symbol.asyncDispose]();
  });

  /** Asks a line as the page would, by the platform's own way. */
  async function ask(member: Member, line: string): Promise<string> {
    const declared = (path: string) => registry.actions.get(path);
    const { path, options } = readCommandLine(line, known =>
      declared(known)?.options.flatMap(({ name }) => [name, name.replace(/-1$/, '')]),
    );
    const given = await givenFrom(options, declared(path.join(' '))?.options ?? []);
    const typed = Object.entries(given).map(([name, value]) => [
      name,
      typeof value === 'object' ? BAR : value,
    ]);
    const { id } = await member.run(`/${path.join(' ')}`, Object.fromEntries(typed) as Options);
    return id;
  }

  /** How high the face of each answer stands on the phone, pixels, and how many words it has. */
  async function facesOf(page: Page, asked: ReadonlyMap<string, string>): Promise<readonly Face[]> {
    const last = [...asked.keys()].at(-1);
    await page.locator(`[data-message="${last}"] .body`).waitFor();
    await page.evaluate(() => {
      for (const image of document.images) image.loading = 'eager';
    });
    await page.waitForFunction(() => [...document.images].every(({ complete }) => complete));
    const faces: Face[] = [];
    for (const [id, line] of asked) {
      const [height, words] = await page.locator(`[data-message="${id}"] .body`).evaluate(body => {
        const read = body.cloneNode(true) as HTMLElement;
        for (const one of read.querySelectorAll('button, details, select, label, a')) one.remove();
        const walker = document.createTreeWalker(read, NodeFilter.SHOW_TEXT);
        let count = 0;
        while (walker.nextNode())
          count += (walker.currentNode.nodeValue ?? '').split(/\s+/).filter(Boolean).length;
        return [Math.round(body.getBoundingClientRect().height), count] as const;
      });
      faces.push({ line, height, words });
    }
    return faces;
  }

  test('what is suggested shows the colour it is', async () => {
    const page = await sitDown(room.seat(room.member), { viewport: SCREEN, hasTouch: true });
    const { line } = hands(page);
    await line.fill('/dose colourant:ultramarine bl');
    const option = page.getByRole('option', { name: /^Ultramarine blue/ }).first();
    await option.waitFor();
    const shown = () => option.locator('.patch').evaluate(one => getComputedStyle(one).backgroundColor);
    const { hex } = colourantById('ultramarine-blue')!;
    const channels = [1, 3, 5].map(at => Number.parseInt(hex.slice(at, at + 2), 16));
    await expect.poll(shown).toBe(`rgb(${channels.join(', ')})`);
    await line.fill('/dose strength:');
    await page.getByRole('option', { name: 'pastel' }).waitFor();
    await expect.poll(() => page.locator('.suggestions .patch').count()).toBe(0);
  });

  (isDue('screens') ? test : test.todo).each(LOCALES)('in %s', { timeout: 900_000 }, async locale => {
    const group = room.host.addGuild({ name: `Soapers ${locale}`, channels: ['bench'] });
    const join = (name: string) => group.addMember({ name, locale, permissions: permissionBits.manageGuild });
    const members = {
      reader: join('Bram'),
      maker: join('Odile'),
      newcomer: join('Ilse'),
      starter: join('Ana'),
    };
    const asked = new Map(Object.values(members).map(member => [member, new Map<string, string>()]));
    const note = async (member: Member, line: string) =>
      asked.get(member)!.set(await ask(member, line.replaceAll('{photo}', 'package.json')), line);
    await note(members.newcomer, FIRST_PLAN);
    await note(members.starter, PLAIN_FIRST_PLAN);
    for (const { by, line, later } of WALKED) {
      now += later * 3_600_000 + 60_000;
      await room.watch.check();
      await note(members[by], line);
    }
    const faces: Face[] = [];
    for (const [member, lines] of asked) {
      const page = await sitDown(room.seat(member), { viewport: SCREEN, hasTouch: true, locale });
      faces.push(...(await facesOf(page, lines)));
      if (LOOK)
        for (const [at, id] of [...lines.keys()].entries())
          await page
            .locator(`[data-message="${id}"]`)
            .screenshot({ path: `${LOOK}/${locale}-${member.name}-${at}.png` });
      await standUp();
    }
    if (process.env.TABLE) console.log(tableOf(locale, faces));
    if (LOOK) await writeFile(`${LOOK}/${locale}.json`, JSON.stringify(faces, null, 1));
    expect(faces.filter(({ height }) => height > SCREEN.height)).toEqual([]);
  });
});

/** Every reply with its words and screens, the longest first. */
const tableOf = (locale: string, faces: readonly Face[]): string =>
  [
    `${locale}: words, screens of ${SCREEN.width} x ${SCREEN.height}`,
    ...faces
      .toSorted((a, b) => b.height - a.height)
      .map(
        ({ line, height, words }) =>
          `${String(words).padStart(4)}  ${(height / SCREEN.height).toFixed(2)}  ${line.slice(0, 100)}`,
      ),
  ].join('\n');
