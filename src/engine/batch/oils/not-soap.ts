import { unbroken } from '../../over-lines.ts';
import { foldedWords } from '../../text/fold.ts';

/** Waxes, oils and the like in which there is nothing that lye could turn into soap, in either language. */
const NEVER_SOAP = new RegExp(
  unbroken`
    \b(?:paraffin\w*|parafina|mineral oil|aceite mineral|baby oil|petrolatum|petroleum jelly|
    jalea de petroleo|microcrystalline|microcristalina|ceresin\w*|ozokerite|ozoquerita|candle wax|
    cera de velas?|crayons?|ceras? de colou?r\w*|silicone?s?|siliconas?|dimethicone|dimeticona|
    squal[ae]n[eo]?|escual[ae]no|motor oil|aceite de motor|kerosene|queroseno|isopropyl myristate|
    glycerine?|glicerina|essential oil|aceite esencial|fragrance oil)\b
  `,
  'u',
);

/** True for what the trade calls an oil or a wax and lye leaves as it is. */
export const isNeverSoap = (name: string): boolean => NEVER_SOAP.test(foldedWords(name).join(' '));
