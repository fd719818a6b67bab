import type { Entry } from '../../../bench/entries.ts';
import type { ReadingName } from '../../../bench/records/readings.ts';
import { type BatchRecord, blankRecord } from '../../../bench/records/record.ts';
import { strengthBand } from '../../../core/finished/strength-band.ts';
import { mixerLoads } from '../../../core/mix/loads.ts';
import { demo } from '../../demo.ts';
import { demoBatch, demoSlabMix } from '../../demo-worked.ts';

/** The invented values of each batch; core calculates the rest. */
const INVENTED = [
  {
    date: '2025-04-05',
    survived: 0.89,
    foam: 78,
    drift: -0.07,
    sunk: 2.5,
    strip: 62,
    warm: 12,
    strong: 0.95,
  },
  {
    date: '2025-04-19',
    survived: 0.92,
    foam: 81,
    drift: -0.05,
    sunk: 2,
    strip: 54,
    warm: 14,
    strong: 0.85,
  },
  {
    date: '2025-05-03',
    survived: 0.93,
    foam: 80,
    drift: -0.06,
    sunk: 2,
    strip: 50,
    warm: 16,
    strong: 0.8,
  },
  {
    date: '2025-05-17',
    survived: 0.9,
    foam: 76,
    drift: -0.09,
    sunk: 3,
    strip: 48,
    warm: 17,
    strong: 0.9,
  },
  {
    date: '2025-06-07',
    survived: 0.94,
    foam: 82,
    drift: -0.04,
    sunk: 1.5,
    strip: 44,
    warm: 20,
    strong: 0.75,
  },
  {
    date: '2025-06-21',
    survived: 0.93,
    foam: 80,
    drift: -0.05,
    sunk: 2,
    strip: 42,
    warm: 21,
    strong: 0.8,
  },
] as const;

const step = (x: number, size: number) =>
  (Math.round(x / size) * size).toFixed(Math.max(0, -Math.floor(Math.log10(size))));

/** Six invented batches of the demo scenario; core calculates what their scale would have read. */
export function demoBatches(): readonly BatchRecord[] {
  return INVENTED.map((made, i) => {
    const { each } = mixerLoads({
      batch: demoBatch,
      largestLoad: demo.mixer,
      foamBucket: demo.bucket.volume,
    });
    const foamMass = each.foamVolume * made.foam;
    const gas = each.foamVolume * (1 - made.foam / 1000);
    const solid = demoBatch.baseVolume * (each.cement / demoBatch.cement) + foamMass / 1000;
    const massIn = each.cement + each.water + foamMass;
    const yielded = solid + made.survived * gas;
    const wet = massIn / yielded;
    const placed = 4 * demoSlabMix.volume;
    const dry = (1.2 * each.cement) / yielded;
    const band = strengthBand({ wetDensity: wet, ovenDryDensity: dry });
    const middle = band.known && band.high !== null ? Math.sqrt(band.low * band.high) : undefined;
    const entry = (t: string, u: string): Entry => ({ t, u, s: 'metric' });
    const readings: Partial<Record<ReadingName, Entry>> = {
      planned: entry(String(demo.wetDensity), 'kg/m3'),
      cement: entry(step(each.cement, demo.scale), 'kg'),
      water: entry(step(each.water, demo.scale), 'kg'),
      foamDensity: entry(String(made.foam), 'kg/m3'),
      foamVolume: entry(step(each.foamVolume * 1000, 0.1), 'L'),
      foamLater: entry(step(made.foam * (1 + made.drift), 0.5), 'kg/m3'),
      foamLaterAfter: entry('10', 'min'),
      tare: entry(String(demo.bucket.tare), 'kg'),
      full: entry(step(demo.bucket.tare + wet * demo.bucket.volume, demo.scale), 'kg'),
      vessel: entry(String(demo.bucket.volume * 1000), 'L'),
      placed: entry(step(placed * 1000, 0.1), 'L'),
      leftOver: entry(step(massIn - placed * wet - 0.05, demo.scale), 'kg'),
      depth: entry('60', 'mm'),
      sunk: entry(String(made.sunk), 'mm'),
      cureTemperature: entry(String(made.warm), 'degC'),
      stripAge: entry(String(made.strip), 'h'),
      stripped: { t: i === 0 ? 'marked' : 'clean' },
      dryMass: entry(step(dry * demoSlabMix.volume, demo.scale), 'kg'),
      dryVolume: entry(step(demoSlabMix.volume * 1000, 0.01), 'L'),
      dried: { t: 'oven' },
      ...(middle && {
        crush: entry(((made.strong * middle) / 1e6).toPrecision(2), 'MPa'),
        crushAge: entry('28', 'd'),
      }),
    };
    return blankRecord({
      id: `invented-${i + 1}`,
      name: `Invented: slabs, load ${i + 1}`,
      date: made.date,
      changed: `${made.date}T16:00:00.000Z`,
      revision: 1,
      invented: true,
      notes: 'Made up to show how records work. Nobody cast or weighed this batch.',
      readings,
    });
  });
}
