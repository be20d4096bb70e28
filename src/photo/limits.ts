/** Most bytes and pixels a photo may have, the longer side it is read at, and the least it may have (pixels). */
export const PHOTO_LIMITS = {
  bytes: 25 * 1024 * 1024,
  pixels: 50e6,
  readAt: 1024,
  least: 160,
} as const;
