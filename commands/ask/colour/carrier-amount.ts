import type { Context } from '../../../src/conversation/context.ts';
import { textsOf } from '../../../src/conversation/question.ts';
import { colourantsMeant } from '../../../src/engine/colourants/find.ts';
import { carrierFor } from '../../../src/engine/dispersion/carrier.ts';
import { parseAmount } from '../../../src/engine/quantities/amount.ts';
import { practicalSpoons } from '../../../src/engine/quantities/spoons.ts';
import { type Measures, US_TEASPOON_ML } from '../../../src/engine/quantities/units.ts';
import {
  type CarrierAmountAsked,
  carrierAmountAsked,
} from '../../../src/engine/questions/found/carrier-amount.ts';
import type { Facts } from '../../../src/engine/questions/found/facts.ts';
import { foundIn } from '../../../src/engine/questions/found/found-in.ts';
import { Refusal } from '../../../src/engine/refusal.ts';
import { doseCautions, nameOf } from '../../../src/presenting/dose.ts';
import { kitchenOf, preferencesOf } from '../../../src/records/preferences.ts';
import { findJar, type Jar, knownOf } from '../../../src/records/shelf/jars/jar.ts';
import type { Answerer } from '../asked.ts';
import { choicesOf } from '../how-read.ts';
import { keepLines } from '../kept-lines.ts';
import { orItsNo } from '../reading/run-reading.ts';
import type { AskReply, Ran } from '../understood.ts';

/** The jar that is named, or the first that its name may be: micas are wetted alike, whatever coats them. */
async function jarMeant(name: string, { shelf }: Context): Promise<Jar> {
  try {
    return await findJar(shelf, name);
  } catch (refusal) {
    const [first] = colourantsMeant(name);
    if (!(refusal instanceof Refusal) || refusal.id !== 'colourant-ambiguous' || !first) throw refusal;
    return { colourant: first };
  }
}

/** Loose powder of so much, ml: what is weighed by what a spoon of it weighs. */
function looseMillilitres(jar: Jar, powder: string, measures: Measures): number {
  const amount = parseAmount(powder, measures);
  if (amount.measure === 'volume') return amount.millilitres;
  const { gramsPerTeaspoon } = knownOf(jar, measures);
  return gramsPerTeaspoon === undefined
    ? amount.grams / jar.colourant.bulkDensity.typical
    : (amount.grams / gramsPerTeaspoon) * measures.teaspoon;
}

/** How much of the carrier that was named, or of the usual one, wets so much powder. Throws the Refusals of the jar, the amount and the carrier. */
async function carrierAmount(
  { colourant: asked, powder, carrier }: CarrierAmountAsked,
  context: Context,
): Promise<Ran> {
  const { say, store, asker } = context;
  const measures = kitchenOf(await preferencesOf(store, asker.id));
  const jar = await jarMeant(asked, context);
  const { dishTest } = knownOf(jar, measures);
  const advice = carrierFor({
    colourant: jar.colourant,
    powderMillilitres: looseMillilitres(jar, powder, measures),
    ...(carrier && { asked: carrier }),
    ...(dishTest && { dishTest }),
  });
  const spoons = say.quantities.measure(practicalSpoons(advice.millilitres / US_TEASPOON_ML));
  const amount = `${spoons} (${Math.round(advice.millilitres)} ml)`;
  const liquid = say.dispersion.carriers[advice.choice];
  const name = jar.item?.name ?? (colourantsMeant(asked).length > 1 ? asked : nameOf(jar.colourant, say));
  return {
    kind: 'reply',
    headline: say.ask.carrierAmount({ amount, carrier: liquid, powder, name }),
    data: { carrier: { choice: advice.choice, millilitres: advice.millilitres } },
    blocks: [
      { kind: 'text', text: say.dispersion.wet[advice.wet]({ carrier: liquid, amount }) },
      { kind: 'text', text: say.ask.carrierRule[advice.choice] },
    ],
    cautions: doseCautions([{ id: 'dust', values: {} }], say),
  };
}

/** How much liquid so much powder is wetted in. */
export const carrierAmountAnswer: Answerer = {
  id: 'carrier-amount',
  leavesTo: ['stays-out', 'lye'],
  async answer({ question, said, read, context }) {
    const { words, found } = foundIn(said);
    const asked = read.outside === undefined ? carrierAmountAsked(words, found) : undefined;
    if (!asked) return undefined;
    const ran = await orItsNo(() => carrierAmount(asked, context), context);
    await keepLines([question], context);
    return withUnderstood(ran, asked, read.facts, context);
  },
};

const withUnderstood = (
  ran: Ran,
  { colourant, carrier }: CarrierAmountAsked,
  facts: Facts,
  context: Context,
): AskReply => ({
  ...ran,
  understood: {
    kind: 'command',
    job: 'wet',
    command: 'dose',
    given: textsOf({ colourant, ...(carrier && { carrier }) }),
    facts,
  },
  choices: [...(ran.choices ?? []), ...choicesOf([], context)],
});
