import { knownOil } from '../../../../batch/oils/find-oil.ts';
import { unbroken } from '../../../../over-lines.ts';
import { LYE } from '../../amounts/words.ts';

/*
 * What is asked of an oil beside the recipe that it is weighed in: whether it takes lye, whether it keeps. The recipe is as it was.
 * Each names the oil once more, which elsewhere may take it out of the pot.
 */
const NAME =
  '(?:(?:the|my|la|el|mi) )?(?<oil>(?:(?:aceite|manteca|cera) de )?\\p{L}+(?: (?:oil|butter|fat))?)';
const ASKED: readonly RegExp[] = [
  // "Does the wax count for lye", "does hemp go rancid fast".
  unbroken`
    (?:btw |and |also |but )?(?:does|do|will|would) ${NAME} (?:count|need(?: (?:its own|any|some))? ${LYE}|
    take(?: up)?(?: any)? ${LYE}|(?:go|turn) (?:rancid|off))(?: (?:for|in|
    towards?) (?:the )?${LYE})?(?: (?:too|as well|fast|quickly|quick|easily))?
  `,
  unbroken`
    (?:\p{L}+ (?:told (?:me|us)|says|said|dice|me dijo)(?: (?:that|que))? )${NAME} (?:needs?|takes?|lleva|
    necesita) (?:${LYE}|soda)(?: (?:too|as well|tambien))?
  `,
  `(?:does|do) (?:i|we) count ${NAME}(?: (?:too|as well|for (?:the )?${LYE}))?`,
  // "La cera la cuento para la soda".
  unbroken`
    (?:y |pero )?${NAME} (?:(?:la|lo|tambien|se) )*(?:cuento|cuenta|cuentan|lleva ${LYE}|necesita ${LYE}|
    se (?:enrancia|pone rancio))(?: (?:tambien|rapido))?(?: (?:para|en) (?:la |el )?(?:${LYE}|soda|cuenta))?
  `,
].map(pattern => new RegExp(`(?<![\\p{L}\\d])${pattern}(?= ?(?:[;,]|$))`, 'gu'));

const isWeighed = (line: string, oil: string): boolean =>
  new RegExp(
    `\\d ?(?:\\p{L}+ )?(?:of |de )?(?:\\p{L}+ )?${oil}(?!\\p{L})|(?<!\\p{L})${oil}(?: \\p{L}+){0,3} ?\\d`,
    'u',
  ).test(line);

/** A line of `plainWords` without what is asked of an oil that is weighed in it. Pure. */
export const withoutAskedOfOil = (plain: string): string =>
  ASKED.reduce(
    (line, pattern) =>
      line.replace(pattern, (whole, ...rest) => {
        const { oil = '' } = rest.at(-1) as { oil?: string };
        const word = oil.replace(/^(?:aceite|manteca|cera) de | (?:oil|butter|fat)$/gu, '');
        const isOil = knownOil(oil) !== undefined || /^(?:wax|cera)$/u.test(word);
        return isOil && isWeighed(line.replace(whole, ''), word === 'wax' ? '(?:bees)?wax' : word)
          ? ' ; '
          : whole;
      }),
    plain,
  );
