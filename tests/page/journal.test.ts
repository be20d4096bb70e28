import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { openHost } from '../../src/loopback/index.ts';
import { furnish, HOME, openJournal } from '../../src/page/index.ts';
import { memberAt } from '../../src/page/seats.ts';

let folder: string;
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'room-'));
});
afterEach(() => rm(folder, { recursive: true }));

/** One run of the room: opens it as it was left, does something in it, and closes it. */
async function oneRun<Result>(
  act: (room: {
    me: NonNullable<ReturnType<typeof memberAt>>;
    note: (id: string, line: string) => void;
  }) => Promise<Result>,
): Promise<Result> {
  const journal = await openJournal(folder);
  if (!journal) throw new Error('the room is open elsewhere');
  const host = await openHost({ replay: journal.events });
  journal.follow(host);
  furnish(host, { groupName: 'Home bench', name: 'Me', language: 'es' });
  const me = memberAt(host, HOME.group, HOME.member);
  if (!me) throw new Error('nobody sits here');
  try {
    return await act({ me, note: (id, line) => journal.noteAsked(id, { by: 'Me', line }) });
  } finally {
    await host.close();
    await journal.close();
  }
}

const bytes = new Uint8Array([1, 2, 3, 250]);

describe('the history of a room', () => {
  test('survives a restart: people, what was written, and the pictures', async () => {
    await oneRun(({ me }) => me.postMessage('my first bar', [{ name: 'bar.png', bytes }]));
    await oneRun(({ me }) => me.postMessage('my second bar'));
    await oneRun(async ({ me }) => {
      const seen = me.sees();
      expect(seen.map(({ text }) => text)).toEqual(['my first bar', 'my second bar']);
      expect(seen[0]?.files[0]?.bytes()).toEqual(bytes);
    });
  });

  test('loses at most the line that a crash cut short', async () => {
    await oneRun(({ me }) => me.postMessage('kept'));
    const file = join(folder, 'room.jsonl');
    await writeFile(file, `${await readFile(file, 'utf8')}{"event":{"kind":"message-cr`);
    await oneRun(async ({ me }) => expect(me.sees().map(({ text }) => text)).toEqual(['kept']));
  });

  test('forgets what was deleted, and its pictures', async () => {
    await oneRun(async ({ me }) =>
      me.deleteMessage(await me.postMessage('away', [{ name: 'a.png', bytes }])),
    );
    await oneRun(async ({ me }) => expect(me.sees()).toEqual([]));
    expect(await readdir(join(folder, 'files'))).toEqual([]);
  });

  test('keeps the newest 300 messages and stays as small', async () => {
    await oneRun(async ({ me }) => {
      for (let count = 1; count <= 310; count++) await me.postMessage(`note ${count}`);
    });
    await oneRun(async ({ me }) => {
      const seen = me.sees().map(({ text }) => text);
      expect(seen).toHaveLength(300);
      expect(seen.at(0)).toBe('note 11');
      expect(seen.at(-1)).toBe('note 310');
    });
  });

  test('is written by one process at a time', async () => {
    const first = await openJournal(folder);
    expect(await openJournal(folder)).toBeUndefined();
    await first?.close();
    const second = await openJournal(folder);
    expect(second).toBeDefined();
    await second?.close();
  });

  test('is not shut by a process that died with it open', async () => {
    await openJournal(folder).then(journal => journal?.close());
    await writeFile(join(folder, 'open-in'), '999999999');
    const journal = await openJournal(folder);
    expect(journal).toBeDefined();
    await journal?.close();
  });
});
