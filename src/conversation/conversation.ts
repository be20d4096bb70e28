import type { Services } from './context.ts';
import type { CommandRegistry } from './registry/registry.ts';

/** Everything a question needs to be answered; one for the whole process. */
export type Conversation = {
  readonly registry: CommandRegistry;
  readonly services: Services;
  /** Signs what buttons carry. */
  readonly key: Uint8Array;
  /** Signed them before it: still good, so that a key can be changed without spoiling a button. */
  readonly keyBefore?: Uint8Array | undefined;
  /** Told of faults of ours with the reference the member sees; never of what members wrote. */
  readonly onFault: (fault: unknown, reference: string) => void;
};
