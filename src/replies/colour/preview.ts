import type { Context } from '../../conversation/context.ts';
import type { Block, Measure, Reply } from '../../conversation/reply.ts';
import type { BarPrediction } from '../../engine/colour/bar.ts';
import { parseBase, USUAL_BASE, type WrittenBase } from '../../engine/colour/base-text.ts';
import type { ColourJar } from '../../engine/colour/jar.ts';
import { fullGrams } from '../../engine/colour/jar-spoons.ts';
import { CARD_STRENGTHS, type Preview } from '../../engine/colour/preview.ts';
import type { CautionId } from '../../engine/dosing/cautions.ts';
import type { Dose, DoseAnswer } from '../../engine/dosing/request.ts';
import { parsePortion } from '../../engine/quantities/amount.ts';
import { practicalSpoons } from '../../engine/quantities/spoons.ts';
import { STRENGTH_SHARES, type StrengthName } from '../../engine/quantities/strength.ts';
import { MEASURES, type Measures } from '../../engine/quantities/units.ts';
import { preferencesOf } from '../../records/preferences.ts';
import type { Jar } from '../../records/shelf/jar.ts';
import type { Words } from '../../words/index.ts';
import { doseCautions, rough, spoonsOf } from '../dose.ts';
import { colourJar, knownAs, sourceOf, sourceSaid, spooned } from './jars.ts';
import { readMix } from './mix.ts';
import { baseSaid, capital, gelSaid, looksSaid, predictedData, whole, wordOf } from './said.ts';

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

/** The smallest spoon, in neutral writing. */
const SMALLEST = '1/32 tsp';

/** Everything a preview is told from. */
type Seen = {
  readonly jars: readonly Jar[];
  readonly colours: readonly ColourJar[];
  readonly answer: DoseAnswer;
  readonly base: WrittenBase;
  readonly gelled: boolean;
  readonly portion: string;
  readonly preview: Preview;
  readonly measures: Measures;
  readonly say: Words;
};

/** The predicted colour of a mix, with its measures and its swatch card. */
export async function previewReply(asked: PreviewAsked, context: Context): Promise<Reply> {
  const { say, store, asker, workers } = context;
  const measures = MEASURES[(await preferencesOf(store, asker.id)).spoons];
  const written = asked.portion?.trim() ?? say.match.oneCup;
  const portion = parsePortion(written, measures);
  const base = asked.base === undefined ? USUAL_BASE : parseBase(asked.base);
  const gelled = asked.gel ?? false;
  const { jars, answer } = await readMix(asked.mix, { portion, measures }, context);
  const colours = await Promise.all(jars.map(jar => colourJar(jar, context)));
  const preview = await workers.run(
    'previewMix',
    {
      parts: answer.doses.map((dose, at) => ({
        jar: colours[at]!,
        grams: (100 * dose.grams.typical * spooningOf(dose)) / answer.portion.grams,
        full: fullGrams(spooned(jars[at]!, measures), measures),
        white: dose.colourant.kind === 'white',
      })),
      shades: base.shades,
      gelled,
    },
    { owner: asker.id },
  );
  const seen: Seen = { jars, colours, answer, base, gelled, portion: written, preview, measures, say };
  const png = await workers.run('swatchCard', cardOf(seen), { owner: asker.id });
  return {
    kind: 'reply',
    headline: headlineOf(seen),
    data: dataOf(seen),
    blocks: [
      { kind: 'measures', measures: measuresOf(seen) },
      { kind: 'picture', name: 'swatches.png', png, alt: altOf(seen) },
      ...notesOf(seen),
    ],
    cautions: doseCautions(
      answer.cautions.filter(({ id }) => OF_THE_COLOUR.has(id)),
      say,
    ),
  };
}

/** What the spoons hold beside what was meant. */
const spooningOf = ({ premix, practical, teaspoons }: Dose): number =>
  premix ? 1 : practical.teaspoons / teaspoons;

const namesOf = ({ jars, say }: Seen): readonly string[] => jars.map(jar => knownAs(jar, say));

function headlineOf(seen: Seen): string {
  const { predicted } = seen.preview;
  return seen.say.preview.headline({
    word: capital(wordOf(predicted, seen.say)),
    hex: predicted.hex,
    plusMinus: whole(predicted.plusMinus),
    mix: namesOf(seen).join(' + '),
  });
}

function measuresOf(seen: Seen): readonly Measure[] {
  const { answer, jars, base, gelled, preview, portion, say } = seen;
  const told = ({ word, hex }: BarPrediction) => say.preview.colour({ word: say.colour.names[word], hex });
  return [
    ...answer.doses.map(
      (dose, at): Measure => ({
        label: knownAs(jars[at]!, say),
        value: say.preview.spooned({
          spoons: spoonsOf(dose, say),
          grams: rough((dose.premix?.grams ?? dose.grams).typical),
          portion,
        }),
        note: sourceSaid(sourceOf(seen.colours[at]!), jars[at]!, say),
      }),
    ),
    {
      label: say.preview.base,
      value: say.preview.inBase({ base: baseSaid(base, say), gel: gelSaid(gelled, say) }),
    },
    {
      label: gelled ? say.preview.otherwise.notGelled : say.preview.otherwise.gelled,
      value: told(preview.otherwise),
    },
  ];
}

function notesOf({ preview, colours, say }: Seen): readonly Block[] {
  const { predicted } = preview;
  const looks = looksSaid(predicted, say);
  return [
    ...(looks.length > 0 ? [{ kind: 'text' as const, text: looks.join('\n') }] : []),
    {
      kind: 'text',
      folds: true,
      text: [
        say.colour.plusMinus({ units: String(whole(predicted.plusMinus)) }),
        say.colour.translucent,
        ...(colours.some(jar => !jar.measured) ? [say.preview.calibrateFirst] : []),
      ].join('\n'),
    },
  ];
}

/** What to spoon of each colourant for one row of the card. */
function rowMeasures(
  { answer, jars, preview, measures, say }: Seen,
  strength: StrengthName,
): readonly string[] {
  const colours = answer.doses.some(({ colourant }) => colourant.kind !== 'white');
  return answer.doses.map((dose, at) => {
    const jar = spooned(jars[at]!, measures);
    const steady = colours && dose.colourant.kind === 'white';
    const share = preview.fullShares[at]! * (steady ? 1 : STRENGTH_SHARES[strength]);
    const grams = (share * fullGrams(jar, measures) * answer.portion.grams) / 100;
    const { typical } = dose.grams;
    const teaspoons = ((dose.premix?.teaspoons ?? dose.teaspoons) * grams) / typical;
    const { text, spoons } = practicalSpoons(teaspoons);
    const measure = spoons.length === 0 ? say.preview.under({ spoon: SMALLEST }) : text;
    return say.match.part({ spoons: say.quantities.measure(measure), name: knownAs(jars[at]!, say) });
  });
}

function cardOf(seen: Seen) {
  const { preview, portion, base, say } = seen;
  const { card, columns, colour } = say.preview;
  const { predicted, plain } = preview;
  const field = ({ word, hex }: BarPrediction) => ({ hex, label: say.colour.names[word] });
  return {
    title: capital(namesOf(seen).join(' + ')),
    subtitle: [capital(baseSaid(base, say)), card.inPortion({ portion })].join(', '),
    mix: {
      hex: predicted.hex,
      title: card.mix,
      label: `${colour({ word: capital(wordOf(predicted, say)), hex: predicted.hex })}, ${gelSaid(seen.gelled, say)}`,
      note: card.expected({ plusMinus: whole(predicted.plusMinus) }),
    },
    plain: { hex: plain.hex, title: card.plain, label: `${wordOf(plain, say)}, ${plain.hex}` },
    columns: [capital(say.colour.notGelled), capital(say.colour.gelled)] as const,
    rows: CARD_STRENGTHS.map((strength, at) => ({
      title: columns[strength],
      measures: rowMeasures(seen, strength),
      fields: [
        field(preview.swatches[at]!.predicted),
        field(preview.swatches[at + CARD_STRENGTHS.length]!.predicted),
      ] as const,
    })),
    note: card.note,
  };
}

function altOf({ preview, say }: Seen): string {
  const { alt, altField, columns } = say.preview;
  const list = preview.swatches
    .filter(({ gelled }) => !gelled)
    .map(({ strength, predicted: { word, hex } }) =>
      altField({ strength: columns[strength], word: say.colour.names[word], hex }),
    );
  const { word, hex } = preview.predicted;
  return alt({ word: say.colour.names[word], hex, list: list.join('; ') });
}

function dataOf({ preview, answer, jars, colours, base, gelled, portion }: Seen): object {
  return {
    predicted: predictedData(preview.predicted),
    otherwise: { gelled: !gelled, ...predictedData(preview.otherwise) },
    plain: predictedData(preview.plain),
    base: { ...base, gelled },
    portion: { ...answer.portion, written: portion },
    doses: answer.doses.map((dose, at) => ({
      ...dose,
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
