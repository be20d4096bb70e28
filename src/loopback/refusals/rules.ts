import { answerRules } from './rules/answer-rules.ts';
import { componentRules } from './rules/component-rules.ts';
import { declarationRules } from './rules/declaration-rules.ts';
import { formRules } from './rules/form-rules.ts';
import { messageRules } from './rules/message-rules.ts';
import { placeRules } from './rules/place-rules.ts';
import type { Rule } from './rules/row.ts';

/** The whole refusal table by row id. */
export const rules = {
  ...componentRules,
  ...messageRules,
  ...placeRules,
  ...formRules,
  ...answerRules,
  ...declarationRules,
};
export type RuleId = keyof typeof rules;

/** A row with its optional columns. */
export const ruleOf = (id: RuleId): Rule => rules[id];
