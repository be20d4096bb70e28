import type { Asked, Shown, Waiting } from '../model.ts';
import { type Component, type Hands, whileBusy } from './component.ts';
import { componentNodes, fileAddress } from './components.ts';
import { element } from './element.ts';

/** What can be done with a whole message. */
export type Around = Hands & {
  readonly language: string;
  readonly entries: readonly { readonly name: string; readonly label: string }[];
  point(entry: string): Promise<void>;
  putAway(): Promise<void>;
};

/** A message on the page: what was asked, and the sheet with the answer. */
export function entryElement(message: Shown, around: Around): HTMLElement {
  const { say } = around;
  const { asked, onlyYou, pending, fromBot } = message;
  const kind = fromBot ? 'answer' : 'note';
  return element(
    'article',
    { class: `entry ${kind}${onlyYou ? ' only-you' : ''}`, 'data-message': message.id },
    asked && askedLine(asked, around),
    !fromBot && element('p', { class: 'asked' }, say.wrote({ name: message.author })),
    onlyYou && element('p', { class: 'badge' }, say.onlyYou),
    pending
      ? element('p', { class: 'working' }, say.working)
      : withFewButtons(element('div', { class: 'body' }, ...bodyNodes(message, around)), around),
    element('footer', {}, stamp(message, around), ...doings(message, around)),
  );
}

/** So many buttons show on a phone before the rest waits behind one more. */
const MOST_BUTTONS = 2;

/** On a phone the first buttons show, and one that brings the others; a wide screen has room for all. */
function withFewButtons(body: HTMLElement, { say }: Pick<Around, 'say'>): HTMLElement {
  const buttons = [...body.querySelectorAll<HTMLElement>(':scope > .row > button')];
  const extra = buttons.slice(MOST_BUTTONS);
  if (extra.length < 2) return body;
  for (const one of extra) one.classList.add('extra');
  const more = element('button', { type: 'button', class: 'more' }, say.moreButtons({ count: extra.length }));
  more.addEventListener('click', () => {
    body.classList.add('all');
    extra[0]?.focus();
  });
  extra[0]?.before(more);
  return body;
}

/** A question that nothing answers yet. */
export const waitingElement = (
  { by, line, interaction }: Waiting,
  around: Pick<Around, 'say'>,
): HTMLElement =>
  element(
    'article',
    { class: 'entry answer', 'data-waiting': interaction },
    askedLine({ by, line }, around),
    element('p', { class: 'working' }, around.say.working),
  );

/** A command stands as it was typed; anything else is told: "Ana pressed …". */
const askedLine = ({ by, line }: Asked, { say }: Pick<Around, 'say'>): HTMLElement =>
  line.startsWith('/')
    ? element('p', { class: 'asked' }, `${say.asked({ name: by })} `, element('code', {}, line))
    : element('p', { class: 'asked' }, `${by} ${line}`);

/** What a message says and shows. */
export function bodyNodes(message: Shown, around: Around): readonly Node[] {
  const { text, components, files } = message;
  if (components.length > 0)
    return components.flatMap(one => componentNodes(one as unknown as Component, around));
  return [
    ...(text === '' ? [] : [element('p', { class: 'words' }, text)]),
    ...files.map(({ id, name, size, contentType, width, height }) => {
      const source = fileAddress(`/files/${id}/${encodeURIComponent(name)}`);
      const content = /^image\/(png|jpeg|webp|gif)$/.test(contentType)
        ? element('img', {
            src: source,
            alt: around.say.pictureFrom({ name }),
            loading: 'lazy',
            width,
            height,
          })
        : around.say.file({ name, kilobytes: Math.ceil(size / 1024) });
      return element('a', { href: source, target: '_blank', rel: 'noopener', class: 'picture' }, content);
    }),
  ];
}

function stamp({ at, edited }: Shown, { say, language }: Around): HTMLElement {
  const time = new Date(at);
  const isToday = time.toDateString() === new Date().toDateString();
  const text = time.toLocaleString(language, {
    ...(!isToday && { day: 'numeric', month: 'short' }),
    hour: '2-digit',
    minute: '2-digit',
  });
  return element('time', { datetime: at }, edited ? `${text}, ${say.edited}` : text);
}

function doings({ onlyYou, pending, fromBot }: Shown, around: Around): readonly Node[] {
  const doing = (label: string, work: () => Promise<void>) => {
    const button = element('button', { type: 'button', class: 'quiet' }, label);
    button.addEventListener('click', () => void whileBusy(button, work));
    return button;
  };
  return [
    ...(fromBot ? [] : around.entries.map(({ name, label }) => doing(label, () => around.point(name)))),
    ...(fromBot && !pending ? [copyButton(around), printButton(around)] : []),
    ...(onlyYou && !pending ? [doing(around.say.putAway, around.putAway)] : []),
  ];
}

/** Copies what the entry says; the button says when it is done. */
function copyButton({ say }: Around): HTMLElement {
  const button = element('button', { type: 'button', class: 'quiet' }, say.copy);
  button.addEventListener('click', async () => {
    const body = button.closest('.entry')?.querySelector<HTMLElement>('.sheet, .body');
    // What is pressed and what is folded is not part of what was said.
    body?.classList.add('to-copy');
    // biome-ignore lint/performance/useDomNodeTextContent: lines stay lines, and what is hidden stays out.
    const said = body?.innerText ?? '';
    body?.classList.remove('to-copy');
    await navigator.clipboard.writeText(said.trim());
    button.textContent = say.copied;
  });
  return button;
}

/** Prints this entry alone, folds open: the style for print leaves out all the rest. */
function printButton({ say }: Around): HTMLElement {
  const button = element('button', { type: 'button', class: 'quiet' }, say.print);
  button.addEventListener('click', () => {
    const entry = button.closest('.entry');
    entry?.classList.add('to-print');
    window.print();
    entry?.classList.remove('to-print');
  });
  return button;
}
