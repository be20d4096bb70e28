import {
  type Interaction,
  InteractionContextType,
  PermissionFlagsBits,
  type PermissionsBitField,
} from 'discord.js';
import type { Here } from '../conversation/question.ts';
import type { Lack, LackBeside } from '../words/lack.ts';

const MOST_PLACES = 3;

/** What of a channel decides whether a post gets through; structural, as options name channels only in part. */
type Channelish = {
  isThread(): boolean;
  readonly locked?: boolean | null;
  readonly type: number;
};

/** Kinds of channel that take messages: text, announcements, voice and stage, threads. Source: Resources > Channel Types. */
const TAKES_MESSAGES: ReadonlySet<number> = new Set([0, 2, 5, 10, 11, 12, 13]);

/** What we lack to post news with pictures in a channel, by our permissions there. */
export function lacksIn(
  channel: Channelish | null,
  may: Readonly<PermissionsBitField> | null,
): readonly Lack[] {
  if (!may) return ['view'];
  const has = (bit: bigint) => may.has(bit);
  const isThread = channel?.isThread() ?? false;
  const post = isThread ? PermissionFlagsBits.SendMessagesInThreads : PermissionFlagsBits.SendMessages;
  return [
    ...(has(PermissionFlagsBits.ViewChannel) ? [] : (['view'] as const)),
    ...(has(post) ? [] : [isThread ? ('post-in-threads' as const) : ('post' as const)]),
    ...(has(PermissionFlagsBits.AttachFiles) ? [] : (['attach'] as const)),
    ...(isThread && channel?.locked && !has(PermissionFlagsBits.ManageThreads)
      ? (['unlocked'] as const)
      : []),
    ...(channel && !TAKES_MESSAGES.has(channel.type) ? (['messages'] as const) : []),
  ];
}

/** What we may not put beside news in a channel: a thread under it, its deadlines in the calendar. */
export function lacksBesideIn(
  channel: Channelish | null,
  may: Readonly<PermissionsBitField> | null,
): readonly LackBeside[] {
  // In a thread there is none under a message, and nobody expects one.
  const opensThreads = channel?.isThread() || may?.has(PermissionFlagsBits.CreatePublicThreads);
  return [
    ...(opensThreads ? [] : (['thread'] as const)),
    ...(may?.has(PermissionFlagsBits.CreateEvents) ? [] : (['calendar'] as const)),
  ];
}

/** Who let us in, and what we may do where a question comes from; undefined in messages between us two. */
export function hereOf(interaction: Interaction): Here | undefined {
  const { appPermissions, channel, guildId } = interaction;
  const isOurs = guildId !== null && interaction.authorizingIntegrationOwners?.guildId === guildId;
  if (
    interaction.context === InteractionContextType.BotDM ||
    (guildId === null && !isBroughtAlong(interaction))
  )
    return undefined;
  return {
    letInBy: isOurs ? 'group' : 'member',
    // Looked for by the few who post something.
    get lacks() {
      return isOurs ? lacksIn(channel as Channelish | null, appPermissions) : (['view'] as const);
    },
    get lacksBeside() {
      return isOurs ? lacksBesideIn(channel as Channelish | null, appPermissions) : [];
    },
    betterPlaces: () => (isOurs ? placesIn(interaction) : []),
  };
}

/** True where only the asker let us in: a group we are not in, or messages between members. */
export const isBroughtAlong = ({ context, guildId, authorizingIntegrationOwners }: Interaction): boolean =>
  context === InteractionContextType.PrivateChannel ||
  (guildId !== null &&
    authorizingIntegrationOwners?.userId != null &&
    authorizingIntegrationOwners.guildId !== guildId);

function placesIn({ guild }: Interaction): readonly string[] {
  const me = guild?.members.me;
  if (!me) return [];
  return [...guild.channels.cache.values()]
    .filter(channel => channel.isTextBased() && !channel.isThread())
    .filter(channel => lacksIn(channel as unknown as Channelish, channel.permissionsFor(me)).length === 0)
    .slice(0, MOST_PLACES)
    .map(({ name }) => `#${name}`);
}
