/** What a worksheet answers to its own example, worked out apart from our code. */
export interface Example {
  readonly sheet: string;
  readonly result: string;
  /** The answer with its unit, as a reader would type it. */
  readonly expected: string;
  /** Relative. */
  readonly within: number;
  /** How the expected answer was found. */
  readonly by: string;
}

const own: readonly Example[] = [
  {
    sheet: 'pieces',
    result: 'total',
    expected: '105.12 L',
    within: 1e-4,
    by: '12 × 0.45 × 0.30 × 0.06 = 0.0972 m³; × 1.03 × 1.05 = 0.105122',
  },
  {
    sheet: 'pieces',
    result: 'net',
    expected: '97.2 L',
    within: 1e-9,
    by: '12 × 450 × 300 × 60 mm³',
  },
  {
    sheet: 'water-hardness',
    result: 'total',
    expected: '311.4 mg/L CaCO3',
    within: 1e-3,
    by: '95 × 2.4973 + 18 × 4.1180 (ratios of molar masses)',
  },
  {
    sheet: 'foam-density',
    result: 'density',
    expected: '80 g/L',
    within: 1e-9,
    by: '(2.45 − 0.85) kg ÷ 20 L',
  },
  {
    sheet: 'target-density',
    result: 'dry',
    expected: '464.8 kg/m3',
    within: 1e-3,
    by: 'C = (600 − 80) ÷ (1.4 − 80 × 0.00071746) = 387.3 kg; × 1.2',
  },
  {
    sheet: 'proportion',
    result: 'cement',
    expected: '40.72 kg',
    within: 1e-3,
    by: '387.3 kg/m³ × 0.10512 m³',
  },
  {
    sheet: 'proportion',
    result: 'base',
    expected: '1951.3 kg/m3',
    within: 1e-4,
    by: '1.4 ÷ (1/3150 + 0.4/1000)',
  },
  {
    sheet: 'proportion',
    result: 'foamVolume',
    expected: '75.9 L',
    within: 1e-3,
    by: '105.12 L − 40.72 kg × 0.71746 L/kg',
  },
  {
    sheet: 'proportion',
    result: 'solution',
    expected: '7.148 L',
    within: 2e-4,
    by: '75.91 L × 80 g/L × 1.10 = 6.680 kg, over 1.00485 kg/L, + 0.5 L',
  },
  {
    sheet: 'correct',
    result: 'measured',
    expected: '640 kg/m3',
    within: 1e-9,
    by: '(13.65 − 0.85) kg ÷ 20 L',
  },
  {
    sheet: 'correct',
    result: 'addFoam',
    expected: '2.526 L',
    within: 2e-3,
    by: '(21.02 − 600 × 21.02/640) ÷ (600 − 80) m³',
  },
];

const files = import.meta.glob<{ examples: readonly Example[] }>('./*.examples.ts', {
  eager: true,
});

/** Every example: those here, and those each subject keeps in a file of its own. */
export const examples: readonly Example[] = [
  ...own,
  ...Object.values(files).flatMap((file) => file.examples),
];
