import { knownOil } from '../../batch/oils/find-oil.ts';
import { unbroken } from '../../over-lines.ts';
import { amountOf } from '../portion-line/amount-at.ts';
import { aspectIn } from './asked-of-it.ts';
import type { Aspect } from './aspects/aspect.ts';
import { type Before, isOfLye, type Ran, type Talk } from './before.ts';
import { askedOfNothing, isComplete, lackOf, unnamed } from './lacks.ts';
import { laidOver } from './laid.ts';
import { ASKS_RECIPE, type Lean, run } from './lean-kinds.ts';
import { anotherLaid, ofMatterNear } from './near-turns.ts';
import { ofItsThing } from './of-its-thing.ts';
import { OF_LIQUID, overTechnique } from './over-technique.ts';
import { gramsOf } from './recipes/recipe.ts';
import { isSoMuchOver, recipeTurn } from './recipes/recipe-turns.ts';
import { potToldOtherwise } from './recipes/told-otherwise.ts';
import { weightsAnew } from './recipes/weights-anew.ts';
import { colourantOf, holderNamed } from './subject/subject.ts';
import { cameOut } from './turn/came-out.ts';
import { halfPlain } from './turn/half-plain.ts';
import { openedTurn } from './turn/plain.ts';
import { asksWhatWasSaid } from './turn/said-before.ts';
import { type Slots, slotsOf } from './turn/slots.ts';
import { fineTurn, languageTurn } from './turn/turns.ts';

/**
 * How a turn leans on the question before; undefined where it stands alone, or says anything that is not known to lean. Without anything
 * before it a turn that cannot stand alone asks for what it lacks. Pure.
 * @example leanOf('and for 800 g?', { last: dose, ran: dose }) // the same dose for 800 g of oils
 */
export function leanOf(said: string, talk: Talk | undefined): Lean | undefined {
  const typed = halfPlain(said);
  const before = talk?.last;
  if (typed.trim().startsWith('/')) return undefined;
  const turn = openedTurn(typed);
  // What is too long to lean on anything else may weigh the pot anew all the same.
  if (!turn && before?.kind === 'command' && isOfLye(before))
    return weightsAnew(typed, before) ?? potToldOtherwise(typed, before);
  if (!turn || TELLS_OF_MINE.test(turn.text)) return undefined;
  if (fineTurn(turn)) return { kind: 'fine' };
  if (languageTurn(typed) !== undefined)
    return before ? { kind: 'again' } : { kind: 'asks', lacks: 'of-what' };
  const ofRecipe = recipeTurn(typed, turn, before);
  if (ofRecipe) return ofRecipe;
  if (before && ONLY_LYE.test(turn.text) && !isHarm(before)) return { kind: 'matter', id: 'spooned-lye' };
  const came = before && cameOut(turn.text, before);
  if (came) return came;
  const slots = slotsOf(turn);
  const byAspect = aspectIn(turn.text);
  if (talk && before) {
    const apart =
      besideLean(turn.text, talk, slots) ?? ofSubject({ text: turn.text, aspect: byAspect, slots }, talk);
    if (apart) return apart;
  }
  // How long it has been, of a bar that something is wrong with, adds to what is known of it.
  if (before?.kind === 'command' && before.command === 'diagnose' && TIME_TOLD.test(turn.text))
    return { kind: 'part', of: 'still' };
  if (before?.kind === 'command') return overCommand(before, { slots, aspect: byAspect, text: turn.text });
  const isOfNothing = before?.kind === 'open' && talk?.subject === undefined;
  if ((before?.kind === 'open' && !isOfNothing) || before?.kind === 'contest' || before?.kind === 'recipe')
    return undefined;
  if (before && !isOfNothing && byAspect) {
    const behind = OF_A_FLAW.has(byAspect) && talk?.ran?.command === 'diagnose' ? talk.ran : undefined;
    return { kind: 'part', of: byAspect, ...(behind && { behind }) };
  }
  if (before && !isOfNothing && slots) return overMatter(before, talk?.ran, slots);
  if (before && !isOfNothing) return undefined;
  return byAspect
    ? askedOfNothing(byAspect, turn.text)
    : asksWhatWasSaid(turn.text)
      ? { kind: 'asks', lacks: 'of-what' }
      : slots && (hueAlone(turn.text, slots) ?? lackOf(slots));
}

/** Asked after an aside, these are of the flaw that was told of before it. */
const OF_A_FLAW: ReadonlySet<Aspect> = new Set(['next-time', 'still']);

/** "My black is grey": what became of a bar, and no other colour for the question before. A scale is of the recipe. */
const TELLS_OF_MINE = new RegExp(
  unbroken`
    ^(?:my|our|mi|mis) (?!(?:\p{L}+ )?(?:scales?|balanza|bascula|peso)(?!\p{L}))
    (?:\p{L}+ ){1,3}?(?:is|are|was|were|went|has gone|gone|turned|came out|looks?|es|
    esta|estan|salio|salieron|me salio|quedo|me quedo|se puso|se hizo)(?= \p{L})
  `,
  'u',
);

const TIME_TOLD = new RegExp(
  unbroken`
    ^(?:(?:its|it|it is|is|has|have|ive|i|been|had|for|made|only|just|about|around|like|its been|this|was|
    poured|cut|hace|hacen|ya|van|va|lleva|llevan|llevo|tiene|tienen|paso|pasaron|son|hara|casi|unos|unas|
    solo|apenas|como) )*(?:\d{1,3}|an?|one|two|three|four|five|six|couple of|few|un|una|dos|tres|cuatro|
    cinco|seis) (?:hours?|hrs?|days?|weeks?|months?|horas?|dias?|semanas?|mes(?:es)?)(?: (?:ago|now|old|
    since|already|in|so far|ya|asi|de hecho|de curado|y sigue igual|and no change))*$
  `,
  'u',
);
/** "So the blue then?" */
const HUE_ALONE = /^(?:so |and )?(?:the|el|la) \p{L}+(?: (?:one|ones|color|colou?r))?$/u;

const CONTEST_TURN = new RegExp(
  unbroken`
    (?<!\p{L})(?:theme|closes?|closing|when|again|deadline|tema|cierra|hasta cuando|put in|put|enter\p{L}*|
    send|submit|won|win|winner|prize|rules?|vote|judges?|bars?|two|2|both|mand\p{L}*|enviar|gan[oa]\p{L}*|
    premio|reglas?|votar?|dos|pastillas?|particip\p{L}*)(?!\p{L})
  `,
  'u',
);
const hueAlone = (text: string, slots: Slots): Lean | undefined =>
  slots.hues.length === 1 && slots.named.length === 0 && slots.amount === undefined && HUE_ALONE.test(text)
    ? { kind: 'asks', lacks: 'name-for', slots }
    : undefined;

/** What may be poured in the place of water. */
const MEANT_LYE_WATER = new RegExp(
  unbroken`
    ^(?:in|en|with|con) (?:the |el |la )?(?:lye(?: water)?|water|agua(?: con| de)?(?: la)?(?: sosa| lejia)?|
    sosa|lejia)(?: (?:i meant?|i said|quise decir|queria decir|digo|me referia))?$
  `,
  'u',
);
const IS_LIQUID = /^(?:coffee|tea|milk|beer|wine|cafe|te|leche|cerveza|vino)(?!\p{L})/u;

/** What a turn means beside the amounts and colours of before: more of the contest, another liquid for the lye, a weight after what was said of it. */
function besideLean(text: string, talk: Talk, slots: Slots | undefined): Lean | undefined {
  const { last, subject } = talk;
  const near = anotherLaid(text, last) ?? ofMatterNear(text, talk);
  if (near) return near;
  if (last.kind === 'contest') return CONTEST_TURN.test(text) ? { kind: 'contest' } : undefined;
  if (last.kind === 'command' && last.command === 'colourant check' && MEANT_LYE_WATER.test(text))
    return IS_LIQUID.test(last.given.item ?? '')
      ? { kind: 'matter', id: 'liquid-instead' }
      : { kind: 'technique', id: 'colour-in-lye-water' };
  // So much over, of a recipe that nobody told: it stays unused until it is reckoned.
  if (last.kind === 'matter' && last.id === 'too-much-in' && isSoMuchOver(text))
    return { kind: 'asks', lacks: 'lye-over' };
  // A weight after what was said of lye is of its oils, and no colour's.
  if (
    last.kind === 'matter' &&
    (slots?.amount?.measure === 'mass' || knownOil(text) !== undefined) &&
    isBare(slots)
  )
    return ASKS_RECIPE;
  return subject?.isScent && slots && isBare(slots) ? ofScent(slots) : undefined;
}

const isBare = (slots: Slots | undefined): boolean =>
  slots === undefined || (slots.named.length === 0 && slots.hues.length === 0);

/** Bare figures of oils are grams from here on; common practice (no source). */
const LEAST_GRAMS = 100;
/** So much oil that a scent is reckoned for. */
function ofScent({ amount, figure }: Slots): Lean | undefined {
  const told =
    amount?.measure === 'mass'
      ? amountOf(amount.text.replace(/ ?(?:of |de )?(?:oils?|aceites?)$/u, ''))
      : undefined;
  const grams = told?.measure === 'mass' ? told.grams : (figure ?? 0) >= LEAST_GRAMS ? figure : undefined;
  return grams === undefined ? undefined : { kind: 'scent', grams };
}

/** These are asked of a colourant, whatever it was spoken of in. */
const OF_A_COLOURANT: ReadonlySet<Aspect> = new Set([
  'holds',
  'bleeds',
  'allowed',
  'how-much',
  'wet',
  'looks',
]);

/** What is asked, or told of an amount, after a turn that named a colour and was answered with no command of it. */
function ofSubject({ text, aspect, slots }: Turn, { last, ran, subject }: Talk): Lean | undefined {
  const colourant = colourantOf(subject);
  const isLye = last.kind === 'command' && isOfLye(last);
  if (isLye && slots) return colourForRecipe(last, slots);
  if (!colourant || !subject?.isFresh || last.kind === 'emergency') return undefined;
  if (last.kind === 'command' && last.command !== 'diagnose') return undefined;
  const portion = subject.portion === undefined ? {} : { portion: subject.portion };
  const dose: Ran = { kind: 'command', job: 'dose', command: 'dose', given: { colourant, ...portion } };
  if (aspect && OF_A_COLOURANT.has(aspect)) return ofItsThing(aspect, dose, text);
  if (aspect === 'instead' && subject.hue !== undefined) return run(dose);
  if (!slots || !isBare(slots) || (ran && last.kind === 'command')) return undefined;
  const isSized = slots.amount !== undefined || slots.figure !== undefined || slots.depth !== undefined;
  const readings = isSized ? laidOver(dose, slots) : undefined;
  return readings && { kind: 'runs', readings };
}

/** "And how much pink for that": a colour for the oils of the recipe. */
function colourForRecipe(last: Ran, slots: Slots): Lean | undefined {
  const [name, ...others] = [...slots.named, ...slots.hues.flatMap(hue => holderNamed(hue) ?? [])];
  const grams = gramsOf(last.given.oils ?? '');
  const isMore = [slots.amount, slots.figure, slots.percent, slots.times, slots.carrier].some(
    one => one !== undefined,
  );
  if (name === undefined || others.length > 0 || grams === undefined || isMore) return undefined;
  return run({
    job: 'dose',
    command: 'dose',
    given: { colourant: name, portion: `${Math.round(grams)} g oils` },
  });
}

const ONLY_LYE =
  /^(?:(?:the |la |el )?(?:lye|naoh|koh|caustic(?: soda)?|sosa(?: caustica)?|soda caustica|potasa))$/u;
/** What hurts, or is done with lye at hand, is not asked about spoons. */
const isHarm = (before: Before): boolean =>
  before.kind === 'emergency' || before.kind === 'matter' || (before.kind === 'command' && isOfLye(before));

/** What is to be changed in the command that came before a matter, where it has a place there; else in the matter itself. */
function overMatter(before: Before, ran: Ran | undefined, slots: Slots): Lean | undefined {
  if (before.kind === 'emergency') return undefined;
  const byTechnique = before.kind === 'technique' ? overTechnique(before.id, slots) : undefined;
  if (byTechnique) return byTechnique;
  const byCommand = ran && overCommand(ran, { slots, aspect: undefined, text: '' });
  // What is wetted in another liquid, asked after how colours are wetted.
  if (slots.carrier !== undefined && before.kind === 'technique' && OF_LIQUID.has(before.id) && isBare(slots))
    return { kind: 'technique', id: 'no-lumps' };
  return byCommand ?? (slots.amount === undefined ? undefined : unnamed(slots));
}

type Turn = { readonly slots: Slots | undefined; readonly aspect: Aspect | undefined; readonly text: string };

function overCommand(before: Ran, { slots, aspect, text }: Turn): Lean | undefined {
  if (aspect) return ofItsThing(aspect, before, text);
  if (!slots) return undefined;
  const { unit } = slots;
  if (isComplete(slots)) return undefined;
  const readings = laidOver(before, slots);
  if (readings) return { kind: 'runs', readings, ...(unit && { unit }) };
  if (unit !== undefined) return { kind: 'runs', readings: [before], unit };
  // Near lye what has no place in the recipe is asked for, unless it may be of a colour.
  if (isOfLye(before)) return slots.named.length > 0 || slots.hues.length > 0 ? undefined : ASKS_RECIPE;
  return undefined;
}
