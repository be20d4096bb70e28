import { Client } from 'pg';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { PostgresAdapter } from '../../src/records/adapters/postgres.ts';
import { openStore } from '../../src/records/open.ts';
import { addItem, findItem, useItem } from '../../src/records/shelf/index.ts';
import { put } from '../../src/records/store.ts';
import { keepsTheContract } from './contract.ts';
import { PATIENT } from './patience.ts';
import { hasPostgres, type Server, startPostgres } from './servers.ts';

if (!hasPostgres)
  console.warn('SKIPPED: no PostgreSQL server here, so records in PostgreSQL were not tested.');

describe.skipIf(!hasPostgres)('records in PostgreSQL', () => {
  let server: Server;
  beforeAll(async () => {
    server = await startPostgres();
  });
  afterAll(() => server.stop());

  keepsTheContract(() => ({
    open: () => PostgresAdapter.open(server.address),
    async spoil(key, text) {
      const client = new Client({ connectionString: server.address });
      await client.connect();
      await client.query('INSERT INTO tintmoot_records (ns, key, text) VALUES ($1, $2, $3)', [
        'tintmoot',
        key,
        text,
      ]);
      await client.end();
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

  it('that open together make one table', async () => {
    const client = new Client({ connectionString: server.address });
    await client.connect();
    await client.query('CREATE DATABASE fresh');
    await client.end();
    const address = server.address.replace('/postgres?', '/fresh?');
    const stores = await Promise.all(Array.from({ length: 5 }, () => openStore(address, PATIENT)));
    expect(await stores[0]?.commit([put('a', 1)])).toEqual({ done: true });
    expect(await stores[4]?.get(['a'])).toEqual([1]);
    await Promise.all(stores.map(store => store.close()));
  });
});

describe.skipIf(!hasPostgres)('a PostgreSQL server', () => {
  it('that goes away fails every call, and calls nothing saved', async () => {
    const server = await startPostgres();
    const store = await openStore(server.address);
    await store.commit([put('a', 1)]);
    await server.stop();
    await expect(store.get(['a'])).rejects.toMatchObject({ name: 'StoreFailure', during: 'read' });
    await expect(store.commit([put('a', 2)])).rejects.toMatchObject({ name: 'StoreFailure', saved: 'no' });
    await store.close();
  });

  it('that is lost and comes back serves on by itself, and has what was acknowledged', async () => {
    const server = await startPostgres();
    const store = await openStore(server.address);
    await store.commit([put('a', 1)]);
    await server.lose();
    await expect(store.commit([put('a', 2)])).rejects.toMatchObject({ name: 'StoreFailure', saved: 'no' });
    await server.back();
    await expect.poll(() => store.get(['a']).catch(() => undefined)).toEqual([1]);
    expect(await store.commit([put('a', 3)])).toEqual({ done: true });
    expect(await store.get(['a'])).toEqual([3]);
    await store.close();
    await server.stop();
  });

  it.each(['fsync', 'full_page_writes'])(
    'with %s off is not opened: it may lose what it acknowledged',
    async setting => {
      const careless = await startPostgres([`${setting}=off`]);
      await expect(openStore(careless.address)).rejects.toMatchObject({
        during: 'open',
        message: expect.stringContaining(`${setting} = on`),
      });
      await careless.stop();
    },
    60_000,
  );

  it('that is not there is a failure to open', async () => {
    const address = 'postgres://nobody@127.0.0.1:1/none';
    await expect(openStore(address)).rejects.toMatchObject({ kind: 'unreachable', during: 'open' });
  });
});
