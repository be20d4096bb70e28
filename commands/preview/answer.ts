import type { Context } from '../../src/conversation/context.ts';
import type { Block, Caution, Measure, Next, Reply } from '../../src/conversation/reply.ts';
import { lineOf } from '../../src/conversation/typed/line-of.ts';
import type { BarPrediction } from '../../src/engine/colour/mixing/bar.ts';
import { parseBase, USUAL_BASE } from '../../src/engine/colour/reading/base-text.ts';
import { namesOfMix } from '../../src/engine/colour/reading/mix-text.ts';
import type { CautionId } from '../../src/engine/dosing/cautions.ts';
import type { Dose } from '../../src/engine/dosing/request.ts';
import { practicalSpoons } from '../../src/engine/quantities/spoons.ts';
import { parsePortion } from '../../src/engine/quantities/told/portion.ts';
import { saidAmount } from '../../src/engine/quantities/told/said-amount.ts';
import { MEASURES } from '../../src/engine/quantities/units.ts';
import { capital } from '../../src/engine/text/capital.ts';
import { colourJar, fullOf, knownAs, sourceOf, sourceView } from '../../src/presenting/colour/jars.ts';
import { learntNote } from '../../src/presenting/colour/learnt-strength.ts';
import { readMix } from '../../src/presenting/colour/mix.ts';
import {
  baseView,
  gelView,
  looksView,
  predictedData,
  whole,
  wordOf,
} from '../../src/presenting/colour/view.ts';
import { doseCautions, rough, spoonsOf } from '../../src/presenting/dose.ts';
import { doseData } from '../../src/presenting/dose-data.ts';
import { kitchenOf, preferencesOf } from '../../src/records/preferences.ts';
import type { Words } from '../../src/words/index.ts';
import { asAsked } from './as-asked.ts';
import { altOf, cardOf } from './card.ts';
import { namesOf, type PreviewView } from './view.ts';

export type PreviewAsked = {
  readonly mix: string;
  readonly portion?: string | undefined;
  readonly base?: string | undefined;
  readonly gel?: boolean | undefined;
};

/** Cautions that a colour brings; those of the work itself come with the dose. */
const OF_THE_COLOUR: ReadonlySet<CautionId> = new Set([
  'capped-at-ceiling',
  'mix-scaled',
  'whites-scaled',
  'lye-changes',
  'fades-in-light',
  'premix-strength-unknown',
]);

/** Whether a jar on the asker's shelf goes into the mix. */
export async function previewNamesJar({ mix }: PreviewAsked, context: Context): Promise<boolean> {
  const portion = parsePortion(context.say.match.oneCup);
  const { jars } = await readMix(mix, { portion, measures: MEASURES.us }, context);
  return jars.some(({ item }) => item !== undefined);
}

/** The predicted colour of a mix, with its measures and its swatch card. */
export async function previewReply(asked: PreviewAsked, context: Context): Promise<Reply> {
  const { say, store, asker, workers } = context;
  const measures = kitchenOf(await preferencesOf(store, asker.id));
  const typed = asked.portion?.trim() ?? say.match.oneCup;
  const written = say.quantities.said(saidAmount(typed));
  const portion = parsePortion(typed, measures);
  const base = asked.base === undefined ? USUAL_BASE : parseBase(asked.base);
  const gelled = asked.gel ?? false;
  const { jars, answer: held } = await readMix(asked.mix, { portion, measures }, context);
  const { doses, over } = asAsked(held, measures);
  const answer = { ...held, doses };
  const colours = await Promise.all(jars.map(jar => colourJar(jar, context)));
  const preview = await workers.run(
    'previewMix',
    {
      parts: answer.doses.map((dose, at) => ({
        jar: colours[at]!,
        grams: (100 * dose.grams.typical * spooningOf(dose)) / answer.portion.grams,
        full: fullOf(jars[at]!, measures),
        white: dose.colourant.kind === 'white',
      })),
      shades: base.shades,
      gelled,
    },
    { owner: asker.id },
  );
  const view: PreviewView = { jars, colours, answer, base, gelled, portion: written, preview, measures, say };
  const png = await workers.run('swatchCard', cardOf(view), { owner: asker.id });
  return {
    kind: 'reply',
    headline: headlineOf(view),
    data: dataOf(view),
    blocks: [
      { kind: 'measures', measures: spoonedOf(view), fold: 'face' },
      { kind: 'measures', measures: measuresOf(view), fold: 'numbers' },
      { kind: 'picture', name: 'swatches.png', png, alt: altOf(view) },
      ...learntNote(jars, say),
      ...notesOf(view),
    ],
    cautions: [
      ...over.map(dose => aboveMost(dose, say)),
      ...doseCautions(
        answer.cautions.filter(
          ({ id }) => OF_THE_COLOUR.has(id) && !(id === 'capped-at-ceiling' && over.length > 0),
        ),
        say,
      ),
    ],
    next: nextOf(asked, typed, say),
    most: MOST_WORDS,
  };
}

/** An amount is shown that no portion of this size should take. */
const aboveMost = ({ ceilingTeaspoons }: Dose, { preview, quantities }: Words): Caution => ({
  id: 'capped-at-ceiling',
  text: preview.aboveMost({ most: quantities.measure(practicalSpoons(ceilingTeaspoons, ceilingTeaspoons)) }),
});

/** Words on the face of a preview. */
const MOST_WORDS = 90;

/** How it is dosed, and a batch with it. */
function nextOf({ mix }: PreviewAsked, portion: string, say: Words): readonly Next[] {
  // A spoonful in the mix is no name that a dose could start from.
  const [first, ...others] = namesOfMix(mix);
  if (first === undefined) return [];
  const given = Object.fromEntries(others.slice(0, 4).map((part, at) => [`with-${at + 1}`, part]));
  return [{ label: say.folds.next.dose, line: lineOf('dose', { colourant: first, portion, ...given }) }];
}

/** What the spoons hold beside what was meant. */
const spooningOf = ({ premix, spoons, teaspoons }: Dose): number =>
  premix ? 1 : spoons.teaspoons / teaspoons;

function headlineOf(view: PreviewView): string {
  const { predicted } = view.preview;
  return view.say.preview.headline({
    word: capital(wordOf(predicted, view.say)),
    hex: predicted.hex,
    plusMinus: whole(predicted.plusMinus),
    mix: namesOf(view).join(' + '),
  });
}

/** What is spooned, without where its colour is known from. */
const spoonedOf = ({ answer, jars, portion, preview, say }: PreviewView): readonly Measure[] =>
  answer.doses.map((dose, at) => ({
    label: knownAs(jars[at]!, say),
    value: say.preview.spooned({
      spoons: spoonsOf(dose, say),
      grams: rough((dose.premix?.grams ?? dose.grams).typical),
      portion,
    }),
    ...(at === 0 && { hex: preview.predicted.hex }),
  }));

function measuresOf(view: PreviewView): readonly Measure[] {
  const { jars, base, gelled, preview, say } = view;
  const told = ({ word, hex }: BarPrediction) => say.preview.colour({ word: say.colour.names[word], hex });
  return [
    ...spoonedOf(view).map(({ label, value }, at): Measure => {
      const note = sourceView(sourceOf(view.colours[at]!), jars[at]!, say);
      return { label, value, note };
    }),
    {
      label: say.preview.base,
      value: say.preview.inBase({ base: baseView(base, say), gel: gelView(gelled, say) }),
    },
    {
      label: gelled ? say.preview.otherwise.notGelled : say.preview.otherwise.gelled,
      value: told(preview.otherwise),
    },
  ];
}

function notesOf({ preview, colours, say }: PreviewView): readonly Block[] {
  const { predicted } = preview;
  const looks = looksView(predicted, say);
  return [
    ...(looks.length > 0 ? [{ kind: 'text' as const, text: looks.join('\n'), fold: 'why' as const }] : []),
    {
      kind: 'text',
      folds: true,
      fold: 'why',
      text: [
        say.colour.plusMinus({ units: String(whole(predicted.plusMinus)) }),
        say.colour.translucent,
        ...(colours.some(jar => sourceOf(jar) !== 'own-bars') ? [say.preview.calibrateFirst] : []),
      ].join('\n'),
    },
  ];
}

function dataOf({ preview, answer, jars, colours, base, gelled, portion }: PreviewView): object {
  return {
    predicted: predictedData(preview.predicted),
    otherwise: { gelled: !gelled, ...predictedData(preview.otherwise) },
    plain: predictedData(preview.plain),
    base: { ...base, gelled },
    portion: { ...answer.portion, written: portion },
    doses: answer.doses.map((dose, at) => ({
      ...doseData(dose),
      item: jars[at]!.item?.id,
      source: sourceOf(colours[at]!),
      plusMinus: preview.plusMinus[at],
    })),
    swatches: preview.swatches.map(({ predicted, ...swatch }) => ({
      ...swatch,
      ...predictedData(predicted),
    })),
  };
}
