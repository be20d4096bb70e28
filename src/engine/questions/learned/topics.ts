/**
 * Words of matters that are none of soap making, by matter, in both languages, lower case without accents; a star stands for any ending.
 * From memory. What soap shares with them (pan, pastilla, oil, colours, water, skin) is left out.
 */
const WORDS = {
  hair: 'beard* barba* bigote* mustache moustache haircut* hair pelo cabello* peluca wig* eyebrow* ceja* lashes pestana* barber* barbero* peluquer* afeitad* shave corte fade flequillo bangs scalp tattoo* tatuaje* makeup maquillaje',
  health:
    'vaccine* vacuna* covid aspirin* paracetamol ibuprofen* amoxicil* tablet tablets tableta* jarabe constipat* estrenimiento diarr* vomit* ulcer* cholesterol colesterol insulin* migraine* migrana* flu gripe arthritis artritis worms lombri* lice piojo* tick ticks garrapata* flea fleas pulga* thinners parto anemia thyroid tiroides sarna colic colico* mange patient* paciente* doctor* medic* nurse* enfermer* pill* antibiotic* fever fiebre headache* dolor duele cough tos pregnan* embaraz* pressure diabet* heel* talon* tooth teeth diente* muela* knee* rodilla* hospital* vitamin* sprain* asthma asma',
  vehicle:
    'pickup scooter stroke mower windscreen puncture pothole gasolina diesel engine motor* truck* camion* car cars coche* carro* van brake* freno* tire* tyre* llanta* neumatic* gearbox clutch embrague windshield parabrisas bumper headlight* faro* battery bateria* mileage radiator radiador* exhaust escape* boat* barco* bote ship hull casco deck cubierta lancha* anchor ancla outboard bike bici* motorbike moto tractor* trailer* remolque* mechanic* mecanico* gasolina transmission uphill highway autopista',
  weather:
    'weather frost* helada* forecast* pronostico* rain lluvia* llover llueve snow* nieve nevar wind* viento* tide* marea* drizzle* fog niebla heatwave hurricane* huracan* thunderstorm* tornado* sunrise',
  house:
    'shower ducha landlord inquilin* wardrobe armario curtain* faucet grifo dishwasher lavavajillas  vacuum aspiradora knife cuchillo* sneaker* zapatilla* wall* pared* fence* valla* roof* tejado* techo* floor* suelo* piso carpet* alfombra* sofa* furniture mueble* window* ventana* concrete hormigon cemento grout tile* azulejo* plumbing plomer* fontaner* drain* desague* toilet* inodoro boiler* caldera* ceiling gutter* lawnmower patio varnish barniz* sandpaper lija* garage garaje bathtub* banera*',
  garden:
    'hortensia* hydrangea* cactus succulent* suculenta* mare yegua horse* caballo* sheep oveja* ewe ewes lamb lambs borrego* pig pigs chancho rabbit* conejo* pony fleece beehive colmena chickens hens garden* jardin* seedling* semillero* lawn* cesped prun* podar poda compost* weeds maleza manure abono fertili* slug* babosa* greenhouse invernadero hens gallina*  udder ubre* vet veterinari* hoof harvest* cosecha* tractor orchard* huerto* huerta fish* pesca* bait carnada net nets redes',
  cloth:
    'shirt* camisa* camiseta* jeans wool lana* yarn fabric* tela* dress* vestido* curtain* cortina* shoes zapato* sock* calcetin* bolso sew* coser costura knit* tejer blouse* blusa*',
  food: 'custard* mayonnaise mayonesa salami sausage* chorizo ham jamon bacon potato* papas fries noodle* ramen spaghetti lasagn* gravy broth caldo latte smoothie* lemonade limonada cocktail* coctel* brownie* muffin* cupcake* pudding flan gelatin* hummus guacamole taco tacos burrito* empanada* arepa* pupusa* ceviche tamal* olives aceituna* pretzel* bretzel bagel* lutefisk nixtamal hominy biryani kimchi yoghurt yogur brisket lentil* lenteja* garbanzo* chickpea* chutney ketchup vinagreta salad* ensalada* bread* pancake* pasteles cake* dinner* cena* lunch almuerzo breakfast desayuno soup* sopa* chicken* pollo* cheese* queso* stew* guiso* tortilla* pizza* rice arroz beans frijol* bake* baking hornear cook* cocinar roast* asar pie pies jam mermelada sourdough yeast levadura freezer',
  paint:
    'paint* painter* pintura* pintor* watercolour* watercolor* acuarela* acrylic* acrilico* canvas lienzo gouache tempera temple easel brush* pincel* mural* fresco varnish barniz oleo linseed linaza graffiti spray',
  building:
    'concrete hormigon cement* plaster* yeso stucco estuco* mortar mortero bricks bricklay* ladrillos paving paver* adoquin* driveway render grout lechada limewash encalar facade fachada* woodstain decking plywood lumber timber resin* resina* epoxy epoxi* fibreglass jewellery jewelry joyeria bisuteria',
  pottery:
    'pottery potter* ceramic* ceramica* glaze* esmalt* kiln* stoneware gres porcelain porcelana raku engobe earthenware clayware torno',
  leather: 'leather* cuero* saddle* tannin* tanning curtir hide hides boots bota* belt* cinturon* purse*',
  cosmetics:
    'lipstick* lipgloss gloss labial* eyeshadow* sombras rubor mascara maquillaj* foundation nail nails unas moisturi* lotion* locion* balm* balsamo* serum* deodorant* desodorante* toothpaste dentifric* shampoo* champu* conditioner* acondicionador* sunscreen protector bronzer scrub* mascarilla* perfume* colonia aftershave sanitiser sanitizer diffuser* difusor*',
  candle: 'candle* vela velas veladora* wick* pabilo* mecha* paraffin parafina soywax incense incienso',
  plants:
    'tomato* tomate* plant plants planta* soil tierra sow sowing siembr* sembrar seed* semilla* fertili* pest* aphid* pulgon* leaf leaves hoja* bloom* florec* watering riego riega* potting maceta* orchid* orquidea* weeds',
  stains:
    'stain* mancha* manchad* tunic* tablecloth* mantel* laundry lavadora* bleach* washing detergent* detergente* rug',
  eggs: 'eggs huevos easter pascua icing glaseado* fondant frosting macaron* sprinkles candy caramelo*',
  office:
    'customs aduana* parcel* mailing postage courier envio lend coupon cupon landlord tenant mortgage stocks shares crypto bitcoin charge cobro cobrar price* precio* invoice* factura* tax* impuesto* iva vat rent alquiler wage* sueldo* salary mortgage* hipoteca* loan* prestamo* bank* banco* refund* insurance lawyer* abogado* visa passport pasaporte spreadsheet* excel printer* impresora*',
  leisure:
    'ecuacion* equation* quadratic moles molar titration stoichiometr* algebra geometr* volcano volcan maqueta css html python javascript novio novia marry boyfriend girlfriend lonely dream* sone gym barbell deadlift* dominadas squat* biceps guitar* guitarra* violin* piano drum drums karaoke password president* capital horoscop* zodiac* lottery loteria pantalla celular vocab* spelling football futbol game* partido* movie* pelicula* song* cancion* phone* telefono* movil wifi internet email* correo* password* contrasena* laptop* computer* ordenador computadora app apps tv television netflix homework exam* examen* essay* ensayo* poem* poema* joke* chiste* dog dogs perro* cat cats gato* puppy hotel* flight* vuelo* train* tren bus autobus airport aeropuerto church iglesia school escuela',
} as const;

export type Topic = keyof typeof WORDS;

const PATTERNS = Object.entries(WORDS).map(([topic, words]) => ({
  topic: topic as Topic,
  whole: new Set(words.split(' ').filter(word => !word.endsWith('*'))),
  heads: words
    .split(' ')
    .filter(word => word.endsWith('*'))
    .map(word => word.slice(0, -1)),
}));

const ENDING = 4;

/** Which matters that are none of ours a question's words speak of. */
export function topicsIn(words: readonly string[]): readonly Topic[] {
  return PATTERNS.filter(({ whole, heads }) =>
    words.some(
      word =>
        whole.has(word) || heads.some(head => word.startsWith(head) && word.length <= head.length + ENDING),
    ),
  ).map(({ topic }) => topic);
}

/**
 * Crafts that share pigments with soap, and what they are done on or with; as {@link WORDS}. None of these is said of soap but in a
 * likeness.
 */
const CRAFTS =
  'acrylic* acrilic* resin resina epoxy epoxi emulsion watercolour* watercolor* acuarela* gouache canvas lienzo oleo primer varnish barniz kiln glaze glazes pottery ceramic* ceramica* stoneware engobe concrete hormigon cement cemento grout stucco wool lana silk seda yarn fabric* tela telas cotton algodon denim jeans leather cuero beard* barba* bigote hair pelo cabello henna eyebrow* ceja* eyeshadow* lipstick* lipgloss labial foundation rubor lotion* balm* balsamo* candle* vela velas nail nails unas tattoo* tatuaje* cake* bizcocho torta tortas macaron* icing fondant latte hummus rice arroz biryani slime playdough roof tejas driveway'.split(
    ' ',
  );
const CRAFT_WORDS: ReadonlySet<string> = new Set(CRAFTS.filter(word => !word.endsWith('*')));
const CRAFT_HEADS = CRAFTS.filter(word => word.endsWith('*')).map(word => word.slice(0, -1));
const LIKENESS = /^(?:like|as|como|tipo|estilo|cual|than|que)$/u;

/** Whether a question speaks of another craft that uses the trade's pigments, and not in a likeness: "like concrete". */
export const isOfCraft = (words: readonly string[]): boolean =>
  words.some(
    (word, at) =>
      (CRAFT_WORDS.has(word) ||
        CRAFT_HEADS.some(head => word.startsWith(head) && word.length <= head.length + ENDING)) &&
      !words.slice(Math.max(0, at - 3), at).some(before => LIKENESS.test(before)),
  );
