import { unbroken } from '../../../../../over-lines.ts';
import { BLENDER, CHILD, PET } from '../../things.ts';
import { LYE, near, SOAP, type TopicPatterns } from '../topic.ts';

const FOOD = unbroken`
  soup|food|cook\w*|eat\w*|bak\w+|smoothies?|kitchen|put it back|ice(?: cubes)?|gazpacho|sopa|comida|comer|
  cocinar|cocina|reposteria|postres?|bizcochos?|hielo
`;
const TOOL = `(?:${BLENDER}|whisk|moulds?|molds?|(?:ice cube |ice |muffin |baking )?trays?|tins?|muffin pan|varillas|moldes?|cubiteras?|bandejas?)`;
const AFTER = '(?:after(?:wards)?|again|then|later|back|too|luego|despues|otra vez|tambien)';
const HELPS =
  '(?:help\\w*|stir\\w*|make|making|pour\\w*|mix\\w*|join|ayud\\w+|remov\\w+|mezcl\\w+|echar|hacer(?:lo)?|particip\\w+)';
const ASKS =
  '(?:can|could|may|should|do|is it|safe|ok|how|puedo|podemos|se puede|puede|debo|es malo|sirve|vale)';
const MAKING =
  '(?:make|making|do|use|be|stay|around|soap\\w*|lye|it|hacer(?:lo)?|usar|estar|jabon|sosa|mezclar|jabones)';
const WASH = '(?:shampoo|soap|wash|bath\\w*|champu|jabon|lavar|banar)';

const BEGINS = unbroken`
  (?:what (?:do|will|would|should) (?:i|we) (?:need|buy|get|have)|(?:how|where) (?:do|can|should) (?:i|
  we) (?:start|begin)|what (?:stuff|things|tools|equipment)|que (?:necesito|me hace falta|hace falta|
  compro)|(?:como|por donde) (?:empiezo|empezar|se empieza))
`;
const FIRST = unbroken`
  (?:(?:first|1st) (?:ever )?(?:soap|batch|bar|time)|never (?:made|done) soap|new to (?:this|soap\w*)|
  beginner|primer(?:o|a)? (?:jabon|lote|vez|pastilla)|nunca (?:he hecho|hice) jabon|principiante|
  soy nuev[oa])
`;
const LOAF =
  '(?: (?:it|them|the|my|a|soaps?|loaf|loaves|bars?|now|el|la|los|las|mi|mis|jabon(?:es)?|barras?|pastillas?|pan|ya))*';
const OUT = unbroken`
  (?:cut|slice|un ?mou?ld|demou?ld|(?:take|get) (?:it|them|my soap|the soap) out(?: of the mou?ld)?|corto|
  cortar(?:lo|la|los)?|se corta|desmold(?:o|ar(?:lo|la|los)?)|(?:lo |la )?(?:saco|sacar(?:lo|
  la)?) del molde)
`;

/** Of the class: who may take part, who is washed, what goes back to the kitchen, and how all is washed up; plain text. */
export const CLASS_PATTERNS: TopicPatterns = [
  ['first-soap', [near(FIRST, BEGINS, 40), near(BEGINS, `${FIRST}|make soap|hacer jabon`, 30)]],
  [
    'after-pour',
    [
      new RegExp(
        unbroken`
          ^(?:(?:hi|hey|so|ok|and|hola|oye|y) )*(?:when|how (?:long|soon)|after how (?:long|many \w+)|
          cuando|cuanto(?: tiempo)?|a (?:las|los) cuant[oa]s \w+)(?: (?:do|can|should|may|must|is it time|
          until|till|before|to|i|we|lo|la|se|puedo|podemos|debo|hay que|tardo en|espero para|
          hasta))*${LOAF} ${OUT}${LOAF}$
        `,
        'u',
      ),
      new RegExp(
        unbroken`
          ^(?:(?:ok|so|hola|bueno|y) )*(?:(?:i|we) )?(?:(?:have|just|ve) )*poured(?: (?:it|the|my|soap|
          batter|loaf|into|in|mou?ld))* (?:now what|what now|what next|and now|whats next|what is next)$
        `,
        'u',
      ),
      new RegExp(
        unbroken`
          ^(?:(?:ok|bueno|ya|lo|la|he) )*(?:verti|vertido|eche|echado|puse)(?: (?:lo|la|el|en|jabon|masa|
          molde|ya))* (?:y )?(?:ahora que|que (?:hago|sigue|viene) ahora|ahora)$
        `,
        'u',
      ),
    ],
  ],
  [
    'back-to-food',
    [
      near(`${TOOL}`, `(?:${FOOD})\\b.{0,16}\\b${AFTER}|${AFTER}\\b.{0,16}\\b(?:${FOOD})`, 50),
      near(
        `${TOOL}`,
        `${AFTER} (?:put |use |for |poner|usar|para )(?:it |them )?(?:back|food|comer|la comida)?`,
        40,
      ),
      near('kitchen|de (?:la )?cocina', `${TOOL}\\b.{0,24}\\b(?:soap|jabon)`, 4),
      near(
        '(?:cook|eat|bake|cocinar|comer)\\b.{0,16}\\b(?:with|in|from|con|en)',
        `same ${TOOL}|mism[oa] ${TOOL}`,
        12,
      ),
    ],
  ],
  [
    'no-lye',
    [
      near(
        '(?:soap|jabon(?:es)?) (?:without|sin) (?:lye|sosa|lejia)',
        'how|kids|children|for|para|como|ninos',
        24,
      ),
    ],
  ],
  [
    'children',
    [
      near(
        CHILD,
        `(?:wants? to|would like to|can|could|may|quier\\w+|pued\\w+|va a|me)\\b.{0,12}\\b${HELPS}`,
        24,
      ),
      near(
        '(?:class(?:room)?|school|workshop|clase|escuela|colegio|taller)',
        `(?:with |con )?\\d* ?${CHILD}`,
        16,
      ),
      near(CHILD, '(?:class(?:room)?|school|clase|escuela|colegio)', 24),
      near(
        '(?:with|con)(?: my| the| mis?| los| las| un[oa]?)?(?: \\d+)?(?: small| little)?',
        `${CHILD}\\b.{0,24}\\b(?:safe|ok|soap|jabon|lye|sosa)`,
        4,
      ),
      near(
        `\\d{1,2}(?: ?yo| years? old| year old| anos)|${CHILD}`,
        `(?:${HELPS})\\b.{0,24}\\b(?:${LYE}|${SOAP})`,
        30,
      ),
    ],
  ],
  [
    'baby',
    [
      near(
        SOAP,
        '(?:for|para)\\b.{0,12}\\b(?:bab(?:y|ies)|newborns?|infants?|bebes?|recien nacid[oa]s?)(?! (?:blue|pink|azul|rosa|shower))',
        8,
      ),
      near('(?:wash|clean|lavar|fregar)', '(?:baby bottles?|pacifiers?|biberon(?:es)?|chupetes?)', 12),
    ],
  ],
  [
    'pregnant',
    [
      /\b(?:pregnan\w+|expecting a baby|breast ?feed\w*|embaraz\w+|encinta|amamant\w+|dando (?:el )?pecho)\b/u,
    ],
  ],
  [
    'asthma',
    [
      near('asthma(?:tic)?|copd|asma|asmatic[oa]|epoc', `${ASKS}\\b.{0,30}\\b${MAKING}`, 30),
      near(`${ASKS}\\b.{0,30}\\b${MAKING}`, 'asthma(?:tic)?|copd|asma|asmatic[oa]|epoc', 40),
    ],
  ],
  ['contact-lenses', [/\b(?:contact lens(?:es)?|contacts in|lentes de contacto|lentillas|pupilentes)\b/u]],
  [
    'pets-washed',
    [
      near(PET, '(?:shampoo|wash|champu)', 12),
      near(`${WASH}`, `(?:for|on|al|a mi|del?|para|my|the)\\b.{0,12}\\b${PET}`, 24),
    ],
  ],
  [
    'bad-batch-away',
    [
      near(
        '(?:throw|tip|put|dump|get rid of|bury|tirar|tiro|echar|enterrar|deshago)',
        '(?:(?:bad|failed|ruined|lye heavy|spoilt) (?:batch|soap|bars?)|(?:jabon|lote) (?:malo|fallido|estropeado|que salio mal))',
        16,
      ),
      near(
        '(?:throw|tip|dump|pour|tirar|tiro|echar|verter)',
        '(?:batch|soap|lye|batter|jabon|sosa|lote|masa)\\b.{0,20}\\b(?:sea(?! ?shells?)|river|lake|compost|garden|mar|rio|lago|campo|jardin)',
        20,
      ),
    ],
  ],
  [
    'washing-up',
    [
      near(
        '(?:how (?:do|can|should) i|what|como|can i|puedo|se puede)\\b.{0,12}\\b(?:clean\\w*|wash\\w*|friego|fregar|limpio|limpiar|lavo|lavar)',
        '(?:up|pots?|tools|gear|things|dishes|cacharros|ollas?|utensilios|cosas|trastos|herramientas)',
        24,
      ),
      near(
        '(?:dishwasher|lavavajillas|lavaplatos)',
        'soap\\w*|batter|lye|gear|tools|things|jabon|cosas|masa|sosa',
        40,
      ),
      near(
        'soap\\w*|batter|lye|gear|tools|things|jabon|cosas|masa|sosa',
        'dishwasher|lavavajillas|lavaplatos',
        40,
      ),
    ],
  ],
  [
    'when-safe',
    [
      near(
        '(?:post|mail|send|give|sell|enviar|mandar|regalar|vender|usar)(?:l[oa])?',
        `(?:${SOAP}|it)\\b.{0,24}\\b(?:after|in|at|a los|despues de|tras) (?:\\d+|one|two|three|un|dos|tres) (?:days?|weeks?|dias?|semanas?)`,
        8,
      ),
      near(
        '(?:cuando|when|desde cuando|how soon)(?: \\w+){0,2}',
        '(?:usar(?:lo|los)?|use (?:it|them)|lavarme|wash with it)',
        12,
      ),
    ],
  ],
  [
    'outdoors',
    [
      near(
        `${ASKS}`,
        '(?:balcony|garden|garage|outside|outdoors|terrace|balcon|jardin|garaje|terraza|patio|al aire libre|afuera)',
        24,
      ),
    ],
  ],
];
