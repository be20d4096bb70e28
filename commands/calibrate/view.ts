import type { Block, Caution, Measure } from '../../src/conversation/reply.ts';
import type { JarCalibration } from '../../src/engine/colour/calibration/calibrate-jar.ts';
import type { TestBar } from '../../src/engine/colour/calibration/test-bar.ts';
import { chromaOf, hexOfLab, type Lab } from '../../src/engine/colour/spectra/cielab.ts';
import { practicalSpoons } from '../../src/engine/quantities/spoons.ts';
import type { Measures } from '../../src/engine/quantities/units.ts';
import { swatchHex } from '../../src/presenting/colour/swatch.ts';
import { tenth } from '../../src/presenting/colour/view.ts';
import { rough } from '../../src/presenting/dose.ts';
import { spoonedOut } from '../../src/presenting/spoons.ts';
import type { Jar } from '../../src/records/shelf/jars/jar.ts';
import type { ShelfItem } from '../../src/records/shelf/shelf.ts';
import type { Words } from '../../src/words/index.ts';

/** Everything a calibration is told from. */
export type CalibrationView = {
  readonly item: ShelfItem;
  readonly jar: Jar;
  readonly found: JarCalibration;
  /** All bars that count, plain ones included, weakest first. */
  readonly bars: readonly TestBar[];
  /** What was read from the photo, where one was given. */
  readonly photo: { readonly hex: string; readonly plusMinus: number } | undefined;
  readonly outcome: 'shared' | 'withdrawn' | 'private' | 'not-kept';
  /** Jars of others that helped. */
  readonly others: number;
  /** Earlier bars were dropped, being of another base. */
  readonly otherBase: boolean;
  /** Grams per 100 g of batter as teaspoons of the jar to the member's cup. */
  /** The spoons there are to measure with. */
  readonly owned: Measures['owned'];
  readonly teaspoonsPerCup: (grams: number) => number;
  /** A full dose of a usual jar, grams per 100 g of batter, and the most teaspoons a cup takes. */
  readonly fullGrams: number;
  readonly mostPerCup: number;
  /** How strong the jar is over its kind, as `/dose` counts it. */
  readonly times: number;
  readonly say: Words;
};

/** Nearer to its kind than this, a jar is as strong as it (level spoons scatter by as much). */
const AS_STRONG = 0.08;

/** How strong a jar is beside its kind, in words; `times` on its K. */
export const strongView = (times: number, { calibrating }: Words): string =>
  Math.abs(times - 1) < AS_STRONG ? calibrating.asStrong : calibrating.stronger({ times: rough(times) });

export function calibrationHeadline({ item, found, outcome, times, say }: CalibrationView): string {
  const { plusMinus, after } = found;
  if (outcome === 'not-kept') return say.calibrating.notKept({ name: item.name, off: tenth(after) });
  return say.calibrating.headline({
    name: item.name,
    times: strongView(times, say),
    before: tenth(plusMinus.before),
    after: tenth(plusMinus.after),
  });
}

const doseView = ({ grams }: Pick<TestBar, 'grams'>, { teaspoonsPerCup, say }: CalibrationView): string => {
  const spoons = practicalSpoons(teaspoonsPerCup(grams));
  return say.calibrating.doseOf({ spoons: say.quantities.measure(spoons) });
};

/** The fit in numbers, its plot, and what becomes of it. */
export function calibrationBlocks(view: CalibrationView, plot: Block): readonly Block[] {
  const { found, say } = view;
  const words = say.calibrating;
  return [
    {
      kind: 'measures',
      measures: [
        {
          label: words.fit,
          value: words.fitValue({ before: tenth(found.before), after: tenth(found.after) }),
        },
        ...(view.outcome === 'not-kept' ? [] : [...spoonsNow(view), ...scales(view)]),
      ],
    },
    plot,
    { kind: 'rows', title: words.bars, rows: barRows(view) },
    { kind: 'text', text: notes(view).join('\n') },
    { kind: 'text', folds: true, fold: 'why', text: say.match.scale },
  ];
}

/** What changes on the bench: the spoons of full colour for a cup, and what a usual jar takes. */
function spoonsNow(view: CalibrationView): readonly Measure[] {
  const { jar, say, teaspoonsPerCup, fullGrams, mostPerCup, times } = view;
  const usual = teaspoonsPerCup(fullGrams);
  const spoken = (teaspoons: number) => spoonedOut(teaspoons, view, say);
  const now = Math.min(usual / times, mostPerCup);
  return [
    {
      label: say.calibrating.fullCup,
      value: say.calibrating.spoonsNow({ now: spoken(now), usual: spoken(usual) }),
      hex: swatchHex(jar.colourant),
    },
  ];
}

/** What it is dosed by stands here as it is counted there, the other as the bars say. */
function scales({ found: { scale }, jar, times, say }: CalibrationView): readonly Measure[] {
  const words = say.calibrating;
  const isWhite = jar.colourant.kind === 'white';
  return [
    { label: words.strength, value: words.timesKind({ times: rough(isWhite ? scale.k : times) }) },
    { label: words.covering, value: words.timesKind({ times: rough(isWhite ? times : scale.s) }) },
  ];
}

function barRows(view: CalibrationView): readonly string[] {
  const { found, bars, say } = view;
  const plain = bars.filter(({ grams }) => grams === 0);
  return [
    ...plain.map(({ lab }) => say.calibrating.plainBar({ hex: hexOfLab(lab) })),
    ...found.bars.map(bar =>
      say.calibrating.bar({
        dose: doseView(bar, view),
        hex: hexOfLab(bar.measured),
        expected: bar.predictedHex,
        deltaE: tenth(bar.deltaE),
      }),
    ),
  ];
}

function notes(view: CalibrationView): readonly string[] {
  const { item, found, photo, outcome, others, otherBase, say } = view;
  const words = say.calibrating;
  const shared = {
    shared: words.shared({ name: item.name, others }),
    withdrawn: words.withdrawn,
    private: others > 0 ? words.helped({ others }) : '',
    'not-kept': '',
  };
  return [
    photo ? words.fromPhoto({ hex: photo.hex, plusMinus: Math.round(photo.plusMinus) }) : '',
    outcome === 'not-kept' ? '' : words.kept({ name: item.name, lot: say.shelf.lot(item.lot) }),
    otherBase ? words.otherBase : '',
    shared[outcome],
    found.bars.length === 1 && outcome !== 'not-kept' ? words.more : '',
  ].filter(Boolean);
}

/** Where the bars cannot be believed. */
export function calibrationCautions({ found: { doubt }, outcome, say }: CalibrationView): readonly Caution[] {
  if (outcome === 'not-kept') return [{ id: 'poor-fit', text: say.colour.poorFit }];
  return doubt === 'at-bound' ? [{ id: doubt, text: say.colour.atBound }] : [];
}

/** The plot of the fit, and the same in words. */
export function calibrationPlot(view: CalibrationView) {
  const { item, found, bars, teaspoonsPerCup, say } = view;
  const { plot, alt } = say.calibrating;
  const at = (grams: number, lab: Lab) => ({
    dose: teaspoonsPerCup(grams),
    lightness: lab.l,
    chroma: chromaOf(lab),
  });
  return {
    plot: {
      title: plot.title({ name: item.name }),
      lightness: plot.lightness,
      chroma: plot.chroma,
      dose: plot.dose,
      legend: { measured: plot.measured, usual: plot.usual, fitted: plot.fitted },
      usual: found.curve.map(({ grams, usual }) => at(grams, usual)),
      fitted: found.curve.map(({ grams, fitted }) => at(grams, fitted)),
      bars: bars.map(({ grams, lab }) => ({ ...at(grams, lab), hex: hexOfLab(lab) })),
      pairsTitle: plot.pairs,
      pairs: found.bars.map(bar => ({
        measured: hexOfLab(bar.measured),
        predicted: bar.predictedHex,
        label: say.calibrating.bar({
          dose: doseView(bar, view),
          hex: hexOfLab(bar.measured),
          expected: bar.predictedHex,
          deltaE: tenth(bar.deltaE),
        }),
      })),
    },
    alt: alt({ name: item.name, list: barRows(view).join('; ') }),
  };
}
