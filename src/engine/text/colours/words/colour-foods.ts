import { unbroken } from '../../../over-lines.ts';

/** Fruits, drinks, sweets and dishes that colours are likened to, in both languages, lower case without accents. From memory. */
export const FOODS_BY_HEX: Readonly<Record<string, string>> = {
  // fruits, flowers and resins of places
  '#dd9a45': 'lucuma|pulpa de lucuma|egg fruit|canistel',
  '#17a8b4': 'calipso|calypso|azul calipso',
  '#f2b5bd': 'frutilla con leche|leche con fresa|fresas con crema|strawberries and cream',
  '#c72c56': 'copihue|rosado copihue|copihue rosado',
  '#c9d6a0': 'absinthe|absenta|ajenjo|louched absinthe',
  '#a39b8b': 'ambergris|ambar gris',
  '#5a2f17': 'labdanum|ladano|myrrh|mirra|opoponax',
  '#b9aec4': 'orris|orris root|raiz de lirio|powdered violet',
  '#e39a2d': 'onoto|amarillo onoto|achiote en aceite',
  // drinks
  '#b07a4a': 'milky tea|tea with milk|te con un poco de leche|builders tea|masala chai',
  '#a5601f': 'tea|sweet tea|black tea|te negro|strong tea|te cargado|iced tea|te helado|broth|cider|sidra',
  '#c98f4e': 'weak tea|te clarito|apple juice|jugo de manzana|zumo de manzana|scotch|brandy|conac|ron|rum',
  '#2a1a12':
    'black coffee|cafe negro|cafe solo|tinto colombiano|espresso shot|cola|refresco de cola|molasses|melaza|stout',
  '#e9dfcb':
    'oat milk|leche de avena|horchata|orchata|almond milk|leche de almendra|soy milk|leche de soja|tahini|ajonjoli|sesamo',
  '#f6eecb': 'buttermilk|suero|cuajada|evaporated milk|leche condensada|condensed milk|clotted cream',
  '#a8274f':
    'agua de jamaica|flor de jamaica|hibiscus tea|te de jamaica|beet juice|jugo de remolacha|cranberry juice',
  '#f2c84b': 'passion fruit|maracuya|parcha|chinola|pineapple juice|cerveza clara|lager|light beer',
  '#5a1a24': 'oporto|cherry cola|grape must|mosto',
  '#9c5a24': 'aguapanela|agua de panela',
  // sweets and cooking
  '#e6dcc6': 'porridge|gachas|avena cocida',
  '#b5762f':
    'panela|piloncillo|papelon|chancaca|brown sugar|azucar morena|azucar moreno|raw sugar|demerara|maple syrup|golden syrup|sirope',
  '#7a4318':
    'burnt sugar|azucar quemada|caramelo quemado|burnt caramel|toast crust|crosta|costra de pan|bread crust|corteza de pan',
  '#c8925a': unbroken`
    toast|tostada|pan tostado|bread|pancake|waffle|biscuit brown|cookie|cookie dough|pie crust|masa de pan|
    cracker|peanut|cacahuate|mani|cacahuete|peanut butter|crema de cacahuate|cashew
  `,
  '#9a6a3a':
    'arequipe|manjar|cinnamon|polvo de canela|nutmeg|nuez moscada|allspice|clove|clavo|cumin|comino|granola',
  '#b8401a': unbroken`
    achiote|annatto|chile|chili|chile en polvo|chili powder|salsa|tomato soup|sopa de tomate|harissa|
    cayenne|chorizo|ketchup|barbecue sauce|hot sauce|salsa picante|gochujang|spicy chip dust
  `,
  '#5a3322':
    'mole|salsa de mole|gravy|soy sauce|salsa de soja|soya|balsamic|tamarind|tamarindo|datil|datiles|raisin|pasa|pasas|prune juice|brownie|fudge|brigadeiro',
  '#ffb27a':
    'sherbet|orange sherbet|sorbete de naranja|orange ice cream|orange cream|cheddar|cheese|queso|mac and cheese|queso amarillo',
  '#f4e3b0':
    'popcorn|palomitas|crispetas|white chocolate|chocolate blanco|cheesecake|egg nog|rompope|ponche|mayonnaise|mayonesa|noodle|arepa|masa de maiz',
  '#b5cf8f': unbroken`
    pistachio ice cream|helado de pistacho|key lime pie|wasabi|cucumber|pepino|celery|apio|cabbage|repollo|
    lettuce|lechuga|honeydew melon|green grape|uva verde|inside of an avocado|avocado inside|
    aguacate por dentro|lime pulp
  `,
  '#a89ac8':
    'blueberry yogurt|yogur de arandanos|blueberry ice cream|taro|ube milk|lavender milk|blueberry milk|helado de mora',
  '#7f5ba0': 'ube|purple yam|name morado|purple sweet potato|camote morado|potato purple',
  '#f4b6d2':
    'cotton candy pink|algodon dulce|taffy|marshmallow|malvavisco|bombon|strawberry ice cream|helado de fresa|yogur de fresa|strawberry yogurt|pink frosting',
  '#6fb8e8': 'blue cotton candy|blue raspberry|frambuesa azul|blue slush',
  // fruits and vegetables
  '#d9653b':
    'zapote|mamey|sapote|papaya|lechosa|fruta bomba|blood orange|naranja sanguina|grapefruit|toronja|pomelo|red lentil|lenteja roja|tomate de arbol',
  '#f29a5c': unbroken`
    curuba|banana passionfruit|cantaloupe melon|melon naranja|nispero|loquat|peach flesh|peach skin|
    piel de durazno|butternut|auyama|ahuyama|zapallo|squash|sweet potato|batata|boniato
  `,
  '#f9a825': unbroken`
    mango maduro|ripe mango|mango pulp|pulpa de mango|egg yolk|yema de huevo|amarillo huevo|corn kernel|
    elote|choclo|mazorca|uchuva|golden berry|aguaymanto|squash blossom|flor de calabaza|turmeric milk|
    saffron rice
  `,
  '#8fc04a': unbroken`
    biche|verde biche|verde tierno|unripe|green mango|mango verde|verde mango|green banana|platano verde|
    verde platano|verde retono|new leaf|brote|brotes|celery green|verde apio|green tomato|tomatillo|
    pea shoot|parakeet|periquito
  `,
  '#c2185b': unbroken`
    prickly pear|tuna roja|tuna|higo chumbo|prickly pear pink|dragonfruit pink|beetroot|beetroot pink|
    remolacha rosada|pickled onion|cebolla morada|cebolla encurtida|raspberry jam|mermelada de frambuesa|
    radish|rabano|cosmos|peony|peonia|azalea|petunia|fuchsia flower
  `,
  '#f2a0a0': unbroken`
    guava|guayaba|guava pink|guayaba rosada|pink grapefruit|toronja rosa|ham|jamon|shrimp|camaron|prawn|
    gamba|lox|smoked salmon|salmon ahumado|tongue|lengua|gum|encia
  `,
  '#4a2345': unbroken`
    eggplant skin|black plum|ciruela negra|acai|asai|blackcurrant|grosella negra|elderberry|sauco|mortino|
    jabuticaba|olive black|aceituna negra|kalamata|purple cabbage|lombarda|repollo morado
  `,
  '#b5c26a': unbroken`
    avocado flesh|pulpa de aguacate|pera verde|green olive|aceituna verde|edamame|lima bean|haba|habas|fava|
    artichoke|alcachofa|asparagus|esparrago|pickle juice
  `,
  '#e3d6b0':
    'garlic|ajo|parsnip|chirivia|cauliflower|coliflor|mushroom|champinon|seta|potato|patata|yuca|cassava|almond|almendra|oats|oatmeal|chickpea|garbanzo|hummus',
  '#7a2f2a': unbroken`
    kidney bean|frijol|frijol rojo|frijoles|habichuela|red bean|azuki|liver|higado|beef|carne|cherry wood|
    jamaica seca|dried chili|chile seco|chile ancho|dried rose|rosa seca|petalos secos|dried blood|
    sangre seca|sangre de toro
  `,
};
