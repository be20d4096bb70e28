import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { shoot } from '../photo/render/scene.ts';
import { shotOf } from '../photo/render/shots.ts';
import { isDue } from '../walk.ts';
import { closeWindows, hands, hasChromium, openServedRoom, type ServedRoom, sitDown } from './chromium.ts';

const DAY = 24 * 3_600_000;
const camera = { blur: 1, noise: 2, quality: 85 };

describe.skipIf(!hasChromium)('a whole challenge, from four seats of one browser', () => {
  let room: ServedRoom;
  /** How far the room's clock is ahead of the wall's. */
  let ahead = 0;
  beforeAll(async () => {
    room = await openServedRoom({ host: { now: () => Date.now() + ahead } });
  });
  afterAll(async () => {
    await closeWindows();
    await room[Symbol.asyncDispose]();
  });

  const sit = (member: Parameters<ServedRoom['seat']>[0]) => sitDown(room.seat(member));

  const whenDue = isDue('challenge in a browser') ? test : test.todo;

  whenDue('a steward opens it, three members enter and vote, and the results appear to all', async () => {
    const { steward, member, group, watch } = room;
    const makers = [
      member,
      group.addMember({ name: 'Ilse' }),
      group.addMember({ name: 'Tomas', locale: 'es-ES' }),
    ];
    const stewardPage = await sit(steward);
    const pages = await Promise.all(makers.map(sit));
    const opened = await hands(stewardPage).ask(
      '/challenge open title:"Winter sea" palette:"teal, cream" entries-until:"in 2 days" votes-until:"in 5 days"',
    );
    expect(await opened.textContent()).toContain('Winter sea');

    for (const [index, page] of pages.entries()) {
      const enter = page.getByRole('button', { name: /Enter a bar|Inscrib/ }).first();
      await enter.click();
      const form = page.getByRole('dialog');
      await form.getByRole('button', { name: /Send|Enviar/ }).waitFor();
      const photo = await shoot(shotOf(index + 3, camera, { colours: ['#2f8f8a', '#ece4d2'] }));
      await form
        .locator('input[type=file]')
        .setInputFiles({ name: `bar-${index}.jpg`, mimeType: 'image/jpeg', buffer: Buffer.from(photo) });
      const [title, colourants] = await form.locator('input:not([type=file])').all();
      await title?.fill(`Tide ${index + 1}`);
      await colourants?.fill('ultramarine blue');
      await form.getByRole('button', { name: /Send|Enviar/ }).click();
      await page
        .getByText(`Tide ${index + 1}`)
        .last()
        .waitFor();
      await form.waitFor({ state: 'detached' });
    }

    ahead = 2 * DAY + 60_000;
    await watch.check();
    for (const [index, page] of pages.entries()) {
      const announcement = page
        .getByRole('article')
        .filter({ hasText: /Winter sea.*(vote until|vota)/i })
        .last();
      await announcement.getByRole('button', { name: /^(Vote|Votar)/ }).click();
      const ballot = page.getByRole('article').last();
      await ballot.getByRole('combobox').waitFor();
      const favourite = index === 2 ? /Tide 2/ : /Tide 3/;
      const value = await ballot.getByRole('option', { name: favourite }).getAttribute('value');
      await ballot.getByRole('combobox').selectOption(value);
      await ballot.getByRole('button', { name: /^(Choose|Elegir)$/ }).click();
      await ballot.getByText(favourite).first().waitFor();
    }

    ahead = 5 * DAY + 240_000;
    await watch.check();
    for (const page of [stewardPage, ...pages]) {
      const results = page.getByRole('article').last();
      await results.getByRole('img', { name: /Results of “Winter sea”/ }).waitFor();
      await expect.poll(() => results.textContent()).toMatch(/Tide 3.*Tide 2.*Tide 1/s);
    }
  });
});
