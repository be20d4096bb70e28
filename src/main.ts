import { enableCompileCache } from 'node:module';

// Reading and compiling every file anew would be most of the time that one `ask` takes. The cache only serves
// what is loaded after it, hence the second file.
enableCompileCache();
const { run } = await import('./wiring.ts');
process.exitCode = await run(process.argv.slice(2));
