import { spaced } from '../../../over-lines.ts';

/** Words of the house, the garden, animals and the weather; as `topics.ts` says of all of these lists. From memory. */
export const OF_HOME = {
  weather: spaced`
    weather frost* helada* forecast* pronostico* rain raining rains rained rainy lluvia* llover llueve
    lloviendo lloviznar llovizna aguacero chaparron snow* nieve nevar nevando viento* marea* drizzl* fog
    foggy niebla heatwave hurricane* huracan* thunder* trueno* lightning relampago* tornado* sunrise
    amanecer sunny soleado nublado cloudy granizo hail tormenta* storms bochorno temporal nevada calima
    wind* tide* chucking sleet aguanieve breeze brisa mist neblina thaw deshielo flood* inundac* drought
    sequia overcast weatherman meteorolog* umbrella paraguas
  `,
  house: spaced`
    shower ducha regadera landlord* inquilin* wardrobe armario ropero curtain* faucet* grifo* canilla
    dishwasher* lavavajillas vacuum* aspiradora* knife knives cuchillo* sneaker* zapatilla* fence* valla*
    tejado* techo* floorboard* piso pisos carpet* alfombra* moqueta tapete sofa* couch* armchair* sillon*
    furniture mueble* ventana* concrete hormigon cemento grout azulejo* baldosa* plumbing plumber* plomer*
    fontaner* desague* caneria* cano canos tuberia* toilet* inodoro* retrete* excusado cistern cisterna
    boiler* caldera* calefon calentador ceiling* gutter* canaleta* lawnmower* mower patio* porch* terraza
    balcony balcon varnish* barniz* sandpaper lija* garage* garaje cochera bathtub* banera* tina* septic
    septico septica pozo cesspit sewer* sewage alcantarilla* cloaca* sink fregadero* lavaplatos pileta*
    lavadero washbasin limescale sarro descal* herrumbr* mildew mildewed chimney* chimenea* stove* estufa*
    fireplace hob cooktop vitroceramica* hornalla* hinge* bisagra* doorknob doors wallpaper skirting zocalo
    hallway* pasillo bedroom* dormitorio* recamara* alcoba attic desvan basement sotano loft closet*
    placard mattress* colchon* pillow* almohada* duvet* edredon* quilt* chandelier lampara* lightbulb*
    bombilla* fuse* fusible* enchufe* socket* wiring cableado electrician* electricista* heater*
    calefaccion radiator* radiador* thermostat* termostato* aircon ventilador* mosquito* zancudo*
    cockroach* cucaracha* ants hormiga* mice mouse raton ratones rat rats rata ratas termite* termita* moth
    moths polilla* bedbug* chinche* avispa* bleach cloro lavandina disinfect* desinfect* ammonia amoniaco
    amoniac mop mops trapeador trapear fregona broom* escoba* duster scour* lavabo* decking woodworm
    mudanza removals tenant* alquilo alquilar wall* pared* roof* floor* suelo* window* tile* drain*
    sumidero linoleo parquet rent landlady casero bombona butano cerradura cerrajero locksmith llaves
    llavero persiana* cortinero gotera* damp dehumidifier deshumidificador breaker sarten sartenes ovens
    cooker cookers barometrica fosa
  `,
  laundry: spaced`
    quitamanchas tunic* tablecloth* mantel* laundry lavadora* lavarropas washer dryer secadora* detergent*
    suavizante* softener* plancha planchar ironing rug rugs clothesline tendedero bedsheet* sabana sabanas
    pillowcase* bluing stain* mancha* bleach* washing lavado lavados washload blanqueador azulete percudid*
    desmanch* tendal centrifug*
  `,
  garden: spaced`
    hortensia* hydrangea* cactus* succulent* suculenta* garden* jardin* semillero* lawn* cesped prun* podar
    poda podo compost* weed weeding maleza manure estiercol abono abonar snail snails babosa* caracol*
    greenhouse* invernadero* harvest* cosecha* tractor* orchard* huerto* huerta* rosebush* rosal* roses
    hedge* seto* sapling* arbolito transplant* trasplant* bulbs tulip* geranium* geranio* weedkill*
    herbicid* blight hongo hongos gusano gusanos spade rake rastrillo hoe azada hosepipe manguera
    sprinkler* regar macetero* germin* sprout* brotar injert* allotment* beanpole* courgette* calabacin*
    zucchini lettuce* lechuga* mulch* acolchado slug* hortaliza* bancal semillas almacigo seedling*
    plantula* woodchip lawnmower strimmer desbrozadora podadora wheelbarrow carretilla ladybird mariquita
    earthworm* lombriz wormery beehives panal varroa swarm enjambre
  `,
  animals: spaced`
    mare yegua* horse* caballo* sheep oveja* ewe ewes lamb lambs lambing borrego* pig pigs piglet* chancho*
    cerdo cerdos puerco* rabbit* conejo* bunny pony ponies donkey* burro burros fleece beehive* colmena*
    hive hives apiary apicultor* abejas chickens hen hens gallina* gallinero rooster* gallo gallos duck
    ducks pato patos goose geese ganso* udder* ubre* vet vets veterinari* hoof hooves pezuna* cow cows vaca
    vacas calf calves becerr* ternero* cattle ganado chivo chivos chiva mastitis deworm* desparasit* flea
    fleas pulga* tick ticks garrapata* dog dogs doggy perro* perra* perrito* puppy puppies cachorr* cat
    cats kitten* kitty gato* gata* gatito* hamster* parrot* loro loros perico* canary canario* budgie*
    goldfish aquarium* acuario* pecera* turtle* tortuga* iguana* leash correa litter arenero kennel*
    groomer* flystrike paddock* corral stable* establo* farrier herrador fish* pesca* bait carnada net nets
    redes hunting cazar caceria mange sarna milking pienso alfalfa forage* forraje* heno feedstuff sheepdog
    bull toro toros bullock novillo heifer vaquilla chivito cabrito billy calving milkers ordeno ordenadora
    pullets pollitos pavo pavos codornices cuy cuyes ferret huron hedgehog erizo parakeet periquito snake
    serpiente lizard lagarto frog rana toad sapo tadpole worming antiparasit* spay castrar neuter microchip
    kibble croqueta* catnip
  `,
} as const;
