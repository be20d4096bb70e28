import { plainWord } from '../../quantities/unit-words.ts';

/** The words of a list, parted by spaces. */
export const words = (list: string): ReadonlySet<string> =>
  new Set(list.split(/\s+/u).filter(word => word !== ''));

/** Articles, prepositions, pronouns, auxiliaries and courtesies of both languages: they change no amount beside which they stand. */
const STOP_WORDS = words(`
  i i'm im i've ive i'd id i'll we we're we've we'd you your he she it it's its they they're theyre they've that that's thats this these those there there's
  my our mine mum mum's her his their the a an and n of to for in on at into onto with wi from by as so then when
  is are was were be been being am will would should shall may might can could do does did have has had having got get gets getting
  want wants need needs like likes make makes made making use uses used using put puts putting go goes going gone going do say said says call called
  just only about some okay ok well now here all right yes oh aye eh mind please pls plz thanks thank cheers ta dear love luv mate hun pet lads lass mon man bro
  one's ones same usual always today again also too really actually think thinking guess reckon maybe fine nice good big small wee little lovely
  pour poured pours pouring off em stuff stay stays keep kept dont doesnt count took
  comes come came holds hold held takes take fits fit works out up stays stay stayed left remains
  yo me mi mis tu su sus se nos le les lo los la las el un una unos unas al del de que y e o en con por para pa como cuando donde ya
  es son era eran esta estan este estos estas eso esa esos esas seria serian sera seran soy somos hay habia
  tengo tiene tienen tenemos tenia quiero queria quisiera
  necesito necesita voy va van vamos hago hace hacen haces haremos uso usa usan pongo pone ponen echo echa
  lleva llevo llevan queda quedan quedo sale salen salio
  hacer usar poner salir pesar quepa cabe caben pero pues bueno aqui ahi alla asi todo todos toda todas nada solo solamente nomas
  favor gracias porfa oiga oye che vos usted ustedes senora senor amiga amigo comadre hija hijo mija mijo tia vecina
  po lang na nama ma ang ng yung sa ko mga si ay di mi inna pon fi dem am dey e o tae fae wid dis dat
`);

/** What batter is kept, poured and shaped in, and what the shape is of: they tell no size of their own beside one that is told. */
const VESSELS = words(`
  mould moulds mold molds molde moldes loaf log slab tray trays pan box tub tubs tin carton container jug
  jar pot bowl bucket pail pipe tube bottle bag cup glass beaker brick
  bandeja caja cajas cajita cajitas carton cartons cartones tarro tarrina frasco envase recipiente jarra
  jarrita olla balde cubeta cubo botella bolsa tubo vaso bote lata barra hogaza taza
  silicone silicon silicona silicon plastic wood wooden metal cardboard glass pvc madera plastico vidrio acero
  soap soaps jabon jabones jaboncito jaboncitos batter masa mezcla pasta mix batch lote tanda receta recipe
  volume volumen capacity capacidad usable util inside internal interno interna dentro total full lleno llena llenita llenito brim line mark marca raya
  measuring measure medir medidora medidor graduated kitchen cocina scale scales bascula balanza weighed weighs weigh weight pesa pesan pesado peso
  american americana americanas us rasa raso level flat clean limpio limpia
`);

const PIECES = words(`
  bar bars piece pieces pcs pc pz pza pzas unit units unidad unidades cavity cavities hole holes slot slots cake cakes guest
  barra barras barrita barritas pastilla pastillas pieza piezas hueco huecos cavidad cavidades jabon jabones
  jaboncito jaboncitos soap soaps mould moulds mold molds molde moldes
`);
const EACH = words('each every apiece ea cada cu c/u');

/** A word as these lists hold it: lower case without accents or marks around it. */
export const listed = (word: string): string => plainWord(word.replace(/’/gu, "'").replace(/^'+|'+$/gu, ''));

/** Whether a word names oils of no kind: what an amount beside it is counted by. */
export const isAnyOil = (word: string): boolean =>
  /^(?:oils?|fats?|aceites?|grasas?|ol|oel)$/u.test(listed(word));

/** Whether a word changes nothing of the amounts or colours that it stands among. */
export const isStopWord = (word: string): boolean => STOP_WORDS.has(listed(word));
/** Whether a word names what holds or shapes batter, or how full it is. */
export const isVesselWord = (word: string): boolean => VESSELS.has(listed(word));
/** Whether a word names what a batch is cut or poured into. */
export const isPieceWord = (word: string): boolean => PIECES.has(listed(word));
export const isEachWord = (word: string): boolean => EACH.has(listed(word));
