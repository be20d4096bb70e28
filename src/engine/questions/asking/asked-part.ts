import { unbroken } from '../../over-lines.ts';
import { wordCount } from '../../text/word-count.ts';
import { tellsOfHurt } from '../lye/topics/nearest/hurt.ts';
import { asksIn } from './asks.ts';
import { isTalk, speaksOfTrade } from './of-trade.ts';
import { piecesOf } from './pieces.ts';

/** What points to a sentence before it, in lower case without accents. */
const POINTS = new RegExp(
  unbroken`
    (?<!\p{L})(?:it|its|it's|them|they|they're|that|those|these|this|one|ones|he|she|him|her|some|both|mine|
    lo|los|las|le|les|eso|esos?|esas?|est[aeo]s?|ell[oa]s?|l[oa]s? (?:de|que)|\p{L}{3,}(?:ar|er|ir|o|e|
    a)l[oa]s?)(?!\p{L})
  `,
  'iu',
);

/** Fewer words ask of what stands before them: "¿Por qué?", "any ideas?". */
const SHORT = 3;

/**
 * A text without its sentences of talk: those which greet or tell of family, weather and the day, and neither
 * ask nor speak of the trade. What points back to a sentence of the trade is kept with
 * it, and what a sentence that asks and names nothing points to. Where nothing of the trade would be left,
 * where somebody is hurt, and where
 * there is one sentence, the text stays as it is. For reading what is asked; what keeps from harm reads the
 * whole text. Pure.
 * @example askedPart('Rained all day. How much mica for 500 g of oils?') // 'How much mica for 500 g of
 * oils?'
 */
export function askedPart(text: string): string {
  const pieces = piecesOf(text);
  if (pieces.length < 2 || tellsOfHurt(text)) return text;
  const said = pieces.map(piece => ({
    asks: asksIn(piece),
    isOfTrade: speaksOfTrade(piece),
    points: POINTS.test(piece),
    isShort: wordCount(piece) < SHORT,
  }));
  const isTold = said.map(({ asks, isOfTrade }, at) => asks || isOfTrade || !isTalk(pieces[at]!));
  if (!said.some(({ isOfTrade }) => isOfTrade)) return text;
  const kept = pieces.filter((_, at) => {
    if (isTold[at]) return true;
    const [before, next] = [said[at - 1], said[at + 1]];
    const pointsBack = said[at]!.points && (before?.isOfTrade ?? false);
    const isPointedTo = next?.asks && ((!next.isOfTrade && next.points) || next.isShort);
    return pointsBack || isPointedTo;
  });
  return kept.length === pieces.length ? text : kept.join('').trim();
}

/** The sentences of a text that ask; undefined where none does, or all do. Pure. */
export function askingPart(text: string): string | undefined {
  const pieces = piecesOf(text);
  const asking = pieces.filter(asksIn);
  return asking.length === 0 || asking.length === pieces.length ? undefined : asking.join('').trim();
}
