import { spaced } from '../../../over-lines.ts';

/** Colour words, and words that say a colour changed. Rules as in `looks.ts`. */
export const COLOURS = {
  white: 'white, whitish, whiter, blanco, blanca, blanquecino, blancuzco, pale white',
  whitepart: spaced`
    white part, white parts, white portion, white half, white side, white layer, white swirl,
    white bit of the, the white bits, white section, white area, white stripe, white batter, white soap,
    white bars, white zone, white third, white drops, white stripes, white base, titanium part,
    titanium portion, part with titanium, parte blanca, zona blanca, capa blanca, lado blanco,
    mitad blanca, partes blancas, td part, td portion, lightened portion, uncoloured white, whitened part,
    white stripes, white layers, white swirls
  `,
  onecolour: spaced`
    coloured part, coloured portion, coloured half, coloured swirl, coloured layer, pink part, blue part,
    purple part, green part, red part, yellow part, orange part, black part, pink portion, blue portion,
    purple portion, green portion, red portion, yellow portion, black portion, pink layer, blue layer,
    purple layer, green layer, red layer, yellow layer, black layer, orange layer, pink half, blue half,
    purple half, green half, red half, yellow half, black half, pink swirl, blue swirl, purple swirl,
    green swirl, red swirl, black swirl, orange swirl, teal part, teal portion, teal layer, lilac part,
    lilac portion, lilac layer, that portion, that layer, that part, that colour, one portion, one layer,
    one colour, pink bit, blue bit, purple bit, green bit, red bit, gold part, the portion i, portion with,
    layer with, parte de color, parte rosa, parte azul, parte verde, parte roja, parte morada, capa rosa,
    capa azul, capa verde, capa roja, capa morada, esa capa, esa parte, esa porcion, una capa, zona rosa,
    zona azul, zona verde, la porcion, violet part, violet layer, violet portion, navy part, navy layer,
    turquoise layer, turquoise part, coral layer, coral part, coloured one
  `,
  orange: spaced`
    orange, orangey, orangish, rust, rusty, rust coloured, rust colour, yellow brown, yellowy brown,
    yellow orange, amber, ginger, naranja, anaranjado, oxidado, color oxido, naranjas, brownish orange,
    orange brown, brown orange
  `,
  brown: spaced`
    brown, brownish, tan, tanned, beige, caramel, chocolate, coffee, toffee, mocha, fudge brown,
    tea coloured, khaki, biscuit coloured, mud brown, muddy brown, cafe, marron, marroncito, pardo, canela,
    moreno, chocolate colour, cocoa coloured, camel, browning, browned, poo, cardboard colour, toast,
    toasted, parda, pardusco, marrones, cafe con leche, tostado, tostada, chocolate con leche, avellana,
    cartón, carton, ambar, toffee coloured, nut brown, dark tan, camel coloured, tawny
  `,
  grey: 'grey, greyish, gray, slate, ash grey, dishwater, gris, grisaceo, plomizo, battleship, cement, lead coloured',
  black: 'black, blackish, charcoal coloured, sooty, negro, negra',
  yellow: spaced`
    yellow, yellowish, yellowy, yellowed, yellowing, mustard, lemon coloured, straw coloured, amarillo,
    amarillento, amarilla, custard, buttery colour, butter yellow, nicotine
  `,
  cream: spaced`
    cream, creamy, ivory, off white, offwhite, ecru, vanilla coloured, crema, marfil, hueso, color crema,
    bone coloured, old teeth, teeth, piano keys, old piano keys, eggshell colour, butter coloured,
    magnolia, parchment, dingy white, custardy colour
  `,
  peach: 'peach, peachy, salmon, coral, apricot, melocoton, durazno, salmon coloured, rust pink, dusty pink',
  green:
    'green, greenish, olive green, lime, minty, swampy, swamp, khaki green, verde, verdoso, verdosa, sage, seafoam, moss',
  teal: 'teal, turquoise, aqua, sea green, turquesa, aguamarina',
  blue: 'blue, bluish, navy, royal blue, sky blue, azul, azulado, celeste, cobalt, indigo blue, bluer',
  purple:
    'purple, violet, lilac, lavender coloured, lavender colour, mauve, plum, morado, violeta, lila, purpura, lavanda, grape, aubergine',
  pink: 'pink, pinkish, pinky, magenta, fuchsia, rose pink, hot pink colour, rosa, rosado, fucsia, bubblegum',
  red: 'red, reddish, crimson, scarlet, rojo, roja, rojizo, cherry red',
  muddy:
    'muddy, murky, dirty colour, muddied, drab, sludge, sludgy, turbio, sucio color, brackish, dishwatery',
  colour: 'colour, coloured, coloring, shade of, hue of, color, colores, colorido',
  turn: spaced`
    turn, turned, turning, turns, went, goes, going, gone, became, become, becoming, change, changed,
    changing, morph, morphed, shift, shifted, ended up, came out, comes out, come out, developed,
    darkened to, ended, now its, is now, are now, now, se volvio, se volvieron, se puso, se pusieron,
    se ha puesto, paso a, cambio, cambiado, quedo, quedaron, salio, se torno, ahora, ahora es,
    se han puesto, se ha vuelto, ha cambiado, se hizo, se me hizo, se hicieron, se me hicieron, se me puso,
    se me volvio, se me torno, viro, se me quedo, se me quedaron, reading as, reads as, drifted
  `,
  look: 'look, looks, looking, looks like a, looks more, look more, looked, se ve, parece, leans, leaning, reads',
  darken: spaced`
    darken, darkened, darkening, getting darker, gets darker, got darker, went dark, gone dark,
    turned dark, oscurecio, oscurece, oscureciendo, se oscurecio, se pone oscuro
  `,
  base: spaced`
    base, base oils, uncoloured base, batter colour, natural colour, base amarilla, aceite verde,
    aceite de base, oil base, base oils are, unrefined base, natural tint of the oils, substrate colour
  `,
} as const;
