/*
 * What no answer of ours can do without, and nothing else: the library, what a question reads of its asker and their
 * group, the folds that are kept for its buttons, and the signatures of those. Of what was asked nothing is read, and
 * nothing is reckoned: how near to the bare bot we could come if all the rest were free.
 */
import { readFileSync } from 'node:fs';
import { Client, Events, GatewayIntentBits, type Interaction, MessageFlags } from 'discord.js';
import { forOneQuestion } from '../../../src/conversation/answering/one-question.ts';
import type { Conversation } from '../../../src/conversation/conversation.ts';
import { nonce, seal } from '../../../src/conversation/follow-ups/follow.ts';
import type { Origin } from '../../../src/conversation/question.ts';
import { reportsOn } from '../../../src/records/evidence/index.ts';
import { keepFolds } from '../../../src/records/folds/index.ts';
import { openStore } from '../../../src/records/open.ts';
import { preferencesOf } from '../../../src/records/preferences.ts';
import { listShelf } from '../../../src/records/shelf/index.ts';

const {
  DISCORD_TOKEN: token,
  DISCORD_API: api,
  BARE_MESSAGES: messages = '',
  TINTMOOT_STORE: address = '',
} = process.env;
const byOptions = new Map<string, never[]>(JSON.parse(readFileSync(messages, 'utf8')) as [string, never[]][]);
const services = { store: await openStore(address) };
const key = Buffer.alloc(32, 7);

/** About as much as a dose folds away, and as many buttons. */
const FOLDED = {
  headline: 'h'.repeat(60),
  blocks: Array.from({ length: 8 }, () => ({ kind: 'text', text: 't'.repeat(220), fold: 'why' }) as const),
  cautions: Array.from({ length: 4 }, (_, n) => ({ id: `c${n}`, text: 'c'.repeat(150), fold: 'safety' })),
  lines: ['/preview mix:"gold mica"', '/dose colourant:"gold mica" strength:"tint"'],
};
const BUTTONS = 5;

async function readAndKeep({ id, user, guildId }: Interaction): Promise<void> {
  const [member, group, at] = [user.id, guildId ?? '', Date.now()];
  const asker = { id: member } as Origin['asker'];
  const conversation = { services } as unknown as Conversation;
  const { store } = forOneQuestion(conversation, { id, asker, group, at } as Origin).services;
  await preferencesOf(store, member);
  await listShelf({ store, member });
  await reportsOn({ store, group }, 'gold-mica', member);
  const answer = nonce();
  await keepFolds({ store, member }, answer, FOLDED, new Date(at));
  const follow = { followUp: { for: 'group', hours: 48 }, args: [member, answer, 'why'] } as const;
  for (let n = 0; n < BUTTONS; n += 1)
    seal(follow, 'fold.open', { key, holder: { group, asker: member }, at });
}

const client = new Client({
  intents: [GatewayIntentBits.Guilds],
  rest: { globalRequestsPerSecond: 1_000, timeout: 5_000, ...(api && { api }) },
});
async function answer(interaction: Interaction): Promise<void> {
  if (!interaction.isChatInputCommand()) return;
  await readAndKeep(interaction);
  const given = interaction.options.data.map(({ name, value }) => `${name}=${value}`);
  await interaction.reply({
    components: byOptions.get(given.sort().join(' ')) ?? [],
    flags: MessageFlags.IsComponentsV2,
    allowedMentions: { parse: [] },
  });
}
client.on(Events.InteractionCreate, interaction => void answer(interaction));
await client.login(token);
process.on('SIGTERM', () => process.exit(0));
