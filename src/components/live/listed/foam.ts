export default import.meta.glob('../../../worksheets/foam/*.tsx');
