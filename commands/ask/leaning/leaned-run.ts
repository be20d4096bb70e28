import type { Context } from '../../../src/conversation/context.ts';
import { inOunces } from '../../../src/conversation/faces/in-ounces.ts';
import { textsOf } from '../../../src/conversation/question.ts';
import { type Block, type Choice, LONGEST_LABEL } from '../../../src/conversation/reply.ts';
import { lineOf } from '../../../src/conversation/typed/line-of.ts';
import { practicalSpoons } from '../../../src/engine/quantities/spoons.ts';
import { MEASURES } from '../../../src/engine/quantities/units.ts';
import type { Job } from '../../../src/engine/questions/jobs/jobs.ts';
import { isOfLye, type Laid } from '../../../src/engine/questions/leaning/before.ts';
import type { Slots } from '../../../src/engine/questions/leaning/turn/slots.ts';
import { cut } from '../../../src/engine/text/excerpt.ts';
import { quoted } from '../../../src/engine/text/lines/option-line.ts';
import { askFollowUps } from '../follow-ups.ts';
import { keepLines } from '../kept-lines.ts';
import { topicReply } from '../lye/matter.ts';
import { filled } from '../reading/options-of.ts';
import { ranCommand } from '../reading/ran-command.ts';
import { confirming, orItsNo, wettingFirst, writes } from '../reading/run-reading.ts';
import { ofThing } from '../technique/asked-of-thing.ts';
import type { AskReply, Ran } from '../understood.ts';

/** The command of before with what was changed in it: what it ran in one line, then its answer, and a way to change it. */
export async function leanedRun(
  readings: readonly Laid[],
  {
    unit,
    isAgain = false,
    context,
  }: { readonly unit?: Slots['unit']; readonly isAgain?: boolean; readonly context: Context },
): Promise<AskReply | undefined> {
  const [laid, ...others] = readings;
  if (!laid) return undefined;
  // Lye is never measured by spoons, whatever was asked before.
  if (unit === 'spoons' && isOfLye(laid)) return topicReply('spooned-lye', context);
  const { say } = context;
  const given = filled({ ...laid, job: jobOf(laid), score: 1, missing: lackingIn(laid) }, context);
  const line = lineOf(laid.command, given);
  const lines = [line, ...others.map(other => lineOf(other.command, other.given))];
  const answer = await answerOf({ ...laid, given: textsOf(given) }, context);
  const told =
    unit === undefined ? answer : inUnit(answer, unit, { ...laid, given: textsOf(given) }, context);
  await keepLines(lines, context);
  const says = isAgain ? say.leaning.again : say.leaning.asBefore;
  const understood: Block = { kind: 'text', text: says({ line }), firm: true };
  const byTheCup = laid.command === 'dose' && laid.given.portion === undefined && given.portion !== undefined;
  return {
    ...told,
    headline: headlineOf(told, laid, context),
    understood: {
      kind: 'command',
      job: jobOf(laid),
      command: laid.command,
      given: textsOf(given),
      leans: true,
      ...(laid.asked && { asked: laid.asked }),
      ...(laid.scaled !== undefined && { scaled: laid.scaled }),
      ...(laid.wish !== undefined && { facts: { target: { text: laid.wish } } }),
    },
    blocks: [
      understood,
      ...(byTheCup ? [{ kind: 'text' as const, text: say.ask.byTheCup }] : []),
      ...told.blocks,
    ],
    choices: [...(told.choices ?? []), ...buttons(readings, context)].slice(0, 20),
  };
}

/** What another reading changes, as it would be typed. */
const changed = ([first]: readonly Laid[], { given }: Laid): string =>
  Object.entries(given)
    .filter(([name, value]) => first?.given[name] !== value)
    .map(([name, value]) => `${name}:${quoted(value)}`)
    .join(' ');

/** The other readings, and a way to put this one right. */
function buttons(readings: readonly Laid[], { say, idempotencyKey: line }: Context): readonly Choice[] {
  return [
    ...readings.slice(1).map(
      (other, at): Choice => ({
        kind: 'button',
        label: cut(say.leaning.orThis({ line: changed(readings, other) }), LONGEST_LABEL),
        follow: askFollowUps.run.with({ line, at: at + 1 }),
      }),
    ),
    { kind: 'button', label: say.ask.change, follow: askFollowUps.change.with({ line }) },
  ];
}

const JOB_OF: Readonly<Record<string, Job>> = {
  dose: 'dose',
  'colourant check': 'survives-lye',
  match: 'mix',
  preview: 'preview',
  plan: 'plan',
  'shelf show': 'shelf-show',
  'shelf add': 'shelf-add',
  'shelf use': 'shelf-use',
};
export const jobOf = ({ job, command }: Laid): Job => job ?? JOB_OF[command] ?? 'help';

const NEEDED: Readonly<Record<string, readonly string[]>> = {
  dose: ['colourant', 'portion'],
  'shelf add': ['item'],
  'shelf use': ['item', 'amount'],
};
const lackingIn = ({ command, given }: Laid): readonly string[] =>
  (NEEDED[command] ?? []).filter(name => given[name] === undefined);

async function answerOf(laid: Laid, context: Context): Promise<Ran> {
  const { command, given } = laid;
  const lacking = lackingIn(laid);
  if (lacking.length > 0)
    return {
      kind: 'reply',
      headline: context.say.ask.lacks[jobOf(laid)],
      data: {},
      short: { lacking },
      blocks: [],
      cautions: [],
    };
  if (writes(command)) return confirming(command, given, context);
  return await orItsNo(async () => {
    const answer = await ranCommand(command, given, context);
    return laid.job === 'wet'
      ? (wetWith(answer, context) ?? wettingFirst(answer, { isAsked: false }, context))
      : answer;
  }, context);
}

/** How much liquid wets a dose, which is what is asked on; undefined where none is needed. */
function wetWith(answer: Ran, { say }: Context): Ran | undefined {
  const [dose, ...others] = answer.doses ?? [];
  if (!dose || others.length > 0 || dose.carrier.millilitres <= 0) return undefined;
  const { choice, millilitres } = dose.carrier;
  const spoons = say.quantities.measure(practicalSpoons(millilitres / MEASURES.us.teaspoon));
  const liquid = say.plan.liquid({ spoons, liquid: say.dispersion.carriers[choice], dipped: false });
  return { ...answer, headline: say.leaning.wetWith({ liquid, dose: answer.headline }) };
}

/** Lye is told with the whole recipe that it is of. */
function headlineOf({ headline, short }: Ran, laid: Laid, { say }: Context): string {
  const isNo = short !== undefined && 'problem' in short;
  if (laid.asked && laid.given.item !== undefined && !isNo)
    return ofThing(laid.asked, laid.given.item, say) ?? headline;
  if (!isOfLye(laid) || isNo) return headline;
  const { oils = '', superfat } = laid.given;
  return say.leaning.recipe({ oils, superfat, headline });
}

/** The amounts in the unit that was asked for: grams first of a dose, ounces of everything; spoons stand first anyhow. */
function inUnit(
  answer: Ran,
  unit: NonNullable<Slots['unit']>,
  { command, given }: Laid,
  { say, language }: Context,
): Ran {
  if (unit === 'ounces') return inOunces(answer, language);
  if (unit === 'spoons' || command !== 'dose' || answer.doses?.length !== 1) return answer;
  const measure = answer.blocks.find(block => block.kind === 'measures')?.measures[0];
  if (!measure || given.portion === undefined) return answer;
  const { label: name, value: weight } = measure;
  return { ...answer, headline: say.leaning.inGrams({ weight, name, portion: given.portion }) };
}
