import { unbroken } from '../../over-lines.ts';
import { asksWhatItDoes } from '../asking/what-it-does.ts';
import type { Words } from '../found/words-of.ts';
import type { Found } from '../learned/features.ts';
import { isOfCraft } from '../learned/topics.ts';
import { planParts } from '../plans/plan-parts.ts';
import { asksForDose, asksHowMuchOf, LYE } from './dose-by-phrase.ts';
import { asksItsFate } from './fate-asked.ts';
import { asksHowAHueIsMade, OF_CRAFTS } from './hue-made.ts';
import { jobInSoManyWords } from './in-so-many-words.ts';
import type { Job } from './jobs.ts';
import { asksWhatTwoMake } from './two-together.ts';
import { asksItsCarrier } from './wet-asked.ts';

/** A job that a turn of phrase asks for, whatever the other words are taken for. */
export type PhraseJob = Extract<
  Job,
  | 'compare'
  | 'diagnose'
  | 'dose'
  | 'doubt'
  | 'help'
  | 'law'
  | 'mix'
  | 'plan'
  | 'preview'
  | 'shelf-add'
  | 'shelf-show'
  | 'shelf-use'
  | 'survives-lye'
  | 'wet'
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
    how much (?:\p{L}+ )?(?:of|in|for|to) each|how much \p{L}+ each|what goes in each|how much of (?:everything|all of (?:it|them))|cuanto de todo)(?!\p{L})
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
  amounts.some(({ measure, of }) => measure === 'mass' || of === 'batter') &&
  planParts(words).shares !== undefined;

const PERMISSION = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:can|may|could) (?:i|we|you) (?:use|sell|put|ship|send|post)|allowed|permitted|legal|
    banned|ok to sell|puedo (?:usar|vender|poner|mandar|enviar)|se puede (?:usar|vender|poner|en|si o
    no|o no)|permitid[oa]s?|autorizad[oa]s?|prohibid[oa]s?)(?!\p{L})
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

const WHY = new RegExp(
  unbroken`
    (?<!\p{L})(?:why|how come|what happened|what went wrong|what did i do|por que|porque sera|que (?:le |
    les |me )?(?:ha )?(?:pas(?:o|ado)|ocurrido|ocurrio|sucedido|sucedio)|que hice|a que se debe|where did (?:i|we) go wrong|
    what (?:have i|am i) do(?:ne|ing) wrong|(?:en que|donde) (?:la |me |le )?(?:erre|falle|equivoque|pifie|
    cague|embarre|regue|estoy fallando))(?!\p{L})
  `,
  'u',
);
const HAS_COME = new RegExp(
  unbroken`
    (?<!\p{L})(?:se (?:me |te |nos |le )?(?:han? (?:quedado|puesto|vuelto|hecho)|hizo|hicieron|quedo|quedaron|puso|pusieron|
    volvio|volvieron|torno|tornaron)|vir(?:o|aron)|ha virado|se (?:hundieron|hundio|deshizo|deshicieron|partio|partieron|agrieto|
    agrietaron|derritio|derritieron|cayo|cayeron)|perdio|perdieron|me (?:han? (?:quedado|salido)|quedo|quedaron|
    salio|salieron)|(?:has|have|it's|is|are|they're) (?:all )?(?:gone|turned|now)|went|came out|ended up|
    (?:is|are) (?:now )?(?:tan|beige|brown|grey|gray|mud|muddy))(?!\p{L})
  `,
  'u',
);
const MAY_COME =
  /(?<!\p{L})(?:will|would|does|do|can|could|might|if|going to|si|va a|van a|puede|podria|suele)(?!\p{L})/u;

/** What a bar and its colours are called where no powder is named. */
const COLOURED_BAR = new RegExp(
  unbroken`
    (?<!\p{L})(?:swirls?|layers?|colou?rs|bars?|loaf|loaves|soaps?|remolinos?|capas?|colores|veteado|jaspeado|barras?|pastillas?|
    jabon(?:es)?|pan)(?!\p{L})
  `,
  'u',
);
/** What became of a colour is told, and why is asked: "puse pétalos y se me han quedado marrones, por qué". */
const isReported = ({ text }: Words, { things, amounts, facts }: Found): boolean =>
  (things.length > 0 || (facts.findings > 0 && COLOURED_BAR.test(text))) &&
  amounts.length === 0 &&
  WHY.test(text) &&
  HAS_COME.test(text) &&
  !MAY_COME.test(text) &&
  !LYE.test(text);

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
const isPlan = ({ text }: Words): boolean => PLANS.test(text) || WHOLE_PLAN.test(text);
/** "Whole plan please", "¿nos arma todo el plan?", wherever it stands. */
const WHOLE_PLAN = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:whole|full|entire|complete) plan|tod[oa] el plan|plan (?:completo|entero)|
    (?:arm\p{L}+|hac\p{L}+|dame|denos|prepar\p{L}+) (?:\p{L}+ ){0,2}plan)(?!\p{L})
  `,
  'u',
);

/** A look at so much of a powder is asked for, and not whether it is too much. */
const SHOWN = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:show|draw|picture) (?:me|us)|let (?:me|us) see|muestr[ae](?:me|nos|se)|mostr[ae](?:me|nos)?|ensen[ae](?:me|nos)|
    (?:what|wot) (?:will|would|does|do|might) .{3,80} looks? like|how (?:will|would|does|might) .{3,80} look(?! after)|what colou?r (?:will|would|
    is) .{3,60} (?:be|come out)|
    (?:como|que tal|(?:de )?que (?:tono|color)) (?:se |me |nos )?(?:ve|vera|veria|queda|quedara|quedaria|sale|saldra|saldria)|(?:de )?que (?:tono|
    color)(?=\W*(?:$|[?.,])))(?!\p{L})
  `,
  'u',
);
const isShown = ({ text }: Words, { things, amounts }: Found): boolean =>
  SHOWN.test(text) &&
  things.some(({ colourants }) => colourants.length > 0) &&
  amounts.some(({ of }) => of === 'powder') &&
  !LYE.test(text) &&
  !HAS_COME.test(text);

const ANSWER_WRONG = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:that|your|the|this|esa|tu|su|la|esta) (?:last )?(?:answer|figure|respuesta|cifra) (?:is|was|
    looks|esta|es|estuvo|estaba) (?:(?:just|plain|quite|totally|muy|bien|re|toda) )?(?:wrong|incorrect|off|mala|mal|
    equivocad[oa]|errad[oa]|incorrect[oa])|te equivocaste|you (?:got|have) (?:it|that) wrong|you(?:'re| are) wrong)(?!\p{L})
  `,
  'u',
);

/**
 * A job that a turn of phrase tells: what this can do, two colourants with "versus" between them, so much in
 * so much and whether it is too much, what each
 * told part takes, what became of a colour, whether something may be used in a named country, what two come
 * to, how a hue is got that is likened to something, what one is wetted in, what becomes of it, that an answer is wrong, or the job itself. Pure.
 */
export function jobByPhrase(words: Words, found: Found): PhraseJob | undefined {
  if (found.things.length === 0 && asksWhatItDoes(words.text)) return 'help';
  if (ANSWER_WRONG.test(words.text)) return 'doubt';
  if (isCompared(words, found)) return 'compare';
  if (asksItsCarrier(words, found)) return 'wet';
  if (isShown(words, found)) return 'preview';
  if (isPlan(words) && !LYE.test(words.text)) return 'plan';
  if (asksForDose(words, found)) return 'dose';
  if (isShared(words, found) || isPlan(words)) return 'plan';
  if (isLaw(words, found)) return 'law';
  if (isReported(words, found) || isOfTwoTimes(words)) return 'diagnose';
  if (asksWhatTwoMake(words, found)) return 'preview';
  if (asksHowAHueIsMade(words, found)) return 'mix';
  if (asksItsFate(words, found)) return 'survives-lye';
  return jobInSoManyWords(words, found) ?? (asksHowMuchOf(words, found) ? 'dose' : undefined);
}
