/**
 * In a preview only: loads the page anew when an edit has changed it, and shows what is wrong with it on top of the page.
 *
 * @typedef {{ severity: string, line: string, hint: string }} PreviewFinding
 * @typedef {{ version: number, isGood: boolean, title: string, findings: PreviewFinding[] }} PreviewNews
 */
(function () {
  "use strict";

  /** @type {number | null} */
  let shown = null;
  const tag = document.currentScript instanceof HTMLScriptElement ? document.currentScript.dataset.page : undefined;
  const panel = document.createElement("details");
  panel.className = "preview-findings";
  panel.hidden = true;

  /** @param {string} tag @param {string} text @param {string} [name] */
  function element(tag, text, name) {
    const made = document.createElement(tag);
    made.textContent = text;
    if (name) made.className = name;
    return made;
  }

  /** @param {PreviewFinding} finding */
  function item(finding) {
    const made = element("li", "", "preview-" + finding.severity);
    made.append(element("code", finding.line), element("p", finding.hint));
    return made;
  }

  /** A page that has loaded data may show what another page says. */
  async function isAffected() {
    if (performance.getEntriesByType("resource").some((entry) => entry.name.includes("/data/"))) return true;
    const now = await fetch(location.href, { method: "HEAD" });
    return now.headers.get("ETag") !== tag;
  }

  /** @param {MessageEvent<string>} event */
  async function hear(event) {
    /** @type {PreviewNews} */
    const news = JSON.parse(event.data);
    if (shown !== null && news.version !== shown && news.isGood && await isAffected()) {
      location.reload();
      return;
    }
    shown = news.version;
    const list = document.createElement("ul");
    list.append(...news.findings.map(item));
    panel.replaceChildren(element("summary", news.title + " (" + news.findings.length + ")"), list);
    panel.hidden = news.findings.length === 0;
    panel.open = !news.isGood;
    panel.dataset.version = String(news.version);
  }

  document.body.append(panel);
  new EventSource("/_preview/events").addEventListener("message", hear);
}());
