import { extname } from 'node:path';
import type { APIMessage } from 'discord-api-types/v10';
import type { HostEvent, HostEventBody } from '../interface/events.ts';
import type { FileView } from '../interface/views.ts';
import type { Json } from './json.ts';
import { pictureSize } from './picture-size.ts';

export interface StoredFile {
  readonly id: string;
  readonly name: string;
  readonly contentType: string;
  readonly bytes: Uint8Array;
}

const contentTypes: Readonly<Record<string, string>> = {
  '.png': 'image/png',
  '.jpg': 'image/jpeg',
  '.jpeg': 'image/jpeg',
  '.webp': 'image/webp',
  '.gif': 'image/gif',
  '.heic': 'image/heic',
  '.heif': 'image/heif',
  '.avif': 'image/avif',
  '.svg': 'image/svg+xml',
  '.txt': 'text/plain; charset=utf-8',
  '.csv': 'text/csv; charset=utf-8',
  '.json': 'application/json',
  '.pdf': 'application/pdf',
};

/** The media type a file's name suggests. */
export const contentTypeOf = (name: string): string =>
  contentTypes[extname(name).toLowerCase()] ?? 'application/octet-stream';

/** A file's name as the platform keeps it: letters, digits, underscore, dash and dot. */
export const keptName = (name: string): string =>
  name.replaceAll(' ', '_').replaceAll(/[^A-Za-z0-9_.-]/g, '') || 'unknown';

/** Files by id, their addresses, and the expiry of addresses. */
export class Files {
  readonly #files = new Map<string, StoredFile>();
  /** Addresses carry it; those with an older one are dead. */
  #generation = 0;
  /** `http://127.0.0.1:PORT/SECRET` */
  readonly #origin: () => string;

  constructor(origin: () => string) {
    this.#origin = origin;
  }

  apply(event: HostEvent): void {
    if (event.kind === 'file-stored') this.#files.set(event.id, event);
  }

  get(id: string): StoredFile | undefined {
    return this.#files.get(id);
  }

  /** The event that stores a file. */
  storing(
    id: string,
    file: { name: string; bytes: Uint8Array; contentType?: string | undefined },
  ): HostEventBody & { kind: 'file-stored' } {
    const name = keptName(file.name);
    return {
      kind: 'file-stored',
      id,
      name,
      contentType: file.contentType ?? contentTypeOf(name),
      bytes: file.bytes,
    };
  }

  expireLinks(): void {
    this.#generation += 1;
  }

  /** Whether an address with this mark still works. */
  linkLives(mark: string | null): boolean {
    return mark === this.#generation.toString(36);
  }

  urlOf(file: Pick<StoredFile, 'id' | 'name'>): string {
    return `${this.#origin()}/files/${file.id}/${file.name}?ex=${this.#generation.toString(36)}`;
  }

  /** The same JSON with every file address made fresh: origin and mark of now. */
  freshen<T>(json: T): T {
    const text = JSON.stringify(json);
    const start = `${this.#origin()}/files/`;
    const mark = this.#generation.toString(36);
    return JSON.parse(
      text.replaceAll(
        /http:\/\/127\.0\.0\.1:\d+(?:\/[0-9a-f]{64})?\/files\/([^"?]*)\?ex=[0-9a-z]+/g,
        (_, tail: string) => `${start}${tail}?ex=${mark}`,
      ),
    ) as T;
  }

  /** A message with fresh addresses; one without files is given back as it is. */
  freshMessage(message: APIMessage): APIMessage {
    const isBare = message.attachments.length === 0 && !message.message_snapshots;
    return isBare ? message : this.freshen(message);
  }

  /** The platform's attachment object. */
  attachmentJson(file: StoredFile, extra: Json = {}): Json {
    const url = this.urlOf(file);
    return {
      id: file.id,
      filename: file.name,
      size: file.bytes.byteLength,
      url,
      proxy_url: url,
      content_type: file.contentType,
      ...pictureSize(file.bytes),
      ...extra,
    };
  }

  /** The file as a member sees it. */
  seen(file: StoredFile, description?: string): FileView {
    return {
      id: file.id,
      name: file.name,
      size: file.bytes.byteLength,
      contentType: file.contentType,
      ...(description !== undefined && { description }),
      url: this.urlOf(file),
      bytes: () => file.bytes,
    };
  }
}
