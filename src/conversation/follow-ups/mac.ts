import { hash } from 'node:crypto';

/** Of SHA-256, bytes (FIPS 180-4). */
const BLOCK = 64;
const DIGEST = 32;
/** Longer texts than an id and its holder make a buffer of their own, bytes. */
const ROOM = 448;
/** Most that UTF-8 makes of one UTF-16 unit, bytes. */
const WIDEST = 3;

/** The bytes of a key as HMAC puts it before a text: at most a block, each byte changed by `pad`. */
function padded(key: Uint8Array, { pad, room }: { readonly pad: number; readonly room: number }): Buffer {
  const fitting = key.length > BLOCK ? hash('sha256', key, 'buffer') : key;
  const bytes = Buffer.alloc(BLOCK + room);
  for (let at = 0; at < BLOCK; at += 1) bytes[at] = (fitting[at] ?? 0) ^ pad;
  return bytes;
}

/**
 * HMAC-SHA256 under one key, of its definition (RFC 2104): `H(K ^ opad, H(K ^ ipad, text))`, each hash in one call. The
 * library's own `createHmac` makes an object with a key of its own for each text, which takes twice as long and
 * is one more thing to be let go of by the collector: an answer has five buttons.
 */
export class Hmac {
  readonly #inner: Buffer;
  readonly #outer: Buffer;
  /** Beginnings of `#inner`, by how many bytes of text they hold. */
  readonly #beginnings: Buffer[] = [];

  constructor(key: Uint8Array) {
    this.#inner = padded(key, { pad: 0x36, room: ROOM });
    this.#outer = padded(key, { pad: 0x5c, room: DIGEST });
  }

  /** Of the UTF-8 bytes of a text, all 32 bytes of it, base64url. */
  of(text: string): string {
    this.#outer.write(hash('sha256', this.#before(text), 'binary'), BLOCK, 'latin1');
    return hash('sha256', this.#outer, 'base64url');
  }

  /** The padded key and the text behind it. */
  #before(text: string): Buffer {
    if (text.length * WIDEST > ROOM)
      return Buffer.concat([this.#inner.subarray(0, BLOCK), Buffer.from(text)]);
    const end = BLOCK + this.#inner.write(text, BLOCK, 'utf8');
    const beginning = this.#beginnings[end] ?? this.#inner.subarray(0, end);
    this.#beginnings[end] = beginning;
    return beginning;
  }
}
