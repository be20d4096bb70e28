import { refuse } from '../engine/refusal.ts';
import type { Place } from './fair-queue.ts';

declare module '../engine/refusal.ts' {
  interface Reasons {
    /** `seconds` until it is worth trying again: an estimate from how long such work took of late. */
    'workers-busy': { readonly full: 'member' | 'group' | 'all'; readonly seconds: number };
  }
}

/** Most pieces of heavy work under way or waiting at once. */
export type Most = { readonly member: number; readonly group: number; readonly all: number };

/**
 * One member's whole answer may take three pieces at once; a lively group has a dozen members at it. All together hold
 * at most 64 pictures in memory, of 25 MiB each at the very worst.
 */
export const MOST: Most = { member: 4, group: 24, all: 64 };

/** Longer and shorter waits are told as these, seconds. */
const SHORTEST_WAIT = 5;
const LONGEST_WAIT = 120;

/** Counts what each member and group has under way, and refuses what goes beyond. */
export class Budget {
  readonly #most: Most;
  readonly #underWay = new Map<string, number>();
  #all = 0;

  constructor(most: Most) {
    this.#most = most;
  }

  get all(): number {
    return this.#all;
  }

  /**
   * Takes a place; it is given back by calling what this returns. Throws a Refusal `workers-busy` when there is none;
   * `rounds` says how many pieces go first until one of theirs is done, `secondsEach` how long one takes.
   */
  take(place: Place, waits: { readonly rounds: number; readonly secondsEach: number }): () => void {
    const [member, group] = [`member ${place.owner}`, `group ${place.group}`];
    const full = this.#full(member, group, place);
    if (full) refuse('workers-busy', { full, seconds: toldSeconds(waits.rounds * waits.secondsEach) });
    this.#count(member, 1);
    this.#count(group, 1);
    this.#all += 1;
    return () => {
      this.#count(member, -1);
      this.#count(group, -1);
      this.#all -= 1;
    };
  }

  #full(member: string, group: string, { owner, group: of }: Place): 'member' | 'group' | 'all' | undefined {
    // What a group shows to everybody is nobody's own.
    if (owner !== of && (this.#underWay.get(member) ?? 0) >= this.#most.member) return 'member';
    if ((this.#underWay.get(group) ?? 0) >= this.#most.group) return 'group';
    return this.#all >= this.#most.all ? 'all' : undefined;
  }

  #count(name: string, by: 1 | -1): void {
    const now = (this.#underWay.get(name) ?? 0) + by;
    if (now > 0) this.#underWay.set(name, now);
    else this.#underWay.delete(name);
  }
}

/** As one says it: whole fives. */
const toldSeconds = (seconds: number): number =>
  Math.min(LONGEST_WAIT, Math.max(SHORTEST_WAIT, Math.ceil(seconds / 5) * 5));
