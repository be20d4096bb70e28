import type { Host, HostOptions } from './interface.ts';

/** Opens a loopback host on 127.0.0.1. */
export function openHost(_options: HostOptions = {}): Promise<Host> {
  return Promise.reject(new Error('the loopback host is not open for business yet'));
}
