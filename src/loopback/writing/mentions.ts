import { holds, permissionBits } from '../permissions.ts';
import { type Json, listOf, recordOf, textOf } from '../state/json.ts';
import type { Room } from '../state/room.ts';
import { botJson, userJson } from '../state/serializers.ts';
import { walk } from './finish-components.ts';

/** Whom a message pings: those its texts name, as far as allowed_mentions lets it (absent: all). */
export function pinged(
  room: Room,
  body: Json,
  components: readonly Json[],
  guildId: string | undefined,
): Json {
  const texts = [...walk(components)].map(component => textOf(component.content) ?? '');
  const text = [textOf(body.content) ?? '', ...texts].join('\n');
  const allowed = body.allowed_mentions;
  const may = (kind: 'users' | 'roles' | 'everyone', id = ''): boolean =>
    allowed === undefined ||
    allowed === null ||
    listOf(recordOf(allowed).parse).includes(kind) ||
    listOf(recordOf(allowed)[kind]).includes(id);
  const ids = (pattern: RegExp): readonly string[] => [
    ...new Set([...text.matchAll(pattern)].map(match => match[1] ?? '')),
  ];
  const users = ids(/<@!?(\d+)>/g).flatMap(id => {
    const user = room.users.get(id);
    return id === room.applicationId
      ? [{ id, json: botJson(room) }]
      : user
        ? [{ id, json: userJson(user) }]
        : [];
  });
  const guild = guildId === undefined ? undefined : room.guilds.get(guildId);
  const callsAll = guild !== undefined && holds(guild.botPermissions, permissionBits.mentionEveryone);
  const isCalled = (id: string) => {
    const role = guild?.roles.get(id);
    return role !== undefined && (callsAll || role.mentionable);
  };
  return {
    mentions: users.filter(user => may('users', user.id)).map(({ json }) => json),
    mention_roles: ids(/<@&(\d+)>/g).filter(id => isCalled(id) && may('roles', id)),
    mention_everyone: /@(everyone|here)\b/.test(text) && may('everyone'),
  };
}
