import { unbroken } from '../../over-lines.ts';
import { unaccented } from '../../text/unaccented.ts';

/** Words without which nobody asks what their shelf holds, both languages, lower case without accents. */
const OF_SHELF = new RegExp(
  unbroken`
    (?<!\p{L})(?:shel(?:f|ves)|jars?|tubs?|stash|stock|supplies|inventor\w*|drawer|cupboard|estanter\w+|
    estantes?|repisas?|despensa|cajon|armario|bot(?:e|es)|botecitos?|frasc\w+|tarr\w+|bolsas?|bags?|own|
    owned|have|has|got|had|bought|used|left|list|show|see|my|tengo|tenemos|tenia|hay|qu?eda\w*|sobra\w*|
    compr\w+|mi|mis|lista\w*|ver|muestr\w+|ensen\w+)(?!\p{L})
  `,
  'u',
);

/** Whether a question may be about what a member owns. Pure. */
export const mayBeOfShelf = (question: string): boolean => OF_SHELF.test(unaccented(question));
