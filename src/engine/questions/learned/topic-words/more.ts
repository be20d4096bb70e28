import { spaced } from '../../../over-lines.ts';

/** More words of the matters of the other lists, and of the sea; as `topics.ts` says of all of these lists. From memory. */
export const OF_MORE = {
  food: spaced`
    octopus pulpo pulpos gamba* clam clams almeja* trout trucha* sardine* anchov* anchoa* haddock mackerel
    caballa merluza hake tilapia macarron* fideo* marinara filete* chuleta* meatball* albondiga* burger*
    hamburguesa* hotdog* quesadilla* enchilada* ceviches puchero cocido croquette* pierogi budin omelette*
    frittata* guisar bouillon chowder* curries paneer alubia* couscous cuscus bulgur polenta patatas
    batatas yuca yucca tostones mofongo panadero panaderia cracker* mozzarella ricotta paleta* mezcalito
    brandy liqueur* licor* brewery winery vendimia lupulo caterer* waiter* camarero* mesero* almorzar
    takeaway leftovers* sobras airfryer freidora skillet* griddle* plancheta lunchbox lonchera protein*
    proteina* carb fasting ayuno gluten celiac* lactosa hambriento delicious* delicios* sabroso* riquisimo
    tastes adobo marinade* marinar
  `,
  sea: spaced`
    mooring* amarre* muelle* jetty pier trawler* arrastrero* skipper patron* tripulacion fisherman pesco
    angler* senuelo* anzuelo* cana sonda pleamar bajamar lobsterpot* creel* nasa nasas kayak* canoe* canoa*
    rowing remar remo remos sail velero* yacht* yate* regatta* regata* lifeboat* salvavidas lifejacket*
    chaleco coastguard guardacostas buoy* boya* rudder timon keel barnacle* percebe* antifoul* dinghy
    surfboard* scuba buceo bucear seagull* gaviota*
  `,
  vehicle: spaced`
    sparkplug* bujia* dipstick coolant refrigerante antifreeze anticongelante alternator alternador
    carburettor* carburador* crankshaft ciguenal piston* axle* amortiguador* chassis chasis dashboard
    salpicadero speedometer* velocimetro bocina* claxon seatbelt* carseat* pushchair* stroller* carriage*
    dents abolladura* carwash lavacoches mot itv vtv drivinglicence carnet lorries haul* forklift*
    montacargas excavator* excavadora* bulldozer* quad patinete* skateboard* monopatin helmet* roundabout*
    rotonda* pedestrian* peaton* crosswalk semaforo* multado grua* bencina gasoil ev hybrid hibrido carpool*
  `,
  office: spaced`
    instalment* cuota* albaran* presupuestar tender* licitacion* subcontract* subcontrat* stakeholder*
    agenda plazo* resignation* ascenso* overtime* payslip* aguinaldo maternity paternidad maternidad
    sickleave probation* cv curriculos recruiter* reclutador* becario* pasante* secretary secretari*
    receptionist* recepcionista* clerk* oficinista* bureaucr* burocra* tramite* papeleo paperwork
    formulario* signature* firma* apostille apostilla* citizenship ciudadania residencia immigration
    inmigracion migracion asylum asilo embassy embajada consulate consulado deceased fallecido probate
    sucesion conveyancing escritura* cadastre catastro zoning votacion papeleta* polling urna* alcalde*
    intendente concejal* councillor* council ayuntamientos parliament congreso senate senado deputy
    diputado* ministro* referendum* petition* census censo* pensioner* allowance* welfare foodbank
    subvencion* charities benefic* treasurer* tesorer* comite ledger* pivot vatman irs dian sunat afip
    hacienda remesa* remittance* currency divisa* dolares euros dividend* dividendo* investor* inversor*
    invertir lotto raspadita apuesta* apostar casino*
  `,
  computers: spaced`
    reboot* reiniciar restart* actualiza* install* instalar desinstalar uninstall* browser* navegador*
    cache hotspot* roaming simcard sim esim voicemail earpiece stylus touchscreen* cursor* trackpad hdmi
    vga harddrive* ssd ram zip unzip docx ppt diapositiva* pegatina* livestream* unlist algorithm*
    algoritmo* subscribe* suscri* captcha* scammer* firewall vpn dns adsl outage* apagon* server* servidor*
    database* programador* programmer* debug* compile* avatar* videocall* videollamada* webcam* microphone*
    microfono* soundbar antenna* antena* decoder decodificador dvd console* consola* videojuego* gaming
    joystick shutter* obturador aperture* diafragma whitebalance* recortes retouch* retoc*
  `,
  school: spaced`
    curricul* headteacher* detention* recess recreo playground* mochila* lapiz lapices eraser* cuaderno*
    textbook* library* biblioteca* librarian* bibliotecari* kinder primary primaria secondary secundaria
    bachiller* baccalaureate gcse* maestria phd dissertation* dorm seminar* seminario* atomo* proton*
    neutron* isotope* isotopo* enzyme* enzima* photosynthesis fotosintesis mitosis meiosis genetic*
    genetica* chromosome* cromosoma* fosil* astronom* telescop* orbit* gravity gravedad velocity velocidad
    thermodynam* termodinam* circuit* circuito* voltage voltaje ohm ampere* iman imanes burette* bureta*
    pipette* pipeta* wijs phenolphthal* fenolftalein* calculus derivative* derivada* trigonometr* cosine
    coseno multiplication sonnet* soneto* subjunctive subjuntivo adjective* adjetivo* noun* sustantivo*
    pronombre* ortografia piramide* medieval* revolution* revolucion* worldwar* guerra* geography*
    geografia* continente* flagday civics civica
  `,
  travel: spaced`
    itinerar* backpack* mochilero* sightsee* postcard* jetlag layovers stopover* tollroad ferrytimes
    timetable* horario* anden* boleto* seatmap roundtrip idayvuelta resort* balneario* campsite* tenting
    caravana* autocaravana* sendero* summit* cumbre* zoo zoologico rollercoaster guidebook* compass*
    brujula* expat* extranjer* abroad
  `,
  leisure: spaced`
    quinceanera* bridesmaid* bestman godmother honeymoon* aniversario* baptism bookclub bestseller*
    thriller* asesino* documentary* documental* caricatura* anime manga historieta* superheroe* cine
    dancing bailar baile* gig gigs cello* drumkit emisora* trivia* bordad* woodwork* whittl* numismatic*
    birdwatch* gymrat treadmill* caminadora* dumbbell* mancuerna* jog* trotar sprinter* swim nadar natacion
    judo karate boxing boxeo boxeador* wrestling ciclismo golf golfer* hockey volleyball voleibol handball
    balonmano badminton pingpong snowboard* escalada meditac* mindfulness soneo pesadilla* nightmare* ufo
    ovni extraterrestre* conspiracy conspiracion politics politica* politician* politico* monarquia bishop*
    obispo* monk* monja* synagogue* sinagoga* bible* biblia* quran coran ramadan cuaresma rosary pray rezar
    rezo insult* insulto* flirt* coquete* exhusband exmarido exwife exesposa madrastra stepdad padrastro
    stepson hijastro suegros yerno* nuera* goodnight sweetdreams congrats felicidades felicitac*
  `,
  house: spaced`
    sellador* escayola aislamiento cimientos bajante* downpipe* claraboya* contraventana* manija* padlock*
    candado* doorbell* timbre* intercom fireextinguisher* extintor* woodstove lena firewood* kindling*
    lightbill waterbill plunger* destapador* arandela* sifon* sauna* bidet* bide toallero* bookshelf*
    librero* futon* mecedora* stool* taburete* cutlery cubiertos silverware tarnish* pewter vajilla*
    crockery* coffeemaker toaster* tostadora* upholstery tapiceria* wasp* hornet* mosca moscas fruitfly
    fleabite midges nippers jejen jejenes tabano* repellent* repelente* ratonera* fumiga*
  `,
  laundry: spaced`
    encog* cashmere cachemira buzo* pollera* underwear calzon* bra bras brasier* sosten* swimsuit* pyjama*
    pijama* stainremover hamper handbag* nappy nappies diaper*
  `,
  garden: spaced`
    hydroponic* hidropon* aquaponic* polytunnel* vivero* sustrato* turba perlita vermicul* fertilizante*
    npk bonemeal guano plaguicida* insecticid* spidermite caterpillar* oruga* leafminer minador cutworm
    grubs canker cancro overwater* rainbarrel aljibe* scarecrow espantapajaros escarificar strimmers
    chainsaw* motosierra* arborista* frutal* ciruelo* duraznero* higuera* leek* puerro* milpa ensilado
    plough* arado* tiller motocultor acreage hectare* hectarea*
  `,
  animals: spaced`
    ladra ladrar mordio rabies parvovirus moquillo spayed litterbox hairball whisker* cojea limping
    laminitis bridle brida montura* stirrup* estribo* hoofpick foal* potro* stallion* semental whelp*
    camada* destete weaning* lambed sheepdip shearing esquila* ketosis bloat timpanismo dehorn descornar
    farrowing marrana* verraco* slaughter* abattoir matadero* henhouse moult pelecha* ponedora* incubator*
    incubadora* duckling* patito* gosling* ostrich* avestruz* zangano* swarming enjambrar ahumador*
    silkworm guppy guppies betta axolotl* ajolote* gecko* chameleon* camaleon* tortoise* euthanas*
    eutanasia ardilla* badger* tejon* venado* ciervo* wolf lion gorilla* pinguino* murcielago*
  `,
  health: spaced`
    prescription* painkiller* analgesico* antihistamin* antiinflamator* steroid* esteroide* anesthe*
    anestesia* chemo chemotherapy quimioterapia radiotherap* dialysis dialisis pacemaker marcapasos derrame
    infarto heartbeat palpitation* palpitacion* ecg bloodtest orina* heces haemorrhoid* laxative* laxante*
    afta* coldsore* herpes culebrilla sarampion mumps paperas whooping tosferina pneumonia neumonia
    bronchit* bronquit* tonsil* amigdala* laryngit* sinusit* hayfever rinitis conjunctiv* conjuntiv* stye
    orzuelo cataract* catarata* glaucoma squint bizco audifono tinnitus concussion conmocion epilep*
    convulsion* parkinson* alzheimer* dementia demencia autism* autis* adhd tdah bipolar schizo* esquizo*
    counsellor* psychiat* psiquiatr* overdose sobredosis addict* adiccion alcoholi* nicotine* nicotina*
    vape* vapear cannabis marihuana weightloss obesity obesidad bmi bariatric cellulite celulitis
    stretchmark* estria* cicatriz* keloid* melanoma* vitiligo ingrown* encarnada bunion* juanete* fascitis
    flatfoot tendonitis tendinitis carpal hernia* appendix apendice gallstone* pancreat* hepatitis
    cirrhosis cirrosis jaundice ictericia anaemia leukaemia leucemia lupus fibromyalg* osteopor* condon*
    ivf fecundacion miscarriage aborto* midwife* partera* comadrona* epidural cesarean* cesarea* teething
    denticion bedwetting puberty pubertad prostate prostata std hiv vih papanicol* mammogra* mamogra*
    colonoscop* endoscop* mri resonancia tomograf*
  `,
  hair: spaced`
    hairdo* updos ponytail* coleta* pigtail* hairbrush* peine* hairdryer* straightener* curler* rulero*
    hairgel hairmask splitend* hairloss minoxidil greyhair matizador* brassy razor* microblad* piercing*
    pierc*
  `,
  cosmetics: spaced`
    perfumista* sillage topnote fixative* iluminador* contour* lipliner* nailpolish* aftersun faketan
    autobronceante bodylotion handcream footcream bodyscrub bathbomb bubblebath showergel bodywash
    sheetmask toothpowder mouthrinse xanthan
  `,
} as const;
