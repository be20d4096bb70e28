import { z } from 'zod';
import { barredIn } from '../engine/hazards/index.ts';
import { byLanguage, type Language } from '../engine/language.ts';
import { isNearBarred } from '../engine/questions/near-barred.ts';
import { Refusal } from '../engine/refusal.ts';
import { closestThing, slipsInName } from '../engine/text/closest-name.ts';
import { distance } from '../engine/text/edit-distance.ts';
import { fold } from '../engine/text/fold.ts';
import { type AskedLine, askedLineOf, keepAskedLine } from '../records/asked/index.ts';
import { type Action, followUp } from './command.ts';
import type { Context } from './context.ts';
import { lineOf } from './line-of.ts';
import type { Given } from './question.ts';
import type { Choice, Form, Reply } from './reply.ts';

/** A "no" that names what may be meant, each a button. */
export class Offer extends Error {
  override readonly name = 'Offer';
  readonly refusal: Refusal;
  readonly choices: readonly Choice[];

  constructor(refusal: Refusal, choices: readonly Choice[]) {
    super(refusal.id);
    this.refusal = refusal;
    this.choices = choices;
  }
}

/** One thing that may be meant: what a button says, and what takes the place of the unclear text. */
type Candidate = { readonly label: string; readonly text: string };
type Unclear = { readonly text: string; readonly candidates: readonly Candidate[] };

/** More buttons than this are a list to read. */
const MOST = 10;

const listOf = (value: unknown): readonly unknown[] => (Array.isArray(value) ? (value as unknown[]) : []);
const phrase = z.object(byLanguage(() => z.string()));
const named = z.object({ names: phrase });

/** What a refusal says may be meant: by its `candidates` or `nearest`, or by the two ends of a range. */
function unclearIn({ id, values }: Refusal, language: Language): Unclear | undefined {
  const said = values as Readonly<Record<string, unknown>>;
  const text = said.text ?? said.asked;
  if (typeof text !== 'string' || text.trim() === '') return undefined;
  const ends = id === 'amount-range' ? [said.low, said.high] : [];
  const candidates = [...listOf(said.candidates), ...listOf(said.nearest), ...ends].flatMap(
    (one): readonly Candidate[] => {
      if (typeof one === 'string') return [{ label: one, text: one }];
      const entry = named.safeParse(one);
      const names = entry.success ? entry.data.names : phrase.safeParse(one).data;
      return names ? [{ label: names[language], text: names.en }] : [];
    },
  );
  return candidates.length === 0 ? undefined : { text: text.trim(), candidates: candidates.slice(0, MOST) };
}

/** The option whose text holds the unclear part. */
function optionWith(text: string, given: Given): readonly [name: string, value: string] | undefined {
  const part = text.replace(/…$/u, '').toLowerCase();
  const entries = Object.entries(given).filter(
    (entry): entry is [string, string] => typeof entry[1] === 'string',
  );
  return (
    entries.find(([, value]) => value.trim().toLowerCase() === part) ??
    entries.find(([, value]) => value.toLowerCase().includes(part))
  );
}

const replaced = (value: string, text: string, by: string): string => {
  const at = value.toLowerCase().indexOf(text.replace(/…$/u, '').toLowerCase());
  return at < 0 ? by : `${value.slice(0, at)}${by}${value.slice(at + text.replace(/…$/u, '').length)}`;
};

/** Names that a slip may be put right in without asking: nothing is written, and the reply says how it was read. */
const SLIPS: ReadonlySet<string> = new Set(['colourant-unknown', 'oil-unknown']);

/**
 * The one candidate that a slip of the finger was meant for; undefined where two are as near, where it is too far, or where
 * a word is as near to a colour that must stay out of soap: such a correction is asked, never made.
 */
function slipOf({ text, candidates }: Unclear): Candidate | undefined {
  if (fold(text).split(' ').some(nearBarred)) return undefined;
  return closestThing(
    candidates.map(thing => ({ thing, far: distance(fold(text), fold(thing.text)) })),
    { most: slipsInName(text), margin: 1, alike: () => false },
  );
}

const nearBarred = (word: string): boolean => barredIn(word)?.hue === false || isNearBarred(word);

type Asked = { readonly command: string; readonly action: Action; readonly given: Given };

/**
 * Takes a question to its command. Where a name in it is unclear the answer is no dead end: a plain slip of the finger is put
 * right and said so; where every candidate gives the same answer it is given first; else each candidate is a button.
 * Throws an {@link Offer} then, and every other Refusal as it is.
 */
export async function takeOrOffer(
  { command, action, given }: Asked,
  context: Context,
): Promise<Reply | Form> {
  try {
    return await action.take(given, context);
  } catch (refusal) {
    if (!(refusal instanceof Refusal)) throw refusal;
    const renamed = underMeantName(refusal, given);
    if (renamed) {
      const again = await buttonFor({ command, action, given: renamed }, context);
      throw new Offer(refusal, [again]);
    }
    const unclear = unclearIn(refusal, context.language);
    const option = unclear && optionWith(unclear.text, given);
    if (!unclear || !option) throw refusal;
    const [name, value] = option;
    const withText = (by: string): Given => ({ ...given, [name]: replaced(value, unclear.text, by) });
    const slip = SLIPS.has(refusal.id) ? slipOf(unclear) : undefined;
    if (slip)
      return readAs(
        slip,
        await takeOrOffer({ command, action, given: withText(slip.text) }, context),
        context,
      );
    const choices = await choicesFor({ command, action, given, option: name }, unclear, context);
    // Names that are merely near are no candidates of one meaning.
    const isOneOf = 'candidates' in refusal.values;
    const same = !isOneOf
      ? undefined
      : await sameForAll(
          action,
          unclear.candidates.map(({ text }) => withText(text)),
          context,
        );
    if (!same) throw new Offer(refusal, choices);
    const note = context.say.ask.sameForAll({
      text: unclear.text,
      names: unclear.candidates.map(({ label }) => label),
    });
    return { ...same, blocks: [{ kind: 'text', text: note }, ...same.blocks], choices };
  }
}

function readAs({ label }: Candidate, answer: Reply | Form, { say }: Context): Reply | Form {
  if (answer.kind === 'form') return answer;
  const note = { kind: 'text', text: say.ask.readAs({ name: label }) } as const;
  return { ...answer, data: { ...answer.data, readAs: label }, blocks: [note, ...answer.blocks] };
}

/** The answer that all of several questions get, with everybody's cautions; undefined where they differ. */
async function sameForAll(
  action: Action,
  asked: readonly Given[],
  context: Context,
): Promise<Reply | undefined> {
  const { essence } = action;
  if (!essence || asked.length < 2) return undefined;
  const replies: Reply[] = [];
  for (const given of asked) {
    const answer = await Promise.resolve(action.take(given, context)).catch((refusal: unknown) => {
      if (refusal instanceof Refusal) return undefined;
      throw refusal;
    });
    if (answer?.kind !== 'reply') return undefined;
    replies.push(answer);
  }
  const [first, ...others] = replies;
  if (!first || others.some(one => essence(one) !== essence(first))) return undefined;
  const cautions = new Map(
    replies.flatMap(reply => reply.cautions.map(caution => [caution.id, caution] as const)),
  );
  return { ...first, cautions: [...cautions.values()] };
}

/** What was given, with the option that was likely meant in place of one that the command does not have. */
function underMeantName({ id, values }: Refusal, given: Given): Given | undefined {
  const { option, meant } = values as Readonly<Record<string, unknown>>;
  if (id !== 'option-unknown' || typeof option !== 'string' || typeof meant !== 'string') return undefined;
  const { [option]: value, ...rest } = given;
  return value === undefined || rest[meant] !== undefined ? undefined : { ...rest, [meant]: value };
}

/** A button that asks the command with other options. */
async function buttonFor({ command, action, given }: Asked, context: Context): Promise<Choice> {
  const line: AskedLine = { command, given: plainGiven(given), candidates: [] };
  await keepAskedLine(context.shelf, context.idempotencyKey, line, context.change.at);
  const again = action.seenBy === 'group' ? againForGroup : againForAsker;
  return {
    kind: 'button',
    label: lineOf(command, given).slice(0, 80),
    follow: again.with({ line: context.idempotencyKey, at: 0 }),
  };
}

async function choicesFor(
  { command, action, given, option }: Asked & { readonly option: string },
  { text, candidates }: Unclear,
  context: Context,
): Promise<readonly Choice[]> {
  const line: AskedLine = {
    command,
    given: plainGiven(given),
    option,
    replaces: text,
    candidates: candidates.map(one => one.text),
  };
  await keepAskedLine(context.shelf, context.idempotencyKey, line, context.change.at);
  const again = action.seenBy === 'group' ? againForGroup : againForAsker;
  return candidates.map(({ label }, at) => ({
    kind: 'button',
    label,
    follow: again.with({ line: context.idempotencyKey, at }),
  }));
}

/** What was given without its files: those cannot be kept. */
export const plainGiven = (given: Given): AskedLine['given'] =>
  Object.fromEntries(
    Object.entries(given).filter(
      (entry): entry is [string, string | number | boolean] => typeof entry[1] !== 'object',
    ),
  );

const args = { line: z.string(), at: z.string().transform(Number) };

type Pressed = { readonly line: string; readonly at: number };

const pressed = async (args: Pressed, context: Context) => {
  const { command, given } = await lineMeant(args, context);
  return context.run(command, given);
};

/** What was unclear may turn out to be a jar of the asker's. */
const meansJar = async (args: Pressed, context: Context): Promise<boolean> => {
  const { command, given } = await lineMeant(args, context);
  return context.namesJar(command, given);
};

/** The command that was asked, with the candidate that was pressed in place of what was unclear. */
async function lineMeant({ line, at }: Pressed, context: Context) {
  const kept = await askedLineOf(context.shelf, line);
  const { option, replaces, candidates, command } = kept;
  const by = candidates[at];
  const value = option === undefined ? undefined : kept.given[option];
  const given =
    option === undefined || by === undefined || typeof value !== 'string'
      ? kept.given
      : { ...kept.given, [option]: replaced(value, replaces ?? value, by) };
  return { command, given };
}

const againForGroup = followUp({
  seenBy: 'group',
  pace: 'slow',
  args,
  namesJar: meansJar,
  answer: pressed,
});
const againForAsker = followUp({ seenBy: 'asker', pace: 'slow', args, answer: pressed });

/** The buttons of "which one?"; one command registers them for all. */
export const whichOneFollowUps = { again: againForGroup, 'again-alone': againForAsker };
