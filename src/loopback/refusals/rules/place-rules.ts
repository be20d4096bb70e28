/** Refusal rows about channels, guilds, people and the bot's rights. Columns: see `row.ts`. */
import type { Rule } from './row.ts';

export const placeRules = {
  unauthorised: {
    what: 'a bot route without a bot token',
    status: 401,
    number: 0,
    code: 'UNAUTHORIZED',
    where: 'Reference > Authentication',
  },
  'channel-unknown': {
    what: 'a channel that is not there',
    status: 404,
    number: 10003,
    code: 'UNKNOWN',
    where: 'Topics > Opcodes and Status Codes',
  },
  'channel-hidden': {
    what: 'a channel the bot may not view',
    status: 403,
    number: 50001,
    code: 'ACCESS',
    where: 'Topics > Permissions',
  },
  'channel-closed': {
    what: 'posting or attaching without the permission',
    status: 403,
    number: 50013,
    code: 'PERMISSION',
    where: 'Resources > Message > Create Message',
  },
  'channel-not-text': {
    what: 'a message in a channel that takes posts only',
    number: 50008,
    code: 'CHANNEL',
    where: 'Topics > Opcodes and Status Codes',
  },
  'thread-archived': {
    what: 'an edit in an archived thread',
    number: 50083,
    code: 'ARCHIVED',
    where: 'Topics > Opcodes and Status Codes',
  },
  'thread-locked': {
    what: 'a message in a locked thread',
    number: 160005,
    code: 'LOCKED',
    where: 'Topics > Opcodes and Status Codes',
  },
  'direct-messages-closed': {
    what: 'a direct message to someone who lets none in',
    status: 403,
    number: 50007,
    code: 'CLOSED',
    where: 'Topics > Opcodes and Status Codes',
  },
  'user-unknown': {
    what: 'a user that is not there',
    status: 404,
    number: 10013,
    code: 'UNKNOWN',
    where: 'Topics > Opcodes and Status Codes',
  },
  'member-unknown': {
    what: 'a member that is not there',
    status: 404,
    number: 10007,
    code: 'UNKNOWN',
    where: 'Topics > Opcodes and Status Codes',
  },
  'guild-unknown': {
    what: 'a guild that is not there',
    status: 404,
    number: 10004,
    code: 'UNKNOWN',
    where: 'Topics > Opcodes and Status Codes',
  },
  'message-unknown': {
    what: 'a message that is not there, or not for the bot',
    status: 404,
    number: 10008,
    code: 'UNKNOWN',
    where: 'Topics > Opcodes and Status Codes',
  },
  'message-of-another': {
    what: "editing someone else's message",
    status: 403,
    number: 50005,
    code: 'AUTHOR',
    where: 'Topics > Opcodes and Status Codes',
  },
} as const satisfies Record<string, Rule>;
