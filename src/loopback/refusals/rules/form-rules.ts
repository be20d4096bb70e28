/** Refusal rows about forms (modals). Columns: see `row.ts`. */
import type { Rule } from './row.ts';

const length = 'BASE_TYPE_BAD_LENGTH';
const choices = 'BASE_TYPE_CHOICES';
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
  'text-input-value': {
    what: 'characters of a starting value',
    limit: 4000,
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
} as const satisfies Record<string, Rule>;
