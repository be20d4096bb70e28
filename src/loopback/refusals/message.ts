/** Checks of a message body: what a create, an edit or a reply may carry. */
import { type Json, listOf, numberOf, recordOf, textOf, wordOf } from '../state/json.ts';
import { checkComponents } from './components.ts';
import { Findings, type Path, refusal } from './findings.ts';

export const flags = { ephemeral: 1 << 6, loading: 1 << 7, v2: 1 << 15 } as const;

export interface MessageUnderCheck {
  readonly body: Json;
  /** The message that is edited; absent when one is created. */
  readonly existing?: Json;
  /** Names and sizes of the files in this request, by their index as text. */
  readonly uploads: readonly { readonly index: string; readonly name: string; readonly size: number }[];
  /** Bytes a file. */
  readonly attachmentSizeLimit: number;
  /** Where the body sits in the request: `['data']` in a callback. */
  readonly at: Path;
}

/** Throws what the platform would answer; returns nothing when the body is fine. */
export function checkMessage(given: MessageUnderCheck) {
  const { body, at } = given;
  const found = new Findings();
  found.text('content-length', [...at, 'content'], body.content, 0);
  checkMentions(found, body.allowed_mentions, [...at, 'allowed_mentions']);
  const fileNames = checkFiles(found, given);
  const before = numberOf(given.existing?.flags, 0);
  const after = numberOf(body.flags, before);
  const v2 = ((before | after) & flags.v2) !== 0;
  if ((before & flags.v2) !== 0 && (after & flags.v2) === 0) found.add('v2-flag-kept', [...at, 'flags']);
  const merged = (field: string): unknown =>
    body[field] === undefined ? given.existing?.[field] : body[field];
  const components = listOf(merged('components'));
  if (body.components !== undefined || (v2 && (before & flags.v2) === 0))
    checkComponents(found, components, { path: [...at, 'components'], v2, fileNames: new Set(fileNames) });
  if (v2)
    for (const field of ['content', 'embeds', 'poll', 'sticker_ids'])
      if (isFilled(merged(field))) found.add('v2-excludes', [...at, field]);
  found.settle();
  const hasSomething = ['content', 'embeds', 'poll', 'sticker_ids'].some(field => isFilled(merged(field)));
  if (!hasSomething && components.length === 0 && (v2 || fileNames.length === 0))
    throw refusal('message-empty');
}

const isFilled = (value: unknown): boolean =>
  value !== undefined && value !== null && value !== '' && !(Array.isArray(value) && value.length === 0);

function checkMentions(found: Findings, given: unknown, path: Path) {
  const mentions = recordOf(given);
  for (const field of ['users', 'roles'])
    if (listOf(mentions[field]).length > 0 && listOf(mentions.parse).includes(field))
      found.add('mentions-exclusive', [...path, field]);
}

/** Checks the attachments and returns the names of the files the message will have. */
function checkFiles(found: Findings, given: MessageUnderCheck): readonly string[] {
  for (const upload of given.uploads) if (upload.size > given.attachmentSizeLimit) throw refusal('file-size');
  const kept = new Map(
    listOf(given.existing?.attachments).map(item => [textOf(recordOf(item).id) ?? '', recordOf(item)]),
  );
  const fresh = new Map(given.uploads.map(upload => [upload.index, upload.name]));
  const names: string[] = [];
  const listed = given.body.attachments;
  for (const [index, item] of listOf(listed).entries()) {
    const path = [...given.at, 'attachments', index];
    const id = wordOf(recordOf(item).id);
    found.text('attachment-description', [...path, 'description'], recordOf(item).description, 0);
    const name =
      kept.get(id)?.filename ?? (fresh.has(id) ? (recordOf(item).filename ?? fresh.get(id)) : undefined);
    if (name === undefined) found.add('attachment-unknown', [...path, 'id']);
    else names.push(wordOf(name));
    fresh.delete(id);
  }
  if (!Array.isArray(listed)) names.push(...[...kept.values()].map(file => String(file.filename)));
  names.push(...fresh.values());
  if (names.length > 10) throw refusal('files-count');
  return names;
}
