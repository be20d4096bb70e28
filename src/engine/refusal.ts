/**
 * What a member asked cannot be answered, and why: an id and plain values, never prose.
 * Each subject adds the reasons it can give beside the code that gives them:
 *
 *     declare module '../refusal.ts' {
 *       interface Reasons { 'amount-without-unit': { text: string } }
 *     }
 *
 * `src/words` must then hold a sentence for that id in every language, or nothing compiles.
 */
// biome-ignore lint/suspicious/noEmptyInterface: the subjects fill it in.
export interface Reasons {}

export type ReasonId = Extract<keyof Reasons, string>;

/** An expected "no", as against a bug. Fronts show its sentence; anything else thrown is a fault of ours. */
export class Refusal<Id extends ReasonId = ReasonId> extends Error {
  override readonly name = 'Refusal';
  readonly id: Id;
  readonly values: Reasons[Id];

  constructor(id: Id, values: Reasons[Id]) {
    super(id);
    this.id = id;
    this.values = values;
  }
}

/** What a reader gives; undefined where it refuses. What else it throws is a fault of ours, and is thrown on. */
export function unlessRefused<Read>(read: () => Read): Read | undefined {
  try {
    return read();
  } catch (refusal) {
    if (refusal instanceof Refusal) return undefined;
    throw refusal;
  }
}

/** Throws a {@link Refusal}; the caller reads as a statement. */
export function refuse<Id extends ReasonId>(id: Id, values: Reasons[Id]): never {
  throw new Refusal(id, values);
}
