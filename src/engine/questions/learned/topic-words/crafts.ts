import { spaced } from '../../../over-lines.ts';

/** Words of kitchens and of other crafts; as `topics.ts` says of all of these lists. From memory. */
export const OF_CRAFTS = {
  cloth: spaced`
    tshirt* camisa* camiseta* playera* remera* polera* jeans denim mezclilla wool woollen yarn* hilo hilos
    estambre fabric* vestido* falda* skirt* trouser* pantalon* leggings jumper* sweater* sueter* jersey*
    chompa cardigan scarf scarves bufanda* poncho* hoodie* jacket* chaqueta* chamarra* campera* abrigo shoe
    shoes zapato* calcetin* medias bolso* coser costura* knit* tejer tejido tejiendo crochet* ganchillo
    blouse* blusa* mordant* mordiente* alum alumbre batik* shibori spinning roving felting fieltro felt
    loom macrame embroider* bordar bordado quilting zipper* cremallera* cierre boton botones seam
    dobladillo leotard uniform* shirt* lana* tela* dress* curtain* cortina* sock* sew* polo polos sheet
    sheets sabana* bedding pillow shawl chal apron delantal bandana panuelo pashmina overalls hem hems
    dobladill* needle needles aguja agujas patchwork quilt quilts bobbin bobina overlock seamstress
    costurer* modista tailor sastre zurcir darn darning ganch* bodice pleat pleats pliegue* pespunte tul
    tulle saten encaje corduroy pana polyester poliester nylon lycra gabardina lino adire ankara kente sari
    saree dupatta kimono cowhide jean dyebath azulete azulillo dyer tintorer* serigraf*
  `,
  food: spaced`
    mayonnaise mayonesa salami sausage* salchicha* chorizo* ham jamon bacon tocineta papa papas papitas
    fries noodle* ramen ravioli* spaghetti espagueti* lasagn* gnocchi noquis gravy broth caldo latte
    smoothie* licuado* lemonade limonada cocktail* coctel* brownie* muffin* cupcake* flan flanes hummus
    guacamole taco tacos burrito* empanada* arepa* pupusa* ceviche tamal* olives aceituna* pretzel* bretzel
    bagel* lutefisk nixtamal* hominy pozole biryani pilau kimchi yoghurt yogurt yogur kefir kombucha
    brisket lentil* lenteja* garbanzo* chickpea* chutney ketchup vinagreta vinaigrette salad* ensalada*
    pancake* panqueque* crepe* pasteles pastelito* bizcocho* bizcochuelo* queque queques torta tortas
    dinner* lunch almuerzo* breakfast desayun* chicken* quesillo requeson cuajada rennet cuajo guiso*
    tortilla* pizza* rice arroz beans frijol* poroto* habichuela* baking hornear horneo hornead* cocinar
    cocino cocine roast* asar asado asados parrillada barbecue bbq pie pies jam jams marmalade mermelada*
    pickle* encurtid* sourdough* yeast levadura* dough proofing leudar eggs huevos huevo easter pascua
    icing glaseado* fondant* frosting merengue* meringue* macaron* sprinkles candy candies sweets
    marshmallow* malvavisco* masmelo* fudge toffee alfajor* churro* donut* doughnut* rosquilla* scone*
    biscuit* galleta* galletita* crackers waffle* steak* bistec carne carnes beef shrimp* prawn* camaron*
    langostino* tuna atun sardina* cod bacalao oyster* mussel* mejillon* sushi stirfry wok fryer fritura
    freir frito frita fritas restaurant* menu menus snack* vegan* vegetarian* calorie* caloria* carbs keto
    quinoa granola kansui digestive nutrition* nutricion* seasoning sazon condiment* spices especias
    gazpacho paella salsas custard* potato* pudding gelatin* bread* cake* cena* soup* sopa* pollo* cheese*
    queso* stew* bake* cook* freezer caramelo* halaya hotdish casserole* guisado drizzle trifle sidra cider
    brewing homebrew cerveceria metabisulfit* avinagr* mash porridge cereal* pudin sorbet* helado helados
    icecream gelato jelly jellies truffle* turron mazapan marzipan polvoron* mantecado* roscon bunuelo*
    mote humita* chipa cachapa* sancocho* ajiaco locro asadito empanad* salteado risotto ravioles lasana
    pesto jerky cecina embutido* morcilla butifarra pickling fermenting ferment* kraut sauerkraut chucrut
    tofu tempeh miso udon soba dumpling* gyoza wonton dal roti naan chapati paratha samosa pakora biryani*
    idli dosa chai boba espresso barista cafetera teapot tetera kettle supper merienda lonche brunch picnic
    barbacoa grill parrilla grilled slowcooked quail codorniz huevitos drinks drink drinking drank beber
    bebida bebidas refresco refrescos coke gaseosa gaseosas milkshake dessert* postre postres tiramisu
    eclair* croissant* brioche focaccia ciabatta baguette* tortitas hotcakes wafers
  `,
  paint: spaced`
    pintura* pintor* pintar pinto pintamos watercolour* watercolor* acuarela* acrylic* acrilic* canvas*
    lienzo* gouache temple easel caballete pincel* brocha* rodillo mural* varnish* barniz* oleo oleos
    linseed linaza graffiti limewash* whitewash encalar enjalbeg* calcimine undercoat sanding sketch*
    dibujo* dibujar drawing paint* tempera brush* spray undercoat* lacquer lacquers shellac oilpaint easels
    fresco frescos fresque hall hallway skirtings
  `,
  building: spaced`
    concrete hormigon cement* plaster* yeso stucco estuco* mortar mortero brick* ladrillo* paving paver*
    adoquin* driveway* render grout* lechada* facade fachada* woodstain plywood timber lumber epoxy epoxi*
    fibreglass fiberglass jewellery jewelry joyeria bisuteria earring* arete aretes pendientes zarcillo*
    necklace* bracelet* pulsera* coaster* posavasos drill drills taladro* screw screws tornillo* hammering
    sawdust sierra saw carpenter* carpinter* melamina weld* soldar soldadura ironwork herreria pavonado
    patina* verdigris solder* lathe woodturn* scaffold* andamio* albanil* insulation aislante drywall
    tablaroca pladur sealant* caulk* decking resin* bench benches anodiz* anodis* etch etching galvaniz*
    rebar limeplaster formwork encofrado gravel grava asphalt asfalto tarmac roofing shingle* skylight
    carpentry joinery ebanist* chisel formon dovetail sander lijadora clavos tuerca* bolts spanner wrench
    masilla derust* electroplat* cromado anvil yunque forja forge decapar decapante
  `,
  pottery: spaced`
    ceramic* ceramista* glaze* vidriado* stoneware gres porcelain porcelana raku engobe* earthenware
    clayware torno alfarer* bisque bizcochado slipware polymer playdough slime* borax potter* esmalt* kiln*
    cuenco cuencos vase vases jarron jarrones greenware firing
  `,
  leather:
    'cuero* saddle* curtir curtido boots cinturon* purse* wallet billetera* suede gamuza leather* tannin* bota* belt*',
  candle: spaced`
    candle* vela velas velon velones veladora* cirio* pabilo* paraffin* parafina* soywax incense incienso*
    sahumerio* sahumar tealight* votive* wick* mecha* soja stearin estearina fanal fanales lacre
  `,
  plants: spaced`
    tomato* tomate* orchid* orquidea* plant planta* soil tierra sow sowing siembr* sembrar seed* semilla*
    fertili* pest* aphid* pulgon* leaf leaves hoja* bloom* florec* watering riego riega* potting maceta*
    weeds dandelion* bramble* zarza thistle* cardo ivy bonsai cuttings esqueje* graft* injertar repot*
    trasplant* tuber tuberculo perennial* annuals shrub* arbusto* pruning camellia* camelia* rosebush*
    bougainvillea buganvilla* orchard* grapevine vid vinedo vineyard limonero manzano perales olivo olivar
    greenfly blackfly whitefly mildiu oidio slugpellet*
  `,
  printing: spaced`
    ink inks cartridge* cartucho* toner printer* impresora* laminat* origami scrapbook* cardstock cartulina
    calligraphy caligrafia 3d filament* slicer stl vinyl vinilo sublimat* sublimacion serigraf*
    screenprint* stencil* sticker* font fonts typeface* tipografia* lettering caligraf* adhesivo* laminad*
    kraft diecut troquel* embossing resma folio folios letterhead banner banners pancarta flyers
    businesscard* photoshop
  `,
  music: spaced`
    guitar* violin* piano* drum drums drummer karaoke ukulele* flute* flauta* trumpet* trompeta* accordion*
    acordeon* song songs cancion* lyrics choir* coro concert* concierto* playlist* album murga* cumbia
    reggaeton tango bachata dj singer* cantante* singing cantar tune tunes sing sang chorus estribillo
    bajista saxophone saxofon clarinet* fiddle mandolin* banjo ukelele charango quena zampona maracas
    tambor* bombo percussion metronome partitura
  `,
} as const;
