export default import.meta.glob('../../../worksheets/finished/*.tsx');
