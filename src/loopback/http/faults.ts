import type { Fault, FaultOptions } from '../interface/host.ts';

interface Trap {
  readonly method: string;
  readonly path: RegExp;
  left: number;
}
interface FaultTrap extends Trap {
  readonly fault: Fault;
  readonly retryAfter: number | null;
}
interface DelayTrap extends Trap {
  readonly ms: number;
}

/** Misbehaviour laid out for coming requests. */
export class Faults {
  readonly #faults: FaultTrap[] = [];
  readonly #delays: DelayTrap[] = [];

  lay(method: string, path: RegExp, fault: Fault, options: FaultOptions = {}): void {
    const retryAfter = options.retryAfter === undefined ? 0.05 : options.retryAfter;
    this.#faults.push({ method, path, fault, left: options.times ?? 1, retryAfter });
  }

  layDelay(method: string, path: RegExp, ms: number): void {
    this.#delays.push({ method, path, ms, left: 1 });
  }

  take(
    method: string,
    path: string,
  ): { readonly fault: Fault; readonly retryAfter: number | null } | undefined {
    return spring(this.#faults, method, path);
  }

  takeDelay(method: string, path: string): number {
    return spring(this.#delays, method, path)?.ms ?? 0;
  }
}

/** The oldest trap that fits, used up by one. */
function spring<T extends Trap>(traps: T[], method: string, path: string): T | undefined {
  const index = traps.findIndex(trap => trap.method === method && trap.path.test(path));
  const trap = traps[index];
  if (!trap) return undefined;
  trap.left -= 1;
  if (trap.left <= 0) traps.splice(index, 1);
  return trap;
}
