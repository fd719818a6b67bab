import { fromUnit, toUnit } from '../../../core/quantity/convert.ts';
import { KINDS } from '../../../core/quantity/kinds.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { IonBars, type IonRow } from './IonBars.tsx';

/** The survey's classes: where each begins, mg/L as calcium carbonate. */
const CLASSES = [
  [0, 'soft'],
  [60, 'mod.'],
  [120, 'hard'],
  [180, 'very hard'],
] as const;

interface Props {
  /** All in mol/m³. */
  readonly total: number;
  /** Absent when the reader has no other water. */
  readonly soft: number | undefined;
  readonly ions: { readonly calcium: number; readonly magnesium: number } | undefined;
  readonly parts: { readonly carbonate: number; readonly nonCarbonate: number } | undefined;
  readonly say: Say;
}

/** The reader's water by its ions and by what boiling removes, above the soft one, on the survey's classes. */
export function HardnessBar({ total, soft, ions, parts, say }: Props) {
  const us = say.system === 'us';
  const inUnit = (si: number) => toUnit(si, 'hardness', KINDS.hardness.shown[say.system]);
  const onScale = (milligrams: number) => inUnit(fromUnit(milligrams, 'hardness', 'mg/L CaCO3'));
  // Grains to the gallon are few: a tenth of one counts.
  const round = (si: number) => inUnit(si).toFixed(us ? 1 : 0);
  const unit = `${us ? 'grains per US gallon' : 'mg/L'} as`;
  const whole: IonRow['parts'] = ions
    ? [
        { label: `Ca ${round(ions.calcium)}`, amount: inUnit(ions.calcium), tone: 'water' },
        { label: `Mg ${round(ions.magnesium)}`, amount: inUnit(ions.magnesium), tone: 'sand' },
      ]
    : [{ label: 'Ca and Mg together', amount: inUnit(total), tone: 'water' }];
  const rows: IonRow[] = [{ name: `Yours: ${round(total)}`, parts: whole }];
  if (parts)
    rows.push({
      name: 'The same, by what boiling does',
      parts: [
        {
          label: `carbonate ${round(parts.carbonate)}`,
          amount: inUnit(parts.carbonate),
          tone: 'cement',
        },
        {
          label: `the rest ${round(parts.nonCarbonate)}`,
          amount: inUnit(parts.nonCarbonate),
          tone: 'bar',
        },
      ],
    });
  if (soft !== undefined)
    rows.push({
      name: 'The soft water',
      parts: [{ label: round(soft), amount: inUnit(soft), tone: 'water' }],
    });
  return (
    <IonBars
      title={`Hardness by its ions, on the survey's classes, ${unit} calcium carbonate`}
      caption={`In ${unit} CaCO₃, on the classes of the United States Geological Survey.${parts ? ' Boiling takes most of the carbonate part and leaves the rest.' : ''}`}
      rows={rows}
      atLeast={onScale(400)}
      classes={CLASSES.map(([from, name]) => [onScale(from), name] as const)}
    />
  );
}
