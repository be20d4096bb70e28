import type { Conversation } from './conversation/conversation.ts';
import type { CommandRegistry } from './conversation/registry/registry.ts';
import type { Environment } from './environment.ts';
import type { Log } from './log.ts';
import { StoreFailure } from './records/failure.ts';
import { openStore } from './records/open.ts';
import { onSetAside } from './records/set-aside.ts';
import { signingKeyFile, signingKeyOf } from './records/signing-key.ts';
import { openWorkers, type Workers } from './workers/workers.ts';

export const COMMANDS = new URL('../commands/', import.meta.url);

type Opening = {
  readonly registry?: Promise<CommandRegistry>;
  readonly checkDue?: () => void;
  readonly workers?: Workers;
  readonly onStoreFailure?: (failure: StoreFailure) => void;
  /** Hears why when the store is gone for as long as this process lives. */
  readonly onStoreLost?: (why: string) => void;
};

const everyCommand = async () => (await import('./conversation/registry/registry.ts')).readCommands(COMMANDS);

/** Opens everything a question needs. */
export async function openConversation(
  environment: Environment,
  log: Log,
  { registry = everyCommand(), checkDue, workers = openWorkers(), onStoreFailure, onStoreLost }: Opening = {},
): Promise<Conversation> {
  const {
    TINTMOOT_STORE: address,
    TINTMOOT_SIGNING_KEY: given,
    TINTMOOT_SIGNING_KEY_BEFORE: before,
  } = environment;
  const store = await openStore(address, undefined, { ...(onStoreLost && { onLost: onStoreLost }) });
  onSetAside(({ kind, key, failure }) => {
    onStoreFailure?.(failure);
    log.error({ kind, key, why: failure.kind }, 'a record could not be read and was set aside');
  });
  const known = await registry.catch(async (fault: unknown) => {
    await store.close();
    throw fault;
  });
  // Behind the commands, and so behind the connection of a bot: it brings what reads questions, six hundred files.
  const { openLately } = await import('./conversation/lately/lately.ts');
  return {
    registry: known,
    services: { store, workers, checkDue, lately: openLately() },
    key: given ? Buffer.from(given, 'base64') : await signingKeyOf(store, signingKeyFile(address)),
    ...(before && { keyBefore: Buffer.from(before, 'base64') }),
    onFault: (fault, reference) => {
      if (fault instanceof StoreFailure) onStoreFailure?.(fault);
      const { name, message, stack } = fault as Error;
      log.error({ reference, name, message, stack }, 'a question was not answered');
    },
  };
}

export async function closeConversation({ services }: Conversation): Promise<void> {
  await services.workers.close();
  await services.store.close();
}
