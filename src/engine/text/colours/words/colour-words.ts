import { unbroken } from '../../../over-lines.ts';
import { MapWhenAsked } from '../../../when-asked.ts';
import { FOODS_BY_HEX } from './colour-foods.ts';
import { MATERIALS_BY_HEX } from './colour-materials.ts';
import { OBJECTS_BY_HEX } from './colour-objects.ts';

/**
 * Colour words of the trade and of everyday talk in both languages, lower case without accents, each with the middle of
 * what people mean by it in sRGB. From memory. They come before the open list of names, where a word may also be a joke.
 */
const WORDS_BY_HEX: Readonly<Record<string, string>> = {
  // whites, creams, sands
  '#f8f7f3':
    'white|blanco|blanca|pure white|snow white|blanco puro|blanco nieve|paper white|milk|milky|leche|blanco leche|coconut milk',
  '#f7f2e6': 'off white|blanco roto|blanco hueso|eggshell|cascara de huevo|soft white|natural|blanco natural',
  '#f1e7cd':
    'cream|creamy|crema|vanilla|vainilla|buttercream|nata|ivory cream|color crema|antique white|oatmeal milk',
  '#ece5d8': 'ivory|marfil|bone|hueso|pearl|perla|color hueso|linen|lino',
  '#d9c6a5':
    'beige|beis|sand|arena|color arena|wet sand|oatmeal|avena|nude|crudo|champagne|champan|cappuccino foam|biscuit|galleta|straw|paja|wheat|trigo|ecru',
  '#b99a6f': 'tan|khaki|caqui|camel|camello|cardboard|carton|latte|kraft',
  '#f0c8a8': 'skin|skin color|color carne|flesh|color piel|piel',
  // browns
  '#7b5233':
    'brown|marron|cafe|castano|color cafe|wood|madera|color madera|cinnamon stick|tierra|earth|dirt|mud',
  '#4a3122': unbroken`
    dark brown|marron oscuro|cafe oscuro|chocolate|dark chocolate|dark choc|choc|espresso|coffee|
    coffee brown|color chocolate|chocolate amargo|walnut|nogal|brown black|expreso
  `,
  '#7a4a2b': 'milk chocolate|chocolate con leche|hazelnut|avellana|acorn|bellota|mocha|moca|cocoa|cacao',
  '#7e3b2b': 'reddish brown|marron rojizo|cafe rojizo|chestnut|castana|mahogany|caoba|auburn|oxblood brown',
  '#6e4023': 'horse|horse brown|caballo|bay horse|leather|cuero|saddle|tabaco|tobacco',
  '#b98d66': 'cafe con leche|coffee with milk|milky coffee|capuchino|cappuccino|milk tea|te con leche|chai',
  '#b8743a':
    'caramel|caramelo|toffee|butterscotch|cajeta|dulce de leche|cinnamon|canela|ginger|jengibre|gingerbread',
  // greys and blacks
  '#161616':
    'black|negro|negra|jet black|pitch black|tire|tyre|tire black|tar|ink|coal|azabache|negro carbon|carbon|ebony|ebano|night|noche',
  '#3a3a3c': unbroken`
    charcoal|barro negro|black clay pottery|charcoal grey|dark grey|gris oscuro|gris marengo|graphite|
    grafito|anthracite|antracita|gris carbon|gris plomo|lead grey
  `,
  '#808080':
    'grey|gris|gray|medium grey|gris medio|concrete|hormigon|rat|gris raton|elephant|elefante|ash|ceniza|gris ceniza',
  '#8c8a86': 'wet cement|cement|cemento|gris cemento|stone|piedra|pebble|piedra mojada|rock',
  '#c4c4c4':
    'light grey|gris claro|silver|plata|plateado|gris perla|pearl grey|gris plata|dove|fog|niebla|mist',
  '#5f6a75':
    'storm cloud|storm|slate|pizarra|gris azulado|blue grey|grey blue|gris pizarra|stormy sky|thunder|tormenta|nube de tormenta|gunmetal|steel|acero',
  '#2f3133': 'almost black|casi negro|off black',
  // pinks
  '#f3d0d3': unbroken`
    pale pink|rosa palido|rosa palo|baby pink|rosa bebe|light pink|rosa claro|blush|blush pink|rubor|
    soft pink|rosa pastel|pastel pink|rosita|ballet|ballet pink|powder pink|cotton candy light
  `,
  '#f08fb0':
    'pink|rosa|rosado|rosada|bubblegum|bubble gum|chicle|rosa chicle|candy pink|cotton candy|algodon de azucar|carnation pink|flamingo|flamenco|piggy|cerdito',
  '#ff3fa0':
    'hot pink|rosa fuerte|neon pink|rosa neon|rosa chillon|doll pink|shocking pink|bright pink|rosa intenso',
  '#e4007c':
    'rosa mexicano|mexican pink|fucsia|fuchsia|bugambilia|buganvilla|bougainvillea|rosa fucsia|rosa magenta',
  '#c48a8c': unbroken`
    dusty rose|dusty pink|rosa viejo|rosa antiguo|old rose|rosa empolvado|vintage pink|dirty pink|
    antique pink|rosa sucio|rosa apagado|rosa cenizo|muted pink|rose taupe|palo de rosa|ashes of roses
  `,
  '#d4567c': 'rose|color rosa fuerte|raspberry sorbet|deep pink|rose pink|rosa oscuro|dark pink',
  '#c21e56': 'raspberry|frambuesa|berry|frutos rojos|cerise|rose red',
  '#ee5566': 'watermelon|sandia|melon rojo|strawberry|fresa|fresas|watermelon pink',
  '#f8b4bd':
    'pink lemonade|limonada rosa|strawberry milk|rose quartz|cuarzo rosa|sakura|cherry blossom|flor de cerezo|salmon claro',
  '#fa8072': 'salmon|salmon pink|rosa salmon|asalmonado',
  // reds
  '#cc1f2a': unbroken`
    red|rojo|roja|colorado|colorada|true red|fire engine|fire engine red|bright red|tomato|tomate|rojo tomate|apple red|
    rojo manzana|lipstick|lipstick red|christmas red|rojo navidad|rojo pasion|poppy|amapola|rojo vivo|
    rojo fuerte|scarlet|escarlata|candy apple|bermellon|rojo fuego|stop sign|rojo bandera|carmesi claro
  `,
  '#b8122b':
    'cherry red|cherry|cereza|rojo cereza|crimson|carmesi|ruby|rubi|carmin|cranberry|arandano rojo|pomegranate|granada',
  '#8c1520':
    'dark red|rojo oscuro|blood red|blood|sangre|rojo sangre|deep red|garnet|granate|rojo quemado|brick blood',
  '#800020': 'burgundy|borgona|burdeos|burdeo|bordo|bordeaux|oxblood|merlot',
  '#6e1230':
    'guinda|wine|vino|vinotinto|tinto|vino tinto|red wine|color vino|sangria|black cherry|cereza negra|wine red|rojo vino',
  '#5d1a28': 'maroon|marron rojo oscuro',
  '#a5402d':
    'brick|ladrillo|color ladrillo|brick red|rojo ladrillo|rojo oxido|rust red|tierra colorada|tierra roja|barro colorado|color tierra colorada',
  '#c4673f':
    'terracotta|terracota|clay|clay pot|clay flower pot|flower pot|maceta|barro|teja|color teja|color barro|arcilla|red clay|adobe|barro cocido',
  // oranges
  '#f47a63': 'coral|coralino|coral pink|color coral',
  '#f6bf99':
    'peach|durazno|melocoton|peachy|color durazno|apricot light|peaches and cream|peachy pink|peach pink|durazno claro',
  '#fbb66f': 'apricot|albaricoque|damasco|chabacano|mango claro|cantaloupe|melon|papaya claro',
  '#f0801f': unbroken`
    orange|naranja|anaranjado|anaranjada|tangerine|mandarina|clementine|carrot|zanahoria|orange juice|
    naranja vivo|calabaza clara|papaya|traffic cone|monarch|monarca
  `,
  '#d9751e':
    'pumpkin|calabaza|color calabaza|pumpkin pie|yam|camote|fall orange|naranja calabaza|pumpkin spice|persimmon|caqui fruta',
  '#f26b3a':
    'sunset|sunset orange|atardecer|naranja atardecer|puesta de sol|fire|fuego|fire orange|naranja rojizo|red orange|tiger lily|lava',
  '#bb5a1e':
    'burnt orange|naranja quemado|naranja tostado|dark orange|naranja oscuro|copper|cobre|cobrizo|paprika|pimenton',
  '#a4441f': 'rust|oxido|herrumbre|rusty|color oxido|oxidado|rust orange|fox|zorro|rusty nail',
  // yellows
  '#cf9f35': 'gold|oro|dorado|dorada|golden|old gold|oro viejo|antique gold|bronze|bronce|brass|laton',
  '#c29a25': 'mustard|mostaza|mustard yellow|color mostaza|amarillo mostaza|dijon|ochre|ocre|curry',
  '#d6a531': 'turmeric|curcuma|saffron|azafran|goldenrod|amarillo ocre|warm yellow',
  '#d9a441': 'albero|yellow earth',
  '#d99a2b':
    'honey|miel|color miel|amber|ambar|marigold|cempasuchil|caléndula|calendula|mango|whisky|beer|cerveza|maple|honeycomb|panal',
  '#f4d726': unbroken`
    yellow|amarillo|amarilla|sunshine|sun|sol|amarillo sol|bright yellow|amarillo vivo|lemon|limon amarillo|
    amarillo limon|canary|canario|amarillo canario|sunflower|girasol|school bus|rubber duck|taxi|
    banana peel|dandelion|corn|maiz|daffodil|narciso
  `,
  '#f3e9a0': unbroken`
    pale yellow|amarillo palido|light yellow|amarillo claro|butter|mantequilla|pastel yellow|
    amarillo pastel|soft yellow|custard|natilla|baby yellow|baby blanket yellow|primrose|
    amarillo mantequilla|chiffon
  `,
  '#f7eb9a': 'lemonade|limonada|lemon ice|lemon chiffon|lemon sorbet|lemon meringue',
  '#f5df76': 'banana|platano|platano maduro|pineapple|pina|color platano',
  '#fbe46b': 'amarillo pollito|pollito|chick|chick yellow|baby chick|amarillo huevo|yema|egg yolk',
  // greens
  '#7a7a35': 'olive|oliva|verde oliva|aceituna|verde aceituna|color oliva|moss light',
  '#5d6b34': 'olive green|moss|musgo|verde musgo|moss green|pickle|pepinillo|verde olivo|olivo',
  '#5c5e34':
    'olive drab|od green|army|army green|army color|verde militar|militar|verde ejercito|camo|camuflaje|military green|verde caqui|khaki green',
  '#a6dd34': unbroken`
    lime|lima|verde lima|lime green|chartreuse|verde limon|neon green|verde neon|key lime|limon verde|
    verde manzana|granny smith|apple green|green apple|manzana verde|kiwi|pistachio bright|verde chillon
  `,
  '#5cb531': unbroken`
    frog|rana|verde rana|frog green|grass|pasto|hierba|cesped|verde pasto|verde cesped|grass green|
    spring green|leaf|verde hoja|parrot|verde perico|verde loro|clover|trebol
  `,
  '#3fc94a': 'bright green|verde vivo|verde brillante|verde fuerte|shamrock|leprechaun',
  '#3a8a44': 'green|verde|verde medio|christmas green|verde navidad|cactus vivo|basil|albahaca',
  '#1f4d30': unbroken`
    dark green|verde oscuro|hunter green|hunter|pine|pino|verde pino|verde botella|bottle green|
    christmas tree|evergreen|verde bosque oscuro|deep green|verde profundo|spinach|espinaca
  `,
  '#22592f': 'forest|forest green|bosque|verde bosque|verde selva|jungle',
  '#00785a': 'emerald|esmeralda|verde esmeralda|emerald green|jade oscuro|malachite|malaquita',
  '#4fa67f': 'jade|verde jade|sea green|verde mar',
  '#a3b18a': unbroken`
    sage|salvia|verde salvia|sage green|eucalyptus|eucalipto|verde eucalipto|dusty green|verde seco|
    verde grisaceo|grey green|verde agave|lichen|liquen|matcha latte
  `,
  '#8aa05a':
    'matcha|te verde|green tea|avocado|aguacate|palta|verde aguacate|guacamole|pea|pea green|guisante|verde chicharo|pear|pera',
  '#5a7f45':
    'nopal|verde nopal|cactus|verde cactus|fern|helecho|ivy|hiedra|cucumber skin|aloe|sabila|succulent|suculenta',
  '#b2e3c5': unbroken`
    mint|menta|verde menta|mint green|minty|mint cream|pastel green|verde pastel|pale green|verde palido|
    light green|verde claro|mint ice cream|mint choc chip|helado de menta|verde agua claro|honeydew|
    pastel mint|pale mint
  `,
  '#93c572': 'pistachio|pistacho|verde pistacho|pistache|verde pistache',
  '#9fe0c5':
    'seafoam|sea foam|espuma de mar|seafoam green|aqua green|verde agua|verde espuma|aguamarina verdosa|seaglass|sea glass|vidrio de mar',
  // blue greens
  '#1f7d7d': 'teal|verde azulado|azul verdoso|cerceta|verde petroleo claro|blue green|green blue',
  '#0f6b70':
    'duck|pato|verde pato|mallard|azul pato|azul petroleo|petrol|petroleo|verde petroleo|peacock|pavo real|azul pavo real|dark teal|deep teal|azul pavo',
  '#3bbdb5': unbroken`
    turquoise|turquesa|azul turquesa|verde turquesa|aqua|aguamarina|aquamarine|robin egg|robins egg|
    caribbean|caribe|azul caribe|mermaid|sirena|lagoon|laguna|pool|alberca|piscina|tropical sea|
    verde agua marina|cyan|cian
  `,
  '#2fb5b8': 'tropical ocean|mar caribe|tropical water',
  // blues
  '#bcd7ea':
    'pale blue|azul palido|light blue|azul claro|ice blue|azul hielo|azul pastel|pastel blue|ice|hielo|soft blue|azul clarito|glacier|glaciar|frost|escarcha',
  '#89cff0': 'baby blue|azul bebe|celeste|azul celeste|baby boy blue|powder blue|azul cielo claro',
  '#79b4e3': 'sky blue|azul cielo|sky|cielo|summer sky|cornflower light|robin',
  '#2f5fc4': unbroken`
    blue|azul|medium blue|azul medio|azulito fuerte|bright blue|azul vivo|azul electrico|electric blue|
    cornflower|aciano|true blue|blueberry bright|lapis|lapislazuli|denim bright|azul fuerte|azul intenso|
    ultramar|ultramarine
  `,
  '#1f3fa8': unbroken`
    royal blue|azul rey|azul real|cobalt|cobalt blue|azul cobalto|cobalto|sapphire|zafiro|azul zafiro|
    azulon|talavera|azul talavera|azul francia|ultramarine blue|azul ultramar|azul ultramarino
  `,
  '#0f5e9c':
    'ocean|oceano|ocean blue|azul oceano|sea blue|sea|mar|azul mar|deep sea|azul mediterraneo|mediterranean',
  '#223a8f': 'deep blue|azul profundo|dark blue|azul oscuro|midnight sky|blue jay|hydrangea dark',
  '#1c2547':
    'navy|navy blue|azul marino|marino|midnight|midnight blue|azul noche|medianoche|azul medianoche|night sky|cielo nocturno|indigo dark',
  '#3b3f8f': 'indigo|anil|azul indigo|azul anil|blueberry|arandano|mora azul',
  '#4a6484':
    'jeans|denim|mezclilla|azul mezclilla|vaquero|tejano|azul vaquero|washed denim|blue jeans|old jeans|faded jeans|jean',
  '#7f93b5': unbroken`
    dusty blue|azul grisaceo|azul empolvado|french blue|steel blue|azul acero|muted blue|grayish blue|
    greyish blue|azul apagado|azul niebla|slate blue|azul humo
  `,
  '#8e93d6':
    'periwinkle|bigaro|vincapervinca|pervinca|azul lavanda|lavender blue|periwinkle blue|azul lila|hydrangea|hortensia|wisteria blue',
  // violets
  '#cbc1e4': unbroken`
    lavender|lavanda|color lavanda|light purple|morado claro|pastel purple|morado pastel|pale purple|
    lila claro|pale lavender|violeta claro|light violet|lavender haze|lavanda claro|moradito claro|
    malva claro
  `,
  '#c3a0d4': 'lilac|lila|color lila|orchid light|wisteria|glicinia|lilas|lilac pink|jacaranda claro|moradito',
  '#8f6fc6': 'jacaranda|amethyst|amatista|iris|lirio|heather|brezo',
  '#6f4db3': 'violet|violeta|color violeta|ultramarine violet|violeta ultramar|african violet|pansy',
  '#5a3fb0':
    'blue purple|purple blue|bluish purple|morado azulado|blue violet|azul violeta|violeta azulado|indigo purple|galaxy|galaxia',
  '#3f2a7a':
    'deep violet|violeta oscuro|violeta profundo|deep purple|dark purple|morado oscuro|royal purple|purpura real',
  '#7d3a96':
    'purple|morado|morada|purpura|medium purple|morado medio|morado fuerte|bright purple|nazareno|morado obispo|grape light|dinosaur|uva clara',
  '#5b2a86': 'grape soda|grape|uva|color uva|grape jelly|concord grape|grape juice|ultraviolet',
  '#5a2950': unbroken`
    plum|saskatoon berry|saskatoon|juneberry|serviceberry|chokecherry|capulin|ciruela|color ciruela|
    aubergine|eggplant|berenjena|color berenjena|prune|ciruela pasa|mulberry|zarzamora|mora|blackberry|
    byzantium|fig|higo|beet|betabel|remolacha|vino morado
  `,
  '#a9809c': unbroken`
    mauve|malva|dusty purple|dusty mauve|morado viejo|heather purple|dusty lavender|dusty violet|
    morado grisaceo|lavanda seca|berry milk|malva viejo|mauve pink|dusky mauve
  `,
  '#c2268f':
    'magenta|dragon fruit|dragonfruit|pitahaya|pitaya|fresa fuerte|magenta pink|jamaica|beet pink|rosa pitaya',
};

const byWord = (words: Readonly<Record<string, string>>): readonly (readonly [string, string])[] =>
  Object.entries(words).flatMap(([hex, names]) => names.split('|').map(name => [name, hex] as const));

/** Every word of the trade with its hex. */
export const COLOUR_WORDS: ReadonlyMap<string, string> = new MapWhenAsked(() => byWord(WORDS_BY_HEX));
/** What colours are likened to; a word of the trade comes before its namesake here. */
export const COLOUR_OBJECTS: ReadonlyMap<string, string> = new MapWhenAsked(() => [
  ...byWord(FOODS_BY_HEX),
  ...byWord(OBJECTS_BY_HEX),
  ...byWord(MATERIALS_BY_HEX),
]);
