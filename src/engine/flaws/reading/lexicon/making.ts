import { spaced } from '../../../over-lines.ts';
import { INGREDIENTS } from './ingredients.ts';
import { MISHAPS } from './mishaps.ts';
import { THICKENING } from './thickening.ts';

/** Everyday words for what was put in and what was done. Rules as in `looks.ts`. */
export const MAKING = {
  ...INGREDIENTS,
  water: 'water, liquid, full water, agua, aqua',
  muchwater: spaced`
    full water, lots of water, extra water, too much water, more water than, more water, high water,
    heavy on the water, loads of water, tons of water, 38% water, 38 water, 40% water, water heavy,
    no water discount, no discount, didnt discount, agua extra, mucha agua, demasiada agua, agua completa,
    agua total, sin descuento de agua, extra splash of water, generous with the water, wet recipe,
    low lye concentration, weak lye, 25% lye, 26% lye, 27% lye, 28% lye, full amount of water
  `,
  gel: spaced`
    gel, gelled, gel phase, gelled fully, full gel, cpop, forced gel, force gel, oven process, fase gel,
    gelifico, gelificado, horno, oven, heating pad, heat mat, gelling, gelled hard, manta electrica,
    warm oven
  `,
  insulate: spaced`
    insulate, insulated, insulation, towel, towels, blanket, blankets, wrapped, wrapped up, wrap, tucked,
    cosy, cooler box, cardboard box, bundled, manta, toallas, abrigue, tapado, tape, cobija, arrope,
    arropado, envolvi, envuelto, duvet, quilt, polystyrene box
  `,
  hot: spaced`
    hot, overheat, overheated, overheating, boiling, too hot, really hot, so hot, very hot, warm to touch,
    steaming, heat, heated, heated up, hot spot, temp spiked, caliente, sobrecalento, calento, recalento,
    calor, hot batter, got hot, roasting, high temp, high temperature, hot temps, hot lye, scorching, warm
  `,
  cold: spaced`
    fridge, freezer, refrigerator, cold, cool, cold room, cold garage, winter, cooled, low temperature,
    low temps, room temperature, room temp, soaped cool, refrigerador, la nevera, congelador, frio, fria,
    temperatura ambiente, kept cool, cool temps, garage, froze, chilly, too cool, heladera
  `,
  nogel: spaced`
    didnt gel, no gel, not gel, never gelled, without gel, ungelled, prevented gel, avoid gel, avoided gel,
    stop gel, prevent gel, no gelifico, sin gel, sin gelificar, uninsulated, uncovered, left uncovered,
    didnt cover, didnt insulate, not covered, open air, left open, sin tapar, sin cubrir, no lo tape,
    no tape, no la tape, not insulated, no insulation, wasnt covered, wasnt insulated
  `,
  sugar: spaced`
    sugar, honey, milk, goat milk, goats milk, coconut milk, buttermilk, beer, fruit puree, puree, wine,
    maple syrup, agave, azucar, miel, leche, leche de cabra, cerveza, yogurt, yoghurt, cream milk,
    molasses, condensed milk, sorbitol, breast milk, breastmilk, oat milk
  `,
  freshfood: spaced`
    puree, fruit, pumpkin, banana, avocado flesh, carrot puree, cucumber, fresh, milk, petals on top,
    flowers on top, oatmeal bits, oats, botanicals on top, dried flowers, fruta, pure, platano, calabaza,
    pepino, avena, fresca, fresco, aloe from the plant, food, bananas, strawberries, tomato, yogurt,
    yoghurt, lemon peel, orange peel, peel, herbs on top, carrot juice, fresh juice, tea leaves,
    coffee grounds, orange slices, lemon slices, fruit slices, herbs, rose petals on, petals, orange slice,
    veg, vegetable, egg, aloe vera gel
  `,
  lots: spaced`
    doubled then, galore, load up on, loaded up, load up,  lots, loads, tons, heaps, too much, so much,
    way too much, overdid, over did, heavy handed, heavy hand, went mad, went overboard, overboard, extra,
    double, doubled, tripled, triple, tablespoons, heaped, heaping, generous, generously, kept adding,
    dumped, piles, plenty, excess, a bunch, ton of, load of, mucho, mucha, muchisimo, demasiado, demasiada,
    exceso, un monton, doble, cucharadas, me pase, se me fue la mano, bastante, a mountain of, shedload,
    truckload, 8x, 3x, 4x, 5x, triple dose, double dose, four times, three times, kilos de, a puñados,
    a punados, a lo loco, cargado, cargada, recargado, heavily loaded, heavily pigmented, high loading,
    pigment load, overload, overloaded, saturado de, te pasas, me pase con
  `,
  jarful: spaced`
    half the jar, whole jar, half a jar, whole bottle, whole packet, full jar, whole pot, whole tub,
    entire jar, entire packet, entire bottle, whole sample, all the jar, half the packet, half the bottle,
    todo el frasco, medio frasco, el frasco entero, todo el bote
  `,
  little: spaced`
    dusting of, sprinkle, light sprinkle, halved it, half of what, half the amount, punta de una cuchara,
    la punta de una cuchara, wrong spoon, mini spoon, mini one, smallest spoon, smallest scoop,
    little scoop, tiny scoop, mini scoop, one scoop, small scoop, pinch, tiny bit, tiny amount, smidge,
    smidgen, dash, little bit, bare, a touch, just a touch, small amount, sprinkle of, sparingly, stingy,
    not enough, too little, hardly any, barely any, half the usual, less than usual, light handed,
    scared to add, afraid to add, afraid to use, toothpick, drop of, couple drops, few drops, one drop,
    poquito, muy poco, una pizca, pizca, poca, poco, unas gotas, gotitas de colorante, didnt add much,
    didnt use much, scant, tip of a knife, tip of the knife, knife tip, punta de cuchillo, tantito,
    tantita, poquitito, poquitita, una puntita, pizquita, few grains, a few grains, tiny pinch,
    half a pinch, one pinch, a speck of, scared to put, was scared to, afraid of too much,
    scared of too much, too timid, chickened out, timid with, went light on, went easy on, easy on the,
    stingy with, me dio miedo, por miedo, media cucharadita para todo, puse apenas, le puse apenas,
    le eche apenas, eche poquito, le falto, falto color, under dosed, 1/16, 1/32, corta de color,
    me quede corto, me quede corta, skimped, skimpy, conservative with, cautious with, mezquina
  `,
  dry: spaced`
    dry powder, dry pigment, dumped in dry, in dry, straight in, straight into, directly into, directly in,
    direct to, right into, straight to, straight from the jar, powder in, tipped in, sprinkled in,
    sprinkled into, threw in, chucked in, chucked, dumped in, dropped in, dropped into, dropped it in,
    just stirred in, no premix, didnt premix, not premixed, without premixing, without mixing,
    without wetting, didnt wet, no carrier, in seco, en seco, directamente, directo, sin dispersar,
    sin diluir, didnt disperse, without dispersing, didnt mix it with oil first, tossed in, spooned in,
    shook in, added dry, added the dry, stirred in dry, spooned dry, dry into, dry mica, dry oxide,
    dry ultramarine, undiluted, sin hidratar, sin mojar, a lo bruto, a palo seco, directo a la masa,
    directo a la mezcla, directo en la masa, directo en la mezcla, en polvo, en polvo asi, tal cual,
    sin disolver antes, sin premezclar, sin predispersar, asi nomas, asi no mas, a cucharadas secas,
    not wetted, unwetted, without wetting agent, no predispersion, dusted into, scattered into, shaken in,
    straight from, as is, as powder, went dry, dry in the batter
  `,
  premix: spaced`
    premixed, premix, predispersed, pre dispersed, dispersed in, dispersed it, dispersed the,
    mixed in oil first, wetted it, wet it first, mixed with oil first, slurry, made a paste, paste,
    pre mixed, disperso en aceite, predisperse, dispersado, mixed with a little oil, mixed it with oil,
    mixed with glycerin first, diluido en, disuelto en
  `,
  blend: spaced`
    blend, blended, stick blend, stick blended, stickblend, stickblended, mixed well, mix well, well mixed,
    mixed in, mix in, incorporated, incorporate, mixed enough, mix enough, blended in, mixed properly,
    mix properly, stir enough, stirred enough, stirred well, stir well, mixed thoroughly, whisked well,
    batido, licuado, mezclado bien, mezcle bien, bien mezclado, batidora, integrado, integro, fully mixed,
    mix it properly, mix it all the way, mix all the way, combine, combined, stirred in properly,
    mixed all the way, blending, stirred through, stir through, disperse, dispersed
  `,
  handstir: spaced`
    hand stirred, hand stir, by hand, with a spoon, with a spatula, with a fork, with a whisk,
    a quick stir, quick stir, few stirs, couple of stirs, stirred by hand, gave it a stir, lightly stirred,
    barely stirred, barely mixed, barely blended, hardly mixed, half mixed, lazy, in a hurry, rushed,
    a mano, con cuchara, con espatula, apenas mezcle, poorly mixed, badly mixed, mal mezclado, swirled in,
    folded in, chopstick, mixed it badly, con una cucharilla, con cucharilla, con palito, con un palillo,
    spatula only, with spatula only, spatula, spoon only, con la espatula, a correr, low shear, no shear,
    manual stirring, manually, stirred with
  `,
  overblend: spaced`
    overblended, over blended, blended too long, stick blended for ages, stick blender on, whipped,
    whipped air, beat air, whisked hard, whisked it hard, whisked a lot, beat it, whipped it, frother,
    hand mixer, mixer, didnt burp, not burp, burp, burped, blended like crazy, blended for ages,
    bati mucho, batiendo, tap the mould, tapped the mould, bang the mould, banged the mould, tapped,
    banged, thump, golpear el molde, golpee el molde, didnt tap, didnt bang, in and out of the batter,
    high speed, lifting the blender, lifted the blender, whirring, bati de mas, batí arriba y abajo,
    up and down, arriba y abajo, in and out, no golpee el molde, no golpee, did not knock, didnt knock,
    never knock, never knocked, no le di golpecitos, sin golpear, vortex, pulled in air, sucking air,
    sucked in air, aerated it
  `,
  carrier: spaced`
    carrier, oil to disperse, oil i mixed, extra oil, extra glycerin, oil for the colour,
    oil in the colour, dispersing oil, tablespoon of oil, tablespoons of oil, tbsp oil, tbsp of oil,
    tablespoon oil, tablespoons oil, cucharadas de aceite, cucharada de aceite, aceite extra,
    aceite para dispersar, oil to wet, oil to mix, slurry, more oil than powder, lots of oil, too much oil,
    loads of oil, extra water, watered down, thinned with oil, tablespoons of glycerin, tbsp glycerin,
    tbsp of glycerin, lots of glycerin, too much glycerin, loads of glycerin, mucho aceite,
    demasiado aceite, mucha glicerina, cucharadas de glicerina, quarter cup of oil, half a cup of oil,
    half cup of oil, third of a cup of oil, glugs of oil, glug of oil, oil to thin, oz of oil,
    ounce of oil, ounces of oil, tablespoons of water, tbsp water, tbsp of water, ml of oil,
    ml of glycerin, g of oil, ml de aceite, ml de glicerina
  `,
  cut: 'cut, cutting, sliced, slicing, slice, unmould, unmoulded, corte, cortar, corto, al cortar, cortarlo, desmolde, desmoldar, cortado en, cortarla',
  cutlate: spaced`
    waited too long, waited days, left it too long, cut too late, cut late, cut it late, cut after a week,
    cut after three days, left it a week, left it for days, forgot to cut, forgot about it, sat for days,
    deje mucho tiempo, tarde en cortar, corte tarde, didnt cut it until, left in the mould for,
    waited 2 days, waited 3 days, waited three days, waited a week, left it three days
  `,
  wire: spaced`
    wire, wire cutter, cheese wire, cutter, knife, blade, slicer, planer, bench scraper, crinkle cutter,
    guitar string, alambre, cortador, cuchillo, lira, cuchilla, wires, guillotine, multi bar cutter,
    cortadora, hilo, hilo de la cortadora, cuerda de guitarra, lira de corte, guillotina, with the planer,
    cepillo, si cepillo, al cepillar, planing, plane it, if i plane, shaved a layer
  `,
  swirltool: 'hanger, skewer, hanger swirl tool, gear tie, palito, percha',
  ...MISHAPS,
  drizzle: spaced`
    drizzle, drizzled, mica swirl, mica oil, oil swirl, mica line, mica lines, mica in oil, mica and oil,
    mica mixed with oil, mica mixed in oil, oil mica, mica oil swirl, mica drizzle, mica on top,
    mica on the top, gold on top, top swirl, swirl on top, swirled on top, painted on top, pencil line,
    pencil lines, dibujo arriba, remolino arriba, mica con aceite, mica en aceite, hilos de mica,
    swirled mica, decorated the top, decorate the top
  `,
  damp: spaced`
    humid, humidity, muggy, rainy, rain, monsoon, bathroom, steamy, shower, damp, damp room, basement,
    cellar, wet weather, tropical, coast, tropics, summer, storm, thunderstorm, humedad, humedo clima,
    lluvia, bano, verano, lluvioso, sotano, moist air, dew point, plastic wrap, shrink wrap, cling film,
    sealed, airtight, plastic bag, bolsa de plastico, plastico, swamp cooler, heatwave, levante, costa,
    playa, junto al mar, humedo el clima, bochorno, dias humedos, epoca de lluvias, temporada de lluvias,
    llueve, lloviendo, aire humedo, humid day, humid days, rh, relative humidity, high rh, % rh,
    sticky weather, summer stall, beach, seaside, greenhouse, laundry room, by the sea, hurricane
  `,
  sun: spaced`
    lamp, light bulb, bulb, spotlight, led, window, windowsill, window sill, sill, sun, sunlight, sunny,
    sunshine, sunlit, daylight, light exposure, exposed to light, exposed to the light, under the lamp,
    under lights, shop lights, display, shop window, display shelf, markets, summer of markets,
    market stall, strip light, led lights, fluorescent tube, ventana, sol, escaparate, luz, luz del sol,
    vitrina, conservatory, facing the light, in the light, uv, south facing, market table, front row,
    booth, stall, craft fair, repisa, en la repisa, aparador, mostrador, terraza, balcon, tianguis, puesto,
    feria, asoleado, asoleados, le da la luz, les da la luz, le da el sol, les da el sol,
    donde pega el sol, patio, sunroom, porch, dashboard, car window, skylight, bright room, store front,
    storefront, shop front, shelf by the window, counter by the, lit shelf, halogen, grow light,
    delante del escaparate, mercadillo, photobleached, photobleaching, photodegraded, lightfast,
    lightfastness, uv exposure, lux, irradiated, lit, sunlit side, light side, table at market
  `,
  shade: spaced`
    drawer, box, cupboard, in the dark, kept dark, under the label, behind the label, other side,
    back side, underneath side, closet, cigar band, under the band, cajon, caja, armario, cara de atras,
    etiqueta, wrapper, inside of the bar, wardrobe, los de la caja, las de la caja, en la caja,
    en el cajon, guardados, las guardadas, los guardados, the boxed ones, boxed ones, boxed,
    ones in the box, ones in the drawer, stored in, wrapped ones, under the wrap, under the paper,
    the covered part, covered side, the back is, back side is, behind, facing the wall,
    bottom of the stack, bottom of the pile
  `,
  ...THICKENING,
} as const;
