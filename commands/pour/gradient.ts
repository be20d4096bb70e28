import type { Context } from '../../src/conversation/context.ts';
import type { Reply } from '../../src/conversation/reply.ts';
import { parseBase, USUAL_BASE } from '../../src/engine/colour/reading/base-text.ts';
import { saysPlain } from '../../src/engine/colour/reading/plain-soap.ts';
import { TYPICAL_BATTER } from '../../src/engine/dispersion/batter.ts';
import { portionMillilitres } from '../../src/engine/dosing/portion.ts';
import type { Gradient, Pot } from '../../src/engine/pouring/gradient.ts';
import { parsePortion } from '../../src/engine/quantities/told/portion.ts';
import type { Measures } from '../../src/engine/quantities/units.ts';
import { colourJar, knownAs } from '../../src/presenting/colour/jars.ts';
import { learntNote } from '../../src/presenting/colour/learnt-strength.ts';
import { readMix } from '../../src/presenting/colour/mix.ts';
import { tenth } from '../../src/presenting/colour/view.ts';
import { doseCautions, spoonsOf } from '../../src/presenting/dose.ts';
import { kitchenOf, preferencesOf } from '../../src/records/preferences.ts';
import type { Jar } from '../../src/records/shelf/jars/jar.ts';
import type { Words } from '../../src/words/index.ts';
import { volumeView } from './volume.ts';

export type GradientAsked = {
  readonly from: string;
  readonly to: string;
  readonly steps?: number | undefined;
  readonly portion?: string | undefined;
  readonly base?: string | undefined;
  readonly gel?: boolean | undefined;
};

const USUAL_STEPS = 5;
/** Pots nearer than this (CIEDE2000) have nothing between them. */
const ALIKE = 1;

/** A pot as it is asked: what goes in, and how that reads. */
type PotRead = { readonly pot: Pot; readonly jars: readonly Jar[]; readonly told: string };

/** How much of two pots goes into each step, so that the steps look even. */
export async function gradientReply(asked: GradientAsked, context: Context): Promise<Reply> {
  const { say, store, asker, workers } = context;
  const owner = { owner: asker.id };
  const measures = kitchenOf(await preferencesOf(store, asker.id));
  const written = asked.portion?.trim() ?? say.match.oneCup;
  const millilitres = portionMillilitres(parsePortion(written, measures), TYPICAL_BATTER);
  const { shades } = asked.base === undefined ? USUAL_BASE : parseBase(asked.base);
  const steps = asked.steps ?? USUAL_STEPS;
  const [from, to] = [await potOf(asked.from, measures, context), await potOf(asked.to, measures, context)];
  const found = await workers.run(
    'evenGradient',
    { from: from.pot, to: to.pot, steps, shades, gelled: asked.gel ?? false },
    owner,
  );
  const rows = rowsOf(found, { millilitres, measures, say });
  const mean = found.steps.reduce((sum, { deltaE }) => sum + deltaE, 0) / (steps - 1);
  const strips = {
    title: say.pouring.gradientTitle,
    rows: [
      {
        title: `A: ${from.told}; B: ${to.told}`,
        fields: found.steps.map(({ hex }, at) => ({ hex, label: `${at + 1}: ${hex}` })),
      },
    ],
    note: say.palettes.pictureNote,
  };
  const png = await workers.run('paletteStrips', strips, owner);
  const all = found.steps.reduce((sum, { share }) => sum + share, 0);
  const volume = (of: number) => volumeView(of, measures, say);
  return {
    kind: 'reply',
    headline: mean < ALIKE ? say.pouring.gradientAlike : say.pouring.gradient({ steps, deltaE: tenth(mean) }),
    data: { ...found, portion: { written, millilitres } },
    blocks: [
      { kind: 'text', text: say.pouring.pots({ a: from.told, b: to.told }) },
      ...learntNote([...from.jars, ...to.jars], say),
      { kind: 'rows', rows },
      {
        kind: 'picture',
        name: 'gradient.png',
        png,
        alt: say.pouring.picture({ list: found.steps.map(({ hex }) => hex).join(', ') }),
      },
      {
        kind: 'text',
        text: [
          say.pouring.potNeeds({ a: volume((steps - all) * millilitres), b: volume(all * millilitres) }),
          say.pouring.byParts({ most: tenth(found.byParts.most), least: tenth(found.byParts.least) }),
        ].join('\n'),
      },
    ],
    cautions: doseCautions([{ id: 'raw-batter', values: {} }], say),
  };
}

async function potOf(text: string, measures: Measures, context: Context): Promise<PotRead> {
  const { say } = context;
  if (saysPlain(text)) return { pot: [], jars: [], told: say.pouring.plainPot };
  const portion = parsePortion(say.match.oneCup, measures);
  const { jars, answer } = await readMix(text, { portion, measures }, context);
  const colours = await Promise.all(jars.map(jar => colourJar(jar, context)));
  return {
    jars,
    pot: answer.doses.map(({ grams }, at) => ({
      jar: colours[at]!,
      grams: (100 * grams.typical) / answer.portion.grams,
    })),
    told: answer.doses
      .map((dose, at) =>
        say.palettes.dose({
          spoons: say.calibrating.doseOf({ spoons: spoonsOf(dose, say) }),
          name: knownAs(jars[at]!, say),
        }),
      )
      .join(' + '),
  };
}

function rowsOf(
  { steps }: Gradient,
  {
    millilitres,
    measures,
    say,
  }: { readonly millilitres: number; readonly measures: Measures; readonly say: Words },
): readonly string[] {
  const volume = (share: number) => volumeView(share * millilitres, measures, say);
  return steps.map(({ share, hex }, at) => {
    const number = at + 1;
    if (share === 0 || share === 1)
      return say.pouring.stepOne({ number, pot: share === 0 ? 'A' : 'B', volume: volume(1), hex });
    return say.pouring.step({ number, first: volume(1 - share), second: volume(share), hex });
  });
}
