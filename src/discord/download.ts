import { refuse } from '../engine/refusal.ts';

declare module '../engine/refusal.ts' {
  interface Reasons {
    'file-not-fetched': Record<string, never>;
    'file-too-large': { most: number };
  }
}

/** Most bytes of one file we take into memory, 25 MiB. */
export const MOST_FILE_BYTES = 25 * 1024 * 1024;
const PATIENCE_MS = 10_000;

/**
 * Fetches an attachment whose platform claims `size` bytes. Throws a Refusal when it is over 25 MiB (as claimed
 * or as it arrives) or cannot be fetched: links to attachments run out after a while, and the platform's lead to no
 * other address.
 */
export async function download(url: string, size: number): Promise<Uint8Array> {
  const tooLarge = () => refuse('file-too-large', { most: MOST_FILE_BYTES });
  if (size > MOST_FILE_BYTES) tooLarge();
  const response = await fetch(url, { redirect: 'error', signal: AbortSignal.timeout(PATIENCE_MS) }).catch(
    () => undefined,
  );
  if (!response?.ok || !response.body) return refuse('file-not-fetched', {});
  const pieces: Uint8Array[] = [];
  let length = 0;
  for await (const piece of response.body) {
    length += piece.byteLength;
    if (length > MOST_FILE_BYTES) tooLarge();
    pieces.push(piece);
  }
  return new Uint8Array(Buffer.concat(pieces));
}
