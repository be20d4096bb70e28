import { groupsLeft, part, under } from '../keys.ts';
import { leftAt, leftGroups, rejoinGroup } from '../left-groups.ts';
import { drop, pages, put, type Store } from '../store.ts';
import { groupPartOf, isOwned, kinds, PICTURES } from './kinds.ts';
import { groupsOf, membersIn } from './members.ts';
import { dropOlder } from './outlived.ts';
import { fieldOf } from './owned.ts';
import { retention } from './retention.ts';

const day = 86_400_000;
const PAGE = 100;
const PAGE_OF_PICTURES = 4;

/** What buttons and menus of a member go on with, by the first part of its key. */
const RECENT = ['asked', 'late-plan', 'late-match', 'late-fold'] as const;
/** That something was done once: of no use once every button that could do it again is dead. */
const ONCE = ['shelf-once', 'recipe-once', 'evidence-once'] as const;

const sizeFor = (kind: string): number => (PICTURES.has(kind) ? PAGE_OF_PICTURES : PAGE);

export type Night = {
  readonly store: Store;
  readonly now: Date;
  /** True for a group that has us after all, whatever is noted. */
  readonly isBack?: (group: string) => boolean;
};

/**
 * What retention asks for beyond single groups, once a night: what buttons went on with and what was done once is
 * dropped when it has outlived its time, and so is all that was kept under a group that put us out long ago.
 */
export async function nightSweep({ store, now, isBack }: Night): Promise<void> {
  for (const kind of RECENT)
    await dropOlder(store, {
      span: under(kind),
      days: retention.recent,
      now,
      size: sizeFor(kind),
    });
  for (const kind of ONCE) {
    await dateUndated(store, kind, now);
    await dropOlder(store, { span: under(kind), days: retention.once, now });
  }
  for (const group of await leftGroups(store)) {
    const at = await leftAt(store, group);
    if (!at || now.getTime() - at.getTime() < retention.left * day || isBack?.(group)) continue;
    await dropGroup(store, group);
  }
}

/** What an older program wrote says no time: it is taken to be of now, and so goes one span of time later. */
async function dateUndated(store: Store, kind: string, now: Date): Promise<void> {
  for await (const page of pages(store, under(kind), PAGE)) {
    const undated = page.filter(
      entry =>
        typeof entry.value === 'object' && fieldOf(entry, 'at') === undefined && fieldOf(entry, 'v') === 1,
    );
    await store.commit(
      undated.map(({ key, value }) => put(key, { ...(value as object), at: now.toISOString() })),
    );
    await new Promise<void>(resolve => setImmediate(resolve));
  }
}

/**
 * Drops all that is kept under a group, the note that it put us out last: stopped halfway, the next night goes on.
 * Members of whom nothing is left in any other group are erased with it.
 */
async function dropGroup(store: Store, group: string): Promise<void> {
  for (const member of await membersIn(store, group)) {
    const others = [...(await groupsOf(store, member))].filter(other => other !== part(group));
    if (others.length === 0)
      for (const [kind, owned] of kinds)
        if (isOwned(owned) && groupPartOf(owned) === undefined)
          await dropAt(store, `${kind}/${part(member)}`, sizeFor(kind));
  }
  for (const [kind, owned] of kinds) {
    if (groupPartOf(owned) !== 1 || kind === groupsLeft()) continue;
    await dropAt(store, `${kind}/${part(group)}`, sizeFor(kind));
  }
  await rejoinGroup(store, group);
}

async function dropAt(store: Store, beginning: string, size: number): Promise<void> {
  // Some kinds have one record for the group, at the key itself.
  await store.commit([drop(beginning)]);
  for await (const page of pages(store, under(beginning), size)) {
    await store.commit(page.map(({ key }) => drop(key)));
    await new Promise<void>(resolve => setImmediate(resolve));
  }
}

/** True where nothing is kept under a group, nor, in a member's own talk with us, of that member. */
export async function isBare(store: Store, group: string): Promise<boolean> {
  const direct = /^direct-(.+)$/.exec(group)?.[1];
  for (const [kind, held] of kinds) {
    const whose =
      groupPartOf(held) === 1 ? group : isOwned(held) && groupPartOf(held) === undefined ? direct : undefined;
    if (whose === undefined) continue;
    const { from, to } = under(`${kind}/${part(whose)}`);
    if ((await store.range(from, to, 1)).length > 0) return false;
  }
  return true;
}
