import { unbroken } from '../../../over-lines.ts';
import type { FindingPatterns } from '../pattern.ts';

/** How flaws of swirls, layers, tops, moulds and shape are said. Grammar as in `looks.ts`. */
export const SWIRL_AND_SHAPE_PATTERNS: FindingPatterns = {
  'layers-parted': unbroken`
    ~5 s_apart s_layered !s_shine !mica !glitter; ~6 -s_bond s_layered; ~6 s_apart s_seam; ~6 gap s_seam; ~
    6 broke|break|split|snap s_seam; ~7 lid|sandwich|tapa s_apart; ~8 s_lid wipe s_layered; ~7 lid|sandwich|
    tapa separate; ~6 apart layers|halves|seam; ~5 separate layers|
    capas !oilthing !liquid !batter; ~4 despega tapa|arriba|
    capa; ~8 separate s_seam !oilthing; ~6 separate pieces|halves|capa
  `,
  'poured-on-set-layer': 's_setlayer; ~8 hours|overnight|waited|tomorrow layer|layers poured|pour',
  'colours-ran-together': unbroken`
    s_merged s_tool; ~8 s_merged s_overswirl; ~8 brown|grey|muddy|purple s_merged colours|colors|
    colores; ~8 s_overswirl brown|grey|muddy|mud|blob|khaki|sludge; ~6 -tell|-distinguish colours|
    colores apart; ~7 muddy|brown|
    grey swirl s_tool s_overswirl; ~6 -contrast colours s_tool; ~6 muddy s_tool !base !yellowoils !vanilla
  `,
  'swirled-too-long': 's_overswirl',
  'swirl-sank': unbroken`
    ~7 s_sank s_tool; ~7 s_sank colour|color|gold|mica|blue|pink|red|purple|black|green|embeds|seeds|swirl|
    design|all|everything|none|
    plain !oilthing !liquid !lye !separate; ~8 s_sank s_thin !oilthing; ~8 s_sank s_high !oilthing
  `,
  'thin-batter': 's_thin',
  'poured-high': 's_high',
  'bent-bars': unbroken`
    ~8 s_bent s_bars; ~6 s_bent drying|dried|dry|cure|curing|rack|secar|secarse|curado; ~6 s_bent banana|
    edges|ends|weeks; s_bent !swirl !line !vein !translucent !wire !lines !hanger !soft !finger !vein !layer
  `,
  'uneven-drying': 's_unevendry',
  'mica-rubs-off':
    '~6 s_shed s_shine !wash !lather !shower !pool !oily; ~6 wipe s_shine !wash !lather !pool; ~6 transfer s_shine !lather !wash',
  'dry-mica-top': '~6 s_drydust s_shine; ~6 s_drydust top finger|hands|touch',
  'deeper-from-heat': unbroken`
    ~9 s_deeper s_heated !edge !ring !centre !inside !middle !fragrance !vanilla !spot !vein !oils !
    yellowoils; ~9 s_deeper s_heated s_evenly !fragrance !vein !translucent; ~9 s_deeper s_twins !
    fragrance !vein; ~12 pale s_deeper s_heated !vein; ~10 pale turn s_heated bright|dark|
    deep; ~14 s_heated s_coldtwin colour|pink|red|orange|blue|green|purple|yellow|s_deeper|
    pale; ~10 turn s_heated s_coldtwin; ~9 s_heated s_deeper yellow|pink|red|orange|blue|green|
    purple s_coldtwin
  `,
  'colour-not-for-soap':
    's_notsoap !apenas !smell !fragrance; ~5 s_crayon s_putin !apenas !smell !smells !stale !rancidsmell',
  'unmoulded-soon':
    '~7 s_unmould s_early !s_inmould; ~8 s_tore s_early s_liner|mouldform; ~5 n_early; ^s_inmould',
  'tore-at-unmoulding': '~8 s_tore s_unmould; ~6 s_tore mouldform|s_mouldwall|liner|silicone|molde',
  'liner-marks': '~7 s_crease s_sides !top !pinhole; ~7 s_crease s_liner|s_mouldwall',
  'lined-mould': 's_liner',
  'wrinkled-skin':
    '~6 s_brain s_top !s_sides !liner !cut; ~6 s_crease s_top !s_sides !liner; ~5 s_brain like !whitepart !titanium',
};
