import reconcile from '../../../src/worksheets/records/reconcile.tsx';
import { verdicts } from './verdicts.ts';

verdicts(reconcile, {}, [
  // Three quarters of the foam’s gas were in the mix: 719.9 kg/m³.
  [{ full: '15.23 kg' }, 'good', /That is one batch/],
  [{ full: '15.26 kg' }, 'look', /^Check what went in and .*only 74\.8.*If they are right/],
  // Ten times its ± of half a litre is beyond a slip of the scale.
  [{ full: '11.552 kg' }, 'stop', /5\.0\sL more would explain it\. After/],
  // No bucket known so badly makes it an average to plan with.
  [{ full: '11.5 kg', vessel: '20 L ± 1' }, 'stop', /more gas than the foam brought/],
  [{ full: '11.5 kg', vessel: '20 L ± 2' }, 'look', /too coarse.*Know the volumes of bucket/],
  [{ full: '11.5 kg', vessel: '20 L ± 3' }, 'look', /too coarse/],
  // A quarter of 21.02 kg at 629.5 kg/m³ are 8.35 L.
  [{ placed: '32.4 L ± 8.3' }, 'good', /That is one batch/],
  [{ placed: '32.4 L ± 8.4' }, 'look', /^Look at what came out and its ±.*93\s±\s2\s%.*survived/],
  [{ placed: '324 L ± 162' }, 'look', /^Look at what came out and its ±/],
  // A low survival is no less said where the mass cannot be told, or is missing.
  [
    { placed: '324 L ± 162', leftOver: '0.6 kg', foamVolume: '253 L' },
    'look',
    /^Look at what came out and its ±.*Only 13\.9.*check what went in.*If they are right.*teaches nothing of foam\.$/,
  ],
  [
    { placed: '32.4 L', leftOver: '0.6 kg', foamVolume: '253 L' },
    'look',
    /is missing.*Only 13\.9.*check what went in.*If they are right.*teaches nothing of foam\.$/,
  ],
  [
    { placed: '16 L', leftOver: '0.6 kg', full: '15.26 kg' },
    'look',
    /is missing.*Only 74\.8.*If they are right.*Change one of them\.$/,
  ],
  [
    { placed: '16 L', leftOver: '0.6 kg', full: '15.23 kg' },
    'look',
    /is missing.*75.*survived, if the bucket was right\.$/,
  ],
  [
    { full: '11.548 kg' },
    'stop',
    /^The mix.*slip of the pen.*“foam put in” at least 30\.4\sL, not 25\.3\sL/,
  ],
]);
