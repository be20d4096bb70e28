import { unbroken } from '../../over-lines.ts';
import { unaccented } from '../../text/unaccented.ts';

const OF_CONTEST = /(?<!\p{L})(?:contest|concurso|competition|comp|reto|challenge)(?!\p{L})/u;
const ASKS = new RegExp(
  unbroken`
    (?<!\p{L})(?:when|whens|until|deadline|close[sd]?|closing|ends?|rules?|enter|how many|allowed|can i|
    who won|hasta|cuando|que dia|q dia|fecha|cierra|termina|reglas?|se pueden?|puedo|quien gano|
    cuant[oa]s)(?!\p{L})
  `,
  'u',
);

/** What those who judge make of an entry is the rules' to say. */
const OF_JUDGES = new RegExp(
  unbroken`
    (?<!\p{L})(?:judges?|judging|jurado|jueces|juez)(?!\p{L}).*(?<!\p{L})(?:mark\p{L}*|scores?|points?|dock|
    penali\p{L}+|puntos?|puntua\p{L}*|descuenta\p{L}*|resta\p{L}*|califica\p{L}*|baja\p{L}*)(?!\p{L})
  `,
  'u',
);

/** Whether the day, the rules or the outcome of the group's contest is asked for. Pure. */
export function asksOfContest(question: string): boolean {
  const plain = unaccented(question);
  return (OF_CONTEST.test(plain) && ASKS.test(plain)) || OF_JUDGES.test(plain);
}
