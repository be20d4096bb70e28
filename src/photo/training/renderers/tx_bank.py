"""Texture bank: the files of material/ held as tensors, plus fields derived from them."""
import functools
import glob
import os
import numpy as np
import torch
import torch.nn.functional as F
from PIL import Image

DIR = os.path.join(os.path.dirname(os.path.abspath(__file__)), "material")
GROUPS = {
    "cell": "t_gimp_cracked t_gimp_ground1 t_gimp_terra t_gimp_stone33 t_gimp_recessed t_gimp_leather t_ski_cell t_gimp_leopard t_gimp_rock t_sh_blueTiles p_Blinds_1 p_Blinds_2 p_Shell_2",
    "wrinkle": "t_gimp_leather t_gimp_bark t_gimp_crinklepaper t_gimp_ground1 t_gimp_nops t_gimp_pool t_gimp_walnut p_Blinds_2 p_Wood_0 p_Elephants_1",
    "grain": "t_ski_gravel t_sh_pebbles t_gimp_granite1 t_sh_roughcast t_sh_marbleWall t_gimp_java t_gimp_corkboard t_gimp_Moonfoot t_sh_grass p_OneStandsOut_0 p_MilkyWay_1 p_Picture_0B_2 p_analogpattern_1",
    "line": "t_gimp_bark t_gimp_pine t_gimp_wood1 t_gimp_wood2 t_gimp_wood3 t_gimp_wood4 t_gimp_wood5 t_gimp_rain t_ski_brick p_Kleiber_2 p_BytheWater_2 p_Grey_0 p_Picture_1A_1",
    "cloud": "t_gimp_sky t_sh_cloudy t_sh_veryCloudy t_gimp_paper t_sh_greyTile t_sh_lightBlueTile t_gimp_walnut t_gimp_burlwood p_Storm_1 p_Volna_0 p_Kite_0 p_Kite_1 p_Aqua_0 p_Autumn_1 p_TwoWings_2 p_moon_0 p_analogpattern_0",
    "vein": "t_gimp_marble1 t_gimp_marble2 t_gimp_marble3 t_gimp_pink_marble t_gimp_lightning t_gimp_ice t_gimp_granite1 t_gimp_fibers p_Elephants_2",
    "swirl": "t_gimp_choc_swirl p_string_0 p_string_1 p_string_2 p_rhythm_1 p_fluentcolor_0 p_fluentcolor_1 p_Volna_0 p_Volna_1 p_FreshFlower_1 p_FreshFlower_2 p_Garden_1 p_Grey_1 p_Elephants_1 p_Elephants_0 t_gimp_marble2 t_gimp_pool t_gimp_burlwood t_sh_veryCloudy p_umang_0 p_Shell_1 p_Picture_1A_1 p_life_1 p_Dune_1 p_YellowFlower_1 p_Autumn_1 p_MilkyWay_0",
    "surf": "t_gimp_paper t_gimp_slate t_gimp_granite1 t_gimp_corkboard t_sh_beigeTile t_sh_greyTile t_sh_lightBlueTile t_sh_stone2Wall t_sh_stone3Wall t_sh_roughcast t_sh_wallBeigeTile t_sh_stoneWall t_sh_marbleWall t_ski_gravel t_gimp_wood5 p_moon_0 p_Picture_0B_2 p_Volna_2 p_aitzgorri_2 p_Storm_1 p_woodl_0",
    "table": "t_gimp_wood1 t_gimp_wood2 t_gimp_wood3 t_gimp_wood4 t_gimp_wood5 t_gimp_pine t_gimp_burlap t_gimp_burlwood t_gimp_corkboard t_gimp_crinklepaper t_gimp_granite1 t_gimp_ice t_gimp_leather t_gimp_marble1 t_gimp_marble2 t_gimp_marble3 t_gimp_paper t_gimp_parque1 t_gimp_parque2 t_gimp_parque3 t_gimp_pink_marble t_gimp_slate t_gimp_walnut t_sh_beigeTile t_sh_blackAndWhiteTiles t_sh_blueTiles t_sh_darkBlueTile t_sh_greyTile t_sh_lightBlueTile t_sh_marbleWall t_sh_oldWoodenFloor t_sh_pavingStone t_sh_redTiles t_sh_roughcast t_sh_smallWhiteBricks t_sh_stone2Wall t_sh_stone3Wall t_sh_stoneTiles t_sh_stoneWall t_sh_wallBeigeTile t_sh_woodenFloor t_ski_brick t_ski_grass p_BytheWater_2 p_ColdRipple_2 p_Wood_0 p_Wood_1 p_Wood_2 p_Wine_2 p_friends_2 p_Picture_0B_2 p_woodd_1 p_woodl_1 p_woodl_0 p_greentock_2 p_Volna_2 p_free_2 p_aitzgorri_2 p_Blinds_2",
}
TREE = {"flower": "o_flowers", "animal": "o_mammals o_birds o_amphibians", "food": "o_fruit o_vegetables o_spices o_mushrooms o_shellfish",
        "thing": "o_dishes o_household o_tools o_arttools o_seasonal", "herb": "o_plants"}


class Bank:
    def __init__(self, device):
        names = sorted(os.path.basename(f) for f in glob.glob(DIR + "/*.jpg"))
        self.names = [f[:-4] for f in names if f[0] in "tp"]
        onames = [f[:-4] for f in names if f[0] == "o"]
        ims, big, lum, rank, soft = [], [], [], [], []
        self.big_of = {}
        for i, nm in enumerate(self.names):
            im = Image.open(os.path.join(DIR, nm + ".jpg")).convert("RGB")
            if nm[0] == "p":
                self.big_of[i] = len(big)
                big.append(np.asarray(im.resize((384, 288), Image.BICUBIC)))
            ims.append(np.asarray(im.resize((256, 256), Image.BICUBIC)))
        x = torch.from_numpy(np.stack(ims)).permute(0, 3, 1, 2).contiguous()
        self.tex = x.to(device)
        self.big = torch.from_numpy(np.stack(big)).permute(0, 3, 1, 2).contiguous().to(device)
        y = (x.float().to(device) / 255 * torch.tensor([.3, .59, .11], device=device).view(1, 3, 1, 1)).sum(1, keepdim=True)

        def blur(t, k):
            t = F.avg_pool2d(F.pad(t, (k, k, 0, 0), mode="reflect"), (1, 2 * k + 1), 1)
            return F.avg_pool2d(F.pad(t, (0, 0, k, k), mode="reflect"), (2 * k + 1, 1), 1)
        hp = y - blur(blur(y, 6), 6)
        self.hp = (hp / hp.std((2, 3), keepdim=True).clamp_min(.01)).clamp(-3, 3)
        self.rank = self._rank(blur(y, 1) + 1e-4 * torch.arange(256, device=device) / 256)
        self.flatrank = self._rank(blur(hp, 1) + 1e-4 * torch.arange(256, device=device) / 256)
        s = blur(blur(F.avg_pool2d(y, 4), 3), 2)
        self.soft = self._rank(s + 1e-5 * torch.arange(64, device=device) / 64)
        o = np.stack([np.asarray(Image.open(os.path.join(DIR, f + ".jpg")).convert("RGB")) for f in onames])
        o = torch.from_numpy(o).permute(0, 3, 1, 2).float() / 255
        self.obj = torch.cat([o[:, :, :192], o[:, :1, 192:].clamp(.08, .92).sub(.08).div(.84)], 1).to(device)
        idx = {n: i for i, n in enumerate(self.names)}
        self.g = {k: np.array([idx[n] for n in v.split() if n in idx]) for k, v in GROUPS.items()}
        self.g["photo"] = np.array(sorted(self.big_of))
        dull = "Fossa Opal Pastel fluent rhythm string umang Shell Volna rollpaper Painting DarkestHour Storm summer Milky Elephants InfiniteSea wood".split()
        self.clear = np.array([self.big_of[i] for i, f in enumerate(self.names) if f[0] == "p" and (f.endswith("_0") or f[2:8] in ("friend", "Evenin", "Colorf", "Path_1", "life_1"))
                               and not any(d in f for d in dull)])
        self.g["rough"] = np.array([i for i, f in enumerate(self.names) if any(k in f for k in ("rick", "Tiles", "pebbles", "grass", "bark", "burlap", "parque", "wood3", "wood4", "rock", "leaves", "stone33", "gravel", "java", "Floor", "Path_0", "OneStands", "GreenM"))])
        self.g["all"] = np.arange(len(self.names))
        self.og = {k: np.array([i for i, n in enumerate(onames) if any(n.startswith(p) for p in v.split())]) for k, v in TREE.items()}
        self.og["any"] = np.arange(len(onames))

    @staticmethod
    def _rank(t):
        """Histogram-equalised copy, so that a threshold of q keeps the share 1 - q."""
        n = t.shape[0]
        f = t.reshape(n, -1)
        ref = f[:, ::max(1, f.shape[1] // 2000)].contiguous().sort(1)[0]
        k = torch.searchsorted(ref, f.contiguous())
        lo, hi = ref.gather(1, (k - 1).clamp(0)), ref.gather(1, k.clamp(max=ref.shape[1] - 1))
        part = ((f - lo) / (hi - lo).clamp_min(1e-6)).clamp(0, 1)
        return ((k - 1 + part) / (ref.shape[1] - 1)).clamp(0, 1).view_as(t)

    def pick(self, rs, group, n):
        return rs.choice(self.g[group], n)


@functools.lru_cache(maxsize=4)
def bank(device):
    return Bank(torch.device(device))


def fetch(src, idx):
    """Rows of one bank tensor for a numpy index, as float 0..1 where stored as bytes."""
    t = src[torch.as_tensor(idx, device=src.device)]
    return t.float() / 255 if t.dtype == torch.uint8 else t


def samp(img, x, y, pad="reflection"):
    """img [n,C,h,w] read at coordinates x, y [n,1,H,W]: 0..1 spans the picture; outside it is mirrored."""
    g = torch.cat([x, y], 1).permute(0, 2, 3, 1) * 2 - 1
    return F.grid_sample(img, g, mode="bilinear", padding_mode=pad, align_corners=False)


def turn(x, y, ang, scale, ox, oy):
    """Rotate, scale and shift coordinates; every parameter is [n,1,1,1]."""
    c, s = torch.cos(ang), torch.sin(ang)
    return (x * c + y * s) * scale + ox, (y * c - x * s) * scale + oy


class Rnd:
    """Scalar draws from one numpy stream; handed out as [n,1,1,1] tensors."""
    def __init__(self, seed, device):
        self.rs = np.random.RandomState(seed % (2 ** 32))
        self.device = device
        self.gen = torch.Generator(device=device).manual_seed(seed % (2 ** 31))

    def t(self, a):
        a = np.asarray(a, np.float32)
        return torch.from_numpy(np.ascontiguousarray(a)).to(self.device).view(a.shape[0], -1, 1, 1)

    def u(self, lo, hi, n, c=1):
        return self.t(self.rs.uniform(lo, hi, (n, c)))

    def logu(self, lo, hi, n):
        return self.t(np.exp(self.rs.uniform(np.log(lo), np.log(hi), n)))

    def coin(self, p, n):
        return self.t(self.rs.rand(n) < p)

    def table(self, n, c, s=64):
        return torch.rand((n, c, s, s), generator=self.gen, device=self.device)

    def field(self, bk, src, group, x, y, lo, hi):
        """A field read from a random picture of a group at a random turn, scale (pictures per unit) and place."""
        n = x.shape[0]
        a, b = turn(x, y, self.u(0, 6.283, n), self.logu(lo, hi, n), self.u(0, 2, n), self.u(0, 2, n))
        return samp(fetch(src, bk.pick(self.rs, group, n)), a, b)


def smooth(a, b, x):
    t = ((x - a) / (b - a)).clamp(0, 1)
    return t * t * (3 - 2 * t)


def lookup(table, ix, iy):
    """table [n,C,S,S] at integer cells ix, iy [n,1,H,W] (wrapped)."""
    n, C, S, _ = table.shape
    k = (torch.remainder(iy, S) * S + torch.remainder(ix, S)).long().view(n, 1, -1).expand(n, C, -1)
    return table.view(n, C, -1).gather(2, k).view(n, C, *ix.shape[2:])
