import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createClient } from '@redis/client';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { RedisAdapter } from '../../src/records/adapters/redis.ts';
import { openStore } from '../../src/records/open.ts';
import { addItem, findItem, useItem } from '../../src/records/shelf/index.ts';
import { put } from '../../src/records/store.ts';
import { StrictStore } from '../../src/records/strict.ts';
import { keepsTheContract } from './contract.ts';
import { PATIENT } from './patience.ts';
import { hasRedis, type Server, startRedis } from './servers.ts';

if (!hasRedis) console.warn('SKIPPED: no redis-server on the path, so records in Redis were not tested.');

describe.skipIf(!hasRedis)('records in Redis', () => {
  let server: Server;
  beforeAll(async () => {
    server = await startRedis();
  });
  afterAll(() => server.stop());

  keepsTheContract(() => ({
    open: () => RedisAdapter.open(server.address),
    async spoil(key, text) {
      const client = createClient({ url: server.address });
      await client.connect();
      await client.hSet('{tintmoot}:texts', key, text);
      await client.zAdd('{tintmoot}:keys', { score: 0, value: key });
      await client.close();
    },
  }));

  it('serve a shelf', async () => {
    const store = await openStore(server.address, PATIENT);
    const shelf = { store, member: '7' };
    await addItem(shelf, { name: 'Blue', grams: 10 }, { cause: 'a', at: new Date() });
    const all = Array.from({ length: 12 }, (_, n) =>
      useItem(shelf, 'blue', 1, { cause: `u${n}`, at: new Date() }),
    );
    const results = await Promise.allSettled(all);
    expect(results.filter(({ status }) => status === 'fulfilled')).toHaveLength(10);
    expect((await findItem(shelf, 'blue')).stock.grams).toBe(0);
    await store.close();
  });
});

describe.skipIf(!hasRedis)('a Redis server', () => {
  it.each([
    ['--appendonly', 'no'],
    ['--appendfsync', 'everysec'],
    ['--maxmemory-policy', 'allkeys-lru'],
  ])('with %s %s is not opened: it may lose what it acknowledged', async (...setting) => {
    const careless = await startRedis(setting);
    await expect(openStore(careless.address)).rejects.toMatchObject({
      during: 'open',
      message: expect.stringContaining(setting[0]!.slice(2)),
    });
    await careless.stop();
  });

  it('that goes away fails every call, and calls nothing saved', async () => {
    const server = await startRedis();
    const store = await openStore(server.address);
    await store.commit([put('a', 1)]);
    await server.stop();
    await expect(store.get(['a'])).rejects.toMatchObject({ name: 'StoreFailure', during: 'read' });
    await expect(store.commit([put('a', 2)])).rejects.toMatchObject({
      name: 'StoreFailure',
      during: 'write',
    });
    await store.close();
  });

  it.each([
    ['empty', []],
    ['careless', ['--appendonly', 'no']],
  ])('that comes back %s is not used, and nothing written to it is acknowledged', async (_, settings) => {
    const server = await startRedis();
    const store = await openStore(server.address);
    await store.commit([put('a', 1)]);
    await server.stop();
    const port = new URL(server.address).port;
    const back = await startRedis(['--port', port, ...settings]);
    await expect
      .poll(() => store.get(['a']).catch((error: Error) => error.message))
      .toMatch(/without the records|may lose records/);
    await expect(store.commit([put('a', 2)])).rejects.toMatchObject({ name: 'StoreFailure', saved: 'no' });
    await store.close();
    await back.stop();
  });

  it('that was emptied while it was connected is not used any more from the very next call', async () => {
    const server = await startRedis();
    const store = new StrictStore(await RedisAdapter.open(server.address));
    await store.commit([put('a', 1)]);
    const other = createClient({ url: server.address });
    await other.connect();
    await other.flushAll();
    const gone = { name: 'StoreFailure', message: expect.stringContaining('without the records') };
    await expect(store.get(['a'])).rejects.toMatchObject(gone);
    await expect(store.range('a', 'b', 9)).rejects.toMatchObject(gone);
    await expect(store.commit([put('a', 2)])).rejects.toMatchObject({ ...gone, saved: 'no' });
    expect(await other.dbSize()).toBe(0);
    await other.close();
    await store.close();
    await server.stop();
  });

  it('that comes back with its records serves on by itself', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'redis-kept-'));
    const server = await startRedis(['--dir', folder]);
    const store = await openStore(server.address);
    await store.commit([put('a', 1)]);
    await server.stop();
    const back = await startRedis(['--port', new URL(server.address).port, '--dir', folder]);
    await expect.poll(() => store.get(['a']).catch(() => undefined), { timeout: 30_000 }).toEqual([1]);
    expect(await store.commit([put('a', 2)])).toEqual({ done: true });
    await store.close();
    await back.stop();
    rmSync(folder, { recursive: true });
  });

  it('out of memory is full, and writes no part of a commit', async () => {
    const server = await startRedis(['--maxmemory', '4mb']);
    const store = await openStore(server.address);
    const filling = async () => {
      for (let n = 0; n < 400; n += 1)
        await store.commit([put(`a/${n}`, 'x'.repeat(50_000)), put(`b/${n}`, n)]);
    };
    await expect(filling()).rejects.toMatchObject({ kind: 'full', saved: 'no' });
    const [a, b] = await Promise.all([store.range('a/', 'a0', 999), store.range('b/', 'b0', 999)]);
    expect(a.map(({ key }) => key.slice(2))).toEqual(b.map(({ key }) => key.slice(2)));
    await store.close();
    await server.stop();
  });

  it('that is not there is a failure to open', async () => {
    await expect(openStore('redis://127.0.0.1:1')).rejects.toMatchObject({
      kind: 'unreachable',
      during: 'open',
    });
  });
});
