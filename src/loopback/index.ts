/** The loopback host: the chat platform's documented interface on 127.0.0.1, for tests, the browser room and benchmarks. */
export { openHost } from './host.ts';
export { freshSecret, isSecret } from './http/entrance.ts';
export type * from './interface.ts';
export { permissionBits } from './permissions.ts';
export { type Flaw, Refused, Unanswered } from './refused.ts';
