/** First second of 2015 in UTC. Source: platform documentation, Reference > Snowflakes. */
const epochMs = 1_420_070_400_000n;
const counterBits = 22n;
const counterSize = 1n << counterBits;

export interface Snowflakes {
  /** A fresh id that carries the present time. */
  next(): string;
  /** Notes an id from elsewhere, so that `next` never repeats it. */
  observe(id: string): void;
}

/** Issues ids; `now` gives milliseconds since 1970 and may stand still or jump. */
export function snowflakes(now: () => number): Snowflakes {
  let counter = 0n;
  return {
    next() {
      counter = (counter + 1n) % counterSize;
      return (((BigInt(Math.floor(now())) - epochMs) << counterBits) | counter).toString();
    },
    observe(id) {
      const low = BigInt(id) % counterSize;
      if (low > counter) counter = low;
    },
  };
}
