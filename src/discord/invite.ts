import { type GatewayIntentBits, PermissionFlagsBits } from 'discord.js';

/** What we ask of a group, and what for. Nothing else works less well without more. */
export const PERMISSIONS = {
  ViewChannel: 'see the channel that a challenge is announced in',
  SendMessages: 'announce challenges, votes and results',
  SendMessagesInThreads: 'the same in threads and forum posts',
  AttachFiles: 'pictures of palettes, bars and results',
  CreatePublicThreads: 'a thread for each challenge',
  CreateEvents: 'deadlines in the calendar of the group',
} as const satisfies Partial<Record<keyof typeof PermissionFlagsBits, string>>;

/** What we hear of without being asked, and what for; none of them is privileged. Source: Gateway > Gateway Intents. */
export const INTENTS = {
  Guilds: 'channels, roles, threads, and whether we are still in a group',
  GuildMessages: 'messages that mention us, so that a question or a cry for help is answered',
  DirectMessages: 'what is written to us in private',
} as const satisfies Partial<Record<keyof typeof GatewayIntentBits, string>>;
export const INTENT_NAMES = Object.keys(INTENTS) as readonly (keyof typeof INTENTS)[];

/** What the application is let in as. Source: platform documentation, Topics > OAuth2 > Scopes. */
export const SCOPES = ['bot', 'applications.commands'] as const;

/** The address at which a group's owner lets the assistant in with just these permissions. */
export function inviteLink(application: string): string {
  const permissions = Object.keys(PERMISSIONS).reduce(
    (bits, name) => bits | PermissionFlagsBits[name as keyof typeof PERMISSIONS],
    0n,
  );
  const query = new URLSearchParams({
    client_id: application,
    scope: SCOPES.join(' '),
    permissions: permissions.toString(),
  });
  return `https://discord.com/oauth2/authorize?${query}`;
}
