import type { LyeCautionId } from '../../../engine/batch/lye/lye-cautions.ts';

const whole: Readonly<Record<LyeCautionId, string>> = {
  'lye-burns': 'Sosa y masa cruda (1 o 2 días) queman gravemente la piel y los ojos.',
  'lye-gear':
    'Gafas estancas, guantes resistentes a químicos, manga larga y zapato cerrado hasta fregarlo todo.',
  'lye-into-water':
    'Echa la sosa despacio en agua fría, nunca el agua en la sosa: se calienta mucho al momento.',
  'lye-air': 'Mézclala al aire libre o con mucha corriente, con la cara lejos del vapor.',
  'lye-children': 'Niños y animales, fuera. Nunca dejes la sosa sola.',
  'lye-by-scale': 'Pesa la sosa en una báscula; nunca con cuchara ni taza.',
  'lye-aluminium':
    'Nada de aluminio, estaño ni zinc: la sosa los ataca, y el aluminio suelta hidrógeno inflamable.',
  'lye-vessel':
    'Usa polipropileno resistente al calor o acero inoxidable, no vidrio. Nunca cierres el recipiente herméticamente.',
  'lye-label': 'Etiqueta la jarra «SOSA, cáustico» antes de llenarla.',
  'lye-first-aid':
    'En los ojos: aclara ya con agua corriente, 30 minutos o más, y pide ayuda médica. En la piel: ropa fuera y aclara mucho rato. Sin vinagre.',
  'tested-recipe':
    'Esto no sustituye una receta probada, las normas de tu zona ni una evaluación profesional del producto. Prueba primero en pequeño.',
};

/** The cautions of lye, whole and in short for whoever has met them. */
export const lyeCautions = {
  lyeCautions: whole,
  lyeBrief:
    'Mucho aire, nada de aluminio, jarra abierta de polipropileno, rotulada, báscula, sin niños ni animales.',
  lyeBriefs: {
    'lye-gear': 'Gafas estancas, guantes, manga larga, zapatos cerrados.',
    'lye-first-aid':
      'En los ojos: enjuaga ya 30 minutos y pide ayuda médica. En la piel: ropa fuera, enjuaga mucho. Sin vinagre.',
  },
};
