import { execFile } from 'node:child_process';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { MessageView } from '../../../src/loopback/interface.ts';
import { day, type Fair, type FairRooms, openFair, photoOf } from './room.ts';

const tally = new URL('../../../src/terminal/tally.ts', import.meta.url).pathname;

let rooms: FairRooms;
let fair: Fair;
let folder: string;
beforeAll(async () => {
  rooms = await openFair();
  fair = rooms.group();
  folder = await mkdtemp(join(tmpdir(), 'export-'));
  await fair.steward.run('/challenge open', {
    title: 'Slate',
    'entries-until': 'in 1 day',
    'votes-until': 'in 2 days',
  });
  const photo = await photoOf(['#3f6fa8']);
  for (const [who, title] of [
    [fair.ana, '=HYPERLINK("x")'],
    [fair.bea, 'Moss, "deep"'],
    [fair.cleo, 'Fog'],
  ] as const)
    await who.run('/challenge enter', { photo, title, colourants: 'ultramarine blue' });
  await fair.wait(day);
  await fair.ana.run('/challenge vote', { ranking: '2,3' });
  await fair.bea.run('/challenge vote', { ranking: '3,1' });
  await fair.cleo.run('/challenge vote', { ranking: '1=2' });
  await fair.member.run('/challenge vote', { ranking: '3,2,1' });
  await fair.steward.run('/challenge vote', { ranking: '3,2,1' });
  await fair.wait(day + 6_000);
});
afterAll(async () => {
  await rooms[Symbol.asyncDispose]();
  await rm(folder, { recursive: true, force: true });
});

const fileOf = (message: MessageView, name: string) =>
  new TextDecoder().decode(message.files.find(file => file.name === name)?.bytes());

describe('an exported challenge', () => {
  test('counted again by the tally tool gives the result that was told', async () => {
    const exported = await fair.steward.run('/challenge export');
    expect(exported.ephemeral).toBe(true);
    const json = JSON.parse(fileOf(exported, 'challenge.json'));
    const path = join(folder, 'challenge.json');
    await writeFile(path, JSON.stringify(json));
    const { stdout } = await promisify(execFile)(process.execPath, [tally, path]);
    const recount = JSON.parse(stdout);
    expect(recount).toEqual(json.result.tally);
    expect(recount.ballots).toBe(5);
    const winner = json.entries.find(({ entry }: { entry: string }) => entry === recount.ranking[0][0]);
    expect(winner).toMatchObject({ title: 'Fog', place: '1' });
    const told = await fair.member.run('/challenge results');
    expect(told.text).toContain('First in “Slate”: “Fog” by Cleo');
  });

  test('bundles equal ballots, and names nobody who cast them', async () => {
    const json = JSON.parse(fileOf(await fair.steward.run('/challenge export'), 'challenge.json'));
    expect(json.ballots.map(({ count }: { count: number }) => count).sort()).toEqual([1, 1, 1, 2]);
    expect(JSON.stringify(json.ballots)).not.toContain(fair.member.id);
  });

  test('as CSV is one row an entry, and no title is a formula', async () => {
    const rows = fileOf(await fair.steward.run('/challenge export'), 'challenge.csv').split('\r\n');
    expect(rows[0]).toMatch(/^place,number,entry,title,maker/);
    expect(rows).toHaveLength(5);
    expect(rows.find(row => row.includes('HYPERLINK'))).toContain(`,"'=HYPERLINK(""x"")",Ana,`);
    expect(rows.find(row => row.includes('Moss'))).toContain(',"Moss, ""deep""",Bea,');
  });
});
