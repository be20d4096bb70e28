import { lessonsOf } from '../../records/batches/lessons.ts';
import { isShared, shareCalibration, withdrawCalibration } from '../../records/calibrations/index.ts';
import { listShelf } from '../../records/shelf/index.ts';
import { type Asking, type JarLearnt, learnt, nameOfLot, sharedJar } from './what-bars-say.ts';

/** The group's pool learns only from those who share: a jar that is shared there is shared as it is known now. */
export async function pool(found: readonly JarLearnt[], asking: Asking): Promise<void> {
  for (const { item, after } of found) {
    const jar = sharedJar(item, asking);
    if (after && (await isShared(jar))) await shareCalibration(jar, after.evidence, asking.change.at);
  }
}

/** Shares what bars said of a member's jars with the group; those nobody learnt anything of are left out. */
export async function shareJars(items: ReadonlySet<string>, asking: Asking): Promise<readonly string[]> {
  const { standing } = await lessonsOf(asking.book);
  const shelf = await listShelf(asking.shelf);
  const wanted = shelf.filter(({ id }) => items.has(id));
  const names = new Set(wanted.map(({ id, lot }) => nameOfLot(id, lot.number)));
  const { jars: found } = await learnt(standing, names, asking);
  const shared = found.filter(({ item, after }) => after && items.has(item.id));
  for (const { item, after } of shared)
    await shareCalibration(sharedJar(item, asking), after!.evidence, asking.change.at);
  return shared.map(({ item }) => item.name);
}

/** Takes jars back from the group's pool; no matter which of them were in it. */
export async function unshareJars(items: ReadonlySet<string>, asking: Asking): Promise<void> {
  const shelf = await listShelf(asking.shelf);
  for (const item of shelf)
    if (items.has(item.id) && item.colourant !== undefined)
      await withdrawCalibration(sharedJar(item, asking));
}
