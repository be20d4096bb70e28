import { isDeepStrictEqual } from 'node:util';
import { type APIApplicationCommand, REST, Routes } from 'discord.js';
import type { CommandRegistry } from '../conversation/registry.ts';
import { declarations } from './declare.ts';

/** Where to register: everywhere, or in one group (there it shows at once). */
export type Target = { readonly token: string; readonly api?: string; readonly guild?: string };

/** Names of what was written to the platform, and of what stood there already. */
export type Registered = {
  readonly written: readonly string[];
  readonly removed: readonly string[];
  readonly kept: readonly string[];
};

/**
 * Makes the platform's commands those of the registry, writing only what differs: the platform allows
 * 200 creations a day in a group.
 */
export async function register(
  registry: CommandRegistry,
  { token, api, guild }: Target,
): Promise<Registered> {
  const rest = new REST(api ? { api } : {}).setToken(token);
  const { id } = (await rest.get(Routes.currentApplication())) as { id: string };
  const all = guild ? Routes.applicationGuildCommands(id, guild) : Routes.applicationCommands(id);
  const standing = (await rest.get(all, {
    query: new URLSearchParams({ with_localizations: 'true' }),
  })) as APIApplicationCommand[];
  const wanted = declarations(registry);
  const same = (a: Named, b: Named) => a.name === b.name && (a.type ?? 1) === (b.type ?? 1);

  const written = wanted.filter(
    one => !standing.some(other => same(one, other) && isDeepStrictEqual(essence(one), essence(other))),
  );
  const removed = standing.filter(one => !wanted.some(other => same(one, other)));
  for (const one of removed) await rest.delete(`${all}/${one.id}`);
  for (const one of written) await rest.post(all, { body: one });
  const names = (list: readonly { name: string }[]) => list.map(one => one.name);
  return {
    written: names(written),
    removed: names(removed),
    kept: names(wanted.filter(one => !written.includes(one))),
  };
}

type Named = { readonly name: string; readonly type?: number | undefined };

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
  `type name name_localizations description description_localizations contexts options required choices value
   autocomplete min_value max_value min_length max_length`.split(/\s+/),
);
