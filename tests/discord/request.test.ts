import { once } from 'node:events';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { DefaultRestOptions } from 'discord.js';
import { expect, test } from 'vitest';
import { sendRequest } from '../../src/discord/request.ts';
import { Tally } from '../../src/discord/rest.ts';

type Init = Parameters<typeof sendRequest>[1];

/** A host that answers with a status and headers, and tells back what came. */
async function host(status: number, headers: Record<string, string | string[]> = {}) {
  const server = createServer((request, response) => {
    const came: Buffer[] = [];
    request.on('data', (piece: Buffer) => came.push(piece));
    request.on('end', () => {
      const { method, headers: sent } = request;
      const body = Buffer.concat(came).toString();
      response.writeHead(status, { 'Content-Type': 'application/json', ...headers });
      response.end(JSON.stringify({ method, body, type: sent['content-type'], mark: sent['x-mark'] }));
    });
  });
  server.listen(0, '127.0.0.1');
  await once(server, 'listening');
  const { port } = server.address() as AddressInfo;
  return { url: `http://127.0.0.1:${port}/here`, [Symbol.asyncDispose]: async () => void server.close() };
}

const post = (body: unknown): Init =>
  ({ method: 'POST', headers: { 'X-Mark': 'm', 'Content-Type': 'application/json' }, body }) as Init;

test.each([200, 404, 429, 503])('says of status %i what the library’s own way says', async status => {
  await using there = await host(status, { 'Retry-After': '1.5', Via: ['1.1 one', '1.1 two'] });
  const [ours, theirs] = [
    await sendRequest(there.url, post('{"a":1}')),
    await DefaultRestOptions.makeRequest(there.url, post('{"a":1}')),
  ];
  const told = ({ ok, status, statusText, headers }: typeof ours) => ({
    ok,
    status,
    statusText,
    named: ['retry-after', 'Retry-After', 'Content-Type', 'via', 'X-Nothing'].map(name => [
      headers.get(name),
      headers.has(name),
    ]),
  });
  expect(told(ours)).toEqual(told(theirs));
  expect(await ours.json()).toEqual(await theirs.json());
});

test('sends method, headers and body as given, and reads the body as text or bytes', async () => {
  await using there = await host(200);
  const sent = { method: 'POST', body: '{"a":"ñ"}', type: 'application/json', mark: 'm' };
  const [text, bytes] = [
    await sendRequest(there.url, post('{"a":"ñ"}')),
    await sendRequest(there.url, post('{"a":"ñ"}')),
  ];
  expect(JSON.parse(await text.text())).toEqual(sent);
  expect(JSON.parse(Buffer.from(await bytes.arrayBuffer()).toString())).toEqual(sent);
});

test('files go the library’s own way', async () => {
  await using there = await host(200);
  const form = new FormData();
  form.append('files[0]', new Blob(['grains']), 'soap.txt');
  const response = await sendRequest(there.url, { method: 'POST', body: form } as never);
  const { type, body } = (await response.json()) as { type: string; body: string };
  expect(type).toMatch(/^multipart\/form-data; boundary=/);
  expect(body).toContain('grains');
});

test('ends with what the signal ends with', async () => {
  await using there = await host(200);
  const ending = new AbortController();
  ending.abort();
  await expect(sendRequest(there.url, { ...post('{}'), signal: ending.signal } as Init)).rejects.toThrow(
    'aborted',
  );
});

test('what is cut off behind its headers was answered: its words fail, and nobody sends it again', async () => {
  const server = createServer((_, response) => {
    response.writeHead(200, { 'Content-Length': '20' });
    response.write('{"half"', () => response.destroy());
  });
  server.listen(0, '127.0.0.1');
  await once(server, 'listening');
  const { port } = server.address() as AddressInfo;
  const response = await sendRequest(`http://127.0.0.1:${port}/here`, post('{}'));
  expect(response.status).toBe(200);
  for (const read of [response.json(), response.text(), response.arrayBuffer()])
    await expect(read).rejects.toThrow('other side closed');
  server.close();
});

test('a word ahead of the answer is not the answer', async () => {
  const server = createServer((_, response) => {
    response.writeProcessing();
    response.writeHead(204).end();
  });
  server.listen(0, '127.0.0.1');
  await once(server, 'listening');
  const { port } = server.address() as AddressInfo;
  const response = await sendRequest(`http://127.0.0.1:${port}/here`, post('{}'));
  expect([response.status, response.statusText, await response.text()]).toEqual([204, 'No Content', '']);
  server.close();
});

test.each([
  '/a/../b',
  '/a b',
  '/ñ',
  '/a?q=ñ&r=%20',
  '',
  '?q=1',
  '/a/./b',
  '/webhooks/1/a.b-_/messages/@original',
])('asks for %s as the library’s own way does, also when its host is known', async path => {
  const asked: (string | undefined)[] = [];
  const server = createServer(({ url }, response) => {
    asked.push(url);
    response.writeHead(204).end();
  });
  server.listen(0, '127.0.0.1');
  await once(server, 'listening');
  const { port } = server.address() as AddressInfo;
  const url = `http://127.0.0.1:${port}${path}`;
  await DefaultRestOptions.makeRequest(url, post('{}'));
  for (let time = 0; time < 2; time += 1) await sendRequest(url, post('{}'));
  expect(new Set(asked).size).toBe(1);
  expect(asked).toHaveLength(3);
  server.close();
  server.closeAllConnections();
});

test('a tally counts "too many" and nothing else, and hands on what was said', async () => {
  let heard = 0;
  const tally = new Tally(() => {
    heard += 1;
  });
  const send = tally.counting(sendRequest);
  for (const status of [429, 200, 400, 429]) {
    await using there = await host(status);
    const response = await send(there.url, post('{}'));
    expect(response.status).toBe(status);
    await response.arrayBuffer();
  }
  expect([tally.tooMany, heard]).toEqual([2, 2]);
});
