export default import.meta.glob('../../../worksheets/water/*.tsx');
