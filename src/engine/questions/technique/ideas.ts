import { ideasFrom } from '../../text/learned/ideas.ts';

/** What makers' words stand for, in either language; hues and powders are told apart where techniques are. */
const IDEAS = `
when: when whens cuando
how: how como
why: why porque xq
which: which what whats que cual cuales q
where: where donde
may: can could may puedo puede podria podemos sirve sirven
must: need must should have hace hay hacen tengo necesito necesita debo obligatorio really
many: many cuantos cuantas
much: much cuanto cuanta
time: long time tiempo minutes minute mins min minutos minuto hours hour hrs horas hora days day dias dia weeks week semanas semana months month meses mes years
wait: wait* esper* rest leave left dejo dejar dejarlo reposar
now: now ya ahora help ayuda quick urgent* right recien hurry rapido sos auxilio
next: next proxima avoid* prevent* evit* stop keep
normal: normal meant supposed ok okay fine alright right bien vale ruined matter* importa usual
safe: safe danger* segur* peligr* toxic* toxico harm* bad malo mala hurt* riesg* grave
better: better best mejor versus vs good peor
easy: easy easiest easier hard facil dificil simple sencill* beginner* principiant* newbie first primer primera primero noob tricky ambitious
first: first before after antes despues primero order orden then luego
begin: start starting begin* empez* empiezo comenz* arranc* begin
fear: scared afraid fear* nerv* miedo asust* terrif* animo atrevo brave confiden* frighten* worried panic* dread*
tip: tip tips advice consejo* hint* trick truco*
wrong: wrong mistake weird odd mal raro rara feo fea ugly strange disaster desastre ugh argh uff oops help ruin* failed
lost: lost perdida perdido stuck confus* clue idea
happened: happen* paso pasa went
forgot: forgot* forget* olvid* late tarde
undo: save rescue salvar arregl* fix recover* rescatar
mould: mould* molde* loaf tray slab
batter: batter masa mezcla mix mixture
pot: pot pots jug jugs jar jars cup cups bowl bowls olla jarra jarras vaso vasos vasito* cuenco bol pote
  potes pocillo* taza tazas cubo bucket pan pans frasco recipiente* container* tarro
lye: lye naoh caustic caustica sosa soda lejia hydroxide hidroxido pellets escamas
water: water agua h2o
discount: discount descuento concentration concentracion percent ratio proporcion strength
oil: oil oils aceite aceites fat fats grasa grasas butter butters manteca mantecas lard palm palma coconut coco shea castor ricino
olive: olive oliva pomace orujo virgin virgen castile castilla evoo
scent: scent* fragranc* fo fos eo eos esencia* escencia* perfum* aroma* essential parfum olor fragancia*
spicy: clove clavo cinnamon canela floral* florals rose jasmin jazmin lavender lavanda
colour: colour* color* tinte* pigment* teñir tenir tint dye dyes dyed
powder: powder* polvo* polvillo polvito dust dusty
mica: mica micas
oxide: oxide* oxido* ferrite
white: white* blanc* titanium titanio dioxid* td tio2 cream ivory zinc
charcoal: charcoal carbon
ultramarine: ultramar*
clay: clay* arcilla* kaolin caolin bentonit* barro
indigo: indigo anil woad
annatto: annatto anatto achiote urucu bija
steepable: alkanet alcaneta alkannet madder rubia paprika pimenton turmeric curcuma palillo calendula saffron azafran
leafy: spirulin* espirulin* spinach espinaca* nettle* ortiga* matcha parsley perejil chlorophyl* clorofil*
beet: beet beetroot remolacha betabel hibiscus jamaica cabbage repollo maiz corn berr*
natural: natural* plant plants planta* vegetal* botanic* herb herbs hierb*
flower: flower* flor flores petal* bud buds lavender lavanda cornflower* chamomile manzanilla
seed: seed seeds semilla* poppy chia oats avena
coffee: coffee cafe grounds espresso
cocoa: cocoa cacao chocolate
milk: milk leche goat* cabra oat buttermilk
sugar: sugar* azucar honey miel beer cerveza syrup wine vino
vanilla: vanill* vainill* vanillin vainillina
ash: ash ceniza powdery film
lather: lather* suds sud foam espuma bubbl* burbuj*
cloth: towel* toalla* flannel* cloth trapo* washcloth sponge esponja washing bath shower ducha
stain: stain* manch* tiñe destine grout spatula espatula hands worktop mesada encimera dedos
clean: clean* limpi* wipe* wash* lav* fregar quita quitar sacar remove
gear: glove* guante* goggle* gafas antiparras glasses lentes specs visor wear sleeves apron delantal latex nitril* ropa protect*
mask: mask* mascarilla* barbijo tapaboca* respir* breath* inhal* lungs
child: kid kids child* nin* daughter hij* son nene* bairn grand* niet* toddler school peque* sobrin*
pet: dog* cat cats perr* gat* pet pets mascota*
baby: baby babies bebe* newborn
trace: trace* traza* tracing
emulsion: emuls*
light: light medium thick ligera media espesa gruesa fina thin
swirl: swirl* remolino* marbl* marmol* espiral feather* dibujo* diseno* design*
hanger: hanger* percha* wire alambre
tool: stick* palito* palillo* skewer chopstick* spoon* cuchar* tool* fork tenedor straw
drop: drop gota* drip*
divider: taiwan* divider* separador* column*
comb: comb* peine* peacock pavo rake
layer: layer* capa capas stripe* rayas
line: line lines linea* pencil lapiz
top: top encima arriba surface superficie above
pipe: pip* frost* nozzle roset* rosas boquilla cupcake* icing duya copete merengue whip* topping pastelera churrera picos
blend: blend* batidora batir bato bati stick licuadora minipimer mixer pulse pulses blitz
stir: stir* whisk* remov* revolv* mano hand hands varilla* spatula
gel: gel gelled gelling gelif* insulat*
cover: cover* tapar* tapo tapa taparlo uncover* destapad* wrap* envolv* envuelv* abrig* towel toalla blanket manta lid film insulat* carton cardboard
fridge: fridge freezer nevera heladera congelador refrigerador cool* enfri* frio cold fresco
oven: oven horno cook*
cut: cut* corto corta cortar* corte cortes knife cuchillo slic* dents
unmould: unmould* desmold* demould*
cure: cure* curing cured cura curado curar curan curando dry* drying secad*
wet: wet* moj* humed* dissolv* disolv* disuelv* mix mezclo mezcl* hydrat*
dryin: dry seco seca secos directo directamente straight
lump: lump* clump* grumo* grumit* gritty apelmaz*
speck: speck* speckl* dot dots punto* puntit* spots spot pint* mota*
float: float* flota*
sink: sink* sunk settl* asient* hund* bottom fondo decant* sediment* posa abajo
streak: streak* veta*
steep: infus* steep* macer* soak* strain* colar colado cuelo sieve* tamiz*
scratch: scratch* grit* rasp* asper* rough
shine: shine* shin* sparkl* shimmer* pearl* perl* brill* gloss* lustr* metallic metal
glitter: glitter* purpurina brillantina escarcha
gold: gold* dorad* oro
sprinkle: sprinkl* dust dusting espolvor* paint* pincel brush* pint*
label: label* etiquet* inci ci list lista ingredient*
sell: sell* vend* venta market feria fayre fair shop store tienda*
law: law legal permit* allowed norma* ley regul* prohib*
buy: buy* compr* tienda* supplier* proveedor* where
storing: store* storing guard* keep* last lasts expir* caduc* dura venc*
toomuch: toomuch demasiad* max* most limit overd* exceso exced* pase double doble triple* whoops
more: more mas extra another otra otro
less: less menos half mitad
dark: dark* oscur* deep* strong* fuerte intens* stronger hondo
pale: pale* palid* claro clarito clara aclar* lighten* light washed suave
bright: bright* vivid* vivo vivos viva brillante* dull apagad* opaco
pastel: pastel*
fade: fad* destin* desapar* light sol sun window* ventana luz vanish*
bleed: bleed* corre corren sangr* migrat* runs
brown: brown* marron* cafe tan beige choc*
yellow: yellow* amarill* mustard mostaza
green: green* verde* teal turques* khaki
blue: blue* azul* navy celeste
purple: purple* morad* violet* violeta lila lilac lavender
pink: pink* rosa rosad* rosit* salmon fuchsia fucsia
red: red roj* brick ladrillo burgundy granate
orange: orange* naranj* peach
black: black* negr*
grey: grey* gris*
turn: turn* went gone goes change* cambi* became morph* vuelve volvi* viro vira amanecio
thick: thick* espes* grues* solid seiz* siez* stiff pudding custard natilla* pure set peak
thin: thin* liquid* runny fluid* soup* sopa
fast: fast* quick* rapid* accelerat* aceler* speed* racing corre
slow: slow* lent* despacio
hot: hot* caliente* calor warm* tibi* heat* calient* quema hirviend* ardiendo boiling
temp: temp* degree* grados celsius
rise: rise* rising volcan* crack* raj* grieta* grow* crec* climb* subi* sube inflo puff* ooz* overflow* saliendo
separate: separat* separ* split* curdl* cortad* puddle*
rice: rice* ricing arroz
smell: smell* huele* stink* olor peste hediond*
egg: egg* huevo* sulphur azufre rotten podrido
spill: spill* spilt cayo derram* volc* floor suelo piso table mesa mesada counter worktop gote* drip* bounc* mop trapear encimera parquet carpet
vinegar: vinegar vinagre neutrali*
cloudy: cloud* turbi* clear transparent* aclar* milky lechos* crust skin undissolv* bits piedrit*
rebatch: rebatch* refund* fund* grat* rall* melt* derret* scraps recort* redo rehac* recolo* milling
test: test* prueb* prob* try tries
small: small* tiny mini chic* chiquit* poquit* little minim* smallest wee
batch: batch* lote* tanda recipe* receta*
steam: steam* vapor* iron plancha
alcohol: alcohol spray* roci* isoprop*
still: still sigue todavia aun
never: never nunca nothing nada forever wont
all: whole entire todo toda all everything lot
two: two dos 2 both ambos pair
after: after despues luego once poured vertido verti
edible: coffee tea te mate beer
gram: gram* grs gramos kilo* kg pound* lb lbs libra* oz ounce* onza*
spoon: tsp teaspoon* cdta* cucharadit* tbsp tablespoon* cda* cucharad* level heaped rasa colmada
share: split* share* divid* repart* equal* each cada part parte* tercio*
count: count* cuenta* include* discount descuent*
contest: contest* concurs* comp challenge* reto theme tema
photo: photo* foto* pic pics picture*
hello: hello hi hiya hey hola holaa buenas buenos morning evening night noches dias tardes saludos
thanks: thank* thx ty gracias cheers ta genial
bye: bye adios night chau tomorrow manana luego
chat: lol haha jaja sorry perdon congrats feliz birthday
food: food comida cook* cocin* kitchen cocina eat comer edible comestible
metal: alumin* ally steel acero stainless inox* metal enamel esmaltad* copper cobre
material: plastic* plastico pp wood* madera glass vidrio silicon* ceramic* yoghurt
skin: skin piel lip lips labios eye eyes ojos face cara cosmetic* cosmetico
craft: craft* manualidades resin resina nail nails unas candle* vela* eyeshadow sombra* crayon* paint acrylic
unknown: unknown unlabel* label sin etiqueta bag bolsa bolsit* drawer cajon found encontr* bazar granel cheap
pour: pour* viert* verter vert* echo echar echado pongo poner put add added agreg* anad* tip meto
blendtwo: plus mas junto juntos together junt* combin*
give: give gives da dan
`;

/** The ideas in a question's words, each once. */
export const ideasIn = ideasFrom(IDEAS);
