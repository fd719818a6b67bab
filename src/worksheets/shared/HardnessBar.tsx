import { toUnit } from '../../core/quantity/convert.ts';
import { IonBars, type IonRow } from './IonBars.tsx';

const CLASSES = [
  [0, 'soft'],
  [60, 'mod.'],
  [120, 'hard'],
  [180, 'very hard'],
] as const;

const asCarbonate = (si: number) => toUnit(si, 'hardness', 'mg/L CaCO3');
const round = (si: number) => asCarbonate(si).toFixed(0);

/** All in mol/m³. */
interface Props {
  readonly total: number;
  /** Absent when the reader has no other water. */
  readonly soft: number | undefined;
  readonly ions: { readonly calcium: number; readonly magnesium: number } | undefined;
  readonly parts: { readonly carbonate: number; readonly nonCarbonate: number } | undefined;
}

/** The reader's water by its ions and by what boiling removes, above the soft one, on the survey's classes. */
export function HardnessBar({ total, soft, ions, parts }: Props) {
  const whole: IonRow['parts'] = ions
    ? [
        { label: `Ca ${round(ions.calcium)}`, amount: asCarbonate(ions.calcium), tone: 'water' },
        { label: `Mg ${round(ions.magnesium)}`, amount: asCarbonate(ions.magnesium), tone: 'sand' },
      ]
    : [{ label: 'Ca and Mg together', amount: asCarbonate(total), tone: 'water' }];
  const rows: IonRow[] = [{ name: `Yours: ${round(total)}`, parts: whole }];
  if (parts)
    rows.push({
      name: 'The same, by what boiling does',
      parts: [
        {
          label: `carbonate ${round(parts.carbonate)}`,
          amount: asCarbonate(parts.carbonate),
          tone: 'cement',
        },
        {
          label: `the rest ${round(parts.nonCarbonate)}`,
          amount: asCarbonate(parts.nonCarbonate),
          tone: 'bar',
        },
      ],
    });
  if (soft !== undefined)
    rows.push({
      name: 'The soft water',
      parts: [{ label: round(soft), amount: asCarbonate(soft), tone: 'water' }],
    });
  return (
    <IonBars
      title="Hardness by its ions, on the survey's classes, mg/L as calcium carbonate"
      caption={`mg/L as CaCO₃, on the classes of the United States Geological Survey.${parts ? ' Boiling takes most of the carbonate part and leaves the rest.' : ''}`}
      rows={rows}
      atLeast={400}
      classes={CLASSES}
    />
  );
}
