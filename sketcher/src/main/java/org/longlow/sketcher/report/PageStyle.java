package org.longlow.sketcher.report;

/** The style sheet: ink on card, one column, tables that become lists on a narrow screen. */
final class PageStyle {

  static final String CSS =
      """
      :root{--ink:#22262b;--pencil:#5a5d63;--rule:#d9d4c8;--card:#fbf9f4;--good:#1d686c;
      --care:#875600;--bad:#9b2447}
      *{box-sizing:border-box}
      body{margin:0;background:var(--card);color:var(--ink);
      font:16px/1.5 "Liberation Sans",Arial,Helvetica,sans-serif;overflow-wrap:break-word}
      main,header,footer{max-width:1120px;margin:0 auto;padding:0 24px}
      header{padding-top:32px}
      h1{font-size:2rem;line-height:1.15;margin:0 0 4px;letter-spacing:-.01em}
      h2{font-size:1.25rem;margin:44px 0 8px;padding-top:10px;border-top:2px solid var(--ink)}
      h3{font-size:1.05rem;margin:28px 0 6px}
      p{margin:6px 0;max-width:72ch}
      .quiet{color:var(--pencil)}
      .counts{display:flex;flex-wrap:wrap;gap:8px 28px;list-style:none;margin:14px 0;padding:0}
      .counts b{font-size:1.5rem;margin-right:6px}
      .counts .fail{color:var(--bad)}.counts .caution{color:var(--care)}
      .counts .pass{color:var(--good)}
      .warn{border-left:4px solid var(--bad);padding:4px 12px;margin:12px 0}
      .note{border-left:4px solid var(--rule);padding:2px 12px;color:var(--pencil);margin:10px 0}
      figure{margin:18px 0;background:#fff;border:1px solid var(--rule)}
      .sheet{display:block;overflow-x:auto;padding:8px;cursor:zoom-in;position:relative}
      .sheet svg{display:block;width:100%;height:auto}
      .sheet input{position:absolute;top:0;left:0;margin:0;opacity:0}
      .sheet:focus-within{outline:2px solid var(--ink);outline-offset:-2px}
      .sheet:has(:checked){cursor:zoom-out}
      .sheet input:checked~svg{width:max(1300px,150%)}
      .row{display:flex;flex-wrap:wrap}.row .sheet{flex:1 1 320px;min-width:0}
      figcaption{padding:8px 14px;border-top:1px solid var(--rule);color:var(--pencil);
      font-size:.875rem}
      table{border-collapse:collapse;width:100%;margin:10px 0 18px;font-size:.9375rem}
      caption{text-align:left;color:var(--pencil);padding:4px 0}
      th,td{text-align:left;vertical-align:top;padding:6px 12px 6px 0;
      border-bottom:1px solid var(--rule);overflow-wrap:break-word}
      thead th{font-weight:600;color:var(--pencil);border-bottom:1px solid var(--ink)}
      tbody th{font-weight:600}
      .figure{font-variant-numeric:tabular-nums;white-space:nowrap}
      tr.sum th,tr.sum td{border-top:1px solid var(--ink);font-weight:600}
      td.verdict{white-space:nowrap}
      tr.fail td.verdict{color:var(--bad);font-weight:600}
      tr.caution td.verdict{color:var(--care);font-weight:600}
      tr.pass td.verdict{color:var(--good)}
      .findings td:nth-child(3){min-width:15em}
      .findings td:nth-child(7){min-width:5em}
      .findings td:nth-child(8){min-width:13em;font-size:.875em;color:var(--pencil)}
      .group h3{margin:22px 0 4px}
      summary{cursor:pointer;padding:4px 0;color:var(--good)}
      footer{padding-top:24px;padding-bottom:48px;color:var(--pencil);font-size:.875rem}
      @media screen and (max-width:760px){
      main,header,footer{padding-left:14px;padding-right:14px}
      h1{font-size:1.55rem}
      table,tbody,tr,th,td{display:block;width:auto}
      caption{display:block}
      thead{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}
      tbody tr{padding:10px 0;border-bottom:1px solid var(--rule)}
      tbody th,tbody td{border:0;padding:1px 0 1px 7.5em;position:relative;min-height:1.5em;
      white-space:normal;min-width:0}
      .findings td:nth-child(n){min-width:0}
      tbody td.verdict{white-space:normal}
      tbody td.none,tbody th.none{display:none}
      tbody th::before,tbody td::before{content:attr(data-heading);position:absolute;left:0;
      width:7em;color:var(--pencil);font-weight:400;font-size:.875em}
      }
      @media print{
      @page{margin:14mm}
      body{background:#fff;font-size:9.5pt}
      main,header,footer{max-width:none;padding:0}
      figure,tr,h2,h3{break-inside:avoid}h2,h3{break-after:avoid}
      .sheet{overflow:visible;padding:0}.sheet input{display:none}
      .sheet input:checked~svg{width:100%}
      .sheet svg{max-height:150mm}.row .sheet svg{max-height:110mm}
      thead{display:table-header-group}
      .open tr{display:grid;grid-template-columns:2.8em 7.4em 1fr 5.2em 5.2em 6em 7em}
      .open tr>:nth-child(n){min-width:0;border:0}
      .open tr>:nth-child(8){grid-column:3/-1;padding-top:0}
      .open thead tr{border-bottom:1px solid var(--ink)}
      .open tbody tr{border-bottom:1px solid var(--rule)}
      .folded{font-size:7.5pt}.folded th,.folded td{padding:2px 8px 2px 0}
      }
      """;

  private PageStyle() {}
}
