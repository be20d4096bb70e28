import type { Metrics } from './operations/metrics.ts';
import { probeWriting } from './records/probe.ts';
import type { Store } from './records/store.ts';

/**
 * Whether this process can answer: connected, and its records can be read. Once they have failed it is ready again when
 * something could be written: reads may go on while nothing can be, as on a full disk.
 */
export function readinessOf({
  store,
  metrics,
  closed,
}: {
  readonly store: Store;
  readonly metrics: Pick<Metrics, 'storeTrouble' | 'storeSound'>;
  /** What is wrong with the connection, if anything. */
  readonly closed: () => string | undefined;
}): () => Promise<string | undefined> {
  return async () => {
    const wrong = closed();
    if (wrong !== undefined) return wrong;
    const trouble = metrics.storeTrouble();
    if (trouble === undefined) {
      await store.range('meta/', 'meta0', 1);
      return undefined;
    }
    try {
      await probeWriting(store);
    } catch {
      return trouble;
    }
    metrics.storeSound();
    return undefined;
  };
}
