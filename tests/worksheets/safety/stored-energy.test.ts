import { expect, test } from 'vitest';
import storedEnergy from '../../../src/worksheets/safety/stored-energy.tsx';
import { answered, say } from '../water/water-answered.ts';

test('what the energy would do to a slab of the demo and to a lid', () => {
  const { result, values } = answered(storedEnergy);
  const [slab, lid] = storedEnergy.tables![0]!.rows(result as never, values as never, say);
  // 600 kg/m³ × 0.45 × 0.3 × 0.06 m³; 25.14 kJ ÷ (4.86 kg × 9.807 m/s²), and √(2 × 25.14 kJ ÷ 1 kg).
  expect(slab!.map((cell) => `${cell}`.replaceAll('\u00a0', ' '))).toEqual([
    expect.stringContaining('a slab of 4.86 kg'),
    '530 m',
  ]);
  expect(lid!.map((cell) => `${cell}`.replaceAll('\u00a0', ' '))).toEqual([
    expect.stringContaining('a lid of 1.0 kg'),
    '220 m/s',
  ]);
});
