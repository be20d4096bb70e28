import type { Context } from '../../../src/conversation/context.ts';
import { lineOf } from '../../../src/conversation/typed/line-of.ts';
import { nearestWord } from '../../../src/engine/colour/reading/plain-words.ts';
import { labOfHex } from '../../../src/engine/colour/spectra/cielab.ts';
import { isElsewhere } from '../../../src/engine/questions/fields/other-field.ts';
import { paletteAsked } from '../../../src/engine/questions/plans/palette-asked.ts';
import type { QuestionRead } from '../../../src/engine/questions/read.ts';
import type { Answerer } from '../asked.ts';
import { askFollowUps } from '../follow-ups.ts';
import { keepLines } from '../kept-lines.ts';
import type { AskReply } from '../understood.ts';

/** "How much would you go with in 500 g" puts nothing beside a colour. */
const isDosed = ({ readings: [reading], facts }: QuestionRead): boolean =>
  reading?.job === 'dose' && facts.named.length > 0 && facts.portion !== undefined;

/** Colours that go together for a mood, or beside a colour; undefined where neither is asked for. */
async function paletteIdeaReply(
  question: string,
  read: QuestionRead,
  context: Context,
): Promise<AskReply | undefined> {
  if (isElsewhere(read) || isDosed(read)) return undefined;
  const palette = paletteAsked(question);
  if (!palette) return undefined;
  const { hexes, beside } = palette;
  const { palettes, colour } = context.say;
  const names = [...new Set(hexes.map(hex => colour.names[nearestWord(labOfHex(hex))]))];
  const asked = hexes.join(', ');
  const lines = [lineOf('palette make', { colours: asked }), lineOf('palette buy', { colours: asked })];
  await keepLines(lines, context);
  const run = (label: string, at: number) => ({
    kind: 'button' as const,
    label,
    follow: askFollowUps.run.with({ line: context.idempotencyKey, at }),
  });
  return {
    kind: 'reply',
    headline: beside !== undefined ? palettes.goesWith({ colour: beside, names }) : palettes.idea({ names }),
    data: { colours: hexes },
    understood: { kind: 'command', job: 'mix', command: 'palette make', given: { colours: asked } },
    blocks: [{ kind: 'text', text: palettes.ideaWhy({ hexes }) }],
    cautions: [],
    choices: [run(palettes.ideaMake, 0), run(palettes.ideaBuy, 1)],
  };
}

/** Colours for a mood, or beside a colour. */
export const paletteIdea: Answerer = {
  id: 'palette-idea',
  answer: ({ said, read, context }) => paletteIdeaReply(said, read, context),
};
