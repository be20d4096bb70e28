import type { APIApplicationCommand } from 'discord-api-types/v10';
import type { Kernel } from '../kernel.ts';
import { checkDeclaration, checkDeclarations } from '../refusals/declaration.ts';
import { refusal } from '../refusals/findings.ts';
import { ruleOf } from '../refusals/rules.ts';
import { type Json, listOf, recordOf } from '../state/json.ts';
import { type Answer, type Call, noContent, ok, type Route } from './exchange.ts';

const dayMs = 24 * 60 * 60_000;
/** Menu entries of one type in a scope. Source: Interactions > Application Commands > Registering a Command. */
const menuLimit = 15;

/** Registration of commands, for everywhere or one guild. */
export function commandRoutes(kernel: Kernel): readonly Route[] {
  const creates = new Map<string, number[]>();

  /** Counts a create; the platform takes 200 a day in a scope. */
  const countCreate = (scope: string | undefined): void => {
    const now = kernel.settings.now();
    const recent = (creates.get(String(scope)) ?? []).filter(at => now - at < dayMs);
    if (recent.length >= (ruleOf('command-creates').limit ?? 0)) throw refusal('command-creates');
    creates.set(String(scope), [...recent, now]);
  };
  const scopeOf = (call: Call): string | undefined => {
    const [application, guildId] = call.params;
    if (application !== kernel.room.applicationId)
      throw refusal('application-unknown', 'Unknown Application');
    if (!call.path.includes('/guilds/')) return undefined;
    const guild = kernel.room.guilds.get(guildId ?? '');
    if (!guild || guild.foreign) throw refusal('guild-unknown', 'Unknown Guild');
    return guildId;
  };
  const found = (call: Call): APIApplicationCommand => {
    const command = kernel.commands.in(scopeOf(call)).find(known => known.id === call.params.at(-1));
    if (!command) throw refusal('command-unknown', 'Unknown application command');
    return command;
  };
  const save = (scope: string | undefined, commands: readonly APIApplicationCommand[]): void => {
    for (const [type, limit] of [
      [1, ruleOf('command-count').limit ?? 0],
      [2, menuLimit],
      [3, menuLimit],
    ] as const)
      if (commands.filter(command => Number(command.type) === type).length > limit)
        throw refusal('command-count');
    kernel.record({ kind: 'commands-changed', commands, ...(scope !== undefined && { guildId: scope }) });
  };
  const twinOf = (
    body: Json,
    commands: readonly APIApplicationCommand[],
  ): APIApplicationCommand | undefined =>
    commands.find(known => known.name === body.name && Number(known.type) === (body.type ?? 1));
  const finish = (
    body: Json,
    scope: string | undefined,
    twin: APIApplicationCommand | undefined,
  ): APIApplicationCommand => {
    if (!twin) countCreate(scope);
    return finished(kernel, body, scope, twin?.id);
  };

  const create = (call: Call): Answer => {
    const scope = scopeOf(call);
    checkDeclaration(call.body, scope);
    const before = kernel.commands.in(scope);
    const twin = twinOf(call.body, before);
    const command = finish(call.body, scope, twin);
    save(scope, [...before.filter(known => known !== twin), command]);
    return { status: twin ? 200 : 201, json: command };
  };
  const edit = (call: Call): Answer => {
    const scope = scopeOf(call);
    const old = found(call);
    const merged = { ...(old as unknown as Json), ...call.body };
    checkDeclaration(merged, scope);
    const others = kernel.commands.in(scope).filter(known => known !== old);
    if (twinOf(merged, others)) checkDeclarations([merged, ...others], scope);
    const command = finished(kernel, merged, scope, old.id);
    save(scope, [...others, command]);
    return ok(command);
  };
  const overwrite = (call: Call): Answer => {
    const scope = scopeOf(call);
    const bodies = (call.list ?? []).map(recordOf);
    checkDeclarations(bodies, scope);
    const before = kernel.commands.in(scope);
    const commands = bodies.map(body => finish(body, scope, twinOf(body, before)));
    save(scope, commands);
    return ok(commands);
  };
  const remove = (call: Call): Answer => {
    const gone = found(call);
    const scope = scopeOf(call);
    save(
      scope,
      kernel.commands.in(scope).filter(known => known !== gone),
    );
    return noContent;
  };

  return [/^\/applications\/(\d+)\/commands/, /^\/applications\/(\d+)\/guilds\/(\d+)\/commands/].flatMap(
    base => {
      const all = new RegExp(`${base.source}$`);
      const one = new RegExp(`${base.source}\\/(\\d+)$`);
      return [
        {
          method: 'GET',
          path: all,
          bot: true,
          handle: (call: Call) => {
            const commands = kernel.commands.in(scopeOf(call));
            return ok(call.query.get('with_localizations') === 'true' ? commands : unlocalized(commands));
          },
        },
        { method: 'POST', path: all, bot: true, handle: create },
        { method: 'PUT', path: all, bot: true, handle: overwrite },
        { method: 'GET', path: one, bot: true, handle: (call: Call) => ok(found(call)) },
        { method: 'PATCH', path: one, bot: true, handle: edit },
        { method: 'DELETE', path: one, bot: true, handle: remove },
      ];
    },
  );
}

/** The list as it is given where nobody asked for the other languages: Get Global Application Commands. */
const unlocalized = (commands: unknown): unknown =>
  JSON.parse(JSON.stringify(commands), (key, value: unknown) =>
    key === 'name_localizations' || key === 'description_localizations' ? undefined : value,
  );

/** A declaration as the platform stores and returns it. */
function finished(
  kernel: Kernel,
  body: Json,
  scope: string | undefined,
  id: string | undefined,
): APIApplicationCommand {
  return {
    id: id ?? kernel.ids.next(),
    application_id: kernel.room.applicationId,
    version: kernel.ids.next(),
    type: body.type ?? 1,
    name: body.name,
    name_localizations: body.name_localizations ?? null,
    description: body.description ?? '',
    description_localizations: body.description_localizations ?? null,
    default_member_permissions: body.default_member_permissions ?? null,
    nsfw: body.nsfw ?? false,
    ...(listOf(body.options).length > 0 && { options: body.options }),
    ...(scope === undefined
      ? { contexts: body.contexts ?? null, integration_types: body.integration_types ?? [0] }
      : { guild_id: scope }),
  } as unknown as APIApplicationCommand;
}
