// The style of the HTML manual, for screen and paper. Words, shapes and frames carry every meaning; colour only repeats it, so that it
// reads in black and white. Signal colours: ISO 3864, RAL 3001, RAL 2010, RAL 1003, RAL 5005.

import { draftMarkStyle } from "../page-edges.ts";
import { tableStyle } from "./html-table.ts";
import { layoutStyle } from "../layout-sheet/layout-sheet.ts";
import { torqueStyle } from "../torque-sheet/torque-sheet.ts";

export const style = `
:root{color-scheme:light;--ink:#111;--line:#767676;--soft:#f1f1ee;--paper:#fff;--link:#00407a;--field:#fff;--quiet:#4f4f4f}
*{box-sizing:border-box}
html{-webkit-text-size-adjust:100%;text-size-adjust:100%}
body{margin:0 auto;padding:1rem 1.2rem 4rem;max-width:58rem;background:var(--paper);color:var(--ink);font:1rem/1.45 system-ui,"Segoe UI",Roboto,"Noto Sans",sans-serif;overflow-wrap:break-word}
.long{overflow-wrap:anywhere}
h1{font-size:1.9rem;line-height:1.2;margin:.4rem 0 .2rem}
h2{font-size:1.4rem;margin:2.6rem 0 .8rem;padding-bottom:.2rem;border-bottom:3px solid var(--ink)}
h3{font-size:1.12rem;margin:1.8rem 0 .6rem}
h4{font-size:1rem;margin:1rem 0 .3rem}
p{margin:.4rem 0}
a{color:var(--link)}
:focus-visible{outline:3px solid var(--link);outline-offset:2px}
[hidden]{display:none!important}
.lead{font-size:1.15rem;margin:0 0 .6rem}
.draft{border:3px solid var(--ink);padding:.5rem .8rem;font-weight:700;margin:.8rem 0}
.draft strong{letter-spacing:.15em;margin-right:.4rem}
.draft-mark{display:none}
.caution-line{border-left:6px solid var(--ink);padding:.3rem .8rem;margin:.8rem 0}
nav ol{columns:2;column-gap:2rem;padding-left:2rem}
nav li{margin:.2rem 0;break-inside:avoid}
.scroll{overflow-x:auto}
table{border-collapse:collapse;width:100%;margin:.5rem 0 1rem;font-size:.93rem}
caption{text-align:left;font-weight:700;padding:.3rem 0}
th,td{border:1px solid var(--line);padding:.3rem .5rem;text-align:left;vertical-align:top}
thead th{background:var(--soft)}
td.n{text-align:right;white-space:nowrap}
td.code{font-family:ui-monospace,Consolas,monospace;font-size:.85em}
.facts th{width:14rem;font-weight:600;background:var(--soft)}.facts td{overflow-wrap:anywhere}
.panel{border:2px solid var(--ink);margin:.7rem 0;break-inside:avoid}
.panel>.head{display:flex;align-items:center;gap:.5rem;margin:0;padding:.25rem .7rem;font-weight:700;letter-spacing:.06em;border-bottom:2px solid var(--ink)}
.panel>.body{display:flex;gap:.9rem;padding:.5rem .7rem}
.panel>.body>.words{flex:1;min-width:0}
.panel .title{font-weight:700;margin:0 0 .2rem}
.panel ol{margin:.2rem 0;padding-left:1.5rem}
.panel small{display:block;white-space:nowrap;text-align:center;font-size:.72rem}
.panel.danger{border-width:4px}.panel.danger>.head{background:#9b2423;color:#fff}
.panel.warning>.head{background:#d05d29;color:#000}
.panel.caution>.head{background:#f9a800;color:#000}
.panel.notice{border-style:dashed}.panel.notice>.head{background:#005387;color:#fff;font-style:italic}
.panel.none>.head{background:var(--ink);color:#fff}
.sign,.alert{flex:none;fill:#000}
.sign-box{flex:none;width:5.6rem;text-align:center}
.lines{list-style:none;margin:0;padding:0}
.act{border-top:1px solid var(--line);padding:.45rem 0;break-inside:avoid}
.act:target,.group:target{outline:3px solid var(--ink);outline-offset:3px}
.row{display:grid;grid-template-columns:1.9rem minmax(3.9rem,max-content) minmax(0,1fr) minmax(8rem,16rem);gap:.1rem .6rem;align-items:start}
.row input[type=checkbox]{width:1.5rem;height:1.5rem;margin:.05rem 0 0;accent-color:var(--ink)}
.row .no{white-space:nowrap;font-variant-numeric:tabular-nums;font-weight:600;padding-top:.1rem}
.says{font-weight:600}
.row label{cursor:pointer}
.own{font-weight:400}
.side{font-size:.93rem}
.side p,.under p{margin:0 0 .15rem}
.under{grid-column:3/-1;font-size:.93rem}
.torque{font-weight:700}
.refused{border-left:6px double var(--ink);padding-left:.5rem}
.write{display:flex;flex-wrap:wrap;align-items:baseline;gap:.2rem .6rem;margin:.35rem 0 0}
input[type=text],select{font:inherit;min-width:0;min-height:2rem;border:1px solid var(--line);border-bottom:2px solid var(--ink);border-radius:0;background:var(--field);color:var(--ink);padding:0 .3rem}
.write input{width:9rem}.write.small input{width:5rem}
.written{display:flex;flex-wrap:wrap;gap:0 1.2rem}.set{display:flex;flex-wrap:wrap;gap:0 1.2rem}
fieldset.answer{border:0;margin:.35rem 0 0;padding:0;display:flex;flex-wrap:wrap;align-items:center;gap:.2rem 1.2rem}fieldset.answer legend{float:left;padding:0 .8rem 0 0}fieldset.answer label{display:flex;align-items:center;gap:.3rem}
input[type=radio]{width:1.4rem;height:1.4rem;margin:0;accent-color:var(--ink)}
.fill td{padding:0}.fill input{width:100%;border:0}
button{font:inherit;font-weight:600;min-height:2.75rem;min-width:2.75rem;padding:.3rem .9rem;border:2px solid var(--ink);border-radius:.3rem;background:var(--paper);color:var(--ink);cursor:pointer}
button:disabled{border-style:dashed;font-weight:400;cursor:default}
.bar{position:sticky;top:0;z-index:2;background:var(--paper);border-bottom:3px solid var(--ink);padding:.3rem 1.2rem;margin:1rem -1.2rem;display:flex;flex-wrap:wrap;align-items:center;gap:.1rem 1.2rem}
.bar p{margin:.1rem 0}.bar progress{width:9rem;accent-color:var(--ink);vertical-align:middle}
#tablet-says{flex-basis:100%;max-height:6.5rem;overflow-y:auto}#tablet-says:empty{display:none}
section,.act,.group{scroll-margin-top:7rem}
.told-now ul{margin:.2rem 0;padding-left:1.2rem}.told-now a,.break a{display:inline-block;padding:.35rem 0}
.missing,.outside,.overdue{font-weight:700;border-left:6px solid;padding:.15rem .6rem;margin:.3rem 0}.outside:empty,.overdue:empty,.tries:empty,.clock:empty{display:none}
span.outside{border:0;padding:0;margin:0}
.not-yet input[type=checkbox]{outline:2px dashed var(--line);outline-offset:1px}
.done>.row>label{color:var(--quiet)}
.clock{font-weight:700;font-variant-numeric:tabular-nums}.hint{font-size:.88rem}
.wait-clock,.bolts,.not-as-written{margin:.4rem 0}
.open-trouble{font-weight:400;border-width:1px;border-color:var(--line);margin-top:.2rem}
.form{display:grid;gap:.4rem;max-width:28rem;margin:.4rem 0}.form p{display:grid;margin:0}
.break{border:4px solid var(--ink);padding:.4rem 1rem 1rem;margin:1rem 0}.break h2{margin:.4rem 0}
.pattern{max-width:22rem}.pattern svg{max-width:100%;height:auto}
.limits{font-weight:700}
.told{padding:.1rem 0}
.note{padding:.2rem 0 .2rem 6.5rem}
.recorded{border-left:6px double var(--ink);padding-left:.6rem;margin:.2rem 0 .2rem 5.5rem}
${layoutStyle.trim()}
${torqueStyle}
.sheet tbody th{font-weight:600}
@page lies{size:landscape}
.lies{page:lies}
svg.code{float:right;width:22mm;height:22mm;margin:.2rem 0 .4rem .8rem}.lines{clear:both}
.pen{display:inline-block;min-width:3rem;min-height:1.3rem}${tableStyle}
.given{font-style:italic}
figure{margin:.6rem 0 .6rem 6.5rem;break-inside:avoid}
figure svg.photo{max-width:100%;height:auto}figure img{max-width:100%;max-height:26rem;border:1px solid var(--line)}
figcaption{font-size:.9rem}
.drawn{break-inside:avoid}.drawn svg{max-width:none}.index{columns:14rem;list-style:none;padding:0}.index li{break-inside:avoid;margin:.2rem 0}
footer{margin-top:3rem;border-top:1px solid var(--line);font-size:.85rem}
@media screen and (prefers-color-scheme:dark){
:root{color-scheme:dark;--ink:#f2f2f2;--line:#9a9a9a;--soft:#2b2b2b;--paper:#161616;--link:#9ccbff;--field:#222;--quiet:#bdbdbd}
.panel.none>.head{color:#161616}
.panel>.head{border-bottom-color:#000}
.sign{background:transparent}
}
@media (max-width:40rem){.row{grid-template-columns:1.9rem minmax(3.4rem,max-content) minmax(0,1fr)}.side{display:contents}.side>*,.under{grid-column:3}.open-trouble{order:1;justify-self:start}.facts th{width:8.5rem}.note,figure{padding-left:0;margin-left:0}.recorded{padding-left:.6rem;margin-left:0}nav ol{columns:1}body{padding:.6rem}.bar{padding:.3rem .6rem;margin:1rem -.6rem}.bar p{flex:1 0 100%;display:flex;align-items:center;gap:.4rem}.bar progress{flex:1}.bar button{flex:1;padding:.2rem .3rem;font-size:.82rem}fieldset.answer{gap:.2rem .8rem}}
@media (pointer:coarse){.row input[type=checkbox]{width:2.75rem;height:2.75rem}.row{grid-template-columns:3rem minmax(3.9rem,max-content) minmax(0,1fr) minmax(8rem,16rem)}.row>label{min-height:2.75rem}input[type=text],select{min-height:2.75rem}input[type=radio]{width:2rem;height:2rem}fieldset.answer label{min-height:2.75rem}nav li{margin:0;padding:.7rem 0}}
@media (pointer:coarse) and (max-width:40rem){.row{grid-template-columns:3rem minmax(3.4rem,max-content) minmax(0,1fr)}}
@media print{
@page{size:A4;margin:16mm 14mm 18mm}
html{font-size:10pt}
body{max-width:none;padding:0}
h2{break-before:auto}h2,h3,h4{break-after:avoid}
thead{display:table-header-group;break-after:avoid}tr,.scroll.short,.panel,.write{break-inside:avoid}caption,h2+p{break-after:avoid}${draftMarkStyle}tbody tr:is(:nth-child(-n+2),:last-child){break-before:avoid}.told{break-after:avoid}#diagram,[id$=preparation],[id$=handover],[id$=layout]{break-before:page}.row:not(:has(.side>p))>label{grid-column:3/-1}.side:not(:has(p)){display:none}
a{color:inherit;text-decoration:none}
.scroll{overflow:visible}table{width:calc(100% - 1px)}.drawn svg{max-width:100%;height:auto;max-height:200mm}
*{-webkit-print-color-adjust:exact;print-color-adjust:exact}
.bar,button,.wait-clock,.bolts,.told-now,.hint,.break,[data-script]{display:none!important}
input[type=text],select{border-width:0 0 1px;min-height:1.4rem;height:1.4rem;background:none}select{appearance:none}
.fill td{height:1.6rem}.row input[type=checkbox],input[type=radio]{width:1.1rem;height:1.1rem}
.done>.row>label{color:inherit}.not-yet input[type=checkbox]{outline:0}
}
`.trim();
