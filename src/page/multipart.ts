import type { IncomingMessage } from 'node:http';
import { Readable } from 'node:stream';
import type { MemberFile } from '../loopback/index.ts';
import type { Files } from './actions.ts';

/** Bytes of one request at most: what the platform itself takes, and room for the words around it. */
const MOST_BYTES = 26 * 1024 * 1024;

/** What a page sent: the JSON part called `say`, and files by the name of their part. */
export type MultipartForm = { readonly say: unknown; readonly files: Files };

/** Reads a request of the page. Undefined when it is too large or not what the page sends. */
export async function readMultipart(request: IncomingMessage): Promise<MultipartForm | undefined> {
  const length = Number(request.headers['content-length']);
  if (!(length > 0 && length <= MOST_BYTES)) return undefined;
  const headers = { 'content-type': request.headers['content-type'] ?? '' };
  const body = Readable.toWeb(request) as ReadableStream<Uint8Array>;
  const form = await new Response(body, { headers }).formData().catch(() => undefined);
  const say = form?.get('say');
  if (!form || typeof say !== 'string') return undefined;
  const files = new Map<string, readonly MemberFile[]>();
  for (const [name, part] of form)
    if (typeof part !== 'string') files.set(name, [...(files.get(name) ?? []), await memberFile(part)]);
  try {
    return { say: JSON.parse(say), files };
  } catch {
    return undefined;
  }
}

const memberFile = async (file: File): Promise<MemberFile> => ({
  name: file.name,
  bytes: new Uint8Array(await file.arrayBuffer()),
  ...(file.type && { contentType: file.type }),
});
