import { unbroken } from '../../../over-lines.ts';
import type { FindingPatterns } from '../pattern.ts';

/** How what was done, used and waited is said, and the names flaws go by. Grammar as in `looks.ts`. */
export const DONE_PATTERNS: FindingPatterns = {
  gelled: 'gel !centre !ring !nogel !edge; insulate; ^nogel',
  'not-gelled':
    'nogel; -gel; -insulate; ~6 cold mould|loaf|overnight|soap; cold fridge; ^insulate; ~4 in cold',
  'ran-hot': 'hot !skin !burn !shower; insulate hot; ^-hot; ^~4 soaped cold; insulate',
  'ran-cool': 'cold; ^hot; ~5 cold batter|oils|lye|hardoils|temperature',
  'much-water':
    'muchwater; ~6 lots water !shower !wash !rinse; ~4 too much water; ^discount; ^~5 little water',
  'sugar-or-milk': 'sugar; sugar hot|soap',
  'white-pigment': 'titanium; whitepart',
  'much-white-pigment':
    '~5 load titanium; ~6 lots titanium; ~6 titanium spoonful|tbsp; ^~6 little titanium; ~5 titanium heavy|extra|max|maximum|double|triple',
  'dry-pigment': unbroken`
    ~7 dry colourant|carbon|colour|oxide|mica|titanium|powder|
    ultramarine; dry; ^premix; ~7 -premix colourant|carbon|colour|mica|oxide; ~8 -blend colourant|carbon|
    oxide|mica|titanium|colour
  `,
  'glycerin-carrier':
    'glycerin !n_rivers; glycerin colourant|carbon|mix|premix|colour|carrier; ^~5 oilthing instead glycerin',
  'not-blended-in': unbroken`
    -blend; ^~4 blend well|thoroughly|properly|long|minutes; handstir; ~6 handstir glycerin|colour|
    mica; ^~6 blend colourant|carbon|glycerin|colour|mica; ~5 -stir
  `,
  'much-carrier': unbroken`
    carrier; ~6 carrier colour|mica|oxide|colourant|carbon|onecolour|portion; ~6 lots oilthing|glycerin|
    water colour|colourant|carbon|mica|oxide|onecolour|premix|carrier|neon; ~6 oilthing|
    glycerin lots premix; ~6 thinned oilthing|glycerin
  `,
  'much-colour': unbroken`
    jarful; ~5 lots colour|colourant|carbon|mica|oxide|dye|neon|lake|
    black !titanium !botanical; ~5 lots powder blue|purple|pink|red|green|black; ^~5 little colourant|
    carbon|mica|oxide|colour
  `,
  'little-colour': unbroken`
    ~3 little add|used|use|put|eche|puse|only|scared|afraid; ~5 little colour|colourant|carbon|mica|oxide|
    dye|neon|powder|titanium; ^~5 lots colourant|carbon|mica|oxide|colour
  `,
  'fragrance-added': 'fragrance; vanilla !novanilla; discolourscent; ^unscented; novanilla',
  'fragrance-vanilla': 'vanilla !novanilla; ^novanilla; ^unscented',
  'fragrance-no-vanilla': 'novanilla; -vanilla; discolourscent; ^vanilla !novanilla',
  'old-oils':
    '~4 old oils|oilthing|softprone|hardoils|yellowoils !rancidsmell; ~5 old bottle|jar oils|oilthing|softprone; old softprone',
  'rancid-prone-oils': 'softprone',
  'hard-oils': 'hardoils !spot; ~5 lots hardoils; hard oils',
  'cut-late': 'cutlate; ~8 cut days|t_days|late; ~6 forgot cut',
  'low-superfat': '~4 superfat 0|1|2|low|zero; ~5 -superfat',
  'high-superfat': '~4 superfat high|10|15|20|12|18; ~4 lots superfat',
  'lye-mistake':
    'lyeerr; ~5 lots lye; ~5 lye wrong|twice|extra|off|more|instead; ~6 forgot oils|hardoils|yellowoils|softprone',
  'lye-not-dissolved':
    'undissolved; ~6 lye dissolve; ~6 -blend lye; ~5 lye clump|crystal|spot|bead; ~6 lye film|crust|clump bottom|jug',
  'yellow-oils': 'yellowoils; ~4 oils yellow|green|dark|golden !layer !pool !float !top; base yellow',
  'colour-lake': 'lake',
  'colour-dye': 'dye',
  'colour-botanical': 'botanical',
  'colour-fragile-mica': 'fragilemica; ~4 mica -stable',
  'colour-mica': 'mica; drizzle; fragilemica',
  'colour-oxide': 'oxide',
  'colour-neon': 'neon',
  'mica-oil-top': 'drizzle; ~5 mica top|swirl; ~6 glitter oilthing top; ~6 mica oilthing top|swirl|drizzle',
  'metal-contact': 'metal !mica; ~6 metal vessel|touch|mouldform|spoon|whisk',
  'damp-place': 'damp',
  'light-place': 'sun',
  'fresh-food': 'freshfood',
  'wire-cutter': 'wire; ~4 wire cut',
  'much-blending': 'overblend; ~6 lots blend; ~5 blend long|ages|forever|high|hard; -burp; -tap',
  'at-once': 't_once',
  'next-day': 't_nextday',
  'after-days': 't_days',
  'after-weeks': 't_weeks; curing',
  'after-months': 't_months',
  'when-cut': 't_cut; ~3 when cut',
  'named-undispersed': 'n_undispersed',
  'named-carrier-pockets': 'n_carrier',
  'named-crackle': 'n_crackle',
  'named-rivers': 'n_rivers',
  'named-too-much-white': 'n_white',
  'named-lye-heavy': 'n_lyeheavy',
  'named-lye-pockets': 'n_lyepocket',
  'named-hard-recipe': 'n_hard',
  'named-ash': 'n_ash',
  'named-partial-gel': 'n_partialgel',
  'named-vanillin': 'n_vanillin',
  'named-unstable-colour': 'n_unstable',
  'named-bleed': 'n_bleed',
  'named-overdose': 'n_overdose',
  'named-underdose': 'n_underdose',
  'named-base-cast': 'n_cast',
  'named-overheating': 'n_overheat',
  'named-acceleration': 'n_accel',
  'named-ricing': 'n_rice',
  'named-separation': 'n_separation',
  'named-stearic': 'n_stearic',
  'named-dos': 'n_dos',
  'named-air': 'n_air',
  'named-dew': 'n_dew !oilthing',
  'named-fade': 'n_fade',
  'named-discolouration': 'n_discolour',
  'named-metal': 'n_metal',
  'named-mica-pools': 'n_micapool',
  'named-drag': 'n_drag',
  'named-mould': 'n_mould',
  'named-layers-apart': 'n_apart',
  'named-muddy': 'n_muddy',
  'named-sunk': 'n_sunk',
  'named-warped': 'n_warped',
  'named-loose-mica': 'n_loosemica',
  'named-gel-shift': 'n_gelshift',
  'named-unsuitable': 'n_unsuitable',
  'named-unmoulded-early': 'n_early',
  'named-mould-texture': 'n_texture',
  'named-wrinkled': 'n_wrinkled',
};
