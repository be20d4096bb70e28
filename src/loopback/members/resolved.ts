import type { MemberFile } from '../interface/views.ts';
import type { Kernel } from '../kernel.ts';
import { Refused } from '../refused.ts';
import type { Json } from '../state/json.ts';
import {
  channelJson,
  memberPermissions,
  partialMemberJson,
  roleJson,
  userJson,
} from '../state/serializers.ts';

/** Collects the people, roles, channels and files that an interaction names. Source: Receiving and Responding > Resolved Data. */
export class Resolved {
  readonly #kernel: Kernel;
  readonly #guildId: string | undefined;
  readonly #maps: Record<string, Record<string, unknown>> = {};

  constructor(kernel: Kernel, guildId: string | undefined) {
    this.#kernel = kernel;
    this.#guildId = guildId;
  }

  /** Undefined when nothing was named. */
  json(): Json | undefined {
    return Object.keys(this.#maps).length === 0 ? undefined : this.#maps;
  }

  /** Stores a member's file and gives its id. */
  upload(file: MemberFile): string {
    if (file.bytes.byteLength > this.#kernel.settings.attachmentSizeLimit)
      throw new Refused(413, 40005, `${file.name} is larger than this place takes`);
    const event = this.#kernel.files.storing(this.#kernel.ids.next(), file);
    this.#kernel.record(event);
    this.#put('attachments', event.id, this.#kernel.files.attachmentJson(event, { ephemeral: true }));
    return event.id;
  }

  /** Notes what an id stands for; `type` is the option type (6 user, 7 channel, 8 role, 9 user or role). */
  person(id: string, type: number, name: string): string {
    const { room } = this.#kernel;
    const guild = this.#guildId === undefined ? undefined : room.guilds.get(this.#guildId);
    const user = type === 6 || type === 9 ? room.users.get(id) : undefined;
    const role = type === 8 || type === 9 ? guild?.roles.get(id) : undefined;
    const channel = type === 7 ? guild?.channels.get(id) : undefined;
    if (!user && !role && !channel && !/^\d+$/.test(id))
      return this.person(this.#idOf(id, type, name), type, name);
    if (user) {
      this.#put('users', id, userJson(user));
      const member = guild?.members.get(id);
      if (guild && member) this.#put('members', id, partialMemberJson(guild, member));
    } else if (role) this.#put('roles', id, roleJson(role));
    else if (channel && guild) {
      const owner = guild.members.get(guild.ownerId);
      const permissions = owner ? memberPermissions(guild, owner) : channel.botPermissions;
      this.#put('channels', id, { ...channelJson(channel, room), permissions: permissions.toString() });
    } else throw new Refused(400, 50035, `"${name}" names nobody and nothing here: ${id}`);
    return id;
  }

  /** The client finds people, roles and channels by their names too. */
  #idOf(text: string, type: number, option: string): string {
    const guild = this.#guildId === undefined ? undefined : this.#kernel.room.guilds.get(this.#guildId);
    const wanted = text.replace(/^[@#]/, '').toLowerCase();
    const people = [...(guild?.members.values() ?? [])].map(({ user }) => user);
    const among = {
      6: people,
      7: [...(guild?.channels.values() ?? [])],
      8: [...(guild?.roles.values() ?? [])],
    };
    const found = (among[type as 6 | 7 | 8] ?? people).find(({ name }) => name.toLowerCase() === wanted);
    if (!found) throw new Refused(400, 50035, `"${option}" names nobody and nothing here: ${text}`);
    return found.id;
  }

  message(id: string): string {
    const record = this.#kernel.messages.get(id);
    if (record) this.#put('messages', id, this.#kernel.files.freshMessage(record.message));
    return id;
  }

  #put(map: string, id: string, value: unknown): void {
    this.#maps[map] = { ...this.#maps[map], [id]: value };
  }
}
