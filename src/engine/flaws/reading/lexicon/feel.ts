import { spaced } from '../../../over-lines.ts';

/** Everyday words for what hands, skin and nose notice. Rules as in `looks.ts`. */
export const FEEL = {
  zap: spaced`
    zap, zapping, zappy, zapped, zaps, tingle, tingly, electric, electric shock, battery, like a battery,
    9 volt, 9v, tongue test, chispazo, calambre, corriente, pila, da toques, toques, shock, shocks,
    shocked, licked it, lick, bites my tongue, bites the tongue, bit my tongue, tongue, lengua,
    pica la lengua, en la lengua, electric feeling, muerden en la lengua, muerde la lengua,
    quema la lengua, da calambre, calambrazo, chispazos, descarga, corrientazo, pinchazo en la lengua,
    burns the tongue, stings the tongue, bites in any
  `,
  zapok: spaced`
    zap free, zapless, passed the zap test, passes the zap test, passes zap test, passed zap test,
    passes zap, passed zap, zap test fine, zap test was fine, zap tested fine, zap test negative,
    zap test ok, zap test is fine, zap test clean, zap test passed, zap tested ok, zap test is negative,
    zap tested and fine, pasa la prueba de la lengua, tongue test fine, tongue test ok,
    tongue test is fine, tongue test negative, tongue test clean, tongue test passed, passed tongue test,
    passes the tongue test, tongue test was fine, no zap, doesnt zap, didnt zap, does not zap, no zaps,
    no bite, sin calambre, no da calambre, no pica la lengua, no da corriente, no da toques
  `,
  burn: spaced`
    burn, burnt my, burns, burned, burning, sting, stings, stung, stinging, smart my, raw hands, blister,
    welt, quema, quemo, quemadura, arde, ardor, escuece, escozor, quemazon, quemado, quemaron, hurts, hurt,
    scald
  `,
  itch: spaced`
    bit my finger, bit my fingers, bites my, bites me, on fire, like fire, itch, itchy, irritate,
    irritated, irritation, rash, red skin, went red, sore, tight and dry, harsh, skin raw, skin is raw,
    strips my skin, very drying on my skin, dries my skin, dries out my skin, tingle, tingles, tingling,
    tingly, tingled, prickle, prickles, prickling, prickly feeling, hormigueo, hormiguea, cosquilleo,
    picazon, pica, pican, irrita, irritada, sarpullido, reseca, aspero, enrojecida, roja la piel,
    red hands, hands red, hands are red, my hands are sore, prickle, prickly, muerden, muerde, pica en,
    me pica, pica las manos, leaves my skin red, leaves skin red, red skin after, dermatitis, eczema after
  `,
  skin: 'skin, hand, hands, arm, finger, my husband, piel, mano, brazo, cara, dedo, child, daughter',
  eye: 'eye, eyes, ojo, ojos',
  ph: 'ph strip, ph paper, ph test, ph, litmus, phenolphthalein, test strip, tira de ph, papel ph, fenolftaleina, strip, strips',
  highph: spaced`
    ph 11, ph 12, ph 13, ph 14, ph of 11, ph of 12, ph of 13, ph of 14, ph is 11, ph is 12, ph is 13,
    ph is 14, ph high, ph too high, off the chart, phenolphthalein, drops turned pink, drop turned pink,
    drops went pink, drop went pink, indicator went pink, indicator turned pink, strip went pink,
    strip turned pink, fenolftaleina, ph alto, ph muy alto, ph 12+, reads 12, reads 13, reads 14, read 12,
    read 13, caustic, ph over 11, ph above 11, ph>11, ph 11.5, ph 12.5, alkaline, strongly alkaline,
    free alkali, free alkalinity, excess alkali, residual alkali, free hydroxide, alcalino libre,
    alcali libre, titrated, titration, pink with phenolphthalein
  `,
  brittle: spaced`
    brittle, se desmiga, se desmigan, desmigan, desmigaja, se desmigaja, se desmigajan, crumble, crumbly,
    crumbled, crumbs, crumb, crumbling, snap, snapped, shatter, shattered, shattering, splinter,
    splintered, chip, chipped, chips off, falls apart, fell apart, falling apart, break apart, broke apart,
    breaks apart, broke into pieces, breaks into pieces, cracks when, cracked when, flake, flaky, flaking,
    breaking, breaks off, breaking off, pieces break, breaks up, broke when, bits falling, sandcastle,
    biscuit, feta, parmesan, shortbread, plaster, desmorona, desmorono, desmoronan, desmoronar, quebraron,
    quebradizo, quiebra, quebro, migas, se deshace, se rompe, se rompio, se rompen, astilla, fragil,
    desmenuza, se parte, se partio, dry cake, fracture, fractures, fractured, rubble, in chunks,
    chunks off, crack off, break off, break in half, snaps in half, wont hold together, not hold together,
    dry as a bone, corners break, lascas, en lascas, salta en lascas, in plates, breaks in plates,
    como galleta, galleta, yeso, como yeso, se quiebran, quiebran, se despostilla, despostillado,
    se astilla, cracker, like a cracker, chunks like, dry cheese, queso seco, low plasticity, friable,
    shards, splits off, cracked off, fractures along, polvoriento al cortar, se hace pedazos,
    se hace migas, se hace polvo, se desgrana, desgrana
  `,
  chalky: 'chalk, chalky, tiza, como tiza, chalkboard, dry and powdery',
  hard: spaced`
    hard, rock hard, brick, rock, stone, concrete, hard as, very hard, super hard, too hard, marble hard,
    duro, dura, durisimo, piedra, ladrillo, roca, solid as, like stone, stony, petrified, duro como piedra,
    durisima, tieso, tiesa, como roca, como cemento, como marmol
  `,
  hardquick:
    'set up so fast, got hard fast, hardened fast, hardened quickly, hard within hours, se endurecio rapido',
  soft: spaced`
    soft, softer, squishy, squish, squashy, mushy, mush, squidgy, squidge, spongy, gummy, putty, dent,
    dents, fingerprint, bendy, rubbery, floppy, gloopy, gooey, custardy, pliable, clay like, blando,
    blanda, se hunde, aguado, like butter, butter soft, toothpaste, mud, melty, fudge, fudgy, cheese,
    cream cheese, smooshes, mash, thumbprint, se hunden con el dedo, se hunde el dedo, mantequilla,
    como mantequilla, fofo, fofa, masilla, chicloso, chiclosa, guango, pastoso, pastosa, low hardness,
    deforms, deformable, yields, nail goes in, nail sinks, finger sinks, gelatinoso al tacto,
    como como queso crema
  `,
  firm: spaced`
    firm, set, harden, hardened, hardening, firm up, firmed up, set up, solid, solidify, endurece,
    endurecer, cuaja, cuajo, firme, dries out, dry out hard, unmould, unmould it
  `,
  greasy: spaced`
    greasy, greasiness, oily feel, feels oily, feels greasy, greasy feel, oily to touch, oily film,
    grasoso, grasosa, grasiento, grasienta, aceitoso, aceitosa, grasa en, oily, slippery, buttery
  `,
  sticky:
    'sticky, tacky, slimy, wet, damp, moist, clammy, soggy, pegajoso, humedo, mojado, viscoso, pegajosa, mojada, humeda, slick',
  rancidsmell: spaced`
    rancid, crayon, stale, gone off, off smell, smells off, smells funny, smell like old oil, old oil,
    old chip oil, old frying oil, old cooking oil, old nuts, fishy, smells like fish, putty smell,
    cardboard, linseed, old lipstick, old lipstick smell, paint smell, like paint, old paint, rancio,
    rancia, aceite viejo, huele raro, huele mal, huele a viejo, smells bad, smells weird, smells nasty,
    stinks, bad smell, old peanuts, old walnuts, off nuts, sour smell, smells sour, smells old, acrid,
    nuez pasada, a nuez vieja, a rancio, aceite refrito, de freir, fritanga, frito viejo, cacahuate viejo,
    mani viejo, pescado, pasta de modelar vieja, barniz, pintura vieja, masilla, fryer, fryer grease,
    old fryer, stale chips, stale nuts, stale oil, painty, oxidised smell, oxidized smell, off odour,
    off odor, aldehydic, peroxide, peroxides, lipid oxidation, grassy old, hexanal, crayon box,
    old crayons, box of crayons, smells like crayons, smells of crayons
  `,
  mustysmell: spaced`
    musty, mouldy smell, smells like a cellar, smells mouldy, cellar, earthy smell, damp smell,
    basement smell, huele a humedad, moho olor, mushroom smell, mushroomy, compost
  `,
  smooth:
    'smooth, silky, clean cut, cuts clean, cut clean, lisa, suave al corte, hold together, holds together, perfect texture',
  wipe: spaced`
    wipe off, wipes off, wiped off, wipe it off, wipe away, wipes away, rub off, rubs off, rubbed off,
    rub it off, brush off, brushes off, brush it off, brush away, scrape off, scrapes off, wash off,
    washes off, washed off, rinses off, rinse off, comes off, come off, came off, scratch off,
    steam it off, steams away, steam, steamed off, dust it off, plane off, planed off, se quita, se limpia,
    sale al frotar, sale con el dedo, se borra, al pasar el dedo, se va al lavar, se va con
  `,
} as const;
