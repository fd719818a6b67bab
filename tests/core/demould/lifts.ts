import fc from 'fast-check';
import type {
  Coupling,
  Duration,
  Form,
  Lift,
} from '../../../src/core/demould/lifting-equation/lift.ts';
import { between } from '../arbitrary.ts';

export const forms = fc.constantFrom<Form>('metric', 'us');

const durations = fc.constantFrom<Duration>('short', 'moderate', 'long');

export const lifts: fc.Arbitrary<Lift> = fc.record({
  horizontal: between(0.1, 0.7),
  vertical: between(0, 1.8),
  travel: between(0, 1.8),
  asymmetry: between(0, Math.PI),
  perMinute: between(0, 16),
  duration: durations,
  coupling: fc.constantFrom<Coupling>('good', 'fair', 'poor'),
});

export const slabLift: Lift = {
  horizontal: 0.4,
  vertical: 0.1,
  travel: 0.7,
  asymmetry: Math.PI / 4,
  perMinute: 1,
  duration: 'short',
  coupling: 'poor',
};
