import type { Terms } from '../../../src/engine/challenges/terms.ts';
import {
  type Bar,
  type ChallengeScope,
  enterBar,
  type Made,
  openChallenge,
} from '../../../src/records/challenges/index.ts';
import { openStore } from '../../../src/records/open.ts';
import type { Store } from '../../../src/records/store.ts';
import { day, entriesEnd, opens, terms, votesEnd } from '../../engine/challenges/challenge-book.ts';
import { PATIENT } from '../patience.ts';

export { day, entriesEnd, opens, terms, votesEnd };

/** How long after the deadline a challenge is closed, ms: members are told five seconds. */
export const closingGrace = 5_000;

let ids = 900_000;
/** An interaction of its own, made at a time by somebody. */
export const made = (by: string, at: number): Made => ({ id: String(ids++), at, by });

export const bar = (title: string, maker: string, more: Partial<Bar> = {}): Bar => ({
  title,
  maker,
  colourants: ['blue ultramarine'],
  colour: { unscored: 'no-white' },
  ...more,
});

let groups = 0;
let shared: Promise<Store> | undefined;

/** A group with nothing in it yet, in the memory of this process. */
export async function freshScope(): Promise<ChallengeScope> {
  shared ??= openStore('sqlite::memory:', PATIENT);
  groups += 1;
  return { store: await shared, group: `group-${groups}` };
}

/** The board of one group in a file that several processes open. */
export const scopeAt = async (address: string): Promise<ChallengeScope> => ({
  store: await openStore(address, PATIENT),
  group: 'soapers',
});

/** Opens a challenge a day before entries are taken. */
export const openOne = (scope: ChallengeScope, more: Partial<Terms> = {}) =>
  openChallenge(
    scope,
    { terms: { ...terms, ...more }, channel: 'fair', language: 'en' },
    made('steward', opens - day),
  );

/** Opens a challenge and enters one bar for each maker; gives the ids of the challenge and of the entries. */
export async function fairOf(scope: ChallengeScope, makers: readonly string[], more: Partial<Terms> = {}) {
  const { id } = await openOne(scope, more);
  const entries: string[] = [];
  for (const maker of makers) {
    const { entry } = await enterBar(
      scope,
      id,
      { bar: bar(`bar of ${maker}`, maker) },
      made(maker, opens + day),
    );
    entries.push(entry);
  }
  return { id, entries };
}
