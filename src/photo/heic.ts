import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { PHOTO_LIMITS } from './limits.ts';

/**
 * Rows of interleaved 8-bit values as the file has them, upright. The memory is the decoder's own: it is good until the
 * function that it was lent to has ended.
 */
export type HeicPixels = {
  readonly width: number;
  readonly height: number;
  /** Four where the picture is transparent in places. */
  readonly channels: 3 | 4;
  /** Whether colours were multiplied by what covers them. */
  readonly premultiplied: boolean;
  readonly data: Uint8Array;
};

/** What a file that no decoder can make sense of is told by; the message is the decoder's. */
export class HeicBroken extends Error {
  override readonly name = 'HeicBroken';
}

/** The decoder's memory, bytes: 50 megapixels in YCbCr twice and in RGBA need 350 MB. Beyond it decoding fails. */
const MOST_MEMORY = 400e6;
/**
 * Bytes. A decoder that grew beyond this for one photo is not kept for the next: its memory never shrinks, and the network
 * needs its own after it. 12 megapixels in tiles need 56 MB; another decoder costs no more than opening it, compiled once.
 */
const KEPT_MEMORY = 48e6;

type Handle = object;
type Failed = { readonly code: object; readonly message: string };
type Decoded = {
  readonly image: object;
  readonly channels: readonly {
    readonly id: object;
    readonly stride: number;
    readonly width: number;
    readonly height: number;
    readonly data: Uint8Array;
  }[];
};
/** What is used of libheif, as libheif-js shows it. */
type Libheif = {
  readonly HEAPU8: Uint8Array;
  readonly heif_error_code: { readonly heif_error_Ok: object };
  readonly heif_colorspace: { readonly heif_colorspace_RGB: object };
  readonly heif_chroma: {
    readonly heif_chroma_interleaved_RGB: object;
    readonly heif_chroma_interleaved_RGBA: object;
  };
  heif_context_alloc(): object;
  heif_context_free(context: object): void;
  heif_context_read_from_memory(context: object, bytes: Uint8Array): Failed;
  heif_js_context_get_primary_image_handle(context: object): Handle | Failed;
  heif_image_handle_get_width(handle: Handle): number;
  heif_image_handle_get_height(handle: Handle): number;
  heif_image_handle_has_alpha_channel(handle: Handle): number;
  heif_image_handle_is_premultiplied_alpha(handle: Handle): number;
  heif_image_handle_release(handle: Handle): void;
  heif_js_decode_image2(handle: Handle, space: object, chroma: object): Decoded | Failed;
  heif_image_release(image: object): void;
};
type Instantiate = (imports: WebAssembly.Imports, done: (instance: WebAssembly.Instance) => void) => object;
type Factory = (options: {
  readonly instantiateWasm: Instantiate;
  readonly print: () => void;
  readonly printErr: () => void;
}) => Promise<Libheif>;

const failed = (result: object): result is Failed => 'code' in result;
const silent = () => undefined;

let compiled: Promise<{ readonly factory: Factory; readonly code: WebAssembly.Module }> | undefined;
let kept: Libheif | undefined;

/** Loads the decoder when a HEIC photo first comes to this thread. Nothing is fetched: its file is in the package. */
async function load() {
  const require = createRequire(import.meta.url);
  const bytes = await readFile(require.resolve('libheif-js/libheif-wasm/libheif.wasm'));
  const factory = require('libheif-js/libheif-wasm/libheif.js') as Factory;
  return { factory, code: await WebAssembly.compile(bytes) };
}

async function opened(): Promise<Libheif> {
  if (kept) return kept;
  compiled ??= load();
  const { factory, code } = await compiled;
  return factory({
    print: silent,
    printErr: silent,
    instantiateWasm(imports, done) {
      const instance = new WebAssembly.Instance(code, imports);
      for (const one of Object.values(instance.exports))
        if (one instanceof WebAssembly.Memory) holdTo(MOST_MEMORY, one);
      done(instance);
      return instance.exports;
    },
  });
}

/** The compiled code may grow to 4 GB. All of its growing goes through `grow`, and it takes a failure for "none left". */
export function holdTo(most: number, memory: WebAssembly.Memory): void {
  const grow = memory.grow.bind(memory);
  memory.grow = pages => {
    if (memory.buffer.byteLength + pages * 65_536 > most) throw new RangeError('no memory left');
    return grow(pages);
  };
}

/**
 * Decodes the main picture of a HEIC file, turned and mirrored as the file asks, and lends it to `use`.
 * Throws a {@link HeicBroken} where it cannot, before decoding where the file claims more pixels than a photo may have.
 */
export async function withHeic<Result>(
  bytes: Uint8Array,
  use: (pixels: HeicPixels) => Promise<Result>,
): Promise<Result> {
  const library = await opened();
  kept = undefined;
  const context = library.heif_context_alloc();
  const read = library.heif_context_read_from_memory(context, bytes);
  if (read.code !== library.heif_error_code.heif_error_Ok) throw new HeicBroken(read.message);
  const handle = library.heif_js_context_get_primary_image_handle(context);
  if (failed(handle)) throw new HeicBroken(handle.message);
  const decoded = decode(library, handle);
  const result = await use(decoded.pixels);
  // After a failure all of it is dropped with the decoder, which may be left in any state.
  library.heif_image_release(decoded.image);
  library.heif_image_handle_release(handle);
  library.heif_context_free(context);
  if (library.HEAPU8.byteLength <= KEPT_MEMORY) kept = library;
  return result;
}

function decode(library: Libheif, handle: Handle): { readonly image: object; readonly pixels: HeicPixels } {
  const { heif_colorspace, heif_chroma } = library;
  const claimed = library.heif_image_handle_get_width(handle) * library.heif_image_handle_get_height(handle);
  if (!(claimed <= PHOTO_LIMITS.pixels)) throw new HeicBroken(`claims ${claimed} pixels`);
  const alpha = library.heif_image_handle_has_alpha_channel(handle) !== 0;
  const decoded = library.heif_js_decode_image2(
    handle,
    heif_colorspace.heif_colorspace_RGB,
    alpha ? heif_chroma.heif_chroma_interleaved_RGBA : heif_chroma.heif_chroma_interleaved_RGB,
  );
  if (failed(decoded)) throw new HeicBroken(decoded.message);
  const [plane] = decoded.channels;
  if (!plane) throw new HeicBroken('no pixels');
  const channels = alpha ? 4 : 3;
  const premultiplied = alpha && library.heif_image_handle_is_premultiplied_alpha(handle) !== 0;
  const { width, height } = plane;
  return {
    image: decoded.image,
    pixels: { width, height, channels, premultiplied, data: tight(plane, channels) },
  };
}

/** Rows without what pads them; the decoder's own memory where nothing does. */
function tight({ width, height, stride, data }: Decoded['channels'][number], channels: number): Uint8Array {
  const row = width * channels;
  if (stride === row) return data.subarray(0, row * height);
  const out = new Uint8Array(row * height);
  for (let y = 0; y < height; y++) out.set(data.subarray(y * stride, y * stride + row), y * row);
  return out;
}
