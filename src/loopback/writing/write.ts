/** Turns a checked body into a stored message: the one place where messages are created, edited and deleted. */
import type { APIMessage } from 'discord-api-types/v10';
import type { Kernel } from '../kernel.ts';
import { checkMessage, flags } from '../refusals/message.ts';
import { keptName, type StoredFile } from '../state/files.ts';
import { type Json, listOf, numberOf, recordOf, textOf, wordOf } from '../state/json.ts';
import type { MessageRecord } from '../state/messages.ts';
import { botJson } from '../state/serializers.ts';
import { finishComponents } from './finish-components.ts';
import { pinged } from './mentions.ts';

/** A file part of a multipart request; `index` is the n of `files[n]`. */
export interface Upload {
  readonly index: string;
  readonly name: string;
  readonly bytes: Uint8Array;
  readonly contentType?: string | undefined;
}

export interface Draft {
  readonly body: Json;
  readonly uploads: readonly Upload[];
  readonly channelId: string;
  readonly guildId: string | undefined;
  readonly visibleTo: string;
  /** User object; default: the bot. */
  readonly author?: Json;
  readonly interactionId?: string;
  /** Further fields: type, interaction metadata, reference. */
  readonly extra?: Json;
  /** Stands for an answer still to come. */
  readonly pending?: boolean;
}

/** Throws what the platform would answer to this body. `at`: where the body sits in the request. */
export function checkDraft(
  kernel: Kernel,
  draft: Pick<Draft, 'body' | 'uploads'>,
  at: readonly string[],
  existing?: APIMessage,
): void {
  checkMessage({
    body: draft.body,
    ...(existing && { existing: existing as unknown as Json }),
    uploads: draft.uploads.map(upload => ({
      index: upload.index,
      name: keptName(upload.name),
      size: upload.bytes.byteLength,
    })),
    attachmentSizeLimit: kernel.settings.attachmentSizeLimit,
    at,
  });
}

/** Stores a message whose body has been checked. */
export function createMessage(kernel: Kernel, draft: Draft): MessageRecord {
  const { body } = draft;
  const attachments = storeFiles(kernel, draft, []);
  const kept = numberOf(body.flags, 0) & ~flags.loading;
  const ephemeral = draft.visibleTo !== 'everyone' ? flags.ephemeral : 0;
  const text = textOf(body.content) ?? '';
  const components = finishComponents(kernel, listOf(body.components), attachments);
  const message = {
    id: kernel.ids.next(),
    channel_id: draft.channelId,
    type: 0,
    author: draft.author ?? botJson(kernel.room),
    content: text,
    timestamp: new Date(kernel.settings.now()).toISOString(),
    edited_timestamp: null,
    tts: body.tts === true,
    ...pinged(kernel.room, body, components, draft.guildId),
    attachments,
    embeds: listOf(body.embeds),
    pinned: false,
    flags: kept | ephemeral | (draft.pending ? flags.loading : 0),
    components,
    ...(body.nonce !== undefined && body.nonce !== null && { nonce: body.nonce }),
    ...draft.extra,
  } as unknown as APIMessage;
  return save(kernel, 'message-created', {
    message,
    ...(draft.guildId !== undefined && { guildId: draft.guildId }),
    visibleTo: draft.visibleTo,
    ...(draft.interactionId !== undefined && { interactionId: draft.interactionId }),
    pending: draft.pending ?? false,
  });
}

/** Lays a checked body over a message: fields it leaves out stay. */
export function editMessage(
  kernel: Kernel,
  record: MessageRecord,
  body: Json,
  uploads: readonly Upload[],
): MessageRecord {
  const old = record.message;
  const attachments = storeFiles(kernel, { body, uploads }, old.attachments as unknown as readonly Json[]);
  const oldFlags = numberOf(old.flags, 0);
  const components = finishComponents(kernel, listOf(body.components ?? old.components), attachments);
  const newFlags = (numberOf(body.flags, oldFlags) & ~flags.ephemeral) | (oldFlags & flags.ephemeral);
  const message = {
    ...old,
    ...(body.content !== undefined && { content: body.content ?? '' }),
    ...(body.embeds !== undefined && { embeds: listOf(body.embeds) }),
    ...pinged(kernel.room, { content: old.content, ...body }, components, record.guildId),
    components,
    attachments,
    flags: newFlags & ~flags.loading,
    edited_timestamp: record.pending ? old.edited_timestamp : new Date(kernel.settings.now()).toISOString(),
  } as unknown as APIMessage;
  return save(kernel, 'message-edited', { ...record, message, pending: false });
}

export function deleteMessage(kernel: Kernel, record: MessageRecord): void {
  const { id, channel_id: channelId } = record.message;
  kernel.record({ kind: 'message-deleted', id, channelId, visibleTo: record.visibleTo });
}

function save(
  kernel: Kernel,
  kind: 'message-created' | 'message-edited',
  record: MessageRecord,
): MessageRecord {
  kernel.record({
    kind,
    message: record.message,
    visibleTo: record.visibleTo,
    pending: record.pending,
    ...(record.guildId !== undefined && { guildId: record.guildId }),
    ...(record.interactionId !== undefined && { interactionId: record.interactionId }),
  });
  return kernel.messages.get(record.message.id) ?? record;
}

/** Stores the uploads and gives the message's attachments: listed old ones (all, when none are listed), then new ones. */
function storeFiles(
  kernel: Kernel,
  draft: Pick<Draft, 'body' | 'uploads'>,
  old: readonly Json[],
): readonly Json[] {
  const listed = draft.body.attachments;
  const fresh = new Map(draft.uploads.map(upload => [upload.index, upload]));
  const out: Json[] = Array.isArray(listed) ? [] : [...old];
  const store = (upload: Upload, details: Json): Json => {
    const name = textOf(details.filename) ?? upload.name;
    const event = kernel.files.storing(kernel.ids.next(), {
      name,
      bytes: upload.bytes,
      contentType: upload.contentType,
    });
    kernel.record(event);
    const description = textOf(details.description);
    return kernel.files.attachmentJson(
      event satisfies StoredFile,
      description === undefined ? {} : { description },
    );
  };
  for (const item of listOf(listed)) {
    const details = recordOf(item);
    const id = wordOf(details.id);
    const upload = fresh.get(id);
    const kept = old.find(file => file.id === id);
    if (upload) out.push(store(upload, details));
    else if (kept)
      out.push({
        ...kept,
        ...(textOf(details.description) !== undefined && { description: details.description }),
      });
    fresh.delete(id);
  }
  for (const upload of fresh.values()) out.push(store(upload, {}));
  return out;
}
