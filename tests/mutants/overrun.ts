/** Milliseconds of processor time that this process has used, all of its threads together. */
export function processorMillis(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

/**
 * So many times the processor time that it took may a test take with a mutant, and so much more. It took that with every change that it
 * came by counted, several times what it takes now.
 */
const MORE_TIME = 3;
const GRACE_MILLIS = 10_000;
const LOOKS_MILLIS = 100;

/**
 * Tells when a test that another thread of this process runs takes longer than it can: most loops that never end are known by
 * how often they come by their change, but one that a change only hands a number to comes by none. Counted in processor
 * time of the test's own, since Stryker's limit is a clock over all tests of a mutant: minutes where they are fits, and
 * more on a crowded machine.
 */
export class Overrun {
  readonly #usual: Readonly<Record<string, number>>;
  readonly #grace: number;
  #until = Number.POSITIVE_INFINITY;

  /** `usual`: milliseconds of processor time of each test, by its id. */
  constructor(usual: Readonly<Record<string, number>>, grace = GRACE_MILLIS) {
    this.#usual = usual;
    this.#grace = grace;
  }

  begins(test: string): void {
    this.#until = processorMillis() + this.#grace + MORE_TIME * (this.#usual[test] ?? 0);
  }

  /** What `answer` becomes, or undefined where a test took too long before it came. */
  async orOver<Answer>(answer: Promise<Answer>): Promise<Answer | undefined> {
    const over = Promise.withResolvers<undefined>();
    const looks = setInterval(() => {
      if (processorMillis() > this.#until) over.resolve(undefined);
    }, LOOKS_MILLIS);
    try {
      return await Promise.race([answer, over.promise]);
    } finally {
      clearInterval(looks);
      this.#until = Number.POSITIVE_INFINITY;
    }
  }
}
