import { createInterface } from 'node:readline';
import { parseArgs } from 'node:util';
import type { Conversation } from '../conversation/conversation.ts';
import { languageOf, wordsIn } from '../words/index.ts';
import { dressed, lookOf } from './dressed.ts';
import { askLine, type Seat } from './seat.ts';
import { jsonOf, linesOf } from './shown.ts';

const USAGE = `usage: npm run -s ask -- [--all | --json | --lines] [--member ID] [--group ID] [--steward] [--role ID]
                        [--language en|es|en-US|es-MX|..] [--pictures FOLDER] [--at TIME] '/command option:value'
       or a question in plain words: npm run -s ask -- 'how much ultramarine for 2 cups?'
  --all       everything at once, nothing folded
  --json      the answer as JSON, with its data and buttons
  --lines     one command or question a line from standard input, each answered as a line of JSON;
              they are one talk, an empty line begins another
  --member    who asks; without it you are the owner and may do what a steward may
  --group     in which group, “home” unless said
  --steward   the member may do what a steward may
  --role      a role of the member; may be said again
  --language  the language that the member reads
  --pictures  where pictures go, .tintmoot/pictures unless said
  --at TIME   ISO 8601, such as 2026-12-01T18:00Z: rehearses what takes days, as if it were asked then
  --help      this; /help says what can be asked`;

/** Whoever sits at the machine owns the store: without --member they may do what a steward may. */
const OWNER = 'me';

export type AskArguments = {
  readonly seat: Seat;
  readonly lines: readonly string[] | 'standard input';
  /** Everything at once, nothing folded. */
  readonly all: boolean;
  readonly json: boolean;
  readonly pictures: string;
};

/** Tells how `ask` is used where that is what was asked; false where it was not. */
export async function toldUsage(args: readonly string[]): Promise<boolean> {
  const [first] = args;
  const isAsked = args.length === 1 && (first === '--help' || first === '-h');
  if (isAsked) await written(process.stdout, USAGE);
  return isAsked;
}

/** Reads the arguments of `ask`; undefined, with the usage on standard error, when they make no sense. */
export function readAskArguments(args: readonly string[]): AskArguments | undefined {
  try {
    const { values, positionals } = parseArgs({
      args: [...args],
      allowPositionals: true,
      options: {
        all: { type: 'boolean', default: false },
        json: { type: 'boolean' },
        lines: { type: 'boolean' },
        member: { type: 'string' },
        group: { type: 'string', default: 'home' },
        steward: { type: 'boolean' },
        role: { type: 'string', multiple: true, default: [] },
        language: { type: 'string', default: 'en' },
        pictures: { type: 'string', default: '.tintmoot/pictures' },
        at: { type: 'string' },
      },
    });
    if ((positionals.length === 0) === !values.lines) throw new Error('one command, or --lines');
    return {
      seat: {
        member: values.member ?? OWNER,
        group: values.group,
        language: languageOf(values.language),
        locale: values.language,
        manages: values.steward ?? values.member === undefined,
        roles: values.role,
        ...(values.at !== undefined && { at: instantOf(values.at) }),
      },
      lines: values.lines ? 'standard input' : [positionals.join(' ')],
      all: values.all,
      json: values.json ?? values.lines ?? false,
      pictures: values.pictures,
    };
  } catch (error) {
    process.stderr.write(`${(error as Error).message}\n${USAGE}\n`);
    return undefined;
  }
}

/** Without a zone in it, a time is read as UTC: what is rehearsed must not depend on the machine. */
function instantOf(text: string): number {
  const at = Date.parse(/(?:Z|[+-]\d{2}:?\d{2})$/i.test(text) ? text : `${text}Z`);
  if (Number.isNaN(at)) throw new Error(`not a time: ${text}`);
  return at;
}

/**
 * Writes lines; false where whoever read them has seen enough and is gone (`ask --lines | head`), which is no fault. Throws where they
 * cannot be written for another reason, a full disk.
 */
function written(to: NodeJS.WriteStream, lines: string): Promise<boolean> {
  return new Promise((resolve, reject) => {
    // A stream that fails says so twice, and what nobody listens to ends the process with a trace.
    const ignored = () => {};
    to.once('error', ignored);
    to.write(`${lines}\n`, error => {
      if (!error) to.off('error', ignored);
      if (error && (error as NodeJS.ErrnoException).code !== 'EPIPE') reject(error);
      else resolve(!error);
    });
  });
}

/** Answers the commands one after the other, until nobody reads on; true when none of them was a problem. */
export async function runAsk({ seat, lines, all, json, pictures }: AskArguments, conversation: Conversation) {
  let fine = true;
  const source =
    lines === 'standard input' ? createInterface({ input: process.stdin, crlfDelay: Infinity }) : lines;
  for await (const line of source) {
    if (line.trim() === '') {
      // A line that is left empty ends a talk: what follows leans on nothing before it.
      conversation.services.lately?.forget(seat.member);
      if (source !== lines) continue;
      process.stderr.write(`${wordsIn(seat.language).fronts.nothingAsked}\n`);
      return false;
    }
    const answered = await askLine(line, seat, conversation);
    fine &&= answered.answer.kind !== 'problem';
    const shown = json
      ? JSON.stringify(await jsonOf(answered, pictures))
      : dressed(await linesOf(answered.answer, { folder: pictures, all }), lookOf(process.stdout));
    const to = answered.answer.kind === 'problem' && !json ? process.stderr : process.stdout;
    if (await written(to, shown)) continue;
    // Whoever asks may go on for ever; paused, a socket would still be waited for.
    process.stdin.destroy();
    break;
  }
  return fine;
}
