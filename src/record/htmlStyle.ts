import { inks } from './drawing/inks.ts';

/** The record's look on screen and in print: a proof sheet. A4 and Letter both fit inside its margins. */
export const htmlStyle = `
:root { color-scheme: light dark; --paper: ${inks.paper}; --ink: ${inks.graphite}; --grey: #66625b; --rule: ${inks.faint}; --copper: ${inks.copper}; }
@media (prefers-color-scheme: dark) { :root { --paper: #1d1d1f; --ink: #ebe7dd; --grey: #aaa498; --rule: #45423d; --copper: #e39a68; } }
@page { margin: 15mm; }
* { box-sizing: border-box; }
body { margin: 0 auto; padding: 3rem 1.5rem 5rem; max-width: 58rem; background: var(--paper); color: var(--ink); font: 1rem/1.5 system-ui, 'Segoe UI', 'Liberation Sans', Arial, sans-serif; font-variant-numeric: tabular-nums; }
h1 { font-size: 1.7rem; line-height: 1.2; margin: 0 0 .5rem; font-weight: 600; }
h2 { font-size: 1.15rem; margin: 3rem 0 .75rem; padding-top: .5rem; border-top: 1px solid var(--rule); font-weight: 600; }
h3 { font-size: 1rem; margin: 0 0 .25rem; }
p { margin: .25rem 0 .5rem; max-width: 42rem; }
.small, figcaption, caption { color: var(--grey); font-size: .875rem; }
.verdict { font-size: 1.35rem; font-weight: 600; border-left: .35rem solid var(--ink); padding: .15rem 0 .15rem .75rem; }
.verdict.hold { border-color: var(--copper); color: var(--copper); }
figure { margin: 1rem 0; break-inside: avoid; }
figure svg { display: block; width: 100%; height: auto; max-height: 240mm; background: ${inks.paper}; }
.finding { display: grid; grid-template-columns: 2.5rem minmax(0, 1fr) 9rem; gap: .25rem 1rem; margin: 1.25rem 0; break-inside: avoid; }
.finding > .number { width: 2rem; height: 2rem; border: 2px solid var(--copper); border-radius: 50%; color: var(--copper); text-align: center; line-height: 1.75rem; font-weight: 600; }
.finding svg { width: 9rem; height: 9rem; background: ${inks.paper}; }
dl { margin: 0; } dt { float: left; clear: left; margin-right: .5em; color: var(--grey); } dd { margin: 0 0 .25rem; }
.scroll { overflow-x: auto; }
table { border-collapse: collapse; font-size: .9rem; margin: .5rem 0 1rem; }
caption { text-align: left; padding-bottom: .25rem; }
th, td { text-align: left; padding: .25rem .9rem .25rem 0; border-bottom: 1px solid var(--rule); vertical-align: top; }
th { font-weight: 600; } .n { text-align: right; white-space: nowrap; }
.cautions h3 { margin-top: .75rem; }
@media (max-width: 40rem) { .finding { grid-template-columns: 2.5rem minmax(0, 1fr); } .finding svg { grid-column: 2; } }
@media print { :root { --paper: #fff; --ink: #1d1d1f; --grey: #55524c; --copper: #8f4417; } body { padding: 0; max-width: none; font-size: 10.5pt; } h2 { break-after: avoid; margin-top: 2rem; } table, tr { break-inside: avoid; } figure:not([style]) svg { max-height: 185mm; } }
`;
