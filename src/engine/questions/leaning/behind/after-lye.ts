import { unbroken } from '../../../over-lines.ts';
import { unaccented } from '../../../text/unaccented.ts';
import { wordCount } from '../../../text/word-count.ts';
import { LYE_WORDS } from '../../fields/soap-words.ts';
import type { Facts } from '../../found/facts.ts';
import type { LyeTopic } from '../../lye/topics/topic.ts';
import type { Talk } from '../before.ts';

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

/** What a turn is of: the lye of the matter before, or of lye water that was not asked of as such, of which only what always holds is known. */
export type OfLyeBefore =
  | { readonly kind: 'goes-on'; readonly topic: LyeTopic }
  | { readonly kind: 'unsure' };

/**
 * Whether a turn that would be read as working with batter is of the lye that was spoken of: it goes on from a matter of lye and names nothing
 * new, whatever else its words may mean (grains at the bottom of a jug of lye are no mica that sank). Undefined where it is of something else.
 * Pure.
 */
export function ofLyeBefore(
  question: string,
  { named }: Pick<Facts, 'named'>,
  talk: Talk | undefined,
): OfLyeBefore | undefined {
  const plain = unaccented(question);
  const before = talk?.last;
  // Asked of lye water and answered by a matter of colour: what is told of it next is not for a spoon of oil.
  const isOfJug =
    before?.kind === 'technique' &&
    LYE_WORDS.test(unaccented(talk?.words ?? '')) &&
    OF_LIQUID.test(plain) &&
    !OTHER_LIQUID.test(plain) &&
    wordCount(plain) <= MOST_OF_LIQUID;
  if (isOfJug) return { kind: 'unsure' };
  if (before?.kind !== 'matter' || named.length > 0 || NEW_THING.test(plain)) return undefined;
  if (wordCount(plain) > MOST_WORDS) return undefined;
  const isUndissolved = before.id === 'cloudy-lye' && GRAINS.test(plain);
  return { kind: 'goes-on', topic: isUndissolved ? 'undissolved-lye' : before.id };
}
