import { freshSecret } from './http/entrance.ts';
import type { HostEvent, HostEventBody } from './interface/events.ts';
import type { Settings } from './settings.ts';
import { Commands } from './state/commands.ts';
import { Files } from './state/files.ts';
import { Journal } from './state/journal.ts';
import { Messages } from './state/messages.ts';
import { Room } from './state/room.ts';
import { type Snowflakes, snowflakes } from './state/snowflakes.ts';

/** The state every part of the host shares. It changes only through `record`. */
export class Kernel {
  readonly settings: Settings;
  readonly journal: Journal;
  readonly room = new Room();
  readonly messages: Messages;
  readonly commands = new Commands();
  readonly files: Files;
  /** Forms by the interaction that opened them. */
  readonly forms = new Map<string, HostEvent & { kind: 'form-opened' }>();
  readonly ids: Snowflakes;
  /** `http://127.0.0.1:PORT`, once the server listens. */
  origin = '';
  /** Made anew at each start: stands in every address, and nothing is answered without it. */
  readonly secret = freshSecret();
  #token: string | undefined;

  constructor(settings: Settings) {
    this.settings = settings;
    this.journal = new Journal(settings.now, settings.keep);
    this.messages = new Messages(settings.keep);
    this.ids = snowflakes(settings.now);
    this.files = new Files(() => `${this.origin}/${this.secret}`);
    this.journal.subscribe(event => this.#fold(event));
  }

  /** Whether a token is the bot's: the one that was set, else the first that was shown. */
  knows(token: string | undefined): boolean {
    if (token === undefined || token === '') return false;
    this.#token ??= this.settings.token ?? token;
    return token === this.#token;
  }

  /** Makes something so: notes it in the journal, from which the state follows. */
  record(body: HostEventBody, at?: string): HostEvent {
    return this.journal.record(body, at);
  }

  /** The room of an earlier host stands again; addresses of its files point at this one. */
  replay(events: Iterable<HostEvent>): void {
    for (const event of events) {
      const { seq: _, at, ...body } = event;
      const isMessage = body.kind === 'message-created' || body.kind === 'message-edited';
      this.record(
        isMessage ? { ...body, message: this.files.freshen(body.message) } : (body as HostEventBody),
        at,
      );
      if ('id' in body) this.ids.observe(body.id);
      if (isMessage) this.ids.observe(body.message.id);
      if ('interactionId' in body && body.interactionId !== undefined) this.ids.observe(body.interactionId);
    }
  }

  #fold(event: HostEvent): void {
    this.room.apply(event);
    this.messages.apply(event);
    this.commands.apply(event);
    this.files.apply(event);
    if (event.kind === 'form-opened') this.forms.set(event.form.interactionId, event);
  }
}
