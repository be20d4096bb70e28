import type { Conversation } from '../../src/conversation/conversation.ts';
import { readCommands } from '../../src/conversation/registry.ts';
import { openStore } from '../../src/records/open.ts';
import { signingKeyOf } from '../../src/records/signing-key.ts';
import { openWorkers } from '../../src/workers/workers.ts';

/** The real conversation with every command, over an empty store; faults end the test. */
export async function openConversation(): Promise<Conversation & AsyncDisposable> {
  const store = await openStore('sqlite::memory:');
  const workers = openWorkers();
  return {
    registry: await readCommands(new URL('../../commands/', import.meta.url)),
    services: { store, workers },
    key: await signingKeyOf(store, undefined),
    onFault: fault => {
      throw fault;
    },
    async [Symbol.asyncDispose]() {
      await workers.close();
      await store.close();
    },
  };
}
