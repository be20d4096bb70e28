import {
  type APIApplicationCommandBasicOption,
  type APIApplicationCommandOption,
  ApplicationCommandType,
  ApplicationIntegrationType,
  ChannelType,
  type RESTPostAPIApplicationCommandsJSONBody as Declaration,
  InteractionContextType,
  type LocalizationMap,
  ApplicationCommandOptionType as OptionType,
} from 'discord.js';
import { type Action, type Command, isAction } from '../conversation/command.ts';
import type { DeclaredOption } from '../conversation/declared.ts';
import type { CommandRegistry } from '../conversation/registry/registry.ts';
import { LOCALES } from '../words/locales.ts';
import type { Language, Phrase } from '../words/sentence.ts';

/** The phrase for every locale but those of English, in which commands are declared. */
const localised = (phrase: Phrase): LocalizationMap =>
  Object.fromEntries(
    Object.entries(phrase).flatMap(([language, text]) =>
      language === 'en' ? [] : LOCALES[language as Language].map(locale => [locale, text]),
    ),
  );

const described = (says: Phrase) => ({ description: says.en, description_localizations: localised(says) });

/** Where a group let us in: in the group, and in messages between a member and us. */
const IN_GROUPS = {
  integration_types: [ApplicationIntegrationType.GuildInstall],
  contexts: [InteractionContextType.Guild, InteractionContextType.BotDM],
};
/** Besides, wherever a member who installed us for themselves brings us along. */
const ANYWHERE = {
  integration_types: [ApplicationIntegrationType.GuildInstall, ApplicationIntegrationType.UserInstall],
  contexts: [
    InteractionContextType.Guild,
    InteractionContextType.BotDM,
    InteractionContextType.PrivateChannel,
  ],
};

/** Declared for a whole command: its other subcommands say by themselves that they belong to a group. */
const goesAnywhere = ({ does }: Command): boolean =>
  isAction(does) ? does.anywhere : Object.values(does).some(({ anywhere }) => anywhere);

/** What the platform is told of the commands: slash commands first, then the entries of the message menu. */
export function declarations({ commands, menuEntries }: CommandRegistry): readonly Declaration[] {
  return [
    ...commands.map(slashDeclaration),
    ...[...menuEntries.values()].map(
      ({ name, anywhere }): Declaration => ({
        type: ApplicationCommandType.Message,
        name: name.en,
        name_localizations: localised(name),
        ...(anywhere ? ANYWHERE : IN_GROUPS),
      }),
    ),
  ];
}

function slashDeclaration(command: Command): Declaration {
  const { name, purpose, does } = command;
  return {
    type: ApplicationCommandType.ChatInput,
    name,
    ...described(purpose),
    ...(goesAnywhere(command) ? ANYWHERE : IN_GROUPS),
    options: isAction(does)
      ? does.options.map(optionDeclaration)
      : Object.entries(does).map(([sub, action]) => subcommandDeclaration(sub, action)),
  };
}

const subcommandDeclaration = (name: string, { purpose, options }: Action): APIApplicationCommandOption => ({
  type: OptionType.Subcommand,
  name,
  ...described(purpose),
  options: options.map(optionDeclaration),
});

/** Channels that groups are told news in. */
const NEWS_CHANNELS = [
  ChannelType.GuildText,
  ChannelType.GuildAnnouncement,
  ChannelType.PublicThread,
] as const;

function optionDeclaration(option: DeclaredOption): APIApplicationCommandBasicOption {
  const { name, kind, says, required, least, most, completes, choices = [] } = option;
  const common = { name, ...described(says), required };
  const bounds = {
    ...(least !== undefined && { min_value: least }),
    ...(most !== undefined && { max_value: most }),
  };
  switch (kind) {
    case 'text': {
      const length = { min_length: 1, ...(most !== undefined && { max_length: most }) };
      return completes
        ? { ...common, type: OptionType.String, ...length, autocomplete: true }
        : { ...common, type: OptionType.String, ...length };
    }
    case 'choice':
      return {
        ...common,
        type: OptionType.String,
        choices: choices.map(({ value, label }) => ({
          name: label.en,
          name_localizations: localised(label),
          value,
        })),
      };
    case 'whole':
      return { ...common, type: OptionType.Integer, ...bounds };
    case 'number':
      return { ...common, type: OptionType.Number, ...bounds };
    case 'yes-no':
      return { ...common, type: OptionType.Boolean };
    case 'picture':
      return { ...common, type: OptionType.Attachment };
    case 'member':
      return { ...common, type: OptionType.User };
    case 'role':
      return { ...common, type: OptionType.Role };
    case 'channel':
      return { ...common, type: OptionType.Channel, channel_types: [...NEWS_CHANNELS] };
  }
}
