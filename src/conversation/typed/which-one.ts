import { Refusal } from '../../engine/refusal.ts';
import { capital } from '../../engine/text/capital.ts';
import { type AskedLine, keepAskedLine } from '../../records/asked/index.ts';
import type { Action } from '../command.ts';
import type { Context } from '../context.ts';
import type { Given } from '../question.ts';
import type { Choice, Form, Reply } from '../reply.ts';
import { answeredPlainly, readAs } from './answered-plainly.ts';
import { againForAsker, againForGroup, plainGiven } from './asked-again.ts';
import { lineOf } from './line-of.ts';
import {
  givenRespelt,
  optionWith,
  replaced,
  type Unclear,
  unclearIn,
  underMeantName,
} from './what-is-meant.ts';

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

/** UTF-16 units of what was typed for a command's name that are kept. */
const LONGEST_COMMAND = 80;

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
      throw new Offer(refusal, [await buttonFor({ command, action, given: renamed }, context)]);
    }
    const again = await respeltAnswer({ command, action, given }, refusal, context);
    if (again) return again;
    const plain = await plainAnswer({ command, action, given }, refusal, context);
    return plain instanceof Refusal ? offered({ command, action, given }, plain, context) : plain;
  }
}

/** The answer to amounts in plainer words; else why they cannot be told, or the refusal as it was. */
async function plainAnswer(
  { command, action, given }: Asked,
  refusal: Refusal,
  context: Context,
): Promise<Reply | Form | Refusal> {
  const reads = Object.fromEntries(action.options.map(one => [one.name, one.reads]));
  const answer = (told: Given) =>
    told === given ? Promise.reject(refusal) : takeOrOffer({ command, action, given: told }, context);
  return answeredPlainly(answer, { given, reads }, context).catch((again: unknown) => {
    if (again instanceof Refusal) return again;
    throw again;
  });
}

/** The answer that all that may be meant have in common; throws an {@link Offer} with a button for each, or the Refusal as it is. */
async function offered(
  { command, action, given }: Asked,
  refusal: Refusal,
  context: Context,
): Promise<Reply> {
  const unclear = unclearIn(refusal, context.say);
  const option = unclear && optionWith(unclear.text, given);
  if (!unclear || !option) throw refusal;
  const [name, value] = option;
  const withText = (by: string): Given => ({ ...given, [name]: replaced(value, unclear.text, by) });
  const choices = await choicesFor({ command, action, given, option: name }, unclear, context);
  // Names that are merely near are no candidates of one meaning.
  const isOneOf = 'candidates' in refusal.values && refusal.id !== 'amount-several';
  const same = !isOneOf
    ? undefined
    : await sameForAll(
        action,
        unclear.candidates.map(({ text, label }) => ({ given: withText(text), label })),
        { by: unclear.text, context },
      );
  if (!same) throw new Offer(refusal, choices);
  const note = context.say.ask.sameForAll({
    text: unclear.text,
    names: unclear.candidates.map(({ label }) => label),
  });
  const [first] = unclear.candidates;
  // What was asked for, and none of those that it may be.
  const headline = first ? calledSo(same.headline, first.label, unclear.text) : same.headline;
  return { ...same, headline, blocks: [{ kind: 'text', text: note }, ...same.blocks], choices };
}

/** A sentence with what was asked for in place of one of the things that it may be, however that begins. */
function calledSo(sentence: string, name: string, by: string): string {
  const at = sentence.toLowerCase().indexOf(name.toLowerCase());
  if (at < 0) return sentence;
  const isBegun = /^\p{Lu}/u.test(sentence.slice(at));
  const called = isBegun ? capital(by) : by;
  return `${sentence.slice(0, at)}${called}${sentence.slice(at + name.length)}`;
}

/** The answer to a question whose slips of the finger are put right; undefined where there are none, or still nothing to read. */
async function respeltAnswer(
  { command, action, given }: Asked,
  refusal: Refusal,
  context: Context,
): Promise<Reply | Form | undefined> {
  const meant = givenRespelt(refusal, given);
  if (!meant) return undefined;
  try {
    const answer = await takeOrOffer({ command, action, given: meant.given }, context);
    return readAs(meant.label, answer, context);
  } catch (again) {
    // The first answer speaks of what was typed.
    if (again instanceof Refusal && again.id === refusal.id) return undefined;
    if (again instanceof Offer && again.refusal.id === refusal.id) return undefined;
    throw again;
  }
}

/** The answer that all of several questions get, with everybody's cautions; undefined where they differ. `by`: what was asked for. */
async function sameForAll(
  action: Action,
  asked: readonly { readonly given: Given; readonly label: string }[],
  { by, context }: { readonly by: string; readonly context: Context },
): Promise<Reply | undefined> {
  const { essence } = action;
  if (!essence || asked.length < 2) return undefined;
  const replies: Reply[] = [];
  for (const { given } of asked) {
    const answer = await Promise.resolve(action.take(given, context)).catch((refusal: unknown) => {
      if (refusal instanceof Refusal) return undefined;
      throw refusal;
    });
    if (answer?.kind !== 'reply') return undefined;
    replies.push(answer);
  }
  const [first, ...others] = replies;
  if (!first || others.some(one => essence(one) !== essence(first))) return undefined;
  const named = replies.map((reply, at) => ({ reply, label: asked[at]!.label }));
  return { ...first, blocks: blocksOfAll(named, by), cautions: cautionsOfAll(named, by) };
}

type NamedReply = { readonly reply: Reply; readonly label: string };

/** The blocks of the first that all have, whatever the thing is called. */
function blocksOfAll(named: readonly NamedReply[], by: string): Reply['blocks'] {
  const [first, ...others] = named.map(({ reply, label }) =>
    reply.blocks.map(block =>
      block.kind === 'text' ? { ...block, text: calledSo(block.text, label, by) } : block,
    ),
  );
  return first!.filter(
    block =>
      block.kind !== 'text' ||
      others.every(blocks => blocks.some(one => one.kind === 'text' && one.text === block.text)),
  );
}

/** One caution of several things is several: of seven blues one loses its colour, and another holds in some. What all have is one. */
function cautionsOfAll(named: readonly NamedReply[], by: string): Reply['cautions'] {
  const all = named.flatMap(({ reply, label }) =>
    reply.cautions.map(caution => ({ caution, shared: calledSo(caution.text, label, by) })),
  );
  const isOfAll = (shared: string) => all.filter(one => one.shared === shared).length >= named.length;
  const told = all.map(({ caution, shared }) => (isOfAll(shared) ? { ...caution, text: shared } : caution));
  return [...new Map(told.map(caution => [caution.text, caution])).values()];
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

/** The refusal of a command that there is not, each near one a button that asks it with what was given. */
export async function offerCommands(
  {
    typed,
    nearest,
    given,
  }: { readonly typed: string; readonly nearest: readonly string[]; readonly given: Given },
  context: Context,
): Promise<never> {
  const line: AskedLine = {
    command: typed.slice(0, LONGEST_COMMAND),
    given: plainGiven(given),
    candidates: [...nearest],
  };
  await keepAskedLine(context.shelf, context.idempotencyKey, line, context.change.at);
  throw new Offer(
    new Refusal('command-unknown', { typed, nearest }),
    nearest.map((name, at) => ({
      kind: 'button',
      label: `/${name}`,
      follow: againForAsker.with({ line: context.idempotencyKey, at }),
    })),
  );
}
