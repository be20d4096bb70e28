import { type ClassAsk, planClass } from '../engine/batch/planning/class-kits.ts';
import { planBatch } from '../engine/batch/planning/plan.ts';
import type { PlanRequest } from '../engine/batch/request.ts';
import { drawPalette } from '../engine/challenges/reach.ts';
import { calibrateJar } from '../engine/colour/calibration/calibrate-jar.ts';
import { learnJars } from '../engine/colour/calibration/joint/learn-jars.ts';
import { planBars } from '../engine/colour/calibration/test-bars/plan-bars.ts';
import { matchJars } from '../engine/colour/matching/match-jars.ts';
import { predictBars } from '../engine/colour/mixing/predict-bars.ts';
import { previewMix } from '../engine/colour/mixing/preview.ts';
import { makeablePalettes } from '../engine/palettes/makeable.ts';
import { whatToBuy } from '../engine/palettes/what-to-buy.ts';
import { evenGradient } from '../engine/pouring/gradient.ts';
import { photoColours } from '../photo/colours.ts';
import type { Box } from '../photo/reading.ts';
import { drawBatchPairs } from '../pictures/batch-pairs.ts';
import { drawBatchCard } from '../pictures/card/phone-card.ts';
import type { printBatchCard } from '../pictures/card/print.ts';
import { drawTimeline } from '../pictures/card/timeline.ts';
import { drawChallengeCard } from '../pictures/challenge-card.ts';
import { drawClassHandout } from '../pictures/class-handout.ts';
import { drawFitPlot } from '../pictures/fit-plot.ts';
import { drawLabelSheet } from '../pictures/label-sheet.ts';
import { drawMatchCard } from '../pictures/match-card.ts';
import { drawPaletteStrips } from '../pictures/palette-strips.ts';
import { drawPhotoPalette } from '../pictures/photo-palette.ts';
import { drawSwatchCard } from '../pictures/swatch-card.ts';
import { barePhoto, readPhoto } from './bare-photo.ts';
import { keepEntryPhoto } from './challenge-photo.ts';
import { challengeBars, challengeMeasured, challengeResults } from './challenge-pictures.ts';
import { markPhoto } from './mark-photo.ts';

/**
 * The heavy work that leaves the main thread, by name. Each job is a pure function of plain data: what it is
 * given and what it returns is copied between threads, so small numbers in and small pictures out.
 */
export const jobs = {
  readPhoto,
  photoColours: ({ bytes, region }: { bytes: Uint8Array; region?: Box }) => photoColours(bytes, region),
  markPhoto,
  barePhoto,
  keepEntryPhoto,
  challengeCard: drawChallengeCard,
  challengeMeasured,
  challengeBars,
  challengeResults,
  drawPalette,
  matchJars,
  matchCard: drawMatchCard,
  photoPalette: drawPhotoPalette,
  makeablePalettes,
  evenGradient,
  whatToBuy,
  paletteStrips: drawPaletteStrips,
  previewMix,
  predictBars,
  swatchCard: drawSwatchCard,
  calibrateJar,
  learnJars,
  fitPlot: drawFitPlot,
  planBars,
  labelSheet: drawLabelSheet,
  planBatch,
  planClass: ({ request, ask }: { request: PlanRequest; ask: ClassAsk }) => planClass(request, ask),
  batchCard: drawBatchCard,
  // Loaded with the first page to print: few plans are, and its fonts and streams are large.
  printBatchCard: async (asked: Parameters<typeof printBatchCard>[0]) =>
    (await import('../pictures/card/print.ts')).printBatchCard(asked),
  timeline: drawTimeline,
  batchPairs: drawBatchPairs,
  classHandout: drawClassHandout,
};

export type Jobs = typeof jobs;
export type JobName = keyof Jobs;
