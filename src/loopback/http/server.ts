import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { setTimeout as sleep } from 'node:timers/promises';
import type { RequestView } from '../interface/host.ts';
import type { Kernel } from '../kernel.ts';
import { errorsObject, refusal } from '../refusals/findings.ts';
import { Refused } from '../refused.ts';
import { behindSecret } from './entrance.ts';
import type { Answer, Route } from './exchange.ts';
import { Faults } from './faults.ts';
import { Limits, type Verdict } from './limits.ts';
import { readBody } from './read-body.ts';
import { serveFile } from './serve-file.ts';

type Noted = { -readonly [Key in keyof RequestView]: RequestView[Key] };

const remembered = 10_000;

/** The HTTP side: finds the route, reads the body, lets faults happen, answers as the platform does. */
export class FrontDoor {
  readonly faults = new Faults();
  readonly requests: RequestView[] = [];
  readonly watchers = new Set<(request: RequestView) => void>();
  readonly server: Server;
  readonly #kernel: Kernel;
  readonly #limits: Limits;
  #routes: readonly Route[] = [];

  constructor(kernel: Kernel) {
    this.#kernel = kernel;
    this.#limits = new Limits(kernel.settings.limits);
    this.server = createServer((request, response) => {
      this.#serve(request, response).catch((error: unknown) => fail(response, error));
    });
    this.server.keepAliveTimeout = 60_000;
  }

  /** Opens on 127.0.0.1 and resolves with the port. */
  async open(port: number, routes: readonly Route[]): Promise<number> {
    this.#routes = routes;
    await new Promise<void>((resolve, reject) => {
      this.server.once('error', reject);
      this.server.listen(port, '127.0.0.1', resolve);
    });
    return (this.server.address() as AddressInfo).port;
  }

  async close(): Promise<void> {
    this.server.closeAllConnections();
    await new Promise(resolve => this.server.close(resolve));
  }

  async #serve(request: IncomingMessage, response: ServerResponse): Promise<void> {
    const method = request.method ?? 'GET';
    const url = behindSecret(request, this.#kernel);
    if (!url) return void response.writeHead(403).end();
    if (url.pathname.startsWith('/files/')) return serveFile(this.#kernel.files, url, response);
    const path = decodeURIComponent(url.pathname.replace(/^\/api(\/v10)?/, ''));
    const noted: Noted = { method, path, query: url.search, body: undefined, files: 0 };
    this.requests.push(noted);
    if (this.requests.length > remembered) this.requests.splice(0, remembered / 2);
    try {
      const delay = this.faults.takeDelay(method, path);
      if (delay > 0) await sleep(delay);
      const trap = this.faults.take(method, path);
      if (trap && trap.fault !== 'lost') return misbehave(request, response, noted, trap);
      const answer = await this.#answer(request, url.searchParams, noted);
      this.#tell({ ...noted, status: answer.status });
      if (trap) request.socket.destroy();
      else write(response, noted, answer);
    } catch (error) {
      if (!(error instanceof Refused)) throw error;
      noted.code = error.code;
      this.#tell({ ...noted, status: error.status });
      write(response, noted, { status: error.status, json: refusedJson(error) });
    }
  }

  #tell(request: RequestView): void {
    for (const watcher of this.watchers) watcher(request);
  }

  async #answer(request: IncomingMessage, query: URLSearchParams, noted: Noted): Promise<Answer> {
    const { body, list, uploads } = await readBody(request, this.#kernel.settings.requestSizeLimit);
    noted.body = list ?? body;
    noted.files = uploads.length;
    for (const route of this.#routes) {
      if (route.method !== noted.method) continue;
      const match = route.path.exec(noted.path);
      if (!match) continue;
      let headers: Answer['headers'] = {};
      if (route.bot) {
        const [, token] = /^Bot (.+)$/.exec(request.headers.authorization ?? '') ?? [];
        if (!this.#kernel.knows(token)) throw refusal('unauthorised', '401: Unauthorized');
        const verdict = this.#limits.take(noted.method, noted.path);
        if (verdict.retryAfter !== undefined) return tooMany(verdict.retryAfter, verdict);
        headers = verdict.headers;
      }
      const answer = await route.handle({
        method: noted.method,
        path: noted.path,
        params: match.slice(1),
        query,
        body,
        list,
        uploads,
      });
      return { ...answer, headers };
    }
    throw new Refused(404, 0, '404: Not Found');
  }
}

const refusedJson = (error: Refused): unknown => ({
  message: error.flaws.length > 0 ? 'Invalid Form Body' : error.message,
  code: error.code,
  ...(error.flaws.length > 0 && { errors: errorsObject(error.flaws) }),
});

const tooMany = (retryAfter: number, { headers, global }: Pick<Verdict, 'headers' | 'global'>): Answer => ({
  status: 429,
  headers,
  json: { message: 'You are being rate limited.', retry_after: retryAfter, global },
});

function write(response: ServerResponse, noted: Noted, answer: Answer): void {
  noted.status = answer.status;
  if (answer.json === undefined) {
    response.writeHead(answer.status, answer.headers).end();
    return;
  }
  const text = JSON.stringify(answer.json);
  response
    .writeHead(answer.status, {
      ...answer.headers,
      'content-type': 'application/json',
      'content-length': Buffer.byteLength(text),
    })
    .end(text);
}

function misbehave(
  request: IncomingMessage,
  response: ServerResponse,
  noted: Noted,
  trap: NonNullable<ReturnType<Faults['take']>>,
): void {
  request.resume();
  if (trap.fault === 'hang' || trap.fault === 'lost') return;
  if (trap.fault === 'close') {
    request.socket.destroy();
    return;
  }
  if (trap.fault === 429) {
    if (trap.retryAfter !== null) response.setHeader('retry-after', String(trap.retryAfter));
    response.setHeader('x-ratelimit-scope', 'user');
    const json = { message: 'You are being rate limited.', retry_after: trap.retryAfter ?? 0, global: false };
    write(response, noted, { status: 429, json });
    return;
  }
  write(response, noted, { status: trap.fault, json: { message: `${trap.fault}: made to fail`, code: 0 } });
}

/** A mistake of the host itself: say so loudly, since a test would otherwise blame the bot. */
function fail(response: ServerResponse, error: unknown): void {
  console.error('loopback host:', error);
  if (!response.headersSent) response.writeHead(500, { 'content-type': 'application/json' });
  response.end(JSON.stringify({ message: `loopback host: ${String(error)}`, code: 0 }));
}
