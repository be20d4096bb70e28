import { unbroken } from '../../../over-lines.ts';
import { foldedColour, isColourWord } from '../../../text/colours/folded-colours.ts';
import type { LyeTopic } from '../../lye/topics/topic.ts';
import { turnsToAnother } from '../carried.ts';
import { plainTurn } from '../turn/plain.ts';
import type { Danger } from './danger-kind.ts';

/** What a turn asks of soap or lye that may hurt: a matter near lye, or one of those that have a sentence of their own. */
export type AskedInDanger =
  | { readonly kind: 'matter'; readonly id: LyeTopic }
  /** To be used, given or sold as it is. */
  | { readonly kind: 'used' }
  /** How it is known to be sound once it was put right. */
  | { readonly kind: 'proved' }
  /** What becomes of its colour when it is melted again. */
  | { readonly kind: 'colour' }
  /** The jug is of a metal that lye eats. */
  | { readonly kind: 'metal' };

/** Longer turns tell what they are about, words. */
const MOST_WORDS = 16;
const whole = (words: string) => new RegExp(String.raw`(?<!\p{L})(?:${words})(?!\p{L})`, 'u');

/** A recipe, a dose or a batch of its own is asked of, and not the soap that was spoken of. */
const OF_ELSE = whole(
  unbroken`
    (?:how much|cuant[oa]s?)(?: \p{L}+){0,2} (?:mica|oxide|clay|charcoal|titanium|lye|naoh|water|oils?|
    oxido|arcilla|carbon|titanio|sosa|agua|aceites?)|recipe for|receta (?:para|de)|next (?:time|batch)|
    la proxima(?: vez)?
  `,
);

const AWAY = whole(
  unbroken`
    throw|thrown|bin|trash|garbage|dispos\p{L}+|get(?:ting)? rid|toss\p{L}*|chuck\p{L}*|down the (?:drain|
    sink)|tir(?:o|ar\p{L}*|arl[oa])|basura|desech\p{L}+|deshac(?:er|erme|erse|go)\p{L}*|fregadero|desague
  `,
);
const PROVES = whole(
  unbroken`
    how (?:do|will|would|can|could|d) (?:i|you|we) (?:know|tell|be sure)|(?:know|tell|sure|check|
    test) (?:if|when|that|whether|its|it|theyre|they)|safe (?:after|afterwards|then|again)|what test|
    como (?:se|lo se|puedo saber|lo compruebo|compruebo|sabre)|saber (?:si|cuando|que)|(?:compruebo|
    comprobar|comprobarlo|me aseguro)|seguro (?:despues|luego)
  `,
);
const WAITS = whole(
  unbroken`
    cur(?:e|es|ed|ing)|wait\p{L}*|longer|more time|(?:weeks?|months?|years?)|leave (?:it|them)|let (?:it|
    them) (?:sit|rest|be|dry|go|cure|age)|sit (?:a|for|there)|rest (?:a|for|it)|how (?:long|soon)|when can|
    curar\p{L}*|curad[oa]|curado|curo|cura|esper\p{L}+|mas tiempo|semanas?|meses|anos?|dej(?:o|ar|arl[oa]|
    amos|andol[oa])|repos\p{L}+|cuanto tiempo|cuando (?:puedo|podre|se puede)
  `,
);
const MENDS = whole(
  unbroken`
    how (?:do|would|should|can|to) ?(?:i|you|we)? ?(?:do|fix|save|mend|repair|rescue|make it right)|
    do (?:it|that)|fix\p{L}*|sav(?:e|ed|ing)|rescu\p{L}+|repair\p{L}*|rebatch\p{L}*|remelt\p{L}*|melt\p{L}*|
    put (?:it|that) right|(?:add|stir|mix|put|pour) (?:it|the|that|them)(?: \p{L}+){0,3}|arregl\p{L}+|
    salv(?:o|ar|arl[oa])|rescat\p{L}+|rehac\p{L}+|refund\p{L}+|fund\p{L}+|(?:lo|la) hago|se hace|
    (?:echarl[oa]|echarsel[oa]|(?:lo|la|se lo|se la) echo|anadirl[oa]|mezclarl[oa])|remedio|solucion
  `,
);
const LAUNDRY = whole(
  String.raw`laundry|clothes|washing machine|dishes|floors?|toilet|clean(?:ing)?|lavar (?:la )?ropa|la ropa|lavadora|platos|fregar|suelos?|limpiar`,
);
const USES = whole(
  unbroken`
    us(?:e|ed|es|ing|able)|wash\p{L}*|sell\p{L}*|sold|giv(?:e|en|ing)|gifts?|skin|hands?|shower|bath|face|
    body|shav\p{L}+|touch\p{L}*|mild|gentle|customers?|kids?|people|anyway|safe|ok|okay|fine|usar\p{L}*|
    (?:lo|la|los) uso|lavar\p{L}*|vend\p{L}+|regal\p{L}+|piel|manos?|duch\p{L}+|cara|tocar\p{L}*|suave|
    seguro|sirve|vale|aprovech\p{L}+|pasa algo
  `,
);
const OF_COLOUR = whole(String.raw`colou?rs?|swirls?|pretty|color(?:es)?|remolino|dibujo|bonit[oa]`);
const STAYS = whole(
  unbroken`
    still|stay\p{L}*|keep\p{L}*|look\p{L}*|be|hold\p{L}*|change\p{L}*|fade\p{L}*|qued\p{L}+|sigu\p{L}+|
    seguir\p{L}*|mantien\p{L}+|manten\p{L}+|aguant\p{L}+|cambi\p{L}+|pierd\p{L}+
  `,
);

const namesHue = (text: string): boolean => text.split(' ').some(word => isColourWord(foldedColour(word)));

function ofHeavySoap(text: string): AskedInDanger | undefined {
  if (AWAY.test(text)) return { kind: 'matter', id: 'bad-batch-away' };
  if (PROVES.test(text)) return { kind: 'proved' };
  if ((namesHue(text) || OF_COLOUR.test(text)) && STAYS.test(text)) return { kind: 'colour' };
  if (LAUNDRY.test(text)) return { kind: 'matter', id: 'lye-heavy-laundry' };
  if (WAITS.test(text)) return { kind: 'matter', id: 'cure-lye-heavy' };
  if (MENDS.test(text)) return { kind: 'matter', id: 'rebatch-lye-heavy' };
  return USES.test(text) ? { kind: 'used' } : undefined;
}

const SOLID = whole(
  unbroken`
    crust\p{L}*|grains?|grainy|lump\p{L}*|crystal\p{L}*|chunks?|caked?|clump\p{L}*|solids?|stuck|bottom|
    undissolved|hard (?:bit|layer|piece)s?|rock\p{L}*|costras?|gran(?:os?|itos)|grum\p{L}*|cristal\p{L}*|
    trozos?|bolit\p{L}*|terron\p{L}*|piedras?|fondo|pegad[oa]s?|sin disolver|endurecid[oa]s?
  `,
);
const CLOUDY = whole(
  String.raw`cloud\p{L}*|milky|murky|film|scum|flakes|turbi[oa]|lechos[oa]|nata|pelicula|velo|copos`,
);
const METAL = whole(String.raw`alumin\p{L}+|alu|tin|zinc|galvani\p{L}+|hojalata|estano|metal|lata`);
const STEEL = whole(String.raw`stainless|steel|inox\p{L}*|acero`);
/** Batter, bars and colours are no lye water. */
const OF_OTHER_STUFF = whole(
  unbroken`
    micas?|oxid\p{L}+|pigment\p{L}*|powders?|polvos?|clays?|arcillas?|soaps?|jabon\p{L}*|batter|masa|oils?|
    aceites?|mou?lds?|moldes?|bars?|pastillas?|lo(?:af|aves)|glycerin\p{L}*|glicerina
  `,
);

function ofLyeWater(text: string, danger: Danger): AskedInDanger | undefined {
  if (METAL.test(text) && !STEEL.test(text)) return { kind: 'metal' };
  if (AWAY.test(text)) return { kind: 'matter', id: danger === 'lye-metal' ? 'metal-in-lye' : 'disposal' };
  if (danger === 'lye-metal')
    return SOLID.test(text) || CLOUDY.test(text) ? { kind: 'matter', id: 'metal-in-lye' } : undefined;
  if (SOLID.test(text)) return { kind: 'matter', id: 'undissolved-lye' };
  return CLOUDY.test(text) ? { kind: 'matter', id: 'cloudy-lye' } : undefined;
}

/**
 * What a turn asks of the soap or the lye that a talk is in danger of; undefined where it asks of something else, or of nothing that is known.
 * Pure.
 * @example askedInDanger('can I just let it cure longer', 'lye-heavy') // { kind: 'matter', id: 'cure-lye-heavy' }
 */
export function askedInDanger(typed: string, danger: Danger): AskedInDanger | undefined {
  if (typed.startsWith('/')) return undefined;
  const text = plainTurn(typed);
  if (text.split(' ').length > MOST_WORDS || turnsToAnother(typed) || OF_ELSE.test(text)) return undefined;
  if (danger === 'lye-heavy') return ofHeavySoap(text);
  return OF_OTHER_STUFF.test(text) ? undefined : ofLyeWater(text, danger);
}
