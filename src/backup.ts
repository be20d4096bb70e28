import { parseArgs } from 'node:util';
import { refuse } from './engine/refusal.ts';
import type { Words } from './words/index.ts';

declare module './engine/refusal.ts' {
  interface Reasons {
    'backup-how': { readonly mode: 'backup' | 'restore' | 'move' };
  }
}

type Mode = 'backup' | 'restore' | 'move';

/** `npm run backup -- FILE`, `restore -- FILE`, `move -- --from STORE --to STORE`. Gives the sentence to print. */
export async function runBackup(
  mode: Mode,
  args: readonly string[],
  { store, say }: { readonly store: string; readonly say: Words },
): Promise<string> {
  const { from, to, file } = read(mode, args);
  const { backUp, move, restore } = await import('./records/backup/backup.ts');
  if (mode === 'move') {
    if (!from || !to) return refuse('backup-how', { mode });
    return say.backup.moved(await move(from, to));
  }
  if (!file) return refuse('backup-how', { mode });
  return mode === 'backup'
    ? say.backup.backedUp({ ...(await backUp(store, file)), file })
    : say.backup.restored({ ...(await restore(file, store)), file });
}

function read(mode: Mode, args: readonly string[]) {
  try {
    const options = { from: { type: 'string' }, to: { type: 'string' } } as const;
    const { values, positionals } = parseArgs({ args: [...args], options, allowPositionals: true });
    return { ...values, file: positionals.length === 1 ? positionals[0] : undefined };
  } catch {
    return refuse('backup-how', { mode });
  }
}
