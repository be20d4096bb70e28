import { enableCompileCache, getCompileCacheDir } from 'node:module';
import { dirname } from 'node:path';

// Reading and compiling every file anew would be most of the time that one `ask` takes. The cache only serves
// what is loaded after it, hence the second file.
enableCompileCache();
// Threads read it from the environment: without it each would load the compiler for itself, 25 MB of it.
const folder = getCompileCacheDir();
if (folder) process.env.NODE_COMPILE_CACHE ??= dirname(folder);
const { run } = await import('./wiring.ts');
process.exitCode = await run(process.argv.slice(2));
