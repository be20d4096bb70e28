import type { page } from '../../../words/en/fronts/page.ts';
import type { Action } from '../declared.ts';
import { element } from '../element.ts';

/** Where a file hangs that belongs to no option of a command. */
export const NOTE = 'post';

/** The files that go with the next question, each at the option that takes it. */
export type Attachments = {
  readonly element: HTMLElement;
  readonly files: ReadonlyMap<string, File>;
  /** Hangs a file on the given option, or on the first free one that takes files. */
  add(file: File, option?: string): void;
  remove(option: string): void;
  /** Hangs the files on the options of another command, or on a note when there is none. */
  fit(action: Action | undefined): void;
  clear(): void;
};

export function attachments(say: typeof page, changed: () => void): Attachments {
  const list = element('ul', { class: 'attachments', 'aria-live': 'polite' });
  let files = new Map<string, File>();
  let places: readonly string[] = [];

  const draw = () => {
    for (const image of list.querySelectorAll('img')) URL.revokeObjectURL(image.src);
    list.replaceChildren(...[...files].map(([option, file]) => chip(option, file)));
    changed();
  };
  const chip = (option: string, file: File) => {
    const remove = element('button', { type: 'button', class: 'quiet' }, say.remove({ name: file.name }));
    remove.addEventListener('click', () => {
      files.delete(option);
      draw();
    });
    const preview =
      file.type.startsWith('image/') && element('img', { src: URL.createObjectURL(file), alt: '' });
    return element('li', {}, preview, element('span', {}, say.attached({ name: file.name })), remove);
  };
  const add = (file: File, option?: string) => {
    const free = places.find(place => !files.has(place)) ?? places.at(-1) ?? NOTE;
    files.set(option ?? free, file);
  };

  return {
    element: list,
    get files() {
      return files;
    },
    add(file, option) {
      add(file, option);
      draw();
    },
    remove(option) {
      files.delete(option);
      draw();
    },
    fit(action) {
      const wanted = action?.options.filter(({ kind }) => kind === 'file').map(({ name }) => name) ?? [];
      if (wanted.join() === places.join()) return;
      places = wanted;
      const held = [...files.values()];
      files = new Map();
      for (const file of held) add(file);
      draw();
    },
    clear() {
      files = new Map();
      draw();
    },
  };
}
