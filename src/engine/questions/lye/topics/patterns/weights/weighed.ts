import { unbroken } from '../../../../../over-lines.ts';
import { OIL } from '../../things.ts';
import { LYE, near, SOAP, type TopicPatterns } from '../topic.ts';

const OTHER_ALKALI = unbroken`
  (?:wood ash(?:es)?|ash lye|ashes|sodium carbonate|washing soda|calcium hydroxide|slaked lime|quicklime|
  oven cleaner|ceniza(?! (?:de sosa|(?:por |en |de |x )?(?:arriba|encima)|blanca|en (?:la|el|los|las|mi|
  mis) ))|lejia de ceniza|carbonato de sodio|hidroxido de calcio|cal (?:viva|apagada)|limpiahornos)
`;

/** Of what is weighed at the bench and what takes its place; plain text. */
export const WEIGHED_PATTERNS: TopicPatterns = [
  ['other-alkali', [near(OTHER_ALKALI, `${LYE}|${SOAP}`, 40), near(`${LYE}|${SOAP}`, OTHER_ALKALI, 30)]],
  [
    'oil-swapped',
    [
      near(
        `replac\\w*|swap\\w*|substitut\\w*|instead of|chang\\w*|switch\\w*|cambi\\w*|sustitu\\w*|reemplaz\\w*|en (?:vez|lugar) de`,
        `${OIL}\\b.{0,60}\\b(?:same (?:amount of )?|without changing(?: the)? |misma |sin cambiar(?: la)? )(?:${LYE})`,
        24,
      ),
      near(
        'ran out of|leave out|left out|skip|forgot|forgotten|me quede sin|quitar|olvid\\w+',
        `${OIL}\\b.{0,40}\\b(?:leave it out|left out|${LYE}|sin el)`,
        16,
      ),
    ],
  ],
  [
    'less-lye',
    [
      near(
        'half|less|reduce|cut|lower|mitad de|menos|reducir',
        `${LYE}\\b.{0,30}\\b(?:gentle\\w*|mild\\w*|softer|kinder|soft|sensitive|suav\\w*|delicad\\w*)`,
        12,
      ),
    ],
  ],
  ['scale', [near('scales?|bascula|balanza|pesa', `${LYE}`, 50)]],
  [
    'scent-dose',
    [
      new RegExp(
        unbroken`
          ^(?!.*\b(?:plan|g|kg|oz|vanillin|vainillina)\b).*\b(?:\d+(?: \d+)?) ?(?:percent|
          por ciento)?(?: of)?(?: the)? (?:essential oils?|fragrance(?: oils?)?|scent|de (?:fragancia|
          aceites? esencial(?:es)?|aroma))\b
        `,
        'u',
      ),
      near(
        'fragrance|essential oils?|scent|fragancia|aroma|aceites? esencial(?:es)?',
        String.raw`\d+ (?:of|percent|de|por)(?: the| los)? (?:oils|aceites|ciento)`,
        16,
      ),
    ],
  ],
  [
    'old-oil',
    [
      near(
        'used|fry(?:ing|er)?|expired|old|rancid|waste|usad[oa]|frei[rd]\\w*|fritura|caducad[oa]|ranci[oa]|viej[oa]',
        `(?:\\w+ )?(?:oils?|fats?|aceites?|grasas?)\\b.{0,40}\\b(?:soap|jabon)`,
        16,
      ),
      near(
        `(?:soap|jabon)\\b.{0,24}\\b(?:with|from|out of|con|de)`,
        'used (?:\\w+ )?oil|frying oil|fryer oil|expired (?:\\w+ )?oil|rancid (?:\\w+ )?oil|aceite (?:usado|de freir|caducado|rancio|viejo)',
        16,
      ),
      near('aceite (?:usado|de freir|caducado|rancio|viejo)', 'puedo|sirve|vale|jabon|usado', 24),
      near('puedo|sirve|se puede', 'aceite (?:usado|de freir|caducado|rancio|viejo)', 24),
    ],
  ],
];
