import type { FindingId } from '../../engine/flaws/findings.ts';
import { refuse } from '../../engine/refusal.ts';
import { flawAnswer, flawCase, flawCases, flawWithdrawn, under } from '../keys.ts';
import { type RecordOf, read, written } from '../record.ts';
import { add, drop, everything, type Store } from '../store.ts';
import { answerKind, type answers, caseKind, withdrawnKind } from './schema.ts';

declare module '../../engine/refusal.ts' {
  interface Reasons {
    'flaw-case-gone': Record<never, never>;
  }
}

/** Where the flaws of a group are kept. */
export type FlawScope = { readonly store: Store; readonly group: string };

/** What somebody asked about: their words, what their photo showed and their plan told. */
export type FlawCase = Readonly<RecordOf<typeof caseKind>>;
export type PhotoShown = NonNullable<FlawCase['photo']>;
export type PlanShown = NonNullable<FlawCase['plan']>;

export type Answer = (typeof answers)[number];

/** A case and what was said about it since, in the order it was said. */
export type FlawFile = {
  readonly opened: FlawCase;
  readonly answers: readonly { readonly finding: FindingId; readonly answer: Answer }[];
  readonly withdrawn: readonly FindingId[];
};

/** Longer than its buttons live, milliseconds. */
const LIFETIME = 48 * 3_600_000;
/** Old keys dropped with each new case: more than one case leaves. */
const SWEPT = 60;

/** Opens a case under the id of its interaction, once, and drops the oldest that nobody can go on with. */
export async function openCase({ store, group }: FlawScope, id: string, opened: FlawCase): Promise<void> {
  const { from, to } = under(flawCases(group));
  const oldest = await store.range(from, to, SWEPT);
  const old = oldest.filter(({ value }) => {
    const at = Date.parse((value as { at?: string } | null)?.at ?? '');
    return opened.at.getTime() - at > LIFETIME;
  });
  const key = flawCase(group, id);
  await store.commit([add(key, written(caseKind, opened)), ...old.map(entry => drop(entry.key))]);
}

/**
 * The id of a case with these words: one interaction opens a second one where its words alone were looked at first, and then those of the
 * turn before with them. Asked again, the same words find the same case.
 */
export async function caseIdFor({ store, group }: FlawScope, id: string, words: string): Promise<string> {
  const key = flawCase(group, id);
  const [found] = await store.get([key]);
  return found === undefined || read(caseKind, key, found).words === words ? id : `${id}-2`;
}

/** A case with all that was answered and taken back. Throws a Refusal `flaw-case-gone`. */
export async function fileOf({ store, group }: FlawScope, id: string): Promise<FlawFile> {
  const key = flawCase(group, id);
  const [[found], rest] = await Promise.all([store.get([key]), everything(store, under(key))]);
  if (found === undefined) return refuse('flaw-case-gone', {});
  const answered = rest
    .filter(entry => entry.key.startsWith(`${key}/answer/`))
    .map(entry => read(answerKind, entry.key, entry.value));
  const withdrawn = rest
    .filter(entry => entry.key.startsWith(`${key}/withdrawn/`))
    .map(entry => read(withdrawnKind, entry.key, entry.value));
  return {
    opened: read(caseKind, key, found),
    answers: answered.toSorted((a, b) => a.at.getTime() - b.at.getTime()),
    withdrawn: withdrawn.map(one => one.finding),
  };
}

/** Keeps the answer to a question; the first one counts, however often buttons are pressed. */
export async function keepAnswer(
  { store, group }: FlawScope,
  id: string,
  given: Readonly<RecordOf<typeof answerKind>>,
): Promise<void> {
  await store.commit([add(flawAnswer(group, id, given.finding), written(answerKind, given))]);
}

/** Takes findings back, answers of ours included. */
export async function withdraw(
  { store, group }: FlawScope,
  id: string,
  findings: readonly FindingId[],
  at: Date,
): Promise<void> {
  for (const finding of new Set(findings))
    await store.commit([add(flawWithdrawn(group, id, finding), written(withdrawnKind, { finding, at }))]);
}
