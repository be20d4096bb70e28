type Props = Readonly<Record<string, string | boolean | number | undefined | EventListener>>;
type Child = Node | string | undefined | false;

/** Makes an element. Text becomes text nodes only: nothing anybody wrote is ever read as markup. */
export function element<Tag extends keyof HTMLElementTagNameMap>(
  tag: Tag,
  props: Props = {},
  ...children: readonly Child[]
): HTMLElementTagNameMap[Tag] {
  const made = document.createElement(tag);
  for (const [name, value] of Object.entries(props)) {
    if (typeof value === 'function') made.addEventListener(name, value);
    else if (value === true) made.setAttribute(name, '');
    else if (value !== undefined && value !== false) made.setAttribute(name, String(value));
  }
  made.append(...children.filter(child => child !== undefined && child !== false));
  return made;
}

let lastId = 0;

/** An id that nothing else on the page has, to tie a label to its field. */
export const freshId = (about: string): string => {
  lastId += 1;
  return `${about}-${lastId}`;
};
