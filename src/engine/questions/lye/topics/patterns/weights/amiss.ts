import { unbroken } from '../../../../../over-lines.ts';
import { OIL } from '../../things.ts';
import { LYE, near, SOAP, type TopicPatterns } from '../topic.ts';

const FORGOT =
  '(?:forgot(?:ten)?|forget|left out|missed(?: out)?|olvide|olvido|olvidado|olvidaron|deje fuera|me falto)';
const GRAMS = '\\d+(?: \\d)? ?(?:g|gr|grams?|gramos?|oz|ounces?|onzas?)?(?: of| de)?';
const WATER = '(?:water|agua)';
const HIGH =
  '(?:1[1-4])(?: \\d)?(?! ?(?:g|gr|grams?|ml|oz|days?|weeks?|dias?|semanas?|percent|am|pm|h|cm|mm|inch(?:es)?|in|cups?|tazas?|bars?|x)\\b)';
const ON_TOP =
  '(?:white (?:powder|dust|film|crust|stuff|spots|crystals)|polvo blanco|polvillo(?: blanco)?|capa blanca|costra blanca|cristales(?: blancos)?)';

/** Of weights that went wrong, and of signs on a bar that may be lye; plain text. */
export const AMISS_PATTERNS: TopicPatterns = [
  [
    'amounts-swapped',
    [
      near(
        `${GRAMS} ${LYE}`,
        `${GRAMS} ${WATER}\\b.{0,8}\\b(?:instead of|not|en (?:vez|lugar) de)\\b.{0,4}\\b${GRAMS} (?:${LYE}|${WATER})`,
        12,
      ),
      near(
        `${GRAMS} ${WATER}`,
        `${GRAMS} ${LYE}\\b.{0,8}\\b(?:instead of|not|en (?:vez|lugar) de)\\b.{0,4}\\b${GRAMS} (?:${LYE}|${WATER})`,
        12,
      ),
      new RegExp(
        unbroken`
          (?=.*\b${LYE}\b)(?=.*\b(?:water|agua)\b)(?=.*\b(?:al reves|the wrong way round|
          back to front)\b)(?=.*\b(?:en la olla|en el molde|con el aceite|in the pot|in the mou?ld|
          in the batter)\b)
        `,
        'u',
      ),
    ],
  ],
  [
    'wrong-unit',
    [
      near(
        `${LYE}(?: \\w+){0,3} (?:ounces|oz|onzas)`,
        '(?:recipe|formula|receta|should|era|estaba|was|were)\\b.{0,24}\\b(?:grams|gramos|g)',
        16,
      ),
      near(`(?:ounces|oz|onzas)`, `${LYE}\\b.{0,40}\\b(?:recipe|receta)\\b.{0,16}\\b(?:grams|gramos)`, 16),
    ],
  ],
  [
    'lye-twice',
    [
      near('(?:accidentally |have |had )?doubled(?: up)?', `(?:(?:on|the|my|all) )*${LYE}`, 4),
      near(
        '(?:put|added|used|poured|weighed|dumped)(?: in)?',
        `(?:double|twice)(?: (?:the|as|much|amount|of))* ${LYE}`,
        10,
      ),
      near(
        '(?:eche|echo|he echado|echamos|puse|he puesto|pusimos|anadi|agregue|use|pese|lleva)',
        `el doble de (?:la )?${LYE}`,
        10,
      ),
      near(`${LYE}(?: ${WATER})?`, '(?:in )?(?:twice|two times|dos veces)(?! (?:as|the))', 6),
    ],
  ],
  [
    'oil-forgotten',
    [
      near(
        FORGOT,
        `(?:half|some|part|a third|la mitad|parte|un tercio)(?: of| de| del)(?: the| my| los| las| la| el)? ?${OIL}`,
        16,
      ),
      near(
        FORGOT,
        unbroken`
          (?:to (?:put|add|weigh)|put(?:ting)?|poner(?:le)?|echar(?:le)?|anadir(?:le)?|pesar|the|el|la|
          los)(?: in)?(?: the| my| el| la| los| las)?(?: ${GRAMS})?(?: (?:oil|
          aceite)(?: of| de)?)? ?${OIL}\b(?!.{0,24}\b(?:fragrance|scent|essential|esencial|aroma))
        `,
        6,
      ),
      near('olvide|olvido|olvidado', `${GRAMS} (?:aceite de )?${OIL}`, 12),
    ],
  ],
  [
    'ph-high',
    [
      new RegExp(
        unbroken`
          ^(?!.*\b(?:${LYE}) (?:water|solution)\b)(?!.*\b(?:agua de|
          disolucion de) ${LYE}\b)(?!.*\b(?:how much|ci \d{5}|stable|surviv\w*|hold up|resist\w*|aguant\w*|
          laca|lake|mica)\b).*\b(?:ph|strips?|tiras?(?: de ph)?|indicator paper)\b(?: \w+){0,5}? ${HIGH}\b
        `,
        'u',
      ),
      new RegExp(`^ph ${HIGH}\\b`, 'u'),
    ],
  ],
  [
    'ash-or-lye',
    [
      near(
        `${LYE}|sosa`,
        `(?:or|o)(?: is it| es| just| soda| solo)* (?:ash|soda ash|ceniza(?: de sosa)?)`,
        8,
      ),
      near('ash|ceniza', `(?:or|o)(?: is it| es)* ${LYE}`, 8),
      near(
        ON_TOP,
        unbroken`
          (?:on|encima|sobre|top|over|surface|superficie|del)\b.{0,24}\b(?:${SOAP})?\b.{0,30}\b(?:touch|
          tocar\w*|toco|dangerous|safe|is it ${LYE}|es ${LYE}|peligros\w+|quema\w*|burns?|stings?|pica)
        `,
        16,
      ),
    ],
  ],
];
