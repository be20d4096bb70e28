import type { Context } from '../../../src/conversation/context.ts';
import type { Given } from '../../../src/conversation/question.ts';
import { lineOf } from '../../../src/conversation/typed/line-of.ts';
import { Offer } from '../../../src/conversation/typed/which-one.ts';
import { colourantById } from '../../../src/engine/colourants/catalogue.ts';
import { asksWhetherItMay } from '../../../src/engine/questions/jobs/wet-asked.ts';
import type { Reading } from '../../../src/engine/questions/read.ts';
import { Refusal } from '../../../src/engine/refusal.ts';
import { unaccented } from '../../../src/engine/text/unaccented.ts';
import { nameOf } from '../../../src/presenting/dose.ts';
import { plainReply } from '../../../src/presenting/plain-reply.ts';
import { listShelf } from '../../../src/records/shelf/index.ts';
import { compareReply } from '../colour/compare.ts';
import { lawFirst } from '../colour/law-first.ts';
import { oilsWithoutShares, type PlanLacks } from '../colour/plan-lacks.ts';
import { previewOfLikeliest } from '../colour/preview-likeliest.ts';
import { askFollowUps } from '../follow-ups.ts';
import type { QuestionTold } from '../how-read.ts';
import type { Ran } from '../understood.ts';
import { asItIsAsked } from './dose-asked.ts';
import { ranCommand } from './ran-command.ts';
import { toldAmountHeadline } from './told-amount.ts';

/** Commands that write something: what was understood is shown first, and done on a press. */
const WRITES: ReadonlySet<string> = new Set(['shelf add', 'shelf remove', 'shelf use']);

export const writes = (command: string): boolean => WRITES.has(command);

/** What would be written, with the button that does it: the first of the lines that are kept. */
export function confirming(command: string, given: Given, { say, idempotencyKey: line }: Context): Ran {
  const follow = askFollowUps.run.with({ line, at: 0 });
  return {
    kind: 'reply',
    headline: say.ask.confirm({ line: lineOf(command, given) }),
    data: {},
    blocks: [],
    cautions: [],
    choices: [{ kind: 'button', label: say.ask.doIt, weight: 'main', follow }],
  };
}

/** The command's own answer, or what it lacks and the nearest thing that can be done. */
export async function answered(
  reading: Reading,
  {
    question,
    given,
    read,
    context,
    lacks,
  }: QuestionTold & { readonly question: string; readonly lacks: PlanLacks },
): Promise<Ran> {
  const { say } = context;
  const lacking = reading.missing.filter(name => given[name] === undefined);
  if (lacking.length > 0 && reading.command !== 'compare') {
    const names = read.facts.named;
    // "What can I make of these?": a mix of them can be shown, a list of everything cannot.
    const text =
      reading.job === 'mix' && names.length > 1
        ? say.ask.mixWithoutTarget({ mix: names.slice(0, 3).join(' + ') })
        : (oilsWithoutShares(lacks, say) ?? say.ask.lacks[reading.job]);
    return { kind: 'reply', headline: text, data: {}, short: { lacking }, blocks: [], cautions: [] };
  }
  const isOfNone = reading.command === 'shelf remove' && (await listShelf(context.shelf)).length === 0;
  // Nothing is done by a command that finds nothing to take away: it says so.
  if (WRITES.has(reading.command) && !isOfNone) return confirming(reading.command, given, context);
  return await orItsNo(async () => {
    if (reading.command === 'compare') return await compareReply(read.facts.named, question, context);
    if (reading.command === 'preview') return await previewOfLikeliest(given, context);
    const answer = await ranCommand(reading.command, given, context);
    if (reading.job === 'wet')
      return wettingFirst(
        answer,
        { isAsked: given.carrier !== undefined && asksWhetherItMay(unaccented(question)) },
        context,
      );
    if (reading.job === 'law') return await lawFirst(answer, { given, facts: read.facts }, context);
    const told = reading.job === 'dose' ? toldAmountHeadline(answer, { question, read }, context) : undefined;
    if (told !== undefined) return { ...answer, headline: told };
    return reading.job === 'dose' ? asItIsAsked(answer, question, context) : answer;
  }, context);
}

/** An answer, or its "no" as one: it is shown with what was understood, so that a misreading can be put right. */
export async function orItsNo(answer: () => Promise<Ran>, { say }: Context): Promise<Ran> {
  try {
    return await answer();
  } catch (error) {
    const refusal = error instanceof Offer ? error.refusal : error;
    if (!(refusal instanceof Refusal)) throw error;
    return {
      ...plainReply(say.refusal(refusal), {}),
      short: { problem: refusal.id },
      ...(error instanceof Offer && { choices: error.choices }),
    };
  }
}

/** Who asks what to wet a colour in, or whether something wets it, is told that first; the dose's own steps follow. */
export function wettingFirst(answer: Ran, { isAsked }: { readonly isAsked: boolean }, { say }: Context): Ran {
  const dose = answer.doses?.[0];
  const colourant = dose && colourantById(dose.colourant.id);
  if (!dose || !colourant) return answer;
  const told = isAsked ? say.ask.mayWetIn : say.ask.wetIn;
  const headline = told({
    carrier: say.dispersion.carriers[dose.carrier.choice],
    name: nameOf(colourant, say),
  });
  return { ...answer, headline };
}
