import { unbroken } from '../../../../over-lines.ts';

/** What a general question near lye is about; patterns over plain text: lower case, no accents, no marks. */
export const LYE = unbroken`
  (?:lye|naoh|koh|caustic(?: sodas?)?|(?:sodium |potassium )?hydroxide|sosa|(?<!washing |baking |
  carbonato de |ceniza de )soda(?! ash| crystals| water| pop)(?: caustica)?|lejia|potasa|potash|hidroxido)
`;

const CLUMPED = unbroken`
    (?:humedec\w+|apelmaz\w+|(?:una |como |echa |hecha )?piedra|en bloque|hecho (?:un )?bloque|grumos?|terron(?:es)?|
    clump\w*|lumpy|lumps|(?:1|one|a) (?:(?:big|solid|wet|hard) )*lump|damp|rock|caked|(?:puso|hizo|quedo|
    volvio)(?: muy| toda| bien)? (?:dura|tiesa|solida))
  `;

export const THINGS = {
  lye: LYE,
  lyeWater: unbroken`
    (?:(?:hice|hicimos|prepare|mezcle|disolvi|made|mixed|dissolved|did) (?:up )?(?:my |the |our |la |el |mi )?(?:lye|caustic(?: soda)?|sosa|soda|
    lejia)(?: up)?(?: \w+){0,4} (?:anoche|ayer|last night|yesterday|the night before)|
    (?:mix|make|prepare|dissolve|preparar?|mezclar?|disolver|disuelvo|mezclo|hacer) (?:up )?(?:my |the |la |mi )?(?:lye|
    caustic(?: soda)?|sosa|soda|lejia)(?: up)?(?: \w+){0,3} (?:the (?:night|day|evening) before|in advance|ahead|tonight|la (?:noche|tarde) (?:antes|
    anterior)|el dia (?:antes|anterior)|la vispera|con antelacion|hoy)|lye ?water|lye solution|caustic solution|master ?batch\w*|
    naoh solution|agua (?:de|
    con) (?:la )?(?:sosa|soda|lejia)|(?:disolucion|solucion) de (?:la )?(?:sosa|soda|lejia)|(?:lye|sosa|
    soda|lejia)(?: \w+){0,3} (?:mixed|made up|made|ready|preparada|ya hecha|disuelta|mezclada|de ayer|
    from yesterday)|(?:mixed|made(?: up)?|cold) (?:my |the )?(?:lye|caustic)(?: from yesterday)?|
    \d+ (?:percent )?lye solution)
  `,
  liquid: unbroken`
    (?:milk|whey|cream|beer|ale|stout|lager|wine|cider|coffee|tea|sap|kombucha|juice|kefir|yogh?urt|leche|
    suero|nata|crema de leche|cerveza|vino|sidra|chicha|cafe|te|infusion|mate|savia|zumo|jugo|pulque|kefir|
    yogur)
  `,
  uncounted: unbroken`
    (?:clays?|kaolin|micas?|pigments?|oxides?|colou?rants?|colou?rs?|charcoal|honey|sugar|salt|oat ?meal|
    oats?|spices?|turmeric|cocoa powder|coffee grounds|exfoliants?|scents?|fragrances?|essential oils?|
    fragrance oils?|arcillas?|caolin|pigmentos?|oxidos?|colorantes?|carbon|miel|azucar|panela|piloncillo|
    papelon|sal|avena|especias|curcuma|esencias?|aromas?|fragancias?|aceites? esencial(?:es)?)
  `,
  wax: '(?:bees ?wax|wax(?:es)?|ceras?(?: de abejas?)?)',
  acid: '(?:vinegar|citric|citrico|lemon|limon|vinagre|acids?|acido)',
  superfat:
    '(?:super ?fat\\w*|lye discount|(?:sobre|super) ?engras\\w*|sobre ?grasa|descuento(?! de agua)(?: de (?:sosa|soda|lejia))?)',
  percent: '(?:\\d+ ?(?:percent|per cent|pct|por ciento)|\\d+ (?:sf|superfat)|percent|sf \\d+)',
  koh: '(?:koh|potash|potassium(?: hydroxide)?|potasa|potasio|hidroxido de potasio)',
  naoh: '(?:naoh|sodium(?: hydroxide)?|caustic soda|sosa|soda|sodio|hidroxido de sodio)',
  shape:
    '(?:flakes?|pearls?|beads?|prills?|granules?|microbeads?|escamas?|perlas?|lentejas?|granulad[oa]s?|hojuelas?)',
  bleachSoda: '(?:soda crystals|washing soda|soda ash|carbonat\\w+|bicarb\\w*)',
  tap: unbroken`
    (?:tap water|hard water|well water|rain ?water|distilled|bottled water|agua (?:del? |de la )?(?:grifo|
    llave|canilla|pozo|lluvia|fuente|manantial|rio)|spring water|agua dura|del grifo|de la llave|destilada|
    mucha cal|deionised|desionizada)
  `,
  water: '(?:water|agua)',
  oil: '(?:oils?|fats?|lard|tallow|butter|shortening|aceites?|grasas?|manteca|sebo|coco|oliva|coconut|olive|palm|palma|babassu)',
  usedOil: '(?:used|fry\\w*|rancid|waste|usad[oa]|frei[rd]\\w*|ranci[oa])',
  fullNames: '(?:caustic soda|sodium hydroxide|hidroxido de sodio|soda caustica|sosa caustica|naoh)',
  child: '(?:kids?|child(?:ren)?|ninos?|ninas?|hij[oa]s?|nietos?|alumn[oa]s)',
  cured: '(?:cured?|after (?:the )?cure|finished bars?|curad[oa]s?|ya curaron)',
  lyeHeavy: unbroken`
    (?:lye ?heavy|too much lye|(?:pasad[oa]|excedid[oa]) de (?:sosa|soda|lejia)|con exceso de (?:sosa|soda|
    lejia)|con (?:sosa|soda) de mas|caustic (?:soap|bars?))
  `,
  laundry: '(?:laundry|washing clothes|clothes|lavar (?:la )?ropa|para (?:la )?ropa)',
  table: unbroken`
    (?:sap (?:values?|table|chart|number)|saponification (?:values?|number|index|table)|mg koh|
    indice de saponificacion|tabla de saponificacion|valor(?:es)? de saponificacion|
    numero de saponificacion|(?:el )?indice|tabla de indices)
  `,
  drain:
    '(?:drain (?:cleaner|opener|unblocker|caustic|lye|stuff)|destapa ?(?:canos|canerias)|destapar canerias|desatascador)',
  ash: '(?:wood ash\\w*|ash(?:es)?|ceniza)',
  sodaAsh:
    '(?:soda ash|white (?:ash|dust|film|powder)|ceniza de (?:soda|sosa)|ceniza encima|polvo blanco|velo blanco)',
  trace: '(?:trace|traza)',
  bars: '(?:soaps?|bars?|jabon(?:es)?|barras?|pastillas?)',
  skin: '(?:sensitive skin|psoriasis|eczema|dry (?:old )?hands|piel sensible|psoriasis|eccema)',
  drinkBottle:
    '(?:(?:drinks?|soda|pop|water|juice|milk|soft drink) (?:bottle|can)s?|botellas? de (?:refresco|agua|gaseosa|bebida|jugo|leche))',
  milk: '(?:milk|leche)',
  sea: '(?:sea ?water|agua de(?:l)? mar|sparkling|fizzy|con gas)',
  raw: '(?:raw|fresh|uncured|loaf|crud[oa]s?|fresc[oa]s?|towel|blanket|toalla|manta)',
  spoon: '(?:table ?spoon\\w*|tea ?spoon\\w*|tbsp|tsp|cucharad\\w+|cucharit\\w+)',
  mass: '(?:\\d+ ?(?:k?g|kgs?|kilos?|grams?|gramos?|oz|ounces?|onzas?|lbs?|pounds?|libras?|ml|lit(?:er|re)s?|litros?))',
  animalFat: unbroken`
    (?:(?:bear|goose|deer|venison|sheep|mutton|lamb|goat|horse|elk|moose|duck) ?(?:fat|grease|tallow|suet|
    lard)|(?:grasa|sebo|manteca|unto) de (?:oso|ganso|ciervo|venado|oveja|borrego|carnero|cordero|cabra|
    chivo|caballo|pato))
  `,
  noCoconut:
    '(?:no|without|sin|neither)(?: palm(?: oil)?(?: and| or| nor)?(?: no)?| palma(?: ni| y| o)?)? (?:coconut|coco)',
  ratio: '(?:\\d to 1|\\d a 1|\\d 1 (?:water|agua|ratio)|[1-4] 1\\b|ratio|proporcion|x ?2)',
  strength:
    '(?:\\d+ percent(?: (?:lye|solution|sosa|soda))|concentrat\\w+|concentracion|lye solution|(?:sosa|soda|lejia) al \\d+)',
  purity: '(?:9[0-9](?: 9[0-9])? percent|9[0-9] 9[0-9]|purity|pureza|puridad)',
  titration: '(?:phenolphthalein|fenolftaleina|titrat\\w+|valoracion|valorar)',
  unlabelled:
    '(?:sin etiqueta|sin marca|sin nombre|en bolsit?as?|no (?:label|brand|name)|unbranded|without (?:a )?label|unlabel\\w+|sold loose|suelta|a granel)',
  ice: '(?:ice(?: cubes?)?|hielos?|cubitos?|cubos de hielo)',
  /** Poured into its water already. */
  inJug: '(?:(?:in|of|del?|en) (?:the |my |la |mi )?(?:jug|jarra)|bottom|fondo)',
  clumpedLye: `(?:${LYE}\\b(?:(?!soap|jabon|bar|batter|masa).){0,40}\\b${CLUMPED}|${CLUMPED}(?: \\w+){0,2} ${LYE})`,
  masa: '(?:batter|masa|mezcla)',
  recipe: '(?:batch|recipe|lote|receta|tanda)',
  plastic: '(?:plastics?|plasticos?)',
  liner: '(?:liners?|lined?|lining|forro|forrar|forrado)',
  mould: '(?:mou?lds?|moldes?)',
  zap: '(?<!no |not |doesnt |doesn t |does not |dont |sin )(?:zap\\w*|(?:da|dio|pega) (?:toque|corriente|chispa\\w*)|toque en la lengua)',
  earlyDay:
    '(?:(?:day|dia) (?:one|two|three|uno|dos|tres|[1-3])|(?:dos|tres|2|3|two|three) (?:days?|dias)|second day|segundo dia|next day|al dia siguiente)',
  label: '(?:label\\w*|etiqueta\\w*|inci|ingredients? list|lista de ingredientes)',
  noWater: '(?:left out|forgot|skipped|without|no|sin|olvid\\w+)(?: \\w+){0,2} (?:water|agua)',
  restOfLye: `(?:half|part|some|rest|mitad|parte|resto)(?: \\w+){0,2} ${LYE}`,
  sugar: '(?:sugar|azucar)',
  baby: '(?:bab(?:y|ies)|bebes?|newborns?|infants?)',
  clean: '(?:wash\\w*|clean\\w*|rins\\w+|lav\\w+|enjuag\\w+|limpi\\w+)',
  gloves: '(?:gloves?|guantes?|goggles|gafas)',
  colouring: '(?:colou?r\\w*|mica|pigment\\w*|tinte|color(?:es|ante)?)',
  hot: '(?:hot|warm|boil\\w*|caliente|tibia|hirviendo)',
  withoutLye: `(?:${LYE} free|without ${LYE}|sin ${LYE})`,
  overnight: '(?:over ?night|toda la noche|alone|unattended|sol[oa])',
  kilo: '(?:kilos?|kgs?|batch|lote|tanda|lit(?:er|re|ro)s?)',
  later: '(?:later|tomorrow|mas tarde|manana|in an hour|en una hora)',
  named:
    '(?:ci|e ?\\d{3}|eu|ue|europ\\w+|oxid\\w+|indigo|anil|red|rojo|blue|azul|green|verde|price|precio|what should|how much|cuanto)',
  scale: '(?:scales?|bascula|balanza|pesa)',
  otherLiquid: '(?:whey|sap|kefir|kombucha|buttermilk|suero|savia|pulque|chicha|suero de leche)',
  bites: '(?:bites?|muerde\\w*|pican?|ph \\d+|superfat came out|mold|moho)',
  inOil:
    '(?:(?:carried|mixed|wetted|dispersed|ground|mojad\\w+|disuelt\\w+) (?:in|with|en|con) (?:\\w+ )?(?:oil|aceite)|spoon of oil|cucharada de aceite)',
  sour: '(?:vinegar|lemon|lime juice|citric|limon|vinagre|citrico)',
  stored: '(?:stor(?:e|ing|ed)|guard(?:ar|o|arla))',
} as const;

export type Thing = keyof typeof THINGS;
