import { knownOil } from '../../batch/oils/find-oil.ts';
import { oilsOfBatch } from '../../batch/oils/lists/bare-grams.ts';
import { amountText } from '../../quantities/for-readers.ts';
import { unlessRefused } from '../../refusal.ts';
import { PRODUCTS } from '../lye/amounts/chat-words.ts';
import { prepared } from '../lye/amounts/prepared.ts';
import { gramsOf, POTASSIUM, plainWords } from '../lye/amounts/words.ts';
import { readLyeQuestion } from '../lye/question.ts';
import { recipeLine } from '../lye/recipe-line/recipe-line.ts';
import { isIdle, listSaidPlainly } from './recipe-phrases.ts';
import { isRead, type OptionTold } from './told.ts';

const LONGEST = 600;
const FIGURES = /(?<![\d.,/])\d+(?:[.,]\d+)?(?:\/\d+)?(?: \d\/\d)?/gu;
const COUNT_OF_OILS = /(?<![\d.,/])[2-8](?= (?:oils|fats|aceites|grasas)(?!\p{L}))/gu;

/** `1/2`, `1 1/2`, `2.5`, `0,5`. */
function figureOf(figure: string): number {
  const [whole = '', part] = /^\d+\//u.test(figure) ? ['0', figure] : figure.split(' ');
  const [over = 0, under = 1] = (part ?? '0/1').split('/').map(Number);
  return Number(whole.replace(',', '.')) + over / under;
}
const figuresIn = (text: string): readonly number[] =>
  [...text.matchAll(FIGURES)].map(([one]) => figureOf(one));

/** Whether every figure of a list is one of what was read of it, or only says what that comes to. */
function takesEvery(plain: string, line: string, oils: string): boolean {
  const taken = figuresIn(line);
  const sum = figuresIn(oils).reduce((all, one) => all + one, 0);
  return figuresIn(plain.replace(COUNT_OF_OILS, '')).every(
    figure => figure === 1 || [...taken, sum, 100].some(one => Math.abs(one - figure) <= 0.001 * figure),
  );
}

const PIECE = /^(\d+(?:[.,]\d+)?) ?% (.+)$/u;

/** Percents with what all oils weigh as the weights that they are. */
function weighed(oils: string, size: string | undefined): string | undefined {
  if (size === undefined) return oils;
  const whole = gramsOf(size);
  const pieces = oils.split(', ').map(piece => PIECE.exec(piece));
  if (!pieces.every(piece => piece !== null)) return undefined;
  return pieces
    .map(([, percent, name]) => `${amountText((Number(percent) * whole) / 100)} ${name}`)
    .join(', ');
}

const TELLS_HOW_MUCH =
  /\d|(?<!\p{L})(?:half|halves|thirds?|quarters?|fifths?|mitad|medi[oa]|tercios?|cuart[oa]s?|quint[oa]s?|equal|igual|iguales)(?!\p{L})/u;

/** Oils with their amounts; lye and water that are told beside are none of them, and anything else is another option's. */
function listed(said: string): string | undefined {
  const plain = prepared(said);
  if (!TELLS_HOW_MUCH.test(plain)) return undefined;
  const read = recipeLine(plain);
  // Which lye and how much superfat are options of their own: what is told here of them would be lost.
  if (!('line' in read) || POTASSIUM.test(plain)) return undefined;
  const given = unlessRefused(() => readLyeQuestion(read.line))?.given;
  if (given?.oils === undefined || ['superfat', 'additives', 'liquid', 'purity'].some(key => key in given))
    return undefined;
  const oils = weighed(given.oils, given.size);
  return oils !== undefined && (read.isTurned || takesEvery(plain, read.line, oils)) ? oils : undefined;
}

const LONGEST_NAME = 4;
const AMOUNT =
  /(?<![\p{L}\d.,/])(\d+(?:[.,]\d+)?) ?(kgs?|kilos?|g|gr|grams?|gramos?|lbs?|pounds?|libras?|oz|ounces?|onzas?)?(?![\p{L}\d%]|[.,/]\d)/gu;

/** One oil alone is all of it: "all olive. 1000". */
function alone(said: string): string | undefined {
  const plain = plainWords(said, { clauses: true });
  const amounts = [...plain.matchAll(AMOUNT)];
  const words = plain.replace(AMOUNT, ' ').match(/\p{L}[\p{L}'’]*/gu) ?? [];
  // Which lye is an option of its own, and what is told here of it would be lost.
  if (amounts.length > 1 || /\d/u.test(plain.replace(AMOUNT, ' ')) || POTASSIUM.test(plain)) return undefined;
  for (let length = LONGEST_NAME; length > 0; length -= 1)
    for (let at = 0; at + length <= words.length; at += 1) {
      const name = words.slice(at, at + length).join(' ');
      if (knownOil(name) === undefined) continue;
      const beside = [...words.slice(0, at), ...words.slice(at + length)].filter(word => !TALK.test(word));
      const isAlone = beside.every(word => !PRODUCTS.test(word) && knownOil(word) === undefined);
      if (!isAlone || !isIdle(beside)) return undefined;
      const [amount] = amounts;
      return amount === undefined
        ? `100% ${name}`
        : `${amount[1]}${amount[2] === undefined ? '' : ` ${amount[2]}`} ${name}`;
    }
  return undefined;
}
const TALK = /^(?:lol|haha|jaja|castill?[ea]|to)$/u;

/** What an option for the oils of a batch says where only the grammar of recipes reads it. Pure. */
export function oilsTold(text: string): OptionTold | undefined {
  if (text.length > LONGEST) return undefined;
  const said = listSaidPlainly(text);
  const oils = alone(said) ?? listed(said);
  return oils !== undefined && isRead(oilsOfBatch, oils) ? { text: oils } : undefined;
}
