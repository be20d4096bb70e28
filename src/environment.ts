import { z } from 'zod';

const schema = z.object({
  /** Without it the local room starts instead of the chat platform's client. */
  DISCORD_TOKEN: z.string().min(1).optional(),
  /** One group to register commands for; without it they are registered everywhere. */
  DISCORD_GUILD: z.string().regex(/^\d+$/).optional(),
  /** Where the platform's interface is, for tests against a host of our own. */
  DISCORD_API: z.url().optional(),
  /** Which shard of how many this process is, `0/2`; without it one process serves all groups. */
  DISCORD_SHARDS: z
    .string()
    .regex(/^\d{1,4}\/\d{1,4}$/, 'write the shard and how many there are, such as 0/2')
    .transform(text => {
      const [id = 0, of = 1] = text.split('/').map(Number);
      return { id, of };
    })
    .refine(({ id, of }) => id < of, 'the first shard of two is 0/2, the second 1/2')
    .optional(),
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
