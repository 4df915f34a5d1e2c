// Texts that an author could write to break out of an output: markup, script, signs that turn text, formulas, paths, long words.

export const hostile: readonly string[] = [
  `<script>alert(1)</script>`, `</script><script>alert(1)</script>`, `</style><script>alert(1)</script>`, `</title><script>alert(1)</script>`,
  `</textarea><script>alert(1)</script>`,
  `<img src=x onerror=alert(1)>`, `<svg onload=alert(1)>`, `<svg><script>alert(1)</script></svg>`, `<iframe src="javascript:alert(1)"></iframe>`,
  `<a href="javascript:alert(1)">x</a>`,
  `"><script>alert(1)</script>`, `'><script>alert(1)</script>`, `" onmouseover="alert(1)`, `' onfocus='alert(1)' autofocus='`,
  `" style="background:url(//evil.example/x)`, `<link rel=stylesheet href=//evil.example>`,
  `<meta http-equiv=refresh content="0;url=//evil.example">`, `<base href="//evil.example/">`, `<form action="//evil.example"><input name=a>`,
  `<object data="x.swf"></object>`, `<embed src=x>`, `<details open ontoggle=alert(1)>`,
  `<style>*{display:none}</style>`, `<!--`, `--><b>x</b>`, `<![CDATA[x]]>`, `<?xml version="1.0"?>`, `<!DOCTYPE html>`, `<!ENTITY x "y">`,
  `&lt;b&gt;`, `&amp;`, `&#60;b&#62;`, `&nbsp;`, `&`, `<`, `>`, `<<<>>>`, `]]>`,
  `=1+1`, `=HYPERLINK("http://evil.example","x")`, `+1+1`, `-1+1`, `@SUM(A1)`, `=cmd|' /C calc'!A0`, `\t=1+1`, ` =1+1`, `＝1+1`, `|calc`, `%0a=1+1`,
  `"=1+1"`, `a,b;c`, `a""b`, `'`, `"`,
  `\u202Ereversed\u202C`, `\u2066isolate\u2069`, `\u2067open`, `\u202A\u202B\u202D`, `אבג שלום`, `مرحبا`, `a\u0007b`, `a\u001B[31mred\u001B[0m`,
  `a\u2028b\u2029c`, `\uFEFFbom`, `a\u0085b`, `\u200Bzero`,
  `../../../../etc/passwd`, `file:///etc/passwd`, `C:\\Windows\\system32`, `#import "x"`, `$(rm -rf /)`, "`id`", `\${7*7}`, `{{7*7}}`, `%s%n%x`,
  `javascript:alert(1)`, `data:text/html,<b>x</b>`, `//evil.example/x.js`,
  `${"W".repeat(400)}`, `Ünïcödé 漢字 😀`, `line one\nline two`,
];
