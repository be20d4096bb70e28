import { spaced } from '../../../over-lines.ts';

/** Wider words for what does harm and how it came there. Written and weighed as `lexicon-who.ts`. */
export const WHAT_WORDS = {
  /** Lye or raw soap that nobody calls by its name. */
  vague: spaced`
    solution, soln, liquid, mixture, mix, stuff, the stuff, that stuff, gunk, goo, gloop, slop, sludge,
    concoction, potion, chemical, chemicals, corrosive, alkali, alkaline, alkali water, white powder,
    powder, crystals, crystal, beads, pellets, flakes, flake, granules, prills, pearls, grains, sodium,
    sodium something, naoh, drain cleaner, drain unblocker, drain opener, drain crystals, unblocker,
    oven cleaner, degreaser, % solution, % lye, 50/50, 33%, 50%, masterbatch, masterbatched, masterbatches,
    batter, soap batter, batter on, raw soap, raw, soap goo, soap stuff, soap mix, soap water, soaping,
    making soap, makes soap, soap making, soap maker, the mould, mould, from the mould, fresh, uncured,
    not cured, day old, hours old, days old, min ago, minutes ago, mins ago, poured it, just poured, trace,
    thin trace, light trace, out of the jug, jug, from the jug, the jar, the pitcher, the bucket,
    some of it, a bit of it, bit of it, drop of it, all of it, something popped, leftover, leftovers,
    residue, rinse water, dishwater, spill, puddle, disolucion, solucion, liquido, liquidito, mejunje,
    menjunje, mezcla, mezclita, preparado, preparacion, potaje, masa, pasta, pasta esa, pegote, producto,
    quimico, quimicos, corrosivo, alcali, sodio, polvo blanco, polvillo, polvo, cristales, cristalitos,
    perlas, perlitas, perla, bolitas, bolita, granito, granitos, granulos, escamas, escama, hojuelas,
    destapacanos, destapa canos, destapacanerias, desatascador, destapador, limpiahornos, limpia hornos,
    desengrasante, leche de sosa, haciendo jabon, hacer jabon, hace jabon, hago jabon, jabon crudo, crudo,
    fresco, sin curar, recien hecho, recien hecha, recien vertido, del molde, el molde, la jarra, el jarro,
    el bote, el balde, el cubo, la cubeta, el frasco, la botella, traza, restos, sobras, charco,
    agua sucia, lo que habia, lo que quedaba, la mezcla
  `,
  /** How it got there. */
  reached: spaced`
    splash, splashed, splatter, spattered, spat on, spit, popped, popped out, pop, burped, spurted,
    squirted, sprayed, flicked, flew, jumped, shot, hit, got hit, landed, dripped, drop hit, dropped, fell,
    fell in, tipped, tipped over, knocked, knocked over, toppled, spilled, spilt, slopped, sloshed, leaked,
    ran down, run down, running down, trickled, seeped, soaked, soaked through, drenched, covered in,
    covered, got on, got in, got into, got under, went in, went on, went down, went up, went through,
    stuck to, rubbed, wiped, touched, scratched, poked, grabbed, picked up, stepped, stepped in, trod,
    walked through, ran through, stood in, knelt, sat in, slipped, put his hand, put her hand, put my hand,
    dipped, dunked, stuck his, stuck her, squeezed, without gloves, no gloves, hole in my glove, ripped,
    tore, torn, inside my, inside the, underneath, under the, in his, in her, salpico, salpicado,
    salpicadura, salpica, salto, saltado, brinco, brincado, pringo, chispeo, chorreo, goteo, gota, gotas,
    cayo, caido, se cayo, le cayo, me cayo, se volco, volco, volcado, derramo, derramado, se derramo, rego,
    se rego, se me rego, tiro, tirado, tumbo, mojo, moje, mojado, empapo, empapado, empapada, bano, metio,
    metido, se metio, entro, entrado, se colo, colado, filtro, se filtro, toco, tocado, toque, agarro,
    agarre, manoseo, amaso, se tallo, froto, restrego, rasco, piso, pisado, pise, paso por, resbalo,
    se resbalo, partio, se ha partido, reviento, se rompio, rompio, roto, agujereado, pinchado,
    sin guantes, debajo, por dentro, dentro del guante, encima, por encima, en toda la, lleno de, llena de,
    llenas de, llenos de, embarro, embarrado, embarrada, se ensucio, ensucio, pringado, aventaron, avento,
    se echo
  `,
  /** Into the mouth, as it happens by mistake. */
  mistaken: spaced`
    thought it was, thinking it was, mistook, mistook it, mixed up, wrong cup, wrong mug, wrong glass,
    wrong bottle, wrong spoon, grabbed the wrong, looked like, pudding, custard, icing, frosting, yoghurt,
    yogurt, milkshake, candy, sweets, lolly, lollies, water bottle, old bottle, cola bottle, juice bottle,
    sports bottle, drinking glass, spoonful, mouthful, gulp, sip, swig, taste, tasted, tasting, lick,
    licked, ate, eaten, eating, bite, bit, bitten, chewing, chewed, nibbled, swallowed, swallow, drank,
    drink, drunk, sipped, swigged, downed, gargled, sucked, finger in his mouth, finger in her mouth,
    on my tongue, tongue, down the throat, back of my throat, spat, spat out, spit out, spitting,
    creyo que era, creyendo que era, creia que era, pensando que era, penso que era, pense que era,
    se confundio, me confundi, confundio, confundido, por error, por equivocacion, equivoque, se equivoco,
    sin querer, vaso equivocado, de vaso, botella de agua, botella de refresco, botella de gaseosa,
    botella de jugo, dulce de leche, manjar, natilla, natillas, flan, merengue, yogur, crema pastelera,
    caramelo, golosina, dulce, cucharada, cucharadita, bocado, buche, trago, sorbo, chupo, chupado, lamio,
    lamido, probo, probado, probe, probar, comio, comido, mordio, mordido, mordisco, mastico, trago,
    trague, tragado, bebio, bebido, bebi, tomo, tomado, tome, escupio, escupi, escupido, escupiendo,
    la lengua, lengua, punta de la lengua, la boca, a la boca
  `,
  /** Pots, tools and things of metal that lye eats. */
  metalware: spaced`
    kettle, camping kettle, billy, billy can, vacuum flask, flask, saucepan, pan, frying pan, wok,
    roasting tin, cake tin, loaf tin, muffin tin, biscuit tin, cookie tin, tin, tins, can, soup can, tray,
    oven tray, takeaway tray, foil, foil tray, tin foil, tinfoil, ali, alu, alloy, aluminium, aluminum,
    galvanised, galvanized, galv, zinc, zinc plated, bucket, pail, watering can, trough, bathtub, tub,
    mop bucket, ladle, spoon, whisk, colander, strainer, sieve, moka, moka pot, percolator, coffee pot,
    stock pot, stockpot, jam pan, preserving pan, pressure cooker, slow cooker insert, mixing bowl,
    metal bowl, bowl, metal, wire, penny, pennies, coins, coin, battery, batteries, screws, washer, bolt,
    ring, jewellery, jewelry, foil liner, lid, pewter, brass, tetera, pava, pava de camping, caldera,
    termo, olla, ollita, cazo, cazuela, cacerola, perol, perola, paila, caldero, marmita, sarten, fuente,
    bandeja, lata, latita, tarro, tacho, balde, cubo, cubeta, tina, tinaja, fuenton, palangana, lavacara,
    regadera, lamina, chapa, calamina, galvanizado, galvanizada, galvanizados, zinc, cinc, aluminio,
    papel aluminio, papel alu, papel de plata, papel metalico, cuchara, cucharon, batidor, colador,
    cafetera, moka, olla a presion, olla express, olla de presion, molde, moldes de queque, budinera,
    flanera, queque, metal, metalico, metalica, alambre, moneda, monedas, pila, pilas, tornillo, tornillos,
    anillo, cadena, peltre, bronce, laton, alpaca, hojalata, cacharro, recipiente
  `,
  /** What lye does with metal. */
  gassing: spaced`
    fizz, fizzing, fizzes, fizzy, bubbling, bubbles, bubble, foam, foaming, foams, grey foam, froth,
    frothing, spitting, hiss, hissing, sizzling, going grey, grey, turning grey, black, turning black,
    went black, gone black, dark, too hot, too hot to touch, getting hot, hot, warm, heating up, steaming,
    gas, gassing, smells weird, smells funny, smells strange, metallic smell, noise, bulging, bulge,
    swelling, pressure, lid, dissolving, dissolved, melting, eating, pitting, thinner, hole, holes,
    leaking, disappear, disappearing, reacting, burbujea, burbujeando, burbujas, burbujitas, burbujeo,
    espuma, espumea, espumarajos, efervescente, hierve, hirviendo, hervir, gris, se puso gris, negra,
    negro, negra la, se pone negra, oscura, oscurecio, caliente, calentando, se calienta, se calento,
    quema, ruido, ruidito, como refresco, como gaseosa, como pastilla efervescente, como antiacido,
    chirria, chisporrotea, sisea, huele raro, olor raro, gas, saca gas, sale gas, saliendo gas, inflado,
    inflando, se infla, presion, tapa, tapado, se deshace, deshaciendo, disolviendo, se disuelve, comiendo,
    se lo come, carcome, corroe, agujereando, agujero, agujeros, pierde agua, reaccion, reaccionando
  `,
  /** What a jug does that cannot be held. */
  runaway: spaced`
    boiling, boil, boiled, boils, boiling over, boil over, erupted, erupting, volcano, coming over,
    over the top, over the side, over the edge, overflowing, overflowed, rising, climbing, growing,
    foaming up, fizzing over, spitting, spluttering, sputtering, popping, crackling, banging, rumbling,
    hissing, smoking, steaming, smoke, cracked, crack, split, shattered, burst, exploded, explode,
    exploding, bang, leaking, dripping, pouring out, running out, going soft, gone soft, leaning, slumping,
    sagging, warping, warped, buckling, melting, melted, collapsed, collapsing, bulging, swelling,
    about to blow, gonna go, about to go, any second, out of control, everywhere, on the floor,
    on the stove, on the hob, stovetop, all over, tronando, truena, trueno, brinca, brincando, salta,
    saltando, salpica, salpicando, hierve, hirviendo, hirvio, borbotea, borbotones, espuma, sube, subiendo,
    subio, sale, saliendo, se sale, se salio, se salio por, se esta saliendo, rebosa, rebalsa, rebasa,
    rebaso, desborda, derrama, derramando, chorreando, goteando, escurriendo, revento, reventar, revienta,
    exploto, explota, estallo, se rajo, rajado, se partio, partido, trizo, trizada, se trizo, quebro,
    se quebro, agrieto, humea, humo, humeando, echa humo, vapor, vaporazo, se ablando, ablandando, blanda,
    doblando, se dobla, inclinando, se inclina, derrite, derritiendo, derritio, deforma, se inflo, volcan,
    por todos lados, por todas partes, por el piso, por el suelo, por la mesa, por la encimera,
    por el meson, por la mesada, hace ruido, en cualquier momento, a punto de
  `,
  /** Water where it should not go first, or hot. */
  wrongway: spaced`
    hot water, boiling water, kettle water, warm water, water in, water on, water onto, added water,
    poured water, water first, water second, water to it, water over, wrong way round, wrong way,
    wrong order, backwards, back to front, opposite way, other way round, honey in, sugar in, beer, milk,
    wine, all at once, in one go, too fast, agua caliente, agua hirviendo, agua tibia, agua a, agua al,
    agua encima, agua sobre, agua en, al reves, orden equivocado, de golpe, de una vez, de una, todo junto,
    toda junta, cerveza, vino, leche, miel, azucar, muy rapido
  `,
} as const;
