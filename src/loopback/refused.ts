import type { RuleId } from './refusals/rules.ts';

/** One place in a refused payload: where, the platform's short code, its sentence, and the row of the refusal table. */
export interface Flaw {
  readonly path: readonly (string | number)[];
  readonly code: string;
  readonly message: string;
  readonly rule: RuleId;
}

/** The platform says no: HTTP status, its numeric error code, and the flaws of a malformed payload (50035). */
export class Refused extends Error {
  override readonly name = 'Refused';
  readonly status: number;
  readonly code: number;
  readonly flaws: readonly Flaw[];
  /** Rows of the refusal table; empty when a member, not the bot, was refused. */
  readonly rules: readonly RuleId[];

  constructor(status: number, code: number, message: string, flaws: readonly Flaw[] = [], rule?: RuleId) {
    super(
      flaws.length === 0
        ? message
        : `${message}: ${flaws.map(f => `${f.path.join('.')} ${f.message}`).join('; ')}`,
    );
    this.status = status;
    this.code = code;
    this.flaws = flaws;
    this.rules = rule === undefined ? flaws.map(flaw => flaw.rule) : [rule];
  }
}

/** The bot did not acknowledge in time, left a deferred answer open, or was not connected. */
export class Unanswered extends Error {
  override readonly name = 'Unanswered';
  readonly interactionId: string;

  constructor(interactionId: string, why: string) {
    super(why);
    this.interactionId = interactionId;
  }
}
