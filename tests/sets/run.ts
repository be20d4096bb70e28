/* `node tests/sets/run.ts FILE`: scores a set of texts, prints the figures and every miss. */
import { readFileSync } from 'node:fs';
import { openConversation } from './open-conversation.ts';
import { score } from './score.ts';
import type { TextSet } from './text-set.ts';

const [file = ''] = process.argv.slice(2);
await using conversation = await openConversation();
const { misses, ...parts } = await score(JSON.parse(readFileSync(file, 'utf8')) as TextSet, conversation);
for (const miss of misses) process.stdout.write(`${miss}\n`);
for (const [name, { right, total }] of Object.entries(parts))
  process.stdout.write(`${name}: ${right} of ${total} (${((100 * right) / total).toFixed(1)} %)\n`);
