import { z } from 'zod';
import { groupSettingsKey } from './keys.ts';
import { type RecordOf, read, recordKind, written } from './record.ts';
import { put, type Store } from './store.ts';

const kind = recordKind(
  'group settings',
  {
    /** The platform role whose holders are stewards here. */
    stewardRole: z.string().optional(),
    /** IANA name of the zone in which this group writes its wall times. */
    zone: z.string().optional(),
    /** The platform role whose holders asked to be called when a challenge opens; nobody is where it is unset. */
    callsRole: z.string().optional(),
    /** Whether each challenge gets a thread of its own; yes where unset. */
    threads: z.boolean().optional(),
    /** Whether deadlines stand in the calendar of the group; yes where unset. */
    calendar: z.boolean().optional(),
  },
  // The first stated its version under another name.
  [({ version: _version, ...settings }) => settings],
);

/** What the stewards of a group have set. */
export type GroupSettings = RecordOf<typeof kind>;

/** The settings of a group; empty where nobody set any. Throws a StoreFailure when they cannot be read. */
export async function groupSettings(store: Store, group: string): Promise<GroupSettings> {
  const key = groupSettingsKey(group);
  const [stored] = await store.get([key]);
  return stored === undefined ? {} : read(kind, key, stored);
}

/** Keeps the settings of a group, in place of those before. */
export async function keepGroupSettings(store: Store, group: string, settings: GroupSettings): Promise<void> {
  await store.commit([put(groupSettingsKey(group), written(kind, settings))]);
}
