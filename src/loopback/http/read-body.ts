import type { IncomingMessage } from 'node:http';
import busboy from 'busboy';
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
  if (type.startsWith('multipart/form-data')) return readMultipart(request, limit);
  const chunks: Buffer[] = [];
  let size = 0;
  for await (const chunk of request as AsyncIterable<Buffer>) {
    size += chunk.byteLength;
    if (size > limit) throw refusal('request-size');
    chunks.push(chunk);
  }
  return size === 0 ? nothing : { ...parsed(Buffer.concat(chunks).toString('utf8')), uploads: [] };
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
function readMultipart(request: IncomingMessage, limit: number): Promise<Body> {
  return new Promise((resolve, reject) => {
    const uploads: Upload[] = [];
    let payload = '{}';
    let size = 0;
    const form = busboy({ headers: request.headers, limits: { fieldSize: limit } });
    form.on('field', (name, value) => {
      if (name === 'payload_json') payload = value;
    });
    form.on('file', (name, stream, info) => {
      const chunks: Buffer[] = [];
      stream.on('data', (chunk: Buffer) => {
        size += chunk.byteLength;
        if (size > limit) reject(refusal('request-size'));
        else chunks.push(chunk);
      });
      stream.on('end', () => {
        const index = /^files\[(\d+)\]$/.exec(name)?.[1] ?? name;
        uploads.push({
          index,
          name: info.filename ?? 'unknown',
          bytes: Buffer.concat(chunks),
          ...mimeOf(info.mimeType),
        });
      });
    });
    form.on('close', () => {
      try {
        resolve({ ...parsed(payload), uploads });
      } catch (error) {
        reject(error);
      }
    });
    form.on('error', reject);
    request.pipe(form);
  });
}

/** What a sender did not know is better guessed from the name. */
const mimeOf = (type: string): { readonly contentType?: string } =>
  type === 'application/octet-stream' || type === 'text/plain' ? {} : { contentType: type };
