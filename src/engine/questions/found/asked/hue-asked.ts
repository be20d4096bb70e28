import type { Colourant } from '../../../colourants/colourant.ts';
import { holderOf } from '../../../colourants/holding-hues.ts';
import { unbroken } from '../../../over-lines.ts';
import { unaccented } from '../../../text/unaccented.ts';

/** A colourant that is asked for by its hue. */
export type HueAsked = { readonly hue: string; readonly colourant: Colourant };

const LONGEST = 90;
const HUE = String.raw`(?:(?:proper|true|strong|nice|deep|bright|real|fuerte|buen|lindo|bonito) )?(\p{L}+)(?: fuerte| intenso| vivo| teja| ladrillo)?`;
/** What a colour is asked to do, or not to do. */
const HOLDS = unbroken`
  (?:(?:that|which|q|que) )?(?:(?:really |actually |still )?(?:does(?:nt)?|do|will|wont|wouldnt|dont|doesnt|
  cant|can|no se(?: me)?|no|si|se|me|not) )*(?:hold\w*|stay\w*|last\w*|survive\w*|fade\w*|go(?:es)?|turn\w*|
  change\w*|keep\w*|stand\w*|bear\w*|work\w*|do(?:es)?|aguant\w*|resist\w*|dur\w*|va(?:ya)?|cambi\w*|
  qued\w*|mantien\w*|sirv\w*|pierd\w*|marron)(?: [\p{L} ]{0,40})?
`;
const OF_HUE: readonly RegExp[] = [
  // "Which green does", "what purple does hold then", "que azul no cambia con la sosa".
  new RegExp(
    `^(?:what|which|whats|que|q|cual) (?:is )?(?:(?:a|the|el|la|un|una) )?(?:good |best |mejor )?${HUE} ${HOLDS}$`,
    'u',
  ),
  // "A good green", "mejor morado q aguante la soda", "the best red that stays".
  new RegExp(
    unbroken`
      ^(?:whats? |which |what is |cual es |que es |i need |i want |necesito |quiero |busco )?(?:(?:a|an|the|
      el|la|un|una) )?(?:good|best|nice|proper|safe|mejor|buen|buena|lindo|bonito) ${HUE}(?: ${HOLDS})?$
    `,
    'u',
  ),
  // "Red that stays red".
  new RegExp(`^(?:a |an |un |una |el )?${HUE} (?:that|which|que|q) ${HOLDS}$`, 'u'),
  // "Que amarillo me recomienda q no se vaya", "which yellow do you recommend that stays".
  new RegExp(
    unbroken`
      ^(?:what|which|que|q|cual) ${HUE} (?:(?:do|would|can) (?:you|u|ya) (?:recommend|suggest|advise)|
      (?:me |nos )?(?:recomiend\w+|recomendas|aconsej\w+|sugier\w+))(?: (?:that|which|q|que) ${HOLDS})?$
    `,
    'u',
  ),
  // "Como hago pa q el azul no quede gris", "how do i stop blue going grey".
  new RegExp(
    unbroken`
      ^(?:como (?:hago|se hace|hacer)|que (?:hago|hacer|pongo)) (?:para|pa) (?:que|q) (?:el |la |
      mi )?(\p{L}+) no (?:se |me )*(?:qued\w+|salg\w+|pong\w+|vuelv\w+|vay\w+|cambi\w+|vir\w+|
      agris\w+)(?: [\p{L} ]{0,30})?$
    `,
    'u',
  ),
  new RegExp(
    unbroken`
      ^how (?:do|can|to)(?: (?:i|you|we))? (?:stop|keep|prevent) (?:the |my |
      a )?(\p{L}+) (?:from )?(?:going|turning|becoming|fading|looking|coming out)(?: [\p{L} ]{0,30})?$
    `,
    'u',
  ),
  // "What are you using for orange", "con que hago amarillo fuerte", "q oxido me da un rojo teja".
  new RegExp(
    unbroken`
      ^(?:what (?:are|do|would|should|can) (?:ye|you|u|i|we|people)(?: all)? (?:using|use|uses)|
      con que (?:hago|consigo|saco|logro)|que (?:usan|usais|uso|pongo|oxido|pigmento|polvo)(?: (?:me|
      le))?(?: (?:da|dan|hace))?|q oxido (?:me )?da)(?: (?:for|to get|para|a|an|un|una|el))* ${HUE}$
    `,
    'u',
  ),
];
/** "How much blue for one loaf": no amount, and no colourant by name. */
const HOW_MUCH = new RegExp(
  unbroken`
    ^(?:how much|cuanto|cuanta) ${HUE}(?: (?:for|in|do|should|i|we|add|put|use|need|a|an|one|the|my|loaf|
    batch|soap|le|pongo|echo|uso|para|un|una|el|la|mi|lote|tanda|jabon|arreglar|it))*$
  `,
  'u',
);
/** What comes of plants is told of plants. */
const OF_PLANTS = /(?<!\p{L})(?:natural\p{L}*|plants?|plantas?|herb\p{L}*|botanical\p{L}*)(?!\p{L})/u;
/** What is owned is looked up, and two are compared. */
const OF_STOCK =
  /(?<!\p{L})(?:shelf|estanteria|estante|left|have|has|got|tengo|tenemos|hay|than|or)(?!\p{L})/u;
const POLITE =
  /(?: (?:please|pls|plz|porfa(?:vor)?|por favor|then|so|entonces|now|instead|in soap|for soap|en jabon|para jabon))+$/u;

/**
 * The colour of which a question wants a colourant that holds: "a good green", "which purple stays", "mejor morado que aguante la sosa".
 * Undefined where it asks for anything else, or for plants. Pure.
 * @example hueAsked('a good green pls')?.colourant.id // 'chromium-oxide-green'
 */
export function hueAsked(question: string): HueAsked | undefined {
  if (question.length > LONGEST) return undefined;
  const plain = unaccented(question)
    .replace(/['’]/gu, '')
    .replace(/[^\p{L} ]+/gu, ' ')
    .replace(/\s+/gu, ' ')
    .trim()
    .replace(POLITE, '');
  if (OF_PLANTS.test(plain) || OF_STOCK.test(plain)) return undefined;
  for (const pattern of [...OF_HUE, HOW_MUCH]) {
    const hue = pattern.exec(plain)?.[1];
    const brick = /(?<!\p{L})(?:teja|ladrillo|brick|terracot\p{L}+)$/u.exec(plain)?.[0];
    const colourant = hue === undefined ? undefined : holderOf(brick ?? hue);
    if (hue !== undefined && colourant) return { hue, colourant };
  }
  return undefined;
}
