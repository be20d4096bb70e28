/*
 * A process that pours, cures and takes back batches through the commands until it is killed: `store-batch-writer.ts ADDRESS ROUND`.
 * Prints a line for each answer it was given: `poured`, `cured` or `undone`, then the name and the id of the batch.
 */
import { pino } from 'pino';
import type { Reply } from '../../src/conversation/reply.ts';
import { readEnvironment } from '../../src/environment.ts';
import { openConversation } from '../../src/open-conversation.ts';
import { askLine } from '../../src/terminal/seat.ts';

const [, , address = '', round = '0'] = process.argv;
const environment = readEnvironment({ TINTMOOT_STORE: address, TINTMOOT_LOG: 'silent' });
const conversation = await openConversation(environment, pino({ level: 'silent' }));
const seat = { member: '7', group: 'home', language: 'en', manages: false, roles: [] } as const;

async function ask(line: string): Promise<Reply<string>> {
  const { answer } = await askLine(line, seat, conversation);
  if (answer.kind !== 'reply') throw new Error(`${line}: ${JSON.stringify(answer)}`);
  return answer as Reply<string>;
}

const say = (what: string, name: string, id: string) => process.stdout.write(`${what} ${name} ${id}\n`);

if (round === '0') await ask('/shelf add item:Dusk amount:"900 g" colourant:"ultramarine violet"');
for (let n = 0; ; n += 1) {
  const name = `${round}-${n}`;
  const poured = await ask(`/batch poured made:"1 cup Dusk 1/4 tsp" name:"${name}"`);
  const { id } = (poured.data as { batch: { id: string } }).batch;
  say('poured', name, id);
  if (n % 3 > 0) {
    await ask(`/batch cured batch:"${name}" colours:"#7d6cb0"`);
    say('cured', name, id);
  }
  if (n % 3 < 2) {
    const undo = poured.choices?.find(choice => choice.kind === 'button' && choice.label === 'Undo');
    if (undo?.kind !== 'button') throw new Error('a pour that cannot be undone');
    await ask(`press ${undo.follow}`);
    say('undone', name, id);
  }
}
