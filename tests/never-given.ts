import { readFileSync } from 'node:fs';
import { readCommands } from '../src/conversation/registry/registry.ts';

type Declared = ReadonlyMap<string, { readonly options: readonly { readonly name: string }[] }>;

/** The commands that nobody asked, as `/path`, and the options that nobody gave, as `/path option:`, in the notes of a run. */
export function neverGiven(declared: Declared, notes: string): readonly string[] {
  const given = new Set(notes.split('\n'));
  return [...declared]
    .flatMap(([path, { options }]) => [`/${path}`, ...options.map(({ name }) => `/${path} ${name}:`)])
    .filter(line => !given.has(line));
}

// After a run of all tests, in a process of its own: `node tests/never-given.ts NOTES`.
if (import.meta.main) {
  const { actions } = await readCommands(new URL('../commands/', import.meta.url));
  const never = neverGiven(actions, readFileSync(process.argv[2]!, 'utf8'));
  for (const line of never) console.error(`no test gives ${line}`);
  process.exitCode = never.length > 0 ? 1 : 0;
}
