import type { Context } from '../../src/conversation/context.ts';
import type { Block, Reply } from '../../src/conversation/reply.ts';
import type { HueScheme } from '../../src/engine/palettes/hue-schemes.ts';
import type { MadePalette, Makeable } from '../../src/engine/palettes/makeable.ts';
import type { Measures } from '../../src/engine/quantities/units.ts';
import { refuse } from '../../src/engine/refusal.ts';
import { capital } from '../../src/engine/text/capital.ts';
import { refuseTooLarge, shelfChoice, type Usable } from '../../src/presenting/colour/candidates.ts';
import { knownAs } from '../../src/presenting/colour/jars.ts';
import { learntNote } from '../../src/presenting/colour/learnt-strength.ts';
import { predictedData, wordOf } from '../../src/presenting/colour/view.ts';
import { spoonedOut } from '../../src/presenting/spoons.ts';
import type { Jar } from '../../src/records/shelf/jars/jar.ts';
import type { Words } from '../../src/words/index.ts';
import { type SoapAsked, soapAsked } from './soap.ts';

declare module '../../src/engine/refusal.ts' {
  interface Reasons {
    'palette-without-jars': Record<never, never>;
  }
}

/** Palettes that hold together and that the shelf makes as it stands. */
export async function todayReply(
  asked: SoapAsked & { readonly scheme?: HueScheme | undefined },
  context: Context,
): Promise<Reply> {
  const { workers, asker, say } = context;
  const owner = { owner: asker.id };
  const { measures, written, ...soap } = await soapAsked(asked, context);
  const { usable } = await shelfChoice(measures, context);
  if (usable.length === 0) refuse('palette-without-jars', {});
  refuseTooLarge({ usable }, soap.portion, measures);
  const candidates = usable.filter(({ candidate }) => candidate.risk < 0.5).map(({ candidate }) => candidate);
  const found = await workers.run('makeablePalettes', { ...soap, candidates, scheme: asked.scheme }, owner);
  const palettes = found.toSorted((a, b) => b.chroma - a.chroma);
  const data = { palettes: palettes.map(palette => paletteData(palette)), portion: written };
  const [first] = palettes;
  if (!first)
    return {
      kind: 'reply',
      headline: say.palettes.nothingToday,
      data,
      blocks: [{ kind: 'text', text: say.palettes.nothingTodayWhy }],
      cautions: [],
    };
  const view: TodayView = { usable, measures, say };
  const rows = palettes.map(palette => rowOf(palette, view));
  const strips = stripsOf(palettes, view);
  const png = await workers.run('paletteStrips', strips, owner);
  const alt = say.palettes.picture({ list: rows.join('; ') });
  const words = first.colours.map(({ predicted }) => wordOf(predicted, say)).join(', ');
  return {
    kind: 'reply',
    headline: say.palettes.today({ count: palettes.length, first: words }),
    data,
    blocks: [
      { kind: 'rows', rows },
      { kind: 'picture', name: 'palettes.png', png, alt },
      { kind: 'text', text: say.palettes.inPortion({ portion: written }) },
      ...learntNote(
        palettes.flatMap(({ colours }) =>
          colours.flatMap(({ doses }) => doses.map(({ id }) => jarOf(id, view))),
        ),
        say,
      ),
      { kind: 'text', folds: true, fold: 'why', text: say.palettes.schemeNote } satisfies Block,
    ],
    cautions: [],
  };
}

/** What palettes are told from. */
type TodayView = { readonly usable: readonly Usable[]; readonly measures: Measures; readonly say: Words };

const jarOf = (id: string, { usable }: TodayView): Jar =>
  usable.find(({ candidate }) => candidate.id === id)!.jar;

const dosesOf = ({ doses }: Makeable, view: TodayView): string =>
  doses
    .map(({ id, teaspoons }) =>
      view.say.palettes.dose({
        spoons: spoonedOut(teaspoons, view.measures, view.say),
        name: knownAs(jarOf(id, view), view.say),
      }),
    )
    .join(' + ');

function rowOf({ scheme, colours }: MadePalette, view: TodayView): string {
  const { say } = view;
  const list = colours.map(colour =>
    say.palettes.colour({ word: wordOf(colour.predicted, say), doses: dosesOf(colour, view) }),
  );
  return say.palettes.row({ scheme: capital(say.palettes.schemes[scheme]), list: list.join('; ') });
}

function stripsOf(palettes: readonly MadePalette[], view: TodayView) {
  const { say } = view;
  return {
    title: say.palettes.todayTitle,
    rows: palettes.map(({ scheme, colours }) => ({
      title: capital(say.palettes.schemes[scheme]),
      fields: colours.map(colour => ({
        hex: colour.predicted.hex,
        label: `${colour.predicted.hex}: ${dosesOf(colour, view)}`,
      })),
    })),
    note: say.palettes.pictureNote,
  };
}

const paletteData = ({ scheme, off, chroma, colours }: MadePalette): object => ({
  scheme,
  hueOff: off,
  chroma,
  colours: colours.map(({ doses, predicted }) => ({ doses, predicted: predictedData(predicted) })),
});
