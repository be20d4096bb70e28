/** Refusal rows about answers to interactions. Columns: see `row.ts`. */
import type { Rule } from './row.ts';

const length = 'BASE_TYPE_BAD_LENGTH';
const choices = 'BASE_TYPE_CHOICES';
const commandPage = 'Interactions > Application Commands';
const answerPage = 'Interactions > Receiving and Responding';

export const answerRules = {
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
