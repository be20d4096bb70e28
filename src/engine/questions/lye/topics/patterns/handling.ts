import { unbroken } from '../../../../over-lines.ts';
import { said } from '../care-words.ts';
import { CHILD, RAW_BATTER } from '../things.ts';
import { ACID, LYE, MAY, near, SOAP, type TopicPatterns } from './topic.ts';

const MILK = '(?:milk|goat milk|goats milk|coconut milk|buttermilk|cream|leche|leche de \\w+|nata|crema)';
const DRINK =
  '(?:drinks?|water|soda|pop|cola|juice|milk|beer|wine|lemonade|sports|agua|refresco|gaseosa|zumo|jugo|leche|vino|bebidas?)';

/** Of lye before it is used, and of whoever is near it; plain text. */
export const HANDLING_PATTERNS: TopicPatterns = [
  [
    'drink-bottle',
    [
      near(LYE, `${DRINK} (?:bottle|jar|carton|cup|mug|glass)s?|botellas? (?:de |pet)\\w*`, 60),
      near(`${DRINK} (?:bottle|jar|carton|cup|mug|glass)s?|botellas? (?:de )?${DRINK}`, LYE, 40),
    ],
  ],
  [
    'milk-at-once',
    [
      near(`all (?:of )?(?:the |my )?${LYE}|toda (?:la |mi )?${LYE}`, MILK, 24),
      near(
        LYE,
        `${MILK}\\b.{0,24}\\b(?:at once|in one go|straight|directly|de golpe|de una vez|directamente)`,
        24,
      ),
      near(
        `${MAY}\\b.{0,16}\\b(?:add|put|dissolve|mix|pour|tip|echar?|echo|disolver|disuelvo|mezclar|pongo)(?: the| my| la| mi)? ${LYE}`,
        `(?:in ?to|in|with|to|en|con)(?: the| my| la| mi)?(?: warm| hot| cold| fresh)? ${MILK}`,
        12,
      ),
    ],
  ],
  [
    'spooned-lye',
    [
      new RegExp(
        unbroken`
          \b(?:how many|cuant[ao]s)\b.{0,8}\b(?:table ?spoons?|tea ?spoons?|spoons?|tbsps?|tsps?|cups?|
          cucharad\w+|cucharas?|tazas?)\b.{0,8}\b(?:lye|naoh|koh|sosa|soda caustica|caustic soda|lejia)\b
        `,
        'u',
      ),
    ],
  ],
  [
    'clumped',
    [
      near(
        `${LYE}(?: \\w+){0,4} (?:clump\\w*|lump\\w*|caked|solid|rock hard|went hard|gone hard|grumos|apelmaz\\w*|endurec\\w*)`,
        'use|ok|okay|good|still|usar|sirve|vale',
        40,
      ),
      near(`clumped|lumpy|apelmazada`, LYE, 8),
    ],
  ],
  [
    'microwave',
    [
      near('microwave|microondas', `${RAW_BATTER}|${LYE}|seized soap`, 30),
      near(`${RAW_BATTER}|${LYE}`, 'microwave|microondas', 40),
    ],
  ],
  [
    'children',
    [
      near(
        MAY,
        unbroken`
          ${CHILD}\b.{0,30}\b(?:help|make|making|mix|stir|join|watch|ayudar\w*|hacer|mezclar|remover|mirar|
          participar)\b.{0,40}\b(?:${SOAP}|${LYE}|${RAW_BATTER}|cold process)
        `,
        24,
      ),
      near(
        `${SOAP}|${LYE}`,
        `with (?:my |the |small |young )*${CHILD}\\b.{0,24}\\b(?:safe|ok|okay)|con (?:mis |los |las )*${CHILD}\\b.{0,24}\\b(?:segur\\w+|peligr\\w+)`,
        24,
      ),
    ],
  ],
  [
    'koh-for-naoh',
    [
      // "76 g KOH for 400 g olive, I only have NaOH, do I use 76 g?"
      said([
        'koh|potassium hydroxide|caustic potash|potasa|hidroxido de potasio',
        'naoh|sodium hydroxide|caustic soda|sosa|soda caustica',
        unbroken`
          (?:i )?(?:only|just) (?:have|got)|(?:don'?t|do not|haven'?t) (?:have|got)|have no|use the same|
          same (?:amount|weight)|solo (?:tengo|hay|consigo)|no (?:tengo|hay|consigo)|la misma cantidad|
          el mismo peso|lo mismo de|da igual
        `,
      ]),
      near(
        'koh|potassium hydroxide|caustic potash|potasa|hidroxido de potasio',
        '(?:instead of|in place of|for|en (?:vez|lugar) de|por)(?: the| la)? (?:naoh|lye|sodium hydroxide|caustic soda|sosa)',
        24,
      ),
      near(
        'naoh|sodium hydroxide|caustic soda|sosa',
        '(?:instead of|in place of|en (?:vez|lugar) de|por)(?: the| la)? (?:koh|potassium hydroxide|potasa)',
        24,
      ),
    ],
  ],
  [
    'bleach-in-soap',
    [
      near(
        unbroken`
          (?:mix|add|put|use|stir|pour|mezclar|h?echar|h?echo|anadir|poner|pongo|
          usar)(?:ing)?(?: \w+){0,2} (?:bleach|cloro|lavandina|hypochlorite|(?:hydrogen )?peroxide|
          agua oxigenada)
        `,
        `${SOAP}|${RAW_BATTER}|whiten|lighten|blanquear|aclarar`,
        40,
      ),
    ],
  ],
  [
    'acid-in-batter',
    [
      near(
        `(?:add|put|use|pour|mix|anadir|echar|poner|agregar)(?: \\w+){0,2} ${ACID}`,
        `(?:${RAW_BATTER}|${SOAP})\\b.{0,30}\\b(?:lower|ph|reduce|bring down|bajar|reducir|neutral\\w*)`,
        30,
      ),
      near('lower|reduce|bring down|bajar|reducir', `ph\\b.{0,40}\\b${ACID}`, 12),
    ],
  ],
  [
    'no-lye',
    [
      near(
        'make|making|made|hacer|hago|se hace',
        `(?:soap|jabon)(?: \\w+){0,2} (?:without|sin|no)(?: any| the| la| using| usar)? ${LYE}`,
        24,
      ),
    ],
  ],
  [
    'lye-on-skin',
    [
      near(
        'what (?:happens|does|would happen)|que (?:pasa|hace|le pasa)',
        `${LYE}\\b.{0,16}\\b(?:touch\\w*|do to|gets? on|on|toca|cae en|en|a)\\b.{0,10}\\b(?:skin|hands?|la piel|piel|las manos)`,
        20,
      ),
    ],
  ],
  [
    'lye-fumes',
    [
      near(
        'is it|are|is|how|es|son',
        unbroken`
          (?:dangerous|safe|bad|harmful|toxic|peligros\w+|toxic\w+|mal[oa])\b.{0,30}\b(?:inhale|breathe|
          breathing|steam|fumes|vapou?rs?|vapor\w*|humo|respirar|inhalar)\b.{0,30}\b${LYE}
        `,
        8,
      ),
      near(
        `(?:is|are|es|son)(?: the| el| los)? (?:steam|fumes|vapou?rs?|vapor\\w*|humos?)`,
        `${LYE}\\b.{0,20}\\b(?:dangerous|toxic|safe|bad|harmful|peligros\\w+|toxic\\w+)`,
        12,
      ),
    ],
  ],
  [
    'disposal',
    [
      near(
        String.raw`throw (?:out|away)|dispos\w*(?: of)?|get rid of|pour (?:away|down)|bin|tirar|tiro|desech\w*|deshac\w*`,
        `${LYE}(?: (?:water|flakes|crystals|solution))?|agua de (?:sosa|lejia)`,
        30,
      ),
      near('left ?over|sobrante|sobrado|me sobro|sobro', LYE, 16),
      near(LYE, 'left ?over|down the (?:drain|sink|toilet)|por el (?:desague|fregadero|inodoro)', 30),
    ],
  ],
  [
    'storing',
    [
      near(
        'how|where|can i|should i|do i|como|donde|puedo|se puede|debo',
        unbroken`
          (?:stor(?:e|ed|ing)|keep|keeping|save|guard\w+|almacen\w+|
          conserv\w+)(?! from)(?: \w+){0,3} (?:lye|naoh|koh|sodium hydroxide|potassium hydroxide|
          caustic soda|sosa|lejia|potasa|hidroxido)(?! (?:ya )?(?:water|solution|mix|disuelt|mezclad|
          preparad|hech))
        `,
        16,
      ),
      near(
        'how long|does|cuanto',
        `${LYE}(?: \\w+){0,2} (?:last|keep|go off|go bad|expire|dura|aguanta|caduca)`,
        24,
      ),
      near('shelf life|caducidad', LYE, 16),
    ],
  ],
];
