import { unbroken } from '../../over-lines.ts';
import type { Count, Some } from './item.ts';

const PIECES = new RegExp(
  unbroken`
    ^(?:bars?|soaps?|cakes?|loaves|logs?|mou?lds?|slabs?|rounds?|hearts?|wells?|cavit(?:y|ies)|slots?|
    holes?|cells?|pieces?|pcs?|pz|pucks?|squares?|cubes?|stars?|flowers?|roses|shells?|testers?|samples?|
    minis?|blocks?|bricks?|guest|batches|barras?|barritas?|pastillas?|jabones|jaboncitos?|moldes?|
    moldecitos?|panes|panecitos|huecos?|huequitos|cavidad(?:es)?|piezas?|unidad(?:es)?|cubitos|estrellas|
    estrellitas|corazones|corazoncitos|flores|florecitas|conchas|tabletas|hogazas|bloques?|lotes|tandas|
    figuritas|moldecillos)$
  `,
  'u',
);
const VESSELS = new RegExp(
  unbroken`
    ^(?:jugs?|pots?|bowls?|containers?|beakers?|jars?|tubs?|pitchers?|buckets?|mugs?|glasses|bottles?|
    jarras?|jarritas?|vasos?|vasitos?|tazones|cuencos?|recipientes?|ollas?|ollitas?|potes?|tarros?|
    tarritos?|botes|cubetas?|baldes?|frascos?|botellas?|envases?)$
  `,
  'u',
);
const PARTS = new RegExp(
  unbroken`
    ^(?:layers?|colou?rs?|shades?|parts?|portions?|pours?|sections?|stripes?|tones|hues|thirds|quarters|
    halves|capas?|colores|tonos|partes|porciones|franjas|tramos|rayas)$
  `,
  'u',
);
/** Between a count and what it counts: "6 wee wells", "4 equal containers". */
const KIND = new RegExp(
  unbroken`
    ^(?:silicone|silicon|wee|small|little|tiny|mini|big|large|round|square|equal|even|identical|individual|
    separate|guest|hand|travel|sample|test|heart|star|flower|rose|plastic|soap|different|more|same|lil|of|
    de|las|los|my|mis|the|nice|chunky|skinny|fat|thin|fine)$
  `,
  'u',
);

/** Whether a word names soap or what shapes it. */
export const isPiece = (word: string): boolean => PIECES.test(word);

type Noun = { readonly of: Count['of']; readonly noun: string; readonly to: number };

/** What is counted behind a figure; undefined where nothing that is known stands there. */
function nounAt(words: readonly string[], from: number): Noun | undefined {
  for (let at = from; at < from + 3; at += 1) {
    const word = words[at] ?? '';
    const of = PIECES.test(word)
      ? 'pieces'
      : VESSELS.test(word)
        ? 'vessels'
        : PARTS.test(word)
          ? 'parts'
          : undefined;
    // "6 soap bars": the last noun of a run is what is counted.
    if (of && !(KIND.test(word) && PIECES.test(words[at + 1] ?? ''))) return { of, noun: word, to: at + 1 };
    if (!KIND.test(word)) return undefined;
  }
  return undefined;
}

const MOST = 300;

/** So many pieces, vessels or parts; "6-cavity". */
export function countAt(words: readonly string[], at: number): Count | undefined {
  const word = words[at] ?? '';
  const [, glued, noun = ''] = /^(\d{1,3})-(\p{L}+)$/u.exec(word) ?? [];
  if (glued !== undefined && PIECES.test(noun))
    return { is: 'count', of: 'pieces', count: Number(glued), noun, from: at, to: at + 1, text: word };
  if (!/^\d{1,3}$/u.test(word) || Number(word) < 2 || Number(word) > MOST) return undefined;
  const found = nounAt(words, at + 1);
  return (
    found && {
      is: 'count',
      of: found.of,
      count: Number(word),
      noun: found.noun,
      from: at,
      to: found.to,
      text: words.slice(at, found.to).join(' '),
    }
  );
}

const OF_THEM = new RegExp(
  unbroken`
    ^(?:of|o|de|d|out of) (?:them|em|'em|dem|those|these|the (?:wells|bars|cavities|holes|slots|moulds|
    molds|soaps|pieces|containers|jugs|pots|parts|lot)|the(?= \d{1,3} )|los(?= \d{1,3} )|las(?= \d{1,3} )|
    ellos|ellas|esos|esas|estos|estas|los (?:huecos|moldes|jabones|recipientes|vasos)|las (?:cavidades|
    barras|pastillas|piezas|jarras|partes))(?![\p{L}])
  `,
  'u',
);
const ONE = /^(?:exactly |just |only |solo |nada mas |nomas )?(?:one|un[oa]|1)(?= (?:of|o|de|d) )/u;
/** "One is blue", "2 van con espirulina": of what was counted before. */
const DO =
  /^(?:only |just |solo |nada mas |nomas )?(one|un[oa]|\d{1,2}) (?:is|are|gets?|goes|go|will|receives?|van?|le va|llevan?|lleva)(?= )/u;
const ALL = new RegExp(
  unbroken`
    ^(?:all(?: of)? (?:them|em|'em|dem|those|these|\d{1,3}|ah dem|the (?:bars|wells|cavities|lot))|
    in all(?: ah)? dem|every (?:one|bar|well|cavity)|tod[oa]s(?: (?:ellos|ellas|los|las|de un))?|
    toas)(?![\p{L}])
  `,
  'u',
);

/** How many of what was counted: "3 of them", "exactly one of them", "all 12". */
export function someAt(words: readonly string[], at: number): Some | undefined {
  const rest = words.slice(at, at + 8).join(' ');
  const all = ALL.exec(rest)?.[0];
  if (all !== undefined)
    return { is: 'some', count: 'all', from: at, to: at + all.split(' ').length, text: all };
  const done = DO.exec(rest);
  if (done)
    return {
      is: 'some',
      count: /^\d/u.test(done[1]!) ? Number(done[1]) : 1,
      from: at,
      to: at + done[0].split(' ').length,
      text: done[0],
    };
  const one = ONE.exec(rest)?.[0];
  const head = one ?? /^\d{1,3}(?= )/u.exec(rest)?.[0];
  if (head === undefined) return undefined;
  const tail = OF_THEM.exec(rest.slice(head.length + 1))?.[0];
  if (tail === undefined) return undefined;
  const text = `${head} ${tail}`;
  return {
    is: 'some',
    count: one === undefined ? Number(head) : 1,
    from: at,
    to: at + text.split(' ').length,
    text,
  };
}
