import { unbroken } from '../../over-lines.ts';
import { foldedColour, isColourWord } from '../../text/colours/folded-colours.ts';
import { asksWhatItDoes } from '../asking/what-it-does.ts';
import type { Words } from '../found/words-of.ts';
import type { Found } from '../learned/features.ts';
import { isOfCraft } from '../learned/topics.ts';
import { planParts } from '../plans/plan-parts.ts';
import { asksForDose, LYE } from './dose-by-phrase.ts';
import { jobInSoManyWords } from './in-so-many-words.ts';
import type { Job } from './jobs.ts';
import { asksWhatTwoMake } from './two-together.ts';

/** A job that a turn of phrase asks for, whatever the other words are taken for. */
export type PhraseJob = Extract<
  Job,
  'compare' | 'diagnose' | 'dose' | 'help' | 'law' | 'mix' | 'plan' | 'preview' | 'shelf-add' | 'survives-lye'
>;

const VERSUS = /^(?:vs\.?|versus|against|contra|frente)$/u;
/** Which of two is stronger, but for what lye and light do to both: that is told by what each bears. */
const isCompared = ({ words, text }: Words, { things }: Found): boolean => {
  if (FATE.test(text)) return false;
  const named = things.filter(({ colourants }) => colourants.length > 0);
  const [first, second] = named;
  if (named.length !== 2) return false;
  const between = words.slice(first!.to, second!.from).filter(word => !/^(?:a|the|el|la|al?)$/u.test(word));
  return between.length === 1 && VERSUS.test(between[0]!);
};

const OF_EACH = new RegExp(
  unbroken`
    (?<!\p{L})(?:cuant[oa]s?(?: \p{L}+)? (?:de|a|en|para) cada|cuant[oa] (?:va|lleva) (?:en|a) cada|
    how much (?:\p{L}+ )?(?:of|in|for|to) each|how much \p{L}+ each|what goes in each)(?!\p{L})
  `,
  'u',
);
/** Both colours in one portion are two doses. */
const TOGETHER =
  /(?<!\p{L})(?:same (?:pot|batter|batch|jug)|together|mism[oa] (?:olla|masa|jarra|lote)|junt[oa]s)(?!\p{L})/u;

/** What each part of one batch takes, its shares told. */
const isShared = (words: Words, { amounts }: Found): boolean =>
  OF_EACH.test(words.text) &&
  !TOGETHER.test(words.text) &&
  !LYE.test(words.text) &&
  amounts.some(({ measure }) => measure === 'mass') &&
  planParts(words).shares !== undefined;

const PERMISSION = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:can|may|could) (?:i|we|you) (?:use|sell|put|ship|send|post)|allowed|permitted|legal|
    banned|ok to sell|puedo (?:usar|vender|poner|mandar|enviar)|se puede (?:usar|vender|poner)|
    permitid[oa]s?|autorizad[oa]s?|prohibid[oa]s?)(?!\p{L})
  `,
  'u',
);
const FATE =
  /(?<!\p{L})(?:surviv\p{L}*|hold|holds|fade|fades|stay|stays|last|lasts|lye|sosa|soda|aguant\p{L}*|resist\p{L}*|dura|duran|queda|quedan)(?!\p{L})/u;

/** Whether a colourant may be used where a country is named, and nothing of its fate. */
const isLaw = ({ text }: Words, { things, facts }: Found): boolean =>
  things.length > 0 &&
  (facts.region !== undefined || facts.country !== undefined) &&
  PERMISSION.test(text) &&
  !FATE.test(text);

const HOW = new RegExp(
  unbroken`
    (?<!\p{L})(?:how (?:do|can|would|could|might|to|d)(?: (?:i|we|you|one))? (?:get|make|mix|reach|do)|
    how(?:'?d)? you (?:get|make|mix)|(?:como|con que|de que forma) (?:(?:hago|hacemos|consigo|saco|logro|
    obtengo|llego a|mezclo)|se (?:hace|consigue|logra|saca|mezcla|obtiene)|puedo (?:hacer|conseguir|sacar|
    lograr))|(?:what|que) (?:ratio|proporcion|mezcla)|con que se (?:hace|consigue|logra))(?!\p{L})
  `,
  'u',
);
const WISHED =
  /^(?:el|la|un|una|ese|esa|este|esta|the|an?|that|this|some|color|colou?r|tono|shade|of|de|i|want|quiero|querria|quisiera|busco|for|after)$/u;
/** What a hue is likened to stands behind it, or before it in English. */
const LIKENED = /^(?:de|del|como|tipo|like|of|as|on|que|igual|a)$/u;
/** "The green on my uniform, sort of bottle green": how a colour is put right, and no stain on a thing. */
const OF_CRAFTS = new RegExp(
  unbroken`
    (?<!\p{L})(?:paint|wall|hair|nails?|icing|frosting|cake|candles?|wax|resin|yarn|wool|cloth|fabric|shirt|
    stains?|pool|crust|fried|pintura|pared|pelo|unas|glaseado|betun|velas?|cera|resina|lana|tela|camisa|
    manchas?|piscina|alberca|croquetas?|pan|pollo|carne|cebolla|caramelo|horno)(?!\p{L})
  `,
  'u',
);

/** How a hue is got that is likened to something: "el dorado de la piedra al atardecer", "un terracota como los cerros". */
function isLikenedHue(read: Words, { things, amounts }: Found): boolean {
  const { words, text } = read;
  if (!HOW.test(text) || OF_CRAFTS.test(text) || LYE.test(text)) return false;
  if (isOfCraft(words) || amounts.some(({ of }) => of === 'powder')) return false;
  const isOfThing = (at: number) =>
    things.some(
      ({ from, to, colourants }) =>
        at >= from && at < to && to - from > 1 && colourants.length > 0 && !LIKENED.test(words[from + 1]!),
    );
  return words.some(
    (word, at) =>
      !isOfThing(at) &&
      isColourWord(foldedColour(word)) &&
      WISHED.test(words[at - 1] ?? '') &&
      LIKENED.test(words[at + 1] ?? ''),
  );
}

const WHY = new RegExp(
  unbroken`
    (?<!\p{L})(?:why|how come|what happened|what went wrong|what did i do|por que|porque sera|que (?:le |
    les |me )?(?:ha )?(?:pas(?:o|ado)|ocurrido|ocurrio|sucedido|sucedio)|que hice|a que se debe)(?!\p{L})
  `,
  'u',
);
const HAS_COME = new RegExp(
  unbroken`
    (?<!\p{L})(?:se (?:me |te |nos |le )?(?:han? (?:quedado|puesto|vuelto)|quedo|quedaron|puso|pusieron|
    volvio|volvieron|torno|tornaron)|vir(?:o|aron)|ha virado|me (?:han? (?:quedado|salido)|quedo|quedaron|
    salio|salieron)|(?:has|have|it's|is|are|they're) (?:all )?(?:gone|turned|now)|went|came out|ended up|
    (?:is|are) (?:now )?(?:tan|beige|brown|grey|gray|mud|muddy))(?!\p{L})
  `,
  'u',
);
const MAY_COME =
  /(?<!\p{L})(?:will|would|does|do|can|could|might|if|going to|si|va a|van a|puede|podria|suele)(?!\p{L})/u;

/** What became of a colour is told, and why is asked: "puse pétalos y se me han quedado marrones, por qué". */
const isReported = ({ text }: Words, { things, amounts }: Found): boolean =>
  things.length > 0 &&
  amounts.length === 0 &&
  WHY.test(text) &&
  HAS_COME.test(text) &&
  !MAY_COME.test(text) &&
  !LYE.test(text);

/** What is mixed for a hue that was told. */
const MIXED_FOR =
  /(?<!\p{L})(?:(?:what|which)(?: \p{L}+){0,2} (?:do|would|should|can|could) (?:i|you|we) mix (?:for|to)|que (?:mezclo|combino) para)(?!\p{L})/u;
const FADES =
  /(?<!\p{L})(?:in (?:the )?(?:lye|light|sun)|surviv\p{L}*|aguant\p{L}*|bleed\p{L}*|fad\p{L}*)(?!\p{L})/u;
/** What comes to a hue that is named, where no colourant is: no amount is asked. */
function isMixed(read: Words, found: Found): boolean {
  const { text, words } = read;
  if (FADES.test(text) || LYE.test(text) || isOfCraft(words) || found.amounts.length > 0) return false;
  const isOfHue =
    found.things.every(({ colourants }) => colourants.length === 0) &&
    words.some(word => isColourWord(foldedColour(word)));
  return MIXED_FOR.test(text) && isOfHue;
}

const SEEN = unbroken`
  (?:white|cream|ivory|beige|tan|brown|black|gr[ae]y|blue|green|pink|red|purple|violet|lilac|yellow|orange|
  blanc[oa]|crema|beis|marron|cafe|pard[oa]|negr[oa]|gris|azul|verde|ros[oa]|roj[oa]|morad[oa]|violeta|lila|
  amarill[oa]|naranja)
`;
const DAY = unbroken`
  (?:monday|tuesday|wednesday|thursday|friday|saturday|sunday|lunes|martes|miercoles|jueves|viernes|sabado|
  domingo|yesterday|today|ayer|hoy|(?:the |this |next )?(?:morning|night|evening|day)|breakfast|
  (?:the )?pour|(?:i )?(?:cut|unmou?lded|poured)(?: it)?|(?:cortarl[oa]|desmoldarl[oa]|verterl[oa])|
  (?:\p{L}+|\d+) (?:days?|weeks?|hours?|dias?|semanas?|horas?))
`;
/** "Cream on Monday, brown as tea by Friday": one colour then, another later. */
const TWO_TIMES = new RegExp(
  unbroken`
    (?<!\p{L})${SEEN}(?!\p{L})[^.?!;]{0,20}?(?<!\p{L})(?:on|at|when|el|al|ayer)(?!\p{L}) ?(?:the |la |
    el )?${DAY}?[^.?!]{0,25}?(?<!\p{L})${SEEN}(?!\p{L})[^.?!;]{0,24}?(?<!\p{L})(?:by|on|after|now|today|hoy|
    ahora|el|al|a los|a la|a las|para el)(?!\p{L})(?: ?${DAY})?
  `,
  'u',
);
/** What a scent is called after is no craft: "vanilla cupcake scent". */
const SCENT_NAMED =
  /(?:\p{L}+ ){1,2}(?:scent(?:ed)?|fragrance|fo|perfume)(?!\p{L})|(?<!\p{L})(?:aroma|fragancia|olor|esencia) (?:de|a|al) \p{L}+(?: de \p{L}+)?/gu;
const isOfTwoTimes = ({ text }: Words): boolean => {
  const rest = text.replace(SCENT_NAMED, ' ');
  return TWO_TIMES.test(text) && !LYE.test(text) && !OF_CRAFTS.test(rest) && !isOfCraft(rest.split(' '));
};

const PLANS = new RegExp(
  unbroken`
    ^(?:hey |hi |hola |please |porfa )?(?:(?:can|could|would) (?:you|u) )?(?:(?:help me )?plan (?:me |
    us )?(?:a|an|my|out|this|for)|(?:me )?plane(?:a|as|ame|arme|ar|emos)|planificam?e?|armame|
    armar) (?:\p{L}+ ){0,3}?(?:loaf|batch|soap|bars?|jabon|lote|tanda|pan|receta)(?!\p{L})
  `,
  'u',
);
/** "Plan me a loaf, 1.2 kg, blue at the bottom": what is wanted is told at once. */
const isPlan = ({ text }: Words): boolean => PLANS.test(text);

const MAKES = new RegExp(
  unbroken`
    ^(?:whats?|which|what|que|con que|cual) (?:colou?rs? |powders? |mix )?(?:makes?|gives?|would make|
    will make|gets me|do i mix for|to mix for|me da|da|hace|se mezcla para)(?: (?:a|an|the|un|una|el|good|
    nice|proper|decent|lovely|buen|buena|lindo|linda|bonito|bonita))* (?:\p{L}+[ -]){0,2}(\p{L}+)$
  `,
  'u',
);
/** "What makes a good grey-blue": a hue at the end, and nothing else. */
const isMadeHue = ({ text }: Words, { things, amounts }: Found): boolean => {
  const [, hue] = MAKES.exec(text.replace(/[?.!]+$/u, '').trim()) ?? [];
  const isNamed = things.some(({ colourants }) => colourants.length > 0);
  return hue !== undefined && !isNamed && amounts.length === 0 && isColourWord(foldedColour(hue));
};

/**
 * A job that a turn of phrase tells: what this can do, two colourants with "versus" between them, so much in
 * so much and whether it is too much, what each
 * told part takes, what became of a colour, whether something may be used in a named country, what two come
 * to, how a hue is got that is likened to something, or the job itself. Pure.
 */
export function jobByPhrase(words: Words, found: Found): PhraseJob | undefined {
  if (found.things.length === 0 && asksWhatItDoes(words.text)) return 'help';
  if (isCompared(words, found)) return 'compare';
  if (asksForDose(words, found)) return 'dose';
  if (isShared(words, found) || isPlan(words)) return 'plan';
  if (isLaw(words, found)) return 'law';
  if (isReported(words, found) || isOfTwoTimes(words)) return 'diagnose';
  if (asksWhatTwoMake(words, found)) return 'preview';
  if (isMixed(words, found) || isLikenedHue(words, found) || isMadeHue(words, found)) return 'mix';
  return jobInSoManyWords(words, found);
}
