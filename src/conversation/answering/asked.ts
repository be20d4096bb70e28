import { channel } from 'node:diagnostics_channel';

/** What is told of a command that was asked: names of ours alone, never what a member wrote. */
export type Asked = {
  /** `dose`, `shelf add`. */
  readonly path: string;
  /** The options that were given, by the names they have today. */
  readonly options: readonly string[];
};

/** Tells each command that is asked, in this process. Nobody listens in production; the tests do (`tests/given.ts`). */
export const ASKED = channel('asked');

/** Tells whoever listens that this command takes these options. */
export function tellAsked(path: string, given: object): void {
  if (ASKED.hasSubscribers) ASKED.publish({ path, options: Object.keys(given) } satisfies Asked);
}
