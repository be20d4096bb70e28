import { knownOil } from '../../../batch/oils/find-oil.ts';
import { spaced, unbroken } from '../../../over-lines.ts';
import { plantNamed } from '../../../stability/plant-classes.ts';
import type { Words } from '../words-of.ts';

/**
 * Plants, foods and powders that somebody colours soap with somewhere and that the catalogue does not hold, as makers call
 * them; lower case without accents. From memory.
 */
const NAMES = spaced`
  glitter; plastic glitter; purpurina; brillantina; diamantina; escarcha; saffron; azafran; zobo; sorrel;
  roselle; airampo; muicle; purple corn; maiz morado; maiz azul; chicha morada; ube; camote morado; purple
  sweet potato; sweet potato; batata; beet; beets; beetroot; betabel; betarraga; remolacha; carrot;
  carrots; zanahoria; spinach; espinaca; espinacas; parsley; perejil; nettle; nettles; ortiga; kale;
  moringa; malunggay; alfalfa; wheatgrass; barley grass; blackberry; blackberries; zarzamora; blueberry;
  blueberries; arandano; arandanos; raspberry; raspberries; frambuesa; frambuesas; strawberry;
  strawberries; fresa; fresas; frutilla; elderberry; elderberries; sauco; pomegranate; granada; cherry
  juice; cereza; cerezas; grape juice; red wine; vino tinto; cinnamon; canela; clove; cloves; clavo;
  nutmeg; nuez moscada; ginger; jengibre; dragon fruit; pitahaya; pitaya; hibiscus; jamaica; rose petals;
  calendula; marigold; marigolds; cempasuchil; cornflower; cornflowers; aciano; chamomile; manzanilla;
  safflower; cartamo; henna; woad; weld; gualda; brazilwood; palo de brasil; logwood; palo de campeche;
  campeche; sappanwood; sandalwood; sandalo; red sandalwood; sandalo rojo; rhubarb root; ruibarbo; walnut
  husk; walnut husks; walnut hulls; nogalina; nogal; onion skins; onion skin; avocado pit; avocado pits;
  eucalyptus; eucalipto; chlorella; nori; kelp; seaweed; red seaweed; dulse; dillisk; laver; kombu; wakame; bladderwrack; sea lettuce; lechuga de mar; ulva;
  cochayuyo; luche; sargazo; irish moss; alga roja; algas rojas; alga; algas; sea moss; squid ink; tinta de
  calamar; pumpkin; calabaza; zapallo; ahuyama; auyama; tomato powder; tomate; chilli; chili; aji;
  guajillo; curry; egg yolk; egg yolks; yema; yemas; yema de huevo; butterfly pea; blue pea; blue pea
  flower; cudbear; orchil; lichen; liquen; pokeberry; sumac; zumaque; acai; maqui; huito; jagua; genipap;
  molasses; melaza; panela; piloncillo; soot; hollin; tizne; brick dust; polvo de ladrillo; herrumbre;
  graphite; grafito; chalk; tiza; dill; eneldo; rosemary; romero; sage leaf; salvia; mint leaves;
  hierbabuena; yerba mate; bissap; hoja santa; flor de jamaica; palo santo; rooibos; chai; black tea; te
  negro; green tea; te verde; espirulina; bee pollen; polen; propolis; propoleo; cochinilla; grana;
  kurkuma; haldi; kumkum; neem; manjistha; ratanjot; kesar; tesu; gromwell; gardenia; mulberry; morera;
  guayaba; guava; papaya; lechosa; paprika oleoresin; lutein; luteina; astaxanthin; astaxantina; lycopene;
  licopeno; chlorophyll; clorofila; chlorophyllin; clorofilina; anthocyanin; antocianina; betanin;
  betanina; riboflavin; riboflavina; vitamin b12; bentonite; bentonita; fuller s earth; tierra de fuller;
  multani mitti; rhassoul; ghassoul; pumice; piedra pomez; cassava starch; corn starch; maicena; almidon de
  yuca
`;

/** A plant's oil is a scent or a fat. */
const OF_OIL = /^(?:oils?|essential|fragrance|butter|eo|fo)$/u;
const OIL_OF = /\b(?:aceites?|fragancia|esencia|manteca)(?: esencial(?:es)?)? de(?: la| el)?$/u;

const LISTED: ReadonlySet<string> = new Set(NAMES.split('; '));
const LONGEST = 3;

/** What a plant or a powder is used as, behind its name in English, before it in Spanish; or how it was made ready. */
const BEHIND = new RegExp(
  unbroken`
    ^(?:powder|roots?|leaf|leaves|petals?|flowers?|blossoms?|husks?|hulls?|peels?|skins?|rind|bark|berry|
    berries|juice|puree|pulp|extract|infusion|starch|pollen)$
  `,
  'u',
);
const BEFORE = new RegExp(
  unbroken`
    ^(?:polvo|polvito|raiz|raices|hojas?|flor|flores|petalos|cascaras?|corteza|semillas?|jugo|zumo|pulpa|
    pure|extracto|infusion|te|harina|almidon|pepas?|fruto|vainas?|tinta)$
  `,
  'u',
);
const MADE = /^(?:ground|powdered|dried|crushed)$/u;
const READY = /^(?:molid[oa]s?|sec[oa]s?|deshidratad[oa]s?|rallad[oa]s?|machacad[oa]s?|pulverizad[oa]s?)$/u;

/** No plant's name: what stands before "powder" or behind "polvo de" in other trades, and small words. */
const NO_NAME = new RegExp(
  unbroken`
    ^(?:the|an?|my|his|her|your|our|this|that|some|any|more|of|in|on|for|with|and|or|is|it|its|dry|fine|
    loose|baking|washing|soap|milk|talcum|talc|baby|face|gun|curing|custard|cocoa|mica|pigment|colou?r|
    coloured|white|red|blue|green|yellow|black|brown|pink|purple|orange|coconut|olive|palm|water|fruit|tap|
    hot|cold|iced|el|la|los|las|un|una|de|del|en|con|para|por|y|o|que|se|su|mi|leche|jabon|pan|color|mica|
    pigmento|trigo|mesa|agua|masa|lavar|hornear|talco|cuanto|cuanta|lejia|sosa|soda|lye|clay|arcilla|
    oxid[eo]|much|which|what|how|each|two|one|like|from|such|same|old|new|own|need|use|used|put|add|spoon|
    teaspoon|tablespoon|cup|bath|hard|clove|orange|lemon|limon|naranja)$
  `,
  'u',
);

/** Where a name stands in a question's words: from the first to behind the last. */
type Span = { readonly from: number; readonly to: number };

/**
 * A colouring thing that no list of ours holds, as a question names it and where: by the list of such names, or by what is
 * done with it, "zobo leaf", "raíz de ratania", "cempasúchil molido". Undefined where there is none. Pure.
 * @example unlistedIn(wordsOf('does zobo leaf stay red')) // { text: 'zobo leaf', from: 1, to: 3 }
 */
export function unlistedIn({ words }: Pick<Words, 'words'>): (Span & { readonly text: string }) | undefined {
  const span = listedIn(words) ?? usedIn(words);
  return span && { ...span, text: words.slice(span.from, span.to).join(' ') };
}

function listedIn(words: readonly string[]): Span | undefined {
  for (let length = LONGEST; length > 0; length -= 1)
    for (let from = 0; from + length <= words.length; from += 1) {
      const to = from + length;
      const isScent =
        OF_OIL.test(words[to] ?? '') || OIL_OF.test(words.slice(Math.max(0, from - 3), from).join(' '));
      if (!isScent && LISTED.has(words.slice(from, to).join(' '))) return { from, to: pastUses(words, to) };
    }
  return undefined;
}

/** Of two that are asked about at once: "and", a comma, "or". */
const JOINS = /^(?:and|n|y|e|o|u|or|vs|versus|contra|,|\+|&|juntas?)$/u;

/**
 * Plants and foods by what colours them that are named right beside a colourant and a joining word, as they are typed. Pure.
 * @example plantsBeside(wordsOf('spirulina and chlorella'), things) // ['chlorella']
 */
export function plantsBeside({ words }: Pick<Words, 'words'>, things: readonly Span[]): readonly string[] {
  const found: string[] = [];
  const spans: Span[] = [...things];
  const isJoined = (from: number, to: number) =>
    spans.some(
      thing =>
        (thing.to <= from &&
          words.slice(thing.to, from).length <= MOST_BETWEEN &&
          JOINS.test(words[thing.to] ?? '')) ||
        (to <= thing.from &&
          words.slice(to, thing.from).length <= MOST_BETWEEN &&
          JOINS.test(words[to] ?? '')),
    );
  for (let length = LONGEST; length > 0; length -= 1)
    for (let from = 0; from + length <= words.length; from += 1) {
      const to = from + length;
      if (spans.some(one => from < one.to && one.from < to) || OF_OIL.test(words[to] ?? '')) continue;
      const plant = words.slice(from, to).join(' ');
      if (plantNamed(plant) === undefined || !isJoined(from, to)) continue;
      // What is joined to it in turn is of the same list.
      spans.push({ from, to });
      if (!found.includes(plant)) found.push(plant);
    }
  return found;
}
/** "Cuánta espirulina y cuánta clorela": a word may be said again. */
const MOST_BETWEEN = 2;

/** "Zobo leaf powder": each word of use belongs to the name. */
const pastUses = (words: readonly string[], to: number): number =>
  BEHIND.test(words[to] ?? '') || READY.test(words[to] ?? '') ? pastUses(words, to + 1) : to;

function usedIn(words: readonly string[]): Span | undefined {
  for (const [at, word] of words.entries()) {
    const [before = '', after = '', last = ''] = [words[at - 1], words[at + 1], words[at + 2]];
    if ((BEHIND.test(word) || READY.test(word)) && isName(before))
      return { from: at - 1, to: pastUses(words, at + 1) };
    if (BEFORE.test(word) && after === 'de' && isName(last)) return { from: at, to: at + 3 };
    if (word === 'en' && after === 'polvo' && isName(before)) return { from: at - 1, to: at + 2 };
    if (MADE.test(word) && isName(after)) return { from: at, to: at + 2 };
  }
  return undefined;
}

const isName = (word: string): boolean =>
  /^\p{L}{3,}$/u.test(word) && !NO_NAME.test(word) && knownOil(word) === undefined;
