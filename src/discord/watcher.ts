export type Outcome = 'answered' | 'refused' | 'fault' | 'lost';

/** Who is told how questions ended; `command` is the name of a command or of what follows one, never a member's word. */
export type Watcher = {
  answered(about: { readonly command: string; readonly outcome: Outcome; readonly seconds: number }): void;
  /** The platform told us to wait. */
  rateLimited(): void;
};
