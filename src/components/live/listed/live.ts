export default import.meta.glob('../../../worksheets/live/*.tsx');
