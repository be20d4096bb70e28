import type { SeenBy } from '../../src/conversation/command.ts';
import type { Context } from '../../src/conversation/context.ts';
import { requireNames } from '../../src/engine/batch/additives/nameless.ts';
import { MEASURES } from '../../src/engine/quantities/units.ts';
import { preferencesOf } from '../../src/records/preferences.ts';
import type { KeptPlan } from '../../src/records/recipes/index.ts';
import { readKept } from '../../src/records/recipes/kept-plan.ts';

/** True where a colour of the plan comes from a jar on the asker's shelf. Throws as `requireNames` and `readKept` do. */
export async function planNamesJar(plan: KeptPlan, { shelf }: Context): Promise<boolean> {
  requireNames(plan.written.additives);
  const { jars } = await readKept(plan, shelf, MEASURES[plan.spoons]);
  return jars.flat().some(({ item }) => item !== undefined);
}

/** Who sees a plan that was written here and now: its jars are the asker's alone unless they show them to the group. */
export async function whoSees(plan: KeptPlan, context: Context): Promise<SeenBy> {
  const { jars } = await preferencesOf(context.store, context.asker.id);
  return jars === 'shown' || !(await planNamesJar(plan, context)) ? 'group' : 'asker';
}
