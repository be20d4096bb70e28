"""Cuts the downscaled crops in material/ out of unpacked packages. Usage: build_material.py ROOT TEXDIR"""
import glob, os, re, struct, sys
import numpy as np
from PIL import Image
Image.MAX_IMAGE_PIXELS = None
ROOT, TEX = sys.argv[1], sys.argv[2]
OUT = os.path.join(os.path.dirname(os.path.abspath(__file__)), "material")
rows = []


def save(im, name, pkg, src, lic, q=84):
    im.convert("RGB").save(os.path.join(OUT, name), quality=q, optimize=True)
    rows.append((name, pkg, src, lic))


def square(im, side=384):
    w, h = im.size
    m = min(w, h)
    im = im.crop(((w - m) // 2, (h - m) // 2, (w - m) // 2 + m, (h - m) // 2 + m))
    return im.resize((side, side), Image.LANCZOS) if m > side else im


def tile(im, side=256):
    w, h = im.size
    if min(w, h) >= side:
        return square(im)
    out = Image.new("RGB", (max(side, w), max(side, h)))
    for y in range(0, out.size[1], h):
        for x in range(0, out.size[0], w):
            out.paste(im, (x, y))
    return out


for f in sorted(glob.glob(TEX + "/*.png")):
    save(square(Image.open(f).convert("RGB")), "t_ski_" + os.path.basename(f)[:-4] + ".jpg", "scikit-image sample data", os.path.basename(f), "CC0-1.0", 78)
keep = ("amethyst bark burlap burlwood choc_swirl corkboard cracked crinklepaper fibers granite1 ground1 ice java leather "
        "leaves leopard lightning marble1 marble2 marble3 nops paper parque1 parque2 parque3 pine pink_marble pool rain "
        "recessed rock sky slate stone33 terra walnut wood1 wood2 wood3 wood4 wood5 Craters Moonfoot").split()
for f in sorted(glob.glob(ROOT + "/gimp-data/usr/share/gimp/2.0/patterns/**/*.pat", recursive=True)):
    s = os.path.basename(f)[:-4]
    if s not in keep:
        continue
    b = open(f, "rb").read()
    hs, v, w, h, bpp = struct.unpack(">5I", b[:20])
    a = np.frombuffer(b[hs:hs + w * h * bpp], np.uint8).reshape(h, w, bpp).squeeze()
    save(tile(Image.fromarray(a).convert("RGB")), "t_gimp_" + s + ".jpg", "gimp-data 2.10.34", s + ".pat", "GPL-3.0-or-later")
skip = {"blueSky", "boxTree"}
for f in sorted(glob.glob(ROOT + "/sh/com/eteks/sweethome3d/io/resources/textures/*.jpg")):
    s = os.path.basename(f)[:-4]
    if s not in skip:
        save(tile(Image.open(f).convert("RGB")), "t_sh_" + s + ".jpg", "sweethome3d 7.0.2", "io/resources/textures/" + s + ".jpg", "GPL-2.0-or-later")

P = ROOT + "/plasma-workspace-wallpapers/usr/share/wallpapers/"
photos = []
for d in "Autumn BytheWater ColdRipple ColorfulCups DarkestHour EveningGlow FallenLeaf Grey Kite OneStandsOut Opal PastelHills Path Shell Volna summer_1am MilkyWay".split():
    fs = glob.glob(P + d + "/contents/images/*.*")
    photos.append((max(fs, key=lambda f: Image.open(f).size[0] * Image.open(f).size[1]), d, "plasma-workspace-wallpapers 5.27.5", "GPL-2.0-or-later"))
L16 = {"Picture_1A": "CC-BY-4.0", "Wine": "CC-BY-4.0", "greentock": "CC-BY-SA-4.0", "seeding": "CC0-1.0", "aitzgorri": "CC-BY-4.0",
       "Dragonfly": "CC-BY-SA-4.0", "friends": "CC-BY-4.0", "sunset": "CC-BY-4.0", "free_": "CC-BY-SA-4.0", "picos": "CC-BY-4.0",
       "umang": "CC-BY-4.0", "Picture_0B": "CC-BY-4.0", "life": "CC-BY-4.0", "analog": "CC-BY-SA-4.0", "Bridge": "CC-BY-SA-4.0",
       "Fossa": "CC-BY-SA-3.0", "Infinite": "CC-BY-SA-3.0", "Kleiber": "CC-BY-SA-3.0", "Painting": "CC-BY-SA-3.0"}
for f in sorted(glob.glob(ROOT + "/lomiri*/**/*.jpg", recursive=True)):
    s = os.path.basename(f)
    for k, lic in L16.items():
        if s.startswith(k):
            photos.append((f, s.split("_by")[0], "lomiri-wallpapers 20.04.0 (" + s[:-4] + ")", lic))
for s in "Garden Dune Wood Aqua TwoWings Storm GreenMeadow RainDrops Blinds FreshFlower LadyBird YellowFlower Elephants".split():
    photos += [(f, s, "mate-backgrounds 1.26.0", "GPL-2.0-or-later") for f in glob.glob(ROOT + "/mate-backgrounds/**/" + s + ".jpg", recursive=True)]
for s in ("string.jpg", "fluent-color.png", "rhythm.jpg", "rollpaper.png"):
    photos += [(f, s[:-4], "ukui-wallpapers 20.04.3", "CC-BY-SA-3.0") for f in glob.glob(ROOT + "/ukui-wallpapers/**/" + s, recursive=True)]
for s in ("wood-l.webp", "wood-d.webp"):
    photos += [(f, s[:-5], "gnome-backgrounds 43.1 (Jakub Steiner)", "CC-BY-SA-3.0") for f in glob.glob(ROOT + "/gnome-backgrounds/**/" + s, recursive=True)]
for s in ("coffee.png", "chelsea.png", "coins.png", "moon.png"):
    photos += [(f, s[:-4], "python3-skimage 0.19.3 (sample data)", "CC0-1.0") for f in glob.glob(ROOT + "/python3-skimage/**/" + s, recursive=True)]
for f, s, pkg, lic in photos:
    im = Image.open(f).convert("RGB")
    w, h = im.size
    crops = [(0, 0, w, h)]
    if min(w, h) > 900:
        crops.append((int(w * .3), int(h * .35), int(w * .3) + w // 3, int(h * .35) + h // 3))
        crops.append((int(w * .05), int(h * .62), int(w * .05) + w // 3, int(h * .62) + h // 3))
    for i, c in enumerate(crops):
        im2 = im.crop(c)
        if im2.size[1] > im2.size[0]:
            im2 = im2.crop((0, im2.size[1] // 5, im2.size[0], im2.size[1] // 5 + int(im2.size[0] * .75)))
        im2 = im2.resize((512, 384), Image.LANCZOS)
        save(im2, "p_%s_%d.jpg" % (re.sub(r"\W", "", s), i), pkg, os.path.basename(f), lic, 80)

sel = r"food/(fruit|vegetables|nuts|spices|dessert)|plants/(flowers|mushrooms|lavender|thyme)|household/(dishes|arttools|kettle|rubberduck|Lightbulb|key|tools)|animals/(shellfish|mammals|amph|birds)|seasonal/candle|clothespin_new|tennis_ball|money/(eur|euro|usd|us)"
drop = re.compile(r"cartoon|hedgehog|whale|orca|echidna|toolbox|measuring|expo|marker|cent_|_pound|symbol|_c\.png|dollar|euro_1|pizza|camera|highlighter|glue|cement")
n = {}
for f in sorted(glob.glob(ROOT + "/tuxpaint-stamps-default/**/*.png", recursive=True)):
    if not re.search(sel, f) or drop.search(f):
        continue
    g = re.search(sel, f).group(0)
    n[g] = n.get(g, 0) + 1
    if n[g] > 30:
        continue
    im = Image.open(f).convert("RGBA")
    a = im.getchannel("A")
    if not a.getbbox():
        continue
    im = im.crop(a.getbbox())
    if max(im.size) < 100:
        continue
    im.thumbnail((176, 176), Image.LANCZOS)
    S = Image.new("RGB", (192, 384), (0, 0, 0))
    o = ((192 - im.size[0]) // 2, (192 - im.size[1]) // 2)
    fill = np.array(im)
    al = fill[..., 3:] / 255.
    mean = (fill[..., :3] * al).sum((0, 1)) / max(al.sum(), 1)
    rgb = Image.fromarray((fill[..., :3] * (al > .02) + mean * (al <= .02)).astype(np.uint8))
    S.paste(tuple(int(x) for x in mean), (0, 0, 192, 192))
    S.paste(rgb, o)
    S.paste(im.getchannel("A").convert("RGB"), (o[0], o[1] + 192))
    d = f.split("stamps/")[1].split("/")
    save(S, "o_%s_%s.jpg" % (d[1] if len(d) > 2 else d[0], d[-1][:-4]), "tuxpaint-stamps-default 2022.06.04", "/".join(d), "GPL-2.0", 82)
with open(os.path.join(os.path.dirname(OUT), "SOURCES.md"), "w") as s:
    s.write("# Sources of material/\nAll crops are downscaled (at most 512 px) and re-encoded as JPEG. t_ = texture, p_ = photograph or wallpaper crop, o_ = cut-out (picture above, mask below).\nLicence as given in the Debian package's copyright file.\n\n| file | package | source file | licence |\n| --- | --- | --- | --- |\n")
    for r in rows:
        s.write("| " + " | ".join(r) + " |\n")
