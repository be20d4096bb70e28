import type { ServerResponse } from 'node:http';
import type { Files } from '../state/files.ts';

/** Serves `/files/ID/NAME?ex=MARK`. Bytes come from members, so a browser must not run what they hold. */
export function serveFile(files: Files, url: URL, response: ServerResponse): void {
  const [, , id = ''] = url.pathname.split('/');
  const file = files.get(id);
  if (!file || !files.linkLives(url.searchParams.get('ex'))) {
    response.writeHead(404, { 'content-type': 'text/plain' }).end('This content is no longer available.');
    return;
  }
  response
    .writeHead(200, {
      'content-type': file.contentType,
      'content-length': file.bytes.byteLength,
      'content-security-policy': "sandbox; default-src 'none'",
      'x-content-type-options': 'nosniff',
    })
    .end(file.bytes);
}
