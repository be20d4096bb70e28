import type { page } from '../../../words/en/fronts/page.ts';
import type { PageAction } from '../../model.ts';
import type { Attached } from '../api-client.ts';
import { checkOption } from '../check.ts';
import type { Action } from '../declared.ts';
import { element, freshId } from '../element.ts';
import { attachments, NOTE } from './attachments.ts';
import { type CommandForm, commandFormFor } from './command-form.ts';
import { pastLines } from './history.ts';
import { readLine, type Typed, writeLine } from './line.ts';
import { lineSuggestions } from './line-suggestions.ts';
import { type Suggestion, suggesting } from './suggest.ts';

type Asks = {
  readonly say: typeof page;
  /** Names the draft that a reload brings back. */
  readonly seat: string;
  suggest(
    action: Action,
    values: ReadonlyMap<string, string>,
    option: string,
  ): Promise<readonly Suggestion[]>;
  /** Sends it; gives the sentence that says what went wrong, if anything. */
  send(pageAction: PageAction, files: Attached): Promise<string | undefined>;
};

/** Where questions are written: a line with suggestions, and the same as fields to fill in. */
export type Composer = {
  readonly element: HTMLElement;
  /** Takes the commands there are. */
  know(actions: readonly Action[]): void;
  write(line: string): void;
  /** Writes a line and sends it. */
  ask(line: string): void;
  attach(file: File): void;
  focus(): void;
};

export function openComposer({ say, seat, suggest, send }: Asks): Composer {
  let actions: readonly Action[] = [];
  let commandForm: CommandForm | undefined;
  const past = pastLines(seat);
  const id = freshId('line');
  const line = element('input', { id, type: 'text', placeholder: say.commandHint, enterkeyhint: 'send' });
  const trouble = element('p', { class: 'trouble', role: 'alert' });
  const place = element('div', { class: 'command-form-place' });
  const held = attachments(say, () => commandForm?.set(typed().values, held.files));
  const typed = (): Typed => readLine(line.value, actions, line.selectionStart ?? line.value.length);

  const toAll = element('button', { type: 'button', class: 'quiet', hidden: true }, say.putOnBench);
  const refresh = () => {
    trouble.textContent = '';
    past.keep(line.value);
    const { action, values } = typed();
    toAll.hidden = action !== undefined || !isPlain(line.value);
    if (action !== commandForm?.action) {
      commandForm = action && commandFormFor(action, { say, suggest: fromField, edited, attach: fileChosen });
      place.replaceChildren(
        ...(commandForm && commandForm.action.options.length > 0 ? [commandForm.element] : []),
      );
      held.fit(action);
    }
    commandForm?.set(values, held.files);
  };
  const write = (text: string) => {
    line.value = text;
    refresh();
  };
  const edited = (option: string, value: string) => {
    const { action, values } = typed();
    if (action) write(writeLine(action.path, new Map([...values, [option, value]])));
  };
  const fileChosen = (option: string, file: File | undefined) =>
    file ? held.add(file, option) : held.remove(option);
  const fromField = async (option: string) => {
    const { action, values } = typed();
    return action ? await suggest(action, values, option) : [];
  };

  const list = suggesting(line, {
    say,
    lookUp: () => lineSuggestions(typed(), actions, suggest),
    accept: ({ value }) => {
      const { from, to } = typed().at;
      const before = line.value.slice(0, from);
      const gap = before === '' || /[\s:]$/.test(before) ? '' : ' ';
      write(`${before}${gap}${value}${line.value.slice(to)}`);
      const caret = before.length + gap.length + value.length;
      line.setSelectionRange(caret, caret);
      line.dispatchEvent(new Event('input'));
    },
  });
  line.addEventListener('input', refresh);
  line.addEventListener('keydown', event => {
    const step = { ArrowUp: -1, ArrowDown: 1 }[event.key];
    const other =
      step !== undefined && (line.value === '' || past.isAt(line.value)) ? past.step(step) : undefined;
    if (other === undefined) return;
    event.preventDefault();
    write(other);
  });

  const chooser = element('input', { type: 'file', hidden: true });
  chooser.addEventListener('change', () => {
    for (const file of chooser.files ?? []) held.add(file);
    chooser.value = '';
  });
  const attachButton = element(
    'button',
    { type: 'button', class: 'plain', title: say.attachDrop },
    say.attach,
  );
  attachButton.addEventListener('click', () => chooser.click());
  const ask = element('button', { type: 'submit', class: 'main' }, say.ask);

  const submit = async (isNote = false) => {
    const question = isNote ? undefined : actions.find(({ path }) => path === 'ask');
    const found = pageActionOf(typed(), line.value, held.files, { say, question });
    if ('wrong' in found) {
      // One sentence, where it is to be put right.
      trouble.textContent = found.options && commandForm ? '' : found.wrong;
      commandForm?.complain(new Map([...(found.options ?? [])].slice(0, 1)));
      return;
    }
    const files: Attached = new Map(
      [...held.files].map(([name, file]) => [placeOf(name, found.pageAction), [file]]),
    );
    const asked = line.value;
    past.add(asked);
    write('');
    held.clear();
    line.focus();
    const wrong = await send(found.pageAction, files);
    if (wrong === undefined) return;
    if (line.value === '') write(asked);
    trouble.textContent = wrong;
  };
  toAll.addEventListener('click', () => void submit(true));
  const form = element(
    'form',
    {
      class: 'composer',
      'aria-label': say.command,
      submit: event => {
        event.preventDefault();
        void submit();
      },
    },
    place,
    held.element,
    trouble,
    toAll,
    element('label', { for: id, class: 'unseen' }, say.command),
    element('div', { class: 'line' }, element('div', { class: 'suggested' }, line, list), attachButton, ask),
    chooser,
  );
  form.noValidate = true;
  write(past.draft());
  return {
    element: form,
    know(known) {
      actions = known;
      refresh();
    },
    write(text) {
      write(text);
      line.focus();
    },
    ask(text) {
      write(text);
      void submit();
    },
    attach: file => held.add(file),
    focus: () => line.focus(),
  };
}

type Found =
  | { readonly pageAction: PageAction }
  | { readonly wrong: string; readonly options?: ReadonlyMap<string, string> };

/** Words that name no command. */
const isPlain = (line: string): boolean => /^\s*[^\s/]/u.test(line);

/** A file of a note is the photo of a question in plain words. */
const placeOf = (name: string, pageAction: PageAction): string =>
  name === NOTE && pageAction.do === 'run' ? 'photo' : name;

/**
 * What a line asks for, or what is wrong with it. Plain words are asked of `question`, the command for them; where that is left
 * out, and where there is only a file, they are a note for everybody.
 */
export function pageActionOf(
  { action, values, stray }: Typed,
  line: string,
  files: ReadonlyMap<string, File>,
  { say, question }: { readonly say: typeof page; readonly question?: Action | undefined },
): Found {
  const text = line.trim();
  if (!action) {
    if (text.startsWith('/')) return { wrong: say.unknownCommand({ typed: text.slice(0, 60) }) };
    if (text === '' && files.size === 0) return { wrong: say.nothingToSend };
    return question === undefined || text === ''
      ? { pageAction: { do: 'post', text } }
      : {
          pageAction: {
            do: 'run',
            command: `/${question.path}`,
            options: { question: text },
            line: say.askedInWords({ question: text }),
          },
        };
  }
  if (stray !== '') return { wrong: say.stray({ text: stray.slice(0, 60) }) };
  if (files.has(NOTE)) return { wrong: say.fileWithoutPlace };
  const wrong = new Map<string, string>();
  const options: Record<string, string | number | boolean> = {};
  for (const option of action.options) {
    if (files.has(option.name)) continue;
    const checked = checkOption(option, values.get(option.name) ?? '', say);
    if (checked === undefined) continue;
    if ('wrong' in checked) wrong.set(option.name, checked.wrong);
    else options[option.name] = checked.value;
  }
  const [first] = wrong.values();
  if (first !== undefined) return { wrong: first, options: wrong };
  const names = [...files].map(([name, file]) => [name, file.name] as const);
  const asked = writeLine(action.path, new Map([...values, ...names]));
  return { pageAction: { do: 'run', command: `/${action.path}`, options, line: asked } };
}
