import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { dirname } from 'node:path';

/** Lines that are remembered between starts. */
const MOST = 500;

/** Lines typed at earlier starts, newest first, as readline wants them; none where the file cannot be read. */
export async function readPastLines(file: string): Promise<string[]> {
  const text = await readFile(file, 'utf8').catch(() => '');
  return text.split('\n').filter(Boolean).reverse();
}

/** Keeps the newest lines. Only their owner can read the file. What cannot be written is not worth a fault. */
export async function keepPastLines(file: string, newestFirst: readonly string[]): Promise<void> {
  const text = newestFirst.slice(0, MOST).toReversed().join('\n');
  await mkdir(dirname(file), { recursive: true })
    .then(() => writeFile(file, `${text}\n`, { mode: 0o600 }))
    .catch(() => undefined);
}
