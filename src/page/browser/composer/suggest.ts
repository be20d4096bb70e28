import type { page } from '../../../words/en/fronts/page.ts';
import { element, freshId } from '../element.ts';
import { patch } from '../markup.ts';

export type Suggestion = {
  readonly label: string;
  readonly note?: string;
  readonly value: string;
  /** Shown as a patch before it, `#rrggbb`. */
  readonly hex?: string | undefined;
};

type Asks = {
  readonly say: typeof page;
  /** What fits what has been typed so far. */
  lookUp(): readonly Suggestion[] | Promise<readonly Suggestion[]>;
  accept(suggestion: Suggestion): void;
};

const PAUSE_MS = 120;

/**
 * Makes a text field suggest: a list that opens while typing, walked with the arrow keys, taken with Enter, Tab or
 * a tap, closed with Escape. Follows the combobox pattern of the ARIA Authoring Practices. Gives the list, to be
 * placed beside the field.
 */
export function suggesting(field: HTMLInputElement, { say, lookUp, accept }: Asks): HTMLElement {
  const list = element('ul', {
    id: freshId('list'),
    role: 'listbox',
    'aria-label': say.suggestions,
    hidden: true,
  });
  const count = element('p', { class: 'unseen', role: 'status' });
  const bare = (text: string) => text.trim().replace(/^\//u, '');
  const isWritten = ({ label }: Suggestion) => bare(label) === bare(field.value);
  let shown: readonly Suggestion[] = [];
  let active = -1;
  let asked = 0;
  let timer = 0;

  for (const [name, value] of Object.entries({
    role: 'combobox',
    autocomplete: 'off',
    'aria-autocomplete': 'list',
    'aria-expanded': 'false',
    'aria-controls': list.id,
  }))
    field.setAttribute(name, value);

  const close = () => {
    asked += 1;
    clearTimeout(timer);
    list.hidden = true;
    shown = [];
    active = -1;
    field.setAttribute('aria-expanded', 'false');
    field.removeAttribute('aria-activedescendant');
    count.textContent = '';
  };
  const take = (index: number) => {
    const suggestion = shown[index];
    close();
    if (suggestion) accept(suggestion);
  };
  const mark = (index: number) => {
    active = index;
    [...list.children].forEach((item, place) => {
      item.setAttribute('aria-selected', String(place === index));
    });
    const item = list.children[index];
    if (item) {
      field.setAttribute('aria-activedescendant', item.id);
      item.scrollIntoView({ block: 'nearest' });
    } else field.removeAttribute('aria-activedescendant');
  };
  const show = (suggestions: readonly Suggestion[]) => {
    if (suggestions.length === 0) return close();
    shown = suggestions;
    list.replaceChildren(...suggestions.map((one, index) => itemOf(one, () => take(index))));
    list.hidden = false;
    field.setAttribute('aria-expanded', 'true');
    count.textContent = say.suggestionCount({ count: suggestions.length });
    mark(-1);
  };
  const look = async () => {
    asked += 1;
    const mine = asked;
    const found = await Promise.resolve(lookUp()).catch(() => []);
    if (mine === asked && document.activeElement === field) show(found);
  };
  const soon = () => {
    clearTimeout(timer);
    timer = window.setTimeout(() => void look(), PAUSE_MS);
  };

  field.addEventListener('input', soon);
  field.addEventListener('click', soon);
  field.addEventListener('blur', close);
  field.addEventListener('keydown', event => {
    if (list.hidden) {
      if (event.key === 'ArrowDown') {
        event.preventDefault();
        void look();
      } else if (event.key === 'Enter' || event.key === 'Escape') close();
      return;
    }
    const step = { ArrowDown: 1, ArrowUp: -1 }[event.key];
    if (step !== undefined)
      mark((active + step + shown.length + (active < 0 && step < 0 ? 1 : 0)) % shown.length);
    else if ((event.key === 'Enter' || event.key === 'Tab') && active >= 0) take(active);
    // There is only one thing that it can mean, and it is not written out yet.
    else if (event.key === 'Enter' && shown.length === 1 && !isWritten(shown[0]!)) take(0);
    else if (event.key === 'Escape') close();
    else return;
    event.preventDefault();
    event.stopPropagation();
  });
  return element('div', { class: 'suggestions' }, list, count);
}

const itemOf = ({ label, note, hex }: Suggestion, take: () => void): HTMLElement =>
  element(
    'li',
    {
      id: freshId('item'),
      role: 'option',
      'aria-selected': 'false',
      // Before the field loses the focus, which would close the list.
      pointerdown: event => event.preventDefault(),
      click: take,
    },
    element('span', { class: 'label' }, hex !== undefined && patch(hex), label),
    note !== undefined && note !== label && element('span', { class: 'note' }, note),
  );
