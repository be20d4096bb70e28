import { z } from 'zod';
import { StoreFailure } from './failure.ts';

/** A kind of record: its fields, and the version of their meaning that this program reads and writes. */
export type RecordKind<Fields> = { readonly name: string; readonly schema: z.ZodType<Fields> };

/** What a kind of record says. */
export type RecordOf<Kind> = Kind extends RecordKind<infer Fields> ? Fields : never;

/** Declares a kind of record. A field added later is optional, or the version goes up with a way to read both. */
export function recordKind<Shape extends z.ZodRawShape>(
  name: string,
  shape: Shape,
): RecordKind<z.output<z.ZodObject<Shape>>> {
  return { name, schema: z.strictObject({ v: z.literal(1), ...shape }) as never };
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
  const result = z.safeEncode(kind.schema, { v: 1, ...fields });
  if (result.success) return result.data;
  throw new StoreFailure('unfit', 'write', `not a ${kind.name}: ${z.prettifyError(result.error)}`);
}

/**
 * What a stored value says; throws a `StoreFailure` when it was written by another version or does not read
 * as this kind of record. Never call it with `undefined`: that is an absent record.
 */
export function read<Fields>(kind: RecordKind<Fields>, key: string, value: unknown): Fields {
  const version = (value as { v?: unknown } | null)?.v;
  if (typeof version === 'number' && version !== 1) {
    throw new StoreFailure('unknown-version', 'read', `${key}: ${kind.name} of version ${version}`);
  }
  const result = z.safeDecode(kind.schema, value as never);
  if (!result.success) {
    // The paths only: what a member wrote does not belong in a log.
    const where = result.error.issues.map(issue => `${issue.path.join('.')} ${issue.code}`).join('; ');
    throw new StoreFailure('corrupt', 'read', `${key}: not a ${kind.name} (${where})`);
  }
  const { v: _version, ...fields } = result.data as Fields & { v: 1 };
  return fields as Fields;
}
