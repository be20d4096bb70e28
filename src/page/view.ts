import type { FileView, Host, HostEvent, MessageView, OpenForm } from '../loopback/index.ts';
import type { Asked, Change, Seat, Shown, ShownFile, ShownForm, Snapshot, Waiting } from './model.ts';
import { keyOf, memberAt, seatsOf } from './seats.ts';

/** Messages the page shows at most, newest last. */
const MOST_SHOWN = 300;

/** What the room looks like from each seat: a fold over the host's events. */
export class View {
  readonly #host: Host;
  readonly #people = new Map<string, { permissions: string; locale: string }>();
  readonly #names = new Map<string, string>();
  readonly #asked = new Map<string, Asked>();
  readonly #waiting = new Map<string, Waiting & { readonly member: string }>();
  readonly #forms = new Map<string, { readonly form: OpenForm; readonly member: string }>();
  #ready = false;

  /** `asked`: what each interaction of an earlier run asked. */
  constructor(host: Host, asked: ReadonlyMap<string, Asked>) {
    this.#host = host;
    for (const [id, one] of asked) this.#asked.set(id, one);
    host.subscribe(event => this.#fold(event), 0);
  }

  get seats(): readonly Seat[] {
    return seatsOf(this.#host, this.#people);
  }

  get asked(): ReadonlyMap<string, Asked> {
    return this.#asked;
  }

  nameOf(id: string): string {
    return id === this.#host.botId ? 'Tintmoot' : (this.#names.get(id) ?? '?');
  }

  /** The assistant answers from now on. */
  open(): void {
    this.#ready = true;
  }

  /** Notes what an interaction asks: it waits until something is shown for it. */
  ask(interaction: string, member: string, what: Omit<Asked, 'by'>): Waiting {
    const asked = { ...what, by: this.nameOf(member) };
    this.#asked.set(interaction, asked);
    this.#waiting.set(interaction, { ...asked, interaction, member });
    return { ...asked, interaction };
  }

  /** Notes what was asked elsewhere than on the page. */
  note(interaction: string, asked: Asked): void {
    this.#asked.set(interaction, asked);
  }

  settle(interaction: string): void {
    this.#waiting.delete(interaction);
  }

  form(interaction: string, member: string): OpenForm | undefined {
    const opened = this.#forms.get(interaction);
    return opened?.member === member ? opened.form : undefined;
  }

  /** A form that was sent or put aside does not come back after a reload. */
  closeForms(member: string): void {
    for (const [id, opened] of this.#forms) if (opened.member === member) this.#forms.delete(id);
  }

  closeForm(interaction: string): void {
    this.#forms.delete(interaction);
  }

  /** Undefined when nobody sits there. */
  snapshot(group: string, member: string): Snapshot | undefined {
    const { seats } = this;
    const seat = seats.find(one => one.group === group && one.member === member);
    if (!seat) return undefined;
    const seen = memberAt(this.#host, group, member)?.sees() ?? [];
    const form = [...this.#forms].findLast(([, opened]) => opened.member === member);
    return {
      seat,
      seats,
      commands: this.#host.commands(),
      messages: seen.slice(-MOST_SHOWN).map(message => this.shown(message)),
      waiting: [...this.#waiting.values()].filter(one => one.member === member),
      form: form ? shownForm(form[1].form) : null,
      ready: this.#ready,
    };
  }

  /** What an event changes for the member of a seat, if anything. */
  change(event: HostEvent, { group, member }: Pick<Seat, 'group' | 'member'>): Change | undefined {
    switch (event.kind) {
      case 'message-created':
      case 'message-edited': {
        if (event.guildId !== group || !isFor(event.visibleTo, member)) return undefined;
        const message = this.#host.latest(event.message.id);
        return message && { kind: 'message', message: this.shown(message) };
      }
      case 'message-deleted':
        return isFor(event.visibleTo, member) ? { kind: 'gone', id: event.id } : undefined;
      case 'form-opened':
        return event.visibleTo === member ? { kind: 'form', form: shownForm(event.form) } : undefined;
      case 'commands-changed':
        return { kind: 'commands', commands: this.#host.commands() };
      case 'guild-added':
      case 'guild-removed':
      case 'member-joined':
      case 'member-changed':
      case 'member-left':
        return { kind: 'seats', seats: this.seats };
      default:
        return undefined;
    }
  }

  shown(message: MessageView): Shown {
    const { raw, id, ephemeral, components, files, interactionId } = message;
    const asked = interactionId === undefined ? undefined : this.#asked.get(interactionId);
    return {
      id,
      at: raw.timestamp,
      author: this.nameOf(message.authorId),
      fromBot: message.authorId === this.#host.botId,
      onlyYou: ephemeral,
      pending: ((raw.flags ?? 0) & LOADING) !== 0,
      edited: raw.edited_timestamp !== null,
      text: raw.content,
      components,
      files: files.map(file => shownFile(file, raw)),
      ...(asked && { asked }),
      ...(interactionId !== undefined && { interaction: interactionId }),
    };
  }

  #fold(event: HostEvent): void {
    switch (event.kind) {
      case 'member-joined':
      case 'member-changed':
        this.#people.set(keyOf(event.guildId, event.id), event);
        this.#names.set(event.id, event.name);
        return;
      case 'form-opened':
        this.#forms.set(event.form.interactionId, { form: event.form, member: event.visibleTo });
        this.#waiting.delete(event.form.interactionId);
        return;
      case 'message-created':
      case 'message-edited':
        if (event.interactionId !== undefined) this.#waiting.delete(event.interactionId);
        return;
      case 'interaction-failed':
        this.#waiting.delete(event.interactionId);
    }
  }
}

/** Message flag LOADING. Source: platform documentation, Resources > Message > Message Flags. */
const LOADING = 1 << 7;

const isFor = (visibleTo: string, member: string) => visibleTo === 'everyone' || visibleTo === member;

function shownFile(
  { id, name, size, contentType }: FileView,
  { attachments }: MessageView['raw'],
): ShownFile {
  const { width, height } = attachments.find(one => one.id === id) ?? {};
  return { id, name, size, contentType, ...(width && height && { width, height }) };
}

const shownForm = (form: OpenForm): ShownForm => ({ interaction: form.interactionId, raw: form.raw });
