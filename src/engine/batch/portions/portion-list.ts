import { readPart } from '../../colour/reading/mix-text.ts';
import { refuseNoColour } from '../../hazards/no-colour/no-colour.ts';
import { plainText, readDecimal } from '../../quantities/number.ts';
import { USUAL } from '../../quantities/strength.ts';
import { MEASURES, type Measures } from '../../quantities/units.ts';
import { refuse } from '../../refusal.ts';
import { leadingBatter } from '../../text/amounts/leading-amount.ts';
import { sharesPhrase } from '../../text/amounts/shares/share-phrases.ts';
import { excerpt } from '../../text/excerpt.ts';
import type { CarrierAsk, ColourAsk, PortionAsk, PortionShare } from '../request.ts';
import { parseWetting } from './carrier.ts';

declare module '../../refusal.ts' {
  interface Reasons {
    'portion-without-amount': { text: string };
    'portions-many': { count: number; most: number };
    'portions-two-rests': Record<never, never>;
    'portion-colours-many': { text: string; most: number };
  }
}

const MOST_PORTIONS = 12;
const MOST_COLOURS = 5;
const REST = /^(?:the )?(?:rest|remainder|remaining|everything else|resto|lo demas|lo demás)\b/iu;
const PARTS = /^([\d.,]+)\s*(?:parts?|partes?)\b/iu;
const PERCENT = /^([\d.,]+)\s*(?:%|percent|por ciento)/iu;
const PLAIN = /^(?:plain|uncolou?red|natural|no colou?r|none|sin color|sin colorear|blanco natural)$/iu;
const UNSCENTED =
  /[\s,]*\b(?:unscented|without (?:fragrance|scent)|no (?:fragrance|scent)|sin (?:aroma|perfume|fragancia|olor))\b/iu;
const SCENTED = /[\s,]*\b(?:scented|with (?:fragrance|scent)|con (?:aroma|perfume|fragancia))\b/iu;

/**
 * Reads the split of a batter: portions apart by `;`, each a share (`2 cups`, `500 ml`, `500 g`, `2 parts`,
 * `25%`,
 * `rest`) and its colours with strength and carrier; an amount with a colour (`1/2 tsp`, `2 g`) is that much
 * in the whole portion,
 * unless it says `per cup`. As in
 * `2 cups ultramarine blue full in 1 Tbsp olive; 500 ml titanium dioxide medium + gold mica pastel in water;
 * rest plain
 * unscented`; also as people say it (`half blue half white`, `60/40 pink and purple`, `4 layers: red, orange,
 * yellow, green`). A carrier after the last colour serves all the colours before it that name none. A label
 * may stand in
 * front (`Sky: 2 cups ...`). English or Spanish. Throws a Refusal: `portion-without-amount`, `portions-many`,
 * `portions-two-rests`, `portion-colours-many`, or one of the amounts', strengths' or oils' own.
 */
export function parsePortions(text: string, measures?: Measures): readonly PortionAsk[] {
  const pieces = plainText(sharesPhrase(text))
    .split(';')
    .map(piece => piece.trim())
    .filter(piece => piece !== '');
  if (pieces.length > MOST_PORTIONS) refuse('portions-many', { count: pieces.length, most: MOST_PORTIONS });
  const portions = pieces.map(piece => readPortion(piece, measures));
  if (portions.filter(({ share }) => share.by === 'rest').length > 1) refuse('portions-two-rests', {});
  return portions;
}

function readPortion(piece: string, measures: Measures | undefined): PortionAsk {
  const label = /^([\p{L}][\p{L}\p{N} '-]{0,30}):\s*(.+)$/u.exec(piece);
  const name = label?.[1];
  const said = label?.[2] ?? piece;
  const scented = !UNSCENTED.test(said);
  const { share, rest } = readShare(said.replace(UNSCENTED, '').replace(SCENTED, '').trim(), measures);
  return { name, share, scented, colours: readColours(rest.replace(/^(?:of|de|:)\s+/iu, ''), measures) };
}

function readShare(text: string, measures: Measures | undefined): { share: PortionShare; rest: string } {
  const after = (match: RegExpExecArray) => text.slice(match[0].length).trim();
  const rest = REST.exec(text);
  if (rest) return { share: { by: 'rest' }, rest: after(rest) };
  const parts = PARTS.exec(text);
  if (parts) return { share: { by: 'parts', parts: positive(parts[1]!, text) }, rest: after(parts) };
  const percent = PERCENT.exec(text);
  if (percent)
    return { share: { by: 'percent', percent: positive(percent[1]!, text) }, rest: after(percent) };
  const head = leadingBatter(text, measures) ?? refuse('portion-without-amount', { text: excerpt(text) });
  const { amount } = head;
  const share: PortionShare =
    amount.measure === 'volume'
      ? { by: 'volume', millilitres: amount.millilitres }
      : { by: 'mass', grams: amount.grams };
  return { share, rest: head.rest };
}

function positive(written: string, text: string): number {
  const value = readDecimal(written)[0];
  return value !== undefined && value > 0 ? value : refuse('portion-without-amount', { text: excerpt(text) });
}

function readColours(text: string, measures: Measures | undefined): readonly ColourAsk[] {
  if (text === '' || PLAIN.test(text)) return [];
  const pieces = text.split(/\s*(?:\+|&|,(?!\d)|\band\b|\bmas\b|\by\b)\s*/iu).filter(piece => piece !== '');
  if (pieces.length > MOST_COLOURS)
    refuse('portion-colours-many', { text: excerpt(text), most: MOST_COLOURS });
  return withSharedCarrier(pieces.map(piece => readColour(piece, measures)));
}

function readColour(piece: string, measures: Measures | undefined): ColourAsk {
  refuseNoColour(piece);
  const wetted = /^(.+?)\s+(?:in|en)\s+(.+)$/iu.exec(piece);
  const carrier = wetted ? parseWetting(wetted[2]!, measures) : undefined;
  const { name, dose = USUAL } = readPart(wetted?.[1] ?? piece, measures ?? MEASURES.us);
  return { text: name, strength: dose, carrier };
}

/** One cup of liquid wets every colour that stands before it and names none; its amount is shared evenly. */
function withSharedCarrier(colours: readonly ColourAsk[]): readonly ColourAsk[] {
  const last = colours.at(-1)?.carrier;
  const bare = colours.filter(({ carrier }) => carrier === undefined).length;
  if (last === undefined || bare === 0) return colours;
  const own = colours.length - bare - 1;
  if (own > 0) return colours;
  const each: CarrierAsk = {
    ...last,
    millilitres: last.millilitres === undefined ? undefined : last.millilitres / colours.length,
  };
  return colours.map(colour => ({ ...colour, carrier: each }));
}
