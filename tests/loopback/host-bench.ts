import { Client, Events, GatewayIntentBits, type Interaction, MessageFlags } from 'discord.js';
import { expect } from 'vitest';
import type { HostOptions } from '../../src/loopback/index.ts';
import { type RuleId, ruleOf } from '../../src/loopback/refusals/rules.ts';
import { openJudgedHost } from './judged-host.ts';

export const png = Buffer.from(
  'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR4nGNgYGBgAAAABQABh6FO1AAAAABJRU5ErkJggg==',
  'base64',
);

/** Parts of messages. */
export const ephemeral = MessageFlags.Ephemeral;
export const newer = MessageFlags.IsComponentsV2;
export const text = (content: string) => ({ type: 10, content }) as const;
export const button = (customId: string, over = {}) =>
  ({ type: 1, components: [{ type: 2, style: 1, label: customId, custom_id: customId, ...over }] }) as const;

export const commands = [
  {
    name: 'batch',
    integration_types: [0, 1],
    description: 'A batch',
    options: [
      { type: 3, name: 'oils', description: 'Oils', required: true, max_length: 40 },
      { type: 4, name: 'bars', description: 'Bars', min_value: 1, max_value: 50 },
      { type: 10, name: 'water', description: 'Water' },
      { type: 5, name: 'gel', description: 'Gel' },
      { type: 6, name: 'maker', description: 'Maker' },
      { type: 7, name: 'place', description: 'Place' },
      { type: 8, name: 'role', description: 'Role' },
      { type: 11, name: 'photo', description: 'Photo' },
      { type: 3, name: 'mould', description: 'Mould', choices: [{ name: 'Slab', value: 'slab' }] },
      { type: 3, name: 'scent', description: 'Scent', autocomplete: true },
    ],
  },
  {
    name: 'store',
    description: 'Store',
    options: [
      { type: 1, name: 'list', description: 'List' },
      { type: 2, name: 'keep', description: 'Keep', options: [{ type: 1, name: 'lye', description: 'Lye' }] },
    ],
  },
  { name: 'steward', description: 'For stewards', default_member_permissions: '32' },
  { name: 'Look at this', type: 3 },
  { name: 'Look at them', type: 2 },
] as const;

const wasTaken = ({ status = 0 }: { readonly status?: number | undefined }) => status < 300;

/** A host with one guild and one member, and the bare client logged in to it; `answer` sets what the bot does. */
export async function openBench(options: HostOptions = {}, shards: number | 'auto' = 1) {
  // What the host takes, the platform's description takes too.
  const host = await openJudgedHost({ limits: 'none', privilegedIntents: 1 << 15, ...options }, wasTaken);
  const guild = host.addGuild({ name: 'Saturday soapers', channels: ['bench', 'hall'] });
  const member = guild.addMember({ name: 'Odile' });
  const { Guilds, GuildMessages, MessageContent, DirectMessages } = GatewayIntentBits;
  const client = new Client({
    intents: [Guilds, GuildMessages, MessageContent, DirectMessages],
    rest: { api: host.api, retries: 1, timeout: 2_000 },
    ...(shards === 'auto' ? { shards } : { shardCount: shards }),
  });
  let act: (interaction: Interaction) => unknown = () => undefined;
  const faults: unknown[] = [];
  client.on(Events.Error, fault => void faults.push(fault));
  client.on(Events.InteractionCreate, interaction => {
    Promise.resolve(act(interaction)).catch((fault: unknown) => faults.push(fault));
  });
  const ready = new Promise(resolve => client.once(Events.ClientReady, resolve));
  await client.login('bench-token');
  await ready;
  const post = async (method: string, path: string, body: unknown, headers: Record<string, string> = {}) => {
    const response = await fetch(`${host.api}/v10${path}`, {
      method,
      ...(body !== undefined && { body: body instanceof FormData ? body : JSON.stringify(body) }),
      headers: {
        authorization: 'Bot bench-token',
        ...(!(body instanceof FormData) && { 'content-type': 'application/json' }),
        ...headers,
      },
    });
    const text = await response.text();
    return {
      status: response.status,
      json: (text === '' ? undefined : JSON.parse(text)) as Answer | undefined,
    };
  };
  return {
    host,
    guild,
    member,
    client,
    faults,
    post,
    channel: guild.channels[0]!,
    declare: () => client.application!.commands.set(commands),
    answer: (what: (interaction: Interaction) => unknown) => {
      act = what;
    },
    [Symbol.asyncDispose]: async () => {
      await client.destroy();
      await host.close();
    },
  };
}
export type Bench = Awaited<ReturnType<typeof openBench>>;
export interface Answer {
  readonly id?: string;
  readonly code?: number;
  readonly message?: string;
  readonly errors?: unknown;
  readonly [key: string]: unknown;
}

/** A multipart body as discord.js sends it: files before the payload. */
export function multipart(payload: unknown, files: readonly { name: string; bytes: Uint8Array }[]): FormData {
  const form = new FormData();
  for (const [index, file] of files.entries())
    form.append(`files[${index}]`, new Blob([new Uint8Array(file.bytes)], { type: 'image/png' }), file.name);
  form.append('payload_json', JSON.stringify(payload));
  return form;
}

/** The short codes at the ends of the errors object. */
function codesIn(errors: unknown): readonly string[] {
  if (typeof errors !== 'object' || errors === null) return [];
  return Object.entries(errors).flatMap(([key, value]) =>
    key === '_errors' ? (value as { code: string }[]).map(error => error.code) : codesIn(value),
  );
}

/** Fits an answer to its row: status, numeric code, and for a malformed body the flaw's code at its path. */
export function expectRefusal(rule: RuleId, answer: { status: number; json: Answer | undefined }): void {
  const row = ruleOf(rule);
  expect(answer.status).toBe(row.status ?? 400);
  expect(answer.json?.code).toBe(row.number ?? 50035);
  if (row.number === undefined) expect(codesIn(answer.json?.errors)).toContain(row.code);
}
