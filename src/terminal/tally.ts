import { readFile } from 'node:fs/promises';
import { parseArgs } from 'node:util';
import { z } from 'zod';
import type { Election, Method, Tally } from '../engine/challenges/voting/election.ts';
import { tally } from '../engine/challenges/voting/tally.ts';
import { Refusal } from '../engine/refusal.ts';
import { languageOf, wordsIn } from '../words/index.ts';

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: { language: { type: 'string', default: 'en' } },
});
const words = wordsIn(languageOf(values.language));
const say = words.challenges;

/** A sentence for whoever gave us the file. */
class Unusable extends Error {}

const name = z.string().min(1);

/** What an exported challenge is, and what anyone may write by hand: `method` and `ties` may be left out. */
const electionFile = z.object({
  candidates: z.array(name).min(1),
  ballots: z.array(
    z.strictObject({
      count: z.int().min(0).default(1),
      ranking: z.array(z.array(name)),
      omit: z.array(name).optional(),
    }),
  ),
  method: z.enum(['schulze', 'approval', 'single']).default('schulze'),
  ties: z.union([z.literal('shared'), z.object({ brokenBySeed: z.string() })]).default('shared'),
});

type ElectionFile = Election & { readonly method: Method; readonly ties: Tally['ties'] };

async function read(file: string): Promise<ElectionFile> {
  const text = await readFile(file, 'utf8').catch(() => {
    throw new Unusable(say.tallyUnreadable({ file }));
  });
  let parsed: unknown;
  try {
    parsed = JSON.parse(text);
  } catch {
    throw new Unusable(say.tallyNotJson({ file }));
  }
  const election = electionFile.safeParse(parsed);
  if (election.success) return election.data;
  const where = election.error.issues[0]?.path.join('.') || file;
  throw new Unusable(say.tallyNotBallots({ where }));
}

async function main(files: readonly string[]): Promise<void> {
  const [file] = files;
  if (file === undefined || files.length > 1) throw new Unusable(say.tallyUsage);
  const { method, ties, ...election } = await read(file);
  console.log(JSON.stringify(tally(election, method, ties)));
}

try {
  await main(positionals);
} catch (failure) {
  if (failure instanceof Refusal) console.error(words.refusal(failure));
  else if (failure instanceof Unusable) console.error(failure.message);
  else throw failure;
  process.exitCode = 1;
}
