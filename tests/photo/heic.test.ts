import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import sharp from 'sharp';
import { describe, expect, test, vi } from 'vitest';
import type { ReasonId } from '../../src/engine/refusal.ts';
import { decodePhoto, type Pixels } from '../../src/photo/decode.ts';
import { holdTo, withHeic } from '../../src/photo/heic.ts';
import { sniff } from '../../src/photo/sniff.ts';
import { codedIn, heic } from './heif/writer.ts';
import { readPhoto } from './in-a-thread.ts';

const file = (name: string) => new Uint8Array(readFileSync(new URL(`heif/${name}`, import.meta.url)));
const tile = codedIn('quarters.heic');

const RED = [200, 30, 30];
const GREEN = [30, 160, 60];
const BLUE = [40, 60, 190];
const OCHRE = [200, 150, 40];
const WHITE = [255, 255, 255];

/** The colours in the middle of each quarter, from the left to the right and then down. */
const quarters = ({ width, height, rgb }: Pixels) =>
  [0.25, 0.75].flatMap(v =>
    [0.25, 0.75].map(u => {
      const at = 3 * (Math.floor(v * height) * width + Math.floor(u * width));
      return [...rgb.subarray(at, at + 3)];
    }),
  );

/** Each channel within 3 of 255: what the codec and its half resolution of colour leave. */
function shows(photo: Pixels, colours: readonly (readonly number[])[]): void {
  const off = quarters(photo).flatMap((colour, i) =>
    colour.map((value, c) => Math.abs(value - colours[i]![c]!)),
  );
  expect(Math.max(...off)).toBeLessThanOrEqual(3);
}

const refused = async (bytes: Uint8Array, id: ReasonId) =>
  expect(await decodePhoto(bytes).catch((error: unknown) => error)).toMatchObject({ name: 'Refusal', id });

test('its decoder is loaded with the first such photo, not before', async () => {
  const { cache } = createRequire(import.meta.url);
  const loaded = () => Object.keys(cache).some(path => path.includes('libheif-js'));
  const plain = sharp({ create: { width: 300, height: 200, channels: 3, background: '#777' } });
  await decodePhoto(await plain.jpeg().toBuffer());
  expect(loaded()).toBe(false);
  await decodePhoto(file('quarters.heic'));
  expect(loaded()).toBe(true);
});

describe('pictures that are opened', () => {
  test.each([
    'quarters.heic',
    'quarters-10-bit.heic',
    'quarters-p3.heic',
    'quarters-then-grey.heic',
    'quarters.avif',
  ])('%s comes out in sRGB', async name => {
    const photo = await decodePhoto(file(name));
    expect(photo).toMatchObject({ width: 480, height: 320 });
    shows(photo, [RED, GREEN, BLUE, OCHRE]);
  });

  test('what is transparent is seen on white', async () => {
    shows(await decodePhoto(file('quarters-left-half-opaque.heic')), [RED, WHITE, BLUE, WHITE]);
  });

  test('the main picture is taken, also where it is not the first in the file', async () => {
    const bytes = file('quarters-then-grey.heic');
    const main = Buffer.from(bytes).indexOf('pitm') + 8;
    bytes[main + 1] = 2;
    shows(
      await decodePhoto(bytes),
      Array.from({ length: 4 }, () => [119, 119, 119]),
    );
  });

  test.each([
    [1, [GREEN, OCHRE, RED, BLUE]],
    [2, [OCHRE, BLUE, GREEN, RED]],
    [3, [BLUE, RED, OCHRE, GREEN]],
  ] as const)('%i quarter turns anticlockwise', async (turns, colours) => {
    const photo = await decodePhoto(heic({ tile, turns }));
    expect([photo.width, photo.height]).toEqual(turns === 2 ? [480, 320] : [320, 480]);
    shows(photo, colours);
  });

  test('mirrored', async () => {
    shows(await decodePhoto(heic({ tile, mirrored: true })), [GREEN, RED, OCHRE, BLUE]);
  });

  test('in tiles, as phones write them, brought down to reading size', async () => {
    const grid = { rows: 3, columns: 4, size: { width: 1900, height: 950 } };
    const photo = await decodePhoto(heic({ tile, grid }), 950);
    expect(photo).toMatchObject({ width: 950, height: 475 });
    // A quarter of a tile down and across in the one at the top left.
    const at = 3 * (40 * 950 + 60);
    expect(Math.abs(photo.rgb[at]! - RED[0]!)).toBeLessThanOrEqual(3);
  });

  test('a bar in a HEIC is read as it is in a JPEG of the same picture', async () => {
    const { width, height, rgb } = await decodePhoto(file('bar-with-crackle.heic'));
    const jpeg = sharp(rgb, { raw: { width, height, channels: 3 } }).jpeg({ quality: 100 });
    const [one, other] = await Promise.all([
      readPhoto(file('bar-with-crackle.heic')),
      jpeg.toBuffer().then(bytes => readPhoto(bytes)),
    ]);
    expect(one.bars).toHaveLength(1);
    expect(one.findings.map(({ id }) => id)).toContain('crackle-network');
    expect(one.findings.map(({ id, answer }) => [id, answer])).toEqual(
      other.findings.map(({ id, answer }) => [id, answer]),
    );
  });
});

describe('files that are refused', () => {
  test('cut short at any length', async () => {
    const whole = file('quarters.heic');
    for (let length = 40; length < whole.length; length += 97)
      await refused(whole.subarray(0, length), 'photo-heif-unread');
  });

  test('rubbish after the first bytes', () =>
    refused(
      Buffer.concat([Buffer.of(0, 0, 0, 24), Buffer.from('ftypheic'), Buffer.alloc(200, 7)]),
      'photo-heif-unread',
    ));

  test('a header that claims 400 megapixels', () =>
    refused(heic({ tile, claimed: { width: 20_000, height: 20_000 } }), 'photo-too-large'));

  test('tiles that claim 61 megapixels together', () =>
    refused(
      heic({ tile, grid: { rows: 2, columns: 2, size: { width: 9600, height: 6400 } } }),
      'photo-too-large',
    ));

  test('a claim of many more pixels than there are', () =>
    refused(heic({ tile, claimed: { width: 4800, height: 3200 } }), 'photo-heif-unread'));

  test('a claim of fewer pixels than are coded', () =>
    refused(heic({ tile, claimed: { width: 240, height: 200 } }), 'photo-heif-unread'));

  test('a strip', () =>
    refused(
      heic({ tile, grid: { rows: 1, columns: 7, size: { width: 3360, height: 320 } } }),
      'photo-too-thin',
    ));

  test('an icon', () => refused(heic({ tile, claimed: { width: 64, height: 64 } }), 'photo-too-small'));

  test('a coding that nobody here decodes', () => {
    const bytes = heic({ tile });
    // VVC.
    bytes.write('vvc1', bytes.indexOf('hvc1'), 'latin1');
    return refused(bytes, 'photo-heif-unread');
  });

  test('a broken one leaves the next one readable', async () => {
    await refused(heic({ tile }).subarray(0, 900), 'photo-heif-unread');
    shows(await decodePhoto(heic({ tile })), [RED, GREEN, BLUE, OCHRE]);
  });
});

describe('told by its content', () => {
  const boxed = (...brands: readonly string[]) => {
    const [main = '', ...others] = brands;
    const bytes = Buffer.concat([Buffer.alloc(4), Buffer.from(`ftyp${main}\0\0\0\0${others.join('')}`)]);
    bytes.writeUInt32BE(bytes.length, 0);
    return bytes;
  };

  test('by the main brand or one that it is compatible with', () => {
    expect(sniff(boxed('heic'))).toBe('heif');
    expect(sniff(boxed('xyz1', 'miaf', 'avif'))).toBe('heif');
    expect(sniff(boxed('mp42', 'isom'))).toBeUndefined();
  });

  test('by no brand beyond the end of its box', () => {
    expect(sniff(Buffer.concat([boxed('mp42', 'isom'), Buffer.from('heic')]))).toBeUndefined();
  });
});

describe('bounds', () => {
  test('a decoder is kept for the next photo, but not after 12 megapixels: its memory never shrinks', async () => {
    const opened = vi.spyOn(WebAssembly, 'Instance');
    const small = heic({ tile });
    const grid = { rows: 6, columns: 8, size: { width: 4000, height: 3000 } };
    const large = heic({ tile: codedIn('grain.heic'), grid });
    const openedFor = async (bytes: Uint8Array) => {
      opened.mockClear();
      await withHeic(bytes, () => Promise.resolve(1));
      return opened.mock.calls.length;
    };
    await openedFor(small);
    expect(await openedFor(small)).toBe(0);
    expect(await openedFor(large)).toBe(0);
    expect(await openedFor(small)).toBe(1);
    opened.mockRestore();
  });

  test('the decoder’s memory ends where we say', () => {
    const memory = new WebAssembly.Memory({ initial: 1 });
    holdTo(4 * 65_536, memory);
    expect(memory.grow(3)).toBe(1);
    expect(() => memory.grow(1)).toThrow(RangeError);
    expect(memory.buffer.byteLength).toBe(4 * 65_536);
  });

  test('the decoder refuses by itself what claims more pixels than a photo may have', async () => {
    const lying = heic({ tile, claimed: { width: 20_000, height: 20_000 } });
    await expect(withHeic(lying, () => Promise.resolve(1))).rejects.toMatchObject({
      name: 'HeicBroken',
      message: 'claims 400000000 pixels',
    });
  });
});
