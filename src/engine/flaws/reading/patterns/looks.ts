import { unbroken } from '../../../over-lines.ts';
import type { FindingPatterns } from '../pattern.ts';

/**
 * How what is seen is said. A pattern is ideas that stand near one another, in any order:
 * `a|b` either; `-a` said not to be there; `!a` must not stand near; `~n` within n on the reading ruler (6 unless told).
 * `?a` hoped for, not there; `@hue` any colour; `^` before a pattern makes it speak against the finding.
 */
export const LOOKS_PATTERNS: FindingPatterns = {
  'coloured-specks': unbroken`
    spot colour|colourant|carbon|oxide|mica !lather !cloth; ~3 spot|grain blue|purple|pink|red|teal|yellow|
    green|black|dark !metal !fuzz !n_mould !lather !cloth; spot powder !white !top; ~4 clump blue|purple|
    pink|red|teal|green|black; pepper
  `,
  'white-specks':
    '~3 white spot !whitepart !powder !film; ~3 white|cream clump !crunch; ~4 titanium spot|clump; ~3 pale spot',
  'waxy-bits':
    'wax spot|clump|white|cream|soft|bit; ~4 spot -colour; spot soft white; ~3 clump hardoils; ~4 white spot melt; ~4 pale spot soft',
  'clumps-of-pigment': unbroken`
    clump colour|colourant|carbon|oxide|mica|titanium|powder|blue|purple|pink|red|green|teal|black|
    dye; powder spot|pocket colour|colourant|carbon|oxide|mica|blue|purple|pink|red|green|
    black; ~8 -blend spot colourant|carbon|oxide|mica|titanium; ~8 -blend clump; ~5 spot powder handstir|
    dry|titanium|colourant|white; ~5 spot powder
  `,
  'specks-smear-colour': unbroken`
    ~7 spot|clump|powder drag|bleed|streak wipe|lather|liquid|skin|wash; spot smear; ~5 spot|clump crush|
    break|burst|pop|rub|drag colour|powder|blue|purple|pink|red|green|black; dry powder spot|clump pocket|
    inside|centre
  `,
  'orange-spots': unbroken`
    ~3 orange|yellow|brown spot !waxy !cocoa !oxide !clay !mica !rack; ~3 orange clump; ~4 orange|rust drop|
    bead|stain; ~4 spot orange|rust; ~4 spot tea|coffee stain; ~4 stain tea|coffee
  `,
  'rice-grains': 'grain; grain batter|fragrance|clump|hard; ~6 clump batter fragrance; hard spot batter',
  'crunchy-pockets': unbroken`
    ~6 crystal pocket|spot|clump; crystal !top !film !window; ~4 hard white spot|clump|pocket|
    bead; ~6 pocket white powder; ~5 white clump|pocket zap|burn|itch; ~6 pocket|spot|clump zap|burn|lye
  `,
  'coloured-liquid-pockets': unbroken`
    ~3 liquid colour|blue|purple|pink|red|green|teal|black !lather; ~5 pocket colour|dye|mica|glycerin|
    ink; ~6 liquid colour|blue|purple|pink|red|green|teal|colourant|carbon|mica|dye cut|pocket|spot|face|
    leak; ~5 spot|clump liquid colour|blue|purple|pink|red|green|glycerin|colourant|carbon; ~4 wet|
    liquid spot|pocket|clump|bead colour|blue|purple|pink|red|green|teal|mica; bead colour|blue|purple|pink|
    red|green cut|face; ~5 glycerin liquid pocket|spot|cut|face; ~6 oilthing spot|pocket colour|orange|blue|
    red|green|pink|purple; ~6 s_colouroil pocket|spot
  `,
  'liquid-pockets':
    '~5 pinhole liquid; ~5 pocket liquid; ~3 pocket|spot|clump sticky|wet !damp !fuzz !mould; ~5 liquid cut|face|slice !top !oilthing; ~4 pocket full',
  'clear-liquid-pockets':
    '~5 pocket liquid lye|zap|burn|clear|sting|caustic|itch|highph; ~5 liquid lye cut|pocket|spot|inside',
  pinholes: unbroken`
    pinhole; pocket !liquid !colour !crystal !zap !burn !glycerin !clump !wet !sticky; ~4 pocket air; ~
    3 pocket little|tiny|round|everywhere !liquid !colour; ~5 pocket face|cut !liquid !crystal !zap
  `,
  'water-beads': unbroken`
    ~4 bead top|face|everywhere|water|clear|sticky|cure|damp|
    sticky !oilthing; bead !colour !hard !lye !crystal !oilthing !swirl; ~4 sticky top|face|everywhere|
    drop !oilthing; ~5 water top|face bead|drop|liquid; ~5 sticky damp; ~4 wipe wet|sticky|bead comeback
  `,
  'fuzzy-growth':
    'n_mould; fuzz; ~4 fuzz green|black|white|blue|grey|spot; ~5 spot green|black|grey grow; ~4 hongo',
  'translucent-veins': unbroken`
    translucent wiggle|path|channel|ribbon|trail; translucent vein|line|streak|squiggle|river|patch|
    map; vein !crackle; ~6 translucent white|whitepart; ~6 vein white|whitepart|gel|titanium|
    hot; ~4 wavy line; ~3 glossy|shiny|wet|dark|gel|jelly line|vein|streak|squiggle|
    path !cut !wire; ~4 lines clear|translucent
  `,
  'crackle-network': unbroken`
    crackle; ~5 crack spot whitepart; ~3 crack paint|glass|plate; ~5 crack whitepart|
    titanium !top; ~5 vein crackle; ~5 crack everywhere white fine|thin|tiny|
    little; ~4 crack everywhere !top !crumble !brittle; ~2 white crack !top !powder !crumble; ~4 crack web|
    net|network|hairline; ~4 shatter|fracture|broken look|like whitepart
  `,
  'drag-lines': unbroken`
    drag line|cut|wire|face; line wire|cut|face; drag wire; ~5 drag spot|botanical|colour face|cut|wire|
    slice; line same; ~6 drag mark|cut|line; ~3 parallel; comet; ~5 tail|pulled|dragged spot|colour|
    botanical|bit down|below|out|across; ~5 streak face|cut|slice wire|knife|cutter; ~4 mark cut|knife|wire|
    cutter
  `,
  'streaks-of-colour': 'streak; streak colour',
  'only-in-white':
    'only whitepart|titanium; whitepart crack|crackle|vein|translucent|brittle|chalky|crackle; ~5 in whitepart; ~6 crackle|vein|brittle white|titanium',
  'only-in-one-colour': unbroken`
    only onecolour; onecolour soft|greasy|sticky|brittle|liquid; ~6 only colour|purple|blue|pink|red|green|
    black|teal !spot; onecolour; ~8 rest|other fine|hard|firm onecolour|soft
  `,
  'only-on-surface':
    '~4 only top; ~6 inside|centre fine|clean|normal|clear|smooth; ~5 wipe !s_lid; outsidein film',
  'all-through': 'everywhere',
  'same-place-every-slice': 'same; ~4 line parallel',
  'powdery-film': unbroken`
    ~5 white powder|film|chalky !spot !pocket !titanium; ~4 pale|grey powder; powder film|top|
    edge !colourant|carbon !dry !spot; film top|white|cream|edge|
    powder !oilthing !greasy !s_apart; ~4 chalky top|film|edge|corner; ~4 top white|
    grey !pigment !titanium !spot !drizzle !layer !soft !hard !oilthing; ~5 chalky wipe; ~5 powder wipe
  `,
  'wipes-off': 'wipe !s_lid',
  'crack-on-top': unbroken`
    ~6 burst; crack top|hot|length|rose|along|insulate|loaf|middle|
    centre !whitepart !face !cut; ~5 crack loaf|mould|mouldform; ~4 crack down; ~4 open up top; crack like|
    open|long|big|huge|deep|
    giant; crack !everywhere !white !whitepart !titanium !face !cut !slice !brittle !crumble !vein !
    crackle !paint !glass !plate !web !net !hairline !spot !corner !edge
  `,
  'rose-out-of-mould': unbroken`
    rose; rose mouldform|top|mould|crack; ~5 over sides|top mouldform|mould; ~6 liquid|ran|spill over sides|
    edge|mouldform; ~6 escape|climb|crawl|spill mouldform|mould|pan
  `,
  'metal-stain': unbroken`
    ~5 spot|line|mark rack; ~7 grey|green|dark|black|stain|blue|brown|orange|line|teal metal|vessel touch|
    metal|against|sat; ~6 grey|green|dark|black|stain|blue metal !mica !drizzle; ~5 vessel|metal turn|
    went black|grey|dark; ~5 stain metal|vessel; ~6 grey|green|black|dark edge|bottom|face|side touch metal|
    mouldform|vessel; ~6 rusty metal|vessel
  `,
  'grey-stain':
    '~3 grey spot; ~4 grey|black|green|dark stain|film|edge|bottom|streak|mark|smudge !fuzz !drizzle; ~4 stain; ~5 turn grey|green edge|bottom|side|face',
  'glitter-oil-pools': unbroken`
    glitter pool|oilthing|greasy|liquid|drip !lather !cloth !metal; ~4 glitter top wet|sticky|shiny|never|
    still; ~3 glitter film; mica pool|oilthing|greasy top|drizzle|swirl; drizzle pool|oilthing|greasy|
    liquid|wet|sticky|line; ~6 gold pool|oily; ~5 mica pool|puddle; ~7 gold|golden|mica line|vein oilthing|
    wet|sticky|liquid; ~7 glitter line|swirl oilthing|wet
  `,
  'oil-layer': unbroken`
    swim; ~4 oilthing everywhere|layer|float|pool|top|bottom|liquid|
    separate !glitter !mica !drizzle; ~5 separate oilthing; ~5 liquid layer|pool|float|top|bottom|
    under bottom|top|under|solid|hard|mouldform; ~4 liquid underneath|bottom|under; ~5 pool oilthing|
    liquid top|bottom|mouldform|under; ~5 liquid oilthing|oil mouldform|top|under|cut|leak|
    weep !onecolour !glitter; ~5 greasy layer|pool|liquid top; ~4 oilthing out|seep|weep|leak|drip|come|
    came|oozing !onecolour !swirl; ~4 oilthing under|underneath|beneath|around|sides
  `,
  'two-layers': unbroken`
    separate; ~6 two soaps|layers|halves different|stack; ~8 top soft|liquid bottom hard|brittle|
    chalky; ~6 layer liquid soft|hard bottom|top; ~6 bottom hard|brittle|solid top oilthing|soft|liquid
  `,
  'dark-centre-ring': unbroken`
    ~8 half deep|dark|bright|intense|glossy|shiny|translucent ends; ~8 ends dull|pale|light|matt|matte|
    chalky deep|dark|bright|intense|glossy|shiny|translucent; ~7 outside|edge light|pale|lighter inside|
    middle; ~10 centre edge pale|dark|bright|light|translucent|dull|chalky; ring dark|centre|light|
    translucent|colour|middle !bleed; centre dark|light|translucent|different|bright edge; centre dark|
    translucent; ~5 ring !cloth !lather !swirl !bleed !dye !top !pinhole !pocket !spot !bead; ~
    7 dark centre edge; ~7 gel centre|ring|edge !crackle; ~5 centre darker|richer|brighter|
    deeper; ~6 edge light|pale|chalky|dull centre|inside|middle; two tone|shades; ~4 ring slice|every|loaf|
    cut; ~12 inside dark edge light|pale; ~5 centre bright|deep|saturated|intense; ~6 inside dark edge|
    outside; ~4 brown centre !fragrance !vanilla !milk !spot
  `,
};
