import { unbroken } from '../../../over-lines.ts';
import type { FindingPatterns } from '../pattern.ts';

/** How feel, smell, lather and colour are said. Grammar as in `looks.ts`. */
export const FEEL_PATTERNS: FindingPatterns = {
  zaps: 'zap; ^zapok; ^~3 smooth zap; ~5 burn zap|tongue|lick; itch zap',
  'zaps-in-spots': unbroken`
    ~6 bite liquid|pocket|spot; ~5 spot only zap|burn|itch; ~6 seam|streak|vein zap|burn; ~6 zap|burn|
    itch pocket|spot|clump|crystal|liquid !bar; ~6 only zap|burn|itch spot|pocket|there|they|place; ~5 zap|
    burn|itch elsewhere|otherwise; ~3 only there; ~7 highph|ph pocket|liquid|spot|crystal|
    clump; ~5 crystal zap|burn|itch
  `,
  'burns-skin': 'burn !light !sun; burn skin|hand|wash|shower; itch skin|wash|use|shower|lather; itch',
  'high-ph': 'highph; ~4 ph high|14|13|12|11|purple|dark',
  'brittle-crumbly': unbroken`
    brittle; ~5 brittle cut|face|slice|edge; ~5 crack cut|slice|face|knife|
    wire !top !hot !rose; ~4 dry crack; ~4 -firm together; -hold together; ^~4 cut smooth; ^smooth; ~
    4 chips|pieces cut fly|off; ~5 crack when cut; ~6 split cut|slice|knife
  `,
  'chalky-white': unbroken`
    ~6 chalky whitepart|titanium|white|lather|feel|drag|texture !film !top !wipe; ~6 brittle whitepart|
    titanium|white; ~4 chalky feel|lather|texture|cut|break|dry; ~4 chalky brittle|hard
  `,
  'rock-hard':
    '~5 hard cut|bar|soap|rock|early|brick|next|day !onecolour !bit !lump !spot !clump; hardquick; ~6 hard -cut; ~4 rock hard; ~3 hard brittle; ~4 hard fast',
  soft: unbroken`
    soft !white !spot !clump !pocket !wax !fat; -firm; -hard; ^~4 hard bar|soap; soft onecolour|dent|cure|
    still|months|weeks|press; ~4 still soft|dent|sticky
  `,
  greasy:
    'greasy !top !layer !glitter; greasy onecolour|soft|skin|feel|hand; ~5 oilthing feel|finger|hand|skin|touch',
  'sticky-wet': 'sticky !pocket; sticky top|face|cure|damp|everywhere|hand',
  'stale-smell': 'rancidsmell; ~5 smell old|bad|funny|off|weird|fish; ~4 smell oilthing|crayon|putty|chip',
  'musty-smell': 'mustysmell',
  'turned-brown': unbroken`
    ~5 turn brown|dark; darken; ~5 brown weeks|t_weeks|t_days|t_months|cure|curing|
    t_nextday !spot; ~5 brown fragrance|vanilla !spot; ~4 brown everywhere|bar|soap|edge|
    outsidein !spot !sugar; ~5 brown white|cream !spot; brown !spot !sugar !cocoa
  `,
  'brown-outside-in': unbroken`
    ~7 brown|darken|tan edge|outsidein; ~7 turn outsidein !grey; ~7 brown|darken centre|inside light|cream|
    white|pale|original; ~6 edge brown|dark centre|inside
  `,
  'turned-yellow':
    '~5 turn yellow|orange|peach|cream !spot; ~4 yellow fragrance|discolourscent|scent|white !spot; ~5 yellow t_days|t_weeks|t_nextday|curing !spot',
  'turned-other-hue': unbroken`
    ~7 turn fragrance|discolourscent|scented pink|green|grey|purple|peach|orange|yellow|muddy|
    different; ~7 stain|discolour fragrance|discolourscent|scented; ~7 fragrance|discolourscent|
    scented pink|green|grey|peach|orange|yellow
  `,
  'colour-changed-in-lye': unbroken`
    ~8 turn colour|mica|dye|botanical lye|batter; ~9 ?purple|?pink turn|look grey|brown|green|
    muddy;  ~7 turn|colour different|grey|muddy lye|batter|t_once|ph; ~8 colour|purple|blue|pink|red|
    green turn brown|grey lye|batter|t_once|colour-botanical|botanical|dye; ~7 lye colour grey|brown|green|
    vanish|different; ~6 turn different; ~7 mica|dye|botanical|purple|pink|blue grey|brown|muddy|
    green batter|lye fast|t_once|seconds; ~7 fast grey|brown purple|pink|blue|red mica|botanical|
    dye; ~6 t_once peach|orange|grey|brown|green pink|purple|red|blue
  `,
  'colour-vanished':
    'vanish colour|purple|blue|pink|red|green|yellow|dye|botanical|mica|swirl; ~5 vanish; ~6 colour -turn left; ~6 -colour left|nothing',
  'colour-bled': unbroken`
    ~6 liquid @hue white|whitepart around|surround|next|into; ~6 tint white|whitepart|
    surround; ~6 turn whitepart|white pink|blue|purple|red|green !film; ~5 shadow|halo border|edge|around|
    line|swirl; ~5 outline fuzz|blur; ~6 move|wander|travel @hue; ~6 mix colour|colours days|
    weeks; ~6 smear cure|turn; focus; bleed !lather !cloth !wash !shower !skin !finger; ~6 bleed whitepart|
    white|colour|onecolour|line|layer|swirl|edge; blur line|edge|swirl|colour|layer; ~8 line|swirl smudge|
    fat|wider|thicker|spread t_weeks|weeks|now; -sharp; ~6 colour|pink|red|blue|purple|green spread|halo|
    moved white|whitepart|layer; ~6 blur; ~3 fuzz line|border|outline; ~2 @hue ran; ~6 creep|spread|wander|
    travel|drift @hue|dye|whitepart|white; ~6 @hue contaminate|invade|ghost white|whitepart
  `,
  'coloured-lather': unbroken`
    ~6 bleed lather|cloth|wash|shower|skin; transfer; ~6 wipe @hue cloth|skin|everything|
    hand; ~6 ring cloth; ~5 cloth colour|stain; ~6 lather heavy|paint; ~6 skin|hand turn|
    left @hue; ~5 leave @hue skin|cloth|ring; ~6 lather colour|pink|blue|purple|red|green|black|grey|tinted|
    orange|yellow|stain|brown|teal; ~6 cloth stain|colour|pink|blue|purple|red|green|black|grey|orange|
    dirty|dye|ring !s_wrapping !insulated; ~6 skin|hand stain|colour|blue|purple|black|green|pink|dye|
    tint !metal; ~5 water colour|pink|blue|purple|red|green|black|dirty|grey wash|shower|rinse|
    lather; ^~5 lather white|clean; ~4 @hue lather; ~4 @hue cloth|bathtub|suds; ~6 wash sink|tub|hands @hue|
    dye
  `,
  'too-dark':
    '?pale; ?light; ~3 dark; ~5 dark colour|too|intended|than|black|wanted; ~5 turn black|dark; -pale',
  'too-pale': unbroken`
    ~6 -black grey; ~6 ?black grey; ~3 almost|nearly|hardly colourless; ?dark; ?bright; ~5 light @hue|came|
    look|very|so|
    really !sun !centre !edge !ring !fragrance !dark; samecolour !whitepart; plain look; -contrast; ~
    5 swirl -show; ~6 barely|hardly see|visible|tell|show; subtle; uncoloured look|
    same; pale !sun !light !centre !edge !ring !orange !spot; -bright; ~5 pale colour|pink|blue|purple|red|
    green|yellow|teal|batter; ~3 red pink !white !whitepart; ~6 -colour|
    bright enough; ~4 -colour strong; ~3 barely|hardly -@hue; ~4 -see -@hue; ~5 weak @hue; ~6 -show|
    -showing @hue|swirl; ~5 -enough @hue; ~4 disappoint|
    dull pale; ~4 black grey !spot !metal !stain !mould !lather !suds !streak !fizz !aluminium
  `,
  'warm-cast': unbroken`
    ~5 blue turn|look|more green|teal; ~5 purple turn|look muddy|brown|grey|dull; ~5 pink turn|look peach|
    orange; white cream|yellow; ~5 -white cream|yellow|beige|only; -white; base yellow|cream|green|
    tint; ~8 yellowoils colour|green|yellow|muddy|cream|peach|teal|tint|cast; ~6 teal|
    green blue; ~6 peach pink; ~5 turn cream; muddy; ~6 tint yellow|green|cream|
    peach !fragrance !scented; ~5 @hue look|seems|turn dirty|dingy|yellowish; ~5 cream|yellow from start|day
  `,
  'faded-later': 'fade; ~6 colour|bright pale t_weeks|t_months; ~6 pale than before|was',
  'faded-in-light': unbroken`
    ~8 pale|light side|face sun !ends; ~9 fade|vanish|yellow sun; ~9 pale|dull sun !ends; ~9 bright|
    colour shade; ~9 fade shade; ~8 sun colour|neon|pink|purple; ~8 sun pale !ends; ~9 sun delante|detras|
    front|behind|back brown|grey|cream|pale|white; ~10 sun turn grey|brown|cream|beige|pale colour|purple|
    blue|green|pink|orange|botanical; ~10 shade bright|purple|blue|green|pink|orange|red sun|fade|pale
  `,
  'thick-fast': unbroken`
    thick fast; thickfast; ~7 thicklike batter|fragrance|turn|fast|pour|pot|bowl|lye|before|
    solid !top !white; thick batter fragrance; ~6 thick -pour; ~6 hard fast|seconds batter|pour|
    fragrance; ~7 fragrance thick|hard fast; ~5 firm|solid fast|batter|seconds; ~7 -pour thick|hard|
    batter !s_merged !s_overswirl
  `,
  'could-not-swirl': '-pour !s_merged; ~5 -pour batter|time|swirl; thickfast; ~6 fast pour',
  'batter-split':
    'separate batter|pour|trace|pot; ~5 separate; ~5 oilthing layer batter|pot|bowl|pour; grain oilthing; ~4 broke|split|apart batter|emulsion|oils',
  'never-thickened': 'notrace; -thick !could; -trace; ~5 trace -thick',
  'fizzed-on-metal': '~4 smell metal; fizz metal|vessel; fizz; ~5 black foam',
};
