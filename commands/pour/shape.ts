import type { Context } from '../../src/conversation/context.ts';
import type { Reply } from '../../src/conversation/reply.ts';
import { parseSize } from '../../src/engine/batch/batch-size.ts';
import { usualTeaspoon } from '../../src/engine/colour/jars/colourant-optics.ts';
import { findColourant } from '../../src/engine/colourants/find.ts';
import { TYPICAL_BATTER } from '../../src/engine/dispersion/batter.ts';
import {
  LINE_GRAMS_PER_CM2,
  type LineThickness,
  lineGrams,
  PARTING_GRAMS_PER_CM2,
} from '../../src/engine/pouring/dusted-line.ts';
import { type Loaf, wedgedLayers } from '../../src/engine/pouring/layers.ts';
import { readSwirlShares } from '../../src/engine/pouring/swirl-shares.ts';
import { excerpt } from '../../src/engine/quantities/excerpt.ts';
import { practicalSpoons } from '../../src/engine/quantities/spoons.ts';
import { type Measures, US_TEASPOON_ML } from '../../src/engine/quantities/units.ts';
import { refuse } from '../../src/engine/refusal.ts';
import { knownAs } from '../../src/presenting/colour/jars.ts';
import { doseCautions, rough } from '../../src/presenting/dose.ts';
import { volumeView } from '../../src/presenting/volume.ts';
import { kitchenOf, preferencesOf } from '../../src/records/preferences.ts';
import { findJar, type Jar, knownOf } from '../../src/records/shelf/jar.ts';

declare module '../../src/engine/refusal.ts' {
  interface Reasons {
    'pour-not-a-loaf': { readonly text: string };
    'swirl-too-deep': { readonly most: number };
  }
}

const measuresOf = async ({ store, asker }: Context): Promise<Measures> =>
  kitchenOf(await preferencesOf(store, asker.id));

/** The inside of a loaf mould as it is written. Throws a Refusal `pour-not-a-loaf`, or those of a size. */
function loafOf(text: string): Loaf {
  const size = parseSize(/mou?ld|loaf|molde/iu.test(text) ? text : `mould ${text}`);
  return size.by === 'mould' && size.mould.shape === 'loaf'
    ? size.mould
    : refuse('pour-not-a-loaf', { text: excerpt(text) });
}

/** Equal layers of a loaf, the first as a wedge where the mould is tilted for it. */
export async function layersReply(
  asked: { readonly mould: string; readonly layers: number; readonly raised?: number | undefined },
  context: Context,
): Promise<Reply> {
  const { say } = context;
  const measures = await measuresOf(context);
  const raised = asked.raised ?? 0;
  const layers = wedgedLayers(loafOf(asked.mould), asked.layers, raised);
  const volume = volumeView(layers[0]!.millilitres, measures, say);
  const words = say.pouring;
  const [first] = layers;
  return {
    kind: 'reply',
    headline: words.layers({ count: asked.layers, volume }),
    data: { layers, raisedCm: raised },
    blocks: [
      ...(raised > 0 ? [{ kind: 'text' as const, text: words.wedge({ raised }) }] : []),
      {
        kind: 'rows',
        rows: layers.map(({ millilitres, topCm: [low, high] }, at) =>
          words.layer({
            number: at + 1,
            volume: volumeView(millilitres, measures, say),
            grams: Math.round(millilitres * TYPICAL_BATTER.gramsPerMillilitre),
            low,
            high,
            level: Math.abs(high - low) < 1e-9,
          }),
        ),
      },
      ...(raised > 0 && first!.topCm[0] === 0
        ? [{ kind: 'text' as const, text: words.across({ across: first!.acrossCm }) }]
        : []),
      {
        kind: 'text',
        folds: true,
        fold: 'steps',
        text: [words.layerSteps, ...(raised > 0 ? [words.wedgeSteps] : [])].join('\n'),
      },
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
  const { lengthCm, widthCm } = loafOf(asked.mould);
  const jar: Jar =
    asked.colourant === undefined
      ? { colourant: findColourant(USUAL_LINE) }
      : await findJar(shelf, asked.colourant);
  const thickness = asked.thickness ?? 'usual';
  const lines = asked.lines ?? 1;
  const areaCm2 = lengthCm * widthCm;
  const grams = lineGrams({ areaCm2, lines, thickness });
  const spoon =
    knownOf(jar, measures).gramsPerTeaspoon ??
    (usualTeaspoon(jar.colourant) * measures.teaspoon) / US_TEASPOON_ML;
  const spoons = (of: number) => say.quantities.measure(practicalSpoons(of / spoon));
  const words = say.pouring;
  return {
    kind: 'reply',
    headline: words.line({ spoons: spoons(grams), grams: rough(grams), name: knownAs(jar, say) }),
    data: { grams, teaspoons: grams / spoon, areaCm2, lines, thickness },
    blocks: [
      {
        kind: 'text',
        text: [
          words.lineArea({ area: Math.round(areaCm2) }),
          ...(lines > 1 ? [words.lineEach({ lines, spoons: spoons(grams / lines) })] : []),
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

/** How much of each colour goes on top for the share of it that each is to take. */
export async function swirlReply(
  asked: { readonly mould: string; readonly shares: string; readonly depth?: number | undefined },
  context: Context,
): Promise<Reply> {
  const { say } = context;
  const measures = await measuresOf(context);
  const { lengthCm, widthCm, heightCm } = loafOf(asked.mould);
  const shares = readSwirlShares(asked.shares);
  const depth = asked.depth ?? Math.min(USUAL_DEPTH, heightCm);
  if (depth > heightCm) refuse('swirl-too-deep', { most: heightCm });
  const whole = lengthCm * widthCm * depth;
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
    headline: words.swirl({ list: rows.join(', '), depth }),
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
