import { colourantsMeant } from '../../src/engine/colourants/find.ts';
import { barredIn } from '../../src/engine/hazards/index.ts';
import { substanceNamed } from '../../src/engine/stability/names.ts';
import { plantNamed } from '../../src/engine/stability/plant-classes.ts';
import { apart, colourNamed } from '../../src/engine/text/colours/colour-name.ts';
import { fold } from '../../src/engine/text/fold.ts';
import { respelt } from '../../src/engine/text/spelling/trade/respelt.ts';

/** Two colours this near (CIEDE2000) are one person's idea of the other's word. */
export const NEAR = 20;

/** Two numbers that differ by no more than 1.2 %, the rounding of a label. */
export const near = (got: number, wanted: unknown) =>
  Math.abs(got - Number(wanted)) <= 0.012 * Math.abs(Number(wanted));

/** Two names of one thing, as far as the catalogue and the list of substances know it. */
export function sameThing(got: string, wanted: string): boolean {
  if (fold(got) === fold(wanted)) return true;
  const ids = (name: string) => new Set(colourantsMeant(name).map(({ id }) => id));
  // A command puts slips right where the name as it stands is unknown.
  const [a, b] = [ids(colourantsMeant(got).length > 0 ? got : respelt(got).text), ids(wanted)];
  if (b!.size > 0 && [...b!].some(id => a!.has(id))) return true;
  const [plant, same] = [plantNamed(fold(got)), plantNamed(fold(wanted))];
  if (plant !== undefined && plant.plant === same?.plant) return true;
  const [one, other] = [substanceNamed(got), substanceNamed(wanted)];
  if (one !== undefined && one === other) return true;
  // Names of one class of colours that stay out of soap, such as food colouring in two languages.
  const [kept, out] = [barredIn(got), barredIn(wanted)];
  if (kept !== undefined && !kept.hue && kept.reason === out?.reason) return true;
  return fold(got).includes(fold(wanted)) || (fold(wanted).includes(fold(got)) && fold(got).length > 3);
}

const PLAIN = /^(?:plain|uncolou?red|natural|base|none|no colou?r|sin color(?:ear)?)$/iu;

/** One colour in two languages, or two words for it. */
export function sameColour(got: string, wanted: string): boolean {
  if (PLAIN.test(got) && PLAIN.test(wanted)) return true;
  if (fold(got) === fold(wanted) || sameThing(got, wanted)) return true;
  const [a, b] = [colourNamed(respelt(got).text), colourNamed(wanted)];
  return a !== undefined && b !== undefined && apart(a.hex, b.hex) <= NEAR / 2;
}
