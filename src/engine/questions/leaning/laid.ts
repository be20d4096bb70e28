import { colourantsMeant } from '../../colourants/find.ts';
import { usualStrength } from '../../dosing/amount-in-portion.ts';
import { STRENGTH_SHARES, type StrengthName } from '../../quantities/strength.ts';
import { unaccented } from '../../text/unaccented.ts';
import type { Laid } from './before.ts';
import { isOfLye } from './before.ts';
import { portionLaid, withFigure } from './portion.ts';
import { recipeLaid } from './recipes/laid-recipe.ts';
import type { Slots } from './turn/slots.ts';

/* What a turn changes, laid over the command that the question before ran: each command by its own options. */

type Change = (laid: Laid, slots: Slots) => Laid | undefined;

/** Kinds as English and Spanish name them; in Spanish the kind stands before its hue. */
const KINDS: readonly (readonly [en: string, es: string, told: RegExp])[] = [
  ['mica', 'mica', /\bmica/u],
  ['clay', 'arcilla', /\b(?:clay|arcilla)/u],
  ['iron oxide', 'oxido de hierro', /\b(?:iron )?oxide|\boxido/u],
  ['ultramarine', 'ultramar', /\bultramar/u],
  ['lake', 'laca', /\b(?:lake|laca)\b/u],
];

/** "The pink one" beside a clay is the pink clay; undefined where no catalogue entry has that name. */
export function sameKind(before: string | undefined, hue: string): string | undefined {
  const kind = KINDS.find(([, , told]) => told.test(unaccented(before ?? '')));
  if (!kind) return undefined;
  const [en, es] = kind;
  return [`${hue} ${en}`, `${es} ${hue}`].find(name => colourantsMeant(name).length > 0);
}
const SPANISH_HUE =
  /^(?:roj|azul|verde|amarill|rosa|morad|blanc|negr|dorad|platead|naranja|violeta|marron|gris)/u;

/** What is called white alone is the pigment that makes it. */
const WHITE = /^(?:white|blanc[oa])$/u;
const WHITE_PIGMENT = 'titanium dioxide';

/** The colourant that a turn names in the place of the one before. */
const nameLaid = (before: string | undefined, { named, hues }: Slots): string | undefined => {
  if (named.length > 0) return named.length === 1 ? named[0] : undefined;
  const [hue, ...others] = hues;
  if (hue === undefined || others.length > 0) return undefined;
  return sameKind(before, hue) ?? (WHITE.test(hue) ? WHITE_PIGMENT : undefined);
};

const LIGHTER: Readonly<Record<string, string>> = {
  full: 'pastel',
  medium: 'pastel',
  pastel: 'tint',
  '50%': 'pastel',
};
const DARKER: Readonly<Record<string, string>> = {
  tint: 'pastel',
  pastel: 'medium',
  medium: 'full',
  '50%': 'full',
};
/** Deeper than full colour, which its ceiling may cap. */
const BEYOND = '150% of full';

/** The strength that a dose was told at: the usual one of its colourant where none was said. */
const strengthOf = ({ given: { strength, colourant } }: Laid): string => {
  const [meant] = colourant === undefined || strength !== undefined ? [] : colourantsMeant(colourant);
  return strength ?? (meant ? usualStrength(meant) : 'full');
};

function strengthLaid(before: string, { depth, strength }: Slots): string | undefined {
  if (strength !== undefined) return strength === 'double' ? '200%' : strength === 'half' ? '50%' : strength;
  if (depth === undefined) return undefined;
  return depth === 'lighter' ? (LIGHTER[before] ?? 'tint') : (DARKER[before] ?? BEYOND);
}

const given = (laid: Laid, changes: Readonly<Record<string, string | undefined>>): Laid | undefined => {
  const told = Object.entries(changes).filter((one): one is [string, string] => one[1] !== undefined);
  return told.length === 0 ? undefined : { ...laid, given: { ...laid.given, ...Object.fromEntries(told) } };
};

/** What a turn wants of a dose that the dose has no option for. */
const isForeignToDose = ({ percent, towards, region, named }: Slots): boolean =>
  percent !== undefined || towards !== undefined || region !== undefined || named.length > 1;

const dose: Change = (laid, slots) => {
  if (isForeignToDose(slots)) return undefined;
  const { colourant, portion } = laid.given;
  const name = nameLaid(colourant, slots);
  // A hue that the kind has not is a colour that is wished for; grey is little black.
  const isPale =
    slots.hues.length === 1 &&
    PALER.some(([deep, pale]) => deep.test(colourant ?? '') && pale.test(slots.hues[0]!));
  if (isPale) return given(laid, { strength: 'pastel', portion: portionLaid(portion, slots) });
  if (slots.hues.length > 0 && name === undefined) return matched(slots.hues.join(' '), laid, slots);
  // Of what lye destroys no amount is told: "same for carmine?" is answered with what becomes of it.
  if (name !== undefined && isLost(name))
    return { job: 'survives-lye', command: 'colourant check', given: { item: name } };
  return given(laid, {
    colourant: name,
    portion: portionLaid(portion, slots),
    strength: strengthLaid(strengthOf(laid), slots),
    carrier: slots.carrier,
  });
};

const isLost = (name: string): boolean => {
  const meant = colourantsMeant(name);
  return meant.length > 0 && meant.every(({ alkali }) => LOST.has(alkali.behaviour));
};
const LOST: ReadonlySet<string> = new Set(['destroyed', 'never']);

/** What little of a deep colour gives. */
const PALER: readonly (readonly [deep: RegExp, pale: RegExp])[] = [
  [/black|charcoal|carbon|negr/u, /^(?:grey|gray|gris)$/u],
  [/\bred\b|roj/u, /^(?:pink|rosa|rosado)$/u],
];

const matched = (target: string, { given: { portion } }: Laid, slots: Slots): Laid => {
  const part = portionLaid(portion, slots) ?? portion;
  return { job: 'mix', command: 'match', given: { target, ...(part !== undefined && { portion: part }) } };
};

const check: Change = (laid, slots) => {
  const { item } = laid.given;
  if (slots.region !== undefined) return laid;
  if (slots.times !== undefined || slots.depth !== undefined || slots.percent !== undefined) return undefined;
  const name = nameLaid(item, slots);
  if (name !== undefined) return { ...laid, given: { item: name } };
  if (slots.hues.length > 0 || item === undefined) return undefined;
  const portion = portionLaid(undefined, slots);
  const { carrier } = slots;
  if (portion === undefined && carrier === undefined) return undefined;
  return {
    job: carrier === undefined ? 'dose' : 'wet',
    command: 'dose',
    given: {
      colourant: item,
      ...(portion !== undefined && { portion }),
      ...(carrier !== undefined && { carrier }),
    },
  };
};

const DEEPER: Readonly<Record<'lighter' | 'darker', readonly [en: string, es: string]>> = {
  lighter: ['light', 'claro'],
  darker: ['dark', 'oscuro'],
};
const PALE_BEFORE =
  /^(?:very )?(?:light|pale|soft) | (?:muy )?(?:clar(?:[oa]|it[oa]|ic[oa]|in[oa])|palid[oa]|suave)$/u;
const DEEP_BEFORE = /^(?:very )?(?:dark|deep) | (?:muy )?oscur(?:[oa]|it[oa])$/u;

/** One step lighter or darker than the colour that was wished for: of a pale one darker is the plain one. */
function stepped(target: string, depth: 'lighter' | 'darker'): string {
  const [here, away] = depth === 'lighter' ? [PALE_BEFORE, DEEP_BEFORE] : [DEEP_BEFORE, PALE_BEFORE];
  const text = unaccented(target);
  if (away.test(text)) return text.replace(away, '');
  const plain = text.replace(here, '');
  const [en, es] = DEEPER[depth];
  const isFurther = plain !== text;
  if (SPANISH_HUE.test(plain)) return `${plain} ${isFurther ? 'muy ' : ''}${es}`;
  return `${isFurther ? 'very ' : ''}${en} ${plain}`;
}

const match: Change = (laid, slots) => {
  const { target, portion } = laid.given;
  if (slots.towards !== undefined && target !== undefined)
    return given(laid, { target: `${target} but more ${slots.towards}` });
  if (slots.percent !== undefined || slots.carrier !== undefined || slots.named.length > 0) return undefined;
  const deeper = target === undefined || slots.depth === undefined ? undefined : stepped(target, slots.depth);
  return given(laid, {
    target: slots.hues.length > 0 ? slots.hues.join(' ') : deeper,
    portion: portionLaid(portion ?? '1 cup', slots),
  });
};

const preview: Change = (laid, slots) => {
  const { mix, portion } = laid.given;
  if (isForeignToDose(slots) || slots.depth !== undefined || slots.strength !== undefined) return undefined;
  const name = mix?.includes('+') ? undefined : nameLaid(mix, slots);
  const amount = AMOUNT_AHEAD.exec(mix ?? '')?.[0] ?? '';
  return given(laid, {
    mix: name && `${amount}${name}`,
    portion: portionLaid(portion, slots),
  });
};
const AMOUNT_AHEAD = /^[\d.,/ ]+(?:tsps?|tbsps?|g|cdtas?|cdas?) /iu;

const shelf: Change = (laid, slots) => {
  const { amount, figure, named, hues } = slots;
  const item = nameLaid(laid.given.item, slots);
  if (item === undefined && named.length + hues.length > 0) return undefined;
  return given(laid, {
    item,
    amount: amount?.text ?? (figure === undefined ? undefined : withFigure(laid.given.amount ?? '', figure)),
  });
};

/** "And the blue?", of what is on the shelf. */
const shelfShown: Change = (laid, slots) => {
  const [hue, ...others] = slots.hues;
  const item = nameLaid(laid.given.item, slots) ?? (others.length === 0 ? hue : undefined);
  return item === undefined ? undefined : { ...laid, given: { item } };
};

/** What each command has a place for: a turn that tells anything else is laid over none. */
const PLACES: Readonly<Record<string, readonly (keyof Slots)[]>> = {
  dose: ['named', 'hues', 'amount', 'of', 'figure', 'times', 'share', 'depth', 'strength', 'carrier', 'unit'],
  'colourant check': ['named', 'hues', 'amount', 'of', 'figure', 'carrier', 'region'],
  match: ['hues', 'amount', 'of', 'figure', 'times', 'share', 'depth', 'strength', 'towards', 'unit'],
  preview: ['named', 'hues', 'amount', 'of', 'figure', 'times', 'share', 'unit'],
  plan: ['amount', 'of', 'figure', 'percent', 'times', 'unit'],
  'shelf show': ['named', 'hues'],
  'shelf add': ['named', 'hues', 'amount', 'figure'],
  'shelf use': ['named', 'hues', 'amount', 'figure'],
};
const isTold = (slot: unknown): boolean =>
  Array.isArray(slot) ? slot.length > 0 : slot !== undefined && slot !== false;
const hasPlace = (command: string, slots: Slots): boolean =>
  Object.entries(slots).every(
    ([key, slot]) => key === 'isMarked' || !isTold(slot) || PLACES[command]?.some(one => one === key),
  );

const CHANGES: Readonly<Record<string, Change>> = {
  dose,
  'colourant check': check,
  match,
  preview,
  'shelf show': shelfShown,
  'shelf add': shelf,
  'shelf use': shelf,
};

/** Share of full colour that a dose whose strength nobody told is at. */
const shareOf = (before: Laid): number => {
  const name = strengthOf(before);
  return isStrengthName(name) ? STRENGTH_SHARES[name] : 1;
};
const isStrengthName = (name: string): name is StrengthName => Object.hasOwn(STRENGTH_SHARES, name);

/**
 * The command of before with what the turn changes; undefined where it has no place for that. Two where the turn may mean either: half of a
 * dose is half the batter or half the colour. Pure.
 */
export function laidOver(before: Laid, slots: Slots): readonly Laid[] | undefined {
  const change = isOfLye(before) ? recipeLaid : CHANGES[before.command];
  const laid = hasPlace(before.command, slots) ? change?.(before, slots) : undefined;
  if (!laid) return undefined;
  const isEither = before.command === 'dose' && slots.times !== undefined && slots.amount === undefined;
  const strong = isEither
    ? given(before, { strength: `${Math.round(100 * shareOf(before) * slots.times!)}% of full` })
    : undefined;
  return strong && before.given.strength === undefined ? [laid, strong] : [laid];
}
