export default import.meta.glob('../../../worksheets/curing/*.tsx');
