import { readdirSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { crc32, deflateSync } from 'node:zlib';
import sharp from 'sharp';
import { describe, expect, test } from 'vitest';
import type { ReasonId } from '../../src/engine/refusal.ts';
import { decodePhoto } from '../../src/photo/decode.ts';

const refused = async (bytes: Uint8Array, id: ReasonId) =>
  expect(await decodePhoto(bytes).catch((error: unknown) => error)).toMatchObject({ name: 'Refusal', id });

const solid = (width: number, height: number) =>
  sharp({ create: { width, height, channels: 3, background: '#7f5fa8' } });

/** A PNG whose header claims any size, with the pixels it really has. */
function png(width: number, height: number, pixels: Uint8Array): Uint8Array {
  const chunk = (type: string, data: Uint8Array) => {
    const body = Buffer.concat([Buffer.from(type), data]);
    const framed = Buffer.alloc(body.length + 8);
    framed.writeUInt32BE(data.length, 0);
    body.copy(framed, 4);
    framed.writeUInt32BE(crc32(body), body.length + 4);
    return framed;
  };
  const header = Buffer.alloc(13);
  header.writeUInt32BE(width, 0);
  header.writeUInt32BE(height, 4);
  header.set([8, 2, 0, 0, 0], 8);
  const signature = Buffer.from('\x89PNG\r\n\x1a\n', 'latin1');
  return Buffer.concat([
    signature,
    chunk('IHDR', header),
    chunk('IDAT', deflateSync(pixels)),
    chunk('IEND', Buffer.of()),
  ]);
}

describe('thin strips', () => {
  test.each([
    [160, 47_500],
    [47_500, 160],
    [160, 961],
  ])('%d x %d is refused before a pixel is decoded', async (width, height) => {
    await refused(png(width, height, new Uint8Array(1)), 'photo-too-thin');
  });

  test('six times as long as wide is still read', async () => {
    expect(await decodePhoto(await solid(960, 160).png().toBuffer())).toMatchObject({ width: 960 });
  });
});

describe('photos that are opened', () => {
  test.each(['jpeg', 'png', 'webp'] as const)('a %s comes out as sRGB at reading size', async format => {
    const photo = await decodePhoto(await solid(2048, 1024).toFormat(format).toBuffer());
    expect(photo).toMatchObject({ width: 1024, height: 512 });
    expect([...photo.rgb.subarray(0, 3)].map((v, i) => Math.abs(v - [127, 95, 168][i]!) < 4)).toEqual([
      true,
      true,
      true,
    ]);
  });

  test('a small photo is not blown up', async () => {
    expect(await decodePhoto(await solid(300, 200).png().toBuffer())).toMatchObject({
      width: 300,
      height: 200,
    });
  });

  test.each([
    [1, 'as it is', 400, 200],
    [3, 'upside down', 400, 200],
    [6, 'on its side', 200, 400],
    [8, 'on its other side', 200, 400],
  ])('EXIF orientation %i (%s) is turned upright', async (orientation, _how, width, height) => {
    // Red at the top left of the picture as it is meant to be seen.
    const corner = {
      input: await sharp({ create: { width: 60, height: 60, channels: 3, background: '#ff0000' } })
        .png()
        .toBuffer(),
    };
    const upright = await sharp({ create: { width, height, channels: 3, background: '#ffffff' } })
      .composite([{ ...corner, left: 0, top: 0 }])
      .png()
      .toBuffer();
    const turn = { 1: 0, 3: 180, 6: 270, 8: 90 }[orientation]!;
    const stored = await sharp(upright).rotate(turn).jpeg().withMetadata({ orientation }).toBuffer();
    const photo = await decodePhoto(stored);
    expect([photo.width, photo.height]).toEqual([width, height]);
    const [red = 0, green = 255] = photo.rgb.subarray((20 * width + 20) * 3);
    expect(red - green).toBeGreaterThan(150);
  });

  test('what is transparent is seen on white', async () => {
    const clear = sharp({
      create: { width: 200, height: 200, channels: 4, background: { r: 0, g: 0, b: 0, alpha: 0 } },
    });
    expect((await decodePhoto(await clear.png().toBuffer())).rgb.every(value => value === 255)).toBe(true);
  });
});

describe('files that are refused, with a sentence of their own', () => {
  test('an empty file', () => refused(new Uint8Array(), 'photo-empty'));
  test('more than 25 MB', () => refused(new Uint8Array(25 * 1024 * 1024 + 1).fill(0xff), 'photo-too-heavy'));
  test('text', () => refused(Buffer.from('<html>soap</html>'), 'photo-not-a-picture'));
  test('SVG, which can reach for other files', () =>
    refused(
      Buffer.from('<svg xmlns="http://www.w3.org/2000/svg" width="300" height="300"/>'),
      'photo-not-a-picture',
    ));
  test('a GIF', async () => refused(await solid(200, 200).gif().toBuffer(), 'photo-not-a-picture'));
  test('a moving WebP', async () => {
    const frame = (background: string) =>
      sharp({ create: { width: 200, height: 200, channels: 3, background } })
        .png()
        .toBuffer();
    const frames = sharp([await frame('#777777'), await frame('#999999')], { join: { animated: true } });
    await refused(await frames.webp({ loop: 0, delay: [100, 100] }).toBuffer(), 'photo-moving');
  });
  test('an icon', async () => refused(await solid(64, 64).png().toBuffer(), 'photo-too-small'));
  test('a JPEG cut short', async () => {
    const whole = await sharp({
      create: {
        width: 900,
        height: 900,
        channels: 3,
        background: '#888',
        noise: { type: 'gaussian', mean: 128, sigma: 40 },
      },
    })
      .jpeg()
      .toBuffer();
    await refused(whole.subarray(0, whole.length / 2), 'photo-broken');
  });
  test('a JPEG signature before rubbish', () =>
    refused(Buffer.concat([Buffer.of(0xff, 0xd8, 0xff, 0xe0), Buffer.alloc(500, 7)]), 'photo-broken'));
  test('a bomb: a few kilobytes that claim 400 megapixels', async () => {
    const bomb = png(20_000, 20_000, new Uint8Array(10_000));
    expect(bomb.length).toBeLessThan(1000);
    await refused(bomb, 'photo-too-large');
  });
  test('a header that lies: it claims more rows than there are', () =>
    refused(png(400, 1200, new Uint8Array((400 * 3 + 1) * 40)), 'photo-broken'));
  test('a header that lies upwards past any memory', () =>
    refused(png(0x7fffffff, 0x7fffffff, new Uint8Array(100)), 'photo-broken'));
});

test('nothing is written to disk', async () => {
  const before = readdirSync(tmpdir());
  await decodePhoto(await solid(1200, 900).jpeg().toBuffer());
  const made = readdirSync(tmpdir()).filter(name => !before.includes(name) && /vips|sharp/i.test(name));
  expect(made).toEqual([]);
});
