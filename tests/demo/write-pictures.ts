/*
 * Makes the README's pictures from the demo, all of them: `node tests/demo/write-pictures.ts`. The page is taken with
 * Chromium (CHROMIUM names another); the others are drawn by the commands themselves.
 */
import { writeFile } from 'node:fs/promises';
import { demoClock, furnishDemo, playDemo } from '../../src/demo/load.ts';
import { hands, openBrowser, openServedRoom } from '../browser/chromium.ts';
import { demoPictures, PICTURES, pageInputs, small } from './readme-pictures.ts';

for (const [name, png] of await demoPictures())
  await writeFile(new URL(`${name}.webp`, PICTURES), await small(png));

const clock = demoClock(7);
await using room = await openServedRoom({ host: { now: clock.now } });
furnishDemo(room.host);
await playDemo({ host: room.host, keepTime: () => room.watch.check(), onAsked: () => {} }, clock);
const odile = room.host.guilds
  .flatMap(({ members }) => members)
  .find(one => one.name === 'Odile' && one.guild.name === 'Harbour suds')!;
const browser = await openBrowser();
const context = await browser.newContext({
  viewport: { width: 390, height: 844 },
  deviceScaleFactor: 2,
  hasTouch: true,
  locale: 'en-US',
});
const page = await context.newPage();
await page.goto(room.seat(odile));
const me = hands(page);
await me.line.waitFor();
await me.ask('/dose colourant:"Deep blue" portion:"2 cups"');
const entry = await me.ask('/preview mix:"Deep blue pastel + Snow"');
await entry.locator('img').first().scrollIntoViewIfNeeded();
await entry
  .locator('img')
  .first()
  .evaluate(async image => await (image as HTMLImageElement).decode());
await page.evaluate(() => window.scrollTo(0, document.body.scrollHeight));
await writeFile(new URL('page.webp', PICTURES), await small(await page.screenshot()));
await writeFile(new URL('page.inputs', PICTURES), `${pageInputs()}\n`);
await browser.close();
process.exit(0);
