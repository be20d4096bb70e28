import type { Json } from '../state/json.ts';
import type { Upload } from '../writing/write.ts';

/** One request, read and parsed. */
export interface Call {
  readonly method: string;
  /** Decoded path after `/api/v10`. */
  readonly path: string;
  readonly params: readonly string[];
  readonly query: URLSearchParams;
  readonly body: Json;
  /** The body when it is a list. */
  readonly list: readonly unknown[] | undefined;
  readonly uploads: readonly Upload[];
}

/** `json` undefined: no body at all, and no content type. */
export interface Answer {
  readonly status: number;
  readonly json?: unknown;
  readonly headers?: Readonly<Record<string, string>>;
}

export interface Route {
  readonly method: string;
  /** Against the decoded path; groups become `params`. */
  readonly path: RegExp;
  /** Whether the caller must show a bot token. */
  readonly bot: boolean;
  readonly handle: (call: Call) => Answer | Promise<Answer>;
}

export const noContent: Answer = { status: 204 };
export const ok = (json: unknown): Answer => ({ status: 200, json });
