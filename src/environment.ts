/** What a setting says, read; undefined where it is wrong. By hand: the library of schemas would be a tenth of a start. */
type Read<Value> = (text: string) => Value | undefined;

const like =
  (pattern: RegExp): Read<string> =>
  text =>
    pattern.test(text) ? text : undefined;
const anything: Read<string> = text => text;

const shards: Read<{ readonly id: number; readonly of: number }> = text => {
  const [, id, of] = (/^(\d{1,4})\/(\d{1,4})$/.exec(text) ?? []).map(Number);
  return id !== undefined && of !== undefined && id < of ? { id, of } : undefined;
};

const MOST_PORT = 65_535;
const port: Read<number> = text =>
  /^\d{1,5}$/.test(text) && Number(text) <= MOST_PORT ? Number(text) : undefined;

const address: Read<{ readonly host: string; readonly port: number }> = text => {
  const [, host, at] = /^(\[[0-9a-f:]+\]|[\w.-]+):(\d{1,5})$/i.exec(text) ?? [];
  const number = port(at ?? '');
  return host === undefined || number === undefined
    ? undefined
    : { host: host.replace(/^\[|\]$/g, ''), port: number };
};

/** Of 32 bytes, base64 (RFC 4648, 4). */
const LEAST_KEY = 43;
const signingKey: Read<string> = text =>
  text.length >= LEAST_KEY && /^(?:[0-9a-z+/]{4})*(?:[0-9a-z+/]{2}==|[0-9a-z+/]{3}=)?$/i.test(text)
    ? text
    : undefined;

const LEVELS = ['silent', 'error', 'warn', 'info', 'debug'] as const;
const level: Read<(typeof LEVELS)[number]> = text => LEVELS.find(one => one === text);

/** How each setting is read. */
const reads = {
  /** Without it the local room starts instead of the chat platform's client. */
  DISCORD_TOKEN: anything,
  /** One group to register commands for; without it they are registered everywhere. */
  DISCORD_GUILD: like(/^\d+$/),
  /** Where the platform's interface is, for tests against a host of our own. */
  DISCORD_API: (text: string) => (URL.canParse(text) ? text : undefined),
  /** Which shard of how many this process is, `0/2`; without it one process serves all groups. */
  DISCORD_SHARDS: shards,
  TINTMOOT_STORE: anything,
  TINTMOOT_PORT: port,
  /** Where health and metrics are served, `127.0.0.1:9464`; without it they are not. */
  TINTMOOT_OPERATIONS: address,
  /** Base64 of at least 32 bytes; without it a key is made and kept in a file beside the records. */
  TINTMOOT_SIGNING_KEY: signingKey,
  /** The key before it: what it signed stays valid while both are given. */
  TINTMOOT_SIGNING_KEY_BEFORE: signingKey,
  TINTMOOT_LOG: level,
} as const;

/** What settings are where nobody set them. */
const usual = {
  TINTMOOT_STORE: 'sqlite:.tintmoot/records.sqlite',
  TINTMOOT_PORT: 4747,
  TINTMOOT_LOG: 'info',
} as const;

type Settings = { readonly [Key in keyof typeof reads]: NonNullable<ReturnType<(typeof reads)[Key]>> };
export type Environment = Partial<Settings> & Pick<Settings, keyof typeof usual>;
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
  const given = SETTINGS.flatMap(name => {
    const text = variables[name];
    return text === undefined || text === '' ? [] : [{ name, value: reads[name](text) }];
  });
  const wrong = given.filter(({ value }) => value === undefined);
  if (wrong.length > 0) throw new Error(wrong.map(({ name }) => `${name} ${right[name]}.`).join('\n'));
  return {
    ...usual,
    ...(Object.fromEntries(given.map(({ name, value }) => [name, value])) as Partial<Settings>),
  };
}
