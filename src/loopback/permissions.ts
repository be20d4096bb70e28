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
  manageRoles: 1n << 28n,
  useApplicationCommands: 1n << 31n,
  moderateMembers: 1n << 40n,
} as const;

/** What everyone may do in an ordinary text channel. */
export const everyonePermissions =
  permissionBits.viewChannel |
  permissionBits.sendMessages |
  permissionBits.embedLinks |
  permissionBits.attachFiles |
  permissionBits.readMessageHistory |
  permissionBits.useApplicationCommands;

/** Whether `held` contains every bit of `needed`; an administrator holds all. */
export const holds = (held: bigint, needed: bigint): boolean =>
  (held & permissionBits.administrator) !== 0n || (held & needed) === needed;
