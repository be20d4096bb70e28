import type { Due } from '../records/dues/dues.ts';

const longest = 3_600_000;

/** What tells dues apart. */
export const nameOf = ({ at, group, what, id }: Due): string => [at.toISOString(), group, what, id].join('/');

/** What failed waits before it is tried again, twice as long each time, an hour at most. Times in ms. */
export class Pauses {
  readonly #now: () => number;
  readonly #half: number;
  readonly #until = new Map<string, { readonly at: number; readonly length: number }>();

  /** `half`: half of the first pause. */
  constructor(now: () => number, half: number) {
    this.#now = now;
    this.#half = half;
  }

  holds(name: string): boolean {
    const pause = this.#until.get(name);
    return pause !== undefined && this.#now() < pause.at;
  }

  add(name: string): void {
    const length = Math.min(2 * (this.#until.get(name)?.length ?? this.#half), longest);
    this.#until.set(name, { at: this.#now() + length, length });
  }

  forget(name: string): void {
    this.#until.delete(name);
  }
}
