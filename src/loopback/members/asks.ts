/** Turns what a member does into an interaction, refusing what the platform's client would not let through. */

import { privateChannel } from '../http/directory-routes.ts';
import type { Ask } from '../interactions/ask.ts';
import { interactionTypes } from '../interactions/live.ts';
import type { Action, Options, Place } from '../interface/people.ts';
import type { MessageView } from '../interface/views.ts';
import type { Kernel } from '../kernel.ts';
import { holds, permissionBits } from '../permissions.ts';
import { Refused } from '../refused.ts';
import { type Json, listOf, numberOf, recordOf } from '../state/json.ts';
import type { MessageRecord } from '../state/messages.ts';
import type { ChannelRecord } from '../state/room.ts';
import { memberPermissions } from '../state/serializers.ts';
import { walk } from '../writing/finish-components.ts';
import { checkCount, fillForm, pickValues } from './fields.ts';
import { fillOptions, notPossible } from './options.ts';
import { Resolved } from './resolved.ts';

export interface Actor {
  readonly userId: string;
  readonly guildId: string;
}

/** The channel a member acts in. */
export function placeOf(kernel: Kernel, actor: Actor, place: Place = {}): ChannelRecord {
  if (place.context === 'bot-dm' || place.context === 'elsewhere')
    return privateChannel(kernel, actor.userId, place.context);
  const guild = kernel.room.guilds.get(actor.guildId);
  const channel = place.channel
    ? kernel.room.channels.get(place.channel.id)
    : guild?.channels.values().next().value;
  if (!channel) throw notPossible('there is no channel to act in');
  if (channel.guildId !== actor.guildId) throw notPossible('the channel belongs to another guild');
  return channel;
}

export function askOf(kernel: Kernel, actor: Actor, action: Action, place?: Place): Ask {
  switch (action.do) {
    case 'run':
      return commandAsk(kernel, actor, { command: action.command, options: action.options ?? {} }, place);
    case 'menu':
      return menuAsk(kernel, actor, action, place);
    case 'press':
      return componentAsk(kernel, actor, action.message, action.customId, undefined);
    case 'choose':
      return componentAsk(kernel, actor, action.message, action.customId, action.values);
    case 'submit':
      return formAsk(kernel, actor, action);
  }
}

/** A slash command, or with `focused` its autocomplete. */
export function commandAsk(
  kernel: Kernel,
  actor: Actor,
  given: { readonly command: string; readonly options: Options; readonly focused?: string },
  place?: Place,
): Ask {
  const channel = placeOf(kernel, actor, place);
  const [name = '', ...path] = given.command.trim().replace(/^\//, '').split(/\s+/);
  const command = usable(kernel, actor, channel, name, 1);
  const filled = fillOptions(kernel, {
    command,
    path,
    options: given.options,
    guildId: channel.guildId,
    ...(given.focused !== undefined && { focused: given.focused }),
  });
  return {
    type: given.focused === undefined ? interactionTypes.command : interactionTypes.autocomplete,
    userId: actor.userId,
    channel,
    what: `/${[name, ...path].join(' ')}`,
    focusedType: filled.focusedType,
    data: {
      ...namesOf(command),
      options: filled.options,
      ...(filled.resolved && { resolved: filled.resolved }),
    },
  };
}

function menuAsk(kernel: Kernel, actor: Actor, action: Action & { do: 'menu' }, place?: Place): Ask {
  const { target } = action;
  const isMessage = 'channelId' in target;
  const channel = isMessage ? channelOf(kernel, target) : placeOf(kernel, actor, place);
  const command = usable(kernel, actor, channel, action.name, isMessage ? 3 : 2);
  const resolved = new Resolved(kernel, channel.guildId);
  if (isMessage) resolved.message(visible(kernel, actor, target).message.id);
  else resolved.person(target.id, 6, action.name);
  return {
    type: interactionTypes.command,
    userId: actor.userId,
    channel,
    what: action.name,
    data: { ...namesOf(command), target_id: target.id, resolved: resolved.json() },
  };
}

const namesOf = (command: { id: string; name: string; type: unknown; guild_id?: string }): Json => ({
  id: command.id,
  name: command.name,
  type: command.type,
  ...(command.guild_id !== undefined && { guild_id: command.guild_id }),
});

/** A registered command that this member may use here. */
function usable(kernel: Kernel, actor: Actor, channel: ChannelRecord, name: string, type: number) {
  const command = kernel.commands.find(name, type, channel.guildId);
  if (!command) throw new Refused(404, 10063, `there is no ${type === 1 ? '/' : ''}${name}`);
  const contexts = listOf((command as unknown as Json).contexts);
  const here = { guild: 0, 'bot-dm': 1, elsewhere: 2 }[channel.context];
  if (contexts.length > 0 && !contexts.includes(here))
    throw new Refused(404, 10063, `${name} is not offered here`);
  const guild = kernel.room.guilds.get(channel.guildId ?? '');
  // Where the bot is not, only what a member may install for themselves: Application Commands > Installation Context.
  const brought = guild?.foreign === true || channel.context === 'elsewhere';
  const installed = listOf((command as unknown as Json).integration_types);
  if (brought && installed.length > 0 && !installed.includes(1))
    throw new Refused(404, 10063, `${name} is not offered here`);
  const member = guild?.members.get(actor.userId);
  if (!guild || !member) return command;
  const held = memberPermissions(guild, member);
  const needed = command.default_member_permissions ?? undefined;
  const isAllowed =
    needed === undefined ||
    (needed === '0' ? holds(held, permissionBits.administrator) : holds(held, BigInt(needed)));
  if (!isAllowed || !holds(held, permissionBits.useApplicationCommands))
    throw new Refused(403, 50013, `${name} is not for this member`);
  return command;
}

function componentAsk(
  kernel: Kernel,
  actor: Actor,
  message: MessageView,
  customId: string,
  values: readonly string[] | undefined,
): Ask {
  const record = visible(kernel, actor, message);
  const component = [...walk(record.message.components ?? [])].find(part => part.custom_id === customId);
  if (!component) throw notPossible(`the message has no "${customId}"`);
  if (component.disabled === true) throw notPossible(`"${customId}" is disabled`);
  const type = numberOf(component.type, 0);
  if ((type === 2) !== (values === undefined))
    throw notPossible(`"${customId}" is ${type === 2 ? 'a button' : 'a menu'}`);
  const channel = channelOf(kernel, message);
  const resolved = new Resolved(kernel, channel.guildId);
  if (values) checkCount(component, customId, values.length, true);
  const picked = values && pickValues(component, customId, values, resolved);
  const all = resolved.json();
  return {
    type: interactionTypes.component,
    userId: actor.userId,
    channel,
    sourceMessageId: record.message.id,
    what: `${values ? 'choose' : 'press'} ${customId}`,
    data: {
      custom_id: customId,
      component_type: type,
      id: component.id,
      ...(picked && { values: picked }),
      ...(all && { resolved: all }),
    },
  };
}

function formAsk(kernel: Kernel, actor: Actor, action: Action & { do: 'submit' }): Ask {
  const opened = kernel.forms.get(action.form.interactionId);
  if (!opened || opened.visibleTo !== actor.userId)
    throw notPossible('this form is not open before this member');
  const channel = kernel.room.channels.get(opened.channelId);
  if (!channel) throw notPossible('the channel of the form is gone');
  return {
    type: interactionTypes.form,
    userId: actor.userId,
    channel,
    ...(opened.sourceMessageId !== undefined && { sourceMessageId: opened.sourceMessageId }),
    what: `submit ${action.form.customId}`,
    data: fillForm(action.form, action.fields, new Resolved(kernel, channel.guildId)),
  };
}

function channelOf(kernel: Kernel, message: MessageView): ChannelRecord {
  const channel = kernel.room.channels.get(message.channelId);
  if (!channel) throw notPossible('the channel of the message is gone');
  return channel;
}

function visible(kernel: Kernel, actor: Actor, message: MessageView): MessageRecord {
  const record = kernel.messages.get(message.id);
  if (!record || (record.visibleTo !== 'everyone' && record.visibleTo !== actor.userId))
    throw notPossible('this member does not see that message');
  if (recordOf(record.message).channel_id !== message.channelId)
    throw notPossible('the message is elsewhere');
  return record;
}
