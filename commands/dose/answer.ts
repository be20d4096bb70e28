import type { Context } from '../../src/conversation/context.ts';
import type { Block, Next, ReplyWith } from '../../src/conversation/reply.ts';
import { lineOf } from '../../src/conversation/typed/line-of.ts';
import { oilGramsFor } from '../../src/engine/batch/fit.ts';
import { inMillilitres } from '../../src/engine/batch/portion-in-mould.ts';
import { fillPortions } from '../../src/engine/batch/portions/portions.ts';
import { batterOfPot } from '../../src/engine/batch/portions/pot.ts';
import { makeRecipe } from '../../src/engine/batch/recipe.ts';
import type { Colourant } from '../../src/engine/colourants/colourant.ts';
import { type Batter, TYPICAL_BATTER } from '../../src/engine/dispersion/batter.ts';
import { answerDose } from '../../src/engine/dosing/answer.ts';
import { portionMillilitres } from '../../src/engine/dosing/portion.ts';
import type { DoseAnswer } from '../../src/engine/dosing/request.ts';
import { amountPhrase } from '../../src/engine/quantities/spoken/amount-phrases.ts';
import { parsePortionRange } from '../../src/engine/quantities/told/portion.ts';
import { saidAmount } from '../../src/engine/quantities/told/said-amount.ts';
import { MEASURES } from '../../src/engine/quantities/units.ts';
import { colourCost, portionCostView } from '../../src/presenting/cost.ts';
import {
  doseBlocks,
  doseCautions,
  MOST_DOSE_WORDS,
  type NamedDose,
  nameOf,
  spoonsOf,
} from '../../src/presenting/dose.ts';
import { type DoseAnswerData, doseAnswerData } from '../../src/presenting/dose-data.ts';
import { type ColourNotes, colourNotes, withoutCatalogueLye } from '../../src/presenting/warning.ts';
import { mayBeReported } from '../../src/records/evidence/index.ts';
import { kitchenOf, preferencesOf } from '../../src/records/preferences.ts';
import { findRecipe } from '../../src/records/recipes/index.ts';
import { readKept } from '../../src/records/recipes/kept-plan.ts';
import { listShelf } from '../../src/records/shelf/index.ts';
import type { Jar } from '../../src/records/shelf/jars/jar.ts';
import type { Words } from '../../src/words/index.ts';
import { type DoseOptions, jarsMeant, readColours } from './asked.ts';
import { takeChoice } from './follow-ups.ts';
import { lawOf } from './law.ts';
import { otherFigures, untoldStrength } from './other-figures.ts';
import { keepPlain, plainAnswer } from './plain-answers.ts';

declare module '../../src/conversation/reply.ts' {
  interface AnswerData {
    dose: DoseAnswerData;
  }
}

const isOwn = ({ item }: Jar): boolean => item !== undefined;

/** Doses what was asked. Throws the Refusals of reading it, of the shelf and of dosing. */
export async function doseReply(given: DoseOptions, context: Context): Promise<ReplyWith<DoseAnswerData>> {
  const asked = { ...given, portion: inMillilitres(given.portion) };
  const { say, store, asker } = context;
  const measures = kitchenOf(await preferencesOf(store, asker.id));
  const before = plainAnswer(asked, measures, say);
  if (before && (await isAllThereIs(asked, context))) return before;
  const { low: portion, high } = parsePortionRange(asked.portion, measures);
  const { jars, wantedIn } = await readColours(asked, measures, context.shelf);
  const batter = asked.recipe === undefined ? undefined : await recipeBatter(asked.recipe, context);
  const doseFor = (amount: typeof portion) =>
    answerDose({
      portion: amount,
      colourants: wantedIn(amount, batter ?? TYPICAL_BATTER),
      measures,
      ...(batter && { batter }),
    });
  const answer = doseFor(portion);
  // Of "2-3 cups" both ends are told.
  const more = high && doseFor(high);
  const ends = high ? amountPhrase(asked.portion) : undefined;
  const notes = await notesOn(jars, context);
  const doses = answer.doses.map(
    (dose, index): NamedDose => ({ dose, name: knownAs(jars[index] as Jar, say) }),
  );
  const cost = colourCost(
    doses.map(({ dose }, index) => ({
      item: jars[index]?.item,
      grams: (dose.premix?.grams ?? dose.grams).typical,
    })),
  );
  const pot = batter ?? TYPICAL_BATTER;
  const costs = portionCostView(cost, portionMillilitres(portion, pot) * pot.gramsPerMillilitre, say);
  const headline = headlineOf(
    jars,
    { doses, portion: say.quantities.said(saidAmount(ends?.low ?? asked.portion.trim())) },
    say,
  );
  const [first] = doses;
  const others =
    first && !high
      ? otherFigures(
          asked,
          { colourant: (jars[0] as Jar).colourant, dose: first.dose, portion, batter: pot },
          say,
        )
      : '';
  const reply: ReplyWith<DoseAnswerData> = {
    kind: 'reply',
    headline: `${headline}${others}`,
    data: {
      ...doseAnswerData(answer),
      ...(more && { upTo: doseAnswerData(more) }),
      ...(cost && { cost }),
    },
    blocks: [
      ...(more
        ? [upperEnd(more, { portion: say.quantities.said(saidAmount(ends?.high ?? '')), doses }, say)]
        : []),
      ...doseBlocks(
        doses,
        jars.map(({ colourant }) => colourant),
        say,
      ),
      ...costs.map((text): Block => ({ kind: 'text', text, fold: 'numbers' })),
      ...notes.asides.map((text): Block => ({ kind: 'text', text, fold: 'why' })),
    ],
    cautions: [...notes.cautions, ...doseCautions(withoutCatalogueLye(answer.cautions, jars), say)],
    choices: doses.flatMap(({ dose }, index) => takeChoice(jars[index] as Jar, dose, context)),
    next: nextOf(asked, { seen: ends?.low ?? asked.portion, colourant: (jars[0] as Jar).colourant }, say),
    most: MOST_DOSE_WORDS,
  };
  if (!jars.some(isOwn) && isNothing(notes)) keepPlain(asked, { measures, say, reply });
  return reply;
}

const notesOn = (jars: readonly Jar[], { store, group, asker, say }: Context): Promise<ColourNotes> =>
  colourNotes(jars, { scope: { store, group }, viewer: asker.id, say });
const isNothing = ({ cautions, asides }: ColourNotes): boolean => cautions.length + asides.length === 0;

/** True where no jar of the asker's is meant, and nobody has reported anything: what is kept of the words alone is the answer. */
async function isAllThereIs({ colourant, with: others }: DoseOptions, context: Context): Promise<boolean> {
  const { shelf, group, store } = context;
  const hasNone = (await listShelf(shelf)).length === 0;
  if (hasNone && !(await mayBeReported({ store, group }))) return true;
  const jars = await jarsMeant([colourant, ...others], context.shelf);
  return !jars.some(isOwn) && isNothing(await notesOn(jars, context));
}

/** The law before any number, then the number. */
function headlineOf(
  jars: readonly Jar[],
  { doses, portion }: { readonly doses: readonly NamedDose[]; readonly portion: string },
  say: Words,
): string {
  const law = jars.flatMap(jar => lawOf(jar, say));
  const [first] = doses;
  const dosed = say.dosing.headline({
    spoons: first ? spoonsOf(first.dose, say) : '',
    colourant: doses
      .map(({ dose, name }, index) => {
        const what = dose.premix ? say.dosing.pasteOf({ colourant: name }) : name;
        return index === 0 ? what : `${spoonsOf(dose, say)} ${what}`;
      })
      .join(' + '),
    portion,
  });
  return [...new Set(law), dosed].join(' ');
}

/** The colour to see, of a range in its lower end, and the same in another strength. */
function nextOf(
  { with: others, ...asked }: DoseOptions,
  { seen, colourant: kind }: { readonly seen: string; readonly colourant: Colourant },
  say: Words,
): readonly Next[] {
  const given = Object.fromEntries(
    [...Object.entries(asked), ...others.map((one, at) => [`with-${at + 1}`, one] as const)].filter(
      (entry): entry is [string, string] => entry[1] !== undefined,
    ),
  );
  const { colourant } = asked;
  const strength = asked.strength ?? untoldStrength(asked, kind) ?? 'full';
  const isNamed = strength !== 'full' && Object.hasOwn(say.quantities.strengths, strength);
  const named = isNamed ? `${colourant} ${strength}` : colourant;
  return [
    {
      label: say.folds.next.preview,
      line: lineOf('preview', { mix: [named, ...others].join(' + '), portion: seen }),
    },
    {
      label: say.folds.next.otherStrength,
      lines: Object.entries(say.quantities.strengths)
        .filter(([value]) => value !== strength)
        .map(([value, label]) => ({ label, line: lineOf('dose', { ...given, strength: value }) })),
    },
  ];
}

/** The doses of the upper end of a range, in a line. */
const upperEnd = (
  { doses }: DoseAnswer,
  { portion, doses: named }: { readonly portion: string; readonly doses: readonly NamedDose[] },
  say: Words,
): Block => ({
  kind: 'text',
  text: say.ask.bothEnds({
    portion,
    doses: doses.map((dose, index) => `${spoonsOf(dose, say)} ${named[index]?.name ?? ''}`).join(' + '),
  }),
});

/** Two colourants are dosed the same when the spoons, the most and the carrier are. */
export const doseEssence = ({ doses }: ReturnType<typeof doseAnswerData>): string =>
  JSON.stringify(
    doses.map(({ spoons, ceilingTeaspoons, carrier }) => [spoons, ceilingTeaspoons, carrier.choice]),
  );

/** The batter of a kept recipe as it stands in the pot when it is split. */
async function recipeBatter(asked: string, context: Context): Promise<Batter> {
  const recipe = await findRecipe(context.recipes, asked);
  const { request } = await readKept(recipe, context.shelf, MEASURES[recipe.spoons]);
  const { pot } = fillPortions(makeRecipe(request, oilGramsFor(request)), request);
  return batterOfPot(pot);
}

const knownAs = ({ item, colourant }: Jar, say: Words) => item?.name ?? nameOf(colourant, say);
