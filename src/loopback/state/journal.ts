import type { HostEvent, HostEventBody } from '../interface/events.ts';

export type Listener = (event: HostEvent) => void;

/** The list of everything that appeared; the room's state is a fold over it. */
export class Journal {
  readonly #events: HostEvent[] = [];
  readonly #listeners = new Set<Listener>();
  readonly #now: () => number;
  readonly #keep: number;
  #seq = 0;

  constructor(now: () => number, keep: number) {
    this.#now = now;
    this.#keep = keep;
  }

  get events(): readonly HostEvent[] {
    return this.#events;
  }

  /** Appends and tells every listener, in order of subscription. `at` is kept when an old event is replayed. */
  record(body: HostEventBody, at = new Date(this.#now()).toISOString()): HostEvent {
    this.#seq += 1;
    const event: HostEvent = { ...body, seq: this.#seq, at };
    this.#events.push(event);
    if (this.#events.length > 2 * this.#keep) this.#events.splice(0, this.#events.length - this.#keep);
    for (const listener of this.#listeners) listener(event);
    return event;
  }

  subscribe(listener: Listener, sinceSeq?: number): () => void {
    if (sinceSeq !== undefined)
      for (const event of [...this.#events]) if (event.seq > sinceSeq) listener(event);
    this.#listeners.add(listener);
    return () => void this.#listeners.delete(listener);
  }
}
