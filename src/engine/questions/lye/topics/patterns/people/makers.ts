import { unbroken } from '../../../../../over-lines.ts';
import { CAUSTIC, HURT, KID, MAKING, said } from '../../care-words.ts';
import { near, type TopicPatterns } from '../topic.ts';

const SOAP = '(?:soaps?|bars?|jabon(?:es)?|pastillas?)';
const SOAPY = `(?:${SOAP}|batter|masa|${CAUSTIC}|jabon)`;

/** Of who makes soap and in which state, and of what happens in the room meanwhile; plain text. */
export const MAKERS_PATTERNS: TopicPatterns = [
  [
    'goggles-fog',
    [
      said(
        [
          'goggles|glasses|gafas|lentes|visor',
          'fog(?:s|ged|gy|ging)?(?: up)?|steam(?:s|ed|ing)? up|mist(?:s|ed|ing)? up|empan\\w+|vaho',
        ],
        'contact|contacto',
      ),
      said(
        [
          'took (?:off )?(?:my |the )?(?:goggles)|take (?:off )?(?:my |the )?goggles off|me (?:quite|quito|he quitado) las gafas',
        ],
        `${HURT}|contact|contacto|eyes? (?:is|are)|in (?:my|the) eye`,
      ),
    ],
  ],
  [
    'power-cut',
    [
      said(
        [
          unbroken`
            power (?:cut|went|outage|failure|is off)|electric(?:ity)? (?:went|cut|off|is off|failed)|
            blackout|lights? went (?:out|off)|se (?:fue|corto|ha ido) la (?:luz|corriente|electricidad)|
            apagon|(?:blender|batidora) (?:died|broke|stopped|won ?t work|no va|no funciona|se (?:paro|
            murio|rompio|ha roto))
          `,
        ],
        `${HURT}|shock|calambre|smok\\w*|humo|fell|cayo|shatter\\w*`,
      ),
    ],
  ],
  [
    'left-halfway',
    [
      near(
        unbroken`
          (?:leave|leaving|left|keep|store|save|put|guardar|guardo|dejar|dejo|deje|meter|
          meto)(?: the| my| la| mi| raw| soap)* (?:batter|masa(?! de pan)|soap mix\w*|mezcla de jabon)
        `,
        '(?:fridge|freezer|overnight|hours?|tomorrow|next day|later|nevera|frigorifico|congelador|manana|horas?|noche|otro dia|despues)',
        40,
      ),
      said(
        [
          unbroken`
            (?:stop|pause|break off|parar|paro|pausar|interrump\w+)(?: \w+){0,3} (?:half ?way|in the middle|
            part way|a (?:la )?mitad|a medias)|continue tomorrow|finish (?:it )?tomorrow|(?:seguir|sigo|
            terminar|acabar\w*|termino) manana
          `,
        ],
        `${HURT}|lye|sosa`,
      ),
    ],
  ],
  [
    'unsteady-hands',
    [
      said(
        [
          unbroken`
            blind|partially sighted|low vision|can ?t see well|see badly|visually impaired|ciego|ciega|
            invidente|veo (?:mal|poco)|parkinson\w*|shaky hands?|hands? (?:shake|tremble)|shaking hands|
            tremors?|(?:me )?tiembla\w*(?: el)? (?:pulso|las manos|la mano|mucho)|tiembla el pulso|
            weak (?:grip|hands)|arthritis|artritis|one hand(?:ed)?|manco|wheelchair|silla de ruedas
          `,
          'can|may|could|should|soap|lye|want\\w*|puedo|puede|podria|jabon|sosa|quier\\w+|am|soy|friend|amig[oa]|hands?|pulso',
        ],
        `${HURT}|palettes?|paletas?|which colou?rs?|que colores|blind test|after (?:the )?fumes|since|double blind|contest|challenge|reto`,
      ),
    ],
  ],
  [
    'class-rules',
    [
      said(
        [
          '(?:class(?:room)?|workshop|course|taller|clase|curso|aula)',
          unbroken`
            adults?|elderly|seniors?|old people|pensioners?|care home|mayores|ancianos|jubilados|adultos|
            residencia|running water|agua corriente|precautions?|precauciones|safety rules|normas|
            \d+ (?:people|personas|students|alumn[oa]s adult[oa]s)
          `,
          'lye|sosa|mix\\w*|soap|jabon|precauc\\w+|precautions?|water|agua|rules|normas',
        ],
        `windows?|ventanas?|ventilacion|cellar|sotano|${KID}|pupils|school|colegio|escuela|palette|colou?rs?|colores|${HURT}`,
      ),
    ],
  ],
  [
    'food-kitchen',
    [
      said(
        [
          unbroken`
            (?:restaurant|commercial|hotel|cafe|bakery|pub|canteen|catering|work|school) kitchens?|
            kitchen (?:of|in|at) (?:a |an |the |my |our )*(?:restaurant|pub|cafe|hotel|work|bakery|job|bar|
            canteen|school)|cocina(?: \w+)? (?:de|en|del)(?: un| una| mi| el| la)* (?:bar|restaurante|hotel|
            cafeteria|trabajo|comedor|colegio|panaderia)|cocina (?:industrial|profesional)|obrador|
            food truck
          `,
          `${SOAP}|${CAUSTIC}|soap`,
        ],
        HURT,
      ),
    ],
  ],
  [
    'not-sober',
    [
      said(
        [
          unbroken`
            (?:am|i m|im|bit|little|slightly|half|while|when|being|get|got) (?:drunk|tipsy)|^(?:a bit |
            slightly )?(?:drunk|tipsy)|hung ?over|(?:had|after) (?:a |some |a few |two |three |
            a couple of )?(?:drinks|beers?|wines?|glass of wine|glasses of wine)|borrach[oa]|(?:unas|dos|
            tres|un par de) (?:copas|cervezas|canas)|(?:he bebido|despues de beber|
            bebo)(?: \w+){0,2} ?(?:vino|cervezas?|alcohol)|resaca|stoned|on sleeping pills
          `,
          `${SOAPY}|make|making|hacer`,
        ],
        unbroken`
          drank|drunk (?:some |the |a |my )*(?:lye|water|it)|has drunk|have drunk|he|she|him|her|kid|child|
          son|daughter|baby|dog|cat|instead of|water|agua|jug|jarra|${HURT}|colou?r|bebio|hij[oa]|nin[oa]
        `,
      ),
    ],
  ],
  [
    'fan',
    [
      said(
        [
          'fans?|ventilador(?:es)?|air ?con\\w*|aire acondicionado',
          `mix\\w*|blow\\w*|sopl\\w+|mezcl\\w+|${CAUSTIC}|steam|vapor\\w*`,
        ],
        unbroken`
          big fan|fan of|fans of|hood|mask|extractor|campana|mascarilla|loaf|cool (?:the|my|it)|curing|cure|
          curado|cur(?:ar|ando)|dry(?:ing)?|secar|mica|dust mask|${HURT}
        `,
      ),
    ],
  ],
  [
    'flame-near',
    [
      said(
        [`candles?(?: is| are)? (?:burning|lit)|(?:burning|lit) candles?`, `${MAKING}|mix\\w*`],
        `alcohol|wax|scent|fragrance|fell|caught|on fire|sleeve|hair`,
      ),
      said(
        [
          unbroken`
            (?:gas )?boiler|caldera|calentador|pilot light|piloto|candles? (?:burning|lit|on|next|near|
            beside)|(?:lit|burning) candles?|velas? (?:encendidas?|al lado|cerca)|brasero|estufa de (?:gas|
            lena|butano)|fireplace|chimenea|open fire
          `,
          `${MAKING}|${CAUSTIC}|mix\\w*|mezcl\\w+`,
        ],
        `alcohol|vodka|scent|fragrance|wax|cera|caught|set fire|on fire|alight|${HURT}|prend\\w+|incendi\\w+|ard\\w+`,
      ),
      said(
        ['smok(?:e|ing)(?! (?:alarm|detector))|fum(?:o|ar|ando)|vap(?:e|ing)', MAKING],
        `oils?|aceites?|fats?|grasas?|blender|batidora|pot|alcohol|${CAUSTIC}|it|${HURT}|starts?|started`,
      ),
    ],
  ],
];
