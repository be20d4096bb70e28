import type { Facts } from './facts.ts';
import type { Words } from './words-of.ts';

/** What a rate of its own is told to where nothing else is. */
export const POUND_OF_OILS = '1 lb oils';
const KILO_OF_OILS = '1 kg oils';
const LITRE = '1 litre';

/** "Mica per pound", "x libra", "ppo": how much is asked of one of them, which is oils where nothing tells; a litre is of batter. */
const EACH =
  /(?<!\p{L})(?:(?:per|por|x|each|cada) (?:(?:1|one|una?) )?(lb|pound|libra|kilo|kg|lit(?:ro|re|er))s?|(ppo))(?!\p{L})/u;

/** A kilo of batter is no kilo of oils: about two thirds of it. */
const EACH_OF_BATTER =
  /(?<!\p{L})(?:lb|pound|libra|kilo|kg)s? (?:of |de )?(?:(?:my|the|la|mi|raw) )?(?:batter|soap|mix(?:ture)?|masa|mezcla|batido|jabon|pasta)(?!\p{L})/u;

/** The facts with the pound, kilo or litre that a dose is asked for, where no portion, rate or powder is told. Pure. */
export const withRateAsked = (facts: Facts, { text }: Words): Facts => {
  if (facts.portion !== undefined || facts.strength !== undefined || facts.powder !== undefined) return facts;
  const [, unit, ppo] = EACH.exec(text) ?? [];
  if (unit === undefined && ppo === undefined) return facts;
  if (unit?.startsWith('lit')) return { ...facts, portion: LITRE };
  const each = /^k/u.test(unit ?? '') ? KILO_OF_OILS : POUND_OF_OILS;
  return { ...facts, portion: EACH_OF_BATTER.test(text) ? each.replace('oils', 'batter') : each };
};
