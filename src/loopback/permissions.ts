/**
 * Permission bits by name; a subset that a guild of makers uses.
 * Source: platform documentation, Topics > Permissions > Bitwise Permission Flags.
 */
export const permissionBits = {
  administrator: 1n << 3n,
  manageChannels: 1n << 4n,
  manageGuild: 1n << 5n,
  viewChannel: 1n << 10n,
  sendMessages: 1n << 11n,
  manageMessages: 1n << 13n,
  embedLinks: 1n << 14n,
  attachFiles: 1n << 15n,
  readMessageHistory: 1n << 16n,
  mentionEveryone: 1n << 17n,
  manageRoles: 1n << 28n,
  useApplicationCommands: 1n << 31n,
  manageEvents: 1n << 33n,
  manageThreads: 1n << 34n,
  createPublicThreads: 1n << 35n,
  sendMessagesInThreads: 1n << 38n,
  moderateMembers: 1n << 40n,
  createEvents: 1n << 44n,
} as const;

/** What everyone may do in an ordinary text channel. */
export const everyonePermissions =
  permissionBits.viewChannel |
  permissionBits.sendMessages |
  permissionBits.embedLinks |
  permissionBits.attachFiles |
  permissionBits.readMessageHistory |
  permissionBits.useApplicationCommands |
  permissionBits.createPublicThreads |
  permissionBits.sendMessagesInThreads;

/** Whether `held` contains every bit of `needed`; an administrator holds all. */
export const holds = (held: bigint, needed: bigint): boolean =>
  (held & permissionBits.administrator) !== 0n || (held & needed) === needed;
