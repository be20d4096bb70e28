import { unbroken } from '../../../over-lines.ts';

/** What a question of the bench is about; patterns over plain text: lower case, no accents, no marks. */
export const THINGS = {
  bar: '(?:soaps?|bars?|loaf|loaves|slabs?|jabon(?:es|cito|citos)?|pastillas?|barras?|bloque)',
  /** Bars or a loaf that a question does not name. */
  them: unbroken`
    (?:it|them|they|these|those|mine|the colou?red ones|(?:l[oa]s?|se) (?:guard|dej|pong|met|cort|us|sac|
    tir|regal|pued|tap|lav|almacen|estamp|cepill|cur)\w*|(?:guard|dej|pon|met|cort|us|sac|tir|regal|tap|lav|
    almacen|estamp|cepill|cur|sec)\w*l[oa]s?)
  `,
  colour:
    '(?:colou?r(?:s|ant|ants|ing)?|pigments?|micas?|oxides?|powders?|ultramarines?|color(?:es)?|colorantes?|pigmentos?|oxidos?|polvos?|ultramar(?:es)?)',
  dryPowder: unbroken`
    (?:micas?|oxides?|pigments?|powders?|ultramarines?|clays?|charcoal|titanium|oxidos?|pigmentos?|polvos?|
    ultramar(?:es)?|arcillas?|carbon|titanio|dioxido|verde|rojo|azul|amarillo)
  `,
  scent:
    '(?:scents?|fragranc\\w+|perfum\\w+|essential oils?|eos?|fos?|esencias?|aromas?|fragancias?|aceites? esencial\\w*)',
  alcohol: '(?:alcohol|isopropyl|isopropilico|ipa|rubbing alcohol|vodka)',
  glycerin: '(?:glycerine?|glicerina)',
  mould: '(?:mou?lds?|moldes?|liner|silicone|silicona)',
  swirl:
    '(?:swirl\\w*|marbl\\w+|hanger|skewers?|chopsticks?|remolin\\w+|marmol\\w+|percha|palito|palillos?|brocheta)',
  /** One of these has its own answer. */
  namedSwirl:
    '(?:drop|in the pot|pot|hanger|spoon|comb|divider|column|funnel|gota|olla|percha|cuchara|peine|divisor\\w*|columna)',
  trace: '(?:trace|traza)',
  layer: '(?:layers?|capas?|franjas?|stripes?)',
  gel: '(?:gel(?: phase)?|gelling|gelific\\w+|fase (?:de )?gel)',
  fat: unbroken`
    (?:fats?|lard|tallow|butters?|shea|cocoa butter|coconut(?: oil)?|palm|hard oils?|solid oils?|grasas?|
    manteca\w*|sebo|karite|coco|palma|aceites? (?:duros?|solidos?))
  `,
  knife:
    '(?:knife|knives|wire|cutters?|cheese slicer|guitar|dough scraper|cuchill\\w+|cortador\\w*|alambre|hilo|cuerda|guitarra|lira)',
  tools: unbroken`
    (?:pots?|pans?|jugs?|bowls?|blenders?|tools?|utensils?|spoons?|sieve|strainer|things|gear|ollas?|
    jarras?|bol(?:es)?|batidora|minipimer|utensilios|cacharros|cucharas?|trastes?|colador|cosas)
  `,
  cleaner: '(?:bleach|vinegar|lavandina|cloro|lejia de la ropa|vinagre)',
  blender:
    '(?:stick ?blender|hand ?blender|immersion blender|blender|mixer|minipimer|batidora(?: de mano)?|mixer)',
  blenderStuff: '(?:plastic|metal|steel|stainless|alumin\\w+|plastico|acero|inoxidable)',
  water: '(?:water|agua)',
  lye: '(?:lye|naoh|caustic|sosa|soda|lejia)',
  lyeWater: '(?:lye ?water|lye solution|agua (?:de|con) (?:la )?(?:sosa|soda|lejia))',
  fridge:
    '(?:fridge|freezer|refrigerator|heladera|nevera|refri|refrigerador\\w*|frigorifico|congelador|freezer)',
  sun: unbroken`
    (?:outside|outdoors|(?:in|under) the sun|sunny|balcony|garden|shed|patio|porch|windowsill|al sol|afuera|
    balcon|terraza|galpon|jardin|a la intemperie|ventana|(?:en|con) el sol)
  `,
  damp: '(?:damp|humid\\w*|wet climate|rainy|steamy|humedad|humed[oa]s?|lluvi\\w+|no (?:hay )?(?:un )?lugar seco|no dry (?:place|room))',
  cold: unbroken`
    (?:cold (?:house|room|kitchen|garage|shed|weather|here|place|flat)|freezing|winter|no heating|(?:[0-9]|
    1[0-5]) degrees|casa fria|cocina fria|(?:hace|tengo|mucho) frio|invierno|sin calefaccion)
  `,
  salt: '(?:sea salt|salt(?: bars?)?|brine|sal (?:marina|fina|gruesa)|(?:de|con|la|le|en|pongo|echo|poner) sal|salmuera)',
  white: '(?:white|titanium(?: dioxide)?|td|tio2|blanco|dioxido(?: de titanio)?|titanio)',
  zinc: '(?:zinc(?: oxide)?|oxido de zinc)',
  sensitive: unbroken`
    (?:(?:sensitive|delicate|dry|itchy|touchy|bad|problem) skin|skin (?:is )?(?:very |so |
    really )*(?:sensitive|delicate|dry)|eczema|dermatitis|psoriasis|piel (?:\w+ )?(?:sensible|delicada|seca|
    atopica|reactiva)|piel (?:es |esta )?(?:muy |tan )*(?:sensible|delicada|seca))
  `,
  occasion: unbroken`
    (?:christmas|xmas|easter|mothers? day|fathers? day|valentine\w*|wedding|birthday|fair|market|fete|party|
    shower|school do|diwali|eid|hanukkah|thanksgiving|halloween|navidad(?:es)?|reyes|pascuas?|
    dia de la? (?:madre|padre|mama|papa)|san valentin|boda|casamiento|cumple\w*|feria|mercado|fiestas?|
    bautizo|comunion|kermes|january|february|march|april|may|june|july|august|september|october|november|
    december|enero|febrero|marzo|abril|mayo|junio|julio|agosto|septiembre|setiembre|octubre|noviembre|
    diciembre)
  `,
  /** Oil that went off in a bar. */
  rancid:
    '(?:rancid\\w*|ranci[oa]s?|old oil|stale oil|crayons?|aceite viejo|orange (?:spots?|dots?|freckles)|(?:manchas?|pecas|puntos) naranjas?)',
  olive: '(?:olive|castile|bastile|aceite de oliva|oliva|castilla)',
  grit: unbroken`
    (?:scrub\w*|exfoli\w+|scratch\w*|gritty|grit|pumice|oat\w*|poppy seeds?|coffee grounds?|raspa\w*|
    rasguñ\w+|piedra pomez|pomez|avena|amapola|aspero|coffee grinder|molinillo)
  `,
  scraps: unbroken`
    (?:scraps?|off ?cuts?|trimmings?|shavings?|leftover (?:soap|bits|pieces)|bits left|
    ends of (?:the )?(?:bars?|loaf)|recortes?|retazos?|virutas?|sobrantes?|restos (?:de )?jabon|puntas)
  `,
  metalCup:
    '(?:brass|copper|bronze|iron|cast iron|tin|zinc|galvani[sz]ed|alumin\\w+|laton|cobre|bronce|hierro|lata|hojalata|galvanizad\\w+)',
  embed: unbroken`
    (?:embeds?|inserts?|soap dough|cylinders?|(?:soap )?(?:shapes?|hearts?|balls?|curls?|chunks?) (?:inside|
    in (?:the|a) (?:soap|loaf|bar))|incrust\w+|cilindro\w*|embebid\w+|rulos?|corazon(?:es)? (?:adentro|
    dentro))
  `,
  stamp: '(?:stamp(?:s|ed|ing)?|emboss\\w*|sell(?:a|an|o|ar|arlos?|arlas?)|estamp\\w+)',
  ash: '(?:ash|ashy|soda ash|ceniza|polvillo blanco|white (?:dust|powder|film|bloom))',
  pinch: '(?:pinch|smidgen|dash|tad|pizca|puntita|punta de (?:cuchillo|cuchara))',
  cups: '(?:(?:by|in|with) cups?|cup measures?|cups|en tazas|por tazas|con tazas|a ojo)',
  recipe: '(?:recipes?|receta|formula)',
  batter:
    '(?:batter|raw soap|liquid soap|in the pot|in the jug|masa|mezcla cruda|en la olla|en la jarra|en crudo)',
  pomace: '(?:pomace|orujo)',
  /** What is washed with soap but no skin. */
  housework:
    '(?:floors?|laundry|dishes|drains?|cleaning|stains?|bathroom|dog|pisos?|suelos?|ropa|platos|trapos|limpieza|bano)',
  holder:
    '(?:bottle|jar|cup|pot of (?:mica|colou?r)|squeezy|syringe|botella|frasco|bote|vaso|vasito|jeringa)',
  fan: '(?:fan|extractor|hood|window|ventilador|campana|extractor|ventana)',
  warmWater: '(?:(?:warm|hot|boiling|tepid|lukewarm) water|agua (?:tibia|caliente|hirviendo|templada))',
  syringe:
    '(?:syringes?|jeringas?|thermometer|termometro|scales?|balanza|bascula|whisk|frother|espumador|batidorcito)',
  softness:
    '(?:soft|squishy|squidgy|bland[oa]s?|not (?:hard|firm)|wont (?:harden|set)|no (?:endurece|se endurece|se pone dur[oa]))',
  titanium: '(?:titanium(?: dioxide)?|td|tio2|dioxido(?: de titanio)?|titanio)',
  /** What a soap maker has at home to pour into. */
  container: unbroken`
    (?:shoe ?box|(?:milk|juice) cartons?|crisp tubes?|yogh?urt pots?|margarine tubs?|ice cream tubs?|
    bread tin|cake tin|loaf tin|muffin (?:tin|tray)|baking tray|cardboard box|drawer|biscuit tin|
    caja de (?:zapatos|carton|leche)|cartones? de (?:leche|jugo)|potes? de (?:yogur|helado)|budinera|
    asadera|bandeja de horno)
  `,
  shade: '(?:shades?|hues?|tonos?)',
  /** A powder that is wetted already. */
  wetted:
    '(?:(?:in|en|with|con) (?:the |el |la )?(?:oil|water|glycerine?|aceite|agua|glicerina)|mixed|wetted|premix\\w*|mojad\\w+|mezclad\\w+)',
} as const satisfies Record<string, string>;
export type Thing = keyof typeof THINGS;
