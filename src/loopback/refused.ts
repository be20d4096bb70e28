/** One place in a refused payload: where, the platform's short code, its sentence. */
export interface Flaw {
  readonly path: readonly (string | number)[];
  readonly code: string;
  readonly message: string;
}

/** The platform says no: HTTP status, its numeric error code, and the flaws of a malformed payload (50035). */
export class Refused extends Error {
  override readonly name = 'Refused';
  readonly status: number;
  readonly code: number;
  readonly flaws: readonly Flaw[];

  constructor(status: number, code: number, message: string, flaws: readonly Flaw[] = []) {
    super(
      flaws.length === 0
        ? message
        : `${message}: ${flaws.map(f => `${f.path.join('.')} ${f.message}`).join('; ')}`,
    );
    this.status = status;
    this.code = code;
    this.flaws = flaws;
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
