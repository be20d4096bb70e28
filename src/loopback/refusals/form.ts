/** Checks of a form (modal) and of autocomplete choices. */
import { type Json, listOf, recordOf } from '../state/json.ts';
import {
  checkCustomId,
  checkId,
  checkOptions,
  checkSelect,
  isSelect,
  kinds,
  noIdsUsed,
  type UsedIds,
} from './controls.ts';
import { Findings, type Path } from './findings.ts';

/** Throws what the platform would answer to a form in a callback's `data`. */
export function checkForm(form: Json) {
  const found = new Findings();
  const at = ['data'];
  found.text('custom-id-length', [...at, 'custom_id'], form.custom_id, 1);
  found.text('form-title', [...at, 'title'], form.title, 1);
  const parts = listOf(form.components);
  found.count('form-parts', [...at, 'components'], parts, 1);
  const seen = noIdsUsed();
  for (const [index, item] of parts.entries())
    checkPart(found, recordOf(item), [...at, 'components', index], seen);
  found.settle();
}

function checkPart(found: Findings, part: Json, path: Path, seen: UsedIds) {
  checkId(found, part, path, seen);
  if (part.type === kinds.text) return found.text('text-empty', [...path, 'content'], part.content, 1);
  const isLabel = part.type === kinds.label;
  const field = recordOf(isLabel ? part.component : listOf(part.components)[0]);
  const at = isLabel ? [...path, 'component'] : [...path, 'components', 0];
  found.text('label-text', [...(isLabel ? path : at), 'label'], isLabel ? part.label : field.label, 1);
  found.text('label-description', [...path, 'description'], part.description, 0);
  checkField(found, field, at, seen);
}

function checkField(found: Findings, field: Json, path: Path, seen: UsedIds) {
  checkId(found, field, path, seen);
  if (isSelect(field.type)) return checkSelect(found, field, path, seen, true);
  checkCustomId(found, field, path, seen);
  if (field.type === kinds.textInput) found.text('text-input-value', [...path, 'value'], field.value, 0);
  if (field.type === kinds.radio || field.type === kinds.ticks)
    checkOptions(found, listOf(field.options), [...path, 'options']);
  const countsAnswers = field.type === kinds.upload || field.type === kinds.ticks;
  if (countsAnswers && field.required !== false && field.min_values === 0)
    found.add('form-min-required', [...path, 'min_values']);
}

/** Throws what the platform would answer to autocomplete choices; `type` is the focused option's. */
export function checkChoices(data: Json, type: number) {
  const found = new Findings();
  const choices = listOf(data.choices);
  if (!Array.isArray(data.choices)) found.add('choices-count', ['data', 'choices']);
  found.count('choices-count', ['data', 'choices'], choices, 0);
  for (const [index, item] of choices.entries())
    checkChoice(found, recordOf(item), ['data', 'choices', index], type);
  found.settle();
}

/** A choice of an option of this type: 3 text, 4 whole number, 10 number. */
export function checkChoice(found: Findings, choice: Json, path: Path, type: number) {
  found.text('choice-name', [...path, 'name'], choice.name, 1);
  const value = choice.value;
  if (type === 3) return found.text('choice-value', [...path, 'value'], value, 1);
  if (typeof value !== 'number' || (type === 4 && !Number.isInteger(value)))
    found.add('choice-value', [...path, 'value']);
}
