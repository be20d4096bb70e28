import { isDeepStrictEqual } from 'node:util';
import { type APIApplicationCommand, type APIPartialGuild, REST, Routes } from 'discord.js';
import type { CommandRegistry } from '../conversation/registry/registry.ts';
import { declarations } from './declare.ts';
import { inviteLink } from './invite.ts';

/** Where to register: everywhere, or in one group (there it shows at once). */
export type Target = { readonly token: string; readonly api?: string; readonly guild?: string };

/** Names of what was written to the platform, and of what stood there already. */
export type Registered = {
  readonly written: readonly string[];
  readonly removed: readonly string[];
  readonly kept: readonly string[];
  /** Groups whose own copies were taken away, since the commands now stand everywhere. */
  readonly clearedIn: readonly string[];
  /** Commands that also stand everywhere, and so show twice in the group: register everywhere, or remove those. */
  readonly doubled: readonly string[];
  /** Address at which a group's owner lets the assistant in, or a member installs it. */
  readonly invite: string;
};

type Named = { readonly name: string; readonly type?: number | undefined };
const isSame = (a: Named, b: Named) => a.name === b.name && (a.type ?? 1) === (b.type ?? 1);
const namesOf = (list: readonly Named[]) => list.map(({ name }) => name);

/**
 * Makes the platform's commands those of the registry, writing only what differs: the platform allows
 * 200 creations a day in a group. Commands of a group and those that stand everywhere are two lists, and what is
 * in both shows twice: registering everywhere clears the groups' copies, registering for a group names the others.
 */
export async function register(
  registry: CommandRegistry,
  { token, api, guild }: Target,
): Promise<Registered> {
  const rest = new REST(api ? { api } : {}).setToken(token);
  const { id } = (await rest.get(Routes.currentApplication())) as { id: string };
  const everywhere = Routes.applicationCommands(id);
  const all = guild ? Routes.applicationGuildCommands(id, guild) : everywhere;
  const asHere = <One extends object>(one: One) => (guild ? forGroup(one) : one);
  const standing = (await listed(rest, all)).map(asHere);
  const wanted = declarations(registry).map(asHere);

  const written = wanted.filter(
    one => !standing.some(other => isSame(one, other) && isDeepStrictEqual(essence(one), essence(other))),
  );
  const removed = standing.filter(one => !wanted.some(other => isSame(one, other)));
  for (const one of removed) await rest.delete(`${all}/${one.id}`);
  for (const one of written) await rest.post(all, { body: one });
  const isWanted = (one: Named) => wanted.some(other => isSame(one, other));
  return {
    written: namesOf(written),
    removed: namesOf(removed),
    kept: namesOf(wanted.filter(one => !written.includes(one))),
    clearedIn: guild ? [] : await clearGroups(rest, id, isWanted),
    doubled: guild ? namesOf((await listed(rest, everywhere)).filter(isWanted)) : [],
    invite: inviteLink(id),
  };
}

const listed = async (rest: REST, route: `/${string}`) =>
  (await rest.get(route, {
    query: new URLSearchParams({ with_localizations: 'true' }),
  })) as APIApplicationCommand[];

/** A declaration without what only commands that stand everywhere may say. */
function forGroup<Declared extends object>(declared: Declared): Declared {
  return { ...declared, contexts: undefined, integration_types: undefined };
}

/** Takes away the copies in single groups; gives the names of the groups that had some. */
async function clearGroups(
  rest: REST,
  id: string,
  isOurs: (one: Named) => boolean,
): Promise<readonly string[]> {
  const cleared: string[] = [];
  for (const { id: group, name } of await groupsOf(rest)) {
    const route = Routes.applicationGuildCommands(id, group);
    const copies = (await listed(rest, route)).filter(isOurs);
    for (const one of copies) await rest.delete(`${route}/${one.id}`);
    if (copies.length > 0) cleared.push(name);
  }
  return cleared;
}

/** The platform gives at most this many groups at a time. Source: Resources > User > Get Current User Guilds. */
const MOST_GROUPS = 200;

async function groupsOf(rest: REST): Promise<readonly APIPartialGuild[]> {
  const groups: APIPartialGuild[] = [];
  for (;;) {
    const after = groups.at(-1)?.id ?? '0';
    const query = new URLSearchParams({ limit: String(MOST_GROUPS), after });
    const page = (await rest.get(Routes.userGuilds(), { query })) as APIPartialGuild[];
    groups.push(...page);
    if (page.length < MOST_GROUPS) return groups;
  }
}

/** What of a declaration is ours to decide; a field that is missing, null, false or empty counts as none. */
function essence(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(essence);
  if (typeof value !== 'object' || value === null) return value;
  const ours = Object.entries(value).filter(
    ([key, inner]) =>
      OURS.has(key) && inner !== undefined && inner !== null && inner !== false && !isEmpty(inner),
  );
  return Object.fromEntries(
    ours
      .map(([key, inner]) => [key, key.endsWith('_localizations') ? inner : essence(inner)] as const)
      .sort(([a], [b]) => a.localeCompare(b)),
  );
}

const isEmpty = (value: unknown) => value === '' || (Array.isArray(value) && value.length === 0);

const OURS = new Set(
  `type name name_localizations description description_localizations contexts integration_types options required
   choices value autocomplete min_value max_value min_length max_length channel_types`.split(/\s+/),
);
