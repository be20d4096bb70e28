import { refuse } from '../../engine/refusal.ts';
import { groupSettings } from '../../records/group.ts';
import type { Context } from '../context.ts';

declare module '../../engine/refusal.ts' {
  interface Reasons {
    'stewards-only': Record<string, never>;
  }
}

/** True for those who may manage the group on the platform, or hold the role the group named for stewards. */
export async function isSteward({ asker, group, store }: Context): Promise<boolean> {
  if (asker.manages) return true;
  const { stewardRole } = await groupSettings(store, group);
  return stewardRole !== undefined && asker.roles.includes(stewardRole);
}

/** Throws a Refusal unless the asker is a steward of the group. */
export async function requireSteward(context: Context): Promise<void> {
  if (!(await isSteward(context))) refuse('stewards-only', {});
}
