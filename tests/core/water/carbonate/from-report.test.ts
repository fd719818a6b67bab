import { expect, test } from 'vitest';
import { solutesFromReport } from '../../../../src/core/water/carbonate/from-report.ts';
import { expectLimits } from '../../refuses.ts';

const report = { temperature: 288.15, calcium: 0.095, magnesium: 0.018 };

test('each ion of a report is converted to mol/kg of water as worked out by hand', () => {
  // 1000 kg of water in a cubic metre of it; molar masses 40.078, 24.305, 22.990, 39.098, 35.45, 96.06, 62.00.
  const found = solutesFromReport(
    {
      ...report,
      sodium: 0.02299,
      potassium: 0.0039098,
      chloride: 0.03545,
      sulfate: 0.04803,
      nitrate: 0.0062,
    },
    1000,
  );
  const near = (mmol: number) => expect.closeTo(mmol / 1000, 6);
  expect(found).toEqual({
    temperature: 288.15,
    calcium: near(2.3704),
    magnesium: near(0.7406),
    sodium: near(1),
    sulfate: near(0.5),
    chloride: near(1),
    otherCations: near(0.1),
    otherAnions: near(0.1),
  });
});

test('without chloride in a report it stays undefined, other missing ions are 0', () => {
  const found = solutesFromReport(report, 1000);
  expect(found.chloride).toBeUndefined();
  expect([found.sodium, found.sulfate, found.otherCations, found.otherAnions]).toEqual([
    0, 0, 0, 0,
  ]);
  expect(solutesFromReport({ ...report, chloride: 0 }, 1000).chloride).toBe(0);
});

test('refuses a negative ion', () => {
  const given = { calcium: 0.1, magnesium: 0.02, chloride: 0.03, nitrate: 0.01 };
  const none = { takes: [0], refuses: [-0.001] };
  expectLimits((ions) => solutesFromReport({ ...report, ...ions }, 1000), given, {
    calcium: none,
    magnesium: none,
    chloride: none,
    nitrate: none,
  });
});
