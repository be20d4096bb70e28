import { unbroken } from '../../../../over-lines.ts';

/*
 * What a message says of its own recipe that leaves it open, whatever else stands in it: a page that is torn, ounces by the lines of a jug, a
 * total with water and lye in it, a scale that shows another weight, bar or liquid (general knowledge of both languages, no source).
 */

const TORN = unbroken`
  (?:page|sheet|paper|corner|bottom|rest) (?:of it )?(?:is|was|got|has been) (?:torn|ripped|missing|gone|burnt|cut off)|torn (?:page|off|sheet)|
  (?:hoja|pagina|papel|esquina) (?:\p{L}+ )?(?:esta|estaba|quedo) (?:rot[oa]|cortad[oa]|arrancad[oa]|quemad[oa])|
  (?:aqui|ahi) se (?:corta|rompe|borra)
`;
const BY_LINES = unbroken`
  \d ?(?:oz|ounces?|onzas?)(?!\p{L}).{0,160}?(?<!\p{L})(?:(?:measuring|glass|baby|feeding)? ?(?:jug|cup|beaker|bottle)|jarra|biberon|vaso|
  taza medidora)(?!\p{L}).{0,40}?(?<!\p{L})(?:side|lines?|marks?|markings|says|scale on|rayitas?|rayas?|marcas?|lado|dice)(?!\p{L})
`;
const WITH_WATER = unbroken`
  (?:with|including|incl|counting|con|incluid[oa]s?|incluyendo|contando) (?:all )?(?:the |el |la )?(?:water and (?:the )?lye|lye and (?:the )?water|
  agua y (?:la )?(?:sosa|soda|lejia)|(?:sosa|soda|lejia) y (?:el )?agua)(?: (?:in|included|dentro|incluid[oa]s))?
`;
const SHOWS_ELSE = unbroken`
  (?:scale|bascula|balanza|peso).{0,50}?(?<!\p{L})(?:says|shows|reads|gives|dice|marca|da|pone)(?!\p{L}).{0,16}?(?<!\p{L})(?:something else|another|
  different|otra cosa|otro peso|distinto|diferente)
`;
const BAR_OR_LIQUID = unbroken`
  (?:liquid or (?:a )?bar|bars? or (?:a )?liquid|liquid[oa] o (?:en )?(?:barra|pastilla|solido)|(?:barra|pastilla|solido) o liquid[oa])
`;
/** "Kilo y 300 gramos": a kilo without its figure is lost where weights are read. */
const BARE_KILO = String.raw`kilo y \d{2,3} ?(?:g|gr|grs|gramos)`;
const OPEN = new RegExp(
  String.raw`(?<!\p{L})(?:${TORN}|${WITH_WATER}|${SHOWS_ELSE}|${BAR_OR_LIQUID})(?!\p{L})|(?<![\d.,])${BY_LINES}|(?<![\p{L}\d] ?)${BARE_KILO}(?!\p{L})`,
  'u',
);

/** The words that leave a recipe open; undefined where none do. Takes plain words. Pure. */
export const leftOpenIn = (plain: string): string | undefined => OPEN.exec(plain)?.[0];
