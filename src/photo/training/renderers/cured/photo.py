"""What the phone does with the light: exposure, focus, tone, sharpening, noise."""
import numpy as np
from PIL import Image, ImageFilter


def plan(r, poor=None):
	p = dict(expo=r.normal(0, .22), contrast=r.uniform(.85, 1.35), sat=r.uniform(.92, 1.2), sharp=r.choice([0, 50, 90, 150]), noise=r.choice([.004, .008, .016, .028], p=[.35, .35, .2, .1]),
			 vign=r.uniform(0, .32), dof=r.choice([0, .5, 1, 1.8]), soft=r.uniform(0, .7), wb=np.exp(r.normal(0, .045, 3)), shake=0, ang=r.uniform(0, 180), lift=r.uniform(-.01, .03))
	if poor == "blur":
		p.update(soft=r.uniform(9, 18), sharp=0)
	elif poor == "shake":
		p.update(shake=int(r.integers(60, 130)), sharp=0, soft=r.uniform(2, 5))
	elif poor == "dark":
		p.update(expo=r.uniform(-6.5, -5.3), noise=.035, vign=.4, soft=1)
	elif poor == "burnt":
		p.update(expo=r.uniform(3.2, 4.2), soft=2)
	return p


def expose(rgb, mask, p):
	lum = rgb @ np.array([.3, .6, .1], np.float32)
	m = .55 * np.median(lum[mask]) + .45 * lum.mean() if mask.any() else lum.mean()
	hi = np.percentile(lum, 97)
	return min(.36 / m, 1.0 / hi) * 2. ** p["expo"] * p["wb"].astype(np.float32) if p["expo"] > -3 and p["expo"] < 2 else .36 / m * 2. ** p["expo"] * p["wb"].astype(np.float32)


def develop(rgb, k, depth, focus, p, size, R):
	"""Linear picture -> 8-bit picture of the final size, before grain."""
	x = rgb * k.astype(np.float32)
	W = x.shape[1]
	if p["dof"] > 0 and depth is not None:
		c = np.clip(np.abs(1 / np.maximum(depth, 1) - 1 / focus) * focus * 7 * p["dof"] - .35 * p["dof"], 0, 8) * W / 1400
		for rad in (2, 5, 11):
			if (c > rad * .5).mean() < .01:
				break
			b = R.blur(x.copy(), max(1, round(rad * .6)))
			t = np.clip((c - rad * .35) / (rad * .5), 0, 1)[..., None].astype(np.float32)
			x = x * (1 - t) + b * t
	if p["shake"]:
		n = 24; a = np.radians(p["ang"]); L = p["shake"] * W / 1400; acc = np.zeros_like(x)
		for i in range(n):
			s = (i / (n - 1) - .5) * L; acc += np.roll(x, (int(round(s * np.sin(a))), int(round(s * np.cos(a)))), (0, 1))
		x = acc / n
	im = Image.fromarray(R.finish(x, p)).resize(size, Image.LANCZOS)
	if p["soft"] > .25:
		im = im.filter(ImageFilter.GaussianBlur(p["soft"] * size[0] / 1100))
	return im


def grain(im, p, r):
	"""Sensor noise, the phone's smoothing of it, sharpening."""
	a = np.asarray(im, np.float32) / 255
	h, w = a.shape[:2]
	n = r.standard_normal((h, w, 1), np.float32) * np.float32(.8) + r.standard_normal((h, w, 3), np.float32) * np.float32(.45)
	co = r.standard_normal((h // 5 + 1, w // 5 + 1, 3)).astype(np.float32)
	blot = np.stack([np.asarray(Image.fromarray(co[..., i]).resize((w, h), Image.BICUBIC)) for i in range(3)], -1)
	a = a + p["noise"] * (n + .6 * blot) * (1.2 - .7 * a)
	im = Image.fromarray((np.clip(a, 0, 1) * 255 + .5).astype(np.uint8))
	if p["noise"] > .01:
		im = im.filter(ImageFilter.GaussianBlur(.55))
	if p["sharp"]:
		im = im.filter(ImageFilter.UnsharpMask(1.3, int(p["sharp"]), 2))
	return im
