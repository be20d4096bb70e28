/**
 * Most bytes and pixels a photo may have, the longer side it is read at, the least side it may have (pixels), and how
 * many times longer than wide it may be: a thinner one would be a few pixels wide at reading size.
 */
export const PHOTO_LIMITS = {
  bytes: 25 * 1024 * 1024,
  pixels: 50e6,
  readAt: 1024,
  least: 160,
  slender: 6,
} as const;
