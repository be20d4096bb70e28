import type { IncomingMessage } from 'node:http';
import { refusal } from '../refusals/findings.ts';
import { isRecord, type Json } from '../state/json.ts';
import type { Upload } from '../writing/write.ts';

export interface Body {
  readonly body: Json;
  readonly list: readonly unknown[] | undefined;
  readonly uploads: readonly Upload[];
}

const nothing: Body = { body: {}, list: undefined, uploads: [] };

/** Reads JSON or multipart form data of at most `limit` bytes; refuses more, and what is not JSON. */
export async function readBody(request: IncomingMessage, limit: number): Promise<Body> {
  const type = request.headers['content-type'] ?? '';
  const chunks: Buffer<ArrayBuffer>[] = [];
  let size = 0;
  for await (const chunk of request as AsyncIterable<Buffer<ArrayBuffer>>) {
    size += chunk.byteLength;
    if (size > limit) throw refusal('request-size');
    chunks.push(chunk);
  }
  const bytes = Buffer.concat(chunks);
  if (type.startsWith('multipart/form-data')) return readMultipart(bytes, type);
  return size === 0 ? nothing : { ...parsed(bytes.toString('utf8')), uploads: [] };
}

function parsed(text: string): Omit<Body, 'uploads'> {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    throw refusal('body-json');
  }
  if (Array.isArray(value)) return { body: {}, list: value };
  return { body: isRecord(value) ? value : {}, list: undefined };
}

/** Parts may come in any order: discord.js sends the files before `payload_json`. */
async function readMultipart(bytes: Buffer<ArrayBuffer>, type: string): Promise<Body> {
  const form = await new Response(bytes, { headers: { 'content-type': type } })
    .formData()
    .catch(() => undefined);
  if (!form) throw refusal('body-json');
  const parts = [...form];
  const files = parts.filter((part): part is [string, File] => typeof part[1] !== 'string');
  const payload = form.get('payload_json');
  return {
    ...parsed(typeof payload === 'string' ? payload : '{}'),
    uploads: await Promise.all(files.map(upload)),
  };
}

const upload = async ([field, file]: [string, File]): Promise<Upload> => ({
  index: /^files\[(\d+)\]$/.exec(field)?.[1] ?? field,
  name: file.name,
  bytes: Buffer.from(await file.arrayBuffer()),
  ...mimeOf(file.type),
});

/** What a sender did not know is better guessed from the name. */
const mimeOf = (type: string): { readonly contentType?: string } =>
  type === '' || type === 'application/octet-stream' || type === 'text/plain' ? {} : { contentType: type };
