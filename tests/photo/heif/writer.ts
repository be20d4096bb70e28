import { readFileSync } from 'node:fs';

/**
 * Writes HEIC files that encoders do not write at will: turned, mirrored, in tiles, or lying about their size. After
 * ISO/IEC 14496-12 (boxes) and ISO/IEC 23008-12 (HEIF: 6.5 item properties, 6.6.2.3 grids).
 */
export type Written = {
  readonly tile: Coded;
  /** The size that the file claims of one coded picture; the coded one's own where left out. */
  readonly claimed?: Size;
  /** Anticlockwise, in quarters of a turn. */
  readonly turns?: 0 | 1 | 2 | 3;
  /** About the upright axis: left and right change places. */
  readonly mirrored?: boolean;
  readonly grid?: { readonly rows: number; readonly columns: number; readonly size: Size };
};

type Size = { readonly width: number; readonly height: number };

/** One coded picture: the box with the decoder's settings, and the picture. */
export type Coded = Size & { readonly settings: Uint8Array; readonly picture: Uint8Array };

/** The coded picture of a file with one, as `heif-enc` writes it. */
export function codedIn(name: string): Coded {
  const file = readFileSync(new URL(name, import.meta.url));
  const at = (type: string) => file.indexOf(type, 0, 'latin1') - 4;
  const whole = (type: string) => file.subarray(at(type), at(type) + file.readUInt32BE(at(type)));
  const size = at('ispe');
  return {
    settings: whole('hvcC'),
    picture: file.subarray(at('mdat') + 8),
    width: file.readUInt32BE(size + 12),
    height: file.readUInt32BE(size + 16),
  };
}

const numbers = (bytes: 1 | 2 | 4, ...values: readonly number[]) => {
  const out = Buffer.alloc(bytes * values.length);
  for (const [i, value] of values.entries()) out.writeUIntBE(value, i * bytes, bytes);
  return out;
};

function box(type: string, ...parts: readonly Uint8Array[]): Buffer {
  const body = Buffer.concat(parts);
  return Buffer.concat([numbers(4, body.length + 8), Buffer.from(type, 'latin1'), body]);
}

/** A box with a version and flags. */
const full = (type: string, version: number, ...parts: readonly Uint8Array[]) =>
  box(type, numbers(4, version * 2 ** 24), ...parts);

const spatial = ({ width, height }: Size) => full('ispe', 0, numbers(4, width, height));

/** The file. Items: 1 the coded picture or the grid of it; 2 and on its tiles, which share one picture. */
export function heic({ tile, claimed = tile, turns = 0, mirrored = false, grid }: Written): Buffer {
  const tiles = grid ? grid.rows * grid.columns : 0;
  const properties = [
    tile.settings,
    spatial(claimed),
    ...(grid ? [spatial(grid.size)] : []),
    ...(turns ? [box('irot', numbers(1, turns))] : []),
    ...(mirrored ? [box('imir', numbers(1, 1))] : []),
  ];
  const first = grid ? 3 : 1;
  const main = properties.map((_, i) => i + 1).slice(first - 1);
  const plan = grid
    ? Buffer.concat([
        numbers(1, 0, 1, grid.rows - 1, grid.columns - 1),
        numbers(4, grid.size.width, grid.size.height),
      ])
    : Buffer.of();
  const items = [1, ...Array.from({ length: tiles }, (_, i) => i + 2)];
  const isGrid = (id: number) => grid !== undefined && id === 1;
  const meta = (at: number) =>
    full(
      'meta',
      0,
      full('hdlr', 0, numbers(4, 0), Buffer.from('pict'), Buffer.alloc(13)),
      full('pitm', 0, numbers(2, 1)),
      full(
        'iloc',
        0,
        numbers(2, 0x4400, items.length),
        ...items.flatMap(id => [
          numbers(2, id, 0, 1),
          isGrid(id) ? numbers(4, at, plan.length) : numbers(4, at + plan.length, tile.picture.length),
        ]),
      ),
      full(
        'iinf',
        0,
        numbers(2, items.length),
        ...items.map(id =>
          full('infe', 2, numbers(2, id, 0), Buffer.from(isGrid(id) ? 'grid' : 'hvc1'), numbers(1, 0)),
        ),
      ),
      ...(grid ? [full('iref', 0, box('dimg', numbers(2, 1, tiles, ...items.slice(1))))] : []),
      box(
        'iprp',
        box('ipco', ...properties),
        full(
          'ipma',
          0,
          numbers(4, items.length),
          ...items.map(id => {
            const own = isGrid(id) || !grid ? main : [1, 2];
            return Buffer.concat([numbers(2, id), numbers(1, own.length, ...own)]);
          }),
        ),
      ),
    );
  const kind = box('ftyp', Buffer.from('heic'), numbers(4, 0), Buffer.from('mif1heic'));
  const start = kind.length + meta(0).length + 8;
  return Buffer.concat([kind, meta(start), box('mdat', plan, tile.picture)]);
}
