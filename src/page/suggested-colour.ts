import { colourantById } from '../engine/colourants/catalogue.ts';
import { colourantsNamed } from '../engine/colourants/find.ts';
import type { Suggested } from './model.ts';

/**
 * The colour of what is suggested, `#rrggbb`, where its value or its name is one of the catalogue's; of a mix that of its
 * last part, which is the one being typed. A jar by a name of its owner's has none: the page does not know what it holds.
 */
export function suggestedColour({ name, value }: Suggested): string | undefined {
  const known = typeof value === 'string' ? colourantById(value) : undefined;
  if (known) return known.hex;
  const last = String(name).split(/[+,]/).at(-1)?.trim() ?? '';
  return last === '' ? undefined : colourantsNamed(last)[0]?.hex;
}
