/** Refusal rows about command declarations. Columns: see `row.ts`. */
import type { Rule } from './row.ts';

const length = 'BASE_TYPE_BAD_LENGTH';
const choices = 'BASE_TYPE_CHOICES';
const commandPage = 'Interactions > Application Commands';

export const declarationRules = {
  'command-name': {
    what: 'a name off the pattern, in capitals, or over 32 characters',
    limit: 32,
    code: 'APPLICATION_COMMAND_INVALID_NAME',
    where: `${commandPage} > Naming`,
  },
  'menu-description': { what: 'a description or options on a menu entry', code: length, where: commandPage },
  'command-duplicate': {
    what: 'two commands of one type and name in one list',
    code: 'APPLICATION_COMMANDS_DUPLICATE_NAME',
    where: commandPage,
  },
  'command-count': {
    what: 'slash commands of a scope (menu entries: 15 of each type)',
    limit: 100,
    number: 30032,
    code: 'TOO_MANY',
    where: `${commandPage} > Registering a Command`,
  },
  'command-creates': {
    what: 'creates a day in a guild',
    limit: 200,
    number: 30034,
    code: 'TOO_MANY',
    where: `${commandPage} > Registering a Command`,
  },
  'command-size': {
    what: 'characters of names, descriptions and values of one command',
    limit: 8000,
    code: 'APPLICATION_COMMAND_TOO_LARGE',
    where: `${commandPage} > Slash Commands`,
  },
  'command-locale': {
    what: 'a language the platform does not have',
    code: choices,
    where: 'Reference > Locales',
  },
  'command-unknown': {
    what: 'a command that is not there',
    status: 404,
    number: 10063,
    code: 'UNKNOWN',
    where: 'Topics > Opcodes and Status Codes',
  },
  'command-global-only': {
    what: 'contexts or integration_types on a guild command',
    code: 'APPLICATION_COMMAND_GUILD_CONTEXTS',
    where: commandPage,
  },
  'application-unknown': {
    what: 'another application',
    status: 404,
    number: 10002,
    code: 'UNKNOWN',
    where: 'Topics > Opcodes and Status Codes',
  },
  'option-duplicate': {
    what: 'two options with one name',
    code: 'APPLICATION_COMMAND_OPTIONS_NAME_DUPLICATED',
    where: 'observed',
  },
  'option-order': {
    what: 'a required option after an optional one',
    code: 'APPLICATION_COMMAND_OPTIONS_REQUIRED_INVALID',
    where: `${commandPage} > Option Structure`,
  },
  'option-mixed': {
    what: 'options beside subcommands, or groups nested in groups',
    code: 'APPLICATION_COMMAND_OPTIONS_TYPE_INVALID',
    where: `${commandPage} > Subcommands and Groups`,
  },
  'option-choices-kind': {
    what: 'choices on a type that takes none, or together with autocomplete',
    code: 'APPLICATION_COMMAND_OPTIONS_CHOICES_INVALID',
    where: `${commandPage} > Option Structure`,
  },
  'option-range': {
    what: 'bounds on another type, upside down, or lengths outside 0-6000',
    limit: 6000,
    code: 'NUMBER_TYPE_MAX',
    where: `${commandPage} > Option Structure`,
  },
} as const satisfies Record<string, Rule>;
