/**
 * The refusal table: what the platform documents that it refuses. Each row says what, the limit, the platform's answer
 * and where it is documented ("observed": from public reports of its answers, not from the documentation).
 * Rows without `status` answer 400; rows without `number` answer 50035 with a path to the flaw.
 */
export interface Rule {
  readonly what: string;
  readonly limit?: number;
  readonly status?: number;
  /** The platform's numeric error code. */
  readonly number?: number;
  /** Short code of the flaw, or of the row when it has no path. */
  readonly code: string;
  readonly where: string;
}

const length = 'BASE_TYPE_BAD_LENGTH';
const choices = 'BASE_TYPE_CHOICES';
const kind = 'UNION_TYPE_CHOICES';
const needed = 'BASE_TYPE_REQUIRED';
const invalid = 'COMPONENT_VALIDATION_FAILED';

const components = {
  'component-kind-unknown': {
    what: 'a component type that does not exist',
    code: kind,
    where: 'Components > Component Types',
  },
  'component-misplaced': {
    what: 'a component in a place that does not take its type',
    code: kind,
    where: 'Components > each component',
  },
  'components-need-flag': {
    what: 'newer components without IS_COMPONENTS_V2',
    code: kind,
    where: 'Components > Component Reference',
  },
  'components-total': {
    what: 'components in a message, nested ones included',
    limit: 40,
    code: length,
    where: 'Components > Component Reference',
  },
  'component-id-duplicate': {
    what: 'two components with one id',
    code: 'COMPONENT_ID_DUPLICATED',
    where: 'Components > Anatomy of a Component',
  },
  'custom-id-length': {
    what: 'characters of a custom id, from 1',
    limit: 100,
    code: length,
    where: 'Components > Custom ID',
  },
  'custom-id-duplicate': {
    what: 'two components with one custom id',
    code: 'COMPONENT_CUSTOM_ID_DUPLICATED',
    where: 'Components > Custom ID',
  },
  'legacy-rows': {
    what: 'action rows of a message without IS_COMPONENTS_V2',
    limit: 5,
    code: length,
    where: 'Components > Legacy Message Component Behavior',
  },
  'row-buttons': {
    what: 'buttons in an action row, from 1',
    limit: 5,
    code: length,
    where: 'Components > Action Row',
  },
  'row-select-alone': {
    what: 'a select beside anything else in a row',
    code: 'COMPONENT_LAYOUT_WIDTH_EXCEEDED',
    where: 'Components > Action Row',
  },
  'button-style': { what: 'a button style outside 1-6', code: choices, where: 'Components > Button Styles' },
  'button-label': {
    what: 'characters of a button label',
    limit: 80,
    code: length,
    where: 'Components > Button',
  },
  'button-face': { what: 'a button with neither label nor emoji', code: needed, where: 'observed' },
  'button-fields': {
    what: 'custom id, url and sku not as the style wants them',
    code: invalid,
    where: 'Components > Button',
  },
  'button-url': { what: 'characters of a link', limit: 512, code: length, where: 'Components > Button' },
  'select-options': {
    what: 'options of a string select, from 1',
    limit: 25,
    code: length,
    where: 'Components > String Select',
  },
  'select-option-text': {
    what: 'characters of an option label, value or description',
    limit: 100,
    code: length,
    where: 'Components > Select Option Structure',
  },
  'select-option-duplicate': {
    what: 'two options with one value',
    code: 'SELECT_COMPONENT_OPTION_VALUE_DUPLICATED',
    where: 'observed',
  },
  'select-placeholder': {
    what: 'characters of a placeholder',
    limit: 150,
    code: length,
    where: 'Components > String Select',
  },
  'select-range': {
    what: 'min_values 0-25, max_values 1-25, min not above max',
    limit: 25,
    code: 'NUMBER_TYPE_MAX',
    where: 'Components > String Select',
  },
  'select-defaults': {
    what: 'default values outside min_values and max_values',
    code: length,
    where: 'Components > User Select',
  },
  'section-texts': {
    what: 'texts of a section, from 1',
    limit: 3,
    code: length,
    where: 'Components > Section',
  },
  'section-accessory': {
    what: 'a section without an accessory',
    code: needed,
    where: 'Components > Section',
  },
  'text-empty': {
    what: 'a text display without text',
    limit: 4000,
    code: length,
    where: 'Components > Text Display',
  },
  'text-total': {
    what: 'characters of all text displays of a message',
    limit: 4000,
    code: length,
    where: 'observed',
  },
  'gallery-items': {
    what: 'items of a media gallery, from 1',
    limit: 10,
    code: length,
    where: 'Components > Media Gallery',
  },
  'media-description': {
    what: 'characters of an alt text',
    limit: 1024,
    code: length,
    where: 'Components > Media Gallery',
  },
  'media-url': {
    what: 'a media address that is not http, https or attachment',
    code: 'URL_TYPE_INVALID_SCHEME',
    where: 'Components > Unfurled Media Item',
  },
  'media-attachment-missing': {
    what: 'attachment:// of a file that is not there',
    code: 'UNFURLED_MEDIA_ITEM_REFERENCED_ATTACHMENT_NOT_FOUND',
    where: 'Components > Unfurled Media Item',
  },
  'file-attachment-only': {
    what: 'a file component that is not attachment://',
    code: 'URL_TYPE_INVALID_SCHEME',
    where: 'Components > File',
  },
  'separator-spacing': {
    what: 'separator spacing other than 1 or 2',
    code: choices,
    where: 'Components > Separator',
  },
  'container-colour': {
    what: 'an accent colour above 0xFFFFFF',
    limit: 0xffffff,
    code: 'NUMBER_TYPE_MAX',
    where: 'Components > Container',
  },
  'container-empty': { what: 'a container without components', code: needed, where: 'observed' },
} as const satisfies Record<string, Rule>;

const messages = {
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

const places = {
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

export const messageRules = { ...components, ...messages, ...places };
