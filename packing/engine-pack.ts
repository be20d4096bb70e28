/*
 * What `npm pack` packs: the engine alone, as JavaScript with its declarations, since Node takes no types off what lies in
 * `node_modules`. `npm` runs the first step before it packs and the second after it.
 */
import { execFileSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

const root = join(import.meta.dirname, '..');
const manifestPath = join(root, 'package.json');
/** The house's own manifest while the pack's stands in its place. Left by a pack that was cut off, the next one begins with it. */
const keptPath = join(root, '.package.json.kept');
const outDir = join(root, 'dist');

type Manifest = {
  readonly [name: string]: unknown;
  readonly name: string;
  readonly version: string;
  readonly dependencies: Readonly<Record<string, string>>;
};

/** Packages that a compiled text imports, such as `culori` of `culori` and of `culori/fn`. */
const packagesIn = (text: string): readonly string[] =>
  [...text.matchAll(/^(?:import|export)\b[^'"]*?['"]([^.'"][^'"]*)['"]/gmu)].map(([, name = '']) =>
    name
      .split('/')
      .slice(0, name.startsWith('@') ? 2 : 1)
      .join('/'),
  );

/** What the engine needs of the house's packages: those that it imports, at the version that it is tested with. */
function dependenciesOf(manifest: Manifest): Readonly<Record<string, string>> {
  const compiled = readdirSync(outDir, { recursive: true, encoding: 'utf8' }).filter(path =>
    path.endsWith('.js'),
  );
  const used = new Set(compiled.flatMap(path => packagesIn(readFileSync(join(outDir, path), 'utf8'))));
  return Object.fromEntries(Object.entries(manifest.dependencies).filter(([name]) => used.has(name)));
}

/** The manifest of the pack: whoever wants the engine gets neither a chat client nor a painter of pictures. */
function packedManifest(manifest: Manifest): object {
  const { name, version, license } = manifest;
  return {
    name,
    version,
    description:
      'The engine of Tintmoot: doses, plans, predictions and diagnoses for cold-process soap. Pure functions.',
    license,
    private: true,
    type: 'module',
    sideEffects: false,
    exports: {
      './engine': { types: './dist/engine/index.d.ts', default: './dist/engine/index.js' },
      './package.json': './package.json',
    },
    files: ['dist', 'NOTICE.md'],
    // JSON modules by `with { type: 'json' }`: https://nodejs.org/docs/latest-v20.x/api/esm.html#import-attributes
    engines: { node: '>=20.10' },
    dependencies: dependenciesOf(manifest),
  };
}

function restore(): void {
  if (existsSync(keptPath)) renameSync(keptPath, manifestPath);
}

function prepare(): void {
  restore();
  rmSync(outDir, { recursive: true, force: true });
  execFileSync(process.execPath, [join(root, 'node_modules/typescript/bin/tsc'), '-p', import.meta.dirname], {
    stdio: 'inherit',
  });
  const text = readFileSync(manifestPath, 'utf8');
  const packed = packedManifest(JSON.parse(text) as Manifest);
  writeFileSync(keptPath, text);
  writeFileSync(manifestPath, `${JSON.stringify(packed, null, 2)}\n`);
}

if (process.argv[2] === 'restore') restore();
else prepare();
