import { spaced } from '../../../engine/over-lines.ts';
import type { PlantClass } from '../../../engine/stability/plant-classes.ts';

/** Qué hace la sosa con plantas y alimentos que no están en el catálogo. */
export const plants = {
  fate: {
    anthocyanins: name =>
      `«${name}» no conserva su color: la sosa vuelve sus antocianinas azules, verdes y luego pardas.`,
    betalains: name =>
      `«${name}» no conserva su color: la sosa descompone sus betalaínas a amarillo y luego a marrón.`,
    chlorophyll: name =>
      `«${name}» empieza verde y se apaga: su clorofila pasa a oliva y a pardo en semanas, antes con luz.`,
    carotenoids: name =>
      `«${name}» suele conservar un amarillo o naranja suave: los carotenos aguantan la sosa, la luz los apaga, y de un puré suele quedar beis.`,
    curcumin: name => `«${name}» se pone roja en la sosa, luego queda durazno o tostada, y la luz la apaga.`,
    tannins: name =>
      `«${name}» se pone marrón: sus taninos se oscurecen en la sosa y el marrón suele quedarse.`,
    flavonoids: name => `«${name}» da un amarillo que la sosa sube y que luego se vuelve pardo y se apaga.`,
    quinones: name =>
      `«${name}» cambia: sus quinonas son rojas en ácido y moradas o gris azuladas en la sosa; prueba antes de contar con él.`,
    dyewood: name => `«${name}» cambia en la sosa, de rojo a morado, y luego pardea con el aire y la luz.`,
    indigo: name =>
      `«${name}» en hoja no da azul: solo lo da el pigmento que se saca de ella, y ese aguanta la sosa.`,
    phycocyanin: name => `«${name}» pierde su azul: su proteína no aguanta la sosa ni el calor.`,
    phycoerythrin: name =>
      `«${name}» pierde su rojo: su proteína no aguanta la sosa; queda un tostado o un oliva pardo.`,
    'roasted-meal': name =>
      `«${name}» da un beis claro con puntitos que se queda: tamízalo fino o raspará; con una cucharada por libra de aceites sobra.`,
    'browned-sugar': name => `«${name}» da un marrón que se queda, más oscuro por su azúcar.`,
  } satisfies Readonly<Record<PlantClass, (name: string) => string>>,
  /** De una planta de la que no se conoce dosis. */
  usual:
    'Cuánto: suele ponerse una cucharada de polvo de planta por libra (450 g) de aceites. Empieza con la mitad, mojada en un poco de aceite.',
  notListed: (name: string) =>
    `«${name}» no está en mi lista. Los colores de plantas casi siempre se ponen marrones o se apagan en la sosa: haz una pastilla de prueba.`,
  onlyForSoap: 'Lo que no es planta ni alimento va al jabón solo si se vende para jabón.',
  test: 'Las plantas cambian de cosecha en cosecha: prueba con una cucharada de masa y guarda las pastillas a oscuras.',
  asLiquid: spaced`
    En lugar del agua tiene su propio método: helado o congelado, vino y cerveza hervidos sin gas, el
    azúcar calienta la masa. Nunca tal cual sobre la sosa; /plan lo pesa con liquid:«café».
  `,
  source: (v: { source: string; isRemembered: boolean }) =>
    `De dónde sale: ${v.source}${v.isRemembered ? ' (de memoria)' : ''}.`,
};
