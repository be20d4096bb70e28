import { pino } from 'pino';
import { readBook } from '../../src/conversation/book.ts';
import type { Conversation } from '../../src/conversation/receive.ts';
import { connect } from '../../src/discord/client.ts';
import { register } from '../../src/discord/register.ts';
import { openHost } from '../../src/loopback/index.ts';
import type { HostOptions } from '../../src/loopback/interface.ts';
import { openStore } from '../../src/records/open.ts';
import type { Store } from '../../src/records/store.ts';
import { openWorkers } from '../../src/workers/workers.ts';

export const book = await readBook(new URL('../../commands/', import.meta.url));
const token = 'loopback-token';

export type RoomOptions = { readonly store?: Store; readonly host?: HostOptions; readonly log?: string };

/**
 * The production path end to end on this machine: the real client, registered commands, a group with a steward
 * and a member, and a store in memory unless another is handed in.
 */
export async function openRoom({ store, host: hostOptions, log = 'silent' }: RoomOptions = {}) {
  const host = await openHost(hostOptions);
  const group = host.addGuild({ name: 'Sunday soapers', channels: ['bench', 'show-and-tell'] });
  const kept = store ?? (await openStore('sqlite::memory:'));
  const faults: unknown[] = [];
  const conversation: Conversation = {
    book,
    house: { store: kept, workers: openWorkers() },
    key: new Uint8Array(32).fill(7),
    onFault: fault => faults.push(fault),
  };
  await register(book, { token, api: host.api });
  const connection = await connect({ token, api: host.api }, conversation, pino({ level: log }));
  return {
    host,
    group,
    conversation,
    connection,
    faults,
    steward: group.addMember({ name: 'Odile', permissions: 1n << 5n }),
    member: group.addMember({ name: 'Bram' }),
    async [Symbol.asyncDispose]() {
      await connection.close();
      await conversation.house.workers.close();
      if (!store) await kept.close();
      await host.close();
    },
  };
}
