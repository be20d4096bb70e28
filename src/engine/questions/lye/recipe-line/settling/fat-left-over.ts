/*
 * A superfat in other words than its name: so much of the fat that is to be left over, or so much of the lye that would take all of it.
 */
import { unbroken } from '../../../../over-lines.ts';

const PERCENT = String.raw`(?<percent>\d{1,2}(?:[.,]\d)?) ?(?:%|percent|per cent|por ?ciento|por cien|parts? (?:in|of) (?:the|a) hundred)`;
const SHARES: readonly (readonly [RegExp, number])[] = [
  [/tenth|decim/u, 10],
  [/twentieth|veinteav|vigesim/u, 5],
  [/twenty-fifth|veinticincoav/u, 4],
  [/fiftieth|cincuentav/u, 2],
];
const SHARE = unbroken`
  (?<share>(?:an?|one|1|un|una|la) (?:tenth|twentieth|twenty-fifth|fiftieth|decima parte|decimo|
  veinteav[oa](?: parte)?|vigesima parte|veinticincoav[oa](?: parte)?|cincuentav[oa](?: parte)?))
`;
const FAT = '(?:fats?|oils?|grasas?|aceites?)';
const THE = '(?:(?:of|o|de|del|the|my|el|la|los|las|mis) )*';
const LEFT = unbroken`
  (?:left ?over|left|over|to spare|spare|free|unsaponified|unconverted|unreacted|untouched|un-?soaped|back|
  sin (?:convertir|saponificar|reaccionar|transformar|jabonar)|back|
  sin (?:hacer|hacerse|volverse) jabon|libres?|sobrantes?|de sobra|que sobren?)
`;
const OPENS = unbroken`
  (?:(?:i|we|she|he|they|yo|always|usually|siempre|want|wants?|like|likes?|leaves?|leaving|left|keeps?|keeping|kept|
  have|to|quiero|que|quede|queden|deja|dejo|dejar|dejamos|dejando|con|with|at|al|un|una|about|around|unos|
  aproximadamente|roughly) )*
`;
const SAID: readonly RegExp[] = [
  // "A twentieth of the fats left over", "6 percent of the fat unsaponified", "un 8 por ciento de aceite sin convertir".
  new RegExp(
    unbroken`
      (?<![\p{L}\d.,])${OPENS}(?:${PERCENT}|${SHARE}) ${THE}${FAT} ${LEFT}(?: (?:after|afterwards|
      at the end|in it|in the bar|al final|despues|en el jabon))*(?!\p{L})
    `,
    'gu',
  ),
  // "8% left over fat", "un 8 por ciento sin convertir".
  new RegExp(
    unbroken`
      (?<![\p{L}\d.,])${OPENS}${PERCENT} ${THE}(?:(?:left ?over|spare|unsaponified|unconverted|
      unreacted|excess|surplus|extra) ${FAT}(?: only)?|overfat|(?:de |del )?(?:exceso|excedente) (?:de )?${FAT}|
      ${FAT} (?:en exceso|de mas)|
      sin (?:convertir|saponificar|reaccionar)|unsaponified|unconverted)(?!\p{L})
    `,
    'gu',
  ),
];
/** "7% left unsaponified", "three percent of the fat is to stay free", "5% left over as fat": with no fat named between. */
const LEFT_SO = new RegExp(
  unbroken`
    (?<![\p{L}\d.,])(?:(?:if|si|so that|where) )?${OPENS}(?<percent>\d{1,2}(?:[.,]\d)?) ?(?:%|percent|per cent|
    por ?ciento|por cien) (?:${THE}${FAT} )?(?:(?:is|are|was|
    to|be|has|must|should|es|esta|que|se|stay|stays|staying|kept|keep|remain|remains|left|queda|quede|quedando|
    va|left) )*(?:unsaponified|
    unsoaped|free|spare|over as ${FAT}|left over as ${FAT}|libres?|sin (?:saponificar|jabonar|
    reaccionar))(?! (?:of|de|fatty)(?!\p{L}))
    (?!\p{L})
  `,
  'gu',
);
/** "92% of the lye it'd need in full": the rest of a hundred is left out. */
const OF_FULL_LYE = new RegExp(
  unbroken`
    (?<![\p{L}\d.,])(?:(?:i|we|yo|use|using|uso|usamos|pongo|only|solo|just|with|con|at|el|al|
    un) )*(?<percent>[7-9]\d(?:[.,]\d)?) ?(?:%|percent|por ?ciento) (?:of|de) (?:the |la |
    el )?(?:full (?:lye|naoh|amount|dose)|(?:lye|naoh|koh|caustic(?: soda)?|sosa(?: caustica)?|
    soda(?: caustica)?|potasa)(?:,? (?:that |que )?(?:it|they|these|those|would|needs?|needed|takes?|total|
    full|completa|necesaria|entera|toda|pediria|pide|llevaria|llevarian|haria falta|hace falta|les toca|
    ['’]?d)(?:['’]d)?)+(?: (?:in full|need|take|in all|en total|entera))*)(?!\p{L})
  `,
  'u',
);
/** "No extra fat at all", "sin nada de grasa libre": none is left over. */
const NONE_LEFT = new RegExp(
  unbroken`
    (?<!\p{L})(?:with )?(?:no|zero|without(?: any)?|sin(?: nada de)?|nada de|cero) (?:extra|spare|free|
    surplus|excess|left ?over) (?:fats?|oils?)(?: at all)?(?!\p{L})|(?<!\p{L})(?:con )?(?:sin(?: nada de)?|
    nada de|cero) (?:grasa|aceite) (?:de mas|libre|extra|sobrante|de sobra)(?!\p{L})
  `,
  'gu',
);
/** "Ten percent off the lye", "5% under what would turn it all", "NaOH con un 3% de menos": a discount of lye. */
const OFF_LYE = new RegExp(
  unbroken`
    (?<![\p{L}\d.,])(?:(?:at|with|con|un|una|a) )*${PERCENT} (?:off (?:of )?(?:the |my )?(?:lye|naoh|koh|
    caustic)|(?:under|below|less than|short of) (?:what (?:would|it|they)|the full|the whole)
    (?: \p{L}+){0,4}|(?:off|under|below) the (?:full|whole|top) (?:lye|amount|dose))(?!\p{L})|
    (?<=(?<!\p{L})(?:lye|naoh|koh|sosa|soda|potasa)) (?:con|with|at) (?:un |
    a )?(?<less>\d{1,2}(?:[.,]\d)?) ?(?:%|por ?ciento|percent) (?:de menos|menos|less|short)(?!\p{L})
  `,
  'gu',
);
const WHOLE = 100;

/** A line in which a superfat that is told as fat left over, or as a share of the lye, is told by its name. Takes what `plainWords` gives. Pure. */
export const withFatLeftOver = (plain: string): string =>
  SAID.reduce(
    (line, pattern) =>
      line.replace(pattern, (...match) => {
        const { percent, share = '' } = match.at(-1) as { percent?: string; share?: string };
        const figure = percent ?? SHARES.find(([word]) => word.test(share))?.[1];
        return ` ; superfat ${figure}% ; `;
      }),
    plain,
  )
    .replace(LEFT_SO, ' ; superfat $<percent>% ; ')
    .replace(OF_FULL_LYE, (...match) => {
      const { percent = '' } = match.at(-1) as { percent?: string };
      return ` ; superfat ${Number((WHOLE - Number(percent.replace(',', '.'))).toFixed(1))}% ; `;
    })
    .replace(OFF_LYE, (...match) => {
      const { percent, less } = match.at(-1) as { percent?: string; less?: string };
      return ` ; superfat ${percent ?? less}% ; `;
    })
    .replace(NONE_LEFT, ' ; superfat 0% ; ');
