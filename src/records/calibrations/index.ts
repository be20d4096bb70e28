/*
 * Test bars that members share with their group: what their bars alone say of one product. A product is a colourant of
 * the catalogue under the name its owners gave the jar, so jars called alike pool. Read by every member of the group, written only by
 * those who chose to share.
 */

import { z } from 'zod';
import type { ScaleBelief } from '../../engine/colour/calibration/test-bar.ts';
import { foldName } from '../../engine/text/names/own-names.ts';
import { calibrationBy, calibrationsOf, under } from '../keys.ts';
import { moment, readable, recordKind, written } from '../record.ts';
import { scaleBelief } from '../shelf/jars/calibration.ts';
import type { ShelfItem } from '../shelf/shelf.ts';
import { drop, everything, put, type Store } from '../store.ts';

const sharedKind = recordKind('shared calibration', {
  member: z.string(),
  item: z.string(),
  evidence: scaleBelief,
  at: moment,
});

/** Whose jar, and in which group it is shared. */
export type SharedJar = {
  readonly store: Store;
  readonly group: string;
  readonly member: string;
  readonly item: Pick<ShelfItem, 'id' | 'name'> & { readonly colourant: string };
};

const productOf = ({ item }: SharedJar) => ({ colourant: item.colourant, product: foldName(item.name) });
const keyOf = (jar: SharedJar) =>
  calibrationBy(jar.group, productOf(jar), { member: jar.member, item: jar.item.id });

/** Whether the member shares what their bars said of this jar. */
export async function isShared(jar: SharedJar): Promise<boolean> {
  const [stored] = await jar.store.get([keyOf(jar)]);
  return stored !== undefined;
}

/** Shares what the bars of this jar alone say, in place of what was shared of it before. */
export async function shareCalibration(jar: SharedJar, evidence: ScaleBelief, at: Date): Promise<void> {
  const { member, item } = jar;
  const fields = { member, item: item.id, evidence, at };
  await jar.store.commit([put(keyOf(jar), written(sharedKind, fields))]);
}

/** Takes it back; no matter if it was not shared. */
export async function withdrawCalibration(jar: SharedJar): Promise<void> {
  await jar.store.commit([drop(keyOf(jar))]);
}

/** What others in the group found of the same product; each other jar once. */
export async function poolFor(jar: SharedJar): Promise<readonly ScaleBelief[]> {
  const { colourant, product } = productOf(jar);
  const entries = await everything(jar.store, under(calibrationsOf(jar.group, colourant, product)));
  return readable(sharedKind, entries)
    .map(({ fields }) => fields)
    .filter(({ member, item }) => member !== jar.member || item !== jar.item.id)
    .map(({ evidence }) => evidence);
}
