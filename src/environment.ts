import { z } from 'zod';

const shards = z
  .string()
  .regex(/^\d{1,4}\/\d{1,4}$/)
  .transform(text => {
    const [id = 0, of = 1] = text.split('/').map(Number);
    return { id, of };
  })
  .refine(({ id, of }) => id < of);

const address = z
  .string()
  .regex(/^(?:\[[0-9a-f:]+\]|[\w.-]+):\d{1,5}$/i)
  .transform(text => {
    const cut = text.lastIndexOf(':');
    return { host: text.slice(0, cut).replace(/^\[|\]$/g, ''), port: Number(text.slice(cut + 1)) };
  })
  .refine(({ port }) => port <= 65_535);

/** Of 32 bytes. */
const signingKey = z.base64().min(43);

const schema = z.object({
  /** Without it the local room starts instead of the chat platform's client. */
  DISCORD_TOKEN: z.string().min(1).optional(),
  /** One group to register commands for; without it they are registered everywhere. */
  DISCORD_GUILD: z.string().regex(/^\d+$/).optional(),
  /** Where the platform's interface is, for tests against a host of our own. */
  DISCORD_API: z.url().optional(),
  /** Which shard of how many this process is, `0/2`; without it one process serves all groups. */
  DISCORD_SHARDS: shards.optional(),
  TINTMOOT_STORE: z.string().default('sqlite:.tintmoot/records.sqlite'),
  TINTMOOT_PORT: z
    .string()
    .regex(/^\d{1,5}$/)
    .transform(Number)
    .pipe(z.int().max(65_535))
    .default(4747),
  /** Where health and metrics are served, `127.0.0.1:9464`; without it they are not. */
  TINTMOOT_OPERATIONS: address.optional(),
  /** Base64 of at least 32 bytes; without it a key is made and kept in a file beside the records. */
  TINTMOOT_SIGNING_KEY: signingKey.optional(),
  /** The key before it: what it signed stays valid while both are given. */
  TINTMOOT_SIGNING_KEY_BEFORE: signingKey.optional(),
  TINTMOOT_LOG: z.enum(['silent', 'error', 'warn', 'info', 'debug']).default('info'),
});

export type Environment = z.output<typeof schema>;
type Name = keyof Environment;

/** What would be right, for each setting. Never what is there: it may be a secret. */
const right: Readonly<Record<Name, string>> = {
  DISCORD_TOKEN: 'must be the token of your application on the chat platform',
  DISCORD_GUILD: 'must be the id of a group: digits only, such as 81384788765712384',
  DISCORD_API: 'must be an address such as http://127.0.0.1:8080/api',
  DISCORD_SHARDS: 'must be this shard and how many there are: 0/2 is the first of two, 1/2 the second',
  TINTMOOT_STORE:
    'must be an address such as sqlite:.tintmoot/records.sqlite, postgres://HOST/DATABASE or redis://HOST',
  TINTMOOT_PORT: 'must be a whole number from 0 to 65535, such as 4747',
  TINTMOOT_OPERATIONS: 'must be an address and a port, such as 127.0.0.1:9464',
  TINTMOOT_SIGNING_KEY: 'must be 32 bytes or more in base64: openssl rand -base64 32 makes one',
  TINTMOOT_SIGNING_KEY_BEFORE: 'must be the earlier signing key, in base64 as it was',
  TINTMOOT_LOG: 'must be one of silent, error, warn, info and debug',
};

/** The names of all settings. */
export const SETTINGS = Object.keys(right) as readonly Name[];

/** Names that look like settings of ours and are none: a slip of the finger would otherwise be no setting at all. */
export const unknownSettings = (variables: NodeJS.ProcessEnv): readonly string[] =>
  Object.keys(variables).filter(
    name =>
      /^TINTMOOT_|^DISCORD_(?:TOKEN|GUILD|API|SHARD)/.test(name) &&
      !(SETTINGS as readonly string[]).includes(name),
  );

/**
 * The settings from the environment; an empty variable counts as none. Throws an Error with one sentence for each
 * setting that is wrong: which, and what would be right.
 */
export function readEnvironment(variables: NodeJS.ProcessEnv): Environment {
  const set = Object.fromEntries(Object.entries(variables).filter(([, value]) => value !== ''));
  const read = schema.safeParse(set);
  if (read.success) return read.data;
  const wrong = new Set(read.error.issues.map(({ path }) => path[0] as Name));
  throw new Error([...wrong].map(name => `${name} ${right[name]}.`).join('\n'));
}
