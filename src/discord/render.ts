import {
  type APIActionRowComponent,
  type APIComponentInContainer,
  type APIComponentInMessageActionRow,
  type APIMessageTopLevelComponent,
  AttachmentBuilder,
  ButtonStyle,
  ComponentType,
  escapeMarkdown,
} from 'discord.js';
import { faceOf, wholeOf } from '../conversation/faces/face.ts';
import { isGivenAgain, onceFor } from '../conversation/faces/given-again.ts';
import { textOf } from '../conversation/faces/plain-text.ts';
import { type Block, type Choice, LONGEST_LABEL, type Problem, type Reply } from '../conversation/reply.ts';
import { cut } from '../engine/text/excerpt.ts';
import type { Words } from '../words/index.ts';
import { replaceMarks, withoutMarks } from '../words/marks.ts';
import { type Written, writtenOf } from './callback.ts';

/** A message as discord.js sends it: display components only, and the files they show. */
export type Payload = {
  readonly components: readonly APIMessageTopLevelComponent[];
  readonly files: readonly AttachmentBuilder[];
  /** The JSON of the first so many of the components, where the same are sent again and again. */
  readonly written?: Written;
};

/** The platform's limit on all text of a message is 4000 characters; the rest is left for button labels. */
const MOST_TEXT = 3600;

/** Members' words are shown as they were written: nothing in them is markup, a mention or a link. */
export const plain = (text: string): string =>
  replaceMarks(MARKUP.test(text) ? escaped(text) : text, meant => `<${meant}>`);

/** Anything that could be markup. Most sentences hold none, and escaping looks for each kind in turn. */
const MARKUP = /[*_~|`[\]#\\<]|^\s*(?:-\s|\d+\.\s)/m;

const escaped = (text: string): string =>
  escapeMarkdown(text, { heading: true, bulletedList: true, maskedLink: true })
    // The library's own escape of numbered lists would also hit "38.5 g" at the start of a line.
    .replaceAll(/^(\s*\d+)\.(?=\s)/gm, '$1\\.')
    .replaceAll('<', '\\<');

/** A reply as components: its face with its folds as buttons where it has such, else all of it. */
export function payloadOf(given: Reply<string>, say: Words): Payload {
  const { unfold = [] } = given;
  const shows = unfold.length > 0 ? faceOf : wholeOf;
  const name = `${shows.name} in ${say.language} on the platform`;
  const { components, files, written } = onceFor(given, name, () => {
    const body = bodyOf(shows(given), say);
    return isGivenAgain(given) ? { ...body, written: writtenOf(body.components) } : body;
  });
  const folds = unfold.map(
    ({ id, follow }): Choice<string> => ({
      kind: 'button',
      label: `${FOLD_SIGN} ${say.folds.names[id]}`,
      follow,
    }),
  );
  const { choices = [] } = given;
  const all = [...components, ...choiceRows(choices), ...choiceRows(folds)];
  return { components: all, files, ...(written && { written }) };
}

/** Stands before the name of a fold on its button. */
const FOLD_SIGN = '▸';

/** The text and pictures of a reply. Text past the platform's limit goes into an attached file, nothing is lost. */
function bodyOf(reply: Reply<string>, say: Words): Payload {
  const pieces = [
    `## ${plain(reply.headline)}`,
    ...reply.blocks.map(block => blockMarkup(block)),
    cautionsMarkup(reply, say),
  ];
  const shown = withinLimit(pieces, say);
  const parts: APIComponentInContainer[] = [];
  pushText(parts, shown.pieces[0]);
  // A tall picture never stands before what keeps one from harm.
  const later: APIComponentInContainer[] = [];
  const pictures = reply.cautions.some(({ firm }) => firm) ? later : parts;
  reply.blocks.forEach((block, index) => {
    if (block.kind === 'picture') pictures.push(pictureComponent(block));
    else if (block.kind === 'file')
      parts.push({ type: ComponentType.File, file: { url: `attachment://${block.name}` } });
    else pushText(parts, shown.pieces[index + 1]);
  });
  pushText(parts, shown.pieces.at(-1));
  parts.push(...later);
  const files = reply.blocks.flatMap(fileOf);
  if (shown.cut) {
    const name = 'answer.txt';
    files.push(new AttachmentBuilder(Buffer.from(withoutMarks(textOf(reply, say))), { name }));
    parts.push({ type: ComponentType.File, file: { url: `attachment://${name}` } });
  }
  const colour = colourOf(reply);
  return {
    components: [
      {
        type: ComponentType.Container,
        components: parts,
        ...(colour !== undefined && { accent_color: colour }),
      },
    ],
    files,
  };
}

/** The colour that a reply is about, as the platform writes one: the stripe beside the message. */
function colourOf({ blocks }: Reply<string>): number | undefined {
  for (const block of blocks)
    if (block.kind === 'measures')
      for (const { hex } of block.measures) if (hex) return Number.parseInt(hex.slice(1), 16);
  return undefined;
}

/** A problem as components: one sentence, and what may have been meant to press. */
export const problemPayload = ({ text, choices = [] }: Problem): Payload => ({
  components: [{ type: ComponentType.TextDisplay, content: plain(text) }, ...choiceRows(choices)],
  files: [],
});

/** A payload as the library takes it: nobody is called by what members wrote. */
export const messageOf = ({ components, files }: Payload) => ({
  // They are as the platform wants them: plain objects the library would go through once more, name by name.
  components: components.map(component => ({ toJSON: () => component })),
  files: [...files],
  allowedMentions: { parse: [] },
});

/** Texts that follow one another share a component: a message holds 40 at most. */
function pushText(parts: APIComponentInContainer[], content: string | undefined): void {
  if (!content) return;
  const last = parts.at(-1);
  if (last?.type === ComponentType.TextDisplay) last.content += `\n${content}`;
  else parts.push({ type: ComponentType.TextDisplay, content });
}

function blockMarkup(block: Block): string {
  switch (block.kind) {
    case 'measures':
      return block.measures
        .map(
          ({ label, value, note }) =>
            `**${plain(label)}:** ${plain(value)}${note ? `\n-# ${plain(note)}` : ''}`,
        )
        .join('\n');
    case 'text':
      return block.folds ? small(block.text) : plain(block.text);
    case 'rows': {
      const rows = block.rows.map((row, index) => `${block.numbered ? `${index + 1}.` : '-'} ${plain(row)}`);
      return [...(block.title ? [`**${plain(block.title)}**`] : []), ...rows].join('\n');
    }
    case 'picture':
    case 'file':
      return '';
  }
}

const small = (text: string) =>
  text
    .split('\n')
    .filter(Boolean)
    .map(line => `-# ${plain(line)}`)
    .join('\n');

const cautionsMarkup = ({ cautions }: Reply<string>, say: Words): string =>
  cautions.length === 0
    ? ''
    : [`**${plain(say.conversation.cautions)}**`, ...cautions.map(({ text }) => `- ${plain(text)}`)].join(
        '\n',
      );

/** Headline and cautions always stay; the middle is cut from the end where the whole is too long. */
function withinLimit(pieces: readonly string[], say: Words): { pieces: readonly string[]; cut: boolean } {
  const length = (list: readonly string[]) => list.reduce((sum, piece) => sum + piece.length + 1, 0);
  if (length(pieces) <= MOST_TEXT) return { pieces, cut: false };
  const first = cut(pieces[0] ?? '', 500);
  const last = cutLines(pieces.at(-1) ?? '', 1200);
  const notice = small(say.conversation.cut);
  let room = MOST_TEXT - length([first, last, notice]);
  const middle = pieces.slice(1, -1).map(piece => {
    const kept = cutLines(piece, room);
    room -= kept.length + 1;
    return kept;
  });
  return { pieces: [first, ...middle, [last, notice].filter(Boolean).join('\n')], cut: true };
}

/** The first lines of a text that fit, nothing where not even one does. */
const cutLines = (text: string, room: number): string =>
  text.length <= room ? text : text.slice(0, Math.max(0, text.lastIndexOf('\n', room)));

const pictureComponent = ({ name, alt }: Extract<Block, { kind: 'picture' }>): APIComponentInContainer => ({
  type: ComponentType.MediaGallery,
  items: [{ media: { url: `attachment://${name}` }, description: cut(withoutMarks(alt), 1024) }],
});

function fileOf(block: Block): readonly AttachmentBuilder[] {
  if (block.kind === 'picture') return [new AttachmentBuilder(Buffer.from(block.png), { name: block.name })];
  return block.kind === 'file' ? [new AttachmentBuilder(Buffer.from(block.bytes), { name: block.name })] : [];
}

type Row = APIActionRowComponent<APIComponentInMessageActionRow>;

const STYLES = {
  main: ButtonStyle.Primary,
  plain: ButtonStyle.Secondary,
  danger: ButtonStyle.Danger,
} as const;

/** Five buttons a row, a menu a row of its own. */
function choiceRows(choices: readonly Choice<string>[]): readonly Row[] {
  const rows: Row[] = [];
  for (const choice of choices) {
    if (choice.kind === 'menu') {
      rows.push(menuRow(choice));
      continue;
    }
    const last = rows.at(-1);
    const button: APIComponentInMessageActionRow = {
      type: ComponentType.Button,
      style: STYLES[choice.weight ?? 'plain'],
      label: cut(withoutMarks(choice.label), LONGEST_LABEL),
      custom_id: choice.follow,
    };
    if (last && last.components.length < 5 && last.components[0]?.type === ComponentType.Button)
      last.components.push(button);
    else rows.push({ type: ComponentType.ActionRow, components: [button] });
  }
  return rows;
}

const menuRow = ({ label, items, least, most, follow }: Extract<Choice<string>, { kind: 'menu' }>): Row => ({
  type: ComponentType.ActionRow,
  components: [
    {
      type: ComponentType.StringSelect,
      custom_id: follow,
      placeholder: cut(withoutMarks(label), 150),
      min_values: least,
      max_values: most,
      options: items.slice(0, 25).map(({ label: text, value, note }) => ({
        label: cut(withoutMarks(text), 100),
        value,
        ...(note && { description: cut(withoutMarks(note), 100) }),
      })),
    },
  ],
});
