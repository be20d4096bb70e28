import type { DeadlineActs } from '../conversation/unasked/deadline.ts';
import type { Shards } from '../records/dues/due-buckets.ts';
import { type Due, dropDue, duesBy } from '../records/dues/dues.ts';
import { leaveGroup, leftGroups, rejoinGroup } from '../records/left-groups.ts';
import type { Store } from '../records/store.ts';
import { Lane } from './lane.ts';
import { nameOf, Pauses } from './pauses.ts';

export type Schedule = {
  readonly store: Store;
  /** True for the groups that this process acts for. */
  readonly serves: (group: string) => boolean;
  /** Which shards this process is: only where their groups can lie is looked. Everywhere where it is not said. */
  readonly shards?: () => Shards | undefined;
  /** True for the groups that it would act for, had they not put us out. */
  readonly isGone?: (group: string) => boolean;
  /** Notes anew what is to be done for a group that took us in again. */
  readonly revive?: (group: string) => Promise<void>;
  /** What to do, by the name of the due; where it is a function, asked for when there is something to do. */
  readonly acts: DeadlineActs | (() => Promise<DeadlineActs>);
  /** Names of dues that may take long and that nobody waits for: they hold up no others. */
  readonly unhurried?: ReadonlySet<string>;
  /** The time, ms since 1970 UTC. */
  readonly now: () => number;
  /** Hears after each look what is late of what this process acts for. */
  readonly onLate?: (late: { readonly count: number; readonly seconds: number }) => void;
  /** Hears of everything that did not work; it is tried again later. */
  readonly onFault: (fault: unknown, due: Due | undefined) => void;
};

export type Scheduler = {
  /**
   * Looks for what is due, and resolves once it is done; what nobody waits for is done meanwhile and later. Looks while
   * an earlier one’s work is still under way, and does nothing twice.
   */
  readonly check: () => Promise<void>;
  /** Begins nothing more, and waits for what is under way. */
  readonly stop: () => Promise<void>;
};

/** How often is looked for what is due, ms. No timer runs up to a deadline: what is stored cannot be missed. */
export const checkEvery = 15_000;
/** How many groups are acted for at a time: a minute in which many deadlines fall is spread over some more. */
const groupsAtOnce = 8;
const unhurriedAtOnce = 2;

/** Looks for what is due at once and then every quarter of a minute, until stopped. */
export function startScheduler(schedule: Schedule): Scheduler {
  const pauses = new Pauses(schedule.now, checkEvery / 2);
  const act = (due: Due) => actOn(schedule, pauses, due);
  const hurried = new Lane(groupsAtOnce, act);
  const unhurried = new Lane(unhurriedAtOnce, act);
  const lanes = [hurried, unhurried];
  let stopped = false;
  let looking: Promise<readonly Due[]> = Promise.resolve([]);

  const tellLate = (mine: readonly Due[]) => {
    const now = schedule.now();
    const late = mine.filter(due => !lanes.some(lane => lane.hasDone(due)));
    const oldest = late.reduce((least, { at }) => Math.min(least, at.getTime()), now);
    schedule.onLate?.({ count: late.length, seconds: (now - oldest) / 1000 });
  };
  const look = async (): Promise<readonly Due[]> => {
    if (stopped) return [];
    try {
      for (const lane of lanes) lane.forgetDone();
      const mine = await dueNow(schedule);
      if (stopped) return [];
      tellLate(mine);
      for (const due of mine)
        if (!pauses.holds(nameOf(due))) (schedule.unhurried?.has(due.what) ? unhurried : hurried).add(due);
      return mine;
    } catch (fault) {
      schedule.onFault(fault, undefined);
      return [];
    }
  };
  const check = async (): Promise<void> => {
    looking = looking.then(look);
    const mine = await looking;
    await hurried.idle();
    if (!stopped) tellLate(mine);
  };

  const timer = setInterval(() => void check(), checkEvery);
  void check();
  return {
    check,
    async stop() {
      stopped = true;
      clearInterval(timer);
      await looking;
      await Promise.all(lanes.map(lane => lane.stop()));
    },
  };
}

/** What is due in the groups that this process acts for; those that put us out are left, and others taken up again. */
async function dueNow(schedule: Schedule): Promise<readonly Due[]> {
  await takeUpAgain(schedule);
  const dues = await duesBy(schedule.store, new Date(schedule.now()), schedule.shards?.());
  const gone = new Set(dues.map(({ group }) => group).filter(group => schedule.isGone?.(group)));
  for (const group of gone) await leaveGroup(schedule.store, group, new Date(schedule.now()));
  return dues.filter(due => schedule.serves(due.group));
}

/** What a group had going when it put us out goes on where it took us in again. */
async function takeUpAgain({ store, serves, revive }: Schedule): Promise<void> {
  for (const group of await leftGroups(store)) {
    if (!serves(group)) continue;
    await revive?.(group);
    await rejoinGroup(store, group);
  }
}

/** Whether it was done; what was not is tried again later. */
async function actOn({ store, acts, onFault }: Schedule, pauses: Pauses, due: Due): Promise<boolean> {
  try {
    const known = typeof acts === 'function' ? await acts() : acts;
    const act = known[due.what];
    if (!act) throw new Error(`nobody here knows what to do about ${due.what}`);
    await act(due);
    await store.commit([dropDue(due)]);
    pauses.forget(nameOf(due));
    return true;
  } catch (fault) {
    pauses.add(nameOf(due));
    onFault(fault, due);
    return false;
  }
}
