import reconcile from '../../../src/worksheets/records/reconcile.tsx';
import { verdicts } from './verdicts.ts';

verdicts(reconcile, {}, [
  // Three quarters of the foam’s gas were in the mix: 719.9 kg/m³.
  [{ full: '15.23 kg' }, 'good', /That is one batch/],
  [{ full: '15.26 kg' }, 'look', /only 74\.8/],
  // Ten times its ± of half a litre is beyond a slip of the scale.
  [{ full: '11.3 kg' }, 'stop', /5\.0\sL more would explain it\. After/],
  [{ full: '11.2 kg' }, 'stop', /5\.3\sL more would explain it\. That is far beyond/],
]);
