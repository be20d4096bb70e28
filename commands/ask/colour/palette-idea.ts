import { unbroken } from '../../../src/engine/over-lines.ts';
import type { Context } from '../../../src/conversation/context.ts';
import type { Reply } from '../../../src/conversation/reply.ts';
import { lineOf } from '../../../src/conversation/typed/line-of.ts';
import { nearestWord } from '../../../src/engine/colour/reading/plain-words.ts';
import { labOfHex } from '../../../src/engine/colour/spectra/cielab.ts';
import { coloursBeside } from '../../../src/engine/palettes/colours-beside.ts';
import { THEMES } from '../../../src/engine/palettes/themes.ts';
import type { QuestionRead } from '../../../src/engine/questions/read.ts';
import { colourNamed } from '../../../src/engine/text/colours/colour-name.ts';
import { unaccented } from '../../../src/engine/text/unaccented.ts';
import { isElsewhere } from '../elsewhere.ts';
import { askFollowUps } from '../follow-ups.ts';
import { keepLines } from '../kept-lines.ts';

const OF_PALETTES = new RegExp(
  unbroken`
    \b(?:palettes?|paletas?|combinac\w+|colou?r (?:combos?|combinations?|schemes?)|colou?rs? (?:ideas?|for)|
    ideas? (?:de|para|for|on) (?:\w+ )?colou?r\w*|colores (?:para|de|ideas?)|que colores)\b
  `,
  'u',
);
const GOES_WITH = new RegExp(
  unbroken`
    \b(?:goes?(?: well)? with|go with|to go with|pairs? with|beside|combin\w+ (?:con|bien con)|
    que (?:\p{L}+ ){0,2}van? con|van? bien con|pega(?:n)? con|queda(?:n)? bien con) (?:(?:a|the|my|el|la|un|
    una|mi) )?([\p{L} ]{3,24})
  `,
  'u',
);

/** Colours that go together for a mood, or beside a colour; undefined where neither is asked for. */
export async function paletteIdeaReply(
  question: string,
  read: QuestionRead,
  context: Context,
): Promise<Reply | undefined> {
  if (isElsewhere(read)) return undefined;
  const plain = unaccented(question);
  const theme = OF_PALETTES.test(plain) ? THEMES.find(({ words }) => words.test(plain)) : undefined;
  const beside = theme ? undefined : besideIn(plain);
  const hexes = theme?.stops ?? beside?.hexes;
  if (hexes === undefined) return undefined;
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
    headline: beside ? palettes.goesWith({ colour: beside.text, names }) : palettes.idea({ names }),
    data: { understood: { job: 'mix', command: 'palette make', given: { colours: asked } }, colours: hexes },
    blocks: [{ kind: 'text', text: palettes.ideaWhy({ hexes }) }],
    cautions: [],
    choices: [run(palettes.ideaMake, 0), run(palettes.ideaBuy, 1)],
  };
}

function besideIn(plain: string): { readonly text: string; readonly hexes: readonly string[] } | undefined {
  const text = GOES_WITH.exec(plain)?.[1]?.trim();
  const named = text === undefined ? undefined : colourNamed(text);
  const hexes = named ? coloursBeside(labOfHex(named.hex)) : [];
  return named && hexes.length > 0 ? { text: text!, hexes } : undefined;
}
