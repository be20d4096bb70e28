/*
 * `node tests/sets/write-missed.ts [FILE...]`: which lines of these sets, or of all, are not understood, into missed.json;
 * what became of each since it was last written goes to the terminal. What a line of it newly misses was understood before: look first.
 */
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { basename } from 'node:path';
import { MISSED, type Missed, missedIn, PARTS } from './missed.ts';
import { openConversation } from './open-conversation.ts';
import { score } from './score.ts';
import type { TextSet } from './text-set.ts';

const folder = new URL('.', import.meta.url);
const sets = readdirSync(folder).filter(name => name.endsWith('.json') && name !== 'missed.json');
const wanted = process.argv.length > 2 ? process.argv.slice(2).map(file => basename(file)) : sets;

const all: Record<string, Missed> = { ...MISSED };
await using conversation = await openConversation();
for (const file of wanted) {
  const set = JSON.parse(readFileSync(new URL(file, folder), 'utf8')) as TextSet;
  const now = missedIn((await score(set, conversation)).misses);
  for (const part of PARTS) {
    const before = MISSED[file]?.[part] ?? [];
    const lost = now[part].filter(at => !before.includes(at));
    const won = before.filter(at => !now[part].includes(at));
    if (lost.length + won.length > 0)
      process.stdout.write(`${file} ${part}: newly missed ${lost.join(' ')}; newly read ${won.join(' ')}\n`);
  }
  all[file] = now;
}
const lines = sets
  .filter(file => all[file])
  .map(file => `${JSON.stringify(file)}: ${JSON.stringify(all[file])}`);
writeFileSync(new URL('missed.json', folder), `{\n${lines.join(',\n')}\n}\n`);
