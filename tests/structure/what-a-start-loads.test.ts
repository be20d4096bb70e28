import { execFile } from 'node:child_process';
import { promisify } from 'node:util';
import { expect, test } from 'vitest';

const src = new URL('../../src/', import.meta.url);

/** The files that a process has loaded once it answers on the platform, and once it has spoken Spanish. */
async function loaded(): Promise<{ readonly start: readonly string[]; readonly spanish: readonly string[] }> {
  const [wiring, client, post, words] = [
    'wiring.ts',
    'discord/client.ts',
    'discord/post.ts',
    'words/index.ts',
  ].map(file => JSON.stringify(new URL(file, src).href));
  const program = `
    const { registerHooks } = await import("node:module");
    const urls = [];
    registerHooks({ load(url, context, next) { urls.push(url); return next(url, context); } });
    for (const one of [${wiring}, ${client}, ${post}]) await import(one);
    const start = [...urls];
    const { wordsIn } = await import(${words});
    const said = wordsIn('es').language + wordsIn('es').folds.next.preview;
    if (!said.startsWith('es')) throw new Error(said);
    console.log(JSON.stringify({ start, spanish: urls.slice(start.length) }));
  `;
  const { stdout } = await promisify(execFile)(
    process.execPath,
    ['--disable-warning=ExperimentalWarning', '--input-type=module', '--eval', program],
    { maxBuffer: 1e8 },
  );
  return JSON.parse(stdout) as Awaited<ReturnType<typeof loaded>>;
}

/*
 * What a start must not wait for: each of these is a tenth to a third of all that is loaded, and one answer in many
 * needs it. A single import from the wrong place brings it back unnoticed.
 */
test('a start loads neither what questions in words need, nor colour lists, nor a second language, nor a command', async () => {
  const { start, spanish } = await loaded();
  const late = [
    /\/src\/engine\/questions\/read\.ts$/,
    /\/node_modules\/color-name-list\//,
    /\/node_modules\/culori\//,
    /\/src\/words\/es\//,
    /\/src\/records\/backup\//,
    /\/node_modules\/(?:sharp|@resvg|pdfkit|onnxruntime-web|pg|@redis)\//,
    /\/commands\//,
  ];
  expect(late.map(pattern => start.find(url => pattern.test(url)))).toEqual(late.map(() => undefined));
  expect(start.some(url => url.endsWith('/src/words/en/index.ts'))).toBe(true);
  expect(spanish.some(url => url.endsWith('/src/words/es/index.ts'))).toBe(true);
});
