import { type Component, type Hands, type Media, whileBusy } from './component.ts';
import { element } from './element.ts';
import { markupNodes } from './markup.ts';
import { menuElement } from './menu.ts';

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
      return markupNodes(component.content ?? '', hands.language);
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
      return [sheetElement(component.accent_color, inside())];
    default:
      return [];
  }
}

/** An answer, under a band of the colour that it is about. */
function sheetElement(colour: number | null | undefined, inside: readonly Node[]): HTMLElement {
  const sheet = element('div', { class: 'sheet' }, ...inside);
  if (colour != null) {
    sheet.classList.add('coloured');
    const hex = `#${colour.toString(16).padStart(6, '0')}`;
    sheet.style.setProperty('--asked', hex);
    document.dispatchEvent(new CustomEvent('asked-colour', { detail: hex }));
  }
  setTallAside(sheet);
  return sheet;
}

/** So much higher than wide, a picture stands beside the words until somebody enlarges it. */
const TALL = 1.3;

/** A tall picture pushes what is read or pressed off the screen: it goes to the side, under the number. */
function setTallAside(sheet: HTMLElement): void {
  for (const gallery of sheet.querySelectorAll<HTMLElement>(':scope > .gallery')) {
    const images = gallery.querySelectorAll('img');
    const [image] = images;
    if (images.length !== 1 || !image || image.height < TALL * image.width) continue;
    gallery.classList.add('aside');
    sheet.querySelector(':scope > h2')?.after(gallery);
  }
}

/** Files come from the page's own server, below the page's address: the address in the message is the host's. */
export function fileAddress(url: string): string {
  const { pathname } = new URL(url, location.origin);
  return pathname.slice(pathname.indexOf('/files/') + 1);
}

function picture({ url, width, height }: Media, description: string | null | undefined, { say }: Hands) {
  const source = fileAddress(url);
  const name = decodeURIComponent(source.split('/').at(-1) ?? '');
  const image = element('img', {
    src: source,
    alt: description || say.pictureFrom({ name }),
    loading: 'lazy',
    ...(width && height && { width, height }),
  });
  const link = element('a', { href: source, target: '_blank', rel: 'noopener', class: 'picture' }, image);
  // A press enlarges it where it stands; with Ctrl or the middle button it opens as any link does.
  link.addEventListener('click', event => {
    if (event.ctrlKey || event.metaKey || event.shiftKey) return;
    event.preventDefault();
    link.classList.toggle('large');
  });
  return link;
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
  if (custom_id !== undefined && isFold(custom_id)) return foldElement(label, custom_id, hands);
  const button = element('button', { type: 'button', class: STYLES[style] ?? 'plain' }, label);
  button.disabled = disabled === true;
  button.addEventListener('click', () => void whileBusy(button, () => hands.press(custom_id ?? '', label)));
  return button;
}

/** The start of the custom id of a button that opens a fold. */
const isFold = (customId: string): boolean => /^\d+~g~fold\.open~/.test(customId);

/** A fold opens where it stands: what the press brings is put into it when it comes. */
function foldElement(label: string, customId: string, hands: Hands): HTMLElement {
  const body = element('div', { class: 'fold-body' });
  const working = element('p', { class: 'working' }, hands.say.working);
  const fold = element(
    'details',
    { class: 'fold', 'data-fold': customId },
    element('summary', {}, label.replace(/^▸ /, '')),
    body,
  );
  fold.addEventListener('toggle', () => {
    if (!fold.open || body.childElementCount > 0) return;
    body.append(working);
    void hands.press(customId, label).finally(() => working.remove());
  });
  return fold;
}
