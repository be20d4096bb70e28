/** Checks of a form (modal) and of autocomplete choices. */
import { type Json, listOf, numberOf, recordOf } from '../state/json.ts';
import {
  checkCustomId,
  checkId,
  checkOptions,
  checkSelect,
  isKnownKind,
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
  switch (part.type) {
    case kinds.label:
      found.text('label-text', [...path, 'label'], part.label, 1);
      found.text('label-description', [...path, 'description'], part.description, 0);
      return checkField(found, recordOf(part.component), [...path, 'component'], seen);
    case kinds.text:
      return found.text('text-empty', [...path, 'content'], part.content, 1);
    case kinds.row: {
      const children = listOf(part.components);
      if (children.length !== 1 || recordOf(children[0]).type !== kinds.textInput)
        return found.add('form-part-kind', [...path, 'components']);
      found.text('label-text', [...path, 'components', 0, 'label'], recordOf(children[0]).label, 1);
      return checkField(found, recordOf(children[0]), [...path, 'components', 0], seen);
    }
    default:
      return found.add(isKnownKind(part.type) ? 'form-part-kind' : 'component-kind-unknown', [
        ...path,
        'type',
      ]);
  }
}

function checkField(found: Findings, field: Json, path: Path, seen: UsedIds) {
  const type = field.type;
  checkId(found, field, path, seen);
  if (isSelect(type)) return checkSelect(found, field, path, seen, true);
  switch (type) {
    case kinds.textInput:
      checkCustomId(found, field, path, seen);
      return checkTextInput(found, field, path);
    case kinds.upload:
      checkCustomId(found, field, path, seen);
      return checkRange(found, field, path);
    case kinds.radio:
      checkCustomId(found, field, path, seen);
      found.count('radio-options', [...path, 'options'], listOf(field.options), 2);
      return checkOptions(found, listOf(field.options), [...path, 'options']);
    case kinds.ticks:
      checkCustomId(found, field, path, seen);
      found.count('tick-options', [...path, 'options'], listOf(field.options), 1);
      checkOptions(found, listOf(field.options), [...path, 'options']);
      return checkRange(found, field, path);
    case kinds.tick:
      return checkCustomId(found, field, path, seen);
    default:
      return found.add(isKnownKind(type) ? 'label-child' : 'component-kind-unknown', [...path, 'type']);
  }
}

function checkTextInput(found: Findings, field: Json, path: Path) {
  found.range('text-input-style', [...path, 'style'], field.style ?? 0, 1, 2);
  found.range('text-input-range', [...path, 'min_length'], field.min_length, 0, 4000);
  found.range('text-input-range', [...path, 'max_length'], field.max_length, 1, 4000);
  if (numberOf(field.min_length, 0) > numberOf(field.max_length, 4000))
    found.add('text-input-range', [...path, 'min_length']);
  found.text('text-input-value', [...path, 'value'], field.value, 0);
  found.text('text-input-placeholder', [...path, 'placeholder'], field.placeholder, 0);
}

function checkRange(found: Findings, field: Json, path: Path) {
  found.range('upload-range', [...path, 'min_values'], field.min_values, 0, 10);
  found.range('upload-range', [...path, 'max_values'], field.max_values, 1, 10);
  if (field.required !== false && field.min_values === 0)
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
