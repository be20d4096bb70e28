/** Refusal rows about the components of a message. Columns: see `row.ts`. */
import type { Rule } from './row.ts';

const length = 'BASE_TYPE_BAD_LENGTH';
const kind = 'UNION_TYPE_CHOICES';
const needed = 'BASE_TYPE_REQUIRED';
const invalid = 'COMPONENT_VALIDATION_FAILED';

export const componentRules = {
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
  'row-select-alone': {
    what: 'a select beside anything else in a row',
    code: 'COMPONENT_LAYOUT_WIDTH_EXCEEDED',
    where: 'Components > Action Row',
  },
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
} as const satisfies Record<string, Rule>;
