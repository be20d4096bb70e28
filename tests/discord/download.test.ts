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
