import type { Block, Caution, Measure } from '../../conversation/reply.ts';
import { chromaOf, hexOfLab, type Lab } from '../../engine/colour/appearance.ts';
import type { JarCalibration } from '../../engine/colour/calibrate-jar.ts';
import type { TestBar } from '../../engine/colour/scale-problem.ts';
import { practicalSpoons } from '../../engine/quantities/spoons.ts';
import type { Jar } from '../../records/shelf/jar.ts';
import type { ShelfItem } from '../../records/shelf/shelf.ts';
import type { Words } from '../../words/index.ts';
import { rough } from '../dose.ts';
import { tenth } from './said.ts';

/** Everything a calibration is told from. */
export type CalibrationTold = {
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
  readonly teaspoonsPerCup: (grams: number) => number;
  readonly say: Words;
};

/** Nearer to its kind than this, a jar is as strong as it (level spoons scatter by as much). */
const AS_STRONG = 0.08;

export function calibrationHeadline({ item, found, outcome, say }: CalibrationTold): string {
  const { scale, plusMinus, after } = found;
  if (outcome === 'not-kept') return say.calibrating.notKept({ name: item.name, off: tenth(after) });
  const same = Math.abs(scale.k - 1) < AS_STRONG;
  return say.calibrating.headline({
    name: item.name,
    times: same ? say.calibrating.asStrong : say.calibrating.stronger({ times: rough(scale.k) }),
    before: tenth(plusMinus.before),
    after: tenth(plusMinus.after),
  });
}

const doseSaid = ({ grams }: Pick<TestBar, 'grams'>, { teaspoonsPerCup, say }: CalibrationTold): string => {
  const { text } = practicalSpoons(teaspoonsPerCup(grams));
  return say.calibrating.doseOf({ spoons: say.quantities.measure(text) });
};

/** The fit in numbers, its plot, and what becomes of it. */
export function calibrationBlocks(told: CalibrationTold, plot: Block): readonly Block[] {
  const { found, say } = told;
  const words = say.calibrating;
  return [
    {
      kind: 'measures',
      measures: [
        {
          label: words.fit,
          value: words.fitValue({ before: tenth(found.before), after: tenth(found.after) }),
        },
        ...(told.outcome === 'not-kept' ? [] : scales(told)),
      ],
    },
    plot,
    { kind: 'rows', title: words.bars, rows: barRows(told) },
    { kind: 'text', text: notes(told).join('\n') },
    { kind: 'text', folds: true, text: say.match.scale },
  ];
}

const scales = ({ found: { scale }, say: { calibrating: words } }: CalibrationTold): readonly Measure[] => [
  { label: words.strength, value: words.timesKind({ times: rough(scale.k) }) },
  { label: words.covering, value: words.timesKind({ times: rough(scale.s) }) },
];

function barRows(told: CalibrationTold): readonly string[] {
  const { found, bars, say } = told;
  const plain = bars.filter(({ grams }) => grams === 0);
  return [
    ...plain.map(({ lab }) => say.calibrating.plainBar({ hex: hexOfLab(lab) })),
    ...found.bars.map(bar =>
      say.calibrating.bar({
        dose: doseSaid(bar, told),
        hex: hexOfLab(bar.measured),
        expected: bar.predictedHex,
        deltaE: tenth(bar.deltaE),
      }),
    ),
  ];
}

function notes(told: CalibrationTold): readonly string[] {
  const { item, found, photo, outcome, others, otherBase, say } = told;
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
export function calibrationCautions({ found: { doubt }, outcome, say }: CalibrationTold): readonly Caution[] {
  if (outcome === 'not-kept') return [{ id: 'poor-fit', text: say.colour.poorFit }];
  return doubt === 'at-bound' ? [{ id: doubt, text: say.colour.atBound }] : [];
}

/** The plot of the fit, and the same in words. */
export function calibrationPlot(told: CalibrationTold) {
  const { item, found, bars, teaspoonsPerCup, say } = told;
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
          dose: doseSaid(bar, told),
          hex: hexOfLab(bar.measured),
          expected: bar.predictedHex,
          deltaE: tenth(bar.deltaE),
        }),
      })),
    },
    alt: alt({ name: item.name, list: barRows(told).join('; ') }),
  };
}
