import { spaced } from '../../../over-lines.ts';

/** Words of work, money, machines, school, travel and pastime; as `topics.ts` says of all of these lists. From memory. */
export const OF_LIFE = {
  vehicle: spaced`
    pickup scooter* stroke mower windscreen puncture* pothole* gasolina petrol diesel nafta engine* truck*
    camion* car cars coche* auto autos van vans brake* freno* tyre* llanta* neumatic* rueda ruedas gearbox*
    clutch embrague windshield parabrisas bumper headlight* battery batteries bateria* mileage kilometraje
    radiator exhaust barco* bote botes ship hull cubierta lancha* anchor ancla outboard bike bikes
    bicicleta* bicycle* motorcycle* moto motos trailer* remolque* mechanic* mecanic* transmission uphill
    highway* autopista* carretera* parking estacionamiento matricula biodiesel* fuel motor* carro* tire*
    faro* radiador* escape* boat* casco bici* tractor*
  `,
  office: spaced`
    customs aduana* parcel* paquete* mailing postage postal courier* correo* encomienda* encargue
    contrarreembolso reembolso envelope* letterbox mailbox shipping shipment* envio envios enviar lend
    coupon* cupon* landlord tenant* mortgage* stocks crypto bitcoin charge charging charges cobro cobrar
    cobras cobran cobramos pricing tarifa* invoice* factura* impuesto* iva vat gst rent rental alquiler*
    wage* sueldo* salary salario* hipoteca* loan* prestamo* refund* insurance insured aseguranza liability
    lawyer* abogad* solicitor* passport* pasaporte* spreadsheet* planilla* customer* cliente clienta
    clientes client clients supplier* proveedor* wholesale mayoreo mayorista* retail minorista* profit*
    ganancia* margin turnover budget* presupuesto* quote quoting cotiz* cotizacion discount* descuento* llc
    ltd proprietor* autonomo* monotributo* unipersonal* rut rfc nif cuit selfemployed trademark* patent*
    registro registrar registered license licence* licencia* permit permits permiso* multa multas multar
    inspector* inspeccion ayuntamiento municipio alcaldia accountant* contador* bookkeep* contabil*
    receipt* recibo* ticket tickets boleta* website* webpage web dominio hosting reel reels hashtag*
    caption* followers seguidores marketing advert* publicidad anuncio* flyer* folleto* logo logos slogan*
    eslogan* brand brands branding newsletter* boletin review reviews resena* stallholder* stall stalls
    vendedor* vender vendo venden vende selling sell sells reseller* revend* business businesses negocio*
    empresa* company companies emprendim* emprender datafono barcode copyright lawsuit demanda demandar sue
    sued contract contrato* anticipo payroll nomina boss jefe jefa coworker* resume curriculum interview*
    entrevista* resign* renunci* unemploy* desempleo pension pensiones jubil* retire retirement divorce*
    divorci* custody herencia inherit* notary notari* police policia price* precio* tax* bank* banco*
    impresora* timo estafa scam scams phishing tasa tasas revenue declarar ecologico etiquetado quid
    escaparate storefront franquicia franchise inflation inflacion savings ahorros debit atm cajero
    overdraft pawn empeno testamento padron empadron* benefits subsidio dole jobcentre redundancy despido
    despedir hired hiring contratar contratan vacante vacancy sindicato strike huelga devolucion devuelven
  `,
  computers: spaced`
    phone* telefono* celular celulares movil moviles smartphone* wifi internet email* password* contrasena*
    laptop* notebook computer* ordenador* computadora* compu app apps aplicacion* software tv television
    televisor screen screens pantalla* screenshot* captura keyboard* teclado* printer* scanner escaner usb
    pendrive charger* cargador* bluetooth router* modem* css html python javascript pdf notification*
    notificacion* mute silenciar silencio silence unsubscribe admin admins bot bots robot robots chatbot*
    maquina maquinita ia ai archivo archivos download* descarg* upload* backup respaldo cloud saldo selfie*
    camera* camara* tripod tripode lightbox fotograf* photograph* photos fotos pic pics editar settings
    ajustes configuracion brightness pixel pixels crop recortar recorta editar* unmute unfollow enlace
    enlaces hacker hackers antivirus spam username usuario login logout emoji emojis gif gifs meme memes
    podcast* stream streaming headphones audifonos auriculares earbuds altavoz parlante dataplan ringtone
  `,
  school: spaced`
    homework exam* essay* ensayo* quiz* maths math mathematics matematica* algebra geometr* ecuacion*
    equation* quadratic moles molar molarity molaridad titration titulacion stoichiometr* estequiometr*
    valence biology biologia physics fisica historia teacher* profe profes profesor* maestra maestro
    escuela* school* colegio* classroom aula universidad university college thesis tesis lecture* grammar
    gramatica translat* traduc* spelling vocab* dictionary diccionario worksheet* poster afiche* cartulina
    maqueta kindergarten preescolar guarderia daycare tarea deberes organica mechanism mecanismo syllabus
    labreport socials romans romanos egyptians egipcios cuartillas bibliografia bibliograph* aleman
    conjugat* conjugar pronounce pronuncia traduzca* dictation dictado diploma semester semestre professor*
    tutor tutoring
  `,
  travel: spaced`
    hotel* hostel* flight* vuelo* airport* aeropuerto* airline* aerolinea* luggage equipaje valija* maleta*
    suitcase* train trains tren trenes bus buses colectivo omnibus guagua subway metro tram tranvia ferry
    cruise* crucero* trip trips viaje* viajar travel* tourist* turis* itinerary itinerario playa passport
    pasaporte frontera visa gps sightseeing museum* museo* restaurant camping tent carpa hiking senderismo
    vacaciones directions traffic atasco toll peaje gasolinera roadtrip motorway bypass taxi taxis minicab
    remis driver drivers driving boarding checkin layover hostal posada sunbathing snorkel* surf surfing
    surfear ski skiing esqui
  `,
  leisure: spaced`
    volcan volcano novio* novia* marry boyfriend* girlfriend* lonely dream* sone gym gimnasio barbell
    deadlift* dominadas squat* biceps workout* yoga pilates marathon maraton president* elections eleccion*
    government gobierno horoscop* zodiac* lottery loteria* football* futbol soccer rugby gaa hurling
    cricket basketball baloncesto baseball beisbol tennis tenis partido* clasico seleccion goal goals gol
    goles league liga derby referee arbitro mundial worldcup olympic* movie* pelicula* film films
    telenovela* actor* actress* novel novels novela* libro libros poem* poesia chiste* riddle* adivinanza*
    birthday* cumple cumplean* church* iglesia* prayer oracion misa priest pope chess ajedrez videogame*
    dating ex argument gossip chisme* astrology astrologia tarot ghost fantasma* kettle festivo feriado
    capital game* song* correo* joke* train* autobus crime shows series episode* episodio* gutted perdemos
    perdimos ganamos empatamos cityfc penalty penal penales offside goalkeeper portero arquero coach
    entrenador stadium estadio fans hincha* aficion* chakra* reiki aura aries tauro escorpio capricornio
    virgo sagitario piscis astrolog* psychic vidente tarotista jajaja jajajaja amen bendiciones
    condolencias funeral velorio widow viuda viudo solitaria sad crying llorar depre breakup ruptura crush
    invitad* piropo pub pubs bingo darts dardos billar poker naipes dominos jigsaw rompecabezas crossword
    crucigrama sudoku
  `,
} as const;
