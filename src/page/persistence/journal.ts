import { chmod, mkdir, open, readdir, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Host, HostEvent } from '../../loopback/index.ts';
import type { Asked } from '../model.ts';
import { answered, compact } from './compact.ts';

/** Messages a room remembers, and lines its file may grow to before it is tidied. */
const MOST_MESSAGES = 300;
const TIDY_AFTER = 4_000;

/** The history of a room in a folder: one event a line, pictures beside it. */
export type Journal = {
  readonly events: readonly HostEvent[];
  /** What interactions asked, by id. */
  readonly asked: ReadonlyMap<string, Asked>;
  /** Writes down everything that happens in the room from now on. */
  follow(host: Host): void;
  noteAsked(interaction: string, asked: Asked): void;
  /** Resolves once everything is written. */
  close(): Promise<void>;
};

/** What a line of the file holds: an event without its bytes, or what an interaction asked. */
type Line = { readonly event: HostEvent } | { readonly interaction: string; readonly asked: Asked };

/** Opens the history in a folder, tidied: empty where there is none. Undefined while another process has it open. */
export async function openJournal(folder: string): Promise<Journal | undefined> {
  await mkdir(join(folder, 'files'), { recursive: true, mode: 0o700 });
  // A room of an earlier version may be open to others.
  for (const one of [folder, join(folder, 'files')]) await chmod(one, 0o700);
  const release = await lock(join(folder, 'open-in'));
  if (!release) return undefined;
  const written = await readLines(folder);
  const kept = new WrittenRoom(folder, written, release);
  await kept.tidy();
  return kept;
}

class WrittenRoom implements Journal {
  events: readonly HostEvent[];
  readonly asked: Map<string, Asked>;
  readonly #folder: string;
  readonly #release: () => Promise<void>;
  #queue: Promise<void> = Promise.resolve();
  #fresh: HostEvent[] = [];
  #leave = () => {};

  constructor(folder: string, written: readonly Line[], release: () => Promise<void>) {
    this.#folder = folder;
    this.#release = release;
    this.events = written.flatMap(line => ('event' in line ? [line.event] : []));
    this.asked = new Map(
      written.flatMap(line => ('event' in line ? [] : [[line.interaction, line.asked] as const])),
    );
  }

  follow(host: Host): void {
    // What the host adds to a room of its own accord comes after what was replayed.
    const replayed = this.events.length;
    const take = (event: HostEvent) => {
      this.#fresh.push(event);
      if (!FLEETING.has(event.kind)) this.#later(() => this.#append([{ event }], event));
      if (this.#fresh.length > TIDY_AFTER) this.#later(() => this.tidy());
    };
    this.#leave = host.subscribe(take, replayed);
  }

  noteAsked(interaction: string, asked: Asked): void {
    this.asked.set(interaction, asked);
    this.#later(() => this.#append([{ interaction, asked }]));
  }

  async close(): Promise<void> {
    this.#leave();
    await this.#queue;
    await this.#release();
  }

  /** Writes the file anew with what is worth keeping, and drops the pictures of what is not. */
  async tidy(): Promise<void> {
    this.events = compact([...this.events, ...this.#fresh], MOST_MESSAGES);
    this.#fresh = [];
    const wanted = answered(this.events);
    for (const id of this.asked.keys()) if (!wanted.has(id)) this.asked.delete(id);
    const lines: readonly Line[] = [
      ...this.events.map(event => ({ event })),
      ...[...this.asked].map(([interaction, asked]) => ({ interaction, asked })),
    ];
    for (const event of this.events) await this.#writeBytes(event, 'wx');
    const file = join(this.#folder, 'room.jsonl');
    await writeFile(`${file}.new`, lines.map(textOf).join(''), { mode: 0o600 });
    await rename(`${file}.new`, file);
    const ids = new Set(this.events.flatMap(event => (event.kind === 'file-stored' ? [event.id] : [])));
    for (const name of await readdir(join(this.#folder, 'files')))
      if (!ids.has(name)) await rm(join(this.#folder, 'files', name));
  }

  async #append(lines: readonly Line[], event?: HostEvent): Promise<void> {
    if (event) await this.#writeBytes(event, 'w');
    await writeFile(join(this.#folder, 'room.jsonl'), lines.map(textOf).join(''), { flag: 'a', mode: 0o600 });
  }

  async #writeBytes(event: HostEvent, flag: 'w' | 'wx'): Promise<void> {
    if (event.kind !== 'file-stored') return;
    await writeFile(join(this.#folder, 'files', event.id), event.bytes, { flag, mode: 0o600 }).catch(
      error => {
        if ((error as NodeJS.ErrnoException).code !== 'EEXIST') throw error;
      },
    );
  }

  /** One write after the other. A history that cannot be written is lost, the room goes on. */
  #later(work: () => Promise<void>): void {
    this.#queue = this.#queue.then(work).catch(() => undefined);
  }
}

const FLEETING: ReadonlySet<HostEvent['kind']> = new Set([
  'interaction-sent',
  'interaction-acknowledged',
  'interaction-failed',
  'form-opened',
]);

const textOf = (line: Line): string =>
  `${JSON.stringify(line, (key, value: unknown) => (key === 'bytes' ? undefined : value))}\n`;

/** The lines of the file; one that was cut short by a crash is left out, and so are pictures that are gone. */
async function readLines(folder: string): Promise<readonly Line[]> {
  const text = await readFile(join(folder, 'room.jsonl'), 'utf8').catch(() => '');
  const lines = text.split('\n').flatMap(one => {
    try {
      return one === '' ? [] : [JSON.parse(one) as Line];
    } catch {
      return [];
    }
  });
  const whole = await Promise.all(lines.map(line => withBytes(line, folder)));
  return whole.filter(line => line !== undefined);
}

async function withBytes(line: Line, folder: string): Promise<Line | undefined> {
  if (!('event' in line) || line.event.kind !== 'file-stored') return line;
  const bytes = await readFile(join(folder, 'files', line.event.id)).catch(() => undefined);
  return bytes && { event: { ...line.event, bytes: new Uint8Array(bytes) } };
}

/** Claims a folder for this process: a file that names it. A claim of a process that is gone counts for nothing. */
async function lock(path: string): Promise<(() => Promise<void>) | undefined> {
  for (const _try of [1, 2]) {
    const file = await open(path, 'wx').catch(() => undefined);
    if (file) {
      await file.writeFile(String(process.pid));
      await file.close();
      return () => rm(path, { force: true });
    }
    const owner = Number(await readFile(path, 'utf8').catch(() => ''));
    if (owner > 0 && isAlive(owner)) return undefined;
    await rm(path, { force: true });
  }
  return undefined;
}

function isAlive(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'EPERM';
  }
}
