/** Texts that a maker would hardly write, each made to break out of something. */
export const hostileTexts: readonly string[] = [
  // a spreadsheet's formulas
  '=HYPERLINK("http://evil.example","open")',
  "+1+cmd|' /C calc'!A0",
  '-2+3',
  '@SUM(A1)',
  '\t=1+1',
  // lines and fields of a calendar, a header, a table
  'a\r\nEND:VEVENT\r\nBEGIN:VALARM',
  'a\nSet-Cookie: x=1',
  'a";"b,c\r\n"',
  'line\u2028separator\u2029paragraph\u0085next',
  // markup
  '<script>window.owned=1</script>',
  '"><img src=x onerror="window.owned=1">',
  '</text></svg><svg onload="window.owned=1">',
  'javascript:window.owned=1',
  '&lt;b&gt; &amp; &#x202e;',
  // a PDF's strings and streams
  ') Tj ET endstream endobj (',
  '\\) \\( \\\\ <</JS (app.alert(1))>>',
  // what cannot be seen, or turns the line round
  '\u202eevil\u202c \u2066x\u2069',
  '\u0000nul\u0000',
  '\u0007\u001b[31mred\u001b[0m',
  '\u200b\ufeff\u00ad',
  '\ud800 alone \udc00',
  'Z\u0335\u0336\u0337\u0338a\u0335l\u0336g\u0337o\u0338'.repeat(3),
  '👩‍👩‍👧‍👦🍒🇵🇱',
  '梅酒 مرحبا עברית ไทย',
  // names that mean something to the language or the disk
  '__proto__',
  'constructor',
  '../../../../etc/passwd',
  '%2e%2e%2f',
  'CON',
  "Robert'); DROP TABLE move;--",
  '${7*7} {{7*7}} %s %n',
  'NaN',
  '1e999',
]
