import type { Context } from '../../src/conversation/context.ts';
import type { Reply } from '../../src/conversation/reply.ts';
import { usualTeaspoon } from '../../src/engine/colour/jars/colourant-optics.ts';
import { findColourant } from '../../src/engine/colourants/asked/find-colourant.ts';
import { TYPICAL_BATTER } from '../../src/engine/dispersion/batter.ts';
import {
  LINE_GRAMS_PER_CM2,
  type LineThickness,
  lineGrams,
  PARTING_GRAMS_PER_CM2,
} from '../../src/engine/pouring/dusted-line.ts';
import { type Layer, wedgedLayers } from '../../src/engine/pouring/layers.ts';
import {
  filledCm,
  type LengthUnit,
  type LevelLayer,
  lengthUnitOf,
  levelLayers,
  type PourMould,
  parsePourMould,
  pouredMillilitres,
  surfaceCm2,
  tiltable,
} from '../../src/engine/pouring/pour-mould.ts';
import { readSwirlShares } from '../../src/engine/pouring/swirl-shares.ts';
import { practicalSpoons, timesSpoons } from '../../src/engine/quantities/spoons.ts';
import { type Measures, US_TEASPOON_ML } from '../../src/engine/quantities/units.ts';
import { refuse } from '../../src/engine/refusal.ts';
import { excerpt } from '../../src/engine/text/excerpt.ts';
import { knownAs } from '../../src/presenting/colour/jars.ts';
import { doseCautions, rough } from '../../src/presenting/dose.ts';
import { spoonedOut } from '../../src/presenting/spoons.ts';
import { kitchenOf, preferencesOf } from '../../src/records/preferences.ts';
import { findJar, type Jar, knownOf } from '../../src/records/shelf/jars/jar.ts';
import { volumeView } from './volume.ts';

declare module '../../src/engine/refusal.ts' {
  interface Reasons {
    'swirl-too-deep': { readonly most: number };
  }
}

const measuresOf = async ({ store, asker }: Context): Promise<Measures> =>
  kitchenOf(await preferencesOf(store, asker.id));

/** Equal layers, the first as a wedge where a loaf is tilted for it. */
export async function layersReply(
  asked: { readonly mould: string; readonly layers: number; readonly raised?: number | undefined },
  context: Context,
): Promise<Reply> {
  const mould = parsePourMould(asked.mould);
  const raised = asked.raised ?? 0;
  const measures = await measuresOf(context);
  const unit = lengthUnitOf(asked.mould);
  return raised > 0
    ? wedgeReply(wedgedLayers(tiltable(mould), asked.layers, raised), { raised, measures, unit }, context)
    : levelReply(levelLayers(mould, asked.layers), { measures, unit }, context);
}

/** How whoever asks measures: with which spoons, and lengths in the unit that the mould was given in. */
type Measuring = { readonly measures: Measures; readonly unit: LengthUnit };

const gramsIn = (millilitres: number) => Math.round(millilitres * TYPICAL_BATTER.gramsPerMillilitre);

function levelReply(layers: readonly LevelLayer[], { measures, unit }: Measuring, { say }: Context): Reply {
  const words = say.pouring;
  const volume = (millilitres: number) => volumeView(millilitres, measures, say);
  return {
    kind: 'reply',
    headline: words.layers({ count: layers.length, volume: volume(layers[0]!.millilitres) }),
    data: { layers, raisedCm: 0 },
    blocks: [
      {
        kind: 'rows',
        rows: layers.map(({ millilitres, eachMillilitres, topCm }, at) =>
          words.layer({
            number: at + 1,
            volume: volume(millilitres),
            grams: gramsIn(millilitres),
            each: eachMillilitres === undefined ? undefined : volume(eachMillilitres),
            topCm,
            unit,
          }),
        ),
      },
      { kind: 'text', folds: true, fold: 'steps', text: words.layerSteps },
    ],
    cautions: doseCautions([{ id: 'raw-batter', values: {} }], say),
  };
}

function wedgeReply(
  layers: readonly Layer[],
  { raised, measures, unit }: Measuring & { readonly raised: number },
  { say }: Context,
): Reply {
  const words = say.pouring;
  const [first] = layers;
  const rows = layers.map(({ millilitres, topCm: [low, high] }, at) => {
    const told = {
      number: at + 1,
      volume: volumeView(millilitres, measures, say),
      grams: gramsIn(millilitres),
      unit,
    };
    return Math.abs(high - low) < 1e-9
      ? words.layer({ ...told, each: undefined, topCm: high })
      : words.wedgeLayer({ ...told, low, high });
  });
  return {
    kind: 'reply',
    headline: words.layers({ count: layers.length, volume: volumeView(first!.millilitres, measures, say) }),
    data: { layers, raisedCm: raised },
    blocks: [
      { kind: 'text', text: words.wedge({ raised }) },
      { kind: 'rows', rows },
      { kind: 'text', folds: true, fold: 'steps', text: [words.layerSteps, words.wedgeSteps].join('\n') },
    ],
    cautions: doseCautions([{ id: 'raw-batter', values: {} }], say),
  };
}

const USUAL_LINE = 'gold-mica';

/** Powder for pencil lines, by the area of the mould. */
export async function lineReply(
  asked: {
    readonly mould: string;
    readonly lines?: number | undefined;
    readonly thickness?: LineThickness | undefined;
    readonly colourant?: string | undefined;
  },
  context: Context,
): Promise<Reply> {
  const { say, shelf } = context;
  const measures = await measuresOf(context);
  const areaCm2 = surfaceCm2(parsePourMould(asked.mould));
  const jar: Jar =
    asked.colourant === undefined
      ? { colourant: findColourant(USUAL_LINE) }
      : await findJar(shelf, asked.colourant);
  const thickness = asked.thickness ?? 'usual';
  const lines = asked.lines ?? 1;
  const grams = lineGrams({ areaCm2, lines, thickness });
  const spoon =
    knownOf(jar, measures).gramsPerTeaspoon ??
    (usualTeaspoon(jar.colourant) * measures.teaspoon) / US_TEASPOON_ML;
  const each = practicalSpoons(grams / lines / spoon, undefined, measures.owned);
  // What is spooned out in all is what the lines take one by one.
  const inAll =
    each.spoons.length > 0
      ? say.quantities.measure({ spoons: timesSpoons(each.spoons, lines, measures.owned) })
      : spoonedOut(grams / spoon, measures, say);
  const words = say.pouring;
  return {
    kind: 'reply',
    headline: words.line({ spoons: inAll, grams: rough(grams), name: knownAs(jar, say) }),
    data: { grams, teaspoons: grams / spoon, areaCm2, lines, thickness },
    blocks: [
      {
        kind: 'text',
        text: [
          words.lineArea({ area: Math.round(areaCm2) }),
          ...(lines > 1 ? [words.lineEach({ lines, spoons: say.quantities.measure(each) })] : []),
          ...(LINE_GRAMS_PER_CM2[thickness] > PARTING_GRAMS_PER_CM2 / 2 ? [words.lineParts] : []),
        ].join('\n'),
      },
      { kind: 'text', folds: true, fold: 'why', text: words.lineOrigin },
    ],
    cautions: doseCautions([{ id: 'dust', values: {} }], say),
  };
}

/** Depth of a swirled top unless it is said, cm (common practice: an inch). */
const USUAL_DEPTH = 2.5;

/** Batter in the part of a mould that is swirled, ml, and how deep it goes; cavities of unknown depth are swirled through. */
function swirled(mould: PourMould, asked: number | undefined) {
  const height = filledCm(mould);
  if (height === undefined && asked === undefined)
    return { whole: pouredMillilitres(mould), depth: undefined };
  const surface = surfaceCm2(mould);
  const depth = asked ?? Math.min(USUAL_DEPTH, height!);
  if (depth > height!) refuse('swirl-too-deep', { most: height! });
  return { whole: surface * depth, depth };
}

/** How much of each colour goes on top for the share of it that each is to take. */
export async function swirlReply(
  asked: { readonly mould: string; readonly shares: string; readonly depth?: number | undefined },
  context: Context,
): Promise<Reply> {
  const { say } = context;
  const measures = await measuresOf(context);
  const mould = parsePourMould(asked.mould);
  const shares = readSwirlShares(asked.shares);
  const { whole, depth } = swirled(mould, asked.depth);
  const words = say.pouring;
  const rows = shares.map(({ name, share }) =>
    words.swirlShare({
      name: excerpt(name),
      volume: volumeView(share * whole, measures, say),
      percent: Math.round(share * 100),
    }),
  );
  const rest = 1 - shares.reduce((sum, { share }) => sum + share, 0);
  return {
    kind: 'reply',
    headline:
      depth === undefined
        ? words.swirlWhole({ list: rows.join(', ') })
        : words.swirl({ list: rows.join(', '), depth, unit: lengthUnitOf(asked.mould) }),
    data: {
      shares: shares.map(one => ({ ...one, millilitres: one.share * whole })),
      millilitres: whole,
      depth,
    },
    blocks: [
      ...(rest > 0.005
        ? [
            {
              kind: 'text' as const,
              text: words.swirlRest({
                volume: volumeView(rest * whole, measures, say),
                percent: Math.round(rest * 100),
              }),
            },
          ]
        : []),
      { kind: 'text', folds: true, fold: 'why', text: words.swirlNote },
    ],
    cautions: [],
  };
}
