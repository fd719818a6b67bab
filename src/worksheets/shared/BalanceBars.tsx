import type { Speciation } from '../../core/water/carbonate/speciation.ts';
import { IonBars, type Segment } from './IonBars.tsx';

/** Cations over anions, equivalents against equivalents: in a whole report the two are as long. */
export function BalanceBars({
  water,
  perVolume,
  balanced,
}: {
  readonly water: Speciation;
  /** kg of water in a m³. */
  readonly perVolume: number;
  /** Whether chloride was left to make up the charges. */
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
        part('K', water.otherCations, 'foam'),
      ],
    },
    {
      name: 'Anions',
      parts: [
        part('alkalinity', Math.max(0, water.alkalinity), 'bar'),
        part('SO₄', 2 * water.sulfate, 'sand'),
        part(balanced ? 'Cl (balance)' : 'Cl', water.chloride, 'cement'),
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
