/**
 * A row of the refusal table: what the platform documents that it refuses, the limit, its answer and where that is
 * documented ("observed": from public reports of its answers, not from the documentation).
 */
export interface Rule {
  readonly what: string;
  readonly limit?: number;
  /** HTTP status; 400 when absent. */
  readonly status?: number;
  /** The platform's numeric error code; 50035 with a path to the flaw when absent. */
  readonly number?: number;
  /** Short code of the flaw, or of the row when it has no path. */
  readonly code: string;
  readonly where: string;
}
