import type { page } from '../../words/en/fronts/page.ts';
import type { ShownForm } from '../model.ts';
import type { Attached } from './api-client.ts';
import type { Component } from './component.ts';
import { element, freshId } from './element.ts';

type Field = Component & {
  readonly required?: boolean;
  readonly value?: string;
  readonly min_length?: number;
  readonly max_length?: number;
};
type Label = Component & { readonly description?: string | null; readonly component?: Field };

export type Filled = Readonly<Record<string, string | readonly string[]>>;

type Asks = {
  readonly say: typeof page;
  /** Sends what was filled in; gives the sentence that says what was wrong, if anything. */
  submit(fields: Filled, files: Attached, title: string): Promise<string | undefined>;
  cancel(): void;
};

type Input = HTMLInputElement | HTMLTextAreaElement | HTMLSelectElement;
type Part = {
  readonly node: HTMLElement;
  readonly name: string;
  /** What was filled in; undefined where nothing was. */
  readonly filled: () => string | readonly string[] | undefined;
  readonly files?: () => readonly File[];
  /** What is kept of it over a reload, as text. */
  readonly kept: () => string;
  readonly restore: (kept: string) => void;
};

/** Opens a form over the page. What is typed into it survives a reload. */
export function openForm(form: ShownForm, { say, submit, cancel }: Asks): HTMLDialogElement {
  const { title, components } = form.raw;
  const draft = draftOf(form.interaction);
  const heading = element('h2', { id: freshId('form') }, title);
  const trouble = element('p', { class: 'trouble', role: 'alert' });
  const labels = components as unknown as readonly Label[];
  const parts = labels.flatMap(label => (label.component ? [partOf(label, label.component)] : []));
  const send = element('button', { type: 'submit', class: 'main' }, say.send);
  const leave = element('button', { type: 'button', class: 'plain' }, say.cancel);
  const inside = element('form', {}, heading, ...parts.map(({ node }) => node), trouble);
  inside.append(element('div', { class: 'row' }, send, leave));
  const dialog = element('dialog', { 'aria-labelledby': heading.id }, inside);

  for (const { name, restore } of parts) {
    const kept = draft.read()[name];
    if (kept !== undefined) restore(kept);
  }
  inside.addEventListener('input', () =>
    draft.write(Object.fromEntries(parts.map(({ name, kept }) => [name, kept()]))),
  );
  const put = () => {
    draft.forget();
    dialog.remove();
  };
  leave.addEventListener('click', () => dialog.close());
  dialog.addEventListener('close', () => {
    put();
    cancel();
  });
  inside.addEventListener('submit', event => {
    event.preventDefault();
    send.disabled = true;
    const { fields, files } = gathered(parts);
    void submit(fields, files, title).then(wrong => {
      send.disabled = false;
      trouble.textContent = wrong ?? '';
      if (wrong === undefined) put();
    });
  });
  document.body.append(dialog);
  dialog.showModal();
  return dialog;
}

function partOf(label: Label, field: Field): Part {
  return field.type === 22 ? ticksOf(label, field) : inputPartOf(label, field);
}

/** Boxes to tick, any number of them. */
function ticksOf({ label = '', description }: Label, field: Field): Part {
  const boxes = (field.options ?? []).map(({ label: text, value, default: ticked }) => {
    const box = element('input', { type: 'checkbox', value });
    box.checked = ticked === true;
    return { box, node: element('label', { class: 'tick' }, box, text) };
  });
  const ticked = () => boxes.filter(({ box }) => box.checked).map(({ box }) => box.value);
  return {
    node: element(
      'fieldset',
      { class: 'field' },
      element('legend', {}, label),
      description ? element('p', { class: 'hint' }, description) : undefined,
      ...boxes.map(({ node }) => node),
    ),
    name: field.custom_id ?? '',
    filled: () => (ticked().length > 0 ? ticked() : undefined),
    kept: () => ticked().join(' '),
    restore(kept) {
      const values = new Set(kept.split(' '));
      for (const { box } of boxes) box.checked = values.has(box.value);
    },
  };
}

function inputPartOf({ label = '', description }: Label, field: Field): Part {
  const input = inputOf(field);
  const id = freshId('field');
  input.id = id;
  input.name = field.custom_id ?? '';
  input.required = field.required !== false;
  const hint = description ? element('p', { class: 'hint', id: `${id}-hint` }, description) : undefined;
  if (hint) input.setAttribute('aria-describedby', hint.id);
  const isFile = input.type === 'file';
  return {
    node: element('div', { class: 'field' }, element('label', { for: id }, label), hint, input),
    name: input.name,
    filled() {
      if (isFile) return undefined;
      // A text that was emptied is sent as empty: left out, it would stand as the form was opened.
      if (!(input instanceof HTMLSelectElement)) return input.value;
      return input.value === '' ? undefined : [input.value];
    },
    ...(isFile && { files: () => [...((input as HTMLInputElement).files ?? [])] }),
    kept: () => input.value,
    restore(kept) {
      if (!isFile) input.value = kept;
    },
  };
}

function inputOf(field: Field): Input {
  switch (field.type) {
    // A radio group is a menu here: as short, and as easy to leave empty.
    case 3:
    case 21:
      return element(
        'select',
        {},
        element('option', { value: '' }, field.placeholder ?? '—'),
        ...(field.options ?? []).map(({ label, value, default: chosen }) =>
          element('option', { value, selected: chosen }, label),
        ),
      );
    case 19:
      return element('input', { type: 'file', accept: 'image/*', multiple: (field.max_values ?? 1) > 1 });
    default: {
      const bounds = {
        minlength: field.min_length,
        maxlength: field.max_length,
        placeholder: field.placeholder,
      };
      const input =
        field.style === 2 ? element('textarea', { ...bounds, rows: 5 }) : element('input', bounds);
      input.value = field.value ?? '';
      return input;
    }
  }
}

function gathered(parts: readonly Part[]): { fields: Filled; files: Attached } {
  const fields: Record<string, string | readonly string[]> = {};
  const files = new Map<string, readonly File[]>();
  for (const { name, filled, files: chosen } of parts) {
    const value = filled();
    if (value !== undefined) fields[name] = value;
    const list = chosen?.() ?? [];
    if (list.length > 0) files.set(name, list);
  }
  return { fields, files };
}

/** What was typed into a form, kept for this tab. */
function draftOf(interaction: string) {
  const key = `form ${interaction}`;
  return {
    read: () => JSON.parse(sessionStorage.getItem(key) ?? '{}') as Readonly<Record<string, string>>,
    write: (values: Readonly<Record<string, string>>) => sessionStorage.setItem(key, JSON.stringify(values)),
    forget: () => sessionStorage.removeItem(key),
  };
}
