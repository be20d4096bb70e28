import { mkdtemp, readdir, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { photographBar } from '../../src/demo/bar-photo.ts';
import { demoClock, furnishDemo, playDemo } from '../../src/demo/load.ts';
import { demoScene } from '../../src/demo/scene.ts';
import { openRoom } from '../loopback/room.ts';

describe('the demo', () => {
  test('plays a week of commands without one refusal, and leaves a challenge in voting', async () => {
    const clock = demoClock(7);
    await using room = await openRoom({ host: { now: clock.now } });
    const lines: string[] = [];
    furnishDemo(room.host);
    const stage = {
      host: room.host,
      keepTime: () => room.watch.check(),
      onAsked: (_: string, by: string, line: string) => lines.push(`${by} ${line}`),
    };
    await playDemo(stage, clock);
    expect(room.faults).toEqual([]);
    expect(lines).toContain('Bram /dose colourant:Brick portion:"1 cup" strength:medium');
    const group = room.host.guilds.find(({ name }) => name === 'Harbour suds');
    const odile = group?.members.find(({ name }) => name === 'Odile');
    const seen = odile?.sees().map(({ text }) => text) ?? [];
    expect(seen.some(text => /Winter sea.*3 entries.*vote until/.test(text))).toBe(true);
    expect((await odile?.run('/challenge show'))?.text).toContain('voted on');
    expect((await odile?.run('/recipe list'))?.text).toContain('Harbour loaf');
  });

  test('that was ended before its last step is laid out from the beginning, one that was not is left as it is', async () => {
    const folder = await mkdtemp(join(tmpdir(), 'demo-'));
    await writeFile(join(folder, 'records.sqlite'), 'the first two steps');
    const scene = await demoScene(folder);
    expect(await readdir(folder).catch(() => 'gone')).toBe('gone');
    await using room = await openRoom({ host: { now: scene.now } });
    scene.furnish(room.host);
    await scene.play({ host: room.host, keepTime: () => room.watch.check(), onAsked: () => undefined });
    await demoScene(folder);
    expect(await readdir(folder)).not.toEqual([]);
    await demoScene(folder, { anew: true });
    expect(await readdir(folder).catch(() => 'gone')).toBe('gone');
  });

  test('draws the same photo for the same bar', () => {
    const bar = { colours: ['#eeeeee', '#334466'], design: 'swirl', seed: 3 } as const;
    expect(Buffer.compare(photographBar(bar), photographBar(bar))).toBe(0);
    expect(Buffer.compare(photographBar(bar), photographBar({ ...bar, seed: 4 }))).not.toBe(0);
  });
});
