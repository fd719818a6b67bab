import storedEnergy from '../../../src/worksheets/safety/stored-energy.tsx';
import washout from '../../../src/worksheets/safety/washout.tsx';
import { verdicts } from './verdicts.ts';

const tank = {
  vessel: '24 L',
  gauge: '8 bar',
  made: 'marked',
  marking: '10 bar',
  relief: 'passes',
  ambient: '101 kPa',
};

verdicts(storedEnergy, tank, [
  // Only what is made and marked for pressure, with a relief valve, may hold any.
  [{}, 'good', /Within its marking, with its relief valve/],
  [{ made: 'plastic', gauge: '0.1 bar' }, 'stop', /^Never\. Plastic/],
  [{ made: 'plastic', gauge: '5 bar', relief: 'none' }, 'stop', /^Never\. Plastic/],
  [{ made: 'plastic', gauge: '0 bar' }, 'good', /nothing would come out/],
  [{ made: 'other', gauge: '0.1 bar' }, 'stop', /not marked for pressure/],
  [{ made: 'unsaid', gauge: '0.1 bar' }, 'stop', /You have not said what it is/],
  [{ marking: '' }, 'stop', /No plate, no air: read/],
  [{ relief: 'none' }, 'stop', /With no relief valve/],
  [{ relief: 'unsaid' }, 'stop', /not said that it has a relief valve/],
  // The pressure on the plate.
  [{ gauge: '10 bar' }, 'good', /Within its marking/],
  [{ gauge: '10.1 bar' }, 'stop', /above the marking/],
  [{ gauge: '10.1 bar', relief: 'none' }, 'stop', /above the marking/],
  // A plate in psi, typed as bar: 30 psi are 2.07 bar, 16 of them 1.1. None is marked with more than 40 bar.
  [{ gauge: '12 bar', marking: '150 bar' }, 'look', /plate again/],
  [{ gauge: '12 bar', marking: '150 bar', relief: 'unsaid' }, 'stop', /^You have not said/],
  [{ gauge: '2.1 bar', marking: '30 bar' }, 'look', /plate again/],
  [{ gauge: '2 bar', marking: '30 bar' }, 'good', /Within its marking/],
  [{ gauge: '0.5 bar', marking: '16 bar' }, 'good', /Within its marking/],
  [{ gauge: '15 bar', marking: '16 bar' }, 'good', /Within its marking/],
  [{ gauge: '2 bar', marking: '40 bar' }, 'good', /Within its marking/],
  [{ gauge: '2 bar', marking: '41 bar' }, 'look', /plate again/],
  // 100 kJ is highly hazardous: at 8 bar 2.5 × 901 kPa × (1 − (101 ÷ 901)^0.286) = 1.0475 kJ a litre.
  [{ vessel: '95 L' }, 'good', /Within its marking/],
  [{ vessel: '96 L' }, 'look', /highly hazardous/],
]);

// What one state asks of stormwater, what fresh-water life bears, and what is labelled corrosive (from memory).
verdicts(washout, {}, [
  [{ pH: '8.5' }, 'look', /is within what one state asks/],
  [{ pH: '8.51' }, 'look', /is above what one state asks/],
  [{ pH: '9' }, 'look', /is above what one state asks/],
  [{ pH: '9.01' }, 'stop', /harms life in water/],
  [{ pH: '11.49' }, 'stop', /harms life in water/],
  [{ pH: '11.5' }, 'stop', /burns skin/],
]);
