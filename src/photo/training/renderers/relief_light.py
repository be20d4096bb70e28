"""Light on the maps: normals tilted by the relief, sky dome, lamps, gloss and light spreading inside the soap."""
import torch
import torch.nn.functional as F
from relief_fields import gauss, lerp, smooth


def shift(x, dx, dy):
    """Central difference partner: x moved by whole pixels with edge repeat."""
    p = F.pad(x, (1, 1, 1, 1), mode="replicate")
    h, w = x.shape[2:]
    return p[:, :, 1 + dy:1 + dy + h, 1 + dx:1 + dx + w]


class Frame:
    """Geometry of the visible surface kept for repeated shading."""

    def __init__(self, p, nrm, eye, soap, px, lights):
        self.n, self.soap, self.px = nrm, soap, px
        dpx, dpy = (shift(p, 1, 0) - shift(p, -1, 0)) * .5, (shift(p, 0, 1) - shift(p, 0, -1)) * .5
        self.r1, self.r2 = torch.cross(dpy, nrm, dim=1), torch.cross(nrm, dpx, dim=1)
        self.det = (dpx * self.r1).sum(1, keepdim=True)
        v = eye[:, :, None, None] - p
        self.v = v / v.norm(dim=1, keepdim=True)
        self.__dict__.update(lights)

    def take(self, i):
        """The same frame for some pictures only."""
        f = Frame.__new__(Frame)
        f.__dict__.update({k: t[i] for k, t in self.__dict__.items()})
        return f

    def bumped(self, h):
        """World normal after the relief h (in bar units) tilts it."""
        hx, hy = (shift(h, 1, 0) - shift(h, -1, 0)) * .5, (shift(h, 0, 1) - shift(h, 0, -1)) * .5
        g = torch.sign(self.det) * (hx * self.r1 + hy * self.r2)
        g = g / self.det.abs().clamp(min=1e-9)
        k = g.norm(dim=1, keepdim=True)
        n = self.n - g * (k.clamp(max=2.5) / k.clamp(min=1e-6))
        return n / n.norm(dim=1, keepdim=True)

    def shade(self, alb, h, rough, glint):
        """Linear light reaching the lens."""
        n = self.bumped(h)
        dot = lambda a, b: (a * b).sum(1, keepdim=True)
        hl = h - gauss(h, torch.full_like(self.key_power, 2.2), 5)
        cavity = torch.exp((hl / self.px.clamp(min=1e-4) * .35).clamp(-1.6, .25))
        nl = dot(n, self.key_dir).clamp(0, 1)
        key = self.key_col * self.key_power * nl * self.sh
        nl2 = dot(n, self.fill_dir).clamp(0, 1)
        sky = self.sky_col * (.5 + .5 * dot(n, self.sky_dir)) * self.ao * cavity
        e = key * lerp(cavity, torch.ones_like(cavity), .4) + sky + self.fill_col * nl2 * self.ao * cavity
        m = self.soap * self.glow
        eb = gauss(torch.cat([e * self.soap, self.soap], 1), self.glow_px, 7)
        eb = eb[:, :3] / eb[:, 3:4].clamp(min=.05)
        e = lerp(e, eb, m)
        col = alb * e
        hv = self.key_dir + self.v
        hv = hv / hv.norm(dim=1, keepdim=True).clamp(min=1e-4)
        r = rough.clamp(.12, 1)
        pw = 2 / r ** 4
        f = .04 + .96 * (1 - dot(hv, self.v).clamp(0, 1)) ** 5
        spec = (pw + 2) / 8 * dot(n, hv).clamp(0, 1) ** pw * f * nl
        col = col + self.key_col * self.key_power * self.sh * (spec.clamp(max=3) * (1 + 8 * glint))
        nv = dot(n, self.v).clamp(0, 1)
        refl = 2 * nv * n - self.v
        pane = smooth(.55, .8, dot(refl, self.fill_dir)) * self.pane
        fr = .04 + .5 * (1 - r) * (1 - nv) ** 5
        return col + fr * (1 - r) * self.ao * (self.sky_col * (.4 + .6 * refl[:, 2:3].clamp(0, 1)) + pane * self.sky_col * 4)
