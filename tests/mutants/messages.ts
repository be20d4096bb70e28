import type { InstrumenterContext, MutantCoverage } from '@stryker-mutator/api/core';
import type { TestResult } from '@stryker-mutator/api/test-runner';

/** What Stryker's side and the worker that holds the tests say to one another, over a broadcast channel. */
export type FromWorker =
  | {
      readonly says: 'ready';
      readonly tests: readonly TestResult[];
      readonly coverage: MutantCoverage;
      /** Milliseconds of processor time that each test takes without a mutant, by its id. */
      readonly processor: Readonly<Record<string, number>>;
    }
  | { readonly says: 'begins'; readonly test: string }
  | {
      readonly says: 'tried';
      readonly failed: { readonly test: string; readonly message: string } | undefined;
      readonly ran: number;
      readonly hits: number;
    };

export type ToWorker =
  | {
      readonly asks: 'try';
      readonly mutant: string;
      /** Where it is, from the root. */
      readonly file: string;
      readonly tests: readonly string[] | undefined;
      readonly hitLimit: number | undefined;
    }
  | { readonly asks: 'end' };

export const CHANNEL = 'mutants';

/**
 * `isCounted`: how often each test comes by each change is known, and is not counted on. `run`: which run of a test this is, of all that
 * there were; what is remembered is forgotten with the next.
 */
type Switches = InstrumenterContext & { isCounted?: boolean; run?: number };

/** Where instrumented code looks for the mutant that is switched on; always this one object. */
export function switches(): Switches {
  const holder = globalThis as { __stryker__?: Switches };
  holder.__stryker__ ??= {};
  return holder.__stryker__;
}
