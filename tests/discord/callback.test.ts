import { once } from 'node:events';
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { type Client, InteractionResponseType, REST, Routes } from 'discord.js';
import { expect, test } from 'vitest';
import { answerCallback, bodyOf, writtenOf } from '../../src/discord/callback.ts';
import { sendRequest } from '../../src/discord/request.ts';

const NO = { code: 10_062, message: 'Unknown interaction' };
const CALLBACK: Parameters<typeof answerCallback>[1] = {
  type: InteractionResponseType.ChannelMessageWithSource,
  data: { flags: 32_768, components: [], allowed_mentions: { parse: [] } },
};

type Turn = 'done' | 'no' | 'later' | 'broken' | 'silent' | 'cut';

/** A host that answers each request in its turn, and whatever comes after as the last; what came is kept. */
async function host(turns: readonly Turn[]) {
  const came: { readonly method: unknown; readonly url: unknown; readonly type: unknown; body: unknown }[] =
    [];
  const server = createServer((request: IncomingMessage, response: ServerResponse) => {
    const pieces: Buffer[] = [];
    request.on('data', (piece: Buffer) => pieces.push(piece));
    request.on('end', () => {
      const turn = turns[Math.min(came.length, turns.length - 1)];
      const { method, url, headers } = request;
      came.push({
        method,
        url,
        type: headers['content-type'],
        body: JSON.parse(String(Buffer.concat(pieces))),
      });
      if (turn === 'silent') return;
      if (turn === 'cut') return void request.socket.destroy();
      const json = { 'Content-Type': 'application/json' };
      if (turn === 'done') response.writeHead(204).end();
      else if (turn === 'no') response.writeHead(404, json).end(JSON.stringify(NO));
      else if (turn === 'broken') response.writeHead(502).end('bad gateway');
      else response.writeHead(429, { ...json, 'Retry-After': '0.01' }).end('{}');
    });
  });
  server.listen(0, '127.0.0.1');
  await once(server, 'listening');
  const { port } = server.address() as AddressInfo;
  const rest = new REST({
    api: `http://127.0.0.1:${port}/api`,
    timeout: 200,
    retries: 2,
    makeRequest: sendRequest,
  });
  return {
    came,
    rest,
    async [Symbol.asyncDispose]() {
      server.closeAllConnections();
      server.close();
    },
  };
}

/** What becomes of an answer, and what was sent for it. */
async function outcome(turns: readonly Turn[], send: (rest: REST) => Promise<unknown>) {
  await using there = await host(turns);
  const failure = await send(there.rest).then(
    () => undefined,
    (error: { name: string; code?: unknown; status?: unknown }) => error,
  );
  return {
    sent: there.came,
    failed: failure && [failure.name, failure.status, failure.name === 'AbortError' || failure.code],
  };
}

const ours = (rest: REST) =>
  answerCallback(
    { client: { rest } as unknown as Client, id: '81384788765712384', token: 'a.t-_' },
    CALLBACK,
  );
/** The library's own way: it is what says when an answer is tried again, and what it fails with. */
const theirs = (rest: REST) =>
  rest.post(Routes.interactionCallback('81384788765712384', 'a.t-_'), {
    body: CALLBACK,
    auth: false,
    query: new URLSearchParams({ with_response: 'false' }),
  });

test.each<[string, readonly Turn[], number]>([
  ['is taken', ['done'], 1],
  ['is not known any more', ['no'], 1],
  ['is to come later, twice', ['later', 'later', 'done'], 3],
  ['meets a broken gateway twice', ['broken', 'broken', 'done'], 3],
  ['meets nothing but broken gateways', ['broken'], 3],
  ['hears nothing the first time', ['silent', 'done'], 2],
  ['hears nothing', ['silent'], 3],
  ['is cut off', ['cut'], 1],
  ['is later after a broken gateway, and broken again', ['broken', 'later', 'broken', 'no'], 4],
])('an answer that %s fares as on the library’s own way', async (_, turns, requests) => {
  const [us, them] = [await outcome(turns, ours), await outcome(turns, theirs)];
  expect(us).toEqual(them);
  expect(us.sent).toHaveLength(requests);
});

test('what is written once is sent byte for byte as all of it would be written', () => {
  const text = (content: string) => ({ type: 10, content }) as const;
  const components = [text('## 2 tsp “blue”'), text('▸ Why\n"quoted" 🧼'), text('last')];
  const data = { flags: 32_768, attachments: [], allowed_mentions: { parse: [] } };
  for (const type of [4, 7] as const)
    for (const count of [0, 1, 2, 3]) {
      const callback = { type, data: { components, ...data } } as Parameters<typeof bodyOf>[0];
      expect(String(bodyOf(callback, writtenOf(components.slice(0, count))))).toBe(JSON.stringify(callback));
      expect(bodyOf(callback, undefined)).toBe(JSON.stringify(callback));
    }
});
