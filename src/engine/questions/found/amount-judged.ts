import type { Facts } from './facts.ts';

const TOO_MUCH =
  /\b(?:too (?:much|many|little)|enough|overdo\w*|demasiad[oa]s?|me (?:he pasado|pas[eé])|basta|alcanza)(?!\p{L})/iu;
/** An amount beside these may be what is there, or what is poured. */
const HOW_MUCH = /\b(?:how (?:much|many)|cu[aá]nt[oa]s?|what (?:amount|dose)|qu[eé] (?:cantidad|dosis))\b/iu;

/**
 * The amount of powder that somebody names to hear whether it is too much; undefined where none is told, several colours are, or how much to
 * take is what is asked. Pure.
 * @example amountJudged('is 2 tsp red oxide too much for 500 g oils', facts) // '2 tsp'
 */
export function amountJudged(question: string, facts: Facts): string | undefined {
  const isJudged = TOO_MUCH.test(question) || !HOW_MUCH.test(question);
  // One amount cannot be both what is coloured and what colours it.
  const isPortion = facts.powder === facts.portion && !TOO_MUCH.test(question);
  return isJudged && !isPortion && facts.named.length === 1 ? facts.powder : undefined;
}
