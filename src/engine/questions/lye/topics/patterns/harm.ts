import { unbroken } from '../../../../over-lines.ts';
import { BLENDER, PET } from '../things.ts';
import { LYE, near, SOAP, type TopicPatterns } from './topic.ts';

const RAW = `(?:${LYE}|raw soap|(?:soap )?batter|jabon crudo|masa de jabon)`;
const DISH = unbroken`
  (?:flour|cakes?(?: batter| mix)?|(?:bread )?dough|bread|soup|stew|sauce|pancakes?|cookies|meal|dinner|
  food|harina|bizcocho|tarta|masa del? (?:pan|bizcocho|tarta|pizza)|sopa|guiso|salsa|galletas|comida|cena|
  puchero)
`;
const FOOD_POT = unbroken`
  (?:(?:sugar|salt|flour|spice|coffee|biscuit|cookie) (?:bowls?|jars?|pots?|tins?|shakers?|tubs?|
  canisters?)|azucarer[oa]s?|saleros?|(?:bote|tarro|frasco|lata)s? de (?:la |el )?(?:sal|azucar|harina|cafe|
  galletas))
`;
const WHITE =
  '(?:white (?:powder|flakes|crystals|granules|beads|stuff)|(?:polvos?|escamas?|cristales|granulos|perlas) blanc[oa]s?)';
const NO_LABEL =
  '(?:unlabell?ed|unmarked|(?:no|without|lost (?:its|the)|without a) labels?|sin (?:etiquetas?|rotul\\w+))';
const PLUGGED = `(?:${BLENDER}|cables?|cords?|plugs?|sockets?|extension leads?|hot ?plates?|slow cookers?|enchufes?|ollas? (?:lenta|electrica))`;
const SHOCK =
  '(?:shocks?|shocked|electrocut\\w*|sparks?|sparking|calambres?|calambrazos?|(?<!agua )corriente|descargas?|chispas?)';
const WET =
  '(?:fell|fallen|dropped|dipped|slid|slipped|wet|splashed|soaked|cay\\w*|caid[oa]|moj\\w+|salpic\\w+)';
const WET_BY = `(?:${LYE}|water|agua|batter|masa)`;
const WOUND = '(?:cuts?|wounds?|grazes?|scratch(?:es)?|cortes?|heridas?|rasgunos?)';
const BODY_THING = unbroken`
  (?:tattoos?|head lice|lice|nits|(?:open )?wounds?|(?:my|a|the|open) cuts?|teeth|intimate \w+|
  private parts|tatuajes?|piojos|liendres|heridas?|dientes|zona intima|partes intimas)
`;
const EATEN =
  '(?:lettuce|salad|fruits?|vegetables?|veg|meat|chicken|rice|dishes for food|lechuga|ensalada|frutas?|verduras?|carne|pollo)';
const WASHING_SOAP = `(?:${SOAP}|castile)`;

/** Of harm that may have been done already: to food, to somebody, by current; plain text. */
export const HARM_PATTERNS: TopicPatterns = [
  [
    'swallowed',
    [
      new RegExp(
        `^(?!.*\\b${PET}\\b).*\\b(?:drank|drunk|swallowed|ate|eaten|bebio|bebido|trago|tragado|comio|comido)\\b.{0,20}\\b${RAW}\\b`,
        'u',
      ),
      new RegExp(
        unbroken`
          ^(?!.*\b${PET}\b).*\b${LYE}\b.{0,60}\b(?:(?:they|we|she|he|i|kids|somebody|someone|people|
          everybody) (?:all )?(?:ate|drank|tasted|have eaten)|(?:(?:se )?l[oa]s? )?(?:comio|comieron|
          comimos|probo|probaron|probamos|bebieron))\b
        `,
        'u',
      ),
      near(
        unbroken`
          vomit\w*|throwing up|nause\w+|mareos?|devolv\w+|(?:tongue|mouth|throat|lengua|boca|
          garganta) (?:is )?(?:burn\w*|sore|blister\w*|quem\w+|hinchad\w*)
        `,
        'zap(?: ?test)?|tongue test|(?:prueba|test) de la lengua',
        24,
      ),
      near(
        'zap test|tongue test|(?:prueba|test) de la lengua',
        'vomit\\w*|throwing up|nause\\w+|(?:tongue|mouth|lengua|boca) (?:is |me )?(?:burn\\w*|sore|blister\\w*|quem\\w+|arde)',
        40,
      ),
    ],
  ],
  [
    'electric-shock',
    [
      near(PLUGGED, SHOCK, 40),
      near(SHOCK, PLUGGED, 30),
      near(PLUGGED, `${WET}\\b.{0,24}\\b${WET_BY}`, 16),
      near(WET, `${PLUGGED}\\b.{0,20}\\b${WET_BY}`, 12),
      new RegExp(
        `^(?!.*\\b(?:zaps?|tongue|lengua|${SOAP})\\b).*\\b(?:electric(?:al)? shocks?|electrocut\\w*|descargas? electricas?)\\b`,
        'u',
      ),
    ],
  ],
  [
    'lye-in-food',
    [
      near(
        LYE,
        unbroken`
          (?:in|into|on|over|(?<!next )to|en|(?<!junto )a|al(?! lado)|
          sobre)
          (?: the| my| a| an| her| his| our| la| el| mi| un| una| su)* ${DISH}(?! grade| pots?| bowls?| jars?)
        `,
        24,
      ),
      near(
        LYE,
        '(?:instead of|in place of|rather than|en (?:vez|lugar) del?|por)(?: the| la| el)? ?(?:sugar|salt|flour|azucar|sal|harina)',
        4,
      ),
      near(
        'confund\\w*|mistook|mixed up|swapped',
        `(?:azucar|sal|harina|sugar|salt|flour)\\b.{0,12}\\b${LYE}\\b.{0,30}\\b${DISH}`,
        12,
      ),
      near(DISH, `(?:has|had|got|with|tiene|lleva|con)(?: \\w+)? ${LYE}\\b.{0,8}\\b(?:in it|dentro)`, 12),
    ],
  ],
  [
    'maybe-lye',
    [
      near(FOOD_POT, `${WHITE}|${LYE}`, 50),
      near(`${WHITE}|${LYE}`, FOOD_POT, 50),
      near(NO_LABEL, `${WHITE}|${LYE}`, 60),
      near(`${WHITE}|${LYE}`, NO_LABEL, 40),
      near(
        WHITE,
        '(?:gets? (?:very |really )?(?:hot|warm)|heats?(?: up)?|warms?(?: up)?|(?:se )?calienta)\\b.{0,16}\\b(?:water|agua)',
        60,
      ),
      near(
        'heats?|warms?|calienta',
        `(?:water|agua)\\b.{0,30}\\b(?:${WHITE}|is it ${LYE}|es ${LYE}|que es)`,
        8,
      ),
      near(
        'says|label\\w*|marked|pone|dice|etiqueta',
        `${LYE}\\b.{0,24}\\b(?:but|pero)\\b.{0,40}\\b(?:baking soda|bicarbonat\\w*|sugar|salt|azucar|sal)`,
        24,
      ),
      near('taste|lick|probar\\w*|pruebo|lamer', `(?:if|whether|si) (?:it is|it s|its|es|sea) ${LYE}`, 40),
    ],
  ],
  [
    'not-for-washing',
    [
      near(
        'wash\\w*|clean\\w*|rins\\w+|brush\\w*|lav\\w+|limpi\\w+|cepill\\w+',
        `(?:${EATEN}|${BODY_THING})\\b.{0,20}\\b(?:with|con)\\b.{0,24}\\b${WASHING_SOAP}`,
        12,
      ),
      near(
        WASHING_SOAP,
        `(?:on|for|against|para|en|contra|sobre)(?: \\w+){0,2} ${BODY_THING}(?! (?:shape|design|style))`,
        24,
      ),
    ],
  ],
  [
    'soap-in-wound',
    [
      near(
        `${RAW}|soap|jabon|sosa`,
        `(?:in|into|en|sobre)(?: a| my| the| an| her| his| un| una| mi| el| la)?(?: open| deep| small)? ${WOUND}(?! (?:mou?lds?|loaf|bars?|pieces|end))`,
        16,
      ),
      near(
        '(?:me|se) (?:he|ha|hice|hizo)(?: hecho| cortado)?',
        '(?:un corte|con (?:el|un) cuchillo)\\b.{0,30}\\bjabon',
        12,
      ),
      near('cut', '(?:my|her|his) (?:finger|hand|thumb)\\b.{0,40}\\b(?:soap|loaf|batter|lye)', 4),
    ],
  ],
];
