import type { DeadlineActs } from '../conversation/deadline.ts';
import { type Due, dropDue, duesBy } from '../records/dues.ts';
import { leaveGroup, leftGroups, rejoinGroup } from '../records/left-groups.ts';
import type { Store } from '../records/store.ts';

export type Schedule = {
  readonly store: Store;
  /** True for the groups that this process acts for. */
  readonly serves: (group: string) => boolean;
  /** True for the groups that it would act for, had they not put us out. */
  readonly isGone?: (group: string) => boolean;
  /** Notes anew what is to be done for a group that took us in again. */
  readonly revive?: (group: string) => Promise<void>;
  /** What to do, by the name of the due; where it is a function, asked for when there is something to do. */
  readonly acts: DeadlineActs | (() => Promise<DeadlineActs>);
  /** The time, ms since 1970 UTC. */
  readonly now: () => number;
  /** Hears after each look what is late of what this process acts for. */
  readonly onLate?: (late: { readonly count: number; readonly seconds: number }) => void;
  /** Hears of everything that did not work; it is tried again later. */
  readonly onFault: (fault: unknown, due: Due | undefined) => void;
};

export type Scheduler = {
  /** Does all that is due now; one check at a time, a second call waits for the first to end. */
  readonly check: () => Promise<void>;
  /** Begins nothing more, and waits for what is under way. */
  readonly stop: () => Promise<void>;
};

/** How often is looked for what is due, ms. No timer runs up to a deadline: what is stored cannot be missed. */
export const checkEvery = 15_000;
const longestPause = 3_600_000;
/** How many groups are acted for at a time: a minute in which many deadlines fall is spread over some more. */
const groupsAtOnce = 8;

/** Looks for what is due at once and then every quarter of a minute, until stopped. */
export function startScheduler(schedule: Schedule): Scheduler {
  const pauses = new Pauses(schedule.now);
  let stopped = false;
  let running: Promise<void> = Promise.resolve();

  const check = (): Promise<void> => {
    running = running.then(async () => {
      if (stopped) return;
      try {
        await actOnAll(schedule, pauses, () => stopped);
      } catch (fault) {
        schedule.onFault(fault, undefined);
      }
    });
    return running;
  };

  const timer = setInterval(() => void check(), checkEvery);
  void check();
  return {
    check,
    async stop() {
      stopped = true;
      clearInterval(timer);
      await running;
    },
  };
}

/** Groups side by side, so that one slow channel does not hold up the others; within a group in order of time. */
async function actOnAll(schedule: Schedule, pauses: Pauses, stopped: () => boolean): Promise<void> {
  await takeUpAgain(schedule);
  const dues = await duesBy(schedule.store, new Date(schedule.now()));
  const gone = new Set(dues.map(({ group }) => group).filter(group => schedule.isGone?.(group)));
  for (const group of gone) await leaveGroup(schedule.store, group, new Date(schedule.now()));
  const mine = dues.filter(due => schedule.serves(due.group));
  const ready = mine.filter(due => !pauses.holds(due));
  const waiting = Map.groupBy(ready, ({ group }) => group).values();
  const actForOneAfterAnother = async () => {
    for (const ofGroup of waiting)
      for (const due of ofGroup) if (!stopped()) await actOn(schedule, pauses, due);
  };
  await Promise.all(Array.from({ length: groupsAtOnce }, actForOneAfterAnother));
  // What failed, now or before, is still to be done.
  const late = mine.filter(due => pauses.knows(due));
  const oldest = late.reduce((least, { at }) => Math.min(least, at.getTime()), schedule.now());
  schedule.onLate?.({ count: late.length, seconds: (schedule.now() - oldest) / 1000 });
}

/** What a group had going when it put us out goes on where it took us in again. */
async function takeUpAgain({ store, serves, revive }: Schedule): Promise<void> {
  for (const group of await leftGroups(store)) {
    if (!serves(group)) continue;
    await revive?.(group);
    await rejoinGroup(store, group);
  }
}

async function actOn({ store, acts, onFault }: Schedule, pauses: Pauses, due: Due): Promise<void> {
  try {
    const known = typeof acts === 'function' ? await acts() : acts;
    const act = known[due.what];
    if (!act) throw new Error(`nobody here knows what to do about ${due.what}`);
    await act(due);
    await store.commit([dropDue(due)]);
    pauses.forget(due);
  } catch (fault) {
    pauses.add(due);
    onFault(fault, due);
  }
}

/** What failed waits before it is tried again, twice as long each time, an hour at most. */
class Pauses {
  readonly #now: () => number;
  readonly #until = new Map<string, { readonly at: number; readonly length: number }>();

  constructor(now: () => number) {
    this.#now = now;
  }

  holds(due: Due): boolean {
    const pause = this.#until.get(nameOf(due));
    return pause !== undefined && this.#now() < pause.at;
  }

  knows(due: Due): boolean {
    return this.#until.has(nameOf(due));
  }

  add(due: Due): void {
    const length = Math.min(2 * (this.#until.get(nameOf(due))?.length ?? checkEvery / 2), longestPause);
    this.#until.set(nameOf(due), { at: this.#now() + length, length });
  }

  forget(due: Due): void {
    this.#until.delete(nameOf(due));
  }
}

const nameOf = ({ at, group, what, id }: Due) => [at.toISOString(), group, what, id].join('/');
