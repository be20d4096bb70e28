import { evidenceIdempotency, evidenceReport } from '../keys.ts';
import { type RecordOf, written } from '../record.ts';
import { add, drop, put, type Store } from '../store.ts';
import { filed } from './filed.ts';
import { idempotencyKind, reportKind as kind, type Process, processes, type reportKind } from './schema.ts';

/** Where a group's reports are kept. */
export type EvidenceScope = { readonly store: Store; readonly group: string };

/** What a member has seen. */
export type Report = Readonly<RecordOf<typeof reportKind>>;

/**
 * Keeps a report in place of the same member's earlier one on that colour in that process. `cause` is the id of the
 * interaction: brought a second time it changes nothing. Returns whether an earlier report was replaced.
 */
export async function keepReport(
  { store, group }: EvidenceScope,
  report: Report,
  { member, cause }: { readonly member: string; readonly cause: string },
): Promise<{ readonly replaced: boolean; readonly repeated: boolean }> {
  const key = evidenceReport(group, filed(report.identity), member, report.process);
  const [before] = await store.get([key]);
  const result = await store.commit([
    add(evidenceIdempotency(group, cause), written(idempotencyKind, { at: report.at })),
    put(key, written(kind, report)),
  ]);
  return { replaced: before !== undefined && result.done, repeated: !result.done };
}

/** Takes back a member's reports on a colour, of one process or of all. Returns of which processes there were any. */
export async function withdrawReports(
  { store, group }: EvidenceScope,
  identity: string,
  { member, process }: { readonly member: string; readonly process: Process | undefined },
): Promise<readonly Process[]> {
  const asked = process === undefined ? processes : [process];
  const keys = asked.map(one => evidenceReport(group, filed(identity), member, one));
  const stored = await store.get(keys);
  const there = asked.filter((_, index) => stored[index] !== undefined);
  if (there.length > 0) await store.commit(keys.map(drop));
  return there;
}
