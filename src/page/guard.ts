import type { IncomingMessage, ServerResponse } from 'node:http';

/** Nothing but our own files runs or loads; user text could not become script even if it became markup. */
const POLICY = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' blob:",
  "connect-src 'self'",
  "form-action 'none'",
  "base-uri 'none'",
  "frame-ancestors 'none'",
  "require-trusted-types-for 'script'",
].join('; ');

/** Headers every answer carries. */
export function protect(response: ServerResponse): void {
  response.setHeader('content-security-policy', POLICY);
  response.setHeader('x-content-type-options', 'nosniff');
  response.setHeader('referrer-policy', 'no-referrer');
  response.setHeader('cross-origin-opener-policy', 'same-origin');
  response.setHeader('cross-origin-resource-policy', 'same-origin');
  response.setHeader('cache-control', 'no-store');
}

/**
 * True for requests from the page itself. A name that was made to point at this machine (DNS rebinding) arrives
 * with its own Host; another site's request arrives with its own Origin, or says so in Sec-Fetch-Site.
 */
export function isFromHere({ headers, method }: IncomingMessage, port: number): boolean {
  const hosts = [`127.0.0.1:${port}`, `localhost:${port}`];
  if (!hosts.includes(headers.host ?? '')) return false;
  const { origin } = headers;
  if (origin !== undefined && !hosts.some(host => origin === `http://${host}`)) return false;
  const site = headers['sec-fetch-site'];
  if (site === 'cross-site' || site === 'same-site') return isVisit(headers, method);
  return true;
}

/** Following a link to the page from elsewhere is no harm: it only shows it. */
const isVisit = (headers: IncomingMessage['headers'], method: string | undefined): boolean =>
  method === 'GET' && headers['sec-fetch-mode'] === 'navigate' && headers['sec-fetch-dest'] === 'document';
