import { knownOil } from '../../../../batch/oils/find-oil.ts';
import { unbroken } from '../../../../over-lines.ts';

const LEFT_OUT = [
  '(?:and |but )?(?:leave|leaving|left|take|taking|took|keep|keeping) (?:the |my |that )?(NAME) (?:out|off)(?: of it)?',
  unbroken`
    (?:forget|ignore|never mind|scrap|skip|drop)(?: about)? (?:the |my |that )?(NAME)(?: (?:i|we) (?:said|
    told you(?: about)?|mentioned|had)(?: (?:before|earlier|yesterday))?)?
  `,
  '(?<!\\d ?(?:g|gr|gramos|kg|kilos?|oz|onzas?|%)? ?(?:de |of )?)(NAME) no (?:tengo|tenemos|hay|hubo|consegui|encontre|me queda|le pongo|uso)',
  unbroken`
    (?:olvid[ae](?:te|lo)?|olvidemos|olvidense|dejemos)(?: de| afuera)?(?: (?:el|la|
    lo de(?:l| la)?))? (NAME)(?: (?:que (?:te |les )?(?:dije|puse|mencione)|afuera|fuera))?
  `,
].map(
  one =>
    new RegExp(
      `(?<!\\p{L})${one.replace('NAME', '(?:(?:aceite|manteca|mantequilla) de )?\\p{L}+(?: (?:oil|butter))?')}(?= ?(?:[;,]|$|so|y|and|asi))`,
      'gu',
    ),
);
/** "Same as before but leave the castor out": an oil that is told with no weight is none of the recipe that follows. Takes what `plainWords` gives. Pure. */
export const withoutLeftOut = (plain: string): string =>
  LEFT_OUT.reduce(
    (line, pattern) =>
      line.replace(pattern, (whole, name: string) => {
        const oil = knownOil(name);
        if (oil === undefined) return whole;
        const key = name.replace(/^(?:aceite|manteca|mantequilla) de | (?:oil|butter)$/gu, '');
        return line.split(key).length === 2 ? ' ; ' : whole;
      }),
    plain,
  );
