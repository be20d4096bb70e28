/** Rows of the refusal table about forms, answers to interactions, and command declarations. See `rules.ts`. */
import { messageRules, type Rule } from './rules.ts';

const length = 'BASE_TYPE_BAD_LENGTH';
const choices = 'BASE_TYPE_CHOICES';
const kind = 'UNION_TYPE_CHOICES';
const commandPage = 'Interactions > Application Commands';
const answerPage = 'Interactions > Receiving and Responding';

const forms = {
  'form-title': {
    what: 'characters of a form title, from 1',
    limit: 45,
    code: length,
    where: `${answerPage} > Modal`,
  },
  'form-parts': {
    what: 'top-level components of a form, from 1',
    limit: 5,
    code: length,
    where: `${answerPage} > Modal`,
  },
  'form-part-kind': {
    what: 'anything but labels and texts in a form',
    code: kind,
    where: 'Components > Component Types',
  },
  'form-after-form': {
    what: 'a form that answers a form',
    code: choices,
    where: `${answerPage} > Interaction Callback Type`,
  },
  'label-text': {
    what: 'characters of a label, from 1',
    limit: 45,
    code: length,
    where: 'Components > Label',
  },
  'label-description': {
    what: 'characters of a label description',
    limit: 100,
    code: length,
    where: 'Components > Label',
  },
  'label-child': {
    what: 'a component that a label does not take',
    code: kind,
    where: 'Components > Label Child Components',
  },
  'text-input-style': {
    what: 'a text input style other than 1 or 2',
    code: choices,
    where: 'Components > Text Input Styles',
  },
  'text-input-range': {
    what: 'min_length 0-4000, max_length 1-4000, min not above max',
    limit: 4000,
    code: 'NUMBER_TYPE_MAX',
    where: 'Components > Text Input',
  },
  'text-input-value': {
    what: 'characters of a starting value',
    limit: 4000,
    code: length,
    where: 'Components > Text Input',
  },
  'text-input-placeholder': {
    what: 'characters of a text placeholder',
    limit: 100,
    code: length,
    where: 'Components > Text Input',
  },
  'form-disabled': {
    what: 'a disabled select in a form',
    code: 'COMPONENT_DISABLED_IN_MODAL',
    where: 'Components > String Select',
  },
  'form-min-required': {
    what: 'min_values 0 where an answer is required',
    code: 'NUMBER_TYPE_MIN',
    where: 'Components > String Select',
  },
  'radio-options': {
    what: 'options of a radio group, from 2',
    limit: 10,
    code: length,
    where: 'Components > Radio Group',
  },
  'tick-options': {
    what: 'options of a checkbox group, from 1',
    limit: 10,
    code: length,
    where: 'Components > Checkbox Group',
  },
  'upload-range': {
    what: 'min_values 0-10, max_values 1-10 of a file upload or checkbox group',
    limit: 10,
    code: 'NUMBER_TYPE_MAX',
    where: 'Components > File Upload',
  },
} as const satisfies Record<string, Rule>;

const answers = {
  'interaction-unknown': {
    what: 'an interaction that is not there',
    status: 404,
    number: 10062,
    code: 'UNKNOWN',
    where: answerPage,
  },
  'interaction-late': {
    what: 'the first answer after 3 seconds',
    limit: 3,
    status: 404,
    number: 10062,
    code: 'LATE',
    where: answerPage,
  },
  'acknowledged-twice': {
    what: 'a second first answer',
    number: 40060,
    code: 'TWICE',
    where: 'Topics > Opcodes and Status Codes',
  },
  'answer-kind': {
    what: 'a callback type that does not fit the interaction',
    code: choices,
    where: `${answerPage} > Interaction Callback Type`,
  },
  'defer-flags': {
    what: 'deferring with a flag other than ephemeral',
    code: 'BASE_TYPE_BAD_FLAGS',
    where: `${answerPage} > Interaction Callback Data`,
  },
  'choices-count': {
    what: 'autocomplete choices',
    limit: 25,
    code: length,
    where: `${answerPage} > Autocomplete`,
  },
  'choice-name': {
    what: 'characters of a choice name, from 1',
    limit: 100,
    code: length,
    where: `${commandPage} > Option Choice Structure`,
  },
  'choice-value': {
    what: 'a value of another type than its option, or over 100 characters',
    limit: 100,
    code: length,
    where: `${commandPage} > Option Choice Structure`,
  },
  'webhook-token': {
    what: 'a token that is unknown or older than 15 minutes',
    status: 401,
    number: 50027,
    code: 'TOKEN',
    where: answerPage,
  },
  'webhook-early': {
    what: 'a follow-up before the first answer',
    status: 404,
    number: 10015,
    code: 'UNKNOWN',
    where: 'observed',
  },
  'follow-ups-elsewhere': {
    what: 'follow-ups where the bot is not',
    limit: 5,
    number: 40094,
    code: 'TOO_MANY',
    where: 'Topics > Opcodes and Status Codes',
  },
} as const satisfies Record<string, Rule>;

const declarations = {
  'command-name': {
    what: 'a name off the pattern, in capitals, or over 32 characters',
    limit: 32,
    code: 'APPLICATION_COMMAND_INVALID_NAME',
    where: `${commandPage} > Naming`,
  },
  'command-description': {
    what: 'characters of a description, from 1',
    limit: 100,
    code: length,
    where: commandPage,
  },
  'menu-description': { what: 'a description or options on a menu entry', code: length, where: commandPage },
  'command-kind': {
    what: 'a command type other than 1, 2, 3',
    code: choices,
    where: `${commandPage} > Types`,
  },
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
  'command-permissions': {
    what: 'default_member_permissions that is not a bit set as text',
    code: 'BASE_TYPE_INVALID',
    where: commandPage,
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
  'option-kind': {
    what: 'an option type outside 1-11',
    code: choices,
    where: `${commandPage} > Option Type`,
  },
  'option-count': {
    what: 'options of a command, subcommand or group',
    limit: 25,
    code: length,
    where: commandPage,
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
  'option-choices': {
    what: 'choices of an option',
    limit: 25,
    code: length,
    where: `${commandPage} > Option Structure`,
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

/** The whole refusal table by row id. */
export const rules = { ...messageRules, ...forms, ...answers, ...declarations };
export type RuleId = keyof typeof rules;

/** A row with its optional columns. */
export const ruleOf = (id: RuleId): Rule => rules[id];
