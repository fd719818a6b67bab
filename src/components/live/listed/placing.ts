export default import.meta.glob('../../../worksheets/placing/*.tsx');
