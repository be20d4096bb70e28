/** Checks of buttons and selects, which messages and forms share. */
import { type Json, listOf, numberOf, recordOf } from '../state/json.ts';
import type { Findings, Path } from './findings.ts';

/** Component types by number. Source: platform documentation, Components > Component Types. */
export const kinds = {
  row: 1,
  button: 2,
  textSelect: 3,
  textInput: 4,
  userSelect: 5,
  roleSelect: 6,
  mentionableSelect: 7,
  channelSelect: 8,
  section: 9,
  text: 10,
  thumbnail: 11,
  gallery: 12,
  file: 13,
  separator: 14,
  container: 17,
  label: 18,
  upload: 19,
  radio: 21,
  ticks: 22,
  tick: 23,
} as const;

export const isSelect = (type: unknown): boolean =>
  type === kinds.textSelect ||
  type === kinds.userSelect ||
  type === kinds.roleSelect ||
  type === kinds.mentionableSelect ||
  type === kinds.channelSelect;

/** Custom ids and component ids met so far in one message or form. */
export interface UsedIds {
  readonly customIds: Set<string>;
  readonly ids: Set<number>;
}
export const noIdsUsed = (): UsedIds => ({ customIds: new Set(), ids: new Set() });

/** Notes a component's id; 0 counts as none. */
export function checkId(found: Findings, component: Json, path: Path, seen: UsedIds) {
  const id = numberOf(component.id, 0);
  if (id === 0) return;
  if (seen.ids.has(id)) found.add('component-id-duplicate', [...path, 'id']);
  seen.ids.add(id);
}

export function checkCustomId(found: Findings, component: Json, path: Path, seen: UsedIds) {
  const customId = component.custom_id;
  found.text('custom-id-length', [...path, 'custom_id'], customId, 1);
  if (typeof customId !== 'string') return;
  if (seen.customIds.has(customId)) found.add('custom-id-duplicate', [...path, 'custom_id']);
  seen.customIds.add(customId);
}

export function checkButton(found: Findings, button: Json, path: Path, seen: UsedIds) {
  const { style } = button;
  const has = (field: string): boolean => button[field] !== undefined && button[field] !== null;
  const wanted = style === 5 ? 'url' : style === 6 ? 'sku_id' : 'custom_id';
  for (const field of ['url', 'sku_id', 'custom_id'])
    if (has(field) !== (field === wanted)) found.add('button-fields', [...path, field]);
  if (wanted === 'custom_id' && has('custom_id')) checkCustomId(found, button, path, seen);
  if (wanted === 'url' && has('url') && !/^(https?|discord):\/\//.test(String(button.url)))
    found.add('media-url', [...path, 'url']);
  found.text('button-label', [...path, 'label'], button.label, 0);
  if (style !== 6 && !button.label && !has('emoji')) found.add('button-face', [...path, 'label']);
}

/** `form`: selects in forms may be required and may not be disabled. */
export function checkSelect(found: Findings, select: Json, path: Path, seen: UsedIds, form: boolean) {
  checkCustomId(found, select, path, seen);
  found.text('select-placeholder', [...path, 'placeholder'], select.placeholder, 0);
  const min = numberOf(select.min_values, 1);
  const max = numberOf(select.max_values, 1);
  found.range('select-range', [...path, 'min_values'], select.min_values, 0, 25);
  found.range('select-range', [...path, 'max_values'], select.max_values, 1, 25);
  if (min > max) found.add('select-range', [...path, 'min_values']);
  if (form && select.disabled === true) found.add('form-disabled', [...path, 'disabled']);
  if (form && select.required !== false && select.min_values === 0)
    found.add('form-min-required', [...path, 'min_values']);
  const defaults = listOf(select.default_values);
  if (defaults.length > 0 && (defaults.length < min || defaults.length > max))
    found.add('select-defaults', [...path, 'default_values']);
  if (select.type !== kinds.textSelect) return;
  const options = listOf(select.options);
  found.count('select-options', [...path, 'options'], options, 1);
  checkOptions(found, options, [...path, 'options']);
}

/** Options of a select, radio group or checkbox group. */
export function checkOptions(found: Findings, options: readonly unknown[], path: Path) {
  const values = new Set<unknown>();
  for (const [index, item] of options.entries()) {
    const option = recordOf(item);
    found.text('select-option-text', [...path, index, 'label'], option.label, 1);
    found.text('select-option-text', [...path, index, 'value'], option.value, 1);
    found.text('select-option-text', [...path, index, 'description'], option.description, 0);
    if (values.has(option.value)) found.add('select-option-duplicate', [...path, index]);
    values.add(option.value);
  }
}
