import { randomBytes, timingSafeEqual } from 'node:crypto';
import type { IncomingMessage } from 'node:http';

/** A secret as it stands in addresses: 32 random bytes in hexadecimal. */
export const freshSecret = (): string => randomBytes(32).toString('hex');

/** Compares without telling by its time how much was right. */
export function isSecret(given: string, secret: string): boolean {
  const [a, b] = [Buffer.from(given), Buffer.from(secret)];
  return a.length === b.length && timingSafeEqual(a, b);
}

/**
 * Where a request leads behind the secret, which is the first part of its path; undefined for a request that must not
 * be answered. A browser's page gives itself away by its Origin or Sec-Fetch-Site, a name that was made to point at
 * this machine (DNS rebinding) by its Host; the platform's client sends neither.
 */
export function behindSecret(
  { headers, url: path }: Pick<IncomingMessage, 'headers' | 'url'>,
  { origin, secret }: { readonly origin: string; readonly secret: string },
): URL | undefined {
  if (headers.origin !== undefined || headers['sec-fetch-site'] !== undefined) return undefined;
  if (headers.host !== new URL(origin).host) return undefined;
  const url = new URL(path ?? '/', origin);
  const [, given = '', ...rest] = url.pathname.split('/');
  if (!isSecret(given, secret)) return undefined;
  url.pathname = `/${rest.join('/')}`;
  return url;
}
