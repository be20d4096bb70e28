import { type Flaw, Refused } from '../refused.ts';
import { type RuleId, ruleOf } from './rules.ts';

export type Path = readonly (string | number)[];

/** Characters as the platform counts them: Unicode code points. */
export const characters = (text: string): number => {
  let count = 0;
  for (const _ of text) count += 1;
  return count;
};

/** The refusal of a row that has no path. */
export function refusal(rule: RuleId, message?: string): Refused {
  const row = ruleOf(rule);
  return new Refused(row.status ?? 400, row.number ?? 50035, message ?? row.what, [], rule);
}

/** Collects the flaws of one payload, so that an answer names all of them at once, as the platform's does. */
export class Findings {
  readonly flaws: Flaw[] = [];

  add(rule: RuleId, path: Path, message?: string) {
    const row = ruleOf(rule);
    if (row.number !== undefined) throw refusal(rule, message);
    const limit = row.limit === undefined ? '' : ` (limit ${row.limit})`;
    this.flaws.push({ path, code: row.code, message: message ?? `${row.what}${limit}`, rule });
  }

  /** Refuses anything but text of `min` up to the row's limit. */
  text(rule: RuleId, path: Path, value: unknown, min: 0 | 1) {
    const max = ruleOf(rule).limit ?? Number.POSITIVE_INFINITY;
    if (typeof value !== 'string') {
      if (min > 0 || (value !== undefined && value !== null)) this.add(rule, path);
      return;
    }
    const count = value.length <= max && value.length > 0 ? value.length : characters(value);
    if (count < min || count > max) this.add(rule, path);
  }

  /** Refuses a list shorter than `min` or longer than the row's limit. */
  count(rule: RuleId, path: Path, items: readonly unknown[], min: number) {
    const max = ruleOf(rule).limit ?? Number.POSITIVE_INFINITY;
    if (items.length < min || items.length > max) this.add(rule, path);
  }

  /** Refuses a number outside `min` up to `max`; an absent one is fine. */
  range(rule: RuleId, path: Path, value: unknown, min: number, max: number) {
    if (value === undefined || value === null) return;
    if (typeof value !== 'number' || !Number.isInteger(value) || value < min || value > max)
      this.add(rule, path);
  }

  /** Throws 50035 with all that was found. */
  settle() {
    if (this.flaws.length > 0) throw new Refused(400, 50035, 'Invalid Form Body', this.flaws);
  }
}

/** The platform's nested errors object: a key for each step of a path, `_errors` at its end. */
export function errorsObject(flaws: readonly Flaw[]): Record<string, unknown> {
  const root: Record<string, unknown> = {};
  for (const flaw of flaws) {
    let at = root;
    for (const step of flaw.path) {
      at[step] ??= {};
      at = at[step] as Record<string, unknown>;
    }
    at._errors ??= [];
    (at._errors as unknown[]).push({ code: flaw.code, message: flaw.message });
  }
  return root;
}
