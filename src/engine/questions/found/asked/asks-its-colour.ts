import { unbroken } from '../../../over-lines.ts';
import { unaccented } from '../../../text/unaccented.ts';
import type { QuestionRead } from '../../read.ts';

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

/** Whether the colour of the one thing that is named is asked, in so many words: "alkanet what colour do you get", "madder pink or red". Pure. */
export function asksItsColour(question: string, { facts }: QuestionRead): boolean {
  const plain = unaccented(question);
  const isOfAmount = facts.portion !== undefined || facts.powder !== undefined || /\d/u.test(plain);
  return facts.named.length === 1 && !isOfAmount && (ASKS_COLOUR.test(plain) || HUE_OR_HUE.test(plain));
}
