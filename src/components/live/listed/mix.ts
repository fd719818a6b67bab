export default import.meta.glob('../../../worksheets/mix/*.tsx');
