import { drop, pages, type Span, type Store } from '../store.ts';
import { fieldOf } from './owned.ts';

const day = 86_400_000;

/**
 * Drops the records of a span that say in `at` (ISO 8601) that they are older than so many days; those that say no
 * time, or another kind of it, are told to `undated` and stay.
 */
export async function dropOlder(
  store: Store,
  {
    span,
    days,
    now,
    size = 100,
  }: { readonly span: Span; readonly days: number; readonly now: Date; readonly size?: number },
): Promise<void> {
  for await (const page of pages(store, span, size)) {
    const old = page.filter(entry => {
      const at = Date.parse(String(fieldOf(entry, 'at')));
      return now.getTime() - at > days * day;
    });
    await store.commit(old.map(({ key }) => drop(key)));
    await new Promise<void>(resolve => setImmediate(resolve));
  }
}
