import { request } from 'node:http';
import { expect, test } from 'vitest';
import { WebSocket } from 'ws';
import { openHost } from '../../src/loopback/index.ts';
import { openBench } from './host-bench.ts';

/** What the host answers to any program's request, with the headers it likes. */
const knock = (url: string, headers: Record<string, string> = {}, method = 'GET') =>
  new Promise<number>((resolve, reject) => {
    const asking = request(
      url,
      { method, headers: { authorization: 'Bot x', ...headers }, agent: false },
      response => {
        response.resume();
        resolve(response.statusCode ?? 0);
      },
    );
    asking.on('error', reject);
    asking.end();
  });

/** How a gateway address takes a caller: its first frame, or the status it was turned away with. */
const call = (url: string, headers: Record<string, string> = {}) =>
  new Promise<string>(resolve => {
    const socket = new WebSocket(url, { headers });
    socket.once('message', frame => {
      resolve((frame as Buffer).toString('utf8'));
      socket.terminate();
    });
    socket.once('unexpected-response', (_, response) => resolve(String(response.statusCode)));
    socket.once('error', () => {});
  });

const gatewayOf = async (api: string) => {
  const response = await fetch(`${api}/v10/gateway/bot`, { headers: { authorization: 'Bot x' } });
  return ((await response.json()) as { url: string }).url;
};

test('the interface is behind a secret of this start', async () => {
  await using host = await openHost();
  await using other = await openHost();
  expect(new URL(host.api).pathname).toMatch(/^\/[0-9a-f]{64}\/api$/);
  expect(new URL(host.api).pathname).not.toBe(new URL(other.api).pathname);
  expect(await knock(`${host.api}/v10/users/@me`)).toBe(200);
  for (const path of [
    '/api/v10/users/@me',
    `${new URL(other.api).pathname}/v10/users/@me`,
    '/files/1/a.png?ex=0',
    '/',
  ])
    expect(await knock(`${host.url}${path}`)).toBe(403);
  expect(await knock(`${host.url}/api/v10/interactions/1/token/callback`, {}, 'POST')).toBe(403);
});

test('no page of a browser and no borrowed name is answered, not even with the secret', async () => {
  await using host = await openHost();
  const address = `${host.api}/v10/users/@me`;
  for (const headers of [
    { origin: 'http://evil.example' },
    { origin: host.url },
    { origin: 'null' },
    { 'sec-fetch-site': 'cross-site' },
    { 'sec-fetch-site': 'same-origin' },
    { host: 'evil.example' },
    { host: `evil.example:${new URL(host.url).port}` },
  ])
    expect(await knock(address, headers as Record<string, string>)).toBe(403);
});

test('the gateway greets nobody without the secret, and no page', async () => {
  await using host = await openHost();
  const gateway = await gatewayOf(host.api);
  expect(await call(`${gateway}?v=10`)).toContain('"op":10');
  const bare = host.url.replace('http:', 'ws:');
  for (const url of [bare, `${bare}/gateway`, `${bare}/${'0'.repeat(64)}/gateway`])
    expect(await call(url)).toMatch(/^40[01]$/);
  for (const headers of [{ origin: 'http://evil.example' }, { origin: host.url }, { host: 'evil.example' }])
    expect(await call(gateway, headers as Record<string, string>)).toMatch(/^40[01]$/);
});

test('a file has an address that only those know who were told of it', async () => {
  await using bench = await openBench();
  const sent = await bench.member.postMessage('a bar', [{ name: 'a.txt', bytes: new Uint8Array([65]) }]);
  const { url } = sent.files[0]!;
  expect(await knock(url)).toBe(200);
  expect(await knock(url.replace(/\/[0-9a-f]{64}\//, '/'))).toBe(403);
});
