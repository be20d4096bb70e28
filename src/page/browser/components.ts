import { element } from './element.ts';
import { markupNodes } from './markup.ts';
import { menuElement } from './menu.ts';

/** Any component, as far as the page reads it. Types: platform documentation, Components > Component Types. */
export type Component = {
  readonly type: number;
  readonly content?: string;
  readonly components?: readonly Component[];
  readonly accessory?: Component;
  readonly items?: readonly { readonly media: Media; readonly description?: string | null }[];
  readonly media?: Media;
  readonly description?: string | null;
  readonly file?: Media;
  readonly name?: string;
  readonly size?: number;
  readonly divider?: boolean;
  readonly label?: string;
  readonly style?: number;
  readonly disabled?: boolean;
  readonly url?: string;
  readonly custom_id?: string;
  readonly placeholder?: string;
  readonly min_values?: number;
  readonly max_values?: number;
  readonly options?: readonly MenuOption[];
};

export type MenuOption = {
  readonly label: string;
  readonly value: string;
  readonly description?: string;
  readonly default?: boolean;
};

type Media = { readonly url: string; readonly width?: number | null; readonly height?: number | null };

/** What the member can do with a message. Both resolve when the answer has come. */
export type Hands = {
  readonly say: typeof import('../../words/en/page.ts').page;
  press(customId: string, label: string): Promise<void>;
  choose(customId: string, values: readonly string[], label: string): Promise<void>;
};

const STYLES: Readonly<Record<number, string>> = { 1: 'main', 2: 'plain', 3: 'main', 4: 'danger' };

/** The elements that show a component; none for kinds that answers never hold. */
export function componentNodes(component: Component, hands: Hands): readonly Node[] {
  const inside = () => (component.components ?? []).flatMap(one => componentNodes(one, hands));
  switch (component.type) {
    case 1:
      return [element('div', { class: 'row' }, ...inside())];
    case 2:
      return [buttonElement(component, hands)];
    case 3:
      return [menuElement(component, hands)];
    case 9: {
      const accessory = component.accessory ? componentNodes(component.accessory, hands) : [];
      const beside = element('div', { class: 'beside' }, ...accessory);
      return [element('div', { class: 'section' }, element('div', {}, ...inside()), beside)];
    }
    case 10:
      return markupNodes(component.content ?? '');
    case 11:
      return component.media ? [picture(component.media, component.description, hands)] : [];
    case 12:
      return [
        element(
          'div',
          { class: 'gallery' },
          ...(component.items ?? []).map(({ media, description }) => picture(media, description, hands)),
        ),
      ];
    case 13:
      return component.file ? [fileLink(component, component.file, hands)] : [];
    case 14:
      return component.divider === false ? [] : [element('hr')];
    case 17:
      return [element('div', { class: 'sheet' }, ...inside())];
    default:
      return [];
  }
}

/** Files come from the page's own server: the address in the message is the host's. */
export const fileAddress = (url: string): string => new URL(url, location.origin).pathname;

function picture({ url, width, height }: Media, description: string | null | undefined, { say }: Hands) {
  const source = fileAddress(url);
  const name = decodeURIComponent(source.split('/').at(-1) ?? '');
  const image = element('img', {
    src: source,
    alt: description || say.pictureFrom({ name }),
    loading: 'lazy',
    ...(width && height && { width, height }),
  });
  return element('a', { href: source, target: '_blank', rel: 'noopener', class: 'picture' }, image);
}

function fileLink({ name = '', size = 0 }: Component, file: Media, { say }: Hands): HTMLElement {
  const text = say.file({ name, kilobytes: Math.ceil(size / 1024) });
  return element('p', { class: 'file' }, element('a', { href: fileAddress(file.url), download: name }, text));
}

function buttonElement({ label = '', style = 2, url, custom_id, disabled }: Component, hands: Hands) {
  if (url !== undefined)
    return element(
      'a',
      { href: url, rel: 'noopener noreferrer', target: '_blank', title: hands.say.links },
      label,
    );
  const button = element('button', { type: 'button', class: STYLES[style] ?? 'plain' }, label);
  button.disabled = disabled === true;
  button.addEventListener('click', () => void whileBusy(button, () => hands.press(custom_id ?? '', label)));
  return button;
}

/** Keeps a button from being pressed again until the answer has come. */
export async function whileBusy(button: HTMLButtonElement, work: () => Promise<void>): Promise<void> {
  if (button.getAttribute('aria-disabled') === 'true') return;
  button.setAttribute('aria-disabled', 'true');
  try {
    await work();
  } finally {
    button.removeAttribute('aria-disabled');
  }
}
