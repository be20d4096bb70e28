import { type Component, type Hands, type MenuOption, whileBusy } from './component.ts';
import { element, freshId } from './element.ts';

/**
 * A menu: a list to pick one from, or boxes to tick for several, and a button that sends it. It never sends by
 * itself, so that the arrow keys can walk it.
 */
export function menuElement(menu: Component, hands: Hands): HTMLElement {
  const {
    options = [],
    placeholder = '',
    custom_id = '',
    min_values: least = 1,
    max_values: most = 1,
  } = menu;
  const { say } = hands;
  const trouble = element('p', { class: 'trouble', role: 'alert' });
  const picker = most === 1 ? pickOne(options, placeholder) : tickSome(options, placeholder);
  const button = element('button', { type: 'button', class: 'plain' }, say.menuPick);
  button.disabled = menu.disabled === true;
  button.addEventListener('click', () => {
    const values = picker.values();
    const fits = values.length >= least && values.length <= most;
    trouble.textContent = fits ? '' : most === 1 ? say.menuNothing : say.menuCount({ least, most });
    if (!fits) return;
    const labels = options.filter(({ value }) => values.includes(value)).map(({ label }) => label);
    void whileBusy(button, () => hands.choose(custom_id, values, labels.join(', ')));
  });
  return element('div', { class: 'menu' }, picker.field, button, trouble);
}

/** More boxes than these wait behind their heading: an answer is one screen. */
const MOST_OPEN = 4;

type Picker = { readonly field: HTMLElement; values(): readonly string[] };

function pickOne(options: readonly MenuOption[], placeholder: string): Picker {
  const id = freshId('menu');
  const select = element(
    'select',
    { id },
    element('option', { value: '' }, placeholder || '—'),
    ...options.map(({ label, value, description, default: chosen }) =>
      element('option', { value, selected: chosen }, description ? `${label} (${description})` : label),
    ),
  );
  // The list itself shows what it asks for: a line above it would say it twice.
  const label = element('label', { for: id, class: 'unseen' }, placeholder);
  return {
    field: element('div', { class: 'field' }, label, select),
    values: () => (select.value === '' ? [] : [select.value]),
  };
}

function tickSome(options: readonly MenuOption[], placeholder: string): Picker {
  const boxes = options.map(({ value, default: chosen }) =>
    element('input', { type: 'checkbox', value, checked: chosen }),
  );
  const lines = options.map(({ label, description }, index) =>
    element('label', { class: 'tick' }, boxes[index], description ? `${label} (${description})` : label),
  );
  const fieldset = element('fieldset', {}, element('legend', { class: 'unseen' }, placeholder), ...lines);
  const isLong = options.length > MOST_OPEN;
  return {
    field: element(
      'details',
      { class: 'ticks', open: !isLong },
      element('summary', {}, placeholder),
      fieldset,
    ),
    values: () => boxes.filter(box => box.checked).map(box => box.value),
  };
}
