import { element } from './element.ts';

/** Colours of the batter before anything is asked: a blue, a teal, a rose, a gold, and cream between them. */
const POTS = ['#f1ead9', '#2b44a8', '#f1ead9', '#1f8a86', '#f1ead9', '#c2557d', '#f1ead9', '#cf9f35'];

/** A drawing of swirled batter. It is for eyes only: whoever hears the page misses nothing. */
export function batterBand(): { readonly element: HTMLCanvasElement; pour(colour: string): void } {
  const canvas = element('canvas', { class: 'batter', 'aria-hidden': 'true', width: 960, height: 96 });
  let pots = POTS;
  swirl(canvas, pots);
  return {
    element: canvas,
    /** Pours the colour that was last asked about among the others. */
    pour(colour) {
      if (pots[1] === colour) return;
      pots = [POTS[0]!, colour, ...POTS.slice(2)];
      swirl(canvas, pots);
    },
  };
}

/** Bands of batter, each drawn out by three slow waves, as a spoon draws them. */
function swirl(canvas: HTMLCanvasElement, pots: readonly string[]): void {
  const pen = canvas.getContext('2d');
  if (!pen) return;
  const { width, height } = canvas;
  const bands = 18;
  const edge = (band: number, x: number) =>
    (band / bands) * height * 1.5 -
    height * 0.25 +
    13 * Math.sin(x / 58 + band * 0.5) +
    8 * Math.sin(x / 23 - band * 0.8) +
    5 * Math.sin(x / 11 + band * 1.7);
  for (let band = 0; band < bands; band++) {
    pen.fillStyle = pots[band % pots.length]!;
    pen.beginPath();
    pen.moveTo(0, height);
    for (let x = 0; x <= width; x += 3) pen.lineTo(x, edge(band, x));
    pen.lineTo(width, height);
    pen.closePath();
    pen.fill();
  }
}
