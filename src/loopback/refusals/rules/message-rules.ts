/** Refusal rows about message bodies and files. Columns: see `row.ts`. */
import type { Rule } from './row.ts';

const length = 'BASE_TYPE_BAD_LENGTH';

export const messageRules = {
  'message-empty': {
    what: 'a message with nothing in it',
    number: 50006,
    code: 'EMPTY',
    where: 'Resources > Message > Create Message',
  },
  'content-length': {
    what: 'characters of content',
    limit: 2000,
    code: length,
    where: 'Resources > Message > Create Message',
  },
  'v2-excludes': {
    what: 'content, embeds, poll or stickers with IS_COMPONENTS_V2',
    code: 'MESSAGE_CANNOT_USE_LEGACY_FIELDS_WITH_COMPONENTS_V2',
    where: 'Components > Component Reference',
  },
  'v2-flag-kept': {
    what: 'taking IS_COMPONENTS_V2 off a message',
    code: 'MESSAGE_CANNOT_REMOVE_COMPONENTS_V2_FLAG',
    where: 'Components > Component Reference',
  },
  'mentions-exclusive': {
    what: 'parse and a list for one kind',
    code: 'MESSAGE_ALLOWED_MENTIONS_PARSE_EXCLUSIVE',
    where: 'Resources > Message > Allowed Mentions',
  },
  'files-count': {
    what: 'files of a message',
    limit: 10,
    number: 30015,
    code: 'TOO_MANY',
    where: 'Topics > Opcodes and Status Codes',
  },
  'file-size': {
    what: 'a file above the attachment size limit',
    status: 413,
    number: 40005,
    code: 'TOO_LARGE',
    where: 'Reference > Uploading Files',
  },
  'request-size': {
    what: 'a request above 25 MiB',
    status: 413,
    number: 40005,
    code: 'TOO_LARGE',
    where: 'Reference > Uploading Files',
  },
  'attachment-unknown': {
    what: 'an attachment id that is neither kept nor uploaded',
    code: 'ATTACHMENT_NOT_FOUND',
    where: 'Reference > Uploading Files',
  },
  'attachment-description': {
    what: 'characters of a file description',
    limit: 1024,
    code: length,
    where: 'Resources > Message > Attachment Structure',
  },
  'reply-to-unknown': {
    what: 'an answer to a message that is not there',
    code: 'REPLIES_UNKNOWN_MESSAGE',
    where: 'Resources > Message > Message Reference',
  },
  'body-json': {
    what: 'a body that is not JSON',
    number: 50109,
    code: 'INVALID_JSON',
    where: 'Topics > Opcodes and Status Codes',
  },
} as const satisfies Record<string, Rule>;
