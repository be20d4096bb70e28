import { dateLocaleOf } from '../../words/locales.ts';
import type { Language } from '../model.ts';
import { element } from './element.ts';

type Span = { readonly text: string; readonly bold: boolean };

/** The platform's markup as far as answers use it: headings, small print, lists, bold, and escapes. */
export function markupNodes(content: string, language: Language): readonly HTMLElement[] {
  const blocks: HTMLElement[] = [];
  for (const line of content.split('\n')) {
    const [, mark = '', rest = ''] = /^(#{1,3} |-# |- |\d+\. )?(.*)$/s.exec(line) ?? [];
    const spans = spansOf(rest, language).map(spanNode);
    if (mark.startsWith('#')) blocks.push(element(mark.length === 4 ? 'h3' : 'h2', {}, ...spans));
    else if (mark === '-# ') blocks.push(element('p', { class: 'small' }, ...spans));
    else if (mark === '') {
      if (rest.trim() !== '') blocks.push(element('p', {}, ...spans));
    } else listAfter(blocks, mark).append(element('li', {}, ...spans));
  }
  return blocks;
}

/** The list that a line continues, or a new one that starts with the line's own number. */
function listAfter(blocks: HTMLElement[], mark: string): HTMLElement {
  const tag = mark === '- ' ? 'ul' : 'ol';
  const last = blocks.at(-1);
  if (last?.localName === tag) return last;
  const list = element(tag, tag === 'ol' ? { start: Number.parseInt(mark, 10) } : {});
  blocks.push(list);
  return list;
}

const spanNode = ({ text, bold }: Span): Node =>
  bold ? element('strong', {}, ...withPatches(text)) : element('span', {}, ...withPatches(text));

/** A text with a patch of the colour before each `#rrggbb` in it. */
export const withPatches = (text: string): readonly (Node | string)[] =>
  text
    .split(/(#[\da-f]{6}\b)/iu)
    .flatMap(part => (/^#[\da-f]{6}$/iu.test(part) ? [patch(part), part] : [part]));

/** What is inside is for eyes only: the hex beside it says the same. */
export function patch(hex: string): HTMLElement {
  const made = element('span', { class: 'patch', 'aria-hidden': 'true' });
  made.style.backgroundColor = hex;
  return made;
}

/** Text with its bold stretches; a backslash makes the sign after it plain. */
export function spansOf(text: string, language: Language): readonly Span[] {
  const spans: Span[] = [];
  let bold = false;
  let held = '';
  const end = () => {
    if (held !== '') spans.push({ text: held, bold });
    held = '';
  };
  for (let at = 0; at < text.length; at++) {
    const sign = text[at] as string;
    const mark = /^<(t:(\d+):f|@&(\d+))>/.exec(text.slice(at));
    if (mark) {
      held += mark[2] === undefined ? `@${mark[3]}` : instantOf(Number(mark[2]), language);
      at += mark[0].length - 1;
    } else if (sign === '\\' && at + 1 < text.length) {
      at++;
      held += text[at];
    } else if (text.startsWith('**', at) && (bold || /\*\*/.test(text.slice(at + 2)))) {
      at++;
      end();
      bold = !bold;
    } else held += sign;
  }
  end();
  return spans;
}

/** An instant by the reader's own clock, in the reader's language; seconds since 1970 UTC. */
const instantOf = (seconds: number, language: Language): string =>
  new Intl.DateTimeFormat(dateLocaleOf(language), { dateStyle: 'medium', timeStyle: 'short' }).format(
    seconds * 1000,
  );
