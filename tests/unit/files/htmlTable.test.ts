import { describe, expect, it } from 'vitest';
import { htmlTable, valuesBeside } from '../../../src/files/htmlTable.ts';

describe('a table in HTML', () => {
  it('is its cells as they are read, whatever their marks', () => {
    const html = `<html><head><style>td { color: red }</style></head><body><!--Start-->
      <table border=0><thead><TR><TH>Point</TH><th>Reading</th></TR></thead>
      <tr><td align="left"><b>Fill &amp; back</b><br>side</td><td sdval="4.5">4&#46;5&nbsp;lx</td></tr>
      </table><table><tr><td>another</td></tr></table>`;
    expect(htmlTable(html)).toEqual([
      ['Point', 'Reading'],
      ['Fill & back side', '4.5 lx'],
    ]);
  });

  it('without one, cut short or with nonsense in it, is what there is', () => {
    expect(htmlTable('')).toEqual([]);
    expect(htmlTable('a < b')).toEqual([]);
    expect(htmlTable('<table><tr><td>1<td>2 &nope; &#99999999;')).toEqual([
      ['1', '2 &nope; &#99999999;'],
    ]);
    expect(htmlTable('<td>in no row</td>')).toEqual([]);
  });

  it('of styles, scripts and comments in a cell nothing is read', () => {
    const cell = 'a<style>td > b</style ><!-- c --><SCRIPT>d</script>e<br/>&constructor;';
    expect(htmlTable(`<tr><td>${cell}</td></tr>`)).toEqual([['ae &constructor;']]);
  });

  it('that never ends is walked through once', () => {
    for (const piece of ['<', '<a', '<!--', '<style>', '<td', '&#', '<td>&'])
      expect(htmlTable(`<tr><td>1</td></tr>${piece.repeat(300_000)}`)[0]?.[0]).toBe('1');
  });

  it('is of use beside a text only where both are of one size', () => {
    const html = '<table><tr><td>1</td><td>2</td></tr></table>';
    expect(valuesBeside(html, '1\t=NOWHERE()\r\n')).toEqual([['1', '2']]);
    expect(valuesBeside(html, '1\t=A1\n3\t4')).toEqual([]);
    expect(valuesBeside(html, '=A1')).toEqual([]);
    expect(valuesBeside(html, '1\t2'), 'and only beside formulas').toEqual([]);
  });
});
