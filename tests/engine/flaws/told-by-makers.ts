import { readdirSync, readFileSync } from 'node:fs';
import type { Example } from './learned.ts';

type FlawSet = { readonly flaws?: readonly Example[] };

const folder = new URL('../../sets/', import.meta.url);

/**
 * Flaws as makers described them in the sets of other hands, each with the cause that its writer names. They were run once before
 * they were learned from; the figures of those runs stand in the sets.
 */
export const toldByMakers = (): readonly (Example & { readonly writer: string })[] =>
  readdirSync(folder)
    .filter(name => name.endsWith('.json'))
    .sort()
    .flatMap(name => {
      const { flaws = [] } = JSON.parse(readFileSync(new URL(name, folder), 'utf8')) as FlawSet;
      return flaws.map(({ text, cause }) => ({ text, cause, writer: name }));
    });
