import type { Due } from '../records/dues/dues.ts';
import { nameOf } from './pauses.ts';

/**
 * Does dues, of so many groups side by side and within a group one after another in the order they came: one slow
 * channel holds up no other, and groups take turns. What is added while it waits or runs is not done twice.
 */
export class Lane {
  readonly #atOnce: number;
  readonly #act: (due: Due) => Promise<boolean>;
  readonly #waiting = new Map<string, Due[]>();
  readonly #busy = new Set<string>();
  readonly #known = new Set<string>();
  readonly #done = new Set<string>();
  #whenIdle: (() => void)[] = [];
  #stopped = false;

  /** `act` says whether a due was done; it never rejects. */
  constructor(atOnce: number, act: (due: Due) => Promise<boolean>) {
    this.#atOnce = atOnce;
    this.#act = act;
  }

  /** Does it in its turn, unless it has been done since {@link forgetDone}: then what was read is older than that. */
  add(due: Due): void {
    const name = nameOf(due);
    if (this.#stopped || this.#known.has(name) || this.#done.has(name)) return;
    this.#known.add(name);
    const queue = this.#waiting.get(due.group);
    if (queue) queue.push(due);
    else this.#waiting.set(due.group, [due]);
    this.#begin();
  }

  hasDone(due: Due): boolean {
    return this.#done.has(nameOf(due));
  }

  /** What is read from the records from now on no longer holds what was done before. */
  forgetDone(): void {
    this.#done.clear();
  }

  /** Resolves when nothing waits or runs. */
  idle(): Promise<void> {
    if (this.#isIdle()) return Promise.resolve();
    return new Promise(resolve => this.#whenIdle.push(resolve));
  }

  /** Begins nothing more, and waits for what is under way. */
  stop(): Promise<void> {
    this.#stopped = true;
    this.#waiting.clear();
    return this.idle();
  }

  #isIdle(): boolean {
    return this.#busy.size === 0 && this.#waiting.size === 0;
  }

  #begin(): void {
    for (const [group, queue] of this.#waiting) {
      if (this.#busy.size >= this.#atOnce) return;
      if (this.#busy.has(group)) continue;
      const due = queue.shift();
      // Behind the others, for its next one.
      this.#waiting.delete(group);
      if (queue.length > 0) this.#waiting.set(group, queue);
      if (due) void this.#run(due);
    }
  }

  async #run(due: Due): Promise<void> {
    this.#busy.add(due.group);
    const isDone = await this.#act(due);
    const name = nameOf(due);
    if (isDone) this.#done.add(name);
    this.#known.delete(name);
    this.#busy.delete(due.group);
    this.#begin();
    if (!this.#isIdle()) return;
    for (const resolve of this.#whenIdle) resolve();
    this.#whenIdle = [];
  }
}
