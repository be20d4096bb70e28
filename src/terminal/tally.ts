import { readFile } from 'node:fs/promises';
import { parseArgs } from 'node:util';
import { z } from 'zod';
import type { Election, Method, Tally } from '../engine/challenges/voting/election.ts';
import { tally } from '../engine/challenges/voting/tally.ts';
import { Refusal } from '../engine/refusal.ts';
import { languageOf, wordsIn } from '../words/index.ts';

type ChallengeWords = ReturnType<typeof wordsIn>['challenges'];

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

async function read(file: string, say: ChallengeWords): Promise<ElectionFile> {
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

/** What the recount of a file prints, and with which code the program ends. */
export type Recount = { readonly code: 0 | 1; readonly out?: string; readonly err?: string };

/** Counts the ballots of the file named in the arguments again. What is wrong with it is said in one sentence. */
export async function recount(args: readonly string[]): Promise<Recount> {
  const { values, positionals } = parseArgs({
    args: [...args],
    allowPositionals: true,
    options: { language: { type: 'string', default: 'en' } },
  });
  const words = wordsIn(languageOf(values.language));
  try {
    const [file] = positionals;
    if (file === undefined || positionals.length > 1) throw new Unusable(words.challenges.tallyUsage);
    const { method, ties, ...election } = await read(file, words.challenges);
    return { code: 0, out: JSON.stringify(tally(election, method, ties)) };
  } catch (failure) {
    if (failure instanceof Refusal) return { code: 1, err: words.refusal(failure) };
    if (failure instanceof Unusable) return { code: 1, err: failure.message };
    throw failure;
  }
}

if (import.meta.main) {
  const { code, out, err } = await recount(process.argv.slice(2));
  if (out !== undefined) console.log(out);
  if (err !== undefined) console.error(err);
  process.exitCode = code;
}
