/** A filled-in form as the platform sends it, with the checks its client makes before. */
import type { Fields, FieldValue } from '../interface/people.ts';
import type { MemberFile, OpenForm } from '../interface/views.ts';
import { characters } from '../refusals/findings.ts';
import { type Json, listOf, numberOf, recordOf, textOf, wordOf } from '../state/json.ts';
import { notPossible } from './options.ts';
import type { Resolved } from './resolved.ts';

/** Which option type an auto-populated select names: 5 users, 6 roles, 7 both, 8 channels. */
export const entityType: Readonly<Record<number, number>> = { 5: 6, 6: 8, 7: 9, 8: 7 };

/** `data` of the submission. */
export function fillForm(form: OpenForm, fields: Fields, resolved: Resolved): Json {
  const known = new Set(form.fields.map(field => field.customId));
  for (const name of Object.keys(fields))
    if (!known.has(name)) throw notPossible(`the form has no field "${name}"`);
  const components = listOf((form.raw as unknown as Json).components).map(item =>
    fillPart(recordOf(item), fields, resolved),
  );
  const all = resolved.json();
  return { custom_id: form.customId, components, ...(all && { resolved: all }) };
}

function fillPart(part: Json, fields: Fields, resolved: Resolved): Json {
  const base = { type: part.type, id: part.id };
  if (part.component !== undefined)
    return { ...base, component: fillField(recordOf(part.component), fields, resolved) };
  if (part.components !== undefined)
    return {
      ...base,
      components: listOf(part.components).map(item => fillField(recordOf(item), fields, resolved)),
    };
  return base;
}

function fillField(field: Json, fields: Fields, resolved: Resolved): Json {
  const customId = textOf(field.custom_id) ?? '';
  const type = numberOf(field.type, 0);
  const base = { type, id: field.id, custom_id: customId };
  const value = fields[customId];
  if (type === 4) return { ...base, value: writtenText(field, customId, value) };
  if (type === 23) return { ...base, value: value === undefined ? field.default === true : value === true };
  const isRequired = field.required !== false;
  if (type === 21) {
    if (value === undefined && isRequired) throw notPossible(`field "${customId}" is required`);
    const picked = Array.isArray(value) ? wordOf(value[0]) : value;
    if (picked !== undefined) checkPicked(field, customId, [wordOf(picked)]);
    return { ...base, value: picked ?? null };
  }
  if (type === 19) {
    const files = listOf(value) as readonly MemberFile[];
    checkCount(field, customId, files.length, isRequired);
    return { ...base, values: files.map(file => resolved.upload(file)) };
  }
  const values = Array.isArray(value) ? value.map(String) : value === undefined ? [] : [wordOf(value)];
  checkCount(field, customId, values.length, isRequired);
  return { ...base, values: pickValues(field, customId, values, resolved) };
}

/** Values of a menu or checkbox group, checked; those of people, roles and channels are resolved. */
export function pickValues(
  menu: Json,
  name: string,
  values: readonly string[],
  resolved: Resolved,
): readonly string[] {
  const entity = entityType[numberOf(menu.type, 0)];
  if (entity !== undefined) return values.map(id => resolved.person(id, entity, name));
  checkPicked(menu, name, values);
  return values;
}

function checkPicked(field: Json, name: string, values: readonly string[]): void {
  const offered = listOf(field.options).map(option => recordOf(option).value);
  for (const value of values)
    if (!offered.includes(value)) throw notPossible(`"${name}" does not offer "${value}"`);
  if (new Set(values).size !== values.length) throw notPossible(`"${name}" takes each value once`);
}

/** How many may be picked; nothing at all where no answer is required. */
export function checkCount(field: Json, name: string, count: number, isRequired: boolean): void {
  if (count === 0 && !isRequired) return;
  const all = listOf(field.options).length;
  const min = numberOf(field.min_values, 1);
  const max = numberOf(field.max_values, field.type === 22 ? all : 1);
  if (count < min || count > max) throw notPossible(`"${name}" takes ${min} to ${max}, not ${count}`);
}

function writtenText(field: Json, customId: string, value: FieldValue | undefined): string {
  const text = value === undefined ? (textOf(field.value) ?? '') : value;
  if (typeof text !== 'string') throw notPossible(`field "${customId}" is text`);
  const isRequired = field.required !== false;
  if (text === '' && !isRequired) return text;
  const min = Math.max(numberOf(field.min_length, 0), isRequired ? 1 : 0);
  const max = numberOf(field.max_length, 4000);
  const count = characters(text);
  if (count < min || count > max)
    throw notPossible(`field "${customId}" is ${min} to ${max} characters long`);
  if (field.style === 1 && text.includes('\n')) throw notPossible(`field "${customId}" is a single line`);
  return text;
}
