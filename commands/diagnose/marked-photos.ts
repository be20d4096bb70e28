/**
 * Photos with what was seen on them, for the answers that replace one another while questions are asked. In memory
 * only and the newest first to stay: no picture of a member is ever written down. After a restart the answers go on
 * without it.
 */
export class MarkedPhotos {
  readonly #most: number;
  readonly #kept = new Map<string, Uint8Array>();
  #bytes = 0;

  /** `most` is in bytes. */
  constructor(most: number) {
    this.#most = most;
  }

  keep(id: string, png: Uint8Array): void {
    this.#forget(id);
    this.#kept.set(id, png);
    this.#bytes += png.byteLength;
    for (const oldest of this.#kept.keys()) {
      if (this.#bytes <= this.#most) return;
      this.#forget(oldest);
    }
  }

  of(id: string): Uint8Array | undefined {
    return this.#kept.get(id);
  }

  #forget(id: string): void {
    this.#bytes -= this.#kept.get(id)?.byteLength ?? 0;
    this.#kept.delete(id);
  }
}
