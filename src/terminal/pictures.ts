import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Reply } from '../conversation/reply.ts';

/** Writes the pictures and files of a reply into a folder, each under a name of its own; returns the paths. */
export async function savePictures(reply: Reply<unknown>, folder: string): Promise<readonly string[]> {
  const files = reply.blocks.flatMap(block => {
    if (block.kind === 'picture') return [{ name: block.name, bytes: block.png }];
    return block.kind === 'file' ? [{ name: block.name, bytes: block.bytes }] : [];
  });
  if (files.length === 0) return [];
  await mkdir(folder, { recursive: true });
  const stamp = new Date().toISOString().replaceAll(/[:.]/g, '-');
  return await Promise.all(
    files.map(async ({ name, bytes }, index) => {
      const path = join(folder, `${stamp}-${index + 1}-${name}`);
      await writeFile(path, bytes);
      return path;
    }),
  );
}
