import { readdir, readFile } from 'node:fs/promises';
import { stripTypeScriptTypes } from 'node:module';
import { extname } from 'node:path';
import { LANGUAGES } from '../words/locales.ts';

export type Asset = { readonly type: string; readonly body: string };

const SOURCE = new URL('../', import.meta.url);
const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.ts': 'text/javascript; charset=utf-8',
};

/** The words of the page, its languages and how a line is read are the only modules outside its folder that the browser loads. */
const WORDS = [
  'engine/language.ts',
  'engine/text/lines/option-line.ts',
  'engine/text/lines/option-value.ts',
  'words/locales.ts',
  ...LANGUAGES.map(language => `words/${language}/fronts/page.ts`),
];

/**
 * Everything the browser loads, by path: modules stand at their path under `src`, so that their imports hold, with
 * their types taken out.
 */
export async function readAssets(): Promise<ReadonlyMap<string, Asset>> {
  const names = await readdir(new URL('page/browser/', SOURCE), { recursive: true });
  const own = names.filter(name => extname(name) in TYPES).map(name => `page/browser/${name}`);
  const assets = await Promise.all(
    [...own, ...WORDS].map(async (path): Promise<[string, Asset]> => {
      const text = await readFile(new URL(path, SOURCE), 'utf8');
      const ending = extname(path);
      const body = ending === '.ts' ? stripTypeScriptTypes(text) : text;
      return [`/${path}`, { type: TYPES[ending] ?? 'text/plain', body }];
    }),
  );
  const all = new Map(assets);
  const index = all.get('/page/browser/index.html');
  if (index) all.set('/', index);
  return all;
}
