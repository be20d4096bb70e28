import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { expect, test } from 'vitest';
import { attachmentOrigins, download, MOST_FILE_BYTES } from '../../src/discord/download.ts';

const of = (url: string, size = 10) => download(url, size, attachmentOrigins());

test('an address that is not where attachments lie is not even tried', async () => {
  await expect(of('http://127.0.0.1:1/bar.jpg')).rejects.toMatchObject({ id: 'file-not-fetched' });
  await expect(of('file:///etc/passwd')).rejects.toMatchObject({ id: 'file-not-fetched' });
  await expect(of('bar.jpg')).rejects.toMatchObject({ id: 'file-not-fetched' });
});

test('more than 25 MiB is refused before a byte is fetched', async () => {
  const [origin] = attachmentOrigins();
  await expect(of(`${origin}/bar.jpg`, MOST_FILE_BYTES + 1)).rejects.toMatchObject({
    id: 'file-too-large',
    values: { most: 25 * 1024 * 1024 },
  });
});

/** A server on this machine that says it sends 20 bytes, sends ten, and then does what it is told. */
async function fetchedFrom(then: 'hangs-up' | 'goes-on'): Promise<unknown> {
  const server = createServer((_, response) => {
    response.writeHead(200, { 'content-length': 20 });
    response.write(new Uint8Array(10));
    if (then === 'goes-on') response.end(new Uint8Array(10));
    else setImmediate(() => response.destroy());
  });
  await new Promise<void>(resolve => server.listen(0, '127.0.0.1', resolve));
  try {
    const origin = `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
    return await download(`${origin}/bar.jpg`, 20, attachmentOrigins(origin));
  } finally {
    server.closeAllConnections();
    await new Promise(resolve => server.close(resolve));
  }
}

test('a file whose download breaks off could not be fetched: no fault of ours', async () => {
  await expect(fetchedFrom('hangs-up')).rejects.toMatchObject({ id: 'file-not-fetched' });
  expect(await fetchedFrom('goes-on')).toHaveLength(20);
});
