import { describe, expect, it } from 'vitest';
import { provenanceOf } from '../../../src/duct/provenance.ts';

const sources = [
  { id: 'book', citation: 'A. Writer, A Book', edition: '2nd ed.', table: 'Table 3' },
  { id: 'talk', citation: 'Common practice, no source', edition: '—', table: '—' },
];

describe('provenance', () => {
  it('is one line, without the dashes of what is not known', () => {
    const row = { source: 'book', status: 'verified' };
    expect(provenanceOf(row, sources).citation).toBe('A. Writer, A Book, 2nd ed., Table 3');
  });

  it('leaves what has no source to its status', () => {
    const row = { source: 'talk', status: 'common practice, no source' };
    expect(provenanceOf(row, sources)).toEqual({ citation: '', status: row.status });
  });

  it('refuses a row without a source', () => {
    expect(() => provenanceOf({ source: 'rumour', status: 'verified' }, sources)).toThrow('rumour');
  });
});
