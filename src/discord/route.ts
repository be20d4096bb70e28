import {
  ApplicationCommandOptionType,
  type AutocompleteInteraction,
  type ChatInputCommandInteraction,
  type CommandInteractionOption,
  ComponentType,
  type Interaction,
  type Message,
  type MessageComponentInteraction,
  type MessageContextMenuCommandInteraction,
  type ModalSubmitInteraction,
  PermissionFlagsBits,
  type Attachment as PlatformAttachment,
} from 'discord.js';
import type { Attachment, Given, OptionValue, Origin, Question } from '../conversation/question.ts';
import { languageOf } from '../words/index.ts';
import { download } from './download.ts';
import { hereOf, isBroughtAlong, lacksBesideIn, lacksIn } from './here.ts';

/** Kinds of interaction that are questions to us. */
export type Routed =
  | ChatInputCommandInteraction
  | AutocompleteInteraction
  | MessageComponentInteraction
  | ModalSubmitInteraction
  | MessageContextMenuCommandInteraction;

/** Origins that attachments are fetched from. */
type Origins = ReadonlySet<string>;

/**
 * An interaction as a question; undefined for kinds that we never offer. Throws an Error for one that lacks what
 * its kind must have.
 */
export function questionOf(interaction: Interaction, origins: Origins): Question | undefined {
  const origin = originOf(interaction);
  if (interaction.isChatInputCommand())
    return { ...origin, kind: 'command', ...commandOf(interaction, origins) };
  if (interaction.isAutocomplete()) {
    const { name, value } = interaction.options.getFocused(true);
    return {
      ...origin,
      kind: 'typing',
      ...commandOf(interaction, origins),
      option: name,
      typed: String(value),
    };
  }
  if (interaction.isMessageComponent()) {
    const values = 'values' in interaction ? interaction.values : [];
    return { ...origin, kind: 'follow', sealed: interaction.customId, values, fields: {} };
  }
  if (interaction.isModalSubmit())
    return {
      ...origin,
      kind: 'follow',
      sealed: interaction.customId,
      values: [],
      fields: fieldsOf(interaction, origins),
    };
  if (interaction.isMessageContextMenuCommand()) {
    const { id, channelId } = interaction.targetMessage;
    const message = { id, channel: channelId, ...saidIn(interaction.targetMessage, origins) };
    return { ...origin, kind: 'point', entry: interaction.commandName, message };
  }
  return undefined;
}

/** What a message says and shows, and what of others it forwards. */
function saidIn(message: Message, origins: Origins) {
  const all = [message, ...(message.messageSnapshots?.values() ?? [])];
  return {
    text: all
      .map(({ content }) => content ?? '')
      .filter(text => text !== '')
      .join('\n'),
    attachments: all.flatMap(
      ({ attachments }) => attachments?.map(attachment => attachmentOf(attachment, origins)) ?? [],
    ),
  };
}

function originOf(interaction: Interaction): Origin {
  const { id, user, member, guildId, channelId, createdTimestamp, memberPermissions } = interaction;
  const joined =
    member && 'joinedTimestamp' in member ? member.joinedTimestamp : Date.parse(member?.joined_at ?? '');
  const roles = member ? (Array.isArray(member.roles) ? member.roles : [...member.roles.cache.keys()]) : [];
  return {
    id,
    at: createdTimestamp,
    asker: {
      id: user.id,
      name: (member && 'displayName' in member && member.displayName) || user.displayName,
      manages: memberPermissions?.has(PermissionFlagsBits.ManageGuild) ?? false,
      roles,
      ...(joined && { joinedAt: joined }),
    },
    // Direct messages are a group of one; so is wherever a member brought us along: that group's own is not theirs.
    group: guildId === null || isBroughtAlong(interaction) ? `direct-${user.id}` : guildId,
    channel: channelId ?? undefined,
    here: hereOf(interaction),
    readsMarks: true,
    opensFolds: true,
    language: languageOf(interaction.locale),
    locale: interaction.locale,
  };
}

function commandOf(interaction: ChatInputCommandInteraction | AutocompleteInteraction, origins: Origins) {
  const sub = interaction.options.getSubcommand(false);
  const [first] = interaction.options.data;
  const options = sub ? (first?.options ?? []) : interaction.options.data;
  const path = [interaction.commandName, ...(sub ? [sub] : [])];
  return {
    path,
    given: Object.fromEntries(options.flatMap(option => givenOf(option, interaction, origins))),
  };
}

function givenOf(
  option: CommandInteractionOption,
  interaction: Interaction,
  origins: Origins,
): [string, OptionValue][] {
  const { name, value, attachment } = option;
  if (attachment) return [[name, attachmentOf(attachment as PlatformAttachment, origins)]];
  const named = namedBy(option, interaction);
  if (named) return [[name, named]];
  return value === undefined ? [] : [[name, value]];
}

/** A member, role or channel picked in one of the platform's own options. */
function namedBy({ type, value, user, role, channel }: CommandInteractionOption, { guild }: Interaction) {
  const id = String(value);
  switch (type) {
    case ApplicationCommandOptionType.User:
      return { kind: 'member', id, name: user?.displayName ?? id } as const;
    case ApplicationCommandOptionType.Role:
      return { kind: 'role', id, name: role?.name ?? id, canBeCalled: canCall(id, guild) } as const;
    case ApplicationCommandOptionType.Channel: {
      const known = guild?.channels.cache.get(id);
      const me = guild?.members.me;
      const may = known && me ? known.permissionsFor(me) : null;
      const [lacks, lacksBeside] = [lacksIn(known ?? null, may), lacksBesideIn(known ?? null, may)];
      return { kind: 'channel', id, name: channel?.name ?? id, lacks, lacksBeside } as const;
    }
    default:
      return undefined;
  }
}

/** A role is called where it lets itself be, or where we may call everybody. Source: Resources > Message > Allowed Mentions. */
const canCall = (role: string, guild: Interaction['guild']): boolean =>
  guild?.roles.cache.get(role)?.mentionable === true ||
  guild?.members.me?.permissions.has(PermissionFlagsBits.MentionEveryone) === true;

function fieldsOf({ fields }: ModalSubmitInteraction, origins: Origins): Given {
  const given: Record<string, OptionValue> = {};
  for (const [name, field] of fields.fields) {
    if (field.type === ComponentType.TextInput && field.value !== '') given[name] = field.value;
    else if (
      (field.type === ComponentType.StringSelect || field.type === ComponentType.CheckboxGroup) &&
      field.values.length > 0
    )
      given[name] = field.values.join(' ');
    else if (field.type === ComponentType.RadioGroup && field.value) given[name] = field.value;
    else if (field.type === ComponentType.FileUpload) {
      // Absent where no file was sent, whatever the library types say.
      const file = (field.attachments as typeof field.attachments | undefined)?.first();
      if (file) given[name] = attachmentOf(file, origins);
    }
  }
  return given;
}

const attachmentOf = (
  { id, name, contentType, size, url }: PlatformAttachment,
  origins: Origins,
): Attachment => ({
  id,
  name,
  mediaType: contentType ?? undefined,
  size,
  read: () => download(url, size, origins),
});
