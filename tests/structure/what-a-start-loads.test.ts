import { execFile } from 'node:child_process';
import { promisify } from 'node:util';
import { expect, test } from 'vitest';

const src = new URL('../../src/', import.meta.url);

type Loaded = Readonly<Record<'start' | 'answering' | 'dose' | 'spanish', readonly string[]>>;

/**
 * The files that a process has loaded when it has nobody to connect to (port 1 is nobody's, IANA: tcpmux), and further
 * ones that answering, `/dose` and Spanish bring.
 */
async function loaded(): Promise<Loaded> {
  const files = (...names: readonly string[]) => JSON.stringify(names.map(name => new URL(name, src).href));
  const program = `
    const { registerHooks } = await import("node:module");
    const urls = [];
    registerHooks({ load(url, context, next) { urls.push(url); return next(url, context); } });
    const bring = async files => {
      const before = urls.length;
      for (const one of files) await import(one);
      return urls.slice(before);
    };
    const { run } = await import(${files('wiring.ts')}[0]);
    if ((await run([])) !== 1) throw new Error('somebody was there');
    const start = urls.slice();
    const answering = await bring(${files('discord/interactions.ts', 'discord/post.ts', 'conversation/registry/growing-registry.ts')});
    const dose = await bring(${files('../commands/dose/command.ts')});
    const { default: declaration } = await import(${files('../commands/dose/command.ts')}[0]);
    const before = urls.length;
    const { wordsIn } = await import(${files('words/index.ts')}[0]);
    const said = wordsIn('es').language + wordsIn('es').folds.next.preview;
    if (!said.startsWith('es')) throw new Error(said);
    if (!declaration.purpose.es) throw new Error('no purpose');
    console.log(JSON.stringify({ start, answering, dose, spanish: urls.slice(before) }));
  `;
  const { stdout } = await promisify(execFile)(
    process.execPath,
    ['--disable-warning=ExperimentalWarning', '--input-type=module', '--eval', program],
    {
      maxBuffer: 1e8,
      env: { ...process.env, DISCORD_TOKEN: 'nobody', DISCORD_API: 'http://127.0.0.1:1/api' },
    },
  );
  return JSON.parse(stdout) as Loaded;
}

const amongst = (urls: readonly string[], patterns: readonly RegExp[]) =>
  patterns.map(pattern => urls.find(url => pattern.test(url)));
/** Which commands' own phrases were loaded. */
const declared = (urls: readonly string[]) =>
  urls.flatMap(url => /\/\w+\/declared\/\S+$/.exec(url.replace(/^.*\/src\/words/, ''))?.[0] ?? []);
const none = (patterns: readonly RegExp[]) => patterns.map(() => undefined);

/*
 * What must wait: each of these is a tenth to a third of all that is loaded, and one answer in many needs it. A single
 * import from the wrong place brings it back unnoticed.
 */
const RARE = [
  /\/src\/engine\/questions\/read\.ts$/,
  /\/node_modules\/color-name-list\//,
  /\/src\/words\/es\//,
  /\/src\/records\/backup\//,
  /\/node_modules\/(?:sharp|@resvg|pdfkit|onnxruntime-web|pg|@redis)\//,
];
/** What answers, but nobody can ask before the platform has let us in. */
const ANSWERS = [
  /\/src\/words\//,
  /\/src\/engine\/(?!refusal\.ts)/,
  /\/src\/conversation\//,
  /\/src\/records\/(?!failure\.ts)/,
  /\/commands\//,
  /\/node_modules\/(?:culori|zod)\//,
];

test('a start loads what connects; what answers comes behind it, and what is rarely asked with the first who asks', async () => {
  const { start, answering, dose, spanish } = await loaded();
  expect(amongst(start, [...RARE, ...ANSWERS])).toEqual(none([...RARE, ...ANSWERS]));
  expect(amongst([...answering, ...dose], RARE)).toEqual(none(RARE));
  expect(answering.some(url => url.endsWith('/src/words/en/index.ts'))).toBe(true);
  expect(dose.some(url => url.endsWith('/commands/dose/answer.ts'))).toBe(true);
  expect(declared(dose)).toEqual(['/en/declared/colour/dose.ts']);
  expect(spanish.some(url => url.endsWith('/src/words/es/index.ts'))).toBe(true);
  expect(declared(spanish)).toEqual(['/es/declared/colour/dose.ts']);
});
