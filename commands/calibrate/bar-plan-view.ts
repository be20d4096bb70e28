import type { Block } from '../../src/conversation/reply.ts';
import type {
  BarPlan,
  BarPlanAsk,
  PlannedBar,
  PlannedDose,
} from '../../src/engine/colour/calibration/test-bars/plan-bars.ts';
import { predictBar } from '../../src/engine/colour/mixing/bar.ts';
import { baseSoap } from '../../src/engine/colour/mixing/base-soap.ts';
import { practicalSpoons } from '../../src/engine/quantities/spoons.ts';
import type { Measures } from '../../src/engine/quantities/units.ts';
import { quoted } from '../../src/engine/text/lines/option-line.ts';
import { knownAs } from '../../src/presenting/colour/jars.ts';
import { predictedData, tenth, wordOf } from '../../src/presenting/colour/view.ts';
import { spoonsData } from '../../src/presenting/dose-data.ts';
import { spoonedOut } from '../../src/presenting/spoons.ts';
import type { Jar } from '../../src/records/shelf/jars/jar.ts';
import type { Words } from '../../src/words/index.ts';

/** Everything a plan of test bars is told from. */
export type BarPlanView = {
  readonly ask: BarPlanAsk;
  readonly plan: BarPlan;
  /** The same with mixes where this is without, and the other way round; undefined of one jar. */
  readonly other: BarPlan | undefined;
  readonly jars: readonly Jar[];
  /** Jars of the shelf beyond those planned for. */
  readonly leftOut: readonly string[];
  readonly portion: { readonly written: string; readonly millilitres: number };
  readonly measures: Measures;
  readonly say: Words;
};

const worst = (plan: BarPlan, when: 'before' | 'after'): number =>
  tenth(Math.max(...plan.jars.map(jar => jar[when])));

export function barPlanHeadline({ ask, plan, portion, say }: BarPlanView): string {
  const bars = plan.bars.length;
  const within = tenth(ask.within);
  const after = worst(plan, 'after');
  if (!plan.reached) return say.testBars.unreached({ bars, portion: portion.written, within, after });
  if (bars === 0) return say.testBars.none({ within });
  return say.testBars.headline({
    bars,
    portion: portion.written,
    jars: plan.jars.length,
    after,
    before: worst(plan, 'before'),
  });
}

/** Letters for the bars, in the order of the plan: after Z come AA, AB. */
const markOf = (at: number): string =>
  (at >= 26 ? markOf(Math.floor(at / 26) - 1) : '') + String.fromCodePoint(65 + (at % 26));

const nameOfDose = ({ id }: PlannedDose, { jars, say }: BarPlanView): string =>
  knownAs(jars.find(({ item }) => item?.id === id)!, say);

/** A dose as `/calibrate bars` reads it: teaspoons to the member's own cup, as one spoon where that holds it. */
function perCup({ teaspoons }: PlannedDose, { portion, measures, say }: BarPlanView): string {
  const dose = (teaspoons * measures.cup) / portion.millilitres;
  const near = practicalSpoons(dose);
  const { spoons, off } = near;
  const isOneSpoon = spoons.length === 1 && spoons[0]!.count === 1 && Math.abs(off) < 1e-3;
  return say.calibrating.doseOf({
    spoons: isOneSpoon ? say.quantities.measure(near) : say.quantities.teaspoons(dose),
  });
}

function dosesView({ doses }: PlannedBar, view: BarPlanView): string {
  const { measures, say } = view;
  return doses
    .map(dose =>
      say.testBars.dose({
        spoons: spoonedOut(dose.teaspoons, measures, say),
        name: nameOfDose(dose, view),
      }),
    )
    .join(' + ');
}

/** What to pour, what that tells, and how to hand it in. */
export function barPlanBlocks(view: BarPlanView, labels: readonly Block[]): readonly Block[] {
  const { plan, portion, say } = view;
  const words = say.testBars;
  const told: Block = {
    kind: 'rows',
    title: words.jars,
    rows: plan.jars.map(({ before, after }, at) =>
      words.jar({ name: knownAs(view.jars[at]!, say), before: tenth(before), after: tenth(after) }),
    ),
  };
  const left = view.leftOut.length > 0 ? words.leftOut({ names: view.leftOut.slice(0, 8).join(', ') }) : '';
  if (plan.bars.length === 0) return [told, ...(left ? [{ kind: 'text' as const, text: left }] : [])];
  const rows = plan.bars.map((bar, at) =>
    words.bar({
      label: markOf(at),
      doses: dosesView(bar, view),
      portion: portion.written,
      word: wordOf(bar.predicted, say),
      hex: bar.predicted.hex,
    }),
  );
  return [
    { kind: 'rows', title: words.pour, rows: [...rows, words.plain({ label: markOf(rows.length) })] },
    ...labels,
    told,
    { kind: 'text', text: notes(view, left).join('\n') },
    { kind: 'text', folds: true, fold: 'steps', text: words.steps },
    { kind: 'text', folds: true, fold: 'why', text: say.match.scale },
  ];
}

function notes(view: BarPlanView, left: string): readonly string[] {
  const { ask, plan, other, say } = view;
  const words = say.testBars;
  const single = plan.bars.find(({ doses }) => doses.length === 1)?.doses[0];
  const mixed = plan.bars.find(({ doses }) => doses.length > 1);
  const example =
    single && `item:${quoted(nameOfDose(single, view))} bar-1:${quoted(`${perCup(single, view)} #……`)}`;
  return [
    other && ask.mixes ? words.singly({ bars: other.bars.length }) : '',
    other && !ask.mixes && other.bars.length < plan.bars.length
      ? words.mixed({ bars: other.bars.length })
      : '',
    example ? words.handIn({ example }) : '',
    mixed
      ? words.handInMixed({
          example: mixed.doses.map(dose => `${nameOfDose(dose, view)} ${perCup(dose, view)}`).join(' + '),
        })
      : '',
    left,
  ].filter(Boolean);
}

/** The sheet of labels, and the same in words. */
export function labelSheet(view: BarPlanView) {
  const { ask, plan, portion, say } = view;
  const words = say.testBars;
  const small = `${portion.written}. ${words.label.date}: ________`;
  const bars = plan.bars.map((bar, at) => ({
    mark: markOf(at),
    lines: bar.doses.map(dose =>
      words.label.perCup({ name: nameOfDose(dose, view), dose: perCup(dose, view) }),
    ),
    small,
    hex: bar.predicted.hex,
  }));
  const plain = {
    mark: markOf(bars.length),
    lines: [words.sheet.plain],
    small,
    hex: predictBar([], baseSoap(ask.shades, ask.gelled)).hex,
  };
  const labels = [...bars, plain];
  const list = labels.map(({ mark, lines }) => `${mark} ${lines.join(' + ')}`).join('; ');
  return { sheet: { title: words.sheet.title, labels }, alt: words.alt({ list }) };
}

/** The same for programs: ids, numbers, no prose. */
export function barPlanData(view: BarPlanView): object {
  const { ask, plan, other, portion } = view;
  return {
    within: ask.within,
    mixes: ask.mixes,
    reached: plan.reached,
    portion,
    bars: plan.bars.map((bar, at) => ({
      label: markOf(at),
      doses: bar.doses.map(dose => ({
        item: dose.id,
        name: nameOfDose(dose, view),
        teaspoons: dose.teaspoons,
        spoons: spoonsData(practicalSpoons(dose.teaspoons, undefined, view.measures.owned)),
        label: perCup(dose, view),
      })),
      predicted: predictedData(bar.predicted),
    })),
    jars: plan.jars,
    otherwise: other && { mixes: !ask.mixes, bars: other.bars.length, reached: other.reached },
  };
}
