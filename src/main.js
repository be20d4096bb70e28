// @ts-check
// The one file that is no TypeScript: it is read before anything is cached, and taking its types off would load the
// compiler for it alone, 25 MB and a tenth of a second at every start.
import { dirname } from 'node:path';

// An older one would stop at the first line of TypeScript, and name no reason.
if (Number.parseInt(process.versions.node, 10) < 24) {
  process.stderr.write(
    `Tintmoot needs Node 24 or newer, and this is ${process.version}: start it with npm, or use node_modules/.bin/node.\n`,
  );
  process.exit(1);
}
const { enableCompileCache, getCompileCacheDir } = await import('node:module');

// Reading and compiling every file anew would be most of the time that one `ask` takes. The cache only serves
// what is loaded after it, hence the second file.
enableCompileCache();
// Threads read it from the environment: without it each would load the compiler for itself.
const folder = getCompileCacheDir();
if (folder) process.env.NODE_COMPILE_CACHE ??= dirname(folder);
const { run } = await import('./wiring.ts');
process.exitCode = await run(process.argv.slice(2));
