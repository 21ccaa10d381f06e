import { describe, expect, it } from 'vitest';
import { csvText } from '../../src/shared/writing/csv.ts';

// RFC 4180: fields with commas, quotes or line ends are quoted, quotes doubled, lines end with CRLF.
describe('a table as CSV', () => {
  it('quotes what must be quoted', () => {
    expect(csvText(['a', 'b'], [['1, 2', 'say "so"']])).toBe('a,b\r\n"1, 2","say ""so"""\r\n');
  });

  it('has numbers as a maker would type them, without what binary fractions leave over', () => {
    expect(csvText(['n'], [[0.1 + 0.2], [4.5 + 8.9e-16], [10.0625], [40]])).toBe(
      'n\r\n0.3\r\n4.5\r\n10.0625\r\n40\r\n',
    );
  });

  it('lets no words be worked out as a sum', () => {
    expect(csvText(['n'], [['=1+1'], ['−2']])).toBe("n\r\n'=1+1\r\n−2\r\n");
  });
});
