import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { Metrics } from './metrics.ts';

/** Whether this process can answer: what is wrong in a few words, or nothing. */
export type Readiness = () => Promise<string | undefined>;

export type OperationsServer = { readonly port: number; close(): Promise<void> };

/** A probe waits no longer than this for the store, ms: less than the second that probes usually allow. */
const PROBE_MS = 900;

/**
 * For those who run it: `/healthz` (the process turns), `/readyz` (it can answer: connected, and its records can be
 * read) and `/metrics`. Rejects where the address cannot be listened on.
 */
export async function serveOperations(
  { host, port }: { readonly host: string; readonly port: number },
  { ready, metrics }: { readonly ready: Readiness; readonly metrics: Metrics },
): Promise<OperationsServer> {
  const server = createServer((request, response) => {
    answer(request, { ready, metrics }).then(
      ({ status, body, type }) => send(response, status, body, type),
      () => send(response, 500, 'fault\n'),
    );
  });
  await new Promise<void>((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, host, resolve);
  });
  return {
    port: (server.address() as AddressInfo).port,
    async close() {
      server.closeAllConnections();
      await new Promise(resolve => server.close(resolve));
    },
  };
}

type Answered = { readonly status: number; readonly body: string; readonly type?: string };

async function answer(
  { method, url = '' }: IncomingMessage,
  { ready, metrics }: { readonly ready: Readiness; readonly metrics: Metrics },
): Promise<Answered> {
  if (method !== 'GET' && method !== 'HEAD') return { status: 405, body: 'only GET and HEAD\n' };
  switch (url.split('?')[0]) {
    case '/healthz':
      return { status: 200, body: 'ok\n' };
    case '/readyz': {
      const wrong = await readyWithin(ready, PROBE_MS);
      return wrong === undefined ? { status: 200, body: 'ready\n' } : { status: 503, body: `${wrong}\n` };
    }
    case '/metrics':
      return { status: 200, ...(await metrics.text()) };
    default:
      return { status: 404, body: 'there is /healthz, /readyz and /metrics\n' };
  }
}

async function readyWithin(ready: Readiness, ms: number): Promise<string | undefined> {
  let timer: NodeJS.Timeout | undefined;
  const late = new Promise<string>(resolve => {
    timer = setTimeout(resolve, ms, 'the records do not answer');
  });
  const told = ready().catch(() => 'the records cannot be read');
  return await Promise.race([told, late]).finally(() => clearTimeout(timer));
}

function send(
  response: ServerResponse,
  status: number,
  body: string,
  type = 'text/plain; charset=utf-8',
): void {
  response.writeHead(status, { 'content-type': type, 'cache-control': 'no-store' });
  response.end(body);
}
