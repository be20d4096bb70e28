/** Refusal rows about forms (modals). Columns: see `row.ts`. */
import type { Rule } from './row.ts';

const length = 'BASE_TYPE_BAD_LENGTH';
const choices = 'BASE_TYPE_CHOICES';
const kind = 'UNION_TYPE_CHOICES';
const answerPage = 'Interactions > Receiving and Responding';

export const formRules = {
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
