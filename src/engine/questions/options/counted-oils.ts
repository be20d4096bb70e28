import { knownOil } from '../../batch/oils/find-oil.ts';
import { unbroken } from '../../over-lines.ts';
import { isAnyOil } from '../../text/amounts/stop-words.ts';

const COUNT = '(?:[2-9]|two|three|four|five|six|seven|dos|tres|cuatro|cinco|seis|siete|both|ambos)';
/** "Sumando los tres aceites", "the three oils together": how many there are tells nothing of how much. */
const OILS = new RegExp(
  unbroken`
    (?<![\p{L}\d.,])(?:(?:sumando|juntando|contando|adding(?: up)?|counting|of|de|entre|between|with|con|for|
    para) )?(?:(?:all|the|my|todos?|los|mis) )*${COUNT} (?:different )?(oils|fats|aceites|grasas)(?!\p{L})
  `,
  'giu',
);

const NAME = String.raw`(\p{L}+(?: \p{L}+)??)`;
/** "Entre oliva y coco", "de manteca con aceite": an amount of two fats together is one of oils. */
const TWO_FATS = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:de|of|entre|between|in|en) )${NAME} (?:y|and|n|&|con|with|plus|
    m[aá]s) (?:de )?${NAME}(?= *(?:$|[,.;)]|(?:todo )?junt|together|in all|en total))
  `,
  'iu',
);
const isFat = (name: string): boolean => isAnyOil(name) || knownOil(name) !== undefined;

/** A text in which oils that are counted, or named two together, are oils. Pure. */
export const countedOils = (text: string): string =>
  text
    .replace(OILS, 'de $1')
    .replace(TWO_FATS, (all, one: string, other: string) =>
      isFat(one) && isFat(other) ? 'de aceites' : all,
    );

const NUMBER = new RegExp(
  unbroken`
    ^(?:two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|(?:thir|four|fif|six|seven|eigh|
    nine)teen|(?:twen|thir|for|fif|six|seven|eigh|nine)ty|hundreds?|thousands?|dozens?|couple|pair|few|
    several|both|twice|double|thrice|triple|half|halves|thirds?|quarters?|dos|tres|cuatro|cinco|seis|siete|
    ocho|nueve|diez|once|doce|quince|veinte|treinta|cuarenta|cincuenta|cien(?:to)?s?|mil|docenas?|par|pares|
    varios|varias|ambos|ambas|doble|mitad|medi[oa]s?|tercios?|cuartos?|pico)$
  `,
  'u',
);

/** A word for a number or a part that no amount took up; undefined where none stands there. Takes words in lower case without accents. */
export const numberWordIn = (words: readonly string[]): string | undefined =>
  words.find(word => NUMBER.test(word));
