import { z } from 'zod';
import { LANGUAGES, type Language } from '../engine/language.ts';
import { SPOONS, type Spoon } from '../engine/quantities/spoons.ts';
import { MEASURES, type Measures } from '../engine/quantities/units.ts';
import { remembered } from '../engine/remembered.ts';
import { valuesOn } from '../engine/values-on.ts';
import { preference, preferences, under } from './keys.ts';
import { type RecordKind, read, recordKind, written } from './record.ts';
import { atHand, drop, type Entry, put, type Store, type Write } from './store.ts';

/** How a member likes to be answered. */
export type Preferences = {
  /** US customary spoon, the 5 ml spoon of nutrition labels, or metric spoon and 250 ml cup. */
  readonly spoons: 'us' | 'label' | 'metric';
  readonly temperature: 'celsius' | 'fahrenheit';
  readonly mass: 'grams' | 'ounces';
  /** Overrides the language that the platform reports for the member. */
  readonly language?: Language | undefined;
  /** Whether the group may see an answer that names a jar of theirs; private unless they say so. */
  readonly jars: 'private' | 'shown';
  /** IANA name of the zone whose clocks they go by; UTC unless they say. */
  readonly zone?: string | undefined;
  /** At which hour of it reminders come, 0 to 23. */
  readonly hour: number;
  /** The spoons that are there; every one unless they say. */
  readonly owned?: readonly Spoon[] | undefined;
  /** What their scale steps in, grams, where they said so. */
  readonly scale?: number | undefined;
  /** Whether an answer comes as its face with folds to open, or whole at once. */
  readonly answers: 'short' | 'whole';
};

/** What a member who never said anything gets. */
export const usualPreferences: Preferences = {
  spoons: 'us',
  temperature: 'celsius',
  mass: 'grams',
  jars: 'private',
  hour: 9,
  answers: 'short',
};

type Wish = keyof Preferences;

/** One wish, one key: two wishes at once do not overwrite one another. */
const wishes: { readonly [W in Wish]: RecordKind<{ choice: string }> } = {
  spoons: recordKind('preference', { choice: z.enum(['us', 'label', 'metric']) }),
  temperature: recordKind('preference', { choice: z.enum(['celsius', 'fahrenheit']) }),
  mass: recordKind('preference', { choice: z.enum(['grams', 'ounces']) }),
  language: recordKind('preference', { choice: z.enum(LANGUAGES) }),
  jars: recordKind('preference', { choice: z.enum(['private', 'shown']) }),
  zone: recordKind('preference', { choice: z.string() }),
  hour: recordKind('preference', { choice: z.string().regex(/^(?:1?\d|2[0-3])$/) }),
  owned: recordKind('preference', { choice: z.string() }),
  scale: recordKind('preference', { choice: z.string() }),
  answers: recordKind('preference', { choice: z.enum(['short', 'whole']) }),
};
const all = Object.keys(wishes) as Wish[];

/** More wishes than there will be, those of newer programs included. */
const MOST_WISHES = 100;

/** Asked for in several places of every answer. */
const wishesOf = remembered(member => under(preferences(member)));

/** What was read of the same entries: a question asks in several places for what its store has read once. */
const known = valuesOn<readonly Entry[], Preferences>();

/** The member's preferences, the usual ones where they have none. */
export async function preferencesOf(store: Store, member: string): Promise<Preferences> {
  const span = wishesOf(member);
  const stored = atHand(store, span, MOST_WISHES) ?? (await store.range(span.from, span.to, MOST_WISHES));
  return preferencesIn(stored, span.from);
}

/** The same, where they are at hand and read; else undefined. */
export function preferencesAtHand(store: Store, member: string): Preferences | undefined {
  const span = wishesOf(member);
  const stored = atHand(store, span, MOST_WISHES);
  try {
    return stored && preferencesIn(stored, span.from);
  } catch {
    return undefined;
  }
}

/** `start`: of their keys. Throws as `read` does. */
function preferencesIn(stored: readonly Entry[], start: string): Preferences {
  if (stored.length === 0) return usualPreferences;
  const before = known.get(stored);
  if (before) return before;
  const chosen = stored.flatMap(({ key, value }) => {
    const wish = key.slice(start.length);
    return isWish(wish) ? [[wish, readWish(wish, read(wishes[wish], key, value).choice)]] : [];
  });
  const wished: Preferences = { ...usualPreferences, ...Object.fromEntries(chosen) };
  known.set(stored, wished);
  return wished;
}

const isWish = (name: string): name is Wish => Object.hasOwn(wishes, name);

/** A wish as it is used, of the text it is kept as. */
function readWish(wish: Wish, choice: string): unknown {
  if (wish === 'hour' || wish === 'scale') return Number(choice);
  return wish === 'owned' ? SPOONS.filter(spoon => choice.split(',').includes(spoon)) : choice;
}

/** What a member measures with: their kind of spoons and cups, and which of the spoons are there. */
export const kitchenOf = ({ spoons, owned }: Pick<Preferences, 'spoons' | 'owned'>): Measures =>
  owned && owned.length > 0 ? { ...MEASURES[spoons], owned } : MEASURES[spoons];

/** Sets the preferences that are given and leaves the others; `undefined` goes back to the usual. Answers with all of them. */
export async function prefer(
  store: Store,
  member: string,
  given: { readonly [W in Wish]?: Preferences[W] | undefined },
): Promise<Preferences> {
  const writes = all
    .filter(wish => wish in given)
    .map((wish): Write => {
      const key = preference(member, wish);
      const choice = given[wish];
      return choice === undefined ? drop(key) : put(key, written(wishes[wish], { choice: String(choice) }));
    });
  await store.commit(writes);
  return preferencesOf(store, member);
}

/** The clock by which a member is told things. */
export const clockOf = ({
  zone = 'UTC',
  hour,
}: Preferences): { readonly zone: string; readonly hour: number } => ({
  zone,
  hour,
});
