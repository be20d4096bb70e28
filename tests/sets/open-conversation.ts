import type { Conversation } from '../../src/conversation/conversation.ts';
import { readCommands } from '../../src/conversation/registry/registry.ts';
import { openStore } from '../../src/records/open.ts';
import { signingKeyFile, signingKeyOf } from '../../src/records/signing-key.ts';
import { PATIENT } from '../records/patience.ts';
import { sharedWorkers } from '../workers/shared.ts';

/** The real conversation with every command, over an empty store unless one is named; faults end the test. */
export async function openConversation(address = 'sqlite::memory:'): Promise<Conversation & AsyncDisposable> {
  const store = await openStore(address, PATIENT);
  const workers = sharedWorkers();
  return {
    registry: await readCommands(new URL('../../commands/', import.meta.url)),
    services: { store, workers },
    key: await signingKeyOf(store, signingKeyFile(address)),
    onFault: fault => {
      throw fault;
    },
    async [Symbol.asyncDispose]() {
      await workers.close();
      await store.close();
    },
  };
}
