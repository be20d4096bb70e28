import { z } from 'zod';
import { anonymous, StoreFailure } from './failure.ts';
import { setAside } from './set-aside.ts';
import { type Entry, Unreadable } from './store.ts';

/** A kind of record: its fields, and the version of their meaning that this program reads and writes. */
export type RecordKind<Fields> = {
  readonly name: string;
  readonly schema: z.ZodType<Fields>;
  readonly version: number;
  /** Makes of a stored value of version n one of version n + 1; the first is for version 1. */
  readonly steps: readonly Step[];
  /** Every field that this program knows, the version included. */
  readonly known: ReadonlySet<string>;
};

/** What a stored value of one version says in the next. */
export type Step = (stored: Readonly<Record<string, unknown>>) => Readonly<Record<string, unknown>>;

/**
 * What a stored record says beside the fields that this program knows, as a newer program wrote it. A symbol travels with
 * whatever is spread (`{ ...before, zone }`) and is seen by nothing else, so a record that is read, changed and
 * written again keeps what somebody chose there while a rolling update was under way, or before a rollback.
 */
const NEWER = Symbol('fields of a newer program');
type WithNewer = { readonly [NEWER]?: Readonly<Record<string, unknown>> };

/** What a kind of record says. */
export type RecordOf<Kind> = Kind extends RecordKind<infer Fields> ? Fields : never;

/**
 * Declares a kind of record. A field added later is optional and stands at the top of the record: older programs read over
 * it and keep it where they write the record again, and newer ones do without. Anything else is a new version, with one more step from the one before.
 */
export function recordKind<Shape extends z.ZodRawShape>(
  name: string,
  shape: Shape,
  steps: readonly Step[] = [],
): RecordKind<z.output<z.ZodObject<Shape>>> {
  const version = 1 + steps.length;
  const known = new Set(['v', ...Object.keys(shape)]);
  return { name, schema: z.object({ v: z.literal(version), ...shape }) as never, version, steps, known };
}

/** A moment, stored as ISO 8601 in UTC. */
export const moment = z.codec(z.iso.datetime(), z.date(), {
  decode: text => new Date(text),
  encode: date => date.toISOString(),
});

/** A mass in whole milligrams: sums of them are exact, as sums of decimal grams are not. */
export const milligrams = z.int();

/** The value to store; throws a `StoreFailure` when it is not what the kind allows, which is a bug of ours. */
export function written<Fields>(kind: RecordKind<Fields>, fields: Fields): unknown {
  const result = z.safeEncode(kind.schema, { v: kind.version, ...fields } as never);
  const newer = (fields as WithNewer)[NEWER];
  if (result.success) return newer ? { ...newer, ...(result.data as object) } : result.data;
  throw new StoreFailure('unfit', 'write', `not a ${kind.name}: ${z.prettifyError(result.error)}`);
}

/**
 * What a stored value says; throws a `StoreFailure` when it was written by another version or does not read
 * as this kind of record. Never call it with `undefined`: that is an absent record.
 */
export function read<Fields>(kind: RecordKind<Fields>, key: string, value: unknown): Fields {
  if (value instanceof Unreadable) {
    throw new StoreFailure('corrupt', 'read', `${anonymous(key)}: no record, where a ${kind.name} should be`);
  }
  const version = versionOf(value);
  if (version > kind.version) {
    throw new StoreFailure(
      'unknown-version',
      'read',
      `${anonymous(key)}: ${kind.name} of version ${version}`,
    );
  }
  const stored = upgraded(kind, value, version);
  const result = z.safeDecode(kind.schema, stored as never);
  if (!result.success) {
    // The paths only: what a member wrote does not belong in a log.
    const where = result.error.issues.map(issue => `${issue.path.join('.')} ${issue.code}`).join('; ');
    throw new StoreFailure('corrupt', 'read', `${anonymous(key)}: not a ${kind.name} (${where})`);
  }
  const { v: _version, ...fields } = result.data as Fields & { v: number };
  const newer = newerIn(kind, stored as Readonly<Record<string, unknown>>);
  return (newer ? { ...fields, [NEWER]: newer } : fields) as Fields;
}

/** The fields that this program does not know; undefined where it knows all of them. */
function newerIn<Fields>({ known }: RecordKind<Fields>, stored: Readonly<Record<string, unknown>>) {
  let newer: Record<string, unknown> | undefined;
  for (const name of Object.keys(stored)) {
    if (known.has(name)) continue;
    newer ??= {};
    newer[name] = stored[name];
  }
  return newer;
}

/** The version that a stored value states; before there were any it was called otherwise, or 1. */
function versionOf(value: unknown): number {
  const { v, version } = (value ?? {}) as { v?: unknown; version?: unknown };
  return typeof v === 'number' ? v : typeof version === 'number' ? version : 1;
}

function upgraded<Fields>({ steps }: RecordKind<Fields>, value: unknown, version: number): unknown {
  if (steps.length === 0 || typeof value !== 'object' || value === null) return value;
  let stored = value as Readonly<Record<string, unknown>>;
  for (const step of steps.slice(version - 1)) stored = step(stored);
  return { ...stored, v: 1 + steps.length };
}

/** What of the entries reads as this kind; each other one is set aside alone. */
export function readable<Fields>(
  kind: RecordKind<Fields>,
  entries: readonly Entry[],
): readonly { readonly key: string; readonly fields: Fields }[] {
  return entries.flatMap(({ key, value }) => {
    const fields = orSetAside(kind.name, key, () => read(kind, key, value));
    return fields === undefined ? [] : [{ key, fields }];
  });
}

/** What `reading` gives; undefined, with the record set aside, where it throws that the record is unreadable. */
export function orSetAside<Read>(kind: string, key: string, reading: () => Read): Read | undefined {
  try {
    return reading();
  } catch (failure) {
    if (!(failure instanceof StoreFailure) || !unreadable.has(failure.kind)) throw failure;
    setAside(kind, key, failure);
    return undefined;
  }
}

const unreadable: ReadonlySet<StoreFailure['kind']> = new Set(['corrupt', 'unknown-version']);
