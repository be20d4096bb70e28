import { spaced } from '../../../over-lines.ts';

/** Layers, lines and swirls: whether they hold, and where they went. */
export const SWIRLS = {
  s_lid: spaced`
    like a lid, like lids, in one piece, clean in my hand, clean off in my hand, off whole, como tapa,
    como una tapa, como tapadera, como una tapadera, de una pieza, entera en la mano
  `,
  s_apart: spaced`
    come apart, comes apart, came apart, coming apart, pull apart, pulled apart, peel apart, peeling apart,
    slide apart, slid apart, slides apart, split apart, twist apart, slide off, slides off, slid off,
    slipped off, slip off, popped off, pops off, pop off, popped right off, fell off, falls off, fall off,
    falling off, fell clean off, fall right off, lifts off, lift off, lifted off, lifts away, peels off,
    peeled off, detach, detached, detaching, unstuck, came unstuck, unglued, delaminate, delaminated,
    delaminating, delamination, let go of, letting go, parted, parted company, separate at, separate along,
    separated at, separated along, separated where, break at the line, broke along, breaks along,
    broke at the line, snaps at the line, snapped along, snaps in two right at, gap between, gap opening,
    gap opened, cleave, cleaved, se despega, se despego, se despegan, se despegaron, despegado, despegada,
    despegadas, se desprende, se desprendio, se desprenden, se desprendieron, se separan, se separa,
    se separaron, separan, se cae la, se abren, se partio justo, se parten por, como hojas, dropped off,
    drops off, drop off, came clean off, came right off, comes clean off, in two slabs, into two slabs,
    came off, comes off at, se abrio por, opens clean, opens at, opened at, opened along, opened clean,
    abre por, abre en, separate cleanly, pop apart, pops apart, coming off, keeps coming off, came away,
    comes away, se me separo, se me separaron, se separo, two pieces, into two, in two pieces, se resbala,
    resbala, resbalan, se desliza, deslizan, slips off, slipping
  `,
  s_bond: spaced`
    bond, bonded, adhere, adhered, adhering, stick to each other, sticking to each other, stick together,
    sticking together, stuck together, hold to each other, join, joined, grip, glue, glued, fuse, fused,
    knit, marry, pego, pegar, pegan, pegaron, unio, unieron, unen, pegada, pegado con, stick to it,
    hold to it, stuck to the first, stick to the first, stick to the bottom layer, stay together, weld,
    welded, welding, unite, united, anchor, agarro, agarra, agarrar, adhirio, adhieren
  `,
  s_seam: spaced`
    seam, where they meet, where they met, where the two, line between, between layers, between the layers,
    between the two, interface, union, la union, la linea entre, entre capas, entre las capas,
    entre los dos, the line, at the line, la linea, por la linea, where the layers meet
  `,
  s_layered: spaced`
    layers, layer, top half, bottom half, top layer, bottom layer, second layer, first layer, top part,
    bottom part, two halves, halves, upper half, lower half, two colours, frosting, piping, piped,
    soap dough, embed, embeds, sandwich, capas, la capa, capa de arriba, capa de abajo, primera capa,
    segunda capa, parte de arriba, parte de abajo, dos mitades, mitades, decoration, la de arriba,
    lo de arriba, topping, two pours, pours, second pour, first pour, the first, the second, la segunda,
    la primera, halves of the bar, lower layer, lower part
  `,
  s_setlayer: spaced`
    first layer was hard, first one was hard, first layer was firm, first layer was already,
    bottom was hard, bottom layer had set, let the first layer set, let the bottom layer set,
    layer set overnight, first one was super hard, first one set, waited too long to pour,
    waited too long between, waited hours to pour, waited till the first, waited until the first,
    waited between pours, hours between pours, poured the second, poured the top the next day,
    poured on top of, poured the next layer, poured the rest the next day, poured it the next day,
    on yesterdays soap, already set, already hard, ya estaba dura, ya estaba duro, ya estaba firme,
    ya habia cuajado, estaba muy dura, espere mucho para la segunda, la eche al dia siguiente,
    la primera ya, pencil line, mica line, hours between layers, between layers, horas entre capas,
    hours i waited, hours from one to the other, hours later poured, cold joint
  `,
  s_merged: spaced`
    all one colour, one colour, one solid colour, one shade, one tone, one brown, one big blob, one grey,
    one muddy, single colour, same colour all over, solid colour instead, blended together, blended into,
    blended to, blended in together, all blended, colours blended, colours merged, merged together,
    merged into, mixed together, all mixed, mixed into, mixed into each other, ran together when i, melded,
    muddle, muddled, muddied, homogenised, homogenized, homogenous, homogeneous, uniform colour,
    no separate colours, no distinct, no definition, no swirl at all, no pattern left, lost the pattern,
    lost the swirl, lost the design, swirl disappeared, swirl vanished, swirl is gone, no more swirl,
    cant tell my colours apart, cant tell the colours apart, cant see any separate, cant make out,
    tell them apart, revuelto, revueltos, revuelta, todo revuelto, se hicieron uno, se hizo uno,
    un solo color, un solo tono, color lodo, color barro, todo cafe, se juntaron los colores, se juntaron,
    se revolvieron, se revolvio, se mezclo todo, se mezclaron todos, se mezclaron los colores,
    sin definicion, no se distingue, no se distinguen, colour soup, brown soup, mud, mush of colour,
    poop brown, baby poop, sludge, greige, khaki mess, brown mess, one mess, no individual colours,
    became one, turned into one, all one, todo se mezclo, ya no hay remolino, no hay remolino,
    sin remolino, no remolino, commingled, undifferentiated, indistinguishable, no longer distinct,
    not distinct, no swirl, there is no swirl, no separate, no separation between, looks like mud,
    like mud, como lodo, como barro, blob, all brown, all grey
  `,
  s_overswirl: spaced`
    overmixed, over mixed, over mix, over stirred, overstirred, over swirled, overswirled, overworked,
    over worked, swirled too much, swirled it too much, stirred too much, swirling too much,
    mixed too much, too many passes, too many swirls, too many turns, too much swirling, too much stirring,
    kept swirling, kept stirring, kept going, kept mixing, kept playing, kept dragging, couldnt stop,
    couldnt stop swirling, didnt know when to stop, didnt stop, went a bit crazy with the,
    went crazy with the, went overboard with the skewer, overdid the swirl, overdid it with the,
    overdid the hanger, swirled and swirled, stirred and stirred, again and again, back and forth,
    times round, many times, like 10 times, about 20 times, 20 times, ten times, a dozen times,
    le di muchas vueltas, le di demasiadas vueltas, demasiadas vueltas, muchas vueltas, tantas vueltas,
    vueltas, me pase moviendo, me pase con el palillo, me pase de vueltas, lo movi mucho,
    lo movi demasiado, lo revolvi mucho, lo revolvi demasiado, batí de mas, revolvi de mas, mezcle de mas,
    mezcle demasiado, segui moviendo, segui mezclando, too much skewer, skewered it to death,
    played with it too long, passes, number of passes, ten passes, movi demasiado, movi mucho, le movi,
    stirred a lot, swirled a lot, excessive stirring, excessive swirling, stirred so much, pasadas
  `,
  s_tool: spaced`
    swirl, swirls, swirled, skewer, chopstick, hanger, toothpick, in the pot swirl, itp, palillo, palito,
    percha, remolino, remolinos, colours, colores, tonos, comb, drop swirl, taiwan, peacock, ribbons,
    pattern, design, diseño, dibujo
  `,
  s_sank: spaced`
    sank, sunk, sink, sinks, sinking, sunken, went to the bottom, gone to the bottom, fell to the bottom,
    falls to the bottom, dropped to the bottom, drops to the bottom, dropped through, fell through,
    fell straight, sat at the bottom, sitting at the bottom, all at the bottom, all on the bottom,
    on the floor of, settled, settled at the bottom, settled to the bottom, straight down,
    straight to the bottom, all ended up at the bottom, ended up underneath, ended up at the bottom,
    ended up on the bottom, in the bottom inch, bottom inch, bottom third, bottom quarter,
    only along the bottom, along the bottom, just at the bottom, only at the bottom, only the bottom has,
    none of it stayed up, didnt stay up, nothing on top, nothing at the top, top is plain, top is bare,
    top is empty, plain on top, puddle on the floor, dove, nosedived, plunged, dropped like a stone,
    like a stone, disappeared under the surface, se hundio, se hundieron, hundido, se fue al fondo,
    se fueron al fondo, se fue todo abajo, se fue abajo, se fueron abajo, quedo al fondo,
    quedo en el fondo, al fondo, en el fondo, se asento, se bajo todo, cayo al fondo, todo abajo,
    pegado abajo, collapsed to the base, slid beneath, slid under, sank through, sedimented, sediment,
    sedimentation, precipitated, sedimento, cayo, cayeron al fondo, quedo abajo, quedo todo abajo,
    quedaron abajo, migrated to the base, to the base, at the base, base of every, base of each, bajaron,
    all down below, down below, all down, right thru to the bottom, right through to the bottom,
    to the bottom, under gravity, gravity, none on top, nothing up top, nada arriba, arriba no hay nada,
    arriba nada, se me bajo, bajo todo, quedaron al fondo
  `,
  s_thin: spaced`
    like water, thin as water, like milk, too thin, so thin, very thin, really thin, super thin,
    pretty thin, batter was thin, thin batter, thin trace, too runny, so runny, very runny, super runny,
    runny batter, runny slow, too fluid, very fluid, super fluid, too loose, too liquid, really liquid,
    barely emulsified, barely at emulsion, just emulsified, at emulsion, bare emulsion, muy liquida,
    muy liquido, muy aguada, super liquida, como agua, muy delgada, traza muy ligera, traza ligera,
    muy suelta, demasiado liquida, not thick enough, wasnt thick enough, didnt let it thicken
  `,
  s_high: spaced`
    from high, high up, up high, from up high, from a height, from way up, from way above,
    held the jug high, poured high, from too high, from above my head, desde alto, desde lo alto,
    desde arriba, desde muy arriba, de muy arriba, de muy alto, a chorro
  `,
} as const;
