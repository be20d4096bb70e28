import { createHmac, createSecretKey, type KeyObject, randomBytes, timingSafeEqual } from 'node:crypto';
import { refuse } from '../../engine/refusal.ts';

declare module '../../engine/refusal.ts' {
  interface Reasons {
    'follow-up-expired': Record<string, never>;
    'follow-up-not-yours': Record<string, never>;
  }
}

/** As much of a follow-up as its id tells. */
export type FollowTarget = {
  /** `asker`: only who was answered may use it. `group`: anyone in the group. */
  readonly for: 'asker' | 'group';
  /** Hours it can be used, counted from the answer that offered it. */
  readonly hours: number;
};

/** A follow-up and its arguments, as a command puts it in a choice. */
export type Follow = { readonly followUp: FollowTarget; readonly args: readonly string[] };

/** A follow-up as it comes back: which one, with what, and the nonce that makes its effect happen once. */
export type Opened = { readonly name: string; readonly args: readonly string[]; readonly nonce: string };

/** Who an id is valid for. */
export type Holder = { readonly group: string; readonly asker: string };

/** The platform's limit on a custom id, characters. */
const LONGEST_ID = 100;
const VERSION = '1';
/** 72 bits of HMAC-SHA256: short enough to travel, far too long to guess one press at a time. */
const MAC_BYTES = 9;
const MAC_LENGTH = (MAC_BYTES * 4) / 3;
const HOUR = 3_600_000;

const prepared = new WeakMap<Uint8Array, KeyObject>();

/** The key as the library wants it: made anew for every id, it took five times as long as the signing. */
function keyOf(bytes: Uint8Array): KeyObject {
  const known = prepared.get(bytes) ?? createSecretKey(bytes);
  prepared.set(bytes, known);
  return known;
}

const NONCE_BYTES = 6;
/** Drawn for many nonces at once, each used once: one call to the system's source costs more than a signature. */
let drawn = Buffer.alloc(0);
let used = 0;

/** 48 random bits, in characters that travel in an id. */
export function nonce(): string {
  if (used >= drawn.length) {
    drawn = randomBytes(NONCE_BYTES * 512);
    used = 0;
  }
  used += NONCE_BYTES;
  return drawn.toString('base64url', used - NONCE_BYTES, used);
}

/** As it is written in an id: three bytes are four characters, so its beginning is that of the bytes. */
const mac = (key: Uint8Array, text: string, { group, asker }: Holder, scope: string): string =>
  createHmac('sha256', keyOf(key))
    .update(`${text}\0${group}\0${scope === 'a' ? asker : ''}`)
    .digest('base64url')
    .slice(0, MAC_LENGTH);

const TRAVELS = /^[\w-]*$/;

/**
 * Signs a follow-up into a custom id: version, scope, name, expiry hour, nonce, arguments, HMAC.
 * Throws an Error when an argument has a character outside `[A-Za-z0-9_-]` or the id grows over 100
 * characters: a fault of the command, not of a member.
 */
export function seal(
  follow: Follow,
  name: string,
  { key, holder, at }: { key: Uint8Array; holder: Holder; at: number },
): string {
  const { followUp, args } = follow;
  // Which one, and not what it says: it may be a member's own text, and faults are logged.
  args.forEach((arg, at) => {
    if (!TRAVELS.test(arg)) throw new Error(`argument ${at + 1} of ${name} cannot travel in an id`);
  });
  const scope = followUp.for === 'asker' ? 'a' : 'g';
  const expiry = Math.ceil(at / HOUR + followUp.hours).toString(36);
  const head = `${VERSION}~${scope}~${name}~${expiry}~${nonce()}`;
  const text = args.length === 0 ? head : `${head}~${args.join('~')}`;
  const id = `${text}~${mac(key, text, holder, scope)}`;
  if (id.length > LONGEST_ID) throw new Error(`the id of ${name} has ${id.length} characters`);
  return id;
}

/**
 * The name that an id claims to lead to, unproved: for loading what opening it may need. Empty where it claims none;
 * throws for nothing, not even where a broken packet brought no id at all.
 */
export const followUpNameIn = (id: string): string => /^[^~]*~[^~]*~([^~]*)/.exec(id)?.[1] ?? '';

/**
 * Opens a custom id. What `before`, an earlier key, signed is as good. Throws a Refusal when it is forged, meant for
 * somebody else, or too old.
 */
export function open(
  id: string,
  {
    key,
    before,
    holder,
    at,
  }: { key: Uint8Array; before?: Uint8Array | undefined; holder: Holder; at: number },
): Opened {
  const cut = id.lastIndexOf('~');
  const text = id.slice(0, Math.max(cut, 0));
  const [version, scope = '', name = '', expiry = '', nonce = '', ...args] = text.split('~');
  const claimed = Buffer.from(id.slice(cut + 1), 'base64url');
  const signs = (one: Uint8Array) =>
    timingSafeEqual(claimed, Buffer.from(mac(one, text, holder, scope), 'base64url'));
  const keys = before ? [key, before] : [key];
  if (version !== VERSION || claimed.length !== MAC_BYTES || !keys.some(signs))
    return refuse('follow-up-not-yours', {});
  if (at > Number.parseInt(expiry, 36) * HOUR) refuse('follow-up-expired', {});
  return { name, args, nonce };
}
