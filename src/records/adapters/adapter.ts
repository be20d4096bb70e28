import type { KeyvStorageAdapter, KeyvStorageCapability, KeyvStorageEntry } from 'keyv';
import { keyvStorageCapability } from 'keyv';
import { anonymous, StoreFailure } from '../failure.ts';
import type { CommitResult, Span } from '../store.ts';

/** A step of a commit as an adapter sees it: values are text already. */
export type TextWrite =
  | { readonly kind: 'put' | 'add'; readonly key: string; readonly text: string }
  | { readonly kind: 'absent' | 'drop'; readonly key: string };

export type TextEntry = readonly [key: string, text: string];

/** Our adapters reject and emit nothing, so they are no event emitters; keyv asks before it listens. */
type AdapterMethods =
  | 'capabilities'
  | 'clear'
  | 'delete'
  | 'deleteMany'
  | 'disconnect'
  | 'get'
  | 'getMany'
  | 'has'
  | 'hasMany'
  | 'namespace'
  | 'set'
  | 'setMany';

/**
 * What a storage has to be able to do to serve as a store: three things, from which everything that keyv asks
 * of an adapter follows. Each of them rejects with a `StoreFailure` when it fails.
 *
 * keyv's adapters list by walking the whole storage, and know no insert-if-absent; hence adapters of ours.
 */
export abstract class RecordAdapter implements Pick<KeyvStorageAdapter, AdapterMethods> {
  /** Apart from other users of the same storage. keyv assigns it, so it cannot be readonly. */
  namespace: string | undefined = 'tintmoot';

  /** The texts under the keys, in their order. */
  abstract texts(keys: readonly string[]): Promise<readonly (string | undefined)[]>;
  /** At most `limit` entries with `from <= key < to`, in byte order. */
  abstract range(from: string, to: string, limit: number): Promise<readonly TextEntry[]>;
  /** `range` of each span; to be overridden where one message can ask for all. */
  async ranges(spans: readonly Span[], limit: number): Promise<readonly (readonly TextEntry[])[]> {
    return await Promise.all(spans.map(({ from, to }) => this.range(from, to, limit)));
  }
  /** All or nothing, durable when it resolves; the keys are distinct. */
  abstract commit(writes: readonly TextWrite[]): Promise<CommitResult>;
  /** Waits for what is in flight, then lets go. */
  abstract disconnect(): Promise<void>;

  get capabilities(): KeyvStorageCapability {
    return keyvStorageCapability(this);
  }

  async get<Value>(key: string) {
    return (await this.getMany<Value>([key]))[0];
  }

  async getMany<_Value>(keys: string[]) {
    return [...(await this.texts(keys))];
  }

  async set(key: string, value: unknown, expires?: number): Promise<boolean> {
    await this.setMany([{ key, value, ...(expires === undefined ? {} : { expires }) }]);
    return true;
  }

  async setMany<Value>(values: KeyvStorageEntry<Value>[]): Promise<boolean[]> {
    const writes = values.map(({ key, value, expires }): TextWrite => {
      if (expires !== undefined) {
        throw new StoreFailure(
          'unfit',
          'write',
          `${anonymous(key)}: records do not expire; write down when they are due`,
        );
      }
      if (typeof value !== 'string')
        throw new StoreFailure('unfit', 'write', `${anonymous(key)}: only text is stored`);
      return { kind: 'put', key, text: value };
    });
    await this.commit(writes);
    return values.map(() => true);
  }

  async has(key: string): Promise<boolean> {
    return (await this.texts([key]))[0] !== undefined;
  }

  async hasMany(keys: string[]): Promise<boolean[]> {
    return (await this.texts(keys)).map(text => text !== undefined);
  }

  async delete(key: string): Promise<boolean> {
    return (await this.deleteMany([key]))[0] === true;
  }

  async deleteMany(keys: string[]): Promise<boolean[]> {
    const present = await this.hasMany(keys);
    await this.commit(keys.map(key => ({ kind: 'drop', key })));
    return present;
  }

  /** Nothing of ours empties the store, so nothing can by mistake. */
  async clear(): Promise<void> {
    throw new StoreFailure('unfit', 'write', 'the store is not cleared from here');
  }
}
