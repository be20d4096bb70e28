// @ts-check
/*
 * What the library alone costs: a bot that answers every command with one fixed message, or with the one that a file
 * holds for the options it was given. With a file of rows named, it first writes one row that is on disk before it answers.
 * In JavaScript, as most who write one would: loading the TypeScript compiler for this file alone takes 15 MB and a tenth of a
 * second, which would make ours look quicker and smaller beside it.
 */
import { readFileSync } from 'node:fs';
import { DatabaseSync } from 'node:sqlite';
import { Client, Events, GatewayIntentBits, MessageFlags } from 'discord.js';

const {
  DISCORD_TOKEN: token,
  DISCORD_API: api,
  BARE_MESSAGE: message = '{}',
  BARE_MESSAGES: messages,
  BARE_ROWS: rows,
} = process.env;
/** @type {{ components: never[] }} */
const { components } = JSON.parse(message);
/** @type {Map<string, never[]>} */
const byOptions = new Map(messages ? JSON.parse(readFileSync(messages, 'utf8')) : []);

/**
 * One row a commit, as the plain way of keeping something does.
 * @param {string} path
 * @returns {(key: string) => void}
 */
function rowWriter(path) {
  const db = new DatabaseSync(path);
  db.exec(
    'PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL; CREATE TABLE rows (key TEXT PRIMARY KEY, text TEXT)',
  );
  const insert = db.prepare('INSERT INTO rows VALUES (?, ?)');
  return key => void insert.run(key, message.slice(0, 200));
}

const write = rows ? rowWriter(rows) : () => undefined;
const client = new Client({
  intents: [GatewayIntentBits.Guilds],
  rest: { globalRequestsPerSecond: 1_000, timeout: 5_000, ...(api && { api }) },
});
/** @param {import('discord.js').Interaction} interaction */
async function answer(interaction) {
  if (!interaction.isChatInputCommand()) return;
  write(interaction.id);
  const given = messages && interaction.options.data.map(({ name, value }) => `${name}=${value}`);
  const fitting = given ? (byOptions.get(given.sort().join(' ')) ?? []) : components;
  await interaction.reply({
    components: fitting,
    flags: MessageFlags.IsComponentsV2,
    allowedMentions: { parse: [] },
  });
}
client.on(Events.InteractionCreate, interaction => void answer(interaction));
await client.login(token);
process.on('SIGTERM', () => process.exit(0));
