import { z } from 'zod';
import { StoreFailure } from './failure.ts';
import { groupSettingsKey } from './keys.ts';
import { put, type Store } from './store.ts';

const schema = z.strictObject({
  version: z.literal(1),
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
});

/** What the stewards of a group have set. */
export type GroupSettings = Omit<z.output<typeof schema>, 'version'>;

/** The settings of a group; empty where nobody set any. Throws a StoreFailure when they cannot be read. */
export async function groupSettings(store: Store, group: string): Promise<GroupSettings> {
  const [stored] = await store.get([groupSettingsKey(group)]);
  if (stored === undefined) return {};
  const read = schema.safeParse(stored);
  if (!read.success) throw new StoreFailure('corrupt', 'read', `group settings of ${group}`);
  const { version: _, ...settings } = read.data;
  return settings;
}

/** Keeps the settings of a group, in place of those before. */
export async function keepGroupSettings(store: Store, group: string, settings: GroupSettings): Promise<void> {
  await store.commit([put(groupSettingsKey(group), { version: 1, ...settings })]);
}
