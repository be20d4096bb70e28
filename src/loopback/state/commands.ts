import type { APIApplicationCommand } from 'discord-api-types/v10';
import type { HostEvent } from '../interface/events.ts';

/** Registered commands by scope: a guild's id, or everywhere. A fold over the journal. */
export class Commands {
  readonly #scopes = new Map<string | undefined, readonly APIApplicationCommand[]>();

  apply(event: HostEvent): void {
    if (event.kind === 'commands-changed') this.#scopes.set(event.guildId, event.commands);
  }

  in(scope: string | undefined): readonly APIApplicationCommand[] {
    return this.#scopes.get(scope) ?? [];
  }

  /** The command of a name and type (1 slash, 2 user menu, 3 message menu); a guild's own goes first. */
  find(name: string, type: number, guildId: string | undefined): APIApplicationCommand | undefined {
    const fits = (command: APIApplicationCommand): boolean =>
      command.name === name && Number(command.type) === type;
    const own = guildId === undefined ? undefined : this.in(guildId).find(fits);
    return own ?? this.in(undefined).find(fits);
  }
}
