import { crc32 } from 'node:zlib';

/** One file of an archive. */
export type Filed = { readonly name: string; readonly bytes: Uint8Array };

const STORED_FROM = 20;
const UTF8_NAMES = 0x0800;
/** 1980-01-01, the first day there is: an archive of the same files is the same archive. */
const FIRST_DAY = 0x0021;

/**
 * A ZIP archive of files as they are, uncompressed: pictures do not get smaller. After the ZIP File Format Specification
 * 6.3.10, 4.3.7 (local header), 4.3.12 (central directory) and 4.3.16 (its end). For less than 65,536 files and 4 GB.
 */
export function zipped(files: readonly Filed[]): Uint8Array {
  const parts: Buffer[] = [];
  const directory: Buffer[] = [];
  let at = 0;
  for (const { name, bytes } of files) {
    const named = Buffer.from(name, 'utf8');
    const common = commonFields(named, bytes);
    const local = Buffer.concat([word(4, 0x04034b50), common, named]);
    // After the common fields: no comment, disk 0, no attributes, and where the local header is.
    const central = Buffer.concat([
      word(4, 0x02014b50),
      word(2, STORED_FROM),
      common,
      Buffer.alloc(10),
      word(4, at),
      named,
    ]);
    parts.push(local, Buffer.from(bytes));
    directory.push(central);
    at += local.length + bytes.length;
  }
  const listed = Buffer.concat(directory);
  const end = Buffer.concat([
    word(4, 0x06054b50),
    Buffer.alloc(4),
    word(2, files.length),
    word(2, files.length),
    word(4, listed.length),
    word(4, at),
    word(2, 0),
  ]);
  return Buffer.concat([...parts, listed, end]);
}

/** Version, flags, method (0 stored), time, date, checksum, both sizes, lengths of the name and of the extra field. */
const commonFields = (name: Buffer, bytes: Uint8Array): Buffer =>
  Buffer.concat([
    word(2, STORED_FROM),
    word(2, UTF8_NAMES),
    word(2, 0),
    word(2, 0),
    word(2, FIRST_DAY),
    word(4, crc32(bytes)),
    word(4, bytes.length),
    word(4, bytes.length),
    word(2, name.length),
    word(2, 0),
  ]);

function word(size: 2 | 4, value: number): Buffer {
  const out = Buffer.alloc(size);
  out.writeUIntLE(value, 0, size);
  return out;
}
