import { unbroken } from '../../../src/engine/over-lines.ts';
import type { Context } from '../../../src/conversation/context.ts';
import type { Reply } from '../../../src/conversation/reply.ts';
import { colourantsMeant } from '../../../src/engine/colourants/find.ts';
import { survivalAsked } from '../../../src/engine/questions/found/survives.ts';
import type { QuestionRead } from '../../../src/engine/questions/read.ts';
import { answerTo } from '../../../src/engine/questions/technique/answer-to.ts';
import { unaccented } from '../../../src/engine/text/unaccented.ts';

const ASKS_COLOUR = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:what|which|wat) (?:colou?r|shade)s? (?:do|does|will|would|is|comes?|you)|(?:que|
    q) (?:color|tono) (?:me )?(?:da|dan|dara|sale|queda|toma|deja|saca)|(?:le )?da color|de (?:que|
    q) color (?:queda|sale))(?!\p{L})
  `,
  'u',
);
/** "Pink or red": two hues to choose from. */
const HUE_OR_HUE = new RegExp(
  unbroken`
    (?<!\p{L})(?:pink|red|purple|blue|violet|green|yellow|orange|brown|grey|rosa|roj[oa]|morad[oa]|azul|
    verde|amarill[oa]|naranja|marron|gris) (?:or|o|u) (?:pink|red|purple|blue|violet|green|yellow|orange|
    brown|grey|rosa|roj[oa]|morad[oa]|azul|verde|amarill[oa]|naranja|marron|gris)(?!\p{L})
  `,
  'u',
);

/** Whether the colour of the one thing that is named is asked, in so many words: "alkanet what colour do you get", "madder pink or red". */
export function asksItsColour(question: string, { facts }: QuestionRead): boolean {
  const plain = unaccented(question);
  const isOfAmount = facts.portion !== undefined || facts.powder !== undefined || /\d/u.test(plain);
  return facts.named.length === 1 && !isOfAmount && (ASKS_COLOUR.test(plain) || HUE_OR_HUE.test(plain));
}

/** Which colour a plant or a mineral that is named gives; undefined where none is named, or nothing is known of it. */
export function colourGivenReply(
  question: string,
  { facts }: QuestionRead,
  { say }: Context,
): Reply | undefined {
  if (!('technique' in answerTo('colour-families', question))) return undefined;
  const [id] = facts.named.flatMap(name => colourantsMeant(name).map(one => one.id));
  const given = id === undefined ? undefined : say.technique.given[id];
  const plant = given === undefined ? survivalAsked(question, true) : undefined;
  const headline = given ?? (plant?.of && say.plants.fate[plant.of](plant.name));
  if (headline === undefined) return undefined;
  return {
    kind: 'reply',
    headline,
    data: {
      understood: {
        technique: 'colour-families',
        job: 'survives-lye',
        command: 'colourant check',
        given: { item: plant?.name ?? facts.named[0] },
        facts,
      },
    },
    blocks: [{ kind: 'text', text: say.plants.test }],
    cautions: [],
  };
}
