import type { Speciation } from '../../../core/water/carbonate/speciation.ts';
import { IonBars, type Segment } from './IonBars.tsx';

/** Cations over anions, equivalents against equivalents: in a whole report the two are as long. */
export function BalanceBars({
  water,
  potassium,
  cation,
  perVolume,
  balanced,
}: {
  readonly water: Speciation;
  /** What the other cations are made of, mol/kg: the report’s, and what was taken to balance the charges. */
  readonly potassium: number;
  readonly cation: number;
  /** kg of water in a m³. */
  readonly perVolume: number;
  /** Whether an ion was left to make up the charges. */
  readonly balanced: boolean;
}) {
  const part = (name: string, equivalents: number, tone: Segment['tone']): Segment => ({
    label: `${name} ${(equivalents * perVolume).toFixed(1)}`,
    amount: equivalents * perVolume,
    tone,
  });
  const rows = [
    {
      name: 'Cations',
      parts: [
        part('Ca', 2 * water.calcium, 'water'),
        part('Mg', 2 * water.magnesium, 'sand'),
        part('Na', water.sodium, 'cement'),
        part('K', potassium, 'foam'),
        ...(cation > 0 ? [part('cation (balance)', cation, 'bar')] : []),
      ],
    },
    {
      name: 'Anions',
      parts: [
        part('alkalinity', Math.max(0, water.alkalinity), 'bar'),
        part('SO₄', 2 * water.sulfate, 'sand'),
        part(balanced && cation === 0 ? 'Cl (balance)' : 'Cl', water.chloride, 'cement'),
        part('NO₃', water.otherAnions, 'foam'),
      ],
    },
  ];
  return (
    <IonBars
      title="The ions of the water in milliequivalents a litre"
      caption="Milliequivalents a litre. Calcium and magnesium as far as the alkalinity reaches are the carbonate hardness."
      rows={rows}
      atLeast={0.1}
    />
  );
}
