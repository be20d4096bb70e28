import { unbroken } from '../../../../over-lines.ts';

/** The words of a list, parted by spaces. */
const listed = (...lists: readonly string[]): readonly string[] =>
  lists.flatMap(list => list.split(/\s+/u).filter(word => word !== ''));

/*
 * Words that can keep no oil out of a pot, by what makes them harmless; lower case without accents, both languages, from general
 * knowledge of them (no source). None is a deed done to an oil, a place where it may stand, a time other than now, a denial, or a
 * person who may have it: has one of those is asked for.
 */

/** Greetings and courtesies: said to whoever reads. */
const COURTESY = listed(
  `hiya heya howdy yo oi oy gday g'day greetings salutations bore prynhawn nos dydd cymru welcome evenin mornin arvo
  sorry pardon apologies excuse ta thx tx thnx thanx thanks thankyou thank ty tysm tq cheers kindly regards appreciated appreciate grateful
  bless blessings haha hahaha lol lmao xx xxx xo hugs xoxo ok okey okie righto alrighty gotcha yep yeah yup aye`,
  `buenas buenos tardes noches dias holi holis holaa wenas saludos saludo saluditos abrazo abrazos besos bendiciones bendicion bendiga dios pague
  disculpe disculpen disculpa disculpad perdone perdonen perdona amable amables gentil encantada encantado agradecida agradecido agradeceria
  agradezco graciass gracia mil plis porfis porfavor xfa xfavor pf jaja jajaja jeje jejeje ea orale andale venga hala ok oki vale dale listo bueno`,
);

/** Who asks, and how it goes with them: of whoever writes, and of no oil. */
const ASKER = listed(
  `fancy fancying fancied quiet beginner beginners newbie noob newcomer novice learner learning learnt
  first-timer nervous scared worried excited curious confused
  dumb daft silly stupid question questions quick asking double-checking checking verifying `,
  `empiezo empezamos empezar novata novato principiante principiantes primeriza primerizo aprendiz
  aprendiendo aprendi nerviosa nervioso preocupada preocupado asustada asustado
  curiosa curioso confundida confundido tonta tonto pregunta preguntas pregunto preguntar preguntando consulta consulto duda dudas curso cursillo`,
);

/** Who is asked to tell, reckon or look, in one word with whom it is for: of no oil. */
const REQUESTS = new RegExp(
  unbroken`
    ^(?:hag|haz|hace|de|di|dig|calcul|confirm|verific|revis|chec|chek|avis|expli|ayud|cuent|pas|mand|mir|
    sac|saqu|indi|orient|ensen|muestr|corrig|comprueb|regal)\p{L}{0,4}?(?:me|nos|melo|mela|noslo|nosla)$
  `,
  'u',
);

/** How who asks feels, and what is about: no deed to an oil. */
const FEELINGS = listed(
  `panicking panicked panic anxious afraid frightened terrified happy glad sad tired knackered exhausted excited chuffed thrilled proud keen lucky
  stuck lost puzzled baffled desperate impatient pleased delighted sick poorly asthma allergic eczema psoriasis wrecked
  wondering wonder guess guessing reckon suppose believe think hope hoping promise swear bet trust mean meaning
  honestly basically literally obviously clearly apparently supposedly seriously definitely certainly totally absolutely actually
  fingers crossed touch prayers wish luck birthday anniversary`,
  `panico ansiosa ansioso feliz contenta contento triste cansada cansado agotada agotado emocionada emocionado orgullosa orgulloso perdida perdido
  desesperada desesperado atorada atorado enferma enfermo alergica alergico eccema psoriasis alergia resfriada
  creo supongo pienso espero ojala imagino juro prometo opino entiendo confio sinceramente francamente obviamente claramente literalmente
  basicamente realmente verdad seguramente efectivamente suerte cumple cumpleanos aniversario`,
);

/** What is done to fat before it is weighed, and how it is had: all of it is there still. */
const READIED = listed(
  `thawed thaw thawing softened softening warmed warming heated heating clarified clarifying purified washed cleaned skimmed sieved
  rendered-down home-rendered double-rendered homemade-lard grass-fed pasture-raised free-range wild hog pig cow beef sheep lamb deer venison elk
  got bought ordered paid cost costs dear pricey expensive bargain offer deal discount tins tin can cans jarful tubful`,
  `descongelado descongelada ablandado ablandada entibiado entibiada calentado calentada clarificado clarificada purificado lavado lavada limpiado limpiada
  cernido cernida espumado desgrasado costo costaron pague caro cara carisimo oferta ganga lata latas`,
);

/** Weighing, reckoning and writing down. */
const FIGURES = listed(
  `scale's digital grammes gms grs oz ozs ounce ounces lb lbs pound pounds kilo kilos kg ml tared taring measurement measurements measure measures
  exact exactly precise precisely approx approximately circa roughly decimal decimals percentages percentage ratio ratios proportions proportion
  respectively each apiece worked working workings reckons reckoned computed totalling totals totaling totaled totalled adds summed equals reads
  noted written worksheet notebook notepad formula sheet app page screenshot figure result answer`,
  `balanzas basculas romana digital kilos kilo libras libra onzas onza gramo gr grs gs medida medidas medido medida midiendo mide cifras cifra numeros numero
  exacto exacta exactos exactas exactamente aproximadamente aprox decimales porcentajes porcentaje proporcion proporciones razon respectivamente unidad unidades
  apuntado apuntada apuntados apunte apuntes anotado anotada anote anotados hoja libreta cuaderno cuadernito formula resultado respuesta
  suman sumando sumado totales subtotal calculo calculos calcule calculen calculame calculenme calcularme`,
);

/** How it looks, feels and smells: an oil of any colour takes its lye. */
const LOOKS = listed(
  `red reddish yellowish greenish greeny goldish golden amber pale paler dark darker cloudy hazy murky milky
  opaque see-through transparent translucent shiny glossy
  thick thicker thin thinner runny gloopy grainy lumpy smooth silky greasy sticky gorgeous beautiful pretty
  posh fab fabulous brilliant great amazing wonderful decent
  good-quality soft hard solid liquid smelly stinky fragrant scentless odourless odorless unscented coloured colored bright`,
  `rojo roja rojiza rojizo amarillo amarilla amarillento dorado dorada ambar verde verdoso verdosa verdecito
  palido palida oscuro oscura clarito clarita claro clara
  turbio turbia transparente brillante espeso espesa espesito liquido liquida liquidito solido solida
  blandito blandita durito durita grumoso suave suavecito fino fina
  bonito bonita precioso preciosa lindo linda hermoso hermosa rico rica buenisimo buenisima oloroso olorosa inodoro`,
);

/** Grades, presses and what a label says of them; one whose lye differs has a name of its own and is read as that. */
const GRADES = listed(
  `evoo aove e.v.o.o unfiltered expeller expeller-pressed cold-pressed coldpressed presses pressing unbleached bleached rbd deodorised deodorized
  food-grade food grade edible cosmetic grade-a premium quality branded own-brand generic budget value bulk wholesale
  kosher halal fairtrade fair-trade sustainable natural eco bio non-gmo gmo-free unsalted`,
  `prensado prensada prensados presion filtrado filtrada colada coladito coladita coladitos limpito limpita refinados refinadas crudos virgenes
  alimentario alimentaria alimenticio comestible comestibles cosmetico cosmetica grado calidad marca generico generica granel natural naturales
  organico organica organicos ecologico ecologica ecologicos economico economica baratito baratita corriente
  corrientes solo sola solito solita solitos solos solas puritito`,
);

/** Where it grew or who pressed it so: adjectives alone, since a name of a place may tell where it stands. */
const ORIGIN = listed(
  `spanish greek italian cretan tuscan sicilian andalusian portuguese french moroccan tunisian lebanese
  israeli palestinian syrian turkish cypriot croatian californian
  australian african ghanaian kenyan ugandan nigerian indian filipino philippine thai indonesian malaysian
  vietnamese mexican jamaican dominican brazilian colombian
  peruvian ecuadorian irish scottish welsh english british european imported homegrown home-grown local locally tropical mediterranean`,
  `espanol espanola italiano italiana griego griega frances francesa portugues portuguesa ingles inglesa
  andaluz andaluza jienense cordobes cordobesa gallego gallega
  extremeno extremena catalan catalana mallorquin manchego manchega marroqui tunecino turco turca africano
  africana indio india hindu filipino filipina mexicano mexicana
  colombiano colombiana peruano peruana ecuatoriano brasileno brasilena cubano cubana dominicano dominicana
  venezolano venezolana hondureno hondurena guatemalteco
  europeo europea importado importada nacional local tropical mediterraneo criollo criolla ibericos campero campera`,
);

/** Why, for whose beliefs, and what is said of the trade: of no weight. */
const REASONS = listed(
  'ethics ethical ethically vegan veggie vegetarian palm-free sustainability tradition traditional traditionally classic old-school basic sensitive',
  'etica eticas vegana vegano vegetariana vegetariano tradicion tradicional tradicionales clasico clasica basica basico sensible',
);

/** How chats and keyboards write the little words of the other lists. */
const SPELLINGS = listed(
  `wat wot wots whats wats wut hw hwo howmuch mch mutch muhc muh nd an teh hte wiht wit wth tht dat dis dese
  dem ur yr yer yur cud wud shud shld wld cld gonna gunna
  wanna lemme gimme gotta kinda sorta dunno jus jst juss tho altho thru abt bout cuz coz cos bc bcos pleas
  plese pleez plox plis halp hlp calc calcs calculater calculte wieght weigth
  amnt amout amoun qty soda's lyes needd nead im ive id ill itll thatll thats yous youse yiz yis its theres heres wheres`,
  `kiero kiere keria k ke xq pq porq xk tb tmb tmbn tambn toy tas ta tan pa pos cto cta kuanto kuanta
  cuantaa aser aserlo ase ago hacerle echale echarle echandole
  ponele echale agregale sumale metele ponle ponerle pongale pongo grasias ola ayudaa msj sta stan vos tenes
  queres podes sabes decime haceme pasame necesitaria nesesito nececito necesitamos ocupamos
  asi'q osea nomaz namas nomasito ahorititita ahorita puritita sosita jabonsito jaboncillo jabonera pastillita pastillitas barrita barritas`,
);

/** What somebody knows of the superfat, or does not. */
const KNOWING = listed(
  `superfatted superfatting sf idea clue unsure know knows knew
       alright allright grand strong weak harsh mild heavy excessive plenty too little`,
  `sobreengrasado sobreengrasada sobregrasa superengrasado se digo dije sabia idea ideas pone poner pongan
      fuerte floja flojo suave pasada pasado excesivo excesiva bastante suficiente alcanza`,
);

/** What soap is for, what it is, what it is made in: of the soap. */
const OF_SOAP = listed(
  `castile bastille marseille aleppo savon salt-bar salt-bars handmade homemade artisan artisanal loaves mould's cp hp
     mini giant double-boiler foam foamy lather lathery bubbles bubbly suds sudsy whisk whisking stick
     blender blending hand-stirred stirring stir stirred wood wooden slow cooker `,
  `castilla espuma espumita espumoso espumosa burbujas marsella alepo artesanal artesanales artesano casera caseras casero caseros
      batir batiendo batidora bato remover removiendo remuevo varilla madera palo aguita aguitas balanza`,
);

/** What is said of an oil itself, and changes nothing of its lye. */
export const DESCRIBES: ReadonlySet<string> = new Set([...LOOKS, ...GRADES, ...ORIGIN]);

/** Whether a word that stands with an oil can by its kind not keep it out of the pot. Lower case without accents. */
export const HARMLESS_BY_KIND: ReadonlySet<string> = new Set([
  ...COURTESY,
  ...ASKER,
  ...FIGURES,
  ...LOOKS,
  ...GRADES,
  ...ORIGIN,
  ...REASONS,
  ...SPELLINGS,
  ...KNOWING,
  ...OF_SOAP,
  ...FEELINGS,
  ...READIED,
]);

/** Whether a word asks whoever reads to tell, reckon or look. Lower case without accents. */
export const isRequest = (word: string): boolean => REQUESTS.test(word);
