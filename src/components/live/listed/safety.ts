export default import.meta.glob('../../../worksheets/safety/*.tsx');
