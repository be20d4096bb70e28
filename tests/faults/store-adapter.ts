import { RecordAdapter, type TextEntry, type TextWrite } from '../../src/records/adapters/adapter.ts';
import { StoreFailure } from '../../src/records/failure.ts';
import type { CommitResult } from '../../src/records/store.ts';

type Fault = 'before' | 'after' | 'lies' | 'stalls' | undefined;

/**
 * A storage that fails when told to: `before` doing what was asked, `after` doing it (contact lost on the way
 * back), it `lies`: reads give text that is no record, or it `stalls`: it does what was asked and never says so.
 */
export class FailingAdapter extends RecordAdapter {
  readonly #inner: RecordAdapter;
  /** Which fault the n-th call from now has, the first being 0. */
  faultOf: (call: number, during: 'read' | 'write') => Fault = () => undefined;
  calls = 0;

  constructor(inner: RecordAdapter) {
    super();
    this.#inner = inner;
  }

  async texts(keys: readonly string[]): Promise<readonly (string | undefined)[]> {
    const found = await this.#call('read', () => this.#inner.texts(keys));
    return found ?? keys.map(() => '{"val');
  }

  async range(from: string, to: string, limit: number): Promise<readonly TextEntry[]> {
    const found = await this.#call('read', () => this.#inner.range(from, to, limit));
    return found ?? [[`${from}x`, 'null']];
  }

  async commit(writes: readonly TextWrite[]): Promise<CommitResult> {
    const result = await this.#call('write', () => this.#inner.commit(writes));
    return result ?? { done: true };
  }

  async disconnect(): Promise<void> {
    await this.#inner.disconnect();
  }

  async #call<T>(during: 'read' | 'write', work: () => Promise<T>): Promise<T | undefined> {
    const fault = this.faultOf(this.calls, during);
    this.calls += 1;
    if (fault === 'lies' && during === 'read') return undefined;
    if (fault === 'before') throw new StoreFailure('unreachable', during, 'the storage is gone');
    const answer = await work();
    if (fault === 'stalls') return await new Promise(() => {});
    if (fault === 'after')
      throw new StoreFailure('unreachable', during, 'lost on the way', { saved: 'unknown' });
    return answer;
  }
}
