import { spaced } from '../../../engine/over-lines.ts';
import type { limits as en, portionSuperfat as enPortion } from '../../en/batch/limits.ts';
import { numbersIn } from '../../numbers.ts';
import { degrees } from '../../temperatures.ts';

const { one, whole } = numbersIn('es');
const pc = (percent: number) => `${one(percent)} %`;

export const limits: typeof en = {
  warnings: {
    'boils-over': ({ peakC, startC, sweet }) => spaced`
      Puede salirse: el centro puede llegar a ${degrees(peakC)}, donde hierve su agua, y lanzar masa
      caliente y cáustica como un volcán.
      ${startC > 38 ? 'Vierte más frío (start:«38 C»)' : 'Vierte más frío'}${sweet ? ', con menos miel, azúcar o leche' : ''};
      sin abrigar y sin horno, una bandeja bajo el molde; vigílalo de lejos, con gafas y guantes.
    `,
    'batch-large': ({ kilograms, most }) => spaced`
      ${whole(kilograms)} kg de aceites pasan de un lote casero (unos ${most} kg): la estimación de
      calor es de una sola barra y no vale, un derrame es una emergencia, y tanta sosa pide el equipo y las
      normas de un taller. Hazlo en lotes más pequeños.
    `,
  },
  scaled: ({ from, to, fills }) =>
    `Tus ${from} de aceites se ajustaron a ${to} para ${fills ? 'llenar el molde' : 'el tamaño que diste'}.`,
};

export const portionSuperfat: typeof enPortion = v => spaced`
  ${v.portion}: acaba en ${pc(v.percent)} de sobreengrasado, y puede quedarle sosa libre (${pc(v.lowest)})
  si los aceites están en lo bajo de sus valores. Sube el sobreengrasado, o usa aceite aparte para el color
  en vez de sacarlo del lote.
`;
