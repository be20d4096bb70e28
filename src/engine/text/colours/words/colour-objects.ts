import { unbroken } from '../../../over-lines.ts';

/**
 * Things of kitchen, market, garden and street that colours are likened to, in both languages, lower case without accents. From
 * memory, as {@link COLOUR_WORDS} is.
 */
export const OBJECTS_BY_HEX: Readonly<Record<string, string>> = {
  // plants and landscapes
  '#f2c318': unbroken`
    gorse|broom|retama|aliaga|furze|buttercup|ranunculo|mustard flower|mimosa|forsythia|canola|colza|bee|
    abeja|highlighter orange|pencil|lapiz amarillo|cheese yellow|guayacan
  `,
  '#e8f22a':
    'highlighter|highlighter yellow|resaltador|marcatextos|subrayador|tennis ball|pelota de tenis|glow stick|neon yellow|amarillo neon|hi vis',
  '#7fd61a': unbroken`
    slime|slime green|moco|verde moco|alien|alien green|radioactive|toxic green|nuclear green|verde nuclear|
    lime soda|antifreeze|green goo|verde fosforescente|fosforescente
  `,
  '#3b2a20': unbroken`
    peat|turba|turf|wet turf|wet earth|tierra mojada|tierra humeda|soil|wet soil|compost|mulch|abono|
    wet bark|coffee grounds|posos de cafe|cuncho|garden soil|tierra negra
  `,
  '#6a5040': unbroken`
    bark|corteza|tree bark|corteza de arbol|tree trunk|tronco|driftwood|deer|venado|ciervo|bear|oso|mink|
    vison|beaver|sparrow|gorrion|otter|nutria|dry mud|barro mojado|lodo|fango|walnut shell|cascara de nuez
  `,
  '#9a6030': unbroken`
    dead leaf|dead leaves|dry leaf|dry leaves|hoja seca|hojas secas|hojarasca|acorn brown|tawny|leonado|
    pine cone|pina de pino|squirrel|ardilla|pottery|ceramica|terracotta dark|cork dark|lion|leon|rattan|
    mimbre|wicker|hay bale
  `,
  '#b8551f': unbroken`
    autumn leaves|autumn leaf|fall leaves|fall leaf|hojas de otono|otono|autumn|maple leaf|hoja de arce|
    maple leaves|robin breast|orangutan|irish setter|ginger hair|pelirrojo|red hair|pelirroja
  `,
  '#d9c27a': unbroken`
    hay|heno|dry grass|hierba seca|pasto seco|flax|lino seco|rafia|raffia|burlap|arpillera|yute|jute|cork|
    corcho|rope|cuerda|soga|mimbre claro|blond|blonde|rubio|rubia|manila|chamois|parchment|pergamino|
    old paper|papel viejo|papel antiguo|newspaper|periodico viejo|old book|libro viejo|dune|duna|savanna|
    desert|desierto|beach|playa
  `,
  '#6fa08b': unbroken`
    verdigris|verdin|cardenillo|weathered copper|oxidized copper|oxidised copper|cobre oxidado|cobre viejo|
    copper roof|tarnished copper|copper patina|patina|statue of liberty|techo de cobre|old bronze|
    bronce viejo|bronce oxidado|eucalyptus leaf|sea kelp
  `,
  '#5f7780': unbroken`
    cloudy sea|sea under cloud|mar nublado|mar gris|winter sea|grey sea|stormy sea|north sea|mar revuelto|
    mar de invierno|mussel|mejillon|wet slate|pizarra mojada|rain|lluvia|rainy day|dia nublado|cloudy day|
    rain cloud|storm sea
  `,
  '#4f5f8a': unbroken`
    mussel shell|inside of a mussel|mussel blue|mejillon por dentro|blue shadow|dusk|crepusculo|anochecer|
    twilight|nightfall|larkspur dusk|blue hour|hora azul
  `,
  '#f2c2b0': unbroken`
    dawn|amanecer|aurora|alba|dawn sky|sunrise|cielo de amanecer|salida del sol|conch|caracola|shell pink|
    seashell|concha|peach blossom|flor de durazno|rose gold light
  `,
  '#9a6f9c':
    'heather flower|heather hillside|thistle|cardo|flor de cardo|dried lavender flower|violetilla|lilac dusk|amatista apagada|orchid dark',
  '#a590cc':
    'lavender flower|flor de lavanda|lavender field|campo de lavanda|lavanda flor|wisteria flower|crocus|azafran flor|aster|salvia flower',
  '#5563b8': unbroken`
    bluebonnet|bluebell|campanula|campanilla|nomeolvides oscuro|forget me not deep|gentian|genciana|
    larkspur|delphinium|espuela de caballero|agapanthus|agapanto|cornflower blue|pensamiento azul|blue iris
  `,
  '#8fb0e8':
    'forget me not|nomeolvides|plumbago|hydrangea blue|hortensia azul|chicory|achicoria|flax flower|flor de lino',
  '#a8b8a0':
    'lichen|liquen claro|dusty miller|cineraria|lamb ear|oreja de conejo|olive leaf|hoja de olivo|artemisa|wormwood|ajenjo|agave|maguey|penca|frosted mint',
  '#5a7a4a': unbroken`
    seaweed|alga|algas|kelp|nori|olive tree|kale|col rizada|acelga|chard|broccoli|brocoli|zucchini|
    calabacin|cilantro|perejil|parsley|rosemary|romero|oregano|bay leaf|laurel|pea pod|watermelon rind|
    cascara de sandia|crocodile|cocodrilo|iguana|turtle|tortuga|lizard|lagarto|alligator|pine needle|
    wine bottle|botella de vino|pool table|mesa de billar|billar
  `,
  // metals, stones, cloth
  '#8b8f92': unbroken`
    pewter|peltre|zinc|tin|estano|aluminium|aluminum|aluminio|nickel|niquel|iron|hierro|nun grey|sidewalk|
    acera|banqueta|anden|seal|foca|dolphin|delfin|donkey|burro|squirrel grey|mouse|raton|pigeon|paloma|
    granite|granito
  `,
  '#a8a296': unbroken`
    greige|mushroom grey|limestone|piedra caliza|caliza|travertine|travertino|gravel|grava|oyster|ostra|
    clam|almeja|pumice|piedra pomez|driftwood grey|nickel silver|marmol gris
  `,
  '#e6e3dc': unbroken`
    marble|marmol|alabaster|alabastro|porcelain|porcelana|oyster shell|concha de ostra|mother of pearl|
    nacar|madreperla|opal|opalo|moonstone|piedra luna|moon|luna|snow shadow|quartz|cuarzo|cotton|algodon|
    chalk|tiza|gis|plaster|yeso|swan|cisne|polar bear|oso polar|sheep|oveja|wool|lana|paper towel|azucar|
    cloud|nube|rice water|coconut flesh
  `,
  '#4f8060': unbroken`
    serpentine|serpentina|marble green|marmol verde|jade dark|bottle|botella|aventurine|aventurina|
    green marble|fieltro|felt green|chalkboard|pizarron|tablero verde|spruce|abeto|sea moss
  `,
  '#1f6fc4': unbroken`
    copper sulphate|copper sulfate|sulfato de cobre|blue flame|llama azul|blue morpho|morpho|
    mariposa morpho|ink blue|tinta azul|hyacinth macaw|guacamaya azul|macaw|blue marker|gas flame
  `,
  '#b0338f':
    'permanganate|potassium permanganate|permanganato|orchid|orquidea|bougainvillea flower|flor de bugambilia|cattleya|jacaranda oscura|thistle bright',
  '#e6e14c': unbroken`
    sulphur|sulfur|azufre|primrose yellow|acid yellow|amarillo acido|lemon lime|limoncillo|starfruit|
    carambola|pomelo amarillo|lemon zest|lemon peel|cascara de limon|lemon rind
  `,
  '#5d3f66':
    'bruise|moreton|moraton|cardenal|bruised plum|storm purple|thunder purple|shadow purple|eyeshadow purple',
  '#7a4a28': unbroken`
    boot|bota|cowboy boot|saddle brown|silla de montar|belt|cinturon|cigar|habano|basketball|balon|
    briefcase|old leather|cuero viejo|violin|cello|guitar|guitarra|cinnamon bear|teddy bear|oso de peluche|
    monkey|chocolate milk|leche con chocolate|choco milk|cajeta oscura
  `,
  '#c07f52': unbroken`
    bronze skin|piel morena|moreno|morena|trigueno|triguena|bronceado|suntan|tanned skin|new penny|penny|
    moneda de cobre|centavo|copper pot|olla de cobre|copper wire|alambre de cobre|flower pot dry|
    caramel skin
  `,
  '#e8c4a0': unbroken`
    curita|tirita|skin tone|peach nude|nude rosado|ballet nude|porcelain skin|piel clara|human skin|pig|
    cochino|labrador|cappuccino light|piel de bebe|brown egg|brown egg shell|huevo moreno|
    cascara de huevo moreno
  `,
  '#7f98b5': unbroken`
    faded jeans|jeans gastados|jean desgastado|old jean|worn jeans|worn denim|faded denim|denim faded|
    jeans viejos|mezclilla deslavada|mezclilla gastada|chambray|light denim|light jeans|vaquero lavado|
    acid wash
  `,
  '#2a3d66':
    'new jeans|jeans nuevos|dark denim|raw denim|mezclilla oscura|school uniform|uniforme escolar|police|policia|marine uniform|blueprint|jeans oscuros',
  '#a6c8e4': unbroken`
    baby blanket|baby blanket blue|cobija de bebe|powdery blue|hospital gown|robins light|winter sky|
    cielo de invierno|cloudless light|blue eyes|aguamarina clara|blue smoke|humo azul|window glass
  `,
  '#b9d6cf':
    'duck egg|duck egg blue|huevo de pato|eau de nil|agua de nilo|mint milk|celadon|seladon|sea mist|bruma|spa|ocean mist',
  '#5fd0c8': unbroken`
    shallow water|shallow sea|shallow tropical water|pool water|swimming pool|agua de piscina|
    agua de alberca|agua de pileta|lagoon water|cancun|maldives|maldivas|cenote|bali|tropical|
    aguas tropicales|mint turquoise|turquoise stone
  `,
  '#e0481e': unbroken`
    ember|embers|brasa|brasas|hot coal|lava flow|magma|chili red|crayfish|cangrejo|crab|lobster|langosta|
    goldfish|pez dorado|koi|poppy orange|flamboyan|coral reef|monarch wing|mariposa monarca|volcano|volcan|
    stove|fogata|bonfire|campfire|flame|flames
  `,
  '#cc2a2a': unbroken`
    fire truck|camion de bomberos|firetruck|telephone box|santa|ladybug|mariquita|catarina|cardinal bird|
    chili pepper|pimiento|pimiento rojo|bell pepper|red pepper|manzana|apple|rosa roja|red rose|valentine|
    clown nose|stoplight|semaforo|cherry tomato|geranium|geranio|cardenal rojo|achira
  `,
  '#f28a8a': unbroken`
    sunset pink|pink sunset|rosa atardecer|atardecer rosado|pinky orange|pinkish orange sunset|coral sunset|
    watermelon juice|salmon fuerte|hibiscus|hibisco|cayena|begonia|impatiens|flamingo light
  `,
  '#7a838c': unbroken`
    raincloud|rain clouds|nube gris|nube de lluvia|cielo gris|grey sky|cielo nublado|overcast|lead|plomo|
    battleship|shark|tiburon|whale|ballena|wolf|lobo|asphalt light|wet pavement|pavimento mojado|smoke|humo|
    koala|rhino|rinoceronte|hippo|hipopotamo|elephant skin
  `,
  '#2d2d30': unbroken`
    asphalt|asfalto|onyx|onix|obsidian|obsidiana|crow|cuervo|raven|panther|pantera|black cat|gato negro|
    liquorice|licorice|regaliz|black bean|frijol negro|oil spill|petroleo crudo|tire rubber|caucho|
    burnt wood|madera quemada|charred wood|chimney|hollin|soot|bbq charcoal|burnt toast|black tea leaf|
    truffle|vinyl|vinilo|blackboard|emo|goth|gotico
  `,
  // places, weather, plants and things about the house
  '#56666e':
    'loch|loch water|lake in winter|lago en invierno|estuary|estuario|rainy sky|cielo lluvioso|dia lluvioso|dull day|dia gris',
  '#3f7f9a': 'lake|lago|pond|fjord|fiordo|river|rio',
  '#63c8cf': 'caribbean sea|pileta',
  '#9ba6ad': 'drizzle|llovizna|nublado|cloudy sky|puddle|charco|rainy morning|manana lluviosa',
  '#e6c9bf': 'first light|aurora rosa|madrugada',
  '#6b6080': 'gloaming',
  '#1c2340': 'starry night|noche estrellada',
  '#c9dfe9': 'iceberg|icicle|carambano|frozen lake',
  '#e9e6df': 'chalk cliff|acantilado blanco|nubes|salt flat|salar|sea foam white',
  '#b08f63': 'brown paper|papel kraft|papel de estraza|hessian|straw hat|sombrero de paja',
  '#d8bd8a': 'oat|oat straw|sawdust|aserrin|serrin',
  '#cfae7e': 'sandstone|piedra arenisca|arenisca',
  '#b5533a':
    'canyon|red rock|roca roja|red earth|tierra roja|flowerpot|roof tile|brick dust|polvo de ladrillo|rooftop',
  '#e3a587':
    'bisque|bisque pink|earthenware|loza|terracotta pink|unglazed clay|unglazed earthenware|barro crudo',
  '#43a18a': 'old copper',
  '#2e3133':
    'iron railing|wrought iron|hierro forjado|cast iron|hierro colado|gunpowder|polvora|magpie|blackbird|mirlo|lava rock|roca volcanica|basalt|basalto',
  '#b8c169': 'gooseberry|uva espina|green gage|greengage|pear skin|lima pelada|pomelo verde|willow',
  '#c9566a': 'rhubarb|ruibarbo|pink rhubarb|rhubarb stalk|rabanito',
  '#a83f50': 'fig inside|inside of a fig|higo por dentro|fig flesh|pulpa de higo|blood moon|luna de sangre',
  '#f2a38f': 'inside of a shell|interior de concha|prawn pink',
  '#d9b581': 'fudge candy|penuche|vanilla fudge|shortbread|mantecado|polvoron|turron|nougat',
  '#f4efe0':
    'rice|arroz|rice milk|pulpa de coco|egg white|clara de huevo|feta|mozzarella|queso fresco|ricotta|requeson',
  '#a5b36b': 'young leaf|hoja tierna|lupulo',
  '#3f7a35': 'coriander|lawn|jardin|holly|acebo|meadow|prado|pradera|hedge|seto|vineyard|rainforest|selva',
  '#4b5a32': 'swamp|pantano|marsh|cienaga|caiman',
  '#3a2a1e': 'dark soil|humus|poso de cafe',
  '#a3622b': 'bracken|helecho seco|hoja de otono|fallen leaves|fox fur',
  '#9c7a45': 'dried leaves|tobacco leaf|hoja de tabaco',
  '#9b7ca6': 'heath|moorland|moor',
  '#6a6fc9': 'bluebells|hyacinth|jacinto|iris flower|jacaranda azul',
  '#a07bd0': 'lilac blossom|statice',
  '#c15a9b': 'foxglove|dedalera|sweet pea|cosmos flower|rhododendron|rododendro',
  '#e8447a': 'camellia|camelia',
  '#f2c21a': 'tojo|broom flower|mimosa flower|flor amarilla|rapeseed',
  '#2c3e66': 'uniforme|vaqueros|tejanos|work overall|overol|mono azul',
  '#8ca5c1': 'vaqueros gastados',
  '#0e6b74': 'pato real|kingfisher|martin pescador',
  '#c62828': 'post box|buzon|phone box|ladybird|chilli pepper|aji rojo',
  '#8e1b2a': 'velvet red|terciopelo rojo|cardinal robe|theatre curtain|telon|rose petal red|petalo de rosa',
  '#e7e2da': 'mushroom cap|concha de mar|moonlight|luz de luna',
  '#a39b8f': 'hongo|madera de playa|taupe stone|galvanised',
  '#6d5c4b': 'river mud|barro de rio|wet clay|castor animal',
  '#cdb4e0': 'lavender field pale|unicorn|unicornio|fairy|hada|mermaid lilac',
  '#5fd0b5': 'cristal de mar|peppermint|hierbabuena|toothpaste|pasta de dientes',
  '#ffb347': 'clownfish|pez payaso|tangerine flesh|candle flame|hoguera|lantern',
  '#d8a0a6': 'ballet slipper|petal|petalo|dried petals|tea rose|plaster pink|yeso rosa|nude lipstick',
};
