import { evidenceIdempotency, evidenceReport } from '../keys.ts';
import { type RecordOf, written } from '../record.ts';
import type { Change } from '../shelf/shelf.ts';
import { add, drop, put, type Store } from '../store.ts';
import { dropOutlivedUndoables, undoable } from '../undo/index.ts';
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
  { member, cause, name }: Reporter & { readonly cause: string },
): Promise<{ readonly replaced: boolean; readonly repeated: boolean }> {
  await dropOutlivedUndoables({ store, member }, report.at);
  const key = evidenceReport(group, filed(report.identity), member, report.process);
  const [before] = await store.get([key]);
  const value = written(kind, report);
  const result = await store.commit([
    add(evidenceIdempotency(group, cause), written(idempotencyKind, { at: report.at })),
    undoable(
      member,
      { cause, at: report.at },
      {
        what: 'report',
        name,
        made: [{ key, value }],
        ...(before !== undefined && { over: [{ key, value: before }] }),
      },
    ),
    put(key, value),
  ]);
  return { replaced: before !== undefined && result.done, repeated: !result.done };
}

/** Whose report it is, and what the colour is called where it is taken back. */
type Reporter = { readonly member: string; readonly name: string };

/** Takes back a member's reports on a colour, of one process or of all. Returns of which processes there were any. */
export async function withdrawReports(
  { store, group }: EvidenceScope,
  identity: string,
  {
    member,
    process,
    name,
    change,
  }: Reporter & { readonly process: Process | undefined; readonly change: Change },
): Promise<readonly Process[]> {
  const asked = process === undefined ? processes : [process];
  const keys = asked.map(one => evidenceReport(group, filed(identity), member, one));
  const stored = await store.get(keys);
  const there = asked.filter((_, index) => stored[index] !== undefined);
  if (there.length === 0) return there;
  const back = keys.flatMap((key, index) =>
    stored[index] === undefined ? [] : [{ key, value: stored[index] }],
  );
  await dropOutlivedUndoables({ store, member }, change.at);
  await store.commit([undoable(member, change, { what: 'report-gone', name, back }), ...keys.map(drop)]);
  return there;
}
