import { colourantsMeant } from '../../colourants/find.ts';
import { unbroken } from '../../over-lines.ts';
import { foldedColour, isColourWord } from '../../text/colours/folded-colours.ts';
import type { LyeTopic } from '../lye/topics/topic.ts';
import type { Technique } from '../technique/topic.ts';
import { type Before, isOfLye, type Talk } from './before.ts';
import { type Lean, run } from './lean-kinds.ts';
import { thingOf } from './subject/things.ts';

/* Turns that name what they ask by one word, and are plain only behind what was asked before. */

/** "The gel ones?", "y el de bombas de baño": another of what was asked of, named by what tells it apart. */
const ANOTHER_OF_THEM = new RegExp(
  unbroken`
    ^(?:(?:the|them|those) ([\p{L}]+(?: [\p{L}]+)?) ones?|(?!(?:better|other|good|best|same|which|new|
    natural|these|those) )([\p{L}]+(?: [\p{L}]+)?) ones|(?:el|la|los|las) (de [\p{L}]+(?: de [\p{L}]+)?|
    en [\p{L}]+))$
  `,
  'u',
);
export function anotherLaid(text: string, last: Before): Lean | undefined {
  if (last.kind !== 'command' || last.command !== 'colourant check') return undefined;
  const [, named, bare, spanish] = ANOTHER_OF_THEM.exec(text) ?? [];
  const english = named ?? bare;
  const { item } = last.given;
  if (item === undefined) return undefined;
  if (english !== undefined && FOR_SKIN.test(english)) return { kind: 'technique', id: 'cosmetic-grade' };
  if (english !== undefined && !isColourWord(foldedColour(english)))
    return run({ ...last, given: { item: `${english} ${item}` } });
  if (spanish === undefined) return undefined;
  if (FOR_SKIN.test(spanish)) return { kind: 'technique', id: 'cosmetic-grade' };
  const plain = item.replace(/ (?:de|en|para) .+$/u, '');
  return run({ ...last, given: { item: `${plain} ${spanish}` } });
}

/** Sold for skin, and not for lye. */
const FOR_SKIN = /bath bomb|bombas|cosmetic|maquillaje|make ?up|labial|lipstick/u;

/** Asked after a colour: what it does to the lye, how it is steeped. */
const TAKES_LYE = new RegExp(
  unbroken`
    ^(?:(?:does|do|will|would|is) (?:it|that|this|they) (?:change|affect|need|take|use|alter|
    mess with)(?: up)?(?: (?:the|my|any|more|extra))* (?:lye|naoh)(?: amount)?|(?:me |le )?(?:cambia|afecta|
    altera|modifica|necesita|lleva)(?: (?:la|lo|el|de|mas|cantidad|a))* (?:sosa|soda|lejia))$
  `,
  'u',
);
const STEEPS = new RegExp(
  unbroken`
    ^(?:how much oil (?:to|do i|for) (?:steep|infuse)(?: (?:it|that|them|in|with))*|(?:how (?:do|
    long do) i )?(?:steep|infuse)(?: it)?|(?:como |cuanto aceite para )(?:lo |la )?(?:infusion\p{L}+|
    macer\p{L}+)(?:lo|la)?)$
  `,
  'u',
);
/** "Less, I want it to set sooner", after how much water. */
const LESS_WATER = new RegExp(
  unbroken`
    ^(?:(?:a (?:bit|little) |un poco )?(?:less|menos)|(?:can|could) i (?:use|go|do with|
    get away with) (?:a bit )?less|puedo (?:usar|poner) menos)(?: (?:water|agua))?(?: (?:i |and |so |to |
    want|quiero|para|que|q|it |its |if |since |es |si )+(?: ?\p{L}+){0,6})?$
  `,
  'u',
);

export function ofMatterNear(text: string, { last }: Talk): Lean | undefined {
  const besideLye = last.kind === 'matter' ? besideLyeMatter(text, last.id) : undefined;
  if (besideLye) return { kind: 'matter', id: besideLye };
  const isOfAsh =
    (last.kind === 'technique' && last.id === 'ash-avoid') || (last.kind === 'matter' && OF_ASH.has(last.id));
  if (isOfAsh && SPRAYED.test(text)) return { kind: 'technique', id: 'ash-avoid', words: 'alcohol' };
  const [, verb] = (last.kind === 'technique' && last.id === 'layers-how' && CAME_APART.exec(text)) || [];
  if (verb !== undefined)
    return run({
      job: 'diagnose',
      command: 'diagnose',
      given: { words: `${/^(?:despeg|separ|part|abr)/u.test(verb) ? 'mis capas se' : 'my layers'} ${verb}` },
    });
  const isOfLyeWater =
    (last.kind === 'matter' && last.id === 'cloudy-lye') ||
    (last.kind === 'technique' && last.id === 'lye-cloudy');
  if (isOfLyeWater && GRAINS.test(text)) return { kind: 'matter', id: 'undissolved-lye' };
  if (last.kind === 'technique' && OF_THICK.has(last.id) && FAST_SCENT.test(text))
    return { kind: 'technique', id: 'scent-speeds' };
  if (last.kind === 'command' && last.job === 'wet' && NOT_SAID.test(text))
    return { kind: 'technique', id: 'no-lumps', words: 'oil or water' };
  const isOfWater =
    (last.kind === 'matter' && last.id === 'water-amount') || (last.kind === 'command' && isOfLye(last));
  if (isOfWater && LESS_WATER.test(text))
    return { kind: 'technique', id: 'water-amount', words: 'less water' };
  const thing = last.kind === 'command' && !isOfLye(last) ? thingOf(last) : undefined;
  // Acid takes lye, milk brings fat: of a colour alone it is said that it takes none.
  const isColourant = thing !== undefined && colourantsMeant(thing).length > 0;
  if ((isColourant || (last.kind === 'technique' && OF_POWDER.has(last.id))) && TAKES_LYE.test(text))
    return { kind: 'matter', id: 'takes-no-lye' };
  if (last.kind === 'technique' && last.named === 'split-where' && IN_POT.test(text))
    return { kind: 'technique', id: 'riced-now', words: 'split' };
  return (isColourant || last.kind === 'technique') && STEEPS.test(text)
    ? { kind: 'technique', id: 'steep-in-oil' }
    : undefined;
}
/** How lye and its water are mixed. */
const OF_MIXING: ReadonlySet<LyeTopic> = new Set<LyeTopic>([
  'lye-into-water',
  'water-amount',
  'cooling-lye',
  'other-water',
  'liquid-instead',
  'lye-and-water-swapped',
]);
const OF_MILK: ReadonlySet<LyeTopic> = new Set<LyeTopic>([
  'milk-at-once',
  'scorched-milk',
  'liquid-instead',
  'hot-liquid',
]);
const OF_METAL: ReadonlySet<LyeTopic> = new Set<LyeTopic>([
  'aluminium',
  'vessel',
  'mould-stuff',
  'glass-jug',
]);
const IS_MILK =
  /^(?:(?:with|in|con|en|goats?|coconut|de) )*(?:milk|leche)(?: de (?:cabra|coco|vaca|avena))?$/u;
const IS_OTHER_LIQUID =
  /^(?:(?:with|in|con|en) )*(?:beer|wine|coffee|tea|aloe|cerveza|vino|cafe|te|jugo|zumo)$/u;
const WENT_ORANGE =
  /^(?:(?:it|its|mine|me|se|went|has|gone|turned|is|all|quedo|puso|salio|esta) )*(?:orange|brown|yellow|naranja|marron|amarill[oa])(?:\W+(?:\p{L}+ ?){1,4})?$/u;
const IS_METAL = new RegExp(
  unbroken`
    ^(?:(?:what about|is|and|or|en|de|o|a|an|the|un|una|el|la) )*(?:brass|copper|bronze|cast iron|iron|
    enamel|tin|zinc|laton|cobre|bronce|hierro(?: fundido)?|esmaltad[oa]|esmalte|hojalata|lata|
    zinc)(?: (?:ok|okay|fine|pan|pot|jug|bowl|spoon|one|olla|jarra|cuchara|sirve|va|vale))*$
  `,
  'u',
);

/** Another liquid, another metal, the colour of milk: of what was just said of lye. */
function besideLyeMatter(text: string, id: LyeTopic): LyeTopic | undefined {
  if (OF_MIXING.has(id) && IS_MILK.test(text)) return 'milk-at-once';
  if (OF_MIXING.has(id) && IS_OTHER_LIQUID.test(text)) return 'liquid-instead';
  if (OF_MILK.has(id) && WENT_ORANGE.test(text)) return 'scorched-milk';
  return OF_METAL.has(id) && IS_METAL.test(text) ? 'vessel' : undefined;
}

/** Of a jar that does not say what it is wetted in: a pinch is tried in each. */
const NOT_SAID = new RegExp(
  unbroken`
    ^(?:(?:it|the (?:tub|jar|label|bag|pot|packet)|el (?:bote|frasco)|la (?:etiqueta|bolsa)|me|lo|i|
    yo) )*(?:doesnt|does not|dont|didnt|isnt|not|no) (?:say|said|know|tell|marked|labelled|sure|idea|dice|
    pone|se|sabe|trae|viene)(?: (?:\p{L}+ ?){1,6})?$
  `,
  'u',
);
/** What lies in lye water that went cloudy is lye, and no colour. */
const GRAINS = new RegExp(
  unbroken`
    ^(?:(?:it|its|there|tiene|hay|quedan?|veo|i see|has|have|is|are|got|some|with|con|unos|like|
    como) )*(?:grains?|lumps?|bits|crystals?|granitos?|granos?|grumos?|cristales|
    bolitas)(?: (?:\p{L}+ ?){1,6})?$
  `,
  'u',
);
const OF_ASH: ReadonlySet<string> = new Set(['soda-ash-avoided', 'soda-ash']);
const SPRAYED = new RegExp(
  unbroken`
    ^(?:(?:would|will|does|do|can|could|should|is|i|what|about|with|con|and|use|puedo|usar|sirve|si|le|y|un|
    el|the|some|spray\p{L}*|of|de|en|echo|pongo|roci\p{L}*|rubbing|isopropilic[oa]) )*(?:alcohol|
    isoprop\p{L}*|ipa)(?: (?:spray\p{L}*|do|work|help|stop|prevent|it|en|roci\p{L}*|isopropilic[oa]|sirve|
    ayuda|funciona|on|top|the|first|after|straight|instead|que|vale))*$
  `,
  'u',
);
/** After layers: what came apart is the layers. */
const CAME_APART = new RegExp(
  unbroken`
    ^(?:(?:they|the layers|my layers|layers|mine|luego|despues|pero|las capas|me|se|all) )+((?:split|come|
    came|fall|fell|separat\p{L}+|broke|break|despeg\p{L}+|separ\p{L}+|part\p{L}+|abr\p{L}+)(?: (?:apart|off|
    away|when|while|after|i|cut\p{L}*|it|them|on|the|unmou?ld\p{L}*|al|cortar\p{L}*|desmoldar\p{L}*|cuando|
    corto|las|los))*)$
  `,
  'u',
);
const OF_POWDER: ReadonlySet<Technique> = new Set(['clays-colour', 'no-lumps', 'dry-in', 'premix-keeps']);
const OF_THICK: ReadonlySet<Technique> = new Set(['thick-now', 'riced-now', 'keep-fluid', 'pot-time']);
/** Scents that race, named alone: what was in it. */
const FAST_SCENT = new RegExp(
  unbroken`
    ^(?:(?:it |i |ive |le |la )*(?:had|has|used|put|got|with|was|llevaba|tenia|puse|eche|con|usa|
    use) )?(?:the |a |some |esencia de |aceite de )?(?:\p{L}+ (?:and|y|e|,) )?(?:clove\p{L}*|cinnamon|rose|
    jasmine|lilac|lily|florals?|spice|clavo|canela|rosas?|jazmin|lila|floral)(?: (?:and|
    y) \p{L}+)?(?: (?:in|oil|eo|fo|in it|fragrance|scent))*$
  `,
  'u',
);
const IN_POT =
  /(?<!\p{L})(?:pot|jug|bowl|still (?:in|liquid|fluid)|not poured|olla|jarra|todavia no|aun no|sin verter)(?!\p{L})/u;
