import type { BarePhoto } from '../../src/workers/photo.ts';

/** The marked photo as PNG, and the photo itself. */
type Marked = { readonly png: Uint8Array; readonly photo: BarePhoto };

/**
 * Photos with what was seen on them, for the answers that replace one another while questions are asked, and the photos
 * themselves, for whoever agrees to give theirs. In memory only and the newest first to stay: no picture of a member is
 * written down unless they ask for it. After a restart the answers go on without it.
 */
export class MarkedPhotos {
  readonly #most: number;
  readonly #kept = new Map<string, Marked>();
  #bytes = 0;

  /** `most` is in bytes. */
  constructor(most: number) {
    this.#most = most;
  }

  keep(id: string, marked: Marked): void {
    this.#forget(id);
    this.#kept.set(id, marked);
    this.#bytes += sizeOf(marked);
    for (const oldest of this.#kept.keys()) {
      if (this.#bytes <= this.#most) return;
      this.#forget(oldest);
    }
  }

  of(id: string): Marked | undefined {
    return this.#kept.get(id);
  }

  #forget(id: string): void {
    const marked = this.#kept.get(id);
    if (marked) this.#bytes -= sizeOf(marked);
    this.#kept.delete(id);
  }
}

const sizeOf = ({ png, photo }: Marked): number => png.byteLength + photo.jpeg.byteLength;
