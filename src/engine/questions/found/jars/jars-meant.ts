import { colourantById } from '../../../colourants/catalogue.ts';
import { fold } from '../../../text/fold.ts';

/** English and Spanish stems of one hue; the first is looked for in the catalogue's own name of a jar. */
const HUES: readonly RegExp[] = [
  /\bblues?\b|\bazul/u,
  /\breds?\b|\broj[oa]/u,
  /\bgreens?\b|\bverde/u,
  /\byellows?\b|\bamarill/u,
  /\b(?:violets?|purples?|lilacs?)\b|\b(?:violeta|morad|lila)/u,
  /\bpinks?\b|\brosas?\b/u,
  /\boranges?\b|\bnaranja/u,
  /\bbrowns?\b|\bmarron/u,
  /\bblacks?\b|\bnegr[oa]/u,
  /\bwhites?\b|\btitanium\b|\bblanc[oa]|\btitanio\b/u,
  /\bgolds?\b|\bdorad[oa]|\boro\b/u,
];

/** A jar of a member's own: its name, and which of the catalogue is in it. */
type OwnJar = { readonly name: string; readonly colourant?: string | undefined };

/** The jars of the hue that a question speaks of: "my two blues". */
function jarsOfHue<Own extends OwnJar>(question: string, items: readonly Own[]): readonly Own[] {
  const hue = HUES.find(one => one.test(fold(question)));
  if (!hue) return [];
  return items.filter(({ name, colourant }) => {
    const names = colourant === undefined ? undefined : colourantById(colourant)?.names;
    return names !== undefined && hue.test(fold([name, ...Object.values(names)].join(' ')));
  });
}

/** The jars whose whole names stand in a question. */
function jarsNamed<Own extends OwnJar>(question: string, items: readonly Own[]): readonly Own[] {
  const plain = (text: string) =>
    ` ${fold(text)
      .replace(/[^\p{L}\p{N}]+/gu, ' ')
      .trim()} `;
  const asked = plain(question);
  return items.filter(({ name }) => plain(name).trim() !== '' && asked.includes(plain(name)));
}

/** Jars of one's own that are to be compared: those named, else, where fewer than two `names` of the catalogue were told, those of one hue. Pure. */
export function jarsMeantIn<Own extends OwnJar>(
  question: string,
  items: readonly Own[],
  names: readonly string[],
): readonly Own[] {
  const own = jarsNamed(question, items);
  if (own.length > 1) return own;
  return names.length < 2 ? jarsOfHue(question, items) : [];
}
