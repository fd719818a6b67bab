export default import.meta.glob('../../../worksheets/records/*.tsx');
