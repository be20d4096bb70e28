/** The member side of the loopback host: what tests, the browser room and the benchmarks hold in their hands. Types only. */
export type * from './interface/events.ts';
export type * from './interface/host.ts';
export type * from './interface/people.ts';
export type * from './interface/views.ts';
