import { spaced } from '../../../over-lines.ts';
import { pairs } from '../lexicon/pairs.ts';

const METALS = 'zinc, galvanised, galvanized, aluminium, aluminum, tin, alu';
const POTS =
  'bucket, pail, pot, pan, bowl, spoon, tub, tray, jug, saucepan, can, tin, kettle, whisk, ladle, sink';
const OLLAS =
  'olla, cubo, cubeta, balde, cazo, cuchara, bol, tazon, sarten, bandeja, jarra, molde, recipiente, cacerola';
const SURFACES =
  'counter, countertop, worktop, floor, carpet, rug, table, tiles, sofa, couch, desk, stairs, drawer, bench, hob';
const SUELOS =
  'piso, suelo, alfombra, mesa, encimera, mesada, mesón, sofa, mostrador, tapete, moqueta, cocina';

/** What stands, spills, burns and gasses where soap is made. */
export const AT_THE_BENCH = {
  bench:
    'mixing, stirring, making soap, soaping, soap room, lye room, fumes, batter, mezclando, mezclar, haciendo jabon, vapores, vapor',
  loaf: 'loaf, soap, bar, batter, swirl, mould, layer, jabon, barra, masa',
  spill: spaced`
    spill, spilled, spilt, spilling,
    leaked, leaking, leaks,
    knocked over, knocked it over, tipped over, fell over,
    dropped, shattered, broke, broken,
    cracked, burst, smashed,
    derrame, derramo, derramado, derramada,
    volco, volque, se cayo, se me cayo,
    se rompio, se me rompio, gotea, se escapa,
    se solto
  `,
  onsurface: spaced`
    ${pairs(pairs('on, onto, over, across, all over', 'the, my, our'), SURFACES)},
    ${pairs(pairs('en, sobre, por, al', 'el, la, mi'), SUELOS)}, ${pairs('al', SUELOS)}
  `,
  kept: spaced`
    keep, keeps,
    store, stored, storing,
    weigh, weighed,
    mix, mixed, mixing,
    leave, put, sits, sitting,
    container, jar, tub, bag,
    guardo, guardar, dejo, pongo,
    pesar, peso, mezclo, mezclar,
    scale, set up, cleaned
  `,
  container:
    'jug, pitcher, lye container, lye bucket, lye jar, plastic container, plastic jug, glass jug, jarra, jarra de plastico, recipiente, bidon',
  moldout: [
    'volcanoing, volcano ing, is volcanoing, is erupting',
    pairs(
      pairs(
        'climbing, coming, rising, spilling, pouring, pushing, crawling, flowing, running',
        'out of, over',
      ),
      'the mould, the mold, my mould, my mold, its mould, the sides of the mould',
    ),
    'saliendose del molde, saliendo del molde, desbordandose del molde, rebosando del molde, se sale del molde',
    spaced`
      overflowing the mould, overflowing the mold,
      se esta saliendo del molde, esta saliendo del molde, se esta desbordando del molde,
      esta rebosando del molde,
      sube y se sale del molde
    `,
  ].join(', '),
  volcano: 'volcano, a volcano, volcan, un volcan',
  greyed: 'grey, gray, greyish, grayish, gris, grisacea, plomiza',
  givesway: spaced`
    melting, melted, melts,
    warping, buckling, collapsing,
    shattered, shattering, cracking, exploded,
    se derrite, derritiendo, se esta derritiendo, se deforma,
    se rompio, reventó, revento, estallo
  `,
  fat: 'oil, oils, butter, butters, wax, coconut, shea, palm, lard, tallow, chocolate, aceite, aceites, manteca, cera, coco, melt and pour, base',
  metalpot: `${pairs(METALS, POTS)}, ${pairs(OLLAS, 'de aluminio, de zinc, de cinc, de lata, galvanizado, galvanizada, de estano')}`,
  gassing: spaced`
    hydrogen,
    bubble, bubbles, bubbling,
    fizz, fizzing, fizzes, fizzy,
    foaming, foams, hissing, hisses,
    boiling, smoking, hidrogeno,
    burbuja, burbujas, burbujea, burbujeando,
    espuma, espumando, hierve, hirviendo,
    humea, sisea
  `,
  bleach: spaced`
    bleach, chlorine, hypochlorite,
    pool granules, pool shop granules, pool chemicals, pool powder,
    pool shock, pool tablets, pool stuff, pool bleach,
    chlorine tablets, chlorine granules, swimming pool granules,
    granules for the pool, stuff for the pool, granulado de piscina,
    pastillas de piscina, pastilla de piscina, polvo de piscina,
    pastillas de la alberca, pastillas de alberca, granulado de la pileta,
    pastillas de pileta, pastillas de la pileta, cloro, lavandina,
    hipoclorito, agua lavandina,
    lejia de limpiar, lejia de lavar, lejia domestica
  `,
  sour: spaced`
    vinegar, acid, acids,
    citric, citric acid, lemon juice, lemon,
    ammonia, toilet cleaner, descaler, vinagre,
    acido, acido citrico, limon, jugo de limon,
    amoniaco, amonia, desincrustante, antical,
    muriatic acid, rubbing alcohol
  `,
  joined: spaced`
    went in, went in with, in with, got in,
    fell in, tipped, dumped, chucked,
    in the same, same bucket, cayo, cayeron,
    se metio, en el mismo,
    mix, mixed, mixing, mixes,
    combined, together, added, add,
    poured, pour, put,
    mezcle, mezclo, mezclar,
    mezclando, mezclado, mezcla de,
    junte, junto, eche, echo,
    agregue, agrego, puse, combine,
    cleaned, clean up, cleaning,
    limpiar, limpiando, limpie
  `,
  yellowed: 'yellow, green, greenish, yellowish, amarillo, amarilla, verde, verdoso, amarillento',
  chlorine: 'chlorine, chloramine, bleach fumes, bleach gas, cloro, cloramina, gas de cloro, chlorine gas',
  reek: 'smell, smells, smelling, smelled, smelt, stink, stinks, gas, fumes, vapour, vapor, cloud, olor, huele, olia, huelo, apesta, vapores, nube, strong',
  alight: spaced`
    caught fire, caught on fire, catching fire, catches fire,
    burst into flames, up in flames, went up in flames,
    in flames, is in flames, se prendio fuego, se incendio,
    prendio fuego, agarro fuego, cogio fuego, en llamas,
    se esta incendiando, echa llamas, ignited, has ignited,
    ignites, igniting,
    is smouldering, is smoldering, is smoulderin, is smolderin,
    started smouldering, started smoldering, started to smoulder,
    flames are, flames coming, encendio en llamas, salen llamas
  `,
  blaze: spaced`
    ${pairs('kitchen, grease, oil, stove, house, oven, microwave, pan, electrical', 'fire')}, incendio,
    incendio en la cocina, fuego en la cocina, hay fuego, hay un fuego, hay llamas, there is a fire,
    theres a fire, a fire started, fire in the kitchen, fire on the stove, set fire to, set on fire,
    flames on the stove, flames coming out
  `,
  onfire: 'on fire, ardiendo, flames, llamas, fuego',
  burnable: spaced`
    oil, oils, pot, pan,
    stove, kitchen, oven,
    towel, towels, microwave,
    curtain, curtains, hob, burner,
    house, sleeve, shirt, hair,
    alcohol, aceite, olla, sarten,
    cocina, horno, hornilla, estufa,
    cortina, toalla, casa, ropa,
    pelo, manga, slow cooker
  `,
  simile: spaced`
    like, como, colour, colours,
    swirl, scent, mica, fragrance,
    sunset, dragon, sales, theme,
    design, fragancia, remolino, diseno,
    called, named, candle,
    vela, velas
  `,
  inhaled:
    'inhaled, breathed in, breathed, sniffed, snorted, breathing in, inhalo, inhale, aspiro, aspire, respiro, respire',
  chesty: spaced`
    wheeze, wheezing, wheezes,
    coughing, cough, tight chest, chest is tight,
    went numb, is numb, face is numb, gone numb,
    sneezing, throat hurts, tosiendo, tos,
    silbido, se me durmio, entumecida, entumecido,
    pecho apretado, estornudando
  `,
  dust: spaced`
    powder, powders, charcoal,
    mica, micas, clay, oxide,
    titanium dioxide, dust, kaolin, glitter,
    polvo, polvos, carbon, carbon activado,
    arcilla, oxido, caolin, purpurina,
    zinc oxide
  `,
  guard:
    'mask, respirator, should, avoid, safe, dangerous, can, could, if, mascarilla, peligroso, evitar, seguro, puede, cubrebocas',
} as const;
