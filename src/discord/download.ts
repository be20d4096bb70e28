import { Refusal, refuse } from '../engine/refusal.ts';

declare module '../engine/refusal.ts' {
  interface Reasons {
    'file-not-fetched': Record<string, never>;
    'file-too-large': { most: number };
  }
}

/** Most bytes of one file we take into memory, 25 MiB. */
export const MOST_FILE_BYTES = 25 * 1024 * 1024;
const PATIENCE_MS = 10_000;

/** Where the platform keeps what members attach. Source: platform documentation, Reference > Signed Attachment CDN URLs. */
const ATTACHMENT_HOSTS = ['https://cdn.discordapp.com', 'https://media.discordapp.net'];

/** The origins that attachments may come from; with an interface of our own, its origin besides. */
export const attachmentOrigins = (api?: string): ReadonlySet<string> =>
  new Set([...ATTACHMENT_HOSTS, ...(api === undefined ? [] : [new URL(api).origin])]);

/**
 * Fetches an attachment whose platform claims `size` bytes. Throws a Refusal when it is over 25 MiB (as claimed
 * or as it arrives) or cannot be fetched: links to attachments run out after a while. An address outside
 * `origins` is not even tried, nor one that leads on to another.
 */
export async function download(url: string, size: number, origins: ReadonlySet<string>): Promise<Uint8Array> {
  if (!origins.has(originOf(url))) return refuse('file-not-fetched', {});
  const tooLarge = () => refuse('file-too-large', { most: MOST_FILE_BYTES });
  if (size > MOST_FILE_BYTES) tooLarge();
  const response = await fetch(url, { signal: AbortSignal.timeout(PATIENCE_MS), redirect: 'error' }).catch(
    () => undefined,
  );
  if (!response?.ok || !response.body) return refuse('file-not-fetched', {});
  return bytesOf(response.body);
}

/** All bytes of a body, the time for which the signal of its request limits. Throws the Refusals of {@link download}. */
async function bytesOf(body: AsyncIterable<Uint8Array>): Promise<Uint8Array> {
  const pieces: Uint8Array[] = [];
  let length = 0;
  try {
    for await (const piece of body) {
      length += piece.byteLength;
      if (length > MOST_FILE_BYTES) refuse('file-too-large', { most: MOST_FILE_BYTES });
      pieces.push(piece);
    }
  } catch (error) {
    if (error instanceof Refusal) throw error;
    // The line broke off, or the time ran out.
    refuse('file-not-fetched', {});
  }
  return new Uint8Array(Buffer.concat(pieces));
}

const originOf = (url: string): string => (URL.canParse(url) ? new URL(url).origin : '');
