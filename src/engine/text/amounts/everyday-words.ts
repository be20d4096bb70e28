import { knownOil } from '../../batch/oils/find-oil.ts';
import { colourantsMeant, colourantsNamed } from '../../colourants/find.ts';
import { spaced } from '../../over-lines.ts';
import { unitOfWord } from '../../quantities/unit-words.ts';
import { knowsColour } from '../colours/known-colours.ts';
import { distance } from '../spelling/edit-distance.ts';
import { COMMON_WORDS } from '../spelling/trade/trade-words.ts';
import { isEachWord, isPieceWord, isStopWord, isVesselWord, listed, words } from './stop-words.ts';

/** Words that change how much an amount beside them is: parts, manifolds, what is taken away, what it is counted by. */
const CHANGING = words(`
  half halves halved halfway mid double doubled doubling twice triple tripled thrice third thirds quarter
  quarters fifth fifths tenth tenths part parts piece pieces share
  less fewer minus plus except excluding excluded save without not nor never neither each every per times
  time between apart extra additional another other others more most
  imperial british forgot forgotten
  rest remainder bottom rim few several couple pair dozen dozens bit some any none nothing instead or else versus
  mitad medio media medios medias doble doblo dobla triple tercio tercios tercera cuarto cuartos cuarta quinto quinta parte partes pedazo trozo
  menos mas sin salvo excepto menor mayor cada veces vez entre aparte otro otra otros otras resto poco poca
  pocos pocas varios varias algo alguno alguna unos nada ninguno ninguna
  imperiales olvide olvido olvidaron
  par docena docenas nunca tampoco ni sino ambos ambas both
`);
/** What else goes into a pot, by weight too: an amount beside one of these may be of it. */
const WEIGHED = words(`
  lye naoh koh caustic soda potash water milk cream yogurt yoghurt beer wine juice tea coffee honey sugar
  salt wax beeswax fragrance scent perfume essential vinegar acid alcohol vodka glycerin glycerine butter
  sosa lejia potasa caustica agua leche crema yogur cerveza vino jugo zumo te cafe miel azucar sal cera
  fragancia esencia perfume esencial vinagre acido alcohol glicerina manteca mantequilla
`);

/** The eleven basic colour terms of Berlin and Kay 1969, in both languages: "for the white" says whose the amount is. */
export const BASIC_COLOURS = words(
  spaced`
    white black red green yellow blue brown purple pink orange grey gray blanco blanca negro negra rojo
    roja verde amarillo amarilla azul marron cafe morado morada rosa naranja gris
  `,
);

/** Whether a word may change the amount that it stands beside, or tell what else the amount is of. */
export const mayChangeAmount = (word: string): boolean => {
  const plain = listed(word);
  // "115 g bars": how many?
  const isPiece = (isPieceWord(plain) && !isVesselWord(plain)) || isEachWord(plain);
  return isPiece || CHANGING.has(plain) || WEIGHED.has(plain);
};

/**
 * Whether a word is one of everyday speech that changes no amount beside it and names nothing that is weighed: of the openly
 * licensed list of common words, or one of the words that stand in any sentence.
 */
export function isEverydayWord(word: string): boolean {
  if (isStopWord(word)) return true;
  const plain = listed(word);
  if (mayChangeAmount(plain) || (plain.length > 2 && unitOfWord(plain) !== undefined)) return false;
  return COMMON_WORDS.has(plain) || COMMON_WORDS.has(plain.replace(/'\p{L}{1,2}$/u, ''));
}

/** Words in which a slip might hide: those shorter are too near to others. */
const SLIPPED: readonly string[] = [...CHANGING, ...WEIGHED].filter(word => word.length > 4);
const SHORTEST_SLIP = 5;

/**
 * Whether a word changes no amount of batter that it stands beside, of whatever language or spelling: one that is no unit, no oil, no
 * colourant, nothing that is weighed, and no slip of the finger away from what may change an amount.
 */
export function isHarmlessWord(word: string): boolean {
  if (isEverydayWord(word) || isVesselWord(word)) return true;
  const plain = listed(word);
  if (mayChangeAmount(plain) || (plain.length > 2 && unitOfWord(plain) !== undefined)) return false;
  if (BASIC_COLOURS.has(plain)) return true;
  if (plain.length > 3 && (knownOil(plain) !== undefined || colourantsNamed(plain).length > 0)) return false;
  if (knowsColour(plain)) return true;
  if (plain.length > 3 && colourantsMeant(plain).length > 0) return false;
  return plain.length < SHORTEST_SLIP || !SLIPPED.some(one => distance(one, plain) <= 1);
}
