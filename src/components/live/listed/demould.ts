export default import.meta.glob('../../../worksheets/demould/*.tsx');
