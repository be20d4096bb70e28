import { z } from 'zod';

const schema = z.object({
  /** Without it the local room starts instead of the chat platform's client. */
  DISCORD_TOKEN: z.string().min(1).optional(),
  /** One group to register commands for; without it they are registered everywhere. */
  DISCORD_GUILD: z.string().regex(/^\d+$/).optional(),
  /** Where the platform's interface is, for tests against a host of our own. */
  DISCORD_API: z.url().optional(),
  TINTMOOT_STORE: z.string().default('sqlite:.tintmoot/records.sqlite'),
  TINTMOOT_PORT: z.coerce.number().int().min(0).max(65535).default(4747),
  /** Base64 of at least 32 bytes; without it a key is made and kept in the store. */
  TINTMOOT_SIGNING_KEY: z.base64().min(43).optional(),
  TINTMOOT_LOG: z.enum(['silent', 'error', 'warn', 'info', 'debug']).default('info'),
});

export type Environment = z.output<typeof schema>;

/** The settings from the environment; an empty variable counts as none. Throws an Error that names what is wrong. */
export function readEnvironment(variables: NodeJS.ProcessEnv): Environment {
  const set = Object.fromEntries(Object.entries(variables).filter(([, value]) => value !== ''));
  const read = schema.safeParse(set);
  if (read.success) return read.data;
  throw new Error(`The environment is not right:\n${z.prettifyError(read.error)}`);
}
