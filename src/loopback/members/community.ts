import type { Interactions } from '../interactions/registry.ts';
import type { Channel, Guild, Member, NewGuild, NewMember, Role } from '../interface/people.ts';
import type { Kernel } from '../kernel.ts';
import { everyonePermissions } from '../permissions.ts';
import type { GuildRecord } from '../state/room.ts';
import { channelHandle, roleHandle, SimulatedMember } from './simulated-member.ts';

/** A guild as the member side holds it. See `Guild` for what each method promises. */
export class Community implements Guild {
  readonly id: string;
  readonly name: string;
  readonly #kernel: Kernel;
  readonly #interactions: Interactions;

  constructor(kernel: Kernel, interactions: Interactions, record: Pick<GuildRecord, 'id' | 'name'>) {
    this.#kernel = kernel;
    this.#interactions = interactions;
    this.id = record.id;
    this.name = record.name;
  }

  get channels(): readonly Channel[] {
    return [...this.#record().channels.values()]
      .filter(({ form }) => form !== 'thread')
      .map(({ id }) => channelHandle(this.#kernel, id));
  }

  get members(): readonly Member[] {
    return [...this.#record().members.keys()].map(id => this.#member(id));
  }

  get threads(): readonly Channel[] {
    return [...this.#record().channels.values()]
      .filter(({ form }) => form === 'thread')
      .map(({ id }) => channelHandle(this.#kernel, id));
  }

  get calendar(): Guild['calendar'] {
    return [...this.#record().calendar.values()];
  }

  get roles(): readonly Role[] {
    return [...this.#record().roles.values()].map(roleHandle);
  }

  addMember(member: NewMember): Member {
    const id = member.id ?? this.#kernel.ids.next();
    this.#kernel.record({
      kind: 'member-joined',
      guildId: this.#record().id,
      id,
      name: member.name,
      permissions: (member.permissions ?? 0n).toString(),
      roles: member.roles?.map(role => role.id) ?? [],
      locale: member.locale ?? 'en-US',
      directMessages: member.directMessages ?? true,
    });
    return this.#member(id);
  }

  addChannel(name: string): Channel {
    return this.#add({ name });
  }

  addForum(name: string): Channel {
    return this.#add({ name, form: 'forum' });
  }

  addThread(name: string, parent = this.channels[0]): Channel {
    if (!parent) throw new Error('a thread needs a channel');
    return this.#add({ name, form: 'thread', parentId: parent.id });
  }

  #add(channel: { name: string; form?: 'forum' | 'thread'; parentId?: string }): Channel {
    const id = this.#kernel.ids.next();
    this.#kernel.record({ kind: 'channel-added', guildId: this.#record().id, id, ...channel });
    return channelHandle(this.#kernel, id);
  }

  addRole(name: string, permissions = 0n, mentionable = true): Role {
    const id = this.#kernel.ids.next();
    const guildId = this.#record().id;
    this.#kernel.record({
      kind: 'role-added',
      guildId,
      id,
      name,
      permissions: permissions.toString(),
      mentionable,
    });
    return roleHandle({ id, name });
  }

  removeBot(): void {
    this.#kernel.record({ kind: 'guild-removed', id: this.id });
  }

  #member(id: string): Member {
    return new SimulatedMember(this.#kernel, this.#interactions, this, id);
  }

  #record(): GuildRecord {
    const record = this.#kernel.room.guilds.get(this.id);
    if (!record) throw new Error(`the guild ${this.name} is gone`);
    return record;
  }
}

/** Founds a guild with its channels. */
export function foundGuild(kernel: Kernel, interactions: Interactions, guild: NewGuild): Guild {
  const id = guild.id ?? kernel.ids.next();
  kernel.record({
    kind: 'guild-added',
    id,
    name: guild.name,
    locale: guild.locale ?? 'en-US',
    ownerId: guild.ownerId ?? kernel.ids.next(),
    botPermissions: (guild.botPermissions ?? everyonePermissions).toString(),
    ...(guild.foreign && { foreign: true }),
  });
  const community = new Community(kernel, interactions, { id, name: guild.name });
  for (const name of guild.channels ?? ['general']) community.addChannel(name);
  return community;
}
