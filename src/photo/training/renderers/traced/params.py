"""Names of all numbers handed to the C core, in order; also writes the C header."""
FINDINGS = ["coloured-specks", "smears", "white-specks", "translucent-veins", "crackle-network",
            "powdery-film", "dark-centre-ring", "orange-spots", "pinholes", "crack",
            "brown-outside-in", "colour-bled", "drag-lines", "layer-gap", "wrinkled-top",
            "mould-dimples"]
SCENE = """camx camy camz tgtx tgty tgtz roll fov lx ly lz lr lg lb soft ar ag ab table tscale tang tseed
 tar tag tab tbr tbg tbb wall wdist wr wg wb gobo gscale gang gamt ttilt fold""".split()
OBJ = ["type", "mat", "cx", "cy", "cz"] + ["m%d" % i for i in range(9)] + """hx hy hz rad seed off
 c0r c0g c0b c1r c1g c1b c2r c2g c2b c3r c3g c3b pattern pscale pwarp pang lay1 lay2 ncol
 topamp topscale topkind cut gloss transl exf exfd exfs embed ex ez er stamp stsize dew glitter wavy
 botan mottle micaline topmica soapy p0 pn warpamp chip bleedable""".split()
FL = ["amt", "scale", "var", "cov", "r", "g", "b", "seed"]
OBJ += ["f%d_%s" % (k, n) for k in range(16) for n in FL]
PRIM = "ax ay az bx by bz ra rb r g b gloss".split()
SI = {n: i for i, n in enumerate(SCENE)}
OI = {n: i for i, n in enumerate(OBJ)}


def header():
    out = ["#define S_%s %d" % (n, i) for n, i in SI.items()]
    out += ["#define O_%s %d" % (n, i) for n, i in OI.items() if not n[0] == "f" or "_" not in n]
    out += ["#define O_F %d" % OI["f0_amt"], "#define NO %d" % len(OBJ), "#define NPR %d" % len(PRIM)]
    return "\n".join(out) + "\n"
