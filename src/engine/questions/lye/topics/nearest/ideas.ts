import { ideasFrom } from '../../../../text/learned/ideas.ts';

/** What words of either language stand for, so that what one language taught is known in the other; `*` is any ending. */
const IDEAS = `
lye: lye naoh caustic caustica caustico hydrox* hidrox* sosa soda
koh: koh potas* potash
bleach: bleach* lejia chlorine cloro hypochlor* hipoclor* lavandina
cleaner: clean cleaner cleaners ammonia amoniaco salfuman muriat* limpiador* limpiahornos toilet
acid: acid acido vinegar vinagre lemon limon citric* citrico
water: water agua h2o
pour: pour* add adding added put tip echar* echo echado vierto vert* pongo poner puse anad* agreg* sprinkle*
onto: onto over encima sobre
first: first primero order orden before antes despues
glass: glass vidrio cristal jar tarro frasco
metal: alumin* alumini* tin zinc lata galvani* foil metal
vessel: jug jarra bowl bol container recipiente bucket cubo pot olla pan sarten cazo cazuela perola beaker
wood: wood* madera
plastic: plastic* pp hdpe pet
spoon: spoon* cuchar* tablespoon* teaspoon* tbsp tsp cup cups taza tazas vaso handful punado
spatula: spatula espatula silicon*
scale: scale scales bascula balanza
unit: oz ounce* onza* pound* libra* gram grams gramos kilos
wrong: wrong* mistake error confund* mixed swapped reves equivoc* accident*
forget: forgot* forget* olvid* remember recuerdo acuerdo unsure sure missing falta falto left
twice: twice double* doble dos two doubled
less: less menos half mitad reduce* reduc* lower little minimum minimo
more: more mas extra top
hard: hard* harder dur* endurec* firm* firme
drain: drain* desag* sink fregadero pipe* tuber* desatas* destapa* plumbing unblock* clogged
throw: throw* tirar tiro away disposal dispose bin basura rid bury enterrar deshac* compost
leftover: leftover* sobr* surplus rest restos
bottle: bottle* botella* garrafa flask termo carton
store: store* storing keep keeping guard* almacen* cupboard armario despensa locked
lump: lump* clump* grumo* damp wet humed* moistur* apelmaz* piedra block bloque sticky pegajos*
child: kid kids child* nin* daughter hij* son grand* niet* toddler school colegio alumn* pupil* class clase taller
pet: dog dogs cat cats perr* gat* pet pets parrot loro bird* pajar* horse* caball* mascota*
baby: baby babies bebe* newborn infant* recien
microwave: microwave* micro microond*
zap: zap* tongue lengua calambre lick* lam* chup* muerde bites tingle* pica
ph: ph strip strips tira tiras paper
milk: milk leche cream
orange: orange naranja brown marron smell* huele stink* burnt quem*
without: without sin free skip no
gone: gone left queda disappear* desaparec* evapor* finished terminad*
when: when cuando long cuanto wait espero days dias weeks semanas day week dia semana
safe: safe segur* ok okay vale
touch: touch* toc* gloves guantes bare hand hands mano manos
whiten: white* whiten* blanc* blanque* lighten* yellow* amarill*
cure: cure* curing curado curar
rebatch: rebatch* refund* melt* derret* fix save salvar
wrap: wrap* insulat* blanket* manta* cover* tapar envolv* towel* toalla* aisl*
hot: hot caliente boil* herv* hirv* warm tibi* templad* heat* calent* degrees grados temperat* smoking
cold: cold fri* cool* enfri* ice hielo freez* congel*
skin: skin piel burn* quema*
fume: fume* vapor* vapour* steam* humo* gas gases breath* respir* ventil* window windows ventana ventanas extractor airless
mask: mask* mascar* respirator
liquid: beer cerveza wine vino coffee cafe tea te juice zumo jugo aloe
instead: instead place replace* vez lugar substitut* sustit* swap* cambi*
sugar: sugar azucar honey miel syrup jarabe molasses melaza
oven: oven* horno hornear bake radiator radiador
oil: oil oils aceite* olive oliva coconut coco lard manteca fat fats grasa* palm palma
scent: scent* fragran* perfum* aroma* esencia* essential esencial* smell oler colon* cologne
candle: candle* vela velas wax cera diffus* difus*
spice: cinnamon canela clove* clavo pepper* pimienta chil* mostaza mustard peppermint menta
crack: crack* grieta* split raja* abri* volc*
batter: batter masa mezcla
check: test* check* comprob* prueb* prob*
superfat: superfat* sobreengras* sobregrasa
vanilla: vanill* vainill*
scaling: double* doblar triple* triplic* half mitad recipe receta bigger larger grande
gear: wear ropa sleeves manga shoes sandal* chancla* apron delantal nitril* latex latex goggle* gafas glasses spectacles
eyes: goggle* gafas glasses sunglasses eye eyes ojo ojos spectacles
dust: dust powder* polvo mica pigment* titanium
alone: overnight noche alone sola uncovered destapad* open out salir
ash: ash* ceniza* lime cal calcium calcio
old: old viej* expired caducad* rancid* rancio used usado frying freir
sea: sea mar tap grifo distilled destilada sparkling rain lluvia broth caldo fizzy
food: food comida cook* cocin* kitchen cocina soup cake* eat comer
pregnant: pregnan* embaraz* expecting breastfeed* lactan* pecho
asthma: asthma* asma asmat* lungs bronquios
lenses: lens* contact contacts lentilla* lentes
wash: wash* lav* freg* dishwasher lavavajillas dishes cacharros
outside: outside outdoors balcon* terraza patio garden jardin fuera wind windy viento
electric: electric* pad
fridge: fridge nevera freezer congelador frigorif*
flame: torch blowtorch flame* soplete mechero lighter fuego llama
mould: mould* mold* molde* tube tubo
mineral: motor engine mineral paraffin parafina petrol*
sand: sand arena shell* concha* beach playa stone* gravel grava
plants: flower* flor* petal* herb* fruit* fruta* fresh fresc* strawberr* banana platano
glitter: glitter purpurina brillantina escarcha sparkle*
ink: ink tinta marker rotulador printer impresora pen
trace: trace* traza thick* espes* cuaj* runny liquida stir* batid* batir
puree: puree pure mash* machacad* pumpkin calabaza avocado aguacate
`;

/** The ideas in words that are lower case and without accents, each once, in the order of their list. */
export const ideasIn = ideasFrom(IDEAS);
