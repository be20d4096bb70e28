import type { Context } from '../../src/conversation/context.ts';
import { type ShadeShare, shadeOfOil } from '../../src/engine/colour/mixing/base-soap.ts';
import { fahrenheit } from '../../src/engine/quantities/units.ts';
import { colourJar } from '../../src/presenting/colour/jars.ts';
import type { Jobs } from '../../src/workers/jobs.ts';
import { lyeCautions } from './blocks.ts';
import { numbersInTwo, weightsInTwo } from './numbers.ts';
import { type PlanView, portionSection } from './view.ts';
import { planWorst } from './watch.ts';

/** What the card is drawn from. */
type BatchCard = Parameters<Jobs['batchCard']>[0];

/** The cured colour of every portion, `#rrggbb`, as the jars are known by now. */
export async function portionHexes(
  { answer, read }: Pick<PlanView, 'answer' | 'read'>,
  context: Context,
): Promise<readonly string[]> {
  const portions = await Promise.all(
    answer.portions.map(({ doses, grams }, at) =>
      Promise.all(
        doses.map(async (dose, which) => ({
          jar: await colourJar(read.jars[at]![which]!, context),
          grams: (100 * dose.grams.typical) / grams,
        })),
      ),
    ),
  );
  const shades = read.request.oils.shares.map(
    ({ oil, share }): ShadeShare => ({ shade: shadeOfOil(oil), share }),
  );
  const gelled = answer.heat.gel.full >= 0.5;
  const bars = await context.workers.run(
    'predictBars',
    { portions, shades, gelled },
    { owner: context.asker.id },
  );
  return bars.map(({ hex }) => hex);
}

/** The batch card of a plan, in the member's words. */
export function cardOf(view: PlanView, name: string | undefined, hexes: readonly string[]): BatchCard {
  const { say, answer } = view;
  return {
    title: say.plan.cardTitle({ name }),
    numbers: numbersInTwo(view).map(({ label, in: { first, other } }) => ({
      label,
      value: first,
      ...(other !== undefined && { other }),
    })),
    weights: weightsInTwo(view).map(({ label, in: { first } }) => ({ label, value: first })),
    portions: answer.portions.map((_, at) => {
      const { title, rows } = portionSection(view, at);
      return { title, hex: hexes[at]!, rows: rows.slice(0, -1), fact: rows.at(-1) ?? '' };
    }),
    loaf: loafOf(view, hexes),
    heat: heatOf(view),
    warnings: planWorst(view),
    care: lyeCautions(view)
      .map(({ brief }) => brief)
      .filter((brief, at, all) => all.indexOf(brief) === at)
      .join(' '),
  };
}

/** The section cut across: portions by their volume, and the ring where one is likely enough. */
function loafOf({ answer, say }: PlanView, hexes: readonly string[]): BatchCard['loaf'] {
  const { shape, ring, gel } = answer.heat;
  const all = answer.portions.reduce((sum, { millilitres }) => sum + millilitres, 0);
  const width = shape.shape === 'loaf' ? shape.widthCm : shape.diameterCm;
  const distance = gel.partial >= LIKELY_RING ? ring.millimetresFromSide : undefined;
  return {
    title: say.plan.card.across,
    aspect: width / shape.heightCm,
    round: shape.shape === 'round',
    layers: answer.portions.map(({ millilitres }, at) => ({ share: millilitres / all, hex: hexes[at]! })),
    ring: distance === undefined ? undefined : Math.min(0.9, distance / (width * 5)),
    note: distance === undefined ? say.plan.card.byVolume : say.plan.card.ring({ millimetres: distance }),
  };
}

/** As likely as this a ring is drawn; the words of the heat say how likely. */
const LIKELY_RING = 0.1;

function heatOf({ answer, wishes, say }: PlanView): BatchCard['heat'] {
  const { curve, gelOnset, verdict } = answer.heat;
  const shown = wishes.temperature === 'fahrenheit' ? fahrenheit : (celsius: number) => celsius;
  const { card } = say.plan;
  const points = curve.map(({ hours, low, typical, high }) => ({
    hours,
    low: shown(low),
    typical: shown(typical),
    high: shown(high),
  }));
  const degrees = [points[0]!.typical, Math.max(...points.map(({ typical }) => typical))];
  const end = points.at(-1)!.hours;
  const step = [1, 2, 3, 6].find(one => end / one <= 6) ?? 6;
  return {
    title: say.plan.heat,
    note: say.heat.verdicts[verdict],
    points,
    gel: { low: shown(gelOnset.low), high: shown(gelOnset.high) },
    gelLabel: card.gelsFrom,
    hours: Array.from({ length: Math.floor(end / step) + 1 }, (_, at) => ({
      at: at * step,
      label: card.hours({ hours: at * step }),
    })),
    degrees: degrees.map(at => ({ at, label: `${Math.round(at)}°` })),
  };
}
