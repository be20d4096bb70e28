import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { speckedBar } from '../photo/render/specked-bar.ts';
import {
  closeWindows,
  hands,
  hasChromium,
  openServedRoom,
  type ServedRoom,
  sitDown,
  standUp,
} from './chromium.ts';

const specked = speckedBar();
const photo = { name: 'specks.png', mimeType: 'image/png', buffer: Buffer.from(specked) };

/** Lets go of a file over the page, or pastes it, as a browser reports it. */
const handOver = (page: Page, how: 'drop' | 'paste') =>
  page.evaluate(
    ([kind, base64]) => {
      const bytes = Uint8Array.from(atob(base64), sign => sign.charCodeAt(0));
      const held = new DataTransfer();
      held.items.add(new File([bytes], `${kind}.png`, { type: 'image/png' }));
      const event =
        kind === 'drop'
          ? new DragEvent('drop', { dataTransfer: held, bubbles: true, cancelable: true })
          : new ClipboardEvent('paste', { clipboardData: held, bubbles: true });
      document.body.dispatchEvent(event);
    },
    [how, photo.buffer.toString('base64')] as const,
  );

describe.skipIf(!hasChromium)('photos on the page', () => {
  let served: ServedRoom;
  beforeAll(async () => {
    served = await openServedRoom();
  });
  afterEach(standUp);
  afterAll(async () => {
    await closeWindows();
    await served[Symbol.asyncDispose]();
  });

  const visit = (): Promise<Page> => {
    const group = served.host.addGuild({ name: 'Sunday soapers', channels: ['bench'] });
    return sitDown(served.seat(group.addMember({ name: 'Bram' })));
  };

  test('a bare /diagnose opens boxes to tick, which are enough for an answer', async () => {
    const page = await visit();
    const { line, last } = hands(page);
    await line.fill('/diagnose');
    await page.keyboard.press('Escape');
    await page.keyboard.press('Enter');
    const powder = page.getByRole('checkbox', { name: /powder/ });
    await powder.check();
    if (process.env.SHOTS) await page.screenshot({ path: `${process.env.SHOTS}/ticks.png` });
    const { height } = (await powder.locator('..').boundingBox())!;
    // A gloved finger. Source: WCAG 2.2, 2.5.5 Target Size (Enhanced).
    expect(height).toBeGreaterThanOrEqual(44);
    await page.getByRole('button', { name: 'Send' }).click();
    await last.getByRole('heading').first().waitFor();
    await expect.poll(() => last.textContent()).toMatch(/soda ash/i);
  });

  test('a flaw is read from a photo chosen by button, and a question is answered by button', async () => {
    const page = await visit();
    const { line, last } = hands(page);
    await line.fill('/diagnose ');
    await page.keyboard.press('Escape');
    const [chooser] = await Promise.all([
      page.waitForEvent('filechooser'),
      page.getByRole('button', { name: 'Attach' }).click(),
    ]);
    await chooser.setFiles(photo);
    await page.getByText('Attached: specks.png').waitFor();
    await expect.poll(() => page.getByLabel('photo').inputValue()).toContain('specks.png');
    await page.getByRole('button', { name: 'Ask' }).click();
    await last.getByRole('heading').first().waitFor();
    await expect.poll(() => last.textContent()).toContain('/diagnose photo:specks.png');
    await last.getByRole('img').first().waitFor();

    const before = await last.locator('.body').textContent();
    await last.getByRole('button', { name: /^No/ }).first().click();
    await page.waitForFunction(
      old => document.querySelector('article:last-of-type .body')?.textContent !== old,
      before,
    );
    expect(await page.getByRole('article').count()).toBe(1);
  });

  test.each(['drop', 'paste'] as const)('a photo can come by %s, and be taken away again', async how => {
    const page = await visit();
    await hands(page).line.fill('/diagnose words:"dots"');
    await handOver(page, how);
    await page.getByText(`Attached: ${how}.png`).waitFor();
    // The name stands there at once; the picture is decoded after it.
    await expect
      .poll(() => page.locator('.attachments img').evaluate((image: HTMLImageElement) => image.naturalWidth))
      .toBe(960);
    await page.getByRole('button', { name: `Remove ${how}.png` }).click();
    await expect.poll(() => page.locator('.attachments li').count()).toBe(0);
  });

  test('a photo on the bench is diagnosed from its own button, for the asker only', async () => {
    const page = await visit();
    await handOver(page, 'drop');
    await hands(page).line.fill('my last bar');
    await page.getByRole('button', { name: 'Say it to everyone instead' }).click();
    const note = hands(page).last;
    expect(await page.getByRole('listbox').count()).toBe(0);
    await note.getByRole('img').waitFor();
    await note.getByRole('button', { name: 'Diagnose this picture' }).click();
    const verdict = hands(page).entries.nth(1);
    await verdict.getByRole('heading').first().waitFor();
    await expect.poll(() => verdict.textContent()).toContain('Bram pressed “Diagnose this picture”');
    await expect.poll(() => verdict.textContent()).toContain('Only you see this');
  });

  test('a file that no option takes is not sent along in silence', async () => {
    const page = await visit();
    await hands(page).line.fill('/help');
    await handOver(page, 'drop');
    await page.getByText('Attached: drop.png').waitFor();
    await hands(page).line.press('Escape');
    await hands(page).line.press('Enter');
    await page.getByText('This command takes no file.').waitFor();
    expect(await hands(page).entries.count()).toBe(0);
  });

  test('a colour is matched in spoons, with a picture of what to expect', async () => {
    const page = await visit();
    const answer = await hands(page).ask('/match target:"#6f8fb8" portion:"2 cups" from:catalogue');
    expect(await answer.getByRole('heading').first().textContent()).toMatch(/tsp|Tbsp/);
    await answer.getByRole('img').first().waitFor();
    expect(await answer.getByRole('img').first().getAttribute('alt')).toContain('#6f8fb8');
  });
});
