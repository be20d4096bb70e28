import { z } from 'zod';
import { type Guild, type Host, type Member, permissionBits } from '../loopback/index.ts';
import { LOCALES, languageOf } from '../words/locales.ts';
import { LANGUAGES } from '../words/sentence.ts';
import type { Language, NewSeat, Seat } from './model.ts';

/** Ids of the first group and member: the same in every room, so that a shelf outlives the room's own history. */
export const HOME = { group: '110000000000000001', member: '110000000000000002' };

type People = ReadonlyMap<string, { readonly permissions: string; readonly locale: string }>;

/** Every seat there is, group by group. */
export function seatsOf(host: Host, people: People): readonly Seat[] {
  return host.guilds.flatMap(guild =>
    guild.members.map(member => {
      const { permissions = '0', locale = '' } = people.get(keyOf(guild.id, member.id)) ?? {};
      return {
        member: member.id,
        name: member.name,
        group: guild.id,
        groupName: guild.name,
        steward: (BigInt(permissions) & permissionBits.manageGuild) !== 0n,
        language: languageOf(locale),
      } satisfies Seat;
    }),
  );
}

export const keyOf = (group: string, member: string) => `${group}/${member}`;

/** The member of a group; undefined when there is none. */
export function memberAt(host: Host, group: string, member: string): Member | undefined {
  return groupAt(host, group)?.members.find(({ id }) => id === member);
}

const groupAt = (host: Host, group: string): Guild | undefined => host.guilds.find(({ id }) => id === group);

/** Founds the first group with one seat, unless the room has one. */
export function furnish(host: Host, first: { groupName: string; name: string; language: Language }): void {
  if (host.guilds.length > 0) return;
  const { groupName, name, language } = first;
  host
    .addGuild({ id: HOME.group, name: groupName, locale: LOCALES[language][0], channels: ['bench'] })
    .addMember({
      id: HOME.member,
      name,
      permissions: permissionBits.manageGuild,
      locale: LOCALES[language][0],
    });
}

/** As the page's own form has it: names of at most 60 characters. */
const newSeat = z.object({
  name: z.string().min(1).max(60),
  group: z.string().max(20).optional(),
  groupName: z.string().max(60).optional(),
  steward: z.boolean(),
  language: z.enum(LANGUAGES),
});

/** Makes a seat, in a group there is or a new one. Undefined when the group is unknown. */
export function addSeat(host: Host, wanted: NewSeat): { group: string; member: string } | undefined {
  const read = newSeat.safeParse(wanted);
  if (!read.success) return undefined;
  const { group, groupName, name, steward, language } = read.data;
  const guild =
    group === undefined
      ? host.addGuild({ name: groupName || name, locale: LOCALES[language][0], channels: ['bench'] })
      : groupAt(host, group);
  const member = guild?.addMember({
    name,
    locale: LOCALES[language][0],
    ...(steward && { permissions: permissionBits.manageGuild }),
  });
  return guild && member && { group: guild.id, member: member.id };
}
