import { colourantsNamed } from '../../colourants/find.ts';
import { foldedColour, isColourWord } from './folded-colours.ts';

const BEFORE =
  /^(?:very |muy )?(?:light|dark|pale|bright|deep|hot|soft|dusty|medium|mid|baby|neon|pastel|dirty|muted|warm|cool|plain|true) /u;
const AFTER =
  / (?:claro|clara|oscuro|oscura|pastel|fuerte|palido|palida|suave|intenso|intensa|vivo|viva|bebe|viejo|neon|medio)$/u;
const PLAIN = /^(?:plain|uncolou?red|natural|sin color|sin colorear|base|no colou?r|none)$/u;

/** Whether some words together name one colour or one colourant, as lists of layers and portions do. */
export function knowsColour(name: string): boolean {
  const said = foldedColour(name);
  if (PLAIN.test(said) || isColourWord(said)) return true;
  const bare = said.replace(BEFORE, '').replace(AFTER, '');
  return (bare !== said && isColourWord(bare)) || colourantsNamed(name).length > 0;
}
