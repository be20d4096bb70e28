import {
  type APIApplicationCommandBasicOption,
  type APIApplicationCommandOption,
  ApplicationCommandType,
  type RESTPostAPIApplicationCommandsJSONBody as Declaration,
  InteractionContextType,
  type LocalizationMap,
  ApplicationCommandOptionType as OptionType,
} from 'discord.js';
import { type Action, type Command, isAction } from '../conversation/command.ts';
import type { DeclaredOption } from '../conversation/declared.ts';
import type { CommandRegistry } from '../conversation/registry.ts';
import type { Phrase } from '../words/sentence.ts';

const inSpanish = ({ es }: Phrase): LocalizationMap => ({ 'es-ES': es, 'es-419': es });

const described = (says: Phrase) => ({ description: says.en, description_localizations: inSpanish(says) });

const CONTEXTS = [InteractionContextType.Guild, InteractionContextType.BotDM];

/** What the platform is told of the commands: slash commands first, then the entries of the message menu. */
export function declarations({ commands, menuEntries }: CommandRegistry): readonly Declaration[] {
  return [
    ...commands.map(slashDeclaration),
    ...[...menuEntries.values()].map(
      ({ name }): Declaration => ({
        type: ApplicationCommandType.Message,
        name: name.en,
        name_localizations: inSpanish(name),
        contexts: CONTEXTS,
      }),
    ),
  ];
}

const slashDeclaration = ({ name, purpose, does }: Command): Declaration => ({
  type: ApplicationCommandType.ChatInput,
  name,
  ...described(purpose),
  contexts: CONTEXTS,
  options: isAction(does)
    ? does.options.map(optionDeclaration)
    : Object.entries(does).map(([sub, action]) => subcommandDeclaration(sub, action)),
});

const subcommandDeclaration = (name: string, { purpose, options }: Action): APIApplicationCommandOption => ({
  type: OptionType.Subcommand,
  name,
  ...described(purpose),
  options: options.map(optionDeclaration),
});

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
          name_localizations: inSpanish(label),
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
  }
}
