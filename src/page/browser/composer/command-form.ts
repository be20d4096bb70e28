import type { page } from '../../../words/en/fronts/page.ts';
import type { Action, Option } from '../declared.ts';
import { element, freshId } from '../element.ts';
import { type Suggestion, suggesting } from './suggest.ts';

type Asks = {
  readonly say: typeof page;
  /** Suggestions of the assistant for an option, given everything filled in. */
  suggest(option: string): Promise<readonly Suggestion[]>;
  /** Hears every change of a field. */
  edited(option: string, value: string): void;
  attach(option: string, file: File | undefined): void;
};

type Line = {
  readonly option: Option;
  readonly node: HTMLElement;
  readonly input: HTMLInputElement | HTMLSelectElement;
  readonly trouble: HTMLElement;
};

/** The options of a command as fields to fill in: those it needs, and the others folded away below. */
export type CommandForm = {
  readonly element: HTMLElement;
  readonly action: Action;
  /** Shows these values; fields of other options are emptied. */
  set(values: ReadonlyMap<string, string>, files: ReadonlyMap<string, File>): void;
  /** Says what is wrong with which options, and moves to the first. */
  complain(wrong: ReadonlyMap<string, string>): void;
};

export function commandFormFor(action: Action, asks: Asks): CommandForm {
  const { say } = asks;
  const lines = action.options.map(option => lineFor(option, asks));
  const needed = lines.filter(({ option }) => option.required);
  const others = lines.filter(({ option }) => !option.required);
  const more = element(
    'details',
    {},
    element('summary', {}, say.moreOptions({ count: others.length })),
    ...others.map(({ node }) => node),
  );
  more.open = needed.length === 0 && others.length <= 3;
  const commandForm = element(
    'fieldset',
    { class: 'command-form' },
    element('legend', {}, element('b', {}, `/${action.path}`), ` ${action.says}`),
    ...needed.map(({ node }) => node),
    others.length > 0 && more,
  );
  return {
    element: commandForm,
    action,
    set(values, files) {
      for (const { option, input, trouble } of lines) {
        if (input instanceof HTMLInputElement && input.type === 'file') {
          putFile(input, files.get(option.name));
        } else if (input !== document.activeElement) show(option, input, values.get(option.name) ?? '');
        if (values.has(option.name) || files.has(option.name)) clear(input, trouble);
        if (!option.required && (values.get(option.name) || files.has(option.name))) more.open = true;
      }
    },
    complain(wrong) {
      for (const { option, input, trouble } of lines) {
        const sentence = wrong.get(option.name);
        if (sentence === undefined) clear(input, trouble);
        else {
          input.setAttribute('aria-invalid', 'true');
          trouble.textContent = sentence;
          if (!option.required) more.open = true;
        }
      }
      lines.find(({ option }) => wrong.has(option.name))?.input.focus();
    },
  };
}

function clear(input: HTMLElement, trouble: HTMLElement): void {
  input.removeAttribute('aria-invalid');
  trouble.textContent = '';
}

/** A choice may have been typed by its label. */
function show({ choices }: Option, input: HTMLInputElement | HTMLSelectElement, value: string): void {
  const same = (other: string) => other.toLowerCase() === value.toLowerCase();
  input.value = choices.find(choice => same(choice.value) || same(choice.label))?.value ?? value;
}

function putFile(input: HTMLInputElement, file: File | undefined): void {
  const held = new DataTransfer();
  if (file) held.items.add(file);
  input.files = held.files;
}

function lineFor(option: Option, asks: Asks): Line {
  const { say, suggest, edited, attach } = asks;
  const { name, kind, says, required, completes } = option;
  const id = freshId('option');
  const input = inputFor(option, asks);
  input.id = id;
  input.setAttribute('aria-describedby', `${id}-says ${id}-trouble`);
  if (required) input.setAttribute('aria-required', 'true');
  input.addEventListener('input', () => {
    if (kind === 'file') attach(name, input instanceof HTMLInputElement ? input.files?.[0] : undefined);
    else edited(name, input.value);
  });
  const list =
    completes && input instanceof HTMLInputElement
      ? suggesting(input, {
          say,
          lookUp: () => suggest(name),
          accept: ({ value }) => {
            input.value = value;
            edited(name, value);
          },
        })
      : undefined;
  const trouble = element('p', { class: 'trouble', id: `${id}-trouble` });
  const node = element(
    'div',
    { class: 'field' },
    element('label', { for: id }, name, !required && element('span', { class: 'hint' }, ` ${say.optional}`)),
    element('p', { class: 'hint', id: `${id}-says` }, says),
    element('div', { class: 'suggested' }, input, list),
    trouble,
  );
  return { option, node, input, trouble };
}

function inputFor({ kind, choices }: Option, { say }: Asks): Line['input'] {
  const among = (items: readonly { readonly label: string; readonly value: string }[]) =>
    element(
      'select',
      {},
      element('option', { value: '' }, say.unset),
      ...items.map(({ label, value }) => element('option', { value }, label)),
    );
  switch (kind) {
    case 'yes-no':
      return among([
        { label: say.yes, value: 'yes' },
        { label: say.no, value: 'no' },
      ]);
    case 'file':
      return element('input', { type: 'file' });
    case 'whole':
      return element('input', { type: 'text', inputmode: 'numeric' });
    case 'number':
      return element('input', { type: 'text', inputmode: 'decimal' });
    case 'text':
      return choices.length > 0 ? among(choices) : element('input', { type: 'text', autocomplete: 'off' });
  }
}
