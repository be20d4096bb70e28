import { unbroken } from '../../../../over-lines.ts';
import type { Item, Name } from '../items/item.ts';
import { isName, isOil, type Part } from '../settling/parts.ts';

/** What oils are weighed, melted and mixed in; moulds and trays take the batter of one pot, and are none. */
const VESSEL = unbroken`
  (?:bowls?|pots?|pans?|saucepans?|jugs?|buckets?|pails?|tubs?|beakers?|basins?|cauldrons?|crocks?|kettles?|
  cups?|mugs?|cookers?|dish|dishes|bol|boles|bowl|cuencos?|ollas?|ollita|cazos?|cazuelas?|perolas?|jarras?|
  cubos?|cubetas?|baldes?|tinas?|calderos?|tazones|tazon|vasijas?)
`;
/** What parts one vessel from the next: size, stuff, colour, place in a row. */
const WHICH = unbroken`
  (?:big|bigger|biggest|large|larger|small|smaller|smallest|little|tiny|wide|deep|tall|steel|stainless|
  metal|enamel|glass|plastic|wooden|copper|clay|iron|blue|red|green|white|black|yellow|pink|grey|gray|brown|
  old|new|first|second|third|left|right|left-hand|right-hand|back|front|top|bottom|grande|chic[oa]|
  chiquit[oa]|pequen[oa]|mediano|median[oa]|azul|roj[oa]|verde|blanc[oa]|negr[oa]|amarill[oa]|vieja|viejo|
  nuev[oa]|primer[oa]?|segund[oa]|tercer[oa]?|izquierd[oa]|derech[oa]|metalic[oa])
`;
/** Rooms and houses: what stands in one is in no pot that stands in another. */
const ROOM = unbroken`
  (?:(?<=(?:at|in|en) (?:(?:the|my|our|la|el|mi|casa de) )?)(?:home|house|kitchen|cellar|garage|shed|school|
  church|shop|store|barn|car|van|office|work|room|cottage|farm|casa|cocina|taller|escuela|colegio|tienda|
  bodega|garaje|trabajo|iglesia|oficina|finca|rancho|cuarto))
`;
/** "Pot A", "tub one". */
const LABEL = `(?: (?:${WHICH}|[abc]|one|two|three|uno|dos|tres|[1-3])(?![\\p{L}\\d])(?! (?:#|\\p{L})))?`;
const MENTION = new RegExp(
  unbroken`
    (?<![\p{L}'-])(?<before>(?:${WHICH} )*)(?:(?:mixing|soap|stock|slow|melting|de (?:acero|vidrio|barro|
    plastico|metal)) )*(?<vessel>${VESSEL}|${ROOM})(?![\p{L}'-])(?<behind>(?: ${WHICH}(?!\p{L}))?${LABEL})
  `,
  'gu',
);
type Vessel = { readonly noun: string; readonly which: string; readonly text: string };

const vesselsIn = (said: string): readonly Vessel[] =>
  [...said.matchAll(MENTION)].map(({ groups, 0: text }) => ({
    text,
    noun: groups!.vessel!.replace(/(?:e?s)$/u, ''),
    which: [groups!.before, groups!.behind].join(' ').trim(),
  }));
/** "In the green one", "en la verde": of the kind that was named before. */
const SAME_KIND = new RegExp(
  `(?<!\\p{L})(?:in|into|for|en|a|para|al)(?: (?:the|my|la|el|mi))? (?<which>${WHICH})(?: one)?(?= *(?:$|[#:,\\d]))`,
  'u',
);
/** "The pot" may be "the big pot". */
const mayBeOne = (a: Vessel, b: Vessel): boolean =>
  a.noun === b.noun && (a.which === b.which || a.which === '' || b.which === '');
function sameKind(items: readonly Item[], before: Vessel | undefined): Vessel | undefined {
  const found = before && SAME_KIND.exec(said(items));
  return found ? { noun: before.noun, which: found.groups!.which!, text: found[0].trim() } : undefined;
}
const said = (items: readonly Item[]): string =>
  items
    .map(item => (isName(item) || (item.is === 'amount' && item.unit !== undefined) ? '#' : item.text))
    .join(' ');

/** What holds an oil, too, but is two for one recipe as often: told as another one it is another pot. */
const HOLDER = unbroken`
  (?:${VESSEL}|tins?|cans?|jars?|vats?|bins?|bottles?|containers?|jarros?|jarritas?|recipientes?|trastes?|
  fuentes?|latas?|frascos?|botes?|perol(?:es)?|barrenos?|palanganas?|bateas?|marmitas?|pocillos?)
`;
const ONE_MORE =
  '(?:other|another|second|2nd|different|separate|otr[oa]s?|segund[oa]|distint[oa]|diferente|apart[oa])';
/** "In another pot", "al otro balde"; "in the other", where nothing is named or what goes in follows. */
const ANOTHER = new RegExp(
  `(?<![\\p{L}'-])${ONE_MORE} (?:${WHICH} )*(?:(?:mixing|soap|stock|slow|melting) )*${HOLDER}(?![\\p{L}'-])` +
    unbroken`
      |(?<!\p{L})(?:(?:in|into|to|for) (?:the (?:other|second)|another|a (?:second|separate))(?: one)?|
      (?:en|a|para) (?:(?:la|el|una?) )?(?:otr[oa]|segund[oa])|al (?:otro|segundo))(?= *(?:$|\d|:))
    `,
  'u',
);
/** What is said of a part, its weights as they stand. */
const weighedAs = (items: readonly Item[]): string =>
  items.map(item => (isName(item) ? '#' : item.text)).join(' ');

/** The oil of the clause that names another vessel; where that names none, the one which the sentence tells next, or told last. */
function inAnother(parts: readonly Part[]): Apart | undefined {
  for (const [at, part] of parts.entries()) {
    const [text] = ANOTHER.exec(weighedAs(part.items)) ?? [];
    if (text === undefined) continue;
    const isBeside = (one: Part) => one.sentence === part.sentence;
    const own = part.items.find(isOil);
    // "Another pot for the water".
    if (!own && part.items.some(isName)) continue;
    const next = parts.slice(at + 1).filter(isBeside);
    const before = parts.slice(0, at).filter(isBeside).toReversed();
    const name = own ?? [...next, ...before].flatMap(({ items }) => items).find(isOil);
    if (name) return { name, text };
  }
  return undefined;
}

type Apart = { readonly name: Name; readonly text: string };

/**
 * An oil that stands in another vessel than one before it, or in one of which two are told apart, and that vessel: each has a lye of
 * its own. Undefined where all may be in one. Takes the parts of a line. Pure.
 */
export function apart(parts: readonly Part[]): Apart | undefined {
  const another = inAnother(parts);
  if (another) return another;
  const held: { readonly vessel: Vessel; readonly name: Name }[] = [];
  for (const { items } of parts) {
    const name = items.find(isOil);
    const [vessel = sameKind(items, held.at(-1)?.vessel)] = vesselsIn(said(items));
    if (!name || !vessel) continue;
    if (held.some(one => !mayBeOne(one.vessel, vessel))) return { name, text: vessel.text };
    held.push({ vessel, name });
  }
  // "The small bowl is for the biscuits", where the oils are in the big one.
  const others = parts
    .filter(
      ({ items }) => !items.some(isOil) && !items.some(item => isName(item) && item.known !== 'any-oil'),
    )
    .flatMap(({ items }) => vesselsIn(said(items)));
  for (const other of others) {
    const far = held.find(({ vessel }) => vessel.noun === other.noun && !mayBeOne(vessel, other));
    if (far) return { name: far.name, text: other.text };
  }
  return undefined;
}
