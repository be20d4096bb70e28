import type { Conversation } from '../../src/conversation/conversation.ts';
import { readCommands } from '../../src/conversation/registry/registry.ts';
import { openStore } from '../../src/records/open.ts';
import { askLine } from '../../src/terminal/seat.ts';
import { jsonOf } from '../../src/terminal/shown.ts';
import { PATIENT } from '../records/patience.ts';
import { sharedWorkers } from '../workers/shared.ts';

/**
 * Members of one group who ask in the terminal and read what `--json` prints, over a store of their own. `Shown` is as
 * much of it as a file looks at.
 */
export async function openTerminalRoom<Shown>(group: string) {
  const faults: unknown[] = [];
  const conversation: Conversation = {
    registry: await readCommands(new URL('../../commands/', import.meta.url)),
    services: { store: await openStore('sqlite::memory:', PATIENT), workers: sharedWorkers() },
    key: new Uint8Array(32).fill(7),
    onFault: fault => faults.push(fault),
  };
  return {
    /** What went wrong inside, which members are not told. */
    faults,
    async ask(member: string, line: string): Promise<Shown> {
      const seat = { member, group, language: 'en' as const, manages: false, roles: [] };
      const answered = await askLine(line, seat, conversation);
      return (await jsonOf(answered, '.tintmoot/test-pictures')) as unknown as Shown;
    },
    async [Symbol.asyncDispose]() {
      await conversation.services.workers.close();
      await conversation.services.store.close();
    },
  };
}

export type TerminalRoom<Shown> = Awaited<ReturnType<typeof openTerminalRoom<Shown>>>;
