import {
  type AutocompleteInteraction,
  type ChatInputCommandInteraction,
  type CommandInteractionOption,
  ComponentType,
  type Interaction,
  type MessageComponentInteraction,
  type MessageContextMenuCommandInteraction,
  type ModalSubmitInteraction,
  PermissionFlagsBits,
  type Attachment as PlatformAttachment,
} from 'discord.js';
import type { Attachment, Given, OptionValue, Origin, Question } from '../conversation/question.ts';
import { languageOf } from '../words/index.ts';
import { download } from './download.ts';

/** Kinds of interaction that are questions to us. */
export type Routed =
  | ChatInputCommandInteraction
  | AutocompleteInteraction
  | MessageComponentInteraction
  | ModalSubmitInteraction
  | MessageContextMenuCommandInteraction;

/** An interaction as a question; undefined for kinds that we never offer. */
export function questionOf(interaction: Interaction): Question | undefined {
  const origin = originOf(interaction);
  if (interaction.isChatInputCommand()) return { ...origin, kind: 'command', ...commandOf(interaction) };
  if (interaction.isAutocomplete()) {
    const { name, value } = interaction.options.getFocused(true);
    return { ...origin, kind: 'typing', ...commandOf(interaction), option: name, typed: String(value) };
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
      fields: fieldsOf(interaction),
    };
  if (interaction.isMessageContextMenuCommand()) {
    const { id, channelId, content, attachments } = interaction.targetMessage;
    const message = { id, channel: channelId, text: content, attachments: attachments.map(attachmentOf) };
    return { ...origin, kind: 'point', entry: interaction.commandName, message };
  }
  return undefined;
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
    // Direct messages are a group of one.
    group: guildId ?? `direct-${user.id}`,
    channel: channelId ?? undefined,
    language: languageOf(interaction.locale),
    locale: interaction.locale,
  };
}

function commandOf(interaction: ChatInputCommandInteraction | AutocompleteInteraction) {
  const sub = interaction.options.getSubcommand(false);
  const [first] = interaction.options.data;
  const options = sub ? (first?.options ?? []) : interaction.options.data;
  const path = [interaction.commandName, ...(sub ? [sub] : [])];
  return { path, given: Object.fromEntries(options.flatMap(givenOf)) };
}

function givenOf({ name, value, attachment }: CommandInteractionOption): [string, OptionValue][] {
  if (attachment) return [[name, attachmentOf(attachment as PlatformAttachment)]];
  return value === undefined ? [] : [[name, value]];
}

function fieldsOf({ fields }: ModalSubmitInteraction): Given {
  const given: Record<string, OptionValue> = {};
  for (const [name, field] of fields.fields) {
    if (field.type === ComponentType.TextInput && field.value !== '') given[name] = field.value;
    else if (field.type === ComponentType.StringSelect && field.values.length > 0)
      given[name] = field.values.join(' ');
    else if (field.type === ComponentType.FileUpload) {
      const file = field.attachments.first();
      if (file) given[name] = attachmentOf(file);
    }
  }
  return given;
}

const attachmentOf = ({ id, name, contentType, size, url }: PlatformAttachment): Attachment => ({
  id,
  name,
  mediaType: contentType ?? undefined,
  size,
  read: () => download(url, size),
});
