import { request } from 'node:http';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type Host, openHost } from '../../src/loopback/index.ts';
import { furnish, HOME, openPage, type Page } from '../../src/page/index.ts';

let host: Host;
let page: Page;
beforeAll(async () => {
  host = await openHost();
  furnish(host, { groupName: 'Home bench', name: 'Me', language: 'en' });
  page = await openPage(host, { port: 0 });
});
afterAll(async () => {
  await page.close();
  await host.close();
});

/** A request as any program could make it, with the headers it likes. */
const knock = (path: string, headers: Record<string, string> = {}, method = 'GET') =>
  new Promise<{ status: number; headers: Record<string, unknown>; body: string }>((resolve, reject) => {
    const asking = request(`${page.url}${path}`, { method, headers, agent: false }, response => {
      let body = '';
      response.on('data', piece => {
        body += piece;
      });
      response.on('end', () =>
        resolve({ status: response.statusCode ?? 0, headers: response.headers, body }),
      );
    });
    asking.on('error', reject);
    asking.end();
  });

const port = () => new URL(page.url).port;

describe('the door of the page', () => {
  test('opens on 127.0.0.1 only', () => {
    expect(page.url).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/[0-9a-f]{64}$/);
  });

  test('opens to its own names', async () => {
    expect((await knock('/')).status).toBe(200);
    expect((await knock('/', { host: `localhost:${port()}` })).status).toBe(200);
  });

  test.each(['evil.example', 'evil.example:80', '127.0.0.1', '127.0.0.1:1', '[::1]:80'])(
    'stays shut to a name that was made to point here: %s',
    async name => {
      expect((await knock('/', { host: name })).status).toBe(403);
    },
  );

  test('takes no actions from other sites', async () => {
    const seat = `group=${HOME.group}&member=${HOME.member}`;
    for (const headers of [
      { origin: 'http://evil.example' },
      { origin: 'null' },
      { 'sec-fetch-site': 'cross-site' },
      { 'sec-fetch-site': 'same-site', origin: `http://127.0.0.1:${port()}` },
    ])
      expect((await knock(`/actions?${seat}`, headers, 'POST')).status).toBe(403);
    expect(
      (await knock('/changes', { 'sec-fetch-site': 'cross-site', 'sec-fetch-mode': 'cors' })).status,
    ).toBe(403);
  });

  test('lets a link from elsewhere show the page', async () => {
    const visit = {
      'sec-fetch-site': 'cross-site',
      'sec-fetch-mode': 'navigate',
      'sec-fetch-dest': 'document',
    };
    expect((await knock('/', visit)).status).toBe(200);
  });

  test('allows nothing but its own files, in every answer', async () => {
    for (const path of ['/', '/nowhere', '/seats', '/page/browser/main.ts']) {
      const policy = String((await knock(path)).headers['content-security-policy']);
      expect(policy).toContain("default-src 'none'");
      expect(policy).not.toMatch(/unsafe|https?:|\*/);
    }
  });

  test('serves its modules without types, and no other file of the house', async () => {
    const script = await knock('/page/browser/main.ts');
    expect(script.headers['content-type']).toContain('text/javascript');
    expect(script.body).not.toMatch(/import type/);
    for (const path of [
      '/main.ts',
      '/page/server.ts',
      '/page/browser/tsconfig.json',
      '/page/browser/..%2fserver.ts',
    ])
      expect((await knock(path)).status).toBe(404);
    expect((await knock('/../package.json')).status).toBe(403);
  });

  test('a port that is taken gives way to a free one', async () => {
    const second = await openPage(host, { port: Number(port()) });
    expect(second.url).not.toBe(page.url);
    expect((await fetch(second.url)).status).toBe(200);
    await second.close();
  });

  test.each(['/', '/seats', '/changes', '/page/browser/main.ts', `/${'0'.repeat(64)}/seats`])(
    'answers nothing at %s without the secret of this start',
    async path => {
      const { origin } = new URL(page.url);
      const response = await fetch(`${origin}${path}`);
      expect(response.status).toBe(403);
      expect(await response.text()).not.toContain('Home bench');
    },
  );

  test('every start has another secret', async () => {
    const second = await openPage(host, { port: 0 });
    const secretOf = (url: string) => new URL(url).pathname;
    expect(secretOf(second.url)).not.toBe(secretOf(page.url));
    expect((await fetch(`${new URL(second.url).origin}${secretOf(page.url)}/seats`)).status).toBe(403);
    await second.close();
  });

  test('a seat nobody sits in hears nothing', async () => {
    expect((await knock('/changes?group=1&member=2')).status).toBe(404);
  });
});

test('no module of the page names an address outside this machine', async () => {
  const { readAssets } = await import('../../src/page/assets.ts');
  const assets = await readAssets();
  expect(assets.size).toBeGreaterThan(15);
  const addresses = [...assets].flatMap(([path, { body }]) =>
    [...body.matchAll(/https?:\/\/([\w.-]+)/g)].map(([, name]) => `${path} ${name}`),
  );
  // The namespace of SVG is a name, not an address that is asked.
  expect(addresses.filter(one => !/ (www\.w3\.org|127\.0\.0\.1)$/.test(one))).toEqual([]);
});
