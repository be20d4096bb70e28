import { STATUS_CODES } from 'node:http';
import { DefaultRestOptions, type RESTOptions } from 'discord.js';
import { type Dispatcher, errors, getGlobalDispatcher } from 'undici';

/** How the library has a request sent. */
export type Sends = RESTOptions['makeRequest'];
type Response = Awaited<ReturnType<Sends>>;

/** What ends a request before its time: a signal of the platform, or as little as is asked of one here. */
type Ending = {
  readonly aborted?: boolean;
  readonly reason?: unknown;
  addEventListener?(event: 'abort', end: () => void): void;
  removeEventListener?(event: 'abort', end: () => void): void;
  on?(event: 'abort', end: () => void): void;
};

/**
 * Sends a request for the library, over the same client as its own way does, and gathers what comes. Its own makes a `Headers` of
 * each answer's headers, through all checks of the fetch standard, to look for a few names in them; the client's own
 * `request` makes a stream of an answer of a few bytes, or none. What carries files goes the library's way.
 */
export const sendRequest: Sends = (url, asked) => {
  const { body, method, headers, signal, dispatcher } = asked;
  if (body != null && typeof body !== 'string' && !(body instanceof Uint8Array))
    return DefaultRestOptions.makeRequest(url, asked);
  return new Promise((resolve, reject) => {
    const told = new Told({ resolve, reject }, signal as Ending | null | undefined);
    // Which client is said, or Node's own by the time of the first request.
    const over = (dispatcher as Dispatcher | undefined) ?? getGlobalDispatcher();
    over.dispatch(
      {
        ...placeOf(url),
        method: method as 'POST',
        headers: headers as Record<string, string>,
        body: body ?? null,
      },
      told,
    );
  });
};

const origins = new Map<string, string>();
const MOST_ORIGINS = 10;
/** Paths that stand in a URL as they are (RFC 3986, 3.3 and 3.4): no step up or down, nothing to be encoded. */
const PLAIN_PATH = /^(?!.*\/\.)\/[\w\-.~/%?=&:@,+]*$/;

/** Origin and path of a URL. The platform has one origin, and to parse it anew takes as long as the sending. */
function placeOf(url: string): { readonly origin: string; readonly path: string } {
  const end = url.indexOf('/', url.indexOf('//') + 2);
  const [beginning, path] = [url.slice(0, end), url.slice(end)];
  const known = origins.get(beginning);
  if (known !== undefined && PLAIN_PATH.test(path)) return { origin: known, path };
  const { origin, pathname, search } = new URL(url);
  if (origins.size >= MOST_ORIGINS) origins.clear();
  if (end > 0) origins.set(beginning, origin);
  return { origin, path: `${pathname}${search}` };
}

type Waiting = { readonly resolve: (response: Response) => void; readonly reject: (why: unknown) => void };

/** What is told of one request, as the client tells it. Once there are headers, what fails after them is a fault of the body. */
class Told implements Dispatcher.DispatchHandlers {
  readonly #waiting: Waiting;
  readonly #signal: Ending | null | undefined;
  #abort: ((why?: Error) => void) | undefined;
  #ended: unknown;
  #response: TextResponse | undefined;

  constructor(waiting: Waiting, signal: Ending | null | undefined) {
    this.#waiting = waiting;
    this.#signal = signal;
    if (!signal) return;
    if (signal.aborted) this.#end();
    else if (signal.addEventListener) signal.addEventListener('abort', this.#end);
    else signal.on?.('abort', this.#end);
  }

  readonly #end = (): void => {
    this.#ended = this.#signal?.reason ?? new errors.RequestAbortedError();
    this.#abort?.(this.#ended as Error);
  };

  onConnect(abort: (why?: Error) => void): void {
    this.#abort = abort;
    if (this.#ended !== undefined) abort(this.#ended as Error);
  }

  onHeaders(status: number, headers: Buffer[]): boolean {
    // Before the answer itself there may be others (RFC 9110, 15.2).
    if (status >= 200) this.#response = new TextResponse(status, headers);
    return true;
  }

  onData(piece: Buffer): boolean {
    this.#response?.pieces.push(piece);
    return true;
  }

  onComplete(): void {
    this.#leave();
    if (this.#response) this.#waiting.resolve(this.#response as unknown as Response);
  }

  onError(fault: Error): void {
    this.#leave();
    if (this.#response) {
      this.#response.fault = fault;
      this.#waiting.resolve(this.#response as unknown as Response);
    } else this.#waiting.reject(fault);
  }

  #leave(): void {
    this.#signal?.removeEventListener?.('abort', this.#end);
  }
}

/** What the library asks of a response: how it went, what it says, and headers by name. */
class TextResponse {
  readonly status: number;
  readonly bodyUsed = false;
  readonly body = null;
  readonly pieces: Buffer[] = [];
  /** Why there is no more of it. */
  fault: Error | undefined;
  readonly #headers: readonly Buffer[];

  constructor(status: number, headers: readonly Buffer[]) {
    this.status = status;
    this.#headers = headers;
  }

  get ok(): boolean {
    return this.status >= 200 && this.status < 300;
  }

  get statusText(): string {
    return STATUS_CODES[this.status] ?? '';
  }

  get headers(): Pick<Headers, 'get' | 'has'> {
    const get = (name: string) => this.#header(name.toLowerCase());
    return { get, has: (name: string) => get(name) !== null };
  }

  /** Names in any case, several values as one (RFC 9110, 5.1 and 5.2). */
  #header(name: string): string | null {
    const values: string[] = [];
    for (let at = 0; at + 1 < this.#headers.length; at += 2)
      if (String(this.#headers[at]).toLowerCase() === name) values.push(String(this.#headers[at + 1]));
    return values.length === 0 ? null : values.join(',');
  }

  async arrayBuffer(): Promise<ArrayBuffer> {
    const { buffer, byteOffset, byteLength } = this.#whole();
    return buffer.slice(byteOffset, byteOffset + byteLength) as ArrayBuffer;
  }

  async json(): Promise<unknown> {
    return JSON.parse(this.#whole().toString());
  }

  async text(): Promise<string> {
    return this.#whole().toString();
  }

  #whole(): Buffer {
    if (this.fault) throw this.fault;
    return this.pieces.length === 1 ? this.pieces[0]! : Buffer.concat(this.pieces);
  }
}
