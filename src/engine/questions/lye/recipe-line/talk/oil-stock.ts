import { knownOil } from '../../../../batch/oils/find-oil.ts';
import { unbroken } from '../../../../over-lines.ts';
import { figureText } from '../../../../quantities/for-readers.ts';
import { COUNT, decimal, gramsOf, MASS } from '../../amounts/words.ts';

/** Oils that are mixed in stock, as makers name them. */
const STOCK = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:oil|oils) (?:master ?batch|blend|mix|stock)|(?:master ?batch|blend|mix|stock) of (?:my |
    the )?oils?|mezcla madre(?: de(?: los)? aceites?)?|(?:mezcla|mix) de(?: los)? aceites?)(?!\p{L})
  `,
  'u',
);
const SHARE = new RegExp(
  `(${COUNT}) ?(?:%|percent|por ciento) (?:of |de )?(?:aceite de )?(\\p{L}+(?: (?:kernel|butter|bran))?)(?: oil)?`,
  'gu',
);
/** How much of it is taken; what goes in beside it has a weight of its own. */
const TAKEN = new RegExp(
  unbroken`
    ,? ?(?:(?:and|y|so) )?(?:(?:i|we|i'm|i'll|yo) )?(?:am )?(?:take|taking|took|scoop(?:ed|ing)?|use|using|
    weigh(?:ed|ing)? ?(?:out)?|saco|saque|tomo|tome|uso|peso|pese) (${MASS})(?: (?:of|de) (?:it|that|this|
    (?:my|the|la|mi|esa) )?(?:(?:oil )?(?:master ?batch|blend|mix|stock)(?: of oils)?|mezcla(?: madre)?|eso|
    ella)?)?
  `,
  'u',
);
const WHOLE = 100;
const neat = (figure: number): string => figureText(figure);

/**
 * A line in which so much of a stock of oils is taken, "my oil masterbatch is 50% olive, 50% coconut; I take 900 g of it and add 100 g
 * castor", with the weight of each oil in that. As it was where the shares are no whole, one of them is of no oil, or how much is taken
 * is not told once. Takes what `plainWords` gives. Pure.
 */
export function withoutStock(plain: string): string {
  const [stock] = STOCK.exec(plain) ?? [];
  const [taken, mass] = TAKEN.exec(plain) ?? [];
  if (stock === undefined || taken === undefined || mass === undefined) return plain;
  const shares = [...plain.matchAll(SHARE)].filter(([, , name]) => knownOil(name!) !== undefined);
  const sum = shares.reduce((all, [, figure]) => all + decimal(figure!), 0);
  if (shares.length < 2 || Math.abs(sum - WHOLE) > 0.5) return plain;
  const oils = shares.map(
    ([, figure, name]) => `${neat((gramsOf(mass) * decimal(figure!)) / WHOLE)} g ${name}`,
  );
  const [first, last] = [shares[0]!, shares.at(-1)!];
  const without = `${plain.slice(0, first.index)} ; ${plain.slice(last.index + last[0].length)}`;
  const rest = without
    .replace(taken, ' ; ')
    .replace(STOCK, ' ')
    .replace(/(?<!\p{L})(?:(?:le|les) )?(?:add(?:ing)?|agrego|anado|pongo|sumo)(?= \d)/gu, '')
    .replace(/(?<!\p{L})(?:on top|encima|aparte)(?= ?[;,]|$)/gu, '')
    .replace(/(?<=^|[;,] *)(?:my|mi|the|la|of|de|is|es|which|that|que|are|i|it|:| )+(?= *[;,])/gu, ' ');
  return `${oils.join(', ')} ; ${rest}`;
}
