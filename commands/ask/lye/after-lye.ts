import { unbroken } from '../../../src/engine/over-lines.ts';
import type { Context } from '../../../src/conversation/context.ts';
import type { Reply } from '../../../src/conversation/reply.ts';
import { LYE_WORDS } from '../../../src/engine/questions/fields/soap-words.ts';
import type { LyeTopic } from '../../../src/engine/questions/lye/topics/topic.ts';
import type { QuestionRead } from '../../../src/engine/questions/read.ts';
import type { Technique } from '../../../src/engine/questions/technique/topic.ts';
import { unaccented } from '../../../src/engine/text/unaccented.ts';
import { wordCount } from '../../../src/engine/text/word-count.ts';
import { askFollowUps } from '../follow-ups.ts';
import { NEAR_LYE } from '../technique/technique-likely.ts';
import { topicReply } from './matter.ts';

/** Who goes on from a matter of lye writes few words, and names no new thing. */
const MOST_WORDS = 7;
const NEW_THING = new RegExp(
  unbroken`
    (?<!\p{L})(?:micas?|oxid\p{L}*|pigment\p{L}*|colou?r\p{L}*|powders?|polvos?|clays?|arcillas?|
    swirl\p{L}*|soaps?|jabon\p{L}*|batter|masa|mezcla|mou?lds?|moldes?|oils?|aceites?|bars?|pastillas?|
    layers?|capas?|scents?|fragranc\p{L}*|fragancia)(?!\p{L})
  `,
  'u',
);
/** What a powder does in a liquid. */
const OF_LIQUID = new RegExp(
  unbroken`
    (?<!\p{L})(?:bottom|sank|sinks?|sunk|settl\p{L}*|floats?|floating|sludge|thick|stir(?:red)?|cloudy|
    fondo|hundi\p{L}*|asent\p{L}*|flota\p{L}*|espes\p{L}*|turbi[oa]|revuelv\p{L}*)(?!\p{L})
  `,
  'u',
);
const OTHER_LIQUID = /(?<!\p{L})(?:oils?|aceites?|glycerine?|glicerina|batter|masa|mou?ld|molde)(?!\p{L})/u;
const MOST_OF_LIQUID = 18;
const GRAINS =
  /(?<!\p{L})(?:grains?|grainy|lumps?|lumpy|bits?|crystals?|specks?|gran(?:os?|itos?|ulos?)|grum\p{L}*|cristal\p{L}*|bolit\p{L}*|trozos?)(?!\p{L})/u;

/**
 * What goes on from a matter of lye and names nothing new is about that lye, whatever else its words may mean: grains at the bottom of a jug
 * of lye are no mica that sank. The matter is told again, and the other reading is one press away; undefined where nothing came before.
 */
export function afterLyeReply(
  question: string,
  { facts }: QuestionRead,
  { technique, context }: { readonly technique: Technique; readonly context: Context },
): Reply | undefined {
  const talk = context.lately?.before(context);
  const before = talk?.last;
  const plain = unaccented(question);
  // What is told of lye in any case has its own answer.
  if (NEAR_LYE.has(technique)) return undefined;
  // Asked of lye water and answered by a matter of colour: what is told of it next is not for a spoon of oil.
  if (
    before?.kind === 'technique' &&
    LYE_WORDS.test(unaccented(talk?.words ?? '')) &&
    OF_LIQUID.test(plain) &&
    !OTHER_LIQUID.test(plain) &&
    wordCount(plain) <= MOST_OF_LIQUID
  )
    return topicReply('unsure', context);
  if (before?.kind !== 'matter' || facts.named.length > 0 || NEW_THING.test(plain)) return undefined;
  if (wordCount(plain) > MOST_WORDS) return undefined;
  const { say } = context;
  const reply = topicReply(meant(before.id, plain), context);
  return {
    ...reply,
    blocks: [{ kind: 'text', text: say.leaning.onBefore }, ...reply.blocks],
    choices: [
      {
        kind: 'button',
        label: say.ask.ratherThat({ job: say.technique.matters[technique] }),
        follow: askFollowUps.technique.with({ technique }),
      },
    ],
  };
}

const meant = (before: LyeTopic, plain: string): LyeTopic =>
  before === 'cloudy-lye' && GRAINS.test(plain) ? 'undissolved-lye' : before;
