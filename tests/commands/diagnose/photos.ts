import { crc32, deflateSync } from 'node:zlib';
import type { Flaw } from '../../photo/render/flaws.ts';
import { shoot } from '../../photo/render/scene.ts';
import { FLAW_DRAWINGS, shotOf } from '../../photo/render/shots.ts';

const CAMERA = { blur: 3, noise: 2, quality: 88 };

/** A rendered photo of a bar with one flaw, or of a clean one. */
export async function barPhoto(kind?: Flaw['kind']): Promise<Uint8Array> {
  const drawing = kind && FLAW_DRAWINGS[kind](5);
  const shot = shotOf(5, CAMERA, {
    ...(drawing && { flaws: [drawing.flaw] }),
    ...(drawing?.colours && { colours: drawing.colours }),
  });
  return await shoot(shot);
}

/** Less than a kilobyte of PNG that claims 400 megapixels. */
export function bomb(): Uint8Array {
  const chunk = (type: string, data: Uint8Array) => {
    const body = Buffer.concat([Buffer.from(type), data]);
    const framed = Buffer.alloc(body.length + 8);
    framed.writeUInt32BE(data.length, 0);
    body.copy(framed, 4);
    framed.writeUInt32BE(crc32(body), body.length + 4);
    return framed;
  };
  const header = Buffer.alloc(13);
  header.writeUInt32BE(20_000, 0);
  header.writeUInt32BE(20_000, 4);
  header.set([8, 2, 0, 0, 0], 8);
  const pixels = deflateSync(new Uint8Array(10_000));
  return Buffer.concat([
    Buffer.from('\x89PNG\r\n\x1a\n', 'latin1'),
    chunk('IHDR', header),
    chunk('IDAT', pixels),
    chunk('IEND', Buffer.of()),
  ]);
}
