import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import type { Member } from '../../src/loopback/index.ts';
import { shoot } from '../photo/render/scene.ts';
import { FLAW_DRAWINGS, shotOf } from '../photo/render/shots.ts';
import { type Bot, quantile, startBot } from './bots/side-by-side.ts';
import { hold } from './figures.ts';

const KEYSTROKES = 400;
/** 50 on a machine with two cores of its own; what the machine's other work costs comes on top. */
const MOST_MS = 50;
/** Members who send photo after photo meanwhile. */
const PHOTOGRAPHERS = 3;

/** How long suggestions take, sorted, ms. */
async function typing({ members }: Bot): Promise<readonly number[]> {
  const took: number[] = [];
  for (let n = 0; n < KEYSTROKES; n += 1) {
    const began = performance.now();
    const member = members[n % 4] as Member;
    const offered = await member.complete(
      '/dose',
      { colourant: 'ultramarine'.slice(0, 1 + (n % 10)) },
      'colourant',
    );
    took.push(performance.now() - began);
    expect(offered.length).toBeGreaterThan(0);
    // As fast as somebody types.
    await new Promise(resolve => setTimeout(resolve, 20));
  }
  return took.sort((a, b) => a - b);
}

test('suggestions while photos are read', { timeout: 600_000 }, async ({ task }) => {
  const folder = await mkdtemp(join(tmpdir(), 'tintmoot-'));
  const bot = await startBot(new URL('../../src/main.js', import.meta.url), {
    TINTMOOT_STORE: `sqlite:${join(folder, 'records.sqlite')}`,
  });
  // Also where a photo is not answered in time: a bot that is left holds up the whole run.
  onTestFinished(async () => {
    await bot.close();
    await rm(folder, { recursive: true, force: true });
  });
  const { flaw, colours = [] } = FLAW_DRAWINGS['translucent-veins'](1034);
  const bytes = await shoot(
    shotOf(
      77,
      { blur: 0.8, noise: 5, quality: 93 },
      { flaws: [flaw], colours, paper: 'beside', width: 4000, height: 3000 },
    ),
  );
  await typing(bot);
  const quiet = await typing(bot);
  let photos = 0;
  let isOver = false;
  const photographer = async (member: Member) => {
    while (!isOver) {
      await member.run('/diagnose', { photo: { name: 'bar.jpg', bytes } });
      photos += 1;
    }
  };
  const sending = Promise.all(bot.members.slice(4, 4 + PHOTOGRAPHERS).map(photographer));
  const busy = await typing(bot);
  isOver = true;
  await sending;
  const at95 = (took: readonly number[]) => quantile(took, 0.95);
  hold(task, [
    {
      what: `95 % of suggestions while photos are read (${at95(quiet).toFixed(0)} ms with nothing else to do)`,
      seen: at95(busy),
      most: MOST_MS,
      unit: 'ms',
    },
    { what: 'photos read meanwhile', seen: photos, least: 4, unit: 'photos' },
  ]);
});
