import type { Ending } from '../interactions/live.ts';
import type { Interactions } from '../interactions/registry.ts';
import type { MessageView, OpenForm } from '../interface/views.ts';
import type {
  Action,
  Channel,
  Fields,
  Guild,
  Member,
  MemberFile,
  Options,
  Outcome,
  Place,
  Role,
} from '../interface.ts';
import type { Kernel } from '../kernel.ts';
import { holds, permissionBits } from '../permissions.ts';
import { Refused } from '../refused.ts';
import type { MemberRecord } from '../state/room.ts';
import { memberPermissions, userJson } from '../state/serializers.ts';
import { checkDraft, createMessage, deleteMessage } from '../writing/write.ts';
import { type Actor, askOf, commandAsk, placeOf } from './asks.ts';
import { messageView } from './views.ts';

/** A member's hands and eyes. See `Member` for what each method promises. */
export class SimulatedMember implements Member {
  readonly id: string;
  readonly guild: Guild;
  readonly #kernel: Kernel;
  readonly #interactions: Interactions;
  readonly #actor: Actor;

  constructor(kernel: Kernel, interactions: Interactions, guild: Guild, id: string) {
    this.#kernel = kernel;
    this.#interactions = interactions;
    this.guild = guild;
    this.id = id;
    this.#actor = { userId: id, guildId: guild.id };
  }

  get name(): string {
    return this.#record().user.name;
  }

  get user(): Member['user'] {
    return userJson(this.#record().user) as unknown as Member['user'];
  }

  async perform(action: Action, place?: Place): Promise<Outcome> {
    this.#record();
    const { ending } = this.#interactions.send(askOf(this.#kernel, this.#actor, action, place));
    return asOutcome(await ending);
  }

  run(command: string, options: Options = {}, place?: Place): Promise<MessageView> {
    return this.perform({ do: 'run', command, options }, place).then(asMessage);
  }

  openForm(command: string, options: Options = {}, place?: Place): Promise<OpenForm> {
    return this.perform({ do: 'run', command, options }, place).then(asForm);
  }

  async complete(command: string, options: Options, focused: string, place?: Place) {
    this.#record();
    const ask = commandAsk(this.#kernel, this.#actor, { command, options, focused }, place);
    const ending = await this.#interactions.send(ask).ending;
    return ending.kind === 'choices' ? ending.choices : [];
  }

  press(message: MessageView, customId: string): Promise<MessageView> {
    return this.perform({ do: 'press', message, customId }).then(asMessage);
  }

  pressForForm(message: MessageView, customId: string): Promise<OpenForm> {
    return this.perform({ do: 'press', message, customId }).then(asForm);
  }

  choose(message: MessageView, customId: string, values: readonly string[]): Promise<MessageView> {
    return this.perform({ do: 'choose', message, customId, values }).then(asMessage);
  }

  chooseForForm(message: MessageView, customId: string, values: readonly string[]): Promise<OpenForm> {
    return this.perform({ do: 'choose', message, customId, values }).then(asForm);
  }

  submit(form: OpenForm, fields: Fields): Promise<MessageView> {
    return this.perform({ do: 'submit', form, fields }).then(asMessage);
  }

  menu(name: string, target: MessageView | Member, place?: Place): Promise<MessageView> {
    return this.perform({ do: 'menu', name, target }, place).then(asMessage);
  }

  menuForForm(name: string, target: MessageView | Member, place?: Place): Promise<OpenForm> {
    return this.perform({ do: 'menu', name, target }, place).then(asForm);
  }

  async postMessage(text: string, files: readonly MemberFile[] = [], place?: Place): Promise<MessageView> {
    const record = this.#record();
    const channel = placeOf(this.#kernel, this.#actor, place);
    const draft = {
      body: { content: text },
      uploads: files.map((file, index) => ({ ...file, index: String(index) })),
    };
    checkDraft(this.#kernel, draft, []);
    const posted = createMessage(this.#kernel, {
      ...draft,
      channelId: channel.id,
      guildId: channel.guildId,
      visibleTo: 'everyone',
      author: userJson(record.user),
    });
    return messageView(this.#kernel, posted);
  }

  /** Source: Resources > Message > Message Snapshot Object, Message Reference Types (1 is a forward). */
  forward(message: MessageView, place?: Place): MessageView {
    const { user } = this.#record();
    const channel = placeOf(this.#kernel, this.#actor, place);
    const {
      id,
      channel_id,
      type,
      content,
      embeds,
      attachments,
      timestamp,
      edited_timestamp,
      flags,
      components,
    } = message.raw;
    const snapshot = { type, content, embeds, attachments, timestamp, edited_timestamp, flags, components };
    const forwarded = createMessage(this.#kernel, {
      body: {},
      uploads: [],
      channelId: channel.id,
      guildId: channel.guildId,
      visibleTo: 'everyone',
      author: userJson(user),
      extra: {
        message_reference: {
          type: 1,
          message_id: id,
          channel_id,
          ...(message.guildId !== undefined && { guild_id: message.guildId }),
        },
        message_snapshots: [{ message: { ...snapshot, mentions: [], mention_roles: [] } }],
      },
    });
    return messageView(this.#kernel, forwarded);
  }

  deleteMessage(message: MessageView): void {
    const record = this.#kernel.messages.get(message.id);
    if (!record) throw new Refused(404, 10008, 'Unknown Message');
    const isMine = record.message.author.id === this.id || record.visibleTo === this.id;
    const guild = this.#kernel.room.guilds.get(this.guild.id);
    const mayModerate =
      guild !== undefined &&
      record.guildId === guild.id &&
      record.visibleTo === 'everyone' &&
      holds(memberPermissions(guild, this.#record()), permissionBits.manageMessages);
    if (!isMine && !mayModerate) throw new Refused(403, 50013, 'Missing Permissions');
    deleteMessage(this.#kernel, record);
  }

  sees(place?: Place): readonly MessageView[] {
    const channel = placeOf(this.#kernel, this.#actor, place);
    return this.#kernel.messages
      .inChannel(channel.id)
      .filter(record => record.visibleTo === 'everyone' || record.visibleTo === this.id)
      .map(record => messageView(this.#kernel, record));
  }

  grant(change: Parameters<Member['grant']>[0]): void {
    const { user, permissions, roles } = this.#record();
    this.#kernel.record({
      kind: 'member-changed',
      guildId: this.guild.id,
      id: this.id,
      name: user.name,
      permissions: (change.permissions ?? permissions).toString(),
      roles: change.roles?.map(role => role.id) ?? roles,
      locale: change.locale ?? user.locale,
      directMessages: change.directMessages ?? user.directMessages,
    });
  }

  leave(): void {
    this.#kernel.record({ kind: 'member-left', guildId: this.guild.id, id: this.id });
  }

  #record(): MemberRecord {
    const record = this.#kernel.room.guilds.get(this.guild.id)?.members.get(this.id);
    if (!record) throw new Refused(404, 10007, 'this member has left the guild');
    return record;
  }
}

function asOutcome(ending: Ending): Outcome {
  if (ending.kind === 'choices') throw new Error('choices answer no action');
  return ending;
}

function asMessage(outcome: Outcome): MessageView {
  if (outcome.kind === 'message') return outcome.message;
  throw new Error(
    outcome.kind === 'form' ? `a form opened instead: ${outcome.form.title}` : 'nothing was shown',
  );
}

function asForm(outcome: Outcome): OpenForm {
  if (outcome.kind === 'form') return outcome.form;
  throw new Error(
    outcome.kind === 'message' ? `a message came instead: ${outcome.message.text}` : 'nothing was shown',
  );
}

/** A channel as the member side holds it. */
export function channelHandle(kernel: Kernel, id: string): Channel {
  const record = kernel.room.channels.get(id);
  if (!record?.guildId) throw new Error(`no channel ${id}`);
  const { name, guildId } = record;
  return {
    kind: 'channel',
    id,
    name,
    guildId,
    get archived() {
      return kernel.room.channels.get(id)?.archived ?? false;
    },
    archive: (locked = false) =>
      void kernel.record({ kind: 'thread-changed', guildId, id, archived: true, locked }),
    allowBot: permissions =>
      void kernel.record({ kind: 'channel-changed', id, botPermissions: permissions.toString() }),
    remove: () => void kernel.record({ kind: 'channel-removed', guildId, id }),
  };
}

/** A role as the member side holds it. */
export const roleHandle = (record: { readonly id: string; readonly name: string }): Role => ({
  kind: 'role',
  id: record.id,
  name: record.name,
});
