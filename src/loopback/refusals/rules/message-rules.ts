/** Refusal rows about message bodies and files. Columns: see `row.ts`. */
import type { Rule } from './row.ts';

const length = 'BASE_TYPE_BAD_LENGTH';
const choices = 'BASE_TYPE_CHOICES';

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
  'embed-count': {
    what: 'embeds of a message',
    limit: 10,
    code: length,
    where: 'Resources > Message > Create Message',
  },
  'embed-title': {
    what: 'characters of an embed title',
    limit: 256,
    code: length,
    where: 'Resources > Message > Embed Limits',
  },
  'embed-description': {
    what: 'characters of an embed description',
    limit: 4096,
    code: length,
    where: 'Resources > Message > Embed Limits',
  },
  'embed-fields': {
    what: 'fields of an embed',
    limit: 25,
    code: length,
    where: 'Resources > Message > Embed Limits',
  },
  'embed-field-name': {
    what: 'characters of a field name, from 1',
    limit: 256,
    code: length,
    where: 'Resources > Message > Embed Limits',
  },
  'embed-field-value': {
    what: 'characters of a field value, from 1',
    limit: 1024,
    code: length,
    where: 'Resources > Message > Embed Limits',
  },
  'embed-footer': {
    what: 'characters of a footer',
    limit: 2048,
    code: length,
    where: 'Resources > Message > Embed Limits',
  },
  'embed-author': {
    what: 'characters of an author name',
    limit: 256,
    code: length,
    where: 'Resources > Message > Embed Limits',
  },
  'embed-total': {
    what: 'characters of all embeds',
    limit: 6000,
    code: 'MAX_EMBED_SIZE_EXCEEDED',
    where: 'Resources > Message > Embed Limits',
  },
  'nonce-length': {
    what: 'characters of a nonce',
    limit: 25,
    code: length,
    where: 'Resources > Message > Create Message',
  },
  'mentions-shape': {
    what: 'allowed_mentions of another shape',
    code: 'MODEL_TYPE_CONVERT',
    where: 'Resources > Message > Allowed Mentions',
  },
  'mentions-kind': {
    what: 'a parse entry other than roles, users, everyone',
    code: choices,
    where: 'Resources > Message > Allowed Mention Types',
  },
  'mentions-count': {
    what: 'ids in allowed users or roles',
    limit: 100,
    code: length,
    where: 'Resources > Message > Allowed Mentions',
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
  'body-shape': {
    what: 'a field of another JSON type',
    code: 'BASE_TYPE_INVALID',
    where: 'Resources > Message > Create Message',
  },
  'body-json': {
    what: 'a body that is not JSON',
    number: 50109,
    code: 'INVALID_JSON',
    where: 'Topics > Opcodes and Status Codes',
  },
} as const satisfies Record<string, Rule>;
