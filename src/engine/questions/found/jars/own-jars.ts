import { knownOil } from '../../../batch/oils/find-oil.ts';
import { colourantsNamed } from '../../../colourants/find.ts';
import { unbroken } from '../../../over-lines.ts';
import { COMMON_WORDS, TRADE_WORDS } from '../../../text/spelling/trade/trade-words.ts';
import { unaccented } from '../../../text/unaccented.ts';

/** Stand-ins that a reader of questions knows for colourants, and nothing else. */
const STAND_INS = [
  'gold mica',
  'red iron oxide',
  'ultramarine blue',
  'chromium oxide green',
  'rose clay',
] as const;
const HUE_NEXT = new RegExp(
  unbroken`
    ^\s*(?:blue|green|red|pink|purple|violet|yellow|orange|brown|grey|gray|white|black|azul|verde|roj[oa]|
    rosa|morad[oa]|amarill[oa]|naranja|marron|gris|blanc[oa]|negr[oa])\b
  `,
  'u',
);

/** A question in which jars of one's own stand under names that every reader knows, and the way back. */
export type Questioned = {
  readonly text: string;
  /** Puts the jars' own names where their stand-ins are, in any text or plain value made of texts. */
  readonly restore: <Value>(value: Value) => Value;
};

/**
 * Finds jars by their own names in a question. A name of one common word counts only as it is written on the jar ("Sky",
 * not "sky"), and not before a hue ("sky blue"); names that the catalogue has stay. Pure.
 * @example withOwnJars('how much Sky for 2 cups', ['Sky']).text // 'how much gold mica for 2 cups'
 */
export function withOwnJars(question: string, names: readonly string[]): Questioned {
  const swaps: { readonly name: string; readonly stand: string }[] = [];
  const free = STAND_INS.filter(one => !unaccented(question).includes(one));
  let text = question;
  for (const name of [...names].sort((a, b) => b.length - a.length)) {
    const stand = free[swaps.length];
    if (stand === undefined) break;
    // To look for a name is quick, to look it up in the catalogue is not, and a shelf may hold hundreds.
    const at = name.length < 3 ? undefined : placeOf(text, name);
    if (at === undefined || colourantsNamed(name).length > 0 || knownOil(name) !== undefined) continue;
    text = `${text.slice(0, at)}${stand}${text.slice(at + name.length)}`;
    swaps.push({ name, stand });
  }
  const restored = (value: string) =>
    swaps.reduce((all, { name, stand }) => all.replaceAll(stand, name), value);
  return { text, restore: value => (swaps.length === 0 ? value : mapTexts(value, restored)) };
}

function placeOf(text: string, name: string): number | undefined {
  const [plain, sought] = [unaccented(text), unaccented(name)];
  // Letters that fold to several would shift every place behind them.
  if (plain.length !== text.length || sought.length !== name.length) return undefined;
  const isCommon = !sought.includes(' ') && (COMMON_WORDS.has(sought) || TRADE_WORDS.has(sought));
  for (let at = plain.indexOf(sought); at >= 0; at = plain.indexOf(sought, at + 1)) {
    const [before, after] = [plain[at - 1] ?? ' ', plain.slice(at + sought.length)];
    const isWhole = !/[\p{L}\p{N}]/u.test(before) && !/^[\p{L}\p{N}]/u.test(after);
    const isAsWritten = !isCommon || (text.slice(at, at + name.length) === name && at > 0);
    if (isWhole && isAsWritten && !HUE_NEXT.test(after)) return at;
  }
  return undefined;
}

function mapTexts<Value>(value: Value, change: (text: string) => string): Value {
  if (typeof value === 'string') return change(value) as Value;
  if (Array.isArray(value)) return value.map(one => mapTexts(one, change)) as Value;
  if (typeof value !== 'object' || value === null || Object.getPrototypeOf(value) !== Object.prototype)
    return value;
  return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, mapTexts(one, change)])) as Value;
}
