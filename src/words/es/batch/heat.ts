import type { Lever } from '../../../engine/heat/crackle.ts';
import type * as en from '../../en/batch/heat.ts';
import { numbersIn } from '../../numbers.ts';
import { degrees, degreesBetween } from '../../temperatures.ts';

const { percent: pc, tenths, whole } = numbersIn('es');

const levers: Readonly<Record<Lever['id'], (to: number) => string>> = {
  'start-cooler': to => `vierte a ${degrees(to)}`,
  'less-water': to => `usa sosa al ${whole(to)} % (menos agua)`,
  'no-insulation': () => 'no lo abrigues',
  fridge: () => 'mételo en la nevera',
};

export const heat: typeof en.heat = {
  processes: {
    ambient: 'sobre la mesa',
    insulated: 'abrigado',
    oven: 'en el horno templado y apagado',
    fridge: 'en la nevera',
  },
  materials: { silicone: 'silicona', wood: 'madera', plastic: 'plástico', cardboard: 'cartón' },
  peaks: v =>
    `Centro: unos ${degrees(v.coreC)} a las ${tenths(v.hours)} h (probable de ${degreesBetween(v.lowC, v.highC, 'a')}); borde: ${degrees(v.edgeC)}.`,
  gel: v => `Gel: ninguno ${pc(v.none)}, parcial con anillo ${pc(v.partial)}, completo ${pc(v.full)}.`,
  verdicts: {
    none: 'Lo más probable: sin gel.',
    partial: 'Lo más probable: gel parcial; cuenta con un anillo.',
    full: 'Lo más probable: gel completo.',
    uncertain: 'No puedo decir si hará gel. Mide el centro de una barra con una sonda y podré afinar.',
  },
  ring: v => `Si sale un anillo, estará a unos ${whole(v.millimetres)} mm de los lados.`,
  overheat: v =>
    `${pc(v.chance)} de probabilidad de que el centro pase de ${degrees(85)}, donde se agrieta o se hincha: vigílalo y enfríalo si sube.`,
  crackle: {
    none: 'Sin pigmento blanco no hay craquelado blanco.',
    low: 'Craquelado del blanco: riesgo bajo.',
    some: 'Craquelado del blanco: algo de riesgo.',
    high: 'Craquelado del blanco: riesgo alto.',
  },
  lever: v => `Para bajarlo: ${levers[v.id](v.to)} (centro ${degrees(v.peakC)}, gel ${pc(v.gelChance)}).`,
  lessWhite: 'También lo bajan menos blanco, no forzar el gel y un aroma que no caliente.',
  estimate:
    'Todas las cifras de calor son estimaciones: el calor de saponificación y la temperatura de gel solo se conocen dentro de un margen.',
};

export const heatRefusals: typeof en.heatRefusals = {
  'temperature-without-unit': ({ text }) => `«${text}»: ¿Celsius o Fahrenheit? Escribe «38 C» o «100 F».`,
  'temperature-out-of-range': ({ text }) => `«${text}» está fuera de -5 a 120 °C (23 a 248 °F).`,
};
