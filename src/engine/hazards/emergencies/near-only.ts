import { unbroken } from '../../over-lines.ts';
import { unaccented } from '../../text/unaccented.ts';

/*
 * Lye that lies somewhere, and an animal or a child that is only somewhere near: nobody has met it yet. What is wanted is how it is swept up, and that
 * they are kept away. Every word has to be known: of lye, of where it lies, of cleaning, of where they are. One word more ("stepped", "licked",
 * "drooling", a part of a body) and it is read as any other text is. Words of both languages, from general knowledge of them (no source).
 */

/** Longer texts tell a story. */
const LONGEST = 200;

const words = (list: string): ReadonlySet<string> => new Set(list.split(/\s+/u).filter(word => word !== ''));

/** Lye, how it looks, how it got there, where it lies, and what cleans it; no verb of touching, no part of a body, nobody. */
const ENGLISH = words(`
  lye naoh caustic soda sodium hydroxide
  bead beads pellet pellets flake flakes granule granules crystal crystals bits crumb crumbs grain grains prills dry solid white
  solution puddle drops water
  spilt spilled spill spillage dropped fell fallen scattered rolled knocked tipped over upset toppled everywhere
  floor floors tile tiles tiled lino linoleum worktop counter countertop table bench shelf stove cooker oven fridge carpet rug mat shed garage kitchen
  laundry room deck patio wood wooden concrete step steps stairs drawer scale scales behind under beneath down
  tub jar bag jug bottle pot bucket box tin packet
  clean cleaning up sweep sweeping mop hoover vacuum brush wipe wash rinse pick collect dustpan broom cloth cloths paper towel towels roll gloves goggles
  vinegar neutralise neutralize rid get
  how do should what whats best way safely safe make can or with first right order to need please then
  the a an my our some few lot loads load of on in onto all i we have ive just accidentally it is are was were its there this that and
`);
const SPANISH = words(`
  sosa soda caustica naoh hidroxido sodio potasa
  perla perlas bolita bolitas escama escamas grano granos cristal cristales migas trozos seca seco solida agua solucion charco gotas
  cayo cayeron caido derrame derramo derramado derramada derramadas derramaron volque volco volcado tire tiro rodaron esparcio esparcieron se hay
  suelo piso baldosa baldosas encimera mesa banco estante cocina alfombra cobertizo garaje lavadero madera cajon bascula balanza fogon horno nevera
  detras debajo
  bote bolsa jarra botella cubo caja tarro paquete
  limpio limpiar limpia limpiarlo barro barrer barrerlo recoger recojo recogerlo aspirar fregar fregona pano trapo papel guantes gafas vinagre
  neutralizar lavo lavar enjuagar
  como que puedo debo mejor forma manera segura seguro lo la los las dejo quito con o primero orden para por favor
  un una unos unas el mi de del en sobre al a he hemos acabo todo toda todas todos y es esta esto
`);

const SOMEBODY = unbroken`
  (?:dogs?|puppy|puppies|cats?|kittens?|parrot|budgie|birds?|hens?|chickens?|ducks?|rabbits?|hamster|goats?|pets?|animals?|kids?|child(?:ren)?|toddlers?|
  baby|babies|little ones?|boys?|girls?|son|daughter|grandchildren|grandkids|perr(?:it)?[oa]s?|gat(?:it)?[oa]s?|loros?|gallinas?|patos?|conejos?|
  cabras?|mascotas?|animales?|nin[oa]s?|nen[ea]s?|bebes?|cri[oa]s?|hij[oa]s?|peques?|chic[oa]s?|niet[oa]s?)
`;
const WHOSE = '(?:(?:the|my|our|two|a|el|la|los|las|mi|mis|un|una|dos) )*';
const PLACE = unbroken`
  (?:(?:is|are|s|esta|estan|anda|andan|duermen?|juegan?|corren?|viven?) )*(?:about(?: the house)?|around|near|
  nearby|here|not here|loose|outside|out(?: in the (?:garden|yard))?|downstairs|away|
  (?:asleep|sleeping|nap(?:s|ping)?)(?: upstairs)?|upstairs|in (?:(?:the )?(?:next|other|another|same)|the|
  a different) room|in the (?:house|garden|yard|hall|living room)|in (?:its|his|her|their|the) (?:cage|
  crate|basket|pen|kennel|bed|room|cot|coop)|(?:shut|locked) (?:away|out|in)|at (?:school|nursery|home)|
  (?:roam|roams|roaming|wander|wanders|wandering|running|runs|run)(?: (?:there|free|here|about|around))?|
  por (?:ahi|aqui|alli|alla|casa|la casa)|cerca|alrededor|suelt[oa]s?|en (?:el )?otro cuarto|
  en otra habitacion|en su (?:jaula|caseta|cuna|cuarto|cama|habitacion|corral)|en el (?:patio|jardin|corral|
  cole|colegio)|fuera|afuera|arriba|abajo|durmiendo|dormid[oa]s?|encerrad[oa]s?|lejos|en casa)
`;
/** "The dog is about", "with the kids upstairs". */
const SOMEBODY_SOMEWHERE = new RegExp(
  `^(?:with |con |there is |theres |hay )?${WHOSE}${SOMEBODY} ${PLACE}$`,
  'u',
);
/** "Anda la perra por ahí", "donde andan las gallinas". */
const SOMEWHERE_SOMEBODY = new RegExp(
  `^(?:andan?|estan?|esta|duermen?|juegan?|corren?|viven?|hay) ${WHOSE}${SOMEBODY}(?: ${PLACE})?$`,
  'u',
);
const isSomebodySomewhere = (clause: string): boolean =>
  SOMEBODY_SOMEWHERE.test(clause) || SOMEWHERE_SOMEBODY.test(clause);

const LYE = /(?<!\p{L})(?:lye|naoh|caustic|sosa|soda|hidroxido|hydroxide|potasa)(?!\p{L})/u;
/** On whom? Nothing that was named is it. */
const ON_IT =
  /(?<!\p{L})(?:on|onto|over|in|into) (?:it|this|that)(?!\p{L})|(?<!\p{L})(?:en|sobre|a) (?:el|la|los|las|esto)$/u;
/** Clauses part at marks, and where somebody else is spoken of. */
const ENDS = /[.,;:!?¿¡()\n]+|(?<!\p{L})(?:and|but|while|where|y|pero|mientras|donde)(?!\p{L})/u;

/**
 * True where lye lies somewhere, an animal or a child is told of as near or away, and no word tells that they met it. Reads the first 200 characters.
 * @example isNearOnly('lye beads spilt, the dog is about') // true
 */
export function isNearOnly(text: string): boolean {
  if (text.length > LONGEST) return false;
  const plain = unaccented(text)
    .replace(/['’]/gu, '')
    // "Se me cayó" is dropped; "me cayó" fell on me.
    .replace(/(?<!\p{L})se (?:me|nos|le) (?=\p{L})/gu, 'se ')
    .replace(/(?<!\p{L})encima de(?:l| la)?(?!\p{L})/gu, 'sobre')
    .replace(/\s+/gu, ' ');
  if (!LYE.test(plain)) return false;
  const clauses = plain
    .split(ENDS)
    .map(clause => clause.trim())
    .filter(clause => clause !== '');
  const others = clauses.filter(clause => !isSomebodySomewhere(clause));
  if (others.length === clauses.length || others.length === 0) return false;
  if (others.some(clause => ON_IT.test(clause))) return false;
  const told = others.join(' ').split(' ');
  return [ENGLISH, SPANISH].some(known => told.every(word => known.has(word)));
}
